// Multiplies up the cofactors from a part to the root.
#include "solve/path_back.h"

#include <algorithm>

#include "ohmfold/error.h"
#include "ohmfold/solve.h"

namespace ohmfold {
namespace {

constexpr std::uint32_t kNever = UINT32_MAX;

// whole / part, where that is known to be a whole number.
cln::cl_I cofactor(const cln::cl_I& whole, const cln::cl_I& part, const cln::cl_I* sibling) {
  if (whole == part) return 1;
  // Of two parts, the other's own number is the quotient (unless they shared it: then whole ==
  // part).
  if (sibling != nullptr) return *sibling;
  return cln::exquo(whole, part);
}

const PartId* other_of_two(const Step& step, PartId part) {
  if (step.takes.size() != 2) return nullptr;
  return &step.takes[step.takes[0] == part ? 1 : 0];
}

bool runs_along(const Network& end, const Step& step, PartId part) {
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
  ensure(reduction.stop == Stop::reduced, "a path back through a network that did not reduce");
  for (std::uint32_t i = 0; i < reduction.steps.size(); ++i) {
    for (const PartId part : reduction.steps[i].takes) taken_by_[part.index] = i;
  }
}

std::optional<Current> PathBack::current(PartId part) const {
  const Network& end = reduction_.end;
  cln::cl_I k = 1;
  bool along = true;
  PartId at = part;
  while (taken_by_[at.index] != kNever) {
    const Step step = reduction_.steps[taken_by_[at.index]];
    if (!step.makes.exists()) {
      if (is_wire(end.kind(at))) return std::nullopt;
      return Current{};
    }
    const Ratio& own = end.resistance(at);
    const Ratio& made = end.resistance(step.makes);
    const PartId* other = other_of_two(step, at);
    const Ratio* sibling = other == nullptr ? nullptr : &end.resistance(*other);
    if (step.rule == RuleName::series) {
      k = k * cofactor(made.q(), own.q(), sibling == nullptr ? nullptr : &sibling->q());
    } else {
      k = k * cofactor(made.p(), own.p(), sibling == nullptr ? nullptr : &sibling->p());
    }
    along = along == runs_along(end, step, at);
    at = step.makes;
  }
  const BatteryData& battery = end.battery(reduction_.source);
  const Ratio& whole = end.resistance(reduction_.root);
  const Number driven =
      battery.emf.number /
      (Number(cln::cl_RA(whole.p())) + battery.internal.number * Number(cln::cl_RA(whole.q())));
  if (at == reduction_.source) return Current{driven * Number(cln::cl_RA(whole.q()))};
  // The root carries the battery's current onwards from the positive terminal.
  along = along == (end.from(reduction_.root) == end.to(reduction_.source));
  const Number size = driven * Number(cln::cl_RA(k * end.resistance(part).q()));
  return Current{along ? size : -size};
}

Current current_through(const Reduction& reduction, PartId part) {
  const std::optional<Current> current = PathBack(reduction).current(part);
  ensure(current.has_value(), "the current of an ideal wire has no path of its own");
  return *current;
}

}  // namespace ohmfold
