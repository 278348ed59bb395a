// A curve's pieces computed once, for the many rows of an array that read it.
#pragma once

#include "formulas/curves/interpolation.hpp"

#include <vector>

namespace cutwater::formulas::curves {

/// Stands for the points where they are read: the pieces are the same, and so are the bits.
class Table {
public:
    template <class X, class Y>
    Table(const Series<X>& xs, const Series<Y>& ys)
    {
        const Knots<X, Y> knots(xs, ys);
        const std::size_t pieces = knots.size() - 1;
        x_.reserve(pieces + 1);
        pieces_.reserve(pieces);
        for (std::size_t i = 0; i <= pieces; ++i) x_.push_back(knots.x(i));
        for (std::size_t i = 0; i < pieces; ++i) pieces_.push_back(piece_at(knots, i));
    }

    double first() const { return x_.front(); }
    double last() const { return x_.back(); }
    double last_y() const { return pieces_.back().y1; }

    /// The search has no branch that a machine could guess wrong.
    const Piece& piece_with(double x) const
    {
        std::size_t at = 0;
        for (std::size_t left = pieces_.size(); left > 1;) {
            const std::size_t half = left / 2;
            at += half * static_cast<std::size_t>(x_[at + half] <= x);
            left -= half;
        }
        return pieces_[at];
    }

private:
    std::vector<double> x_;
    std::vector<Piece> pieces_;
};

inline const Piece& piece_for(const Table& table, double x) { return table.piece_with(x); }
inline double last_y(const Table& table) { return table.last_y(); }

}  // namespace cutwater::formulas::curves
