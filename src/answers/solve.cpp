// Closes in on each change of sign (TOMS 748) and on each turning point between the values that were looked at.
#include "answers/solve.hpp"

#include "answers/samples.hpp"

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>

namespace cutwater {
namespace {

constexpr double eps = std::numeric_limits<double>::epsilon();

class Search {
public:
    explicit Search(const SolveQuestion& q) : seen_(q) {}

    Solutions run()
    {
        seen_.look_first();
        if (!seen_.points().empty()) found_.searched = {seen_.points().front().x, seen_.points().back().x};
        if (!seen_.any_known()) {
            if (!seen_.points().empty()) seen_.ask(seen_.points()[seen_.points().size() / 2].x, &found_.example);
            return std::move(found_);
        }
        found_.skipped = seen_.settle_borders();
        bool single = seen_.single_slope();
        if (!single) {
            for (int round = 0; round < 2; ++round) seen_.look_between();
            single = seen_.single_slope();
        }
        examine(!single);
        if (found_.answers.empty()) {
            found_.skipped = seen_.look_closely() || found_.skipped;
            examine(!seen_.single_slope());
        }
        if (found_.answers.size() != 1 || found_.answers.front().wide()) tell_range();
        if (found_.answers.size() > 1) gather();
        return std::move(found_);
    }

private:
    void examine(bool turns)
    {
        const std::vector<Sample>& p = seen_.points();
        if (p.size() == 1 && p.front().g == 0) hit(p.front().x);
        for (std::size_t i = 0; i + 1 < p.size(); ++i)
            if (!(p[i].g * p[i + 1].g > 0)) close_in(p[i], p[i + 1], 0);
        for (std::size_t i = 1; i + 1 < p.size() && turns; ++i) turn(p[i - 1], p[i], p[i + 1]);
    }

    /// For the sentences.
    void tell_range()
    {
        bool first = true;
        for (const Sample& p : seen_.points()) {
            if (!p.known()) continue;
            const double y = p.g + seen_.target();
            if (first || y < found_.results.low) found_.results.low = y, found_.least_at = p.x;
            if (first || y > found_.results.high) found_.results.high = y, found_.greatest_at = p.x;
            first = false;
        }
        found_.computed = seen_.count_known();  // some: else nothing is examined
        found_.computable = seen_.computable();
    }

    /// What the difference of two results is measured by.
    double size(const Sample& a, const Sample& b) const
    {
        return seen_.target() != 0 ? std::abs(seen_.target()) : std::max(std::abs(a.g), std::abs(b.g));
    }

    /// What lies between two neighbours.
    void close_in(Sample a, Sample b, int depth)
    {
        if (a.known() && a.g == 0) a = past(a, b);
        if (b.known() && b.g == 0) b = past(b, a);
        if (!(a.x < b.x)) return;
        if (!a.known() || !b.known()) {
            if (a.known() == b.known() || depth == 0) return;  // borders were settled at first
            const Sample edge = a.known() ? seen_.border(a, b) : seen_.border(b, a);
            return a.known() ? close_in(a, edge, depth + 1) : close_in(edge, b, depth + 1);
        }
        if (a.g == 0 || b.g == 0 || (a.g < 0) == (b.g < 0)) return;
        if (seen_.whole()) return close_in_whole(a, b);
        bracket(a, b, depth);
    }

    /// Takes in an exact answer at one neighbour; the next point from there towards the other.
    Sample past(const Sample& p, const Sample& other)
    {
        const Stretch s = hit(p.x);
        const double edge = other.x > p.x ? s.high : s.low;
        if ((edge >= other.x) == (other.x > p.x)) return other;
        const double x = beside(edge, other.x);
        return x == edge ? other : seen_.at(x);
    }

    /// A step off x on the way to another value: what is level further than this is a stretch.
    double beside(double x, double towards) const
    {
        if (seen_.whole()) return x + (towards > x ? 1 : -1);
        const double step = std::min(1e-6 * (x != 0 ? std::abs(x) : std::abs(towards)), std::abs(towards - x) / 2);
        return towards > x ? x + step : x - step;
    }

    /// An exact answer: one value, or a stretch of them.
    Stretch hit(double x)
    {
        for (const Stretch& s : settled_)
            if (x >= s.low && x <= s.high) return s;
        const Stretch s{reach(x, -1), reach(x, 1)};
        settled_.push_back(s);
        if (!s.wide() || !solid(s))
            add(x);
        else if (level_by_rounding(s))
            add(of_stretch(s));
        else
            found_.answers.push_back(s);
        return s;
    }

    /// Whether it is level through and through, and not by chance of rounding here and there.
    bool solid(const Stretch& s)
    {
        constexpr int parts = 16;
        for (int k = 1; k < parts && !seen_.whole(); ++k)
            if (seen_.g(s.low + (s.high - s.low) * k / parts) != 0) return false;
        return true;
    }

    /// How far from x the result stays at the target.
    double reach(double x, int direction)
    {
        const std::vector<Sample>& p = seen_.points();
        const auto next = [&](double from) {
            const Sample* found = nullptr;
            if (direction > 0) {
                const auto i = std::upper_bound(p.begin(), p.end(), from,
                                                [](double v, const Sample& q) { return v < q.x; });
                if (i != p.end()) found = &*i;
            } else {
                const auto i = std::lower_bound(p.begin(), p.end(), from,
                                                [](const Sample& q, double v) { return q.x < v; });
                if (i != p.begin()) found = &*(i - 1);
            }
            return found;
        };
        const Sample* neighbour = next(x);
        if (!neighbour) return x;
        const double near = beside(x, neighbour->x);
        if (seen_.g(near) != 0) return x;  // also where it is refused
        double inside = near;
        while (neighbour &&
               (neighbour->x == inside || (neighbour->g == 0 && seen_.g(between(inside, neighbour->x)) == 0))) {
            inside = neighbour->x;
            neighbour = next(inside);
        }
        if (!neighbour) return inside;
        double outside = neighbour->x;
        for (int i = 0; i < 200; ++i) {
            const double m = between(inside, outside);
            if (m == inside || m == outside) break;
            (seen_.g(m) == 0 ? inside : outside) = m;
        }
        return inside;
    }

    double between(double a, double b) const { return seen_.middle(std::min(a, b), std::max(a, b)); }

    /// Whether the stretch is level only because the last bit hides the slope, as about the vertex of a parabola: ten
    /// times further out the result has still hardly moved.
    bool level_by_rounding(const Stretch& s)
    {
        if (seen_.whole()) return false;
        if (s.high - s.low <= 1e-6 * std::max(std::abs(s.low), std::abs(s.high))) return true;
        const bool ends_below = s.low > seen_.points().front().x, ends_above = s.high < seen_.points().back().x;
        const auto rise = [&](double times) {
            double most = -1;
            const auto look = [&](double x) {
                if (const double y = seen_.where().contains(x) ? std::abs(seen_.g(x)) : -1; y > most)
                    most = y;  // false for NaN
            };
            if (ends_below) look(s.low - times * (s.high - s.low));
            if (ends_above) look(s.high + times * (s.high - s.low));
            return most;
        };
        const double near = rise(9);
        return near >= 0 && near <= 1e-9 * std::max(std::abs(seen_.target()), rise(999));
    }

    /// The value that stands for such a stretch: an end of the interval, 0, or the middle.
    double of_stretch(const Stretch& s) const
    {
        if (s.low <= seen_.where().low) return s.low;
        if (s.high >= seen_.where().high) return s.high;
        return s.low <= 0 && s.high >= 0 ? 0 : s.low + (s.high - s.low) / 2;
    }

    void close_in_whole(Sample a, Sample b)
    {
        while (b.x - a.x > 1) {
            const Sample p = seen_.at(seen_.middle(a.x, b.x));
            if (!p.known()) return;
            if (p.g == 0) return static_cast<void>(hit(p.x));
            ((p.g < 0) == (a.g < 0) ? a : b) = p;
        }
        const Sample& nearer = std::abs(a.g) <= std::abs(b.g) ? a : b;
        if (std::abs(nearer.g) <= 16 * eps * size(a, b)) return add(nearer.x);
        leap(a, b);
    }

    void bracket(Sample a, Sample b, int depth)
    {
        while ((a.x > 0 && b.x > 8 * a.x) ||
               (b.x < 0 && a.x < 8 * b.x)) {  // TOMS 748 goes by differences, and would crawl
            const Sample m = seen_.at(seen_.middle(a.x, b.x));
            if (!m.known()) return around(a, m, b, depth);
            if (m.g == 0) return static_cast<void>(hit(m.x));
            ((m.g < 0) == (a.g < 0) ? a : b) = m;
        }
        Sample refused{0, std::numeric_limits<double>::quiet_NaN()};
        bool hole = false;
        Sample lately[4] = {a, b, a, b};  // the ends of the last bracket are among the last that were looked at
        unsigned count = 0;
        const auto seen = [&](double x) {
            const double y = seen_.g(x);
            lately[count++ % 4] = {x, y};
            if (!std::isnan(y)) return y;
            hole = true;
            refused.x = x;
            return 0.0;  // ends the search
        };
        using namespace boost::math::policies;
        using Quiet = policy<domain_error<ignore_error>, evaluation_error<ignore_error>, pole_error<ignore_error>>;
        const auto close_enough = [](double x, double y) {
            return std::abs(y - x) <= 2 * eps * std::min(std::abs(x), std::abs(y));
        };
        std::uintmax_t most = 300;
        const auto [low, high] = boost::math::tools::toms748_solve(seen, a.x, b.x, a.g, b.g, close_enough, most,
                                                                   Quiet());
        if (hole) return around(a, refused, b, depth);
        const auto recall = [&](double x) {
            for (const Sample& s : lately)
                if (s.x == x) return s;
            return seen_.at(x);
        };
        const Sample left = recall(low), right = recall(high);
        const Sample& nearer = std::abs(left.g) <= std::abs(right.g) ? left : right;
        if (nearer.g == 0) return static_cast<void>(hit(nearer.x));
        // From one number to the next but one a continuous result moves by no more than its steepness times the last
        // bit.
        const double change = std::abs(right.g - left.g);
        if (change <= 1e-8 * size(a, b) || (change <= 1e-6 * size(a, b) && rough(left, right))) return add(nearer.x);
        leap(left, right);
    }

    /// Whether the result is as rough on either side as it is from the one to the other: steep, or not computed any
    /// better.
    bool rough(const Sample& a, const Sample& b)
    {
        const double step = std::abs(b.x - a.x);
        double most = 0;
        for (const double far : {1.0, 30.0, 1e3, 3e4, 1e6})
            for (const Sample& p : {Sample{a.x - far * step, a.g}, Sample{b.x + far * step, b.g}})
                if (const double change = std::abs(seen_.g(p.x) - p.g); change > most) most = change;  // false for NaN
        return std::abs(b.g - a.g) <= 4 * most;
    }

    /// A bracket with a refused value inside.
    void around(const Sample& a, const Sample& refused, const Sample& b, int depth)
    {
        if (depth > 8) return;
        found_.skipped = true;
        close_in(a, refused, depth + 1);
        close_in(refused, b, depth + 1);
    }

    void leap(const Sample& a, const Sample& b)
    {
        found_.jump = true;
        found_.leap = {a.x, b.x};
        found_.before = a.g + seen_.target();
        found_.after = b.g + seen_.target();
    }

    /// Where the result turns back without having crossed the target between its neighbours: it may have touched or
    /// passed it.
    void turn(const Sample& a, const Sample& m, const Sample& b)
    {
        if (!a.known() || !m.known() || !b.known() || seen_.whole() || m.g == 0) return;
        const double sign = m.g > 0 ? 1 : -1;
        if (a.g * sign < m.g * sign || b.g * sign < m.g * sign) return;
        if (std::abs(m.g) > 100 * std::max(std::abs(a.g - m.g), std::abs(b.g - m.g)))
            return;  // too level to come so far
        std::uintmax_t most = 60;
        const auto away = [&](double x) {
            const double y = seen_.g(x) * sign;
            return std::isnan(y) ? HUGE_VAL : y;
        };
        const auto [x, least] = boost::math::tools::brent_find_minima(away, a.x, b.x, 40, most);
        const Sample deepest{x, least * sign};
        if (least <= 0) {
            close_in(a, deepest, 1);
            close_in(deepest, b, 1);
        } else if (least <= 8 * eps * size(a, b)) {
            add(x);
        }
    }

    void add(double x) { found_.answers.push_back({x == 0 ? 0.0 : x, x == 0 ? 0.0 : x}); }

    /// Whether nothing but rounding lies between two answers: two brackets that share an end may both have found it,
    /// and rounding in the formula may cross the target more than once.
    bool one(double a, double b)
    {
        const double largest = std::max(std::abs(a), std::abs(b));
        if (b - a <= 8 * eps * largest) return true;
        const double width = found_.searched.high - found_.searched.low;
        const double noise = 1e-10 * (seen_.target() != 0 ? std::abs(seen_.target())
                                                          : found_.results.high - found_.results.low);
        return b - a <= std::max(1e-6 * largest, 1e-12 * std::min(1.0, width)) &&
               std::abs(seen_.g(a + (b - a) / 2)) <= noise;
    }

    /// Likewise of two that are far apart: the last bits of the result are all that changes between them.
    bool level(double a, double b)
    {
        for (int k = 1; k < 8; ++k)
            if (!(std::abs(seen_.g(a + (b - a) * k / 8)) <= 16 * eps * std::abs(seen_.target()))) return false;
        return !seen_.whole();
    }

    void gather()
    {
        std::vector<Stretch> all;
        all.swap(found_.answers);
        std::ranges::sort(all, {}, &Stretch::low);
        std::vector<Stretch>& kept = found_.answers;
        double first = 0;  // of those that the last one kept stands for
        for (std::size_t i = 0; i < all.size(); ++i) {
            const Stretch next = all[i];
            if (i > 0 && one(all[i - 1].high, next.low)) {
                Stretch& last = kept.back();
                if (last.wide())
                    last.high = next.wide() ? next.high : last.high;
                else if (next.wide() || std::abs(seen_.g(next.low)) < std::abs(seen_.g(last.low)) || next.low == 0)
                    last = next;
            } else if (i > 0 && !kept.back().wide() && !next.wide() && level(all[i - 1].high, next.low)) {
                const double all_of_them = of_stretch({first, next.high});
                kept.back() = {all_of_them, all_of_them};
            } else {
                kept.push_back(next);
                first = next.low;
            }
        }
    }

    Samples seen_;
    std::vector<Stretch> settled_;  // exact answers taken in, with all that is level about them
    Solutions found_;
};

}  // namespace

Solutions solve(const SolveQuestion& question) { return Search(question).run(); }

}  // namespace cutwater
