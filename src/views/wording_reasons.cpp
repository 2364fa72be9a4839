// Why a step may be made, and why a law gives a value, as sentences that name parts and points.
#include <algorithm>

#include "ohmfold/error.h"
#include "views/wording.h"

namespace ohmfold::views {

namespace {

std::string_view both_or_all(std::size_t count) {
  return count == 2 ? "both" : "all of them";
}

}  // namespace

Words Wording::action(const Step& step) const {
  const Words taken = parts(step.takes);
  switch (step.rule) {
    case RuleName::gap:
      return say("Leave out ", taken, ".");
    case RuleName::ideal_wire:
      if (step.merges.size() == 1) return say("Leave out ", taken, ": both ends on one point.");
      return say("Make ", points(step.merges), " one point.");
    case RuleName::shorted:
      return say("Leave out ", taken, ": short-circuited.");
    case RuleName::dead_end:
      return say("Leave out ", taken, ": no closed path.");
    case RuleName::series:
      return say("Combine ", taken, " in series into ", part(step.makes), ".");
    case RuleName::parallel:
      return say("Combine ", taken, " in parallel into ", part(step.makes), ".");
    case RuleName::equal_potentials:
    case RuleName::delta_star:
    case RuleName::star_delta:
    case RuleName::node_elimination:
      return rewriting(step);
    case RuleName::batteries:
      return say("Add the batteries ", taken, " of one chain to ", part(step.makes), ".");
  }
  throw InternalError("a step with an unknown rule");
}

Words Wording::dead_end_reason(const Step& step) const {
  const bool one = step.takes.size() == 1;
  const Words why = network_.left_out_facts(step.takes, step.why);
  const Words carry = say(one ? ": it carries" : ": they carry", " no current");
  const Fact& first = step.why.front();
  if (std::holds_alternative<HangsFrom>(first)) {
    return sentence(say(why, ", so no closed path runs through ", one ? "it" : "them", carry));
  }
  if (std::holds_alternative<JoinedToNothing>(first)) return sentence(say(why, carry));
  return sentence(say(why, ", so what passed there could not come back", carry));
}

Words Wording::reason(const Step& step) const {
  const std::size_t count = step.takes.size();
  const Words why = network_.facts(step.why);
  switch (step.rule) {
    case RuleName::gap:
      return sentence(why);
    case RuleName::ideal_wire: {
      const PointId kept = *std::min_element(step.merges.begin(), step.merges.end());
      Words words = sentence(why);
      if (step.merges.size() == 1) return words;
      words.add(" No voltage lies between ");
      words.add(points(step.merges));
      return say(words, ", so from here on they are one point, called ", point(kept), ".");
    }
    case RuleName::shorted:
      return sentence(
          say(why, ", so there is no voltage across it and no current runs through it"));
    case RuleName::dead_end:
      return dead_end_reason(step);
    case RuleName::series:
      return sentence(say(why, ", so the same current runs through ", both_or_all(count)));
    case RuleName::parallel:
      return say(parts(step.takes), count == 2 ? " both" : " all", " join ", point(step.first),
                 " and ", point(step.second), ", so the same voltage lies across ",
                 both_or_all(count), ".");
    case RuleName::equal_potentials:
    case RuleName::delta_star:
    case RuleName::star_delta:
    case RuleName::node_elimination:
      return rewriting_reason(step);
    case RuleName::batteries:
      return batteries_reason(step);
  }
  throw InternalError("a step with an unknown rule");
}

Words Wording::batteries_reason(const Step& step) const {
  const PartId first = step.takes.front();
  Words words =
      say("Nothing branches off between ", parts(step.takes), ", so one current runs through ",
          both_or_all(step.takes.size()), ": ", network_.facts(step.why), ". From here on ",
          part(step.makes), " stands in the place of ", part(first));
  const NewPart& made = step.adds.front();
  if (made.from != reduction_.end.from(first)) words.add(", turned round");
  const bool real = !made.resistance.is_zero();
  return say(words, real ? ", with all internal resistances" : "", ", and a wire in that of ",
             parts(step.takes.subspan(1)), ".");
}

Words Wording::reason(const Return& item) const {
  const Words of = item.part.exists()    ? say(part(item.part))
                   : item.point.exists() ? say("point ", point(item.point))
                                         : say("the circuit");
  const Words from = parts(item.from, 6);
  switch (item.law) {
    case Law::same_current:
      if (item.step == 0) return say("The current of ", from, " runs through ", of, ".");
      if (network_.is_kind(item.part, ElementKind::battery))
        return say("The current of ", from, " runs through ", of, ".");
      return say(of, " is in series with the other parts of ", from,
                 ", so the same current runs through it.");
    case Law::same_voltage:
      if (item.step == 0) return say(of, " joins the terminals of ", from, ".");
      return say(of, " is in parallel with the other parts of ", from,
                 ", so the same voltage lies across it.");
    case Law::ohm_current:
      return say("Ohm's law for ", of, ": I = V / R.");
    case Law::ohm_voltage:
      return say("Ohm's law for ", of, ": V = I · R.");
    case Law::current_cut:
      return say("At one end of ", of, " what comes in goes out.");
    case Law::voltage_loop:
      return loop_reason(item);
    case Law::zero_current:
      if (item.step != 0 && reduction_.steps[item.step - 1].rule == RuleName::shorted) {
        return say("Without a voltage across ", of, " no current runs through it.");
      }
      return say("No closed path through a source runs through ", of, ".");
    case Law::zero_voltage:
      return say("Both ends of ", of, " are on one point.");
    case Law::not_determined:
      return sentence(say("not determined: ", why_undetermined(item.value.why)));
    case Law::source:
      return say(
          "Ohm's law for the whole circuit: I = E / (R + r), with R for what the battery "
          "feeds and r for its internal resistance.");
    case Law::node_voltage:
      return say("The difference of two potentials from node-voltage analysis.");
    case Law::power:
      if (network_.is_kind(item.part, ElementKind::current_source)) {
        return say("It delivers its current times the rise of the potential through it.");
      }
      return say("Power is voltage times current.");
    case Law::terminal:
      return say("For a battery V = E − I · r, with r for its internal resistance.");
    case Law::two_arms:
      return say("From one end of ", of, " to the other along two arms of the star.");
    case Law::sides_at_end:
      return say("At its outer end ", of, " carries what the parts made from it carry from there.");
    case Law::equal_potentials:
      return say("Both ends of ", of, " are at the same potential.");
    case Law::given_current:
      return say("The current of source ", of, " is given.");
    case Law::superposition:
      return say("The sum of what each source does alone.");
  }
  throw InternalError("a return with an unknown law");
}

Words Wording::loop_reason(const Return& item) const {
  if (item.subject != Subject::potential) {
    return say("The difference of the potentials at its two ends.");
  }
  if (item.from.empty()) return say("Potentials are counted from this point.");
  return say("The potential at the other end of ", parts(item.from, 6),
             ", and the voltage across it.");
}

Words Wording::caution(const Caution& caution) const {
  const Amount value{caution.value, Form::decimal, problem_.figures};
  switch (caution.kind) {
    case CautionKind::part_power:
      return say(part(caution.part), " takes up ", value,
                 ": more than the 1/4\u00A0W that a common small resistor bears.");
    case CautionKind::high_voltage:
      if (!caution.part.exists()) {
        return say("Between two of the points there is ", value,
                   ": more than 60\u00A0V can give a dangerous shock.");
      }
      return say("There is ", value, " across ", part(caution.part),
                 ": more than 60\u00A0V can give a dangerous shock.");
    case CautionKind::battery_current:
      return say("Battery ", part(caution.part), " gives ", value,
                 ": currents above 10\u00A0A heat wires and can start a fire.");
    case CautionKind::short_circuit:
      return say("Battery ", part(caution.part), " is short-circuited and gives ", value,
                 ": a real one gets hot and can burst.");
  }
  throw InternalError("a caution of an unknown kind");
}

Words Wording::remark(const Remark& remark) const {
  const Amount value{remark.value, Form::compact, problem_.figures};
  switch (remark.kind) {
    case RemarkKind::battery_charged:
      return say("Battery ", part(remark.part), " is being charged: ", value,
                 " runs into its + terminal, so it takes up power instead of delivering it.");
    case RemarkKind::battery_idle:
      return say("Battery ", part(remark.part), " delivers nothing: no current runs through it.");
  }
  throw InternalError("a remark of an unknown kind");
}

Words Wording::blocked_current(const Contradiction& contradiction) const {
  const std::span<const PartId> sources = contradiction.loop;
  const Amount rest{Quantity(contradiction.surplus), Form::given, problem_.figures};
  const Words where = points(contradiction.points, 8);
  if (sources.size() == 1) {
    return say("the ", rest, " of source ", part(sources.front()),
               " have no way back: no path outside the source joins its two ends");
  }
  return say("the sources ", parts(sources, 8), " do not agree: at ", where, ", ", rest,
             sources.size() == 2 ? " of one is not taken on by the other" : " is left over",
             ", and there is no other way");
}

Words Wording::contradiction(const Contradiction& contradiction) const {
  const std::span<const PartId> loop = contradiction.loop;
  const Amount rest{Quantity(contradiction.remainder), Form::given, problem_.figures};
  const Words where =
      contradiction.points.empty() ? Words() : say(" through ", points(contradiction.points, 8));
  Words words;
  switch (contradiction.kind) {
    case ContradictionKind::unknown_not_found:
      return say("no value of the unknown fits what is given");
    case ContradictionKind::battery_shorted:
      words.add(say("ideal battery ", part(loop.front()), " is short-circuited by ",
                    loop.size() > 1 ? parts(loop.subspan(1), 8) : say("a wire")));
      break;
    case ContradictionKind::batteries_disagree:
      words.add(say("the ideal parts ", parts(loop, 8),
                    " form a loop whose voltages do not sum to zero"));
      break;
    case ContradictionKind::current_blocked:
      return blocked_current(contradiction);
  }
  return say(words, ": round the loop", where, ", ", rest, " is left over");
}

}  // namespace ohmfold::views
