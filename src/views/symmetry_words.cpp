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

/// The Moves facts that follow the one at `at`; moves `at` behind them.
std::vector<Moves> moves_after(std::span<const Fact> why, std::size_t& at) {
  std::vector<Moves> moves;
  for (++at; at < why.size(); ++at) {
    const auto* move = std::get_if<Moves>(&why[at]);
    if (move == nullptr) break;
    moves.push_back(*move);
  }
  return moves;
}

}  // namespace

Words potential_words(const Wording& wording, std::span<const Fact> why) {
  Words words;
  bool again = false;
  for (std::size_t at = 0; at < why.size();) {
    if (!words.empty()) words.add(" ");
    const auto* symmetric = std::get_if<Symmetric>(&why[at]);
    const auto* middle = std::get_if<InTheMiddle>(&why[at]);
    if (symmetric == nullptr && middle == nullptr) {
      words.add(sentence(wording.fact(why[at])));
      ++at;
      continue;
    }
    const Words moves = listed(exchanges(wording, moves_after(why, at)), kMostCycles);
    if (symmetric != nullptr) {
      words.add(again ? "The same when " : "The circuit, with its terminals, stays as it is when ");
      words.add(say(moves, ": ", wording.point(symmetric->first), " and ",
                    wording.point(symmetric->second), " are at the same potential."));
    } else {
      words.add(say("Turned round so that ", moves, ", the circuit is the same and ",
                    wording.point(middle->point),
                    " stays: its potential is half-way between those of the terminals."));
    }
    again = symmetric != nullptr;
  }
  return words;
}

}  // namespace ohmfold::views
