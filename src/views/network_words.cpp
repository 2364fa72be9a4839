// Parts, points and facts in words.
#include "views/network_words.h"

namespace ohmfold::views {

namespace {

/// More facts than this are not all listed: a long chain has one for every point.
constexpr std::size_t kMostFacts = 4;

/// Reads one fact with the words of the network at hand.
class FactReader {
 public:
  FactReader(const NetworkWords& words, const Problem& problem)
      : words_(words), problem_(problem) {}

  // Why a rule holds.
  Words operator()(const IsOpenSwitch& f) const {
    return say("switch ", part(f.part), " is open, so it joins nothing");
  }
  Words operator()(const IsVoltmeter& f) const {
    return say("voltmeter ", part(f.part), " is ideal, so no current runs through it");
  }
  Words operator()(const IsTakenOut& f) const {
    if (is_battery(f.part)) return say("battery ", part(f.part), " is lifted out");
    if (is_current_source(f.part)) return say("source ", part(f.part), " is lifted out");
    return say(part(f.part), " is taken out");
  }
  Words operator()(const IsWire& f) const {
    if (is_battery(f.part)) {
      return say("battery ", part(f.part),
                 " is replaced by its internal resistance of 0\u00A0Ω, an ideal wire");
    }
    if (problem_.part(f.part).kind != PartKind::wire) {
      return say(part(f.part), " has 0\u00A0Ω, so it is an ideal wire");
    }
    return say(part(f.part), " is an ideal wire");
  }
  Words operator()(const IsClosedSwitch& f) const {
    return say("switch ", part(f.part), " is closed, so it is an ideal wire");
  }
  Words operator()(const IsAmmeter& f) const {
    return say("ammeter ", part(f.part), " is ideal, so it is a wire");
  }
  Words operator()(const IsShorted& f) const {
    return say("a wire stands in place of ", part(f.part));
  }
  Words operator()(const IsSwitchedOff& f) const {
    return say("source ", part(f.part), " is replaced by a gap: it gives no current");
  }
  Words operator()(const DriveAlike& f) const {
    return say(part(f.first), " and ", part(f.second), " drive it the same way");
  }
  Words operator()(const DriveAgainst& f) const {
    return say(part(f.second), " drives against ", part(f.first));
  }
  Words operator()(const NotABattery& f) const {
    return say(words_.described(f.part), " is not a battery");
  }
  Words operator()(const BothEndsOn& f) const {
    return say("both ends of ", part(f.part), " are joined to point ", point(f.point));
  }
  Words operator()(const HangsFrom& f) const {
    return say("only point ", point(f.point), " joins this piece to the rest of the circuit");
  }
  Words operator()(const IsOnlyLink& f) const {
    return say(part(f.part), " is the only link between its two sides");
  }
  Words operator()(const JoinedToNothing&) const {
    return say("no source is joined to this piece");
  }
  Words operator()(const MeetOnlyAt& f) const {
    return say("only ", part(f.first), " and ", part(f.second), " meet at point ", point(f.point));
  }
  Words operator()(const CarryOneCurrent& f) const {
    return say("whatever current passes ", part(f.first), " passes ", part(f.second), " too");
  }
  Words operator()(const JoinSameTwoPoints& f) const {
    return say("the parts join the same two points, ", point(f.first), " and ", point(f.second));
  }

  Words operator()(const FormDelta& f) const {
    return say("the parts form a triangle between ", point(f.a), ", ", point(f.b), " and ",
               point(f.c));
  }
  Words operator()(const AllMeetAt& f) const {
    return say("nothing else is joined at point ", point(f.point));
  }
  Words operator()(const Balanced& f) const {
    return say(part(f.first_near), " is to ", part(f.first_far), " as ", part(f.second_near),
               " is to ", part(f.second_far), ", so there is no voltage across ", part(f.part));
  }
  Words operator()(const Symmetric& f) const {
    return say("a symmetry of the circuit puts point ", point(f.second), " in the place of point ",
               point(f.first));
  }
  Words operator()(const InTheMiddle& f) const {
    return say("point ", point(f.point), " is half-way between the terminals");
  }
  Words operator()(const Moves& f) const {
    return say("it moves ", point(f.from), " to ", point(f.to));
  }
  Words operator()(const SamePotential& f) const {
    return say("points ", point(f.first), " and ", point(f.second), " are at the same potential");
  }

  // Why it does not.
  Words operator()(const TooFewParts&) const { return say("it takes two parts or more"); }
  Words operator()(const AlsoMeets& f) const {
    return say("at point ", point(f.point), ", ", part(f.part), " is joined too");
  }
  Words operator()(const SourceBetween& f) const {
    if (words_.is_port(f.source)) {
      return say("point ", point(f.point), " is one of the two points asked about");
    }
    return say("at point ", point(f.point), ", ", words_.described(f.source), " is joined too");
  }
  Words operator()(const ShareNoPoint& f) const {
    return say(part(f.first), " and ", part(f.second), " share no point");
  }
  Words operator()(const EndsDiffer& f) const {
    return say(part(f.first), " ends at point ", point(f.first_end), ", but ", part(f.second),
               " ends at point ", point(f.second_end));
  }
  Words operator()(const NotAResistor& f) const {
    return say(words_.described(f.part), " is not a resistor");
  }
  Words operator()(const IsNotAGap& f) const {
    return say(words_.described(f.part), " joins its two points, so it cannot be left out");
  }
  Words operator()(const IsNotAWire& f) const {
    return say(words_.described(f.part), " is not an ideal wire");
  }
  Words operator()(const EndsApart& f) const {
    return say("the ends of ", part(f.part), " are two different points, ", point(f.first), " and ",
               point(f.second));
  }
  Words operator()(const LiesOnALoop& f) const {
    return say("a closed path through a source runs through ", part(f.part));
  }
  Words operator()(const ChainCloses& f) const {
    return say("the chain that begins with ", part(f.part), " comes back to point ",
               point(f.point));
  }
  Words operator()(const WrongNumber& f) const {
    return say("it takes ", std::to_string(f.wanted), " parts", f.or_more ? " or more" : "");
  }
  Words operator()(const FormNoDelta& f) const {
    return say(part(f.part), " does not close a triangle with the others");
  }
  Words operator()(const EndTogether& f) const {
    return say(part(f.first), " and ", part(f.second), " both end at point ", point(f.point));
  }
  Words operator()(const PotentialsDiffer& f) const {
    return say("point ", point(f.higher), " is at a higher potential than point ", point(f.lower));
  }
  Words operator()(const NotOneSource&) const {
    return say("potentials are compared as one source drives them through resistors alone");
  }
  Words operator()(const NotFed& f) const {
    return say("no resistors join point ", point(f.point), " to the source");
  }
  Words operator()(const TooLargeToTell&) const {
    return say("the circuit is too large to compare its potentials exactly");
  }

 private:
  Run part(PartId id) const { return words_.part(id); }
  Run point(PointId id) const { return words_.point(id); }
  bool is_of_file(PartId id) const { return id.index < problem_.parts.size(); }
  bool is_current_source(PartId id) const {
    return is_of_file(id) && problem_.part(id).kind == PartKind::current_source;
  }
  bool is_battery(PartId id) const {
    return is_of_file(id) && problem_.part(id).kind == PartKind::battery;
  }

  const NetworkWords& words_;
  const Problem& problem_;
};

}  // namespace

Words NetworkWords::parts(std::span<const PartId> ids, std::size_t most) const {
  std::vector<Words> names;
  names.reserve(ids.size());
  for (const PartId id : ids) names.push_back(say(part(id)));
  return listed(names, most);
}

Words NetworkWords::points(std::span<const PointId> ids, std::size_t most) const {
  std::vector<Words> names;
  names.reserve(ids.size());
  for (const PointId id : ids) names.push_back(say(point(id)));
  return listed(names, most);
}

bool NetworkWords::is_port(PartId id) const {
  return id.index >= network_.part_count() || network_.kind(id) == ElementKind::port;
}

Words NetworkWords::described(PartId id) const {
  if (id.index >= problem_.parts.size()) {
    if (is_port(id)) return say("the pair of points asked about");
    const bool battery = network_.kind(id) == ElementKind::battery;
    return say(battery ? "battery " : "", part(id));
  }
  switch (problem_.part(id).kind) {
    case PartKind::battery:
      return say("battery ", part(id));
    case PartKind::knife_switch:
      return say("switch ", part(id));
    case PartKind::ammeter:
      return say("ammeter ", part(id));
    case PartKind::voltmeter:
      return say("voltmeter ", part(id));
    case PartKind::lamp:
      return say("lamp ", part(id));
    case PartKind::current_source:
      return say("source ", part(id));
    case PartKind::resistor:
    case PartKind::wire:
      return say(part(id));
  }
  return {};
}

Words NetworkWords::fact(const Fact& fact) const {
  return std::visit(FactReader(*this, problem_), fact);
}

Words NetworkWords::left_out_facts(std::span<const PartId> taken, std::span<const Fact> why) const {
  const auto* hangs = why.empty() ? nullptr : std::get_if<HangsFrom>(&why.front());
  if (hangs != nullptr) {
    return say(parts(taken), taken.size() == 1 ? " meets" : " meet",
               " the rest of the circuit at point ", point(hangs->point), " alone");
  }
  if (!why.empty() && std::holds_alternative<JoinedToNothing>(why.front())) {
    return say("no source is joined to ", parts(taken));
  }
  return facts(why);
}

Words NetworkWords::facts(std::span<const Fact> why) const {
  std::vector<Words> clauses;
  for (const Fact& one : why) {
    if (clauses.size() == kMostFacts && why.size() > kMostFacts) break;
    // "only R1 and R2 meet at point A, and only R2 and R3 at point B"
    const auto* meet = std::get_if<MeetOnlyAt>(&one);
    if (meet != nullptr && !clauses.empty()) {
      clauses.push_back(say("only ", part(meet->first), " and ", part(meet->second), " at point ",
                            point(meet->point)));
    } else {
      clauses.push_back(fact(one));
    }
  }
  if (why.size() > kMostFacts) {
    Words words = clauses.front();
    for (std::size_t i = 1; i < clauses.size(); ++i) words.add(say("; ", clauses[i]));
    return say(words, "; and so on");
  }
  Words words;
  for (std::size_t i = 0; i < clauses.size(); ++i) {
    if (i > 0) words.add(i + 1 == clauses.size() ? ", and " : ", ");
    words.add(clauses[i]);
  }
  return words;
}

}  // namespace ohmfold::views
