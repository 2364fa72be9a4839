// Ways to a power or a resistance, and what the person's own network says.
#include "coach/tracing.h"

#include <algorithm>

#include "coach/main_port.h"
#include "coach/own_routes.h"

namespace ohmfold {

Found Tracing::power(const Target& target, int depth) {
  const PartId part = target.part;
  Found first;
  const Found v = voltage_of(part, depth);
  const Found i = current_of(part, depth);
  if (keep(directed(times(v, i), target), first)) return first;
  const Found r = resistance_of(part);
  if (!is_source_of_network(part)) {
    if (keep(directed(times(times(i, i), r), target), first)) return first;
    if (keep(directed(over(times(v, v), r), target), first)) return first;
  } else if (keep(directed(power_of_others(part, depth), target), first)) {
    return first;
  }
  return first;
}

Found Tracing::power_of_others(PartId source, int depth) {
  Route sum = exactly(0);
  for (std::uint32_t i = 0; i < book_.problem().parts.size(); ++i) {
    const PartId part{i};
    const bool takes = start_.kind(part) == ElementKind::resistor;
    if (part == source || !takes) continue;
    const Found one = power_of(part, std::min(depth, 1));
    if (!one) return std::nullopt;
    sum = sum + *one;
  }
  return sum;
}

Found Tracing::made_value(const Target& target) {
  Found first;
  const Making* making = book_.making(target.part);
  if (making != nullptr && making->how) {
    keep(combined_route(book_, *making->how, making->operands), first);
  }
  return first;
}

Found Tracing::whole(int depth) {
  Found first;
  if (const PartId only = only_part(); only.exists()) {
    if (keep(resistance_of(only), first)) return first;
  }
  const PartId source = source_of_network();
  if (source.exists() && start_.kind(source) == ElementKind::battery) {
    const Found current = current_of(source, std::min(depth, 1));
    if (keep(over(voltage_of(source, depth), current), first)) return first;
  }
  if (!gather_) {
    if (keep(by_solution({Claimed::whole_resistance, {}, {}, {}}), first)) return first;
  }
  return first;
}

PartId Tracing::source_of_network() const {
  const Network& own = book_.networks.own();
  PartId source;
  for (const PartId part : living()) {
    if (!is_source(own.kind(part))) continue;
    if (source.exists()) return {};
    source = part;
  }
  return source;
}

bool Tracing::is_battery(PartId part) const {
  return book_.is_of_file(part) && start_.kind(part) == ElementKind::battery;
}

PartId Tracing::only_part() const {
  PartId only;
  for (const PartId part : living()) {
    if (is_source(book_.networks.own().kind(part))) continue;
    if (only.exists()) return {};
    only = part;
  }
  return only;
}

bool Tracing::is_only_part(PartId part) const {
  return part == only_part() && source_of_network().exists();
}

const std::vector<PartId>& Tracing::living() const {
  if (!living_) {
    living_.emplace();
    const Network& own = book_.networks.own();
    for (std::uint32_t i = 0; i < own.part_count(); ++i) {
      if (own.is_alive(PartId{i})) living_->push_back(PartId{i});
    }
  }
  return *living_;
}

Found Tracing::by_solution(const Target& target) {
  if (!solution_) solution_.emplace(OwnSolution::find(book_));
  if (!*solution_) return std::nullopt;
  const OwnSolution& own = **solution_;
  const auto at = [&](const auto& sizes, PartId part) -> Found {
    if (part.index >= sizes.size() || !sizes[part.index]) return std::nullopt;
    const Number& number = *sizes[part.index];
    return Route{number, Range::of(number), own.claims};
  };
  const Found current = at(own.current, target.part);
  const Found voltage = at(own.voltage, target.part);
  switch (target.claimed) {
    case Claimed::current:
      return directed(current, target);
    case Claimed::voltage:
      return directed(voltage, target);
    case Claimed::power:
      return directed(times(current, voltage), target);
    case Claimed::whole_resistance:
    case Claimed::resistance_between:
    case Claimed::resistance_seen_by: {
      const bool main =
          target.claimed == Claimed::whole_resistance || is_main_resistance(book_.solved(), target);
      const PartId source = source_of_network();
      return main && source.exists() ? over(at(own.voltage, source), at(own.current, source))
                                     : Found();
    }
    case Claimed::value:
    case Claimed::potential:
    case Claimed::voltage_between:
      break;
  }
  return std::nullopt;
}

}  // namespace ohmfold
