// Leaving out and joining, stage after stage.
#include "solve/equal_way.h"

#include "rules/equal_potentials.h"

namespace ohmfold {
namespace {

std::vector<Reducer::Move> moves_at(std::vector<Place> places) {
  std::vector<Reducer::Move> moves;
  moves.reserve(places.size());
  for (Place& place : places) moves.push_back({RuleName::equal_potentials, std::move(place)});
  return moves;
}

}  // namespace

Trial by_equal_potentials_alone(const Reducer& stuck, EqualUse use) {
  Trial trial{stuck, {}};
  while (trial.reducer.stop() == Stop::bridge) {
    EqualPotentials found = equal_potentials_in(trial.reducer.network());
    if (found.empty()) break;
    const bool leave_out = use == EqualUse::leave_out ? !found.cuts.empty() : found.merges.empty();
    const std::size_t before = trial.reducer.steps().size();
    trial.plan.push_back(moves_at(std::move(leave_out ? found.cuts : found.merges)));
    trial.reducer.transform(trial.plan.back());
    if (trial.reducer.steps().size() > before) continue;
    trial.plan.pop_back();
    break;
  }
  return trial;
}

}  // namespace ohmfold
