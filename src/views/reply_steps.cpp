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

/// "R1 and R2 are not in series": what a combination or a rewriting claims, taken back.
Words denied_rule(const JudgedLine& line) {
  const Words operands = line.operands();
  const Words what = operands.empty() ? say("The parts of this line") : operands;
  switch (line.judgement.rule) {
    case RuleName::series:
      return say(what, " are not in series");
    case RuleName::parallel:
      return say(what, " are not in parallel");
    case RuleName::delta_star:
      return say(what, " are not in delta");
    case RuleName::star_delta:
      return say(what, " are not in star");
    case RuleName::gap:
    case RuleName::ideal_wire:
    case RuleName::shorted:
    case RuleName::dead_end:
    case RuleName::equal_potentials:
    case RuleName::node_elimination:
    case RuleName::batteries:
      return say("This step may not be made here");
  }
  throw InternalError("a step with an unknown rule");
}

/// What the line claims, taken back.
class Denial {
 public:
  explicit Denial(const JudgedLine& line) : line_(line) {}

  Words operator()(const CombineClaim&) const { return denied_rule(line_); }
  Words operator()(const RewriteClaim&) const { return denied_rule(line_); }
  Words operator()(const SamePotentialClaim& claim) const {
    return say(PointName{claim.first.text}, " and ", PointName{claim.second.text},
               " are not at the same potential");
  }
  Words operator()(const NoCurrentClaim& claim) const {
    return say("A current runs through ", PartName{claim.part.text});
  }
  Words operator()(const NoPairClaim&) const {
    return say("A pair in series or in parallel is still left");
  }
  Words operator()(const ValueClaim&) const { return denied_rule(line_); }
  Words operator()(const CaseClaim&) const { return denied_rule(line_); }

 private:
  const JudgedLine& line_;
};

/// What stands against the step; of the two parts just named, "they".
Words against(const JudgedLine& line) {
  constexpr std::size_t kMostFacts = 2;
  const std::span<const Fact> why(line.judgement.why);
  const bool of_two = line.judgement.operands.size() == 2;
  if (of_two && why.size() == 1 && std::holds_alternative<ShareNoPoint>(why.front())) {
    return say("they share no point");
  }
  return line.words.words.facts(why.first(std::min(why.size(), kMostFacts)));
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
  Words words = std::visit(Denial(line), line.claim.says);
  if (!judgement.why.empty()) words.add(say(": ", against(line)));
  words.add(".");
  const Diagnosis* telling = telling_error(judgement);
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
                 ", which in turn waits for this one. Begin one of the two with parts that are "
                 "there.");
    case Hindrance::name_taken:
      return say("The name ", name, " belongs to something else. Give the result another name.");
    case Hindrance::named_twice:
      return say(name, " stands twice in this line. Name each part once.");
    case Hindrance::used_already:
      return say(part.capitalised(), judgement.earlier ? " went into another part in " : " is in ",
                 judgement.earlier ? earlier : say("another part by now"),
                 ". What stands in its place now?");
    case Hindrance::left_out:
      return say(part.capitalised(), " carries no current in this case",
                 judgement.why.empty()
                     ? Words()
                     : say(": ", line.words.words.left_out_facts(std::span(&judgement.part, 1),
                                                                 judgement.why)),
                 ".");
    case Hindrance::not_a_resistor:
      return say(part.capitalised(), " is not a resistor, so it cannot be combined with one.");
    case Hindrance::no_values:
      return say("This value needs that of ", earlier,
                 ", where it is left out. Write it there first.");
    case Hindrance::lost_track:
      return say(earlier.capitalised(),
                 " leaves open what the circuit has become. Once that is "
                 "mended, this line can be judged.");
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
