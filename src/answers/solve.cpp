// Looks at the interval from end to end, then closes in on each change of sign (TOMS 748) and on each turning point.
#include "answers/solve.hpp"

#include "answers/search_points.hpp"
#include "answers/shown.hpp"
#include "catalogue/refusal.hpp"

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>

namespace cutwater {
namespace {

constexpr double eps = std::numeric_limits<double>::epsilon();

struct Point {
    double x;
    double g;  // result less target; NaN where refused
    bool known() const { return !std::isnan(g); }
};

class Search {
public:
    explicit Search(const SolveQuestion& q)
        : question_(&q), probe_(*q.function, q.given, q.result), x_(&probe_.given[q.unknown].number), target_(q.target),
          whole_(q.function->inputs[q.unknown].whole), where_(q.where)
    {
    }

    Solutions run()
    {
        look(search_points(where_, whole_));
        if (const std::vector<double> along = series_points(); !along.empty()) {
            look(along);
            sort();
        }
        for (int round = 0; round < 4 && !any_known(); ++round) look_between();
        Solutions& s = found_;
        s.computed = any_known();
        if (!points_.empty()) s.searched = {points_.front().x, points_.back().x};
        if (!s.computed) {
            if (!points_.empty()) {
                double unused;
                *x_ = points_[points_.size() / 2].x;
                probe_.ask(unused, &s.example);
            }
            return std::move(s);
        }
        settle_borders();
        if (s.skipped) look_inside();
        if (!single_slope())
            for (int round = 0; round < 2; ++round) look_between();
        tell_range();
        if (points_.size() == 1 && points_.front().g == 0) add(points_.front().x);
        const std::size_t turns = single_slope() ? 0 : points_.size();
        for (std::size_t i = 0; i + 1 < points_.size() && !s.flat; ++i) close_in(points_[i], points_[i + 1], 0);
        for (std::size_t i = 1; i + 1 < turns && !s.flat; ++i) turn(points_[i - 1], points_[i], points_[i + 1]);
        gather();
        return std::move(s);
    }

private:
    double g(double x)
    {
        *x_ = x;
        return probe_() - target_;
    }
    Point at(double x) { return {x, g(x)}; }

    void look(const std::vector<double>& xs)
    {
        points_.reserve(points_.size() + xs.size());
        for (const double x : xs) points_.push_back(at(x));
    }

    /// A function that reads a curve can often be computed only along it: the curve's own points are worth a look.
    std::vector<double> series_points() const
    {
        std::vector<double> xs;
        const FunctionInfo& f = *question_->function;
        const InputInfo& unknown = f.inputs[question_->unknown];
        for (std::size_t i = 0; i < f.inputs.size(); ++i) {
            const RawSeries s = question_->given[i].series;
            if (f.inputs[i].kind != Kind::series || f.inputs[i].quantity != unknown.quantity || !s.data) continue;
            const std::size_t step = 1 + s.length / 32;
            for (std::size_t k = 0; k < s.length; k += step) xs.push_back(unknown.unit->from_si(f.inputs[i].unit->to_si(s[k])));
        }
        std::erase_if(xs, [&](double x) { return !where_.contains(x) || (whole_ && x != std::floor(x)); });
        return xs;
    }

    void sort()
    {
        std::sort(points_.begin(), points_.end(), [](const Point& a, const Point& b) { return a.x < b.x; });
        points_.erase(std::unique(points_.begin(), points_.end(), [](const Point& a, const Point& b) { return a.x == b.x; }),
                      points_.end());
    }

    double middle(double a, double b) const { return whole_ ? std::floor(a + (b - a) / 2) : point_between(a, b); }

    void look_between()
    {
        const std::size_t count = points_.size();
        for (std::size_t i = 0; i + 1 < count; ++i) {
            const double x = middle(points_[i].x, points_[i + 1].x);
            if (x > points_[i].x && x < points_[i + 1].x) points_.push_back(at(x));
        }
        sort();
    }

    /// Evenly between the first and the last value that can be computed.
    void look_inside()
    {
        constexpr int even = 32;
        const Stretch c = found_.computable;
        for (int k = 1; k < even; ++k) {
            const double x = c.low + (c.high - c.low) * k / even;
            points_.push_back(at(whole_ ? std::round(x) : x));
        }
        sort();
    }

    bool any_known() const
    {
        return std::any_of(points_.begin(), points_.end(), [](const Point& p) { return p.known(); });
    }

    /// The last value beside `known` that can be computed, on the way to `refused`.
    Point border(Point known, Point refused)
    {
        for (int i = 0; i < 200; ++i) {
            const double x = middle(std::min(known.x, refused.x), std::max(known.x, refused.x));
            if (x == known.x || x == refused.x) break;
            const Point p = at(x);
            (p.known() ? known : refused) = p;
        }
        return known;
    }

    void settle_borders()
    {
        const std::size_t count = points_.size();
        for (std::size_t i = 0; i + 1 < count; ++i) {
            const Point a = points_[i], b = points_[i + 1];
            if (a.known() == b.known()) continue;
            found_.skipped = true;
            points_.push_back(a.known() ? border(a, b) : border(b, a));
        }
        if (found_.skipped) sort();
        const auto known = [](const Point& p) { return p.known(); };
        found_.computable = {std::find_if(points_.begin(), points_.end(), known)->x,
                             std::find_if(points_.rbegin(), points_.rend(), known)->x};
    }

    /// Whether the results only rise, or only fall, over one stretch.
    bool single_slope() const
    {
        bool rises = true, falls = true, ended = false;
        const Point* last = nullptr;
        for (const Point& p : points_) {
            if (!p.known()) {
                ended = ended || last;
                continue;
            }
            if (ended) return false;
            if (last) {
                rises = rises && p.g >= last->g;
                falls = falls && p.g <= last->g;
            }
            last = &p;
        }
        return rises || falls;
    }

    void tell_range()
    {
        bool first = true;
        for (const Point& p : points_) {
            if (!p.known()) continue;
            const double y = p.g + target_;
            if (first || y < found_.results.low) found_.results.low = y, found_.least_at = p.x;
            if (first || y > found_.results.high) found_.results.high = y, found_.greatest_at = p.x;
            first = false;
        }
    }

    /// What the difference of two results is measured by.
    double size(const Point& a, const Point& b) const
    {
        return target_ != 0 ? std::abs(target_) : std::max(std::abs(a.g), std::abs(b.g));
    }

    /// What lies between two neighbours.
    void close_in(Point a, Point b, int depth)
    {
        if (!a.known() || !b.known()) {
            if (a.known() && a.g == 0) add(a.x);
            if (b.known() && b.g == 0) add(b.x);
            if (a.known() == b.known() || depth == 0) return;  // borders were settled at first
            const Point edge = a.known() ? border(a, b) : border(b, a);
            return a.known() ? close_in(a, edge, depth + 1) : close_in(edge, b, depth + 1);
        }
        if (a.g == 0 && b.g == 0) return level(a, b);
        if (a.g == 0) return add(a.x);
        if (b.g == 0) return add(b.x);
        if ((a.g < 0) == (b.g < 0)) return;
        if (whole_) return close_in_whole(a, b);
        bracket(a, b, depth);
    }

    void level(const Point& a, const Point& b)
    {
        if (settled(a.x) && settled(b.x)) return;
        const Point between = at(middle(a.x, b.x));
        if (between.g == 0 && between.x > a.x && between.x < b.x) {
            found_.stretch = {a.x, b.x};
            stretch_out();
            found_.flat = !level_by_rounding();
            if (found_.flat) return;
            add(of_stretch());
            settled_ = found_.stretch;  // its other points are the same answer
        } else {
            add(a.x);
            add(b.x);
        }
    }

    /// The flat stretch as far as it goes.
    void stretch_out()
    {
        Stretch& s = found_.stretch;
        for (const Point& p : points_) {
            if (p.g != 0) continue;
            s.low = std::min(s.low, p.x);
            s.high = std::max(s.high, p.x);
        }
        const auto edge = [&](double inside, double outside) {
            for (int i = 0; i < 100; ++i) {
                const double x = middle(std::min(inside, outside), std::max(inside, outside));
                if (x == inside || x == outside) break;
                (g(x) == 0 ? inside : outside) = x;
            }
            return inside;
        };
        const auto after = std::find_if(points_.begin(), points_.end(), [&](const Point& p) { return p.x > s.high; });
        if (after != points_.end()) s.high = edge(s.high, after->x);
        const auto before = std::find_if(points_.rbegin(), points_.rend(), [&](const Point& p) { return p.x < s.low; });
        if (before != points_.rend()) s.low = edge(s.low, before->x);
    }

    bool settled(double x) const { return x >= settled_.low && x <= settled_.high; }

    /// Whether the stretch is level only because the last bit hides the slope, as about the vertex of a parabola: ten times
    /// further out the result has still hardly moved.
    bool level_by_rounding()
    {
        const Stretch s = found_.stretch;
        const auto rise = [&](double times) {
            double most = -1;
            for (const double x : {s.low - times * (s.high - s.low), s.high + times * (s.high - s.low)})
                if (const double y = where_.contains(x) ? std::abs(g(x)) : -1; y > most) most = y;  // false for NaN
            return most;
        };
        if (s.high - s.low <= 1e-6 * std::max(std::abs(s.low), std::abs(s.high))) return true;
        const double near = rise(9);
        return near > 0 && near <= 1e-9 * std::max(std::abs(target_), rise(999));
    }

    /// The value that stands for such a stretch: an end of the interval, 0, or the middle.
    double of_stretch() const
    {
        const Stretch s = found_.stretch;
        if (s.low <= where_.low) return s.low;
        if (s.high >= where_.high) return s.high;
        return s.low <= 0 && s.high >= 0 ? 0 : s.low + (s.high - s.low) / 2;
    }

    void close_in_whole(Point a, Point b)
    {
        while (b.x - a.x > 1) {
            const Point p = at(middle(a.x, b.x));
            if (!p.known()) return;
            if (p.g == 0) return add(p.x);
            ((p.g < 0) == (a.g < 0) ? a : b) = p;
        }
        const Point& nearer = std::abs(a.g) <= std::abs(b.g) ? a : b;
        if (std::abs(nearer.g) <= 16 * eps * size(a, b)) return add(nearer.x);
        leap(a, b);
    }

    void bracket(const Point& a, const Point& b, int depth)
    {
        double refused = 0;
        bool hole = false;
        const auto seen = [&](double x) {
            const double y = g(x);
            if (!std::isnan(y)) return y;
            hole = true;
            refused = x;
            return 0.0;  // ends the search
        };
        using namespace boost::math::policies;
        using Quiet = policy<domain_error<ignore_error>, evaluation_error<ignore_error>, pole_error<ignore_error>>;
        const auto close_enough = [](double x, double y) { return std::abs(y - x) <= 2 * eps * std::min(std::abs(x), std::abs(y)); };
        std::uintmax_t most = 300;
        const auto [low, high] = boost::math::tools::toms748_solve(seen, a.x, b.x, a.g, b.g, close_enough, most, Quiet());
        if (hole) {
            if (depth > 8) return;
            found_.skipped = true;
            const Point none{refused, std::numeric_limits<double>::quiet_NaN()};
            close_in(a, none, depth + 1);
            close_in(none, b, depth + 1);
            return;
        }
        const Point left = at(low), right = at(high);
        const Point& nearer = std::abs(left.g) <= std::abs(right.g) ? left : right;
        // From one number to the next but one a continuous result moves by no more than its steepness times the last bit.
        if (nearer.g == 0 || std::abs(right.g - left.g) <= 1e-8 * size(a, b)) return add(nearer.x);
        leap(left, right);
    }

    void leap(const Point& a, const Point& b)
    {
        found_.jump = true;
        found_.stretch = {a.x, b.x};
        found_.before = a.g + target_;
        found_.after = b.g + target_;
    }

    /// Where the result turns back without having crossed the target between its neighbours: it may have touched or passed it.
    void turn(const Point& a, const Point& m, const Point& b)
    {
        if (!a.known() || !m.known() || !b.known() || whole_ || m.g == 0) return;
        const double sign = m.g > 0 ? 1 : -1;
        if (a.g * sign < m.g * sign || b.g * sign < m.g * sign || a.g * sign <= 0 || b.g * sign <= 0) return;
        std::uintmax_t most = 60;
        const auto away = [&](double x) {
            const double y = g(x) * sign;
            return std::isnan(y) ? HUGE_VAL : y;
        };
        const auto [x, least] = boost::math::tools::brent_find_minima(away, a.x, b.x, 40, most);
        const Point deepest{x, least * sign};
        if (least <= 0) {
            close_in(a, deepest, 1);
            close_in(deepest, b, 1);
        } else if (least <= 8 * eps * size(a, b)) {
            add(x);
        }
    }

    void add(double x)
    {
        if (!settled(x)) found_.roots.push_back(x == 0 ? 0.0 : x);
    }

    /// Two brackets that share an end may both have found it, and rounding in the formula may cross the target more than once:
    /// neighbours with nothing but rounding between them are one.
    void gather()
    {
        std::vector<double>& r = found_.roots;
        std::sort(r.begin(), r.end());
        const double width = found_.searched.high - found_.searched.low;
        const double noise = 1e-10 * (target_ != 0 ? std::abs(target_) : found_.results.high - found_.results.low);
        const auto one = [&](double a, double b) {
            const double largest = std::max(std::abs(a), std::abs(b));
            if (b - a <= 8 * eps * largest) return true;
            return b - a <= std::max(1e-6 * largest, 1e-12 * std::min(1.0, width)) && std::abs(g(a + (b - a) / 2)) <= noise;
        };
        std::size_t kept = 0;
        for (std::size_t i = 1; i < r.size(); ++i) {
            if (!one(r[kept], r[i]))
                r[++kept] = r[i];
            else if (std::abs(g(r[i])) < std::abs(g(r[kept])) || r[i] == 0)
                r[kept] = r[i];
        }
        if (!r.empty()) r.resize(kept + 1);
    }

    const SolveQuestion* question_;
    Probe probe_;
    double* x_;
    double target_;
    bool whole_;
    Interval where_;
    std::vector<Point> points_;
    Stretch settled_{HUGE_VAL, -HUGE_VAL};  // level by rounding, and has its answer; empty at first
    Solutions found_;
};

}  // namespace

Solutions solve(const SolveQuestion& question) { return Search(question).run(); }

}  // namespace cutwater
