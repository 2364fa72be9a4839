// Multiplies up the cofactors from a part to the root.
#include "solve/path_back.h"

#include <algorithm>
#include <unordered_map>

#include "circuit/battery_direction.h"
#include "exact/combine.h"
#include "ohmfold/error.h"
#include "ohmfold/solve.h"

namespace ohmfold {
namespace {

constexpr std::uint32_t kNever = UINT32_MAX;

bool runs_along(const Network& end, const Step& step, PartId part) {
  if (step.rule == RuleName::batteries) {
    const auto at = std::find(step.takes.begin(), step.takes.end(), part);
    return battery_runs_along(end, step, static_cast<std::size_t>(at - step.takes.begin()));
  }
  if (step.rule != RuleName::series) return end.from(part) == step.first;
  PointId at = step.first;
  for (const PartId each : step.takes) {
    if (each == part) break;
    at = end.across(each, at);
  }
  return end.from(part) == at;
}

}  // namespace

PathBack::PathBack(const Reduction& reduction)
    : reduction_(reduction), taken_by_(reduction.end.part_count(), kNever) {
  ensure(leads(reduction), "a path back through a network that did not reduce");
  for (std::uint32_t i = 0; i < reduction.steps.size(); ++i) {
    const Step step = reduction.steps[i];
    for (const PartId part : step.takes) taken_by_[part.index] = i;
    if (step.makes.exists()) made_by_.push_back(i);
  }
}

bool PathBack::leads(const Reduction& reduction) {
  return reduction.stop == Stop::reduced && !reduction.choice.made &&
         reduction.end.kind(reduction.source) != ElementKind::port;
}

// The value of a part, worked out again where it was let go: the parts below it that lack one too
// are put in an order in which every part comes after those made from it, and combined backwards.
Ratio PathBack::resistance(PartId part) const {
  const Network& end = reduction_.end;
  if (end.knows_resistance(part)) return end.resistance(part);
  std::vector<PartId> order{part};
  std::unordered_map<std::uint32_t, Ratio> found;
  const auto step_of = [&](PartId made) {
    return reduction_.steps[made_by_[made.index - reduction_.start.part_count()]];
  };
  for (std::size_t i = 0; i < order.size(); ++i) {
    for (const PartId taken : step_of(order[i]).takes) {
      if (!end.knows_resistance(taken)) order.push_back(taken);
    }
  }
  while (true) {
    const Step step = step_of(order.back());
    std::vector<Ratio> values;
    for (const PartId taken : step.takes) {
      const auto at = found.find(taken.index);
      values.push_back(at == found.end() ? end.resistance(taken) : at->second);
      if (at != found.end()) found.erase(at);
    }
    Ratio value = step.formula == Formula::sum ? combine_series(std::move(values))
                                               : combine_parallel(std::move(values));
    if (order.size() == 1) return value;
    found.emplace(order.back().index, std::move(value));
    order.pop_back();
  }
}

// By what k grows from the part that a step made into one that it took: of two, by the other's
// number.
cln::cl_I PathBack::cofactor(const Step& step, PartId part) const {
  const bool series = step.formula == Formula::sum;
  const auto number = [&](PartId id) {
    const Ratio ratio = resistance(id);
    return series ? ratio.q() : ratio.p();
  };
  if (step.takes.size() == 2) return number(step.takes[step.takes[0] == part ? 1 : 0]);
  return cln::exquo(number(step.makes), number(part));
}

// What the root carries for each k and each unit of its own Q: E / (P0 + r Q0), with the
// denominators of E and r brought over; of a source of current J / Q0.
Ratio PathBack::driven() const {
  const Network& end = reduction_.end;
  const Ratio& whole = end.resistance(reduction_.root);
  if (end.kind(reduction_.source) == ElementKind::current_source) {
    const Number& current = end.driven_current(reduction_.source).number;
    return {current.numerator(), current.denominator() * whole.q()};
  }
  const BatteryData& battery = end.battery(reduction_.source);
  const Number& emf = battery.emf.number;
  const Number& internal = battery.internal.number;
  return {
      emf.numerator() * internal.denominator(),
      emf.denominator() * (whole.p() * internal.denominator() + internal.numerator() * whole.q())};
}

std::optional<Ratio> PathBack::current(PartId part) const {
  const Network& end = reduction_.end;
  cln::cl_I k = 1;
  bool along = true;
  PartId at = part;
  while (taken_by_[at.index] != kNever) {
    const Step step = reduction_.steps[taken_by_[at.index]];
    if (!step.makes.exists()) {
      if (is_wire(end.kind(at))) return std::nullopt;
      return Ratio();
    }
    if (step.rule != RuleName::batteries) k = k * cofactor(step, at);
    along = along == runs_along(end, step, at);
    at = step.makes;
  }
  const Ratio root = driven();
  const Ratio& whole = end.resistance(reduction_.root);
  if (at == reduction_.source) {
    const cln::cl_I whole_current = root.p() * whole.q();
    return Ratio(along ? whole_current : -whole_current, root.q());
  }
  // The root carries the battery's current onwards from the positive terminal.
  along = along == (end.from(reduction_.root) == end.to(reduction_.source));
  const cln::cl_I size = root.p() * k * resistance(part).q();
  return Ratio(along ? size : -size, root.q());
}

Ratio current_through(const Reduction& reduction, PartId part) {
  const std::optional<Ratio> current = PathBack(reduction).current(part);
  ensure(current.has_value(), "the current of an ideal wire has no path of its own");
  return *current;
}

}  // namespace ohmfold
