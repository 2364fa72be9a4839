// Ways to a current.
#include "coach/tracing.h"

#include <algorithm>
#include <utility>

namespace ohmfold {
namespace {

constexpr std::size_t kMostAtPoint = 12;  // parts whose currents are added up

}  // namespace

// Ways are tried in this order; while one is looked for only, the first that leads ends the search.
Found Tracing::current(const Target& target, int depth) {
  const PartId part = target.part;
  const auto along = [&](Found size) { return directed(std::move(size), target); };
  const bool source = is_source_of_network(part);
  Found first;
  (void)(keep(source ? source_current(part, depth)
                     : along(over(voltage_of(part, depth), resistance_of(part))),
              first) ||
         (is_only_part(part) && keep(along(current_of(source_of_network(), depth)), first)) ||
         current_within(target, depth, first) ||
         keep(along(current_of_operands(part, depth)), first) ||
         keep(along(over(power_of(part, depth), voltage_of(part, depth))), first) ||
         (book_.is_of_file(part) && (keep(by_current_law(part, true, depth), first) ||
                                     keep(by_current_law(part, false, depth), first))));
  return first;
}

// By the part that it is inside of: in series the same, in parallel a share or what is left.
bool Tracing::current_within(const Target& target, int depth, Found& first) {
  const PartId part = target.part;
  const PartId whole = book_.container(part);
  const Making* around = book_.making(whole);
  if (around == nullptr || !around->how) return false;
  const Found outer = current_of(whole, depth);
  if (around->how == Joining::parallel) {
    const Found share = over(times(outer, resistance_of(whole)), resistance_of(part));
    return keep(directed(share, target), first) ||
           keep(directed(less(outer, sum_of(around->operands, part, depth, true)), target), first);
  }
  if (keep(directed(outer, target), first)) return true;
  return std::any_of(around->operands.begin(), around->operands.end(), [&](PartId other) {
    return other != part && keep(directed(current_of(other, depth), target), first);
  });
}

Found Tracing::current_of_operands(PartId part, int depth) {
  const Making* making = book_.making(part);
  if (making == nullptr || !making->how || making->operands.empty()) return std::nullopt;
  return making->how == Joining::series ? current_of(making->operands.front(), depth)
                                        : sum_of(making->operands, PartId{}, depth, true);
}

Found Tracing::source_current(PartId source, int depth) {
  if (start_.kind(source) != ElementKind::battery) return std::nullopt;
  const BatteryData& data = start_.battery(source);
  const Found outside = value({Claimed::whole_resistance, {}, {}, {}}, depth);
  if (!outside) return std::nullopt;
  return directed(quotient(exactly(data.emf.number), *outside + exactly(data.internal.number)),
                  {Claimed::current, source, {}, {}});
}

Found Tracing::sum_of(const std::vector<PartId>& parts, PartId without, int depth, bool currents) {
  Route sum = exactly(0);
  for (const PartId part : parts) {
    if (part == without) continue;
    const Found one = currents ? current_of(part, depth) : voltage_of(part, depth);
    if (!one) return std::nullopt;
    sum = sum + *one;
  }
  return sum;
}

Found Tracing::by_current_law(PartId part, bool at_first, int depth) {
  const PointId point = at_first ? start_.from(part) : start_.to(part);
  std::vector<PartId> others;
  start_.for_each_at(point, [&](PartId other) { others.push_back(other); });
  if (others.size() > kMostAtPoint) return std::nullopt;
  Route into = exactly(0);  // all that the others bring to the point
  for (const PartId other : others) {
    if (other == part) continue;
    if (start_.from(other) == start_.to(other)) return std::nullopt;
    const Found one = value({Claimed::current, other, {}, {}}, depth > 0 ? 1 : 0);
    if (!one) return std::nullopt;
    const bool arrives = start_.to(other) == point;
    // A battery's current leaves its positive terminal, its second point: as from first to
    // second.
    into = arrives ? into + *one : into - *one;
  }
  return at_first ? into : exactly(0) - into;
}

}  // namespace ohmfold
