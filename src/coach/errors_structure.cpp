// Errors that a refused step shows by itself.
#include <algorithm>

#include "coach/errors.h"
#include "ohmfold/rule.h"

namespace ohmfold {
namespace {

bool ends_at(const Network& network, PartId part, PointId point) {
  return network.from(part) == point || network.to(part) == point;
}

// Is there nothing left in series or in parallel?
bool is_at_standstill(const Network& network) {
  const Frontier all = whole(network);
  return rule(RuleName::series).find(network, all).empty() &&
         rule(RuleName::parallel).find(network, all).empty();
}

// The part with three or more parts at both of its ends, none of them a source: it bridges.
std::optional<PartId> bridging(const Network& network, const std::vector<PartId>& parts) {
  for (const PartId part : parts) {
    bool meets_source = false;
    for (const PointId end : {network.from(part), network.to(part)}) {
      network.for_each_at(end, [&](PartId other) {
        meets_source = meets_source || is_source(network.kind(other));
      });
    }
    if (!meets_source) return part;
  }
  return std::nullopt;
}

Diagnosis of_series(const Network& network, const std::vector<PartId>& operands, PartId third,
                    PointId point) {
  std::vector<PartId> parts;
  for (const PartId part : operands) {
    if (ends_at(network, part, point) && parts.size() < 2) parts.push_back(part);
  }
  parts.push_back(third);
  return {KnownError::series_at_a_junction, std::move(parts), {point}, {}};
}

class StepErrors {
 public:
  StepErrors(const Network& network, Joining how, const std::vector<PartId>& operands)
      : network_(network), how_(how), operands_(operands) {}

  std::vector<Diagnosis> run(const std::vector<Fact>& why) && {
    const bool living = std::all_of(operands_.begin(), operands_.end(), [&](PartId part) {
      return part.index < network_.part_count() && network_.is_alive(part);
    });
    if (!living || why.empty()) return {};
    const auto bridge = is_at_standstill(network_) && network_.alive_count() > 4
                            ? bridging(network_, operands_)
                            : std::nullopt;
    if (bridge) {
      return {{KnownError::bridge_part_combined,
               {*bridge},
               {network_.from(*bridge), network_.to(*bridge)},
               {}}};
    }
    if (how_ == Joining::series) return in_series(why.front());
    return in_parallel(why.front());
  }

 private:
  [[nodiscard]] std::vector<Diagnosis> in_series(const Fact& why) const {
    const PartId first = operands_[0];
    const PartId second = operands_[1];
    const bool parallel = rule(RuleName::parallel).judge(network_, {operands_, {}, {}}).allowed;
    if (parallel) {
      return {{KnownError::series_of_parallel,
               {first, second},
               {network_.from(first), network_.to(first)},
               {}}};
    }
    if (const auto* also = std::get_if<AlsoMeets>(&why)) {
      return {of_series(network_, operands_, also->part, also->point)};
    }
    if (const auto* source = std::get_if<SourceBetween>(&why)) {
      return {of_series(network_, operands_, source->source, source->point)};
    }
    return {};
  }

  [[nodiscard]] std::vector<Diagnosis> in_parallel(const Fact& why) const {
    const auto* differ = std::get_if<EndsDiffer>(&why);
    if (differ == nullptr) return {};
    for (const PointId end : {network_.from(differ->first), network_.to(differ->first)}) {
      if (!ends_at(network_, differ->second, end)) continue;
      return {{KnownError::parallel_from_a_fork,
               {differ->first, differ->second},
               {end, network_.across(differ->first, end), network_.across(differ->second, end)},
               {}}};
    }
    return {{KnownError::parallel_ends_apart,
             {differ->first, differ->second},
             {differ->first_end, differ->second_end},
             {}}};
  }

  const Network& network_;
  Joining how_;
  const std::vector<PartId>& operands_;
};

}  // namespace

std::vector<Diagnosis> errors_of_step(const Network& network, Joining how,
                                      const std::vector<PartId>& operands,
                                      const std::vector<Fact>& why) {
  return StepErrors(network, how, operands).run(why);
}

std::vector<Diagnosis> errors_of_left_out(PartId part, const std::vector<Fact>& why) {
  for (const Fact& fact : why) {
    if (const auto* shorted = std::get_if<BothEndsOn>(&fact)) {
      return {{KnownError::shorted_part_counted, {part}, {shorted->point}, {}}};
    }
    if (const auto* hangs = std::get_if<HangsFrom>(&fact)) {
      return {{KnownError::dead_end_counted, {part}, {hangs->point}, {}}};
    }
    const bool dead =
        std::holds_alternative<IsOnlyLink>(fact) || std::holds_alternative<JoinedToNothing>(fact);
    if (dead) return {{KnownError::dead_end_counted, {part}, {}, {}}};
    const bool gap =
        std::holds_alternative<IsOpenSwitch>(fact) || std::holds_alternative<IsTakenOut>(fact);
    if (gap) return {{KnownError::gap_taken_for_wire, {part}, {}, {}}};
  }
  return {};
}

}  // namespace ohmfold
