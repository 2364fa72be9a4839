// Star to delta: A. E. Kennelly, Electrical World 34 (1899) 413 (from memory).
#include "rules/rules.h"
#include "rules/star.h"

namespace ohmfold {
namespace {

constexpr ArmCount kArms{3, 3};

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  return without_shared_parts(stars_at(network, frontier.points, kArms));
}

Verdict judge(const Network& network, const Place& place) {
  return judge_star(network, place, kArms);
}

Edit apply(const Network& network, Place place) {
  return mesh_for(network, std::move(place), Formula::delta_side);
}

}  // namespace

Rule star_delta_rule() {
  return {RuleName::star_delta, Tier::transform, find, judge, apply};
}

}  // namespace ohmfold
