// Ways to a voltage or a potential.
#include "coach/tracing.h"

#include <algorithm>
#include <utility>

#include "circuit/set_case.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostLoopParts = 6;
constexpr std::size_t kMostLooked = 60;  // points on the ways

}  // namespace

Found Tracing::voltage(const Target& target, int depth) {
  const PartId part = target.part;
  const auto along = [&](Found size) { return directed(std::move(size), target); };
  const bool battery = is_battery(part);
  Found first;
  (void)(keep(battery ? terminal_voltage(part, depth)
                      : along(times(current_of(part, depth), resistance_of(part))),
              first) ||
         (is_only_part(part) && keep(along(voltage_of(source_of_network(), depth)), first)) ||
         voltage_within(target, depth, first) ||
         keep(along(voltage_of_operands(part, depth)), first) ||
         keep(along(over(power_of(part, depth), current_of(part, depth))), first) ||
         (book_.is_of_file(part) && !battery &&
          keep(value({Claimed::voltage_between, {}, start_.from(part), start_.to(part)}, depth),
               first)));
  return first;
}

Found Tracing::terminal_voltage(PartId battery, int depth) {
  const BatteryData& data = start_.battery(battery);
  return less(exactly(data.emf.number),
              times(current_of(battery, depth), exactly(data.internal.number)));
}

// By the part that it is inside of: in parallel the same, in series a share or what is left.
bool Tracing::voltage_within(const Target& target, int depth, Found& first) {
  const PartId part = target.part;
  const PartId whole = book_.container(part);
  const Making* around = book_.making(whole);
  if (around == nullptr || !around->how) return false;
  const Found outer = voltage_of(whole, depth);
  if (around->how == Joining::series) {
    const Found share = over(times(outer, resistance_of(part)), resistance_of(whole));
    return keep(directed(share, target), first) ||
           keep(directed(less(outer, sum_of(around->operands, part, depth, false)), target), first);
  }
  if (keep(directed(outer, target), first)) return true;
  return std::any_of(around->operands.begin(), around->operands.end(), [&](PartId other) {
    return other != part && keep(directed(voltage_of(other, depth), target), first);
  });
}

Found Tracing::voltage_of_operands(PartId part, int depth) {
  const Making* making = book_.making(part);
  if (making == nullptr || !making->how || making->operands.empty()) return std::nullopt;
  return making->how == Joining::parallel ? voltage_of(making->operands.front(), depth)
                                          : sum_of(making->operands, PartId{}, depth, false);
}

Found Tracing::between(PointId from, PointId to, int depth) {
  Found first;
  const PointId ground = ground_of(book_.problem());
  if (from != ground && to != ground) {
    const Found a = value({Claimed::potential, {}, from, {}}, std::min(depth, 2));
    const Found b = value({Claimed::potential, {}, to, {}}, std::min(depth, 2));
    if (keep(less(a, b), first)) return first;
  }
  const Target reverse{Claimed::voltage_between, {}, to, from};
  if (const Found turned = known(reverse)) {
    if (keep(exactly(0) - *turned, first)) return first;
  }
  walk({from, to, depth}, first);
  return first;
}

void Tracing::walk(const Walk& asked, Found& first) {
  struct Reached {
    PointId at;
    Route sum;
    std::vector<PartId> passed;
  };
  std::vector<Reached> open{{asked.from, exactly(0), {}}};
  std::size_t looked = 0;
  while (!open.empty() && looked < kMostLooked) {
    const Reached stop = std::move(open.back());
    open.pop_back();
    ++looked;
    if (stop.at == asked.to && !stop.passed.empty()) {
      if (keep(stop.sum, first)) return;
      continue;
    }
    // The middle of a star is no point of the circuit in the file.
    const bool of_file = stop.at.index < start_.point_count();
    if (!of_file || stop.passed.size() == kMostLoopParts) continue;
    start_.for_each_at(stop.at, [&](PartId part) {
      if (is_gap(start_.kind(part)) || start_.kind(part) == ElementKind::port) return;
      if (std::find(stop.passed.begin(), stop.passed.end(), part) != stop.passed.end()) return;
      const Found one = value({Claimed::voltage, part, {}, {}}, std::min(asked.depth, 1));
      if (!one) return;
      const bool along = start_.from(part) == stop.at;
      const bool falls = along != counts_rise(start_.kind(part));
      Reached next{start_.across(part, stop.at), falls ? stop.sum + *one : stop.sum - *one,
                   stop.passed};
      next.passed.push_back(part);
      open.push_back(std::move(next));
    });
  }
}

}  // namespace ohmfold
