// Why the step of a line may be made, what is in its way, and why it cannot be judged.
#include <algorithm>
#include <array>

#include "ohmfold/error.h"
#include "views/error_words.h"
#include "views/reply.h"

namespace ohmfold::views {

namespace {

bool is_no_pair(const JudgedLine& line) {
  return std::holds_alternative<NoPairClaim>(line.claim.says);
}

/// "R1 and R2 are not in series", what the line claims, taken back.
Words denial(const JudgedLine& line) {
  const Words operands = line.operands();
  const Words what = operands.empty() ? say("The parts of this line") : operands;
  switch (line.judgement.rule) {
    case RuleName::series:
      return say(what, " are not in series");
    case RuleName::parallel:
      return say(what, " are not in parallel");
    case RuleName::equal_potentials:
      return operands.empty() ? say("The two points are not at the same potential")
                              : say(operands, " carries a current");
    case RuleName::delta_star:
      return say(what, " are not in delta");
    case RuleName::star_delta:
      return say(what, " are not in star");
    case RuleName::gap:
    case RuleName::ideal_wire:
    case RuleName::shorted:
    case RuleName::dead_end:
    case RuleName::node_elimination:
    case RuleName::batteries:
      return say("This step may not be made here");
  }
  throw InternalError("a step with an unknown rule");
}

/// What follows for the rule from what is in the way.
Words consequence(RuleName rule, std::span<const Fact> why) {
  const bool divides = std::any_of(why.begin(), why.end(), [](const Fact& fact) {
    return std::holds_alternative<AlsoMeets>(fact) || std::holds_alternative<SourceBetween>(fact);
  });
  if (rule == RuleName::series && divides) return say(" The current can divide there.");
  const bool apart = std::any_of(why.begin(), why.end(), [](const Fact& fact) {
    return std::holds_alternative<EndsDiffer>(fact);
  });
  if (rule == RuleName::parallel && apart) {
    return say(" Parts in parallel join the same two points.");
  }
  return {};
}

/// The errors whose place says more than the refusal does.
constexpr std::array kTelling{KnownError::bridge_part_combined, KnownError::used_already,
                              KnownError::series_of_parallel,   KnownError::pair_overlooked,
                              KnownError::not_balanced,         KnownError::wrong_word};

const Diagnosis* telling_error(const Judgement& judgement) {
  for (const Diagnosis& diagnosis : judgement.errors) {
    if (std::find(kTelling.begin(), kTelling.end(), diagnosis.error) != kTelling.end()) {
      return &diagnosis;
    }
  }
  return nullptr;
}

}  // namespace

Words step_reason(const JudgedLine& line) {
  const Judgement& judgement = line.judgement;
  if (is_no_pair(line)) return say("No pair in series or in parallel is left.");
  if (judgement.why.empty()) return {};
  const Words operands = line.operands();
  const bool one_fact = judgement.why.size() == 1;
  const auto* same = std::get_if<JoinSameTwoPoints>(&judgement.why.front());
  if (same != nullptr && one_fact && !operands.empty()) {
    return say(operands, judgement.operands.size() == 2 ? " both" : " all", " join ",
               line.words.words.point(same->first), " and ", line.words.words.point(same->second),
               ", so they are in parallel.");
  }
  const auto* meet = std::get_if<MeetOnlyAt>(&judgement.why.front());
  if (meet != nullptr && one_fact && judgement.rule == RuleName::series) {
    return say(line.words.words.part(meet->first), " and ", line.words.words.part(meet->second),
               ": nothing else joins at point ", line.words.words.point(meet->point), ".");
  }
  return sentence(line.words.words.facts(judgement.why));
}

Words refusal_words(const JudgedLine& line) {
  const Judgement& judgement = line.judgement;
  const Diagnosis* telling = telling_error(judgement);
  if (is_no_pair(line)) {
    const Words found = say("A pair in series or in parallel is still left.");
    if (telling == nullptr) return found;
    return say(found, " ", error_words(Diagnosed(line, *telling)).point);
  }
  Words words = denial(line);
  if (!judgement.why.empty()) {
    words.add(": ");
    words.add(line.words.words.facts(
        std::span(judgement.why).first(std::min<std::size_t>(judgement.why.size(), 2))));
  }
  words.add(".");
  if (telling != nullptr) return say(words, " ", error_words(Diagnosed(line, *telling)).point);
  return say(words, consequence(judgement.rule, judgement.why));
}

Words hindrance_words(const JudgedLine& line) {
  const Judgement& judgement = line.judgement;
  const Run name = PartName{judgement.name};
  const Words part =
      judgement.part.exists() ? line.words.words.described(judgement.part) : say(name);
  const Words earlier = judgement.earlier ? line.judged.lines(std::span(&*judgement.earlier, 1))
                                          : say("another line");
  switch (judgement.hindrance) {
    case Hindrance::none:
      return {};
    case Hindrance::unknown_name:
      if (judgement.suggestion.empty()) {
        return say("Nothing in the problem or in another line is called ", name, ".");
      }
      return say("Nothing is called ", name, ". Is ", PartName{judgement.suggestion}, " meant?");
    case Hindrance::made_later:
      return say(name, " is made in ", earlier,
                 ", which in turn waits for this one. Put one of the two on given parts.");
    case Hindrance::name_taken:
      return say("The name ", name, " belongs to something else. Give the result another name.");
    case Hindrance::named_twice:
      return say(name, " stands twice in this line. Name each part once.");
    case Hindrance::used_already:
      return say(part.capitalised(), " is part of something else since ", earlier,
                 ". What stands in its place now?");
    case Hindrance::left_out: {
      const Words reason =
          judgement.why.empty() ? Words() : say(": ", line.words.words.facts(judgement.why));
      return say(part.capitalised(), " carries no current in this case", reason, ".");
    }
    case Hindrance::not_a_resistor:
      return say(part.capitalised(), " is not a resistor, so it cannot be combined with one.");
    case Hindrance::no_values:
      return say("This value needs that of ", earlier,
                 ", where it is left out. Write it there first.");
    case Hindrance::lost_track:
      return say("What the circuit has become is open since ", earlier,
                 ". Once that line is mended, this one can be judged.");
    case Hindrance::not_determined:
      return say("The circuit leaves ", line.subject(), " open: no single value follows from it.");
    case Hindrance::too_large:
      return say("The circuit is too large to find ", line.subject(), " for comparison.");
    case Hindrance::several_sources:
      return say(
          "An equivalent resistance needs one source to look from. Name two points, or the "
          "source.");
  }
  throw InternalError("a hindrance of an unknown kind");
}

}  // namespace ohmfold::views
