// Symmetries as what changes places with what.
#include "views/symmetry_words.h"

#include <algorithm>

namespace ohmfold::views {

namespace {

constexpr std::size_t kMostCycles = 6;

/// The moves of one symmetry as phrases: "B changes places with D", "C goes to E, E to F and F to
/// C".
std::vector<Words> exchanges(const Wording& wording, std::vector<Moves> moves) {
  std::vector<Words> phrases;
  while (!moves.empty()) {
    const PointId begin = moves.front().from;
    std::vector<PointId> cycle;
    for (PointId at = begin; cycle.empty() || at != begin;) {
      cycle.push_back(at);
      const auto next = std::find_if(moves.begin(), moves.end(),
                                     [&](const Moves& move) { return move.from == at; });
      if (next == moves.end()) break;
      at = next->to;
      moves.erase(next);
    }
    if (cycle.size() == 2) {
      phrases.push_back(
          say(wording.point(cycle[0]), " changes places with ", wording.point(cycle[1])));
      continue;
    }
    std::vector<Words> parts;
    for (std::size_t i = 0; i < cycle.size(); ++i) {
      parts.push_back(say(wording.point(cycle[i]), i == 0 ? " goes to " : " to ",
                          wording.point(cycle[(i + 1) % cycle.size()])));
    }
    phrases.push_back(listed(parts, kMostCycles));
  }
  return phrases;
}

/// The facts of one kind from `at` on; moves `at` behind them.
template <class Kind>
std::vector<Kind> taken_from(std::span<const Fact> why, std::size_t& at) {
  std::vector<Kind> facts;
  for (; at < why.size(); ++at) {
    const auto* one = std::get_if<Kind>(&why[at]);
    if (one == nullptr) break;
    facts.push_back(*one);
  }
  return facts;
}

Words equal_words(const Wording& wording, const std::vector<Symmetric>& equal) {
  std::vector<Words> pairs;
  pairs.reserve(equal.size());
  for (const Symmetric& one : equal) {
    pairs.push_back(say(wording.point(one.first), " and ", wording.point(one.second)));
  }
  if (pairs.size() == 1) return say(pairs.front(), " are at the same potential.");
  return say(listed(pairs, kMostCycles), " are pairs of points at the same potential.");
}

Words middle_words(const Wording& wording, const std::vector<InTheMiddle>& middle) {
  std::vector<PointId> points;
  points.reserve(middle.size());
  for (const InTheMiddle& one : middle) points.push_back(one.point);
  return say(wording.points(points, kMostCycles),
             points.size() == 1 ? " stays where it is: its potential is"
                                : " stay where they are: their potentials are",
             " half-way between those of the two terminals.");
}

}  // namespace

Words potential_words(const Wording& wording, std::span<const Fact> why) {
  Words words;
  for (std::size_t at = 0; at < why.size();) {
    if (!words.empty()) words.add(" ");
    const auto equal = taken_from<Symmetric>(why, at);
    const auto middle = taken_from<InTheMiddle>(why, at);
    const auto moves = taken_from<Moves>(why, at);
    if (moves.empty()) {
      words.add(sentence(wording.fact(why[at])));
      ++at;
      continue;
    }
    const Words exchanged = listed(exchanges(wording, moves), kMostCycles);
    if (!equal.empty()) {
      words.add(say("The circuit is the same, and its terminals stay, when ", exchanged, ": ",
                    equal_words(wording, equal)));
    } else {
      words.add(say("Turned round, so that ", exchanged, ", the circuit is the same. ",
                    middle_words(wording, middle)));
    }
  }
  return words;
}

}  // namespace ohmfold::views
