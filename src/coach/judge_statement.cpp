// Claims about potentials and currents that are nothing, and that nothing is left to combine.
#include <algorithm>

#include "coach/claim_judge.h"
#include "coach/errors.h"
#include "ohmfold/rule.h"

namespace ohmfold {
namespace {

// What the rule of equal potentials says of two points of the network, where they are in it.
Verdict judge_potentials(const Network& network, PointId first, PointId second) {
  const PointId one = network.representative(first);
  const PointId two = network.representative(second);
  if (one == two) return {true, {}};
  Place place;
  place.points = {std::min(one, two), std::max(one, two)};
  return rule(RuleName::equal_potentials).judge(network, place);
}

std::optional<Place> first_pair(const Network& network) {
  for (const RuleName name : {RuleName::series, RuleName::parallel}) {
    std::vector<Place> places = rule(name).find(network, whole(network));
    if (!places.empty()) return std::move(places.front());
  }
  return std::nullopt;
}

}  // namespace

void ClaimJudge::judge_claim(const SamePotentialClaim& claim) {
  line_.rule = RuleName::equal_potentials;
  const auto first = find_point(claim.first);
  const auto second = first ? find_point(claim.second) : std::nullopt;
  if (!second) {
    line_.step = StepVerdict::cannot_tell;
    return;
  }
  line_.at = *first;
  line_.to = *second;
  judge_equal(*first, *second);
  if (line_.step == StepVerdict::right) book_.networks.join(*first, *second);
}

void ClaimJudge::judge_equal(PointId first, PointId second) {
  const auto difference = number_of(book_.truth({Claimed::voltage_between, {}, first, second}));
  if (!difference) {
    line_.step = StepVerdict::cannot_tell;
    hinder(Hindrance::not_determined);
    return;
  }
  const bool equal = difference->is_zero();
  line_.step = equal ? StepVerdict::right : StepVerdict::refused;
  Verdict verdict = judge_potentials(book_.networks.truth(), first, second);
  if (verdict.allowed == equal) line_.why = std::move(verdict.facts);
  line_.claimed = Claimed::voltage_between;
  if (equal) state_zero({Claimed::voltage_between, {}, first, second}, Unit::volt);
}

void ClaimJudge::judge_claim(const NoCurrentClaim& claim) {
  line_.rule = RuleName::dead_end;
  line_.claimed = Claimed::current;
  const auto part = find_part(claim.part);
  if (!part) {
    line_.step = StepVerdict::cannot_tell;
    return;
  }
  line_.of = *part;
  const Target target{Claimed::current, *part, {}, {}};
  const auto current = number_of(book_.truth(target));
  if (!current) {
    line_.step = StepVerdict::cannot_tell;
    hinder(Hindrance::not_determined);
    return;
  }
  const bool none = current->is_zero();
  line_.step = none ? StepVerdict::right : StepVerdict::refused;
  const Network& network = book_.networks.truth();
  if (const auto& why = book_.networks.left_out(*part); !why.empty()) {
    line_.why = why;
  } else if (part->index < network.part_count() && network.is_alive(*part)) {
    Verdict verdict = judge_potentials(network, network.from(*part), network.to(*part));
    if (verdict.allowed == none) line_.why = std::move(verdict.facts);
  }
  if (none) {
    state_zero(target, Unit::ampere);
    book_.networks.leave_out(*part);
    return;
  }
  // Between two points where other parts meet it bridges something that is out of balance.
  const bool bridges = part->index < network.part_count() && network.is_alive(*part) &&
                       network.degree(network.from(*part)) > 2 &&
                       network.degree(network.to(*part)) > 2;
  if (bridges) line_.errors.push_back({KnownError::not_balanced, {*part}, {}, {}});
}

// A right statement that something is nothing gives a value, too.
void ClaimJudge::state_zero(const Target& target, Unit unit) {
  line_.value = ValueVerdict::exact;
  line_.unit = UnitVerdict::right;
  line_.stated = line_.right = Quantity(Number(0), unit);
  book_.set_claimed(target, {Number(0), Range::of(Number(0)), {number_}});
}

void ClaimJudge::judge_claim(const NoPairClaim& /*claim*/) {
  line_.rule = RuleName::series;
  const Network& truth = book_.networks.truth();
  const auto in_truth = first_pair(truth);
  if (!in_truth) {
    line_.step = StepVerdict::right;
    return;
  }
  const auto in_own = book_.networks.has_diverged() ? first_pair(book_.networks.own()) : in_truth;
  if (!in_own) {
    line_.step = StepVerdict::right_on_own;
    return;
  }
  line_.step = StepVerdict::refused;
  const Network& network = book_.networks.own();
  const PartId first = in_own->parts.at(0);
  const PartId second = in_own->parts.at(1);
  Diagnosis error{KnownError::pair_overlooked, {first, second}, {}, {}};
  for (const PointId point : {network.from(first), network.to(first)}) {
    if (point == network.from(second) || point == network.to(second)) error.points.push_back(point);
  }
  line_.errors.push_back(std::move(error));
}

}  // namespace ohmfold
