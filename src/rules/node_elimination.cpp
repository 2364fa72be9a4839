// Star to mesh: a point with four resistors or more is eliminated.
#include "rules/rules.h"
#include "rules/star.h"

namespace ohmfold {
namespace {

constexpr ArmCount kArms{4, UINT32_MAX};

std::vector<Place> find(const Network& network, const Frontier& frontier) {
  return without_shared_parts(stars_at(network, frontier.points, kArms));
}

Verdict judge(const Network& network, const Place& place) {
  return judge_star(network, place, kArms);
}

Edit apply(const Network& network, Place place) {
  return mesh_for(network, std::move(place), Formula::mesh_side);
}

}  // namespace

Rule node_elimination_rule() {
  return {RuleName::node_elimination, Tier::transform, find, judge, apply};
}

}  // namespace ohmfold
