#include "answers/samples.hpp"

#include "answers/search_points.hpp"

#include <algorithm>

namespace cutwater {
namespace {

constexpr std::size_t closely = 2000;  // points of a close look

}  // namespace

Samples::Samples(const SolveQuestion& q)
    : question_(&q), probe_(*q.function, q.given, q.result), x_(&probe_.given[q.unknown].number), target_(q.target),
      whole_(q.function->inputs[q.unknown].whole), where_(q.where)
{
}

cutwater_status Samples::ask(double x, cutwater_refusal* refusal)
{
    double unused = 0;
    *x_ = x;
    return probe_.ask(unused, refusal);
}

void Samples::look(const std::vector<double>& rising)
{
    std::vector<Sample> more;
    more.reserve(rising.size());
    for (const double x : rising) more.push_back(at(x));
    take_in(std::move(more));
}

void Samples::take_in(std::vector<Sample> rising)
{
    if (rising.empty()) return;
    if (points_.empty()) return points_.swap(rising);
    std::vector<Sample> both;
    both.reserve(points_.size() + rising.size());
    auto old = points_.begin();
    for (const Sample& p : rising) {
        while (old != points_.end() && old->x < p.x) both.push_back(*old++);
        if ((old == points_.end() || old->x != p.x) && (both.empty() || both.back().x < p.x)) both.push_back(p);
    }
    both.insert(both.end(), old, points_.end());
    points_.swap(both);
}

/// Other inputs of the same quantity, rising: a curve can often be computed only along its points, a new speed only
/// near the old one. Of single numbers only when asked.
std::vector<double> Samples::kindred(bool numbers) const
{
    std::vector<double> xs;
    const FunctionInfo& f = *question_->function;
    const InputInfo& unknown = f.inputs[question_->unknown];
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const InputInfo& in = f.inputs[i];
        if (in.quantity != unknown.quantity || i == question_->unknown) continue;
        const auto take = [&](double x) {
            xs.push_back(in.unit == unknown.unit ? x : unknown.unit->from_si(in.unit->to_si(x)));
        };
        const RawSeries s = question_->given[i].series;
        if (in.kind == Kind::quantity && numbers) take(question_->given[i].number);
        if (in.kind != Kind::series || !s.data) continue;
        const std::size_t step = 1 + s.length / 32;
        for (std::size_t k = 0; k < s.length; k += step) take(s[k]);
    }
    std::erase_if(xs, [&](double x) { return !where_.contains(x) || (whole_ && x != std::floor(x)); });
    std::sort(xs.begin(), xs.end());
    return xs;
}

/// An end at 0, open or not, may hide what the first look's smallest number is too large for.
void Samples::approach_zero()
{
    if (whole_ || points_.empty() || (where_.low != 0 && where_.high != 0)) return;
    const bool from_above = where_.low == 0;
    Sample start{0, 0};  // the nearest to 0
    for (const Sample& p : points_)
        if (p.x != 0 && (start.x == 0 || std::abs(p.x) < std::abs(start.x))) start = p;
    if (start.x == 0 || (!start.known() && any_known())) return;
    std::vector<Sample> more;
    for (const double x : towards_zero(start.x)) {
        if (std::abs(x) >= std::abs(start.x)) continue;
        more.push_back(at(x));
        if (start.known() && !more.back().known()) break;
    }
    if (from_above) std::reverse(more.begin(), more.end());
    take_in(std::move(more));
}

void Samples::look_first()
{
    look(search_points(where_, whole_));
    if (const std::vector<double> others = kindred(!any_known()); !others.empty()) look(others);
    approach_zero();
    while (points_.size() < closely && !any_known()) {
        const std::size_t before = points_.size();
        look_between();
        if (points_.size() == before) break;
    }
}

void Samples::look_between()
{
    std::vector<double> xs;
    xs.reserve(points_.size());
    for (std::size_t i = 0; i + 1 < points_.size(); ++i) {
        const double x = middle(points_[i].x, points_[i + 1].x);
        if (x > points_[i].x && x < points_[i + 1].x) xs.push_back(x);
    }
    look(xs);
}

/// Evenly between the first and the last value that can be computed.
void Samples::look_inside()
{
    constexpr int even = 32;
    const Stretch c = computable();
    std::vector<double> xs;
    for (int k = 1; k < even; ++k) {
        const double x = c.low + (c.high - c.low) * k / even;
        if (where_.contains(x)) xs.push_back(whole_ ? std::round(x) : x);
    }
    look(xs);
}

bool Samples::look_closely()
{
    if (!whole_) look(beside_ends(where_));
    for (std::size_t before = 0; before != points_.size() && points_.size() < closely;) {
        before = points_.size();
        look_between();
    }
    return settle_borders();
}

bool Samples::any_known() const { return std::ranges::any_of(points_, &Sample::known); }

std::size_t Samples::count_known() const
{
    return static_cast<std::size_t>(std::ranges::count_if(points_, &Sample::known));
}

bool Samples::settle_borders()
{
    std::vector<Sample> borders;
    for (std::size_t i = 0; i + 1 < points_.size(); ++i) {
        const Sample a = points_[i], b = points_[i + 1];
        if (a.known() != b.known()) borders.push_back(a.known() ? border(a, b) : border(b, a));
    }
    if (borders.empty()) return false;
    take_in(std::move(borders));
    look_inside();
    return true;
}

Sample Samples::border(Sample known, Sample refused)
{
    for (int i = 0; i < 200; ++i) {
        const double x = middle(std::min(known.x, refused.x), std::max(known.x, refused.x));
        if (x == known.x || x == refused.x) break;
        const Sample p = at(x);
        (p.known() ? known : refused) = p;
    }
    return known;
}

Stretch Samples::computable() const
{
    const auto known = [](const Sample& p) { return p.known(); };
    return {std::find_if(points_.begin(), points_.end(), known)->x,
            std::find_if(points_.rbegin(), points_.rend(), known)->x};
}

bool Samples::single_slope() const
{
    bool rises = true, falls = true, ended = false;
    const Sample* last = nullptr;
    for (const Sample& p : points_) {
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

double Samples::middle(double a, double b) const { return whole_ ? std::floor(a + (b - a) / 2) : point_between(a, b); }

}  // namespace cutwater
