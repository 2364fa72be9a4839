// Voltage divider and current divider.
#include "views/another_way.h"

#include <algorithm>

namespace ohmfold::views {

namespace {

bool combines_two_of_the_file(const Scene& scene, const Step& step) {
  const bool combines = step.rule == RuleName::series || step.rule == RuleName::parallel;
  return combines && step.takes.size() == 2 && std::ranges::all_of(step.takes, [&](PartId part) {
           return part.index < scene.problem.parts.size();
         });
}

/// What the way back found of a part that a step made.
std::optional<Quantity> found(const CaseTrace& trace, Subject subject, PartId part) {
  for (const Return& item : trace.returns) {
    if (item.subject == subject && item.part == part) return item.value.value;
  }
  return std::nullopt;
}

/// share = whole · part / (first + second), in symbols and numbers; nothing where the share is
/// counted the other way round.
std::optional<AnotherWay> divided(const Scene& scene, const CaseTrace& trace, const Step& step) {
  const bool series = step.rule == RuleName::series;
  const Subject subject = series ? Subject::voltage : Subject::current;
  const PartId of = step.takes[0];
  const PartId above = series ? of : step.takes[1];
  const std::optional<Quantity> whole = found(trace, subject, step.makes);
  if (!whole || of.index >= trace.branches.size()) return std::nullopt;
  const BranchResult& branch = trace.branches[of.index];
  const Reading& share = series ? branch.voltage : branch.current;
  if (!share.value || share.value->number.is_zero()) return std::nullopt;
  const Quantity first = scene.resistance(step.takes[0]);
  const Quantity second = scene.resistance(step.takes[1]);
  const Quantity total(first.number + second.number, Unit::ohm);
  if (total.number.is_zero() || total.number.is_symbolic() || share.value->number.is_symbolic())
    return std::nullopt;
  const Quantity top = scene.resistance(above);
  if (whole->number * top.number / total.number != share.value->number) return std::nullopt;

  const Symbols& symbols = scene.symbols;
  Equation line{series ? symbols.voltage(of) : symbols.current(of), {}, {}};
  line.links.push_back(
      {Relation::equal,
       product(series ? symbols.voltage(step.makes) : symbols.current(step.makes),
               quotient(symbols.value(above),
                        sum({symbols.value(step.takes[0]), symbols.value(step.takes[1])})))});
  Expression values =
      product(scene.put_in(*whole), quotient(scene.put_in(top), scene.put_in(total)));
  if (has_unwritten_amount(values)) return std::nullopt;
  line.links.push_back({Relation::equal, std::move(values)});
  append_value(line, *share.value, scene.figures);
  return AnotherWay{
      series
          ? say("Another way, the voltage divider: two parts in series share the voltage in "
                "proportion to their resistances.")
          : say("Another way, the current divider: two parts in parallel share the current, each "
                "in proportion to the other's resistance."),
      std::move(line)};
}

}  // namespace

std::optional<AnotherWay> another_way(const Scene& scene, const CaseTrace& trace) {
  if (!trace.shares.empty() || !trace.complete) return std::nullopt;
  const StepLog& steps = scene.reduction.steps;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (combines_two_of_the_file(scene, steps[i])) return divided(scene, trace, steps[i]);
  }
  return std::nullopt;
}

}  // namespace ohmfold::views
