// The networks of one case that a person's steps change.
#include "coach/networks.h"

#include <algorithm>
#include <utility>

#include "coach/forced_step.h"
#include "coach/one_current.h"

namespace ohmfold {
namespace {

// A wrong step, or points at one potential, leave open what the network is: so many at most.
constexpr std::size_t kMostVariants = 8;
// Beyond so many parts no copies are made of a network to follow wrong steps in.
constexpr std::size_t kMostFollowed = 2'000;

std::size_t cleaning_steps(const Reduction& reduction) {
  std::size_t count = 0;
  while (count < reduction.steps.size() &&
         rule(reduction.steps[count].rule).tier == Tier::clean_up) {
    ++count;
  }
  return count;
}

bool all_alive(const Network& network, const std::vector<PartId>& parts) {
  return std::all_of(parts.begin(), parts.end(), [&](PartId part) {
    return part.index < network.part_count() && network.is_alive(part);
  });
}

void reserve_ids(Network& network, std::size_t parts, std::size_t points) {
  Edit edit;
  edit.new_points = static_cast<std::uint32_t>(points - network.point_count());
  network.commit(edit);
  while (network.part_count() < parts) {
    const PartId part = network.add(ElementKind::taken_out, PointId{0}, PointId{0});
    Edit gone;
    gone.removes = {part};
    network.commit(gone);
  }
}

Edit in_order(Edit edit, const std::vector<std::size_t>& order) {
  if (order.empty()) return edit;
  std::vector<NewPart> adds;
  adds.reserve(order.size());
  for (const std::size_t index : order) adds.push_back(edit.adds.at(index));
  edit.adds = std::move(adds);
  return edit;
}

Verdict judge_series(const Network& network, const Place& place) {
  return judge_one_current(network, place.parts);
}

Edit edit_series(const Network& network, const Place& place) {
  return sum_for_one_current(network, place.parts);
}

template <RuleName kRule>
Verdict judge_by(const Network& network, const Place& place) {
  return rule(kRule).judge(network, place);
}

template <RuleName kRule>
Edit edit_by(const Network& network, const Place& place) {
  return rule(kRule).apply(network, place);
}

// Parts with both ends on one point after a merge carry nothing.
void leave_out_shorted(Network& network) {
  Edit edit;
  for (const PartId part : living_resistors(network)) {
    if (network.from(part) == network.to(part)) edit.removes.push_back(part);
  }
  network.commit(edit);
}

}  // namespace

std::vector<PartId> living_resistors(const Network& network) {
  std::vector<PartId> living;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    const bool resistor = network.kind(part) == ElementKind::resistor;
    if (resistor && network.is_alive(part)) living.push_back(part);
  }
  return living;
}

StepTest test_for(Joining how) {
  if (how == Joining::series) return {judge_series, edit_series};
  return {judge_by<RuleName::parallel>, edit_by<RuleName::parallel>};
}

StepTest test_for(RuleName rule) {
  if (rule == RuleName::star_delta) {
    return {judge_by<RuleName::star_delta>, edit_by<RuleName::star_delta>};
  }
  return {judge_by<RuleName::delta_star>, edit_by<RuleName::delta_star>};
}

Networks::Networks(const CaseTrace& solved) : start_(solved.main.start) {
  const std::size_t cleaning = cleaning_steps(solved.main);
  families_.push_back({replay(solved.main, cleaning)});
  left_out_.resize(start_.part_count());
  for (std::size_t i = 0; i < cleaning; ++i) {
    const Step step = solved.main.steps[i];
    for (const PartId part : step.takes) {
      left_out_[part.index].assign(step.why.begin(), step.why.end());
    }
  }
  for (const Reduction& further : solved.further) {
    families_.push_back({replay(further, cleaning_steps(further))});
  }
  for (const Share& share : solved.shares) {
    families_.push_back({replay(share.alone.main, cleaning_steps(share.alone.main))});
  }
  align();
}

void Networks::align() {
  std::size_t parts = 0;
  std::size_t points = 0;
  const auto for_each = [&](auto visit) {
    for (Family& family : families_) std::for_each(family.begin(), family.end(), visit);
    std::for_each(own_.begin(), own_.end(), visit);
  };
  for_each([&](const Network& network) {
    parts = std::max(parts, network.part_count());
    points = std::max(points, network.point_count());
  });
  if (points == 0) return;
  for_each([&](Network& network) { reserve_ids(network, parts, points); });
}

bool Networks::make_in_truth(const StepTest& test, const Place& place,
                             const std::vector<std::size_t>& order, StepResult& result) {
  // All is worked out before anything changes: arithmetic with symbols can come to its limit.
  struct Allowed {
    std::size_t family, variant;
    Edit edit;
  };
  std::vector<Allowed> allowed;
  for (std::size_t f = 0; f < families_.size(); ++f) {
    for (std::size_t v = 0; v < families_[f].size(); ++v) {
      const Network& network = families_[f][v];
      if (!all_alive(network, place.parts)) continue;
      Verdict verdict = test.judge(network, place);
      const bool speaks = allowed.empty() && (verdict.allowed || result.why.empty());
      if (speaks) result.why = std::move(verdict.facts);
      if (!verdict.allowed) continue;
      allowed.push_back({f, v, in_order(test.edit(network, place), order)});
    }
  }
  if (allowed.empty()) return false;
  result.value = allowed.front().edit.adds.front().resistance.lowest_terms();
  result.in_main = allowed.front().family == 0;
  std::vector<Family> left(families_.size());
  for (const Allowed& one : allowed) {
    Network& network = families_[one.family][one.variant];
    // All networks have the same ids, so that what comes has the same in each.
    result.makes = network.commit(one.edit);
    left[one.family].push_back(std::move(network));
  }
  for (std::size_t f = 0; f < families_.size(); ++f) {
    if (!left[f].empty()) families_[f] = std::move(left[f]);
  }
  made_.emplace(result.makes, *result.value);
  return true;
}

bool Networks::make_in_own(const StepTest& test, const Place& place,
                           const std::vector<std::size_t>& order, StepResult& result) {
  std::vector<Network> allowing;
  for (const Network& network : own_) {
    if (!all_alive(network, place.parts)) continue;
    Verdict verdict = test.judge(network, place);
    if (!verdict.allowed) {
      if (result.why.empty()) result.why = std::move(verdict.facts);
      continue;
    }
    Network next = network;
    result.makes = next.commit(in_order(test.edit(network, place), order));
    if (!result.value) result.why = std::move(verdict.facts);
    allowing.push_back(std::move(next));
  }
  if (allowing.empty()) return false;
  own_ = std::move(allowing);
  return true;
}

StepResult Networks::make(const StepTest& test, const Place& place,
                          const std::vector<std::size_t>& order) {
  StepResult result;
  const bool in_truth = make_in_truth(test, place, order, result);
  const bool in_own = diverged_ && make_in_own(test, place, order, result);
  result.verdict = in_truth ? StepVerdict::right
                   : in_own ? StepVerdict::right_on_own
                            : StepVerdict::refused;
  return result;
}

// The network that a refusal speaks of: the first that has all the parts.
std::optional<Network> Networks::refusing(const std::vector<PartId>& parts) const {
  const std::vector<const Network*> true_ones = with(parts);
  const Network& network = true_ones.empty() ? own() : *true_ones.front();
  if (network.alive_count() > kMostFollowed) return std::nullopt;
  return network;
}

StepResult Networks::combine(Joining how, const std::vector<PartId>& parts) {
  StepResult result = make(test_for(how), {parts, {}, {}}, {});
  if (result.verdict == StepVerdict::right_on_own || (result.makes.exists() && !diverged_)) {
    align();
    return result;
  }
  if (result.verdict == StepVerdict::refused) result.refused_in = refusing(parts);
  // Refused; or right in truth after wrong steps, and then perhaps not in the person's own network.
  const bool made_in_own = std::any_of(own_.begin(), own_.end(), [&](const Network& network) {
    return result.makes.exists() && result.makes.index < network.part_count() &&
           network.is_alive(result.makes);
  });
  if (!made_in_own) {
    std::vector<Network> before = diverged_ ? std::move(own_) : families_.front();
    own_.clear();
    diverged_ = true;
    for (const Network& network : before) {
      if (!all_alive(network, parts) || network.alive_count() > kMostFollowed) continue;
      for (const Edit& edit : forced_steps(network, how, parts)) {
        if (own_.size() == kMostVariants) break;
        Network next = network;
        result.makes = next.commit(edit);
        own_.push_back(std::move(next));
      }
    }
    if (own_.empty() && result.verdict == StepVerdict::right) own_ = std::move(before);
  }
  align();
  return result;
}

StepResult Networks::rewrite(RuleName rule, const std::vector<PartId>& parts,
                             const std::vector<std::size_t>& order) {
  StepResult result = make(test_for(rule), {parts, {}, {}}, order);
  align();
  return result;
}

PartId Networks::reserve() {
  Network& first = families_.front().front();
  const PartId part{static_cast<std::uint32_t>(first.part_count())};
  reserve_ids(first, first.part_count() + 1, first.point_count());
  align();
  return part;
}

void Networks::join_or_cut(PointId first, PointId second, bool joined_first) {
  const auto in = [&](Network network) {
    const PointId one = network.representative(first);
    const PointId two = network.representative(second);
    if (one == two) return network;
    Edit edit;
    edit.merges = {std::min(one, two), std::max(one, two)};
    network.commit(edit);
    leave_out_shorted(network);
    return network;
  };
  const auto with_joined = [&](std::vector<Network>& networks) {
    const std::size_t count = networks.size();
    if (count == 0 || networks.front().alive_count() > kMostFollowed) return;
    for (std::size_t i = 0; i < count; ++i) {
      Network joined = in(networks[i]);
      // Parts between the two points carry nothing: without them it may be left as it was.
      Edit cut;
      for (std::uint32_t k = 0; k < joined.part_count(); ++k) {
        const PartId part{k};
        if (networks[i].is_alive(part) && !joined.is_alive(part)) cut.removes.push_back(part);
      }
      if (!cut.removes.empty()) networks[i].commit(cut);
      networks.push_back(std::move(joined));
    }
    if (joined_first) {
      std::rotate(networks.begin(), networks.begin() + static_cast<std::ptrdiff_t>(count),
                  networks.end());
    }
    // Where there are too many, those most and those least joined are the likeliest.
    if (networks.size() > kMostVariants) {
      const auto middle = networks.begin() + static_cast<std::ptrdiff_t>(kMostVariants / 2);
      networks.erase(middle, middle + static_cast<std::ptrdiff_t>(networks.size() - kMostVariants));
    }
  };
  with_joined(families_.front());
  if (diverged_) with_joined(own_);
}

void Networks::leave_out(PartId part) {
  const Network& network = truth();
  if (part.index >= network.part_count() || !network.is_alive(part)) return;
  if (network.kind(part) != ElementKind::resistor) return;
  join_or_cut(network.from(part), network.to(part), false);
}

const std::vector<Fact>& Networks::left_out(PartId part) const {
  static const std::vector<Fact> kNone;
  return part.index < left_out_.size() ? left_out_[part.index] : kNone;
}

std::vector<const Network*> Networks::with(const std::vector<PartId>& parts) const {
  std::vector<const Network*> found;
  for (const Family& family : families_) {
    for (const Network& network : family) {
      if (all_alive(network, parts)) found.push_back(&network);
    }
  }
  return found;
}

bool Networks::has_together(const std::vector<PartId>& parts) const {
  return !with(parts).empty() || std::any_of(own_.begin(), own_.end(), [&](const Network& network) {
    return all_alive(network, parts);
  });
}

const Network& Networks::own() const {
  return own_.empty() ? truth() : own_.front();
}

std::optional<Number> Networks::resistance(PartId part) const {
  // Lowest terms of a long value are what costs most.
  const auto made = made_.find(part);
  if (made != made_.end()) return made->second;
  for (const Family& family : families_) {
    for (const Network& network : family) {
      if (part.index >= network.part_count()) continue;
      const bool known =
          network.kind(part) == ElementKind::resistor && !network.resistance(part).is_zero();
      if (known) return network.resistance(part).lowest_terms();
    }
  }
  return std::nullopt;
}

}  // namespace ohmfold
