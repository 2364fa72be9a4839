// Beam search over a few rewritings; elimination of points where there are many.
#include "solve/delta_way.h"

#include <algorithm>

#include "ohmfold/rule.h"
#include "rules/delta_star.h"
#include "rules/star.h"
#include "solve/lines.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostSearched = 24;  // parts; more are eliminated point after point
constexpr std::size_t kBeam = 6;
constexpr std::size_t kMostDepth = 6;
constexpr std::size_t kMostDeltas = 60;

struct Ranked {
  Trial trial;
  std::size_t parts = 0;  // that are left
  Cost cost;

  [[nodiscard]] bool before(const Ranked& other) const {
    return parts != other.parts ? parts < other.parts : cost < other.cost;
  }
};

std::vector<Reducer::Move> moves_in(const Network& network) {
  const Frontier all = whole(network);
  std::vector<Reducer::Move> moves;
  for (Place& place : deltas_with(network, all.parts, kMostDeltas)) {
    moves.push_back({RuleName::delta_star, std::move(place)});
  }
  for (Place& place : stars_at(network, all.points, {3, 3})) {
    moves.push_back({RuleName::star_delta, std::move(place)});
  }
  return moves;
}

Trial after(const Trial& before, Reducer::Move move) {
  Trial next = before;
  next.plan.push_back({std::move(move)});
  next.reducer.transform(next.plan.back());
  return next;
}

void keep_best(std::vector<Ranked>& beam) {
  std::stable_sort(beam.begin(), beam.end(),
                   [](const Ranked& a, const Ranked& b) { return a.before(b); });
  if (beam.size() > kBeam) beam.erase(beam.begin() + kBeam, beam.end());
}

std::optional<Trial> search(const Reducer& stuck) {
  std::vector<Ranked> beam{{{stuck, {}}, stuck.network().alive_count(), {}}};
  for (std::size_t depth = 0; depth < kMostDepth && !beam.empty(); ++depth) {
    std::vector<Ranked> next;
    for (const Ranked& state : beam) {
      for (Reducer::Move& move : moves_in(state.trial.reducer.network())) {
        Ranked one{after(state.trial, std::move(move)), 0, {}};
        const Reducer& reducer = one.trial.reducer;
        one.parts = reducer.network().alive_count();
        one.cost = cost_of_steps(reducer.steps(), reducer.network(), true);
        next.push_back(std::move(one));
      }
    }
    keep_best(next);
    if (!next.empty() && next.front().trial.reducer.stop() == Stop::reduced) {
      return std::move(next.front().trial);
    }
    beam = std::move(next);
  }
  return std::nullopt;
}

// The star with the fewest arms, as the rule that takes it; nothing where no point can go.
std::optional<Reducer::Move> least_star(const Network& network) {
  std::vector<PointId> points = whole(network).points;
  std::stable_sort(points.begin(), points.end(),
                   [&](PointId a, PointId b) { return network.degree(a) < network.degree(b); });
  for (const PointId point : points) {
    std::vector<Place> stars = stars_at(network, {point}, {3, UINT32_MAX});
    if (stars.empty()) continue;
    const bool three = stars.front().parts.size() == 3;
    return Reducer::Move{three ? RuleName::star_delta : RuleName::node_elimination,
                         std::move(stars.front())};
  }
  return std::nullopt;
}

std::optional<Trial> eliminate(const Reducer& stuck, std::size_t most_made) {
  Trial trial{stuck, {}};
  std::size_t made = 0;
  while (trial.reducer.stop() != Stop::reduced) {
    std::optional<Reducer::Move> move = least_star(trial.reducer.network());
    if (!move) return std::nullopt;
    const std::size_t arms = move->place.parts.size();
    made += arms * (arms - 1) / 2;
    if (made > most_made) return std::nullopt;
    trial.plan.push_back({std::move(*move)});
    trial.reducer.transform(trial.plan.back());
  }
  return trial;
}

}  // namespace

std::optional<Trial> by_delta_and_star(const Reducer& stuck, std::size_t most_made) {
  if (stuck.network().alive_count() <= kMostSearched) {
    if (std::optional<Trial> found = search(stuck)) return found;
  }
  return eliminate(stuck, most_made);
}

}  // namespace ohmfold
