// The search itself: what is known outright, and which law to try for what is not.
#include "coach/tracing.h"

#include <algorithm>
#include <utility>

#include "circuit/set_case.h"
#include "coach/main_port.h"

namespace ohmfold {
namespace {

constexpr int kMostLaws = 400;  // that are tried for one value
constexpr int kDeepest = 5;     // laws one after the other

}  // namespace

std::vector<Route> Tracing::all(const Target& target) {
  open_.push_back(target);
  gather_ = true;
  std::vector<Route> routes;
  collect_ = &routes;
  (void)derive(target, kDeepest);
  if (auto solved = by_solution(target)) routes.push_back(std::move(*solved));
  return routes;
}

Found Tracing::known(const Target& target) const {
  if (const OwnValue* own = book_.claimed(target)) return route_of(*own);
  if (target.claimed == Claimed::potential && target.first == ground_of(book_.problem())) {
    return exactly(0);
  }
  if (target.claimed == Claimed::voltage_between && target.first == target.second) {
    return exactly(0);
  }
  if (target.claimed == Claimed::value) {
    if (const auto own = book_.own_resistance(target.part)) return route_of(*own);
    return std::nullopt;
  }
  if (!target.part.exists() || !book_.is_of_file(target.part)) return std::nullopt;
  const ElementKind kind = start_.kind(target.part);
  const bool battery = kind == ElementKind::battery;
  if (target.claimed == Claimed::voltage) {
    if (battery && start_.battery(target.part).internal.is_zero()) {
      return exactly(start_.battery(target.part).emf.number);
    }
    if (is_wire(kind)) return exactly(0);
  }
  if (target.claimed == Claimed::current) {
    if (kind == ElementKind::current_source) {
      return exactly(start_.driven_current(target.part).number);
    }
    if (is_gap(kind)) return exactly(0);
  }
  const bool carries_nothing = !book_.networks.left_out(target.part).empty() && !is_wire(kind);
  if (carries_nothing && target.claimed != Claimed::voltage) return exactly(0);
  return std::nullopt;
}

Found Tracing::value(const Target& target, int depth) {
  if (auto found = known(target)) return found;
  if (depth == 0 || laws_ >= kMostLaws) return std::nullopt;
  if (std::find(open_.begin(), open_.end(), target) != open_.end()) return std::nullopt;
  open_.push_back(target);
  const bool gathering = std::exchange(gather_, false);
  Found found = derive(target, depth);
  gather_ = gathering;
  open_.pop_back();
  return found;
}

Found Tracing::derive(const Target& target, int depth) {
  switch (target.claimed) {
    case Claimed::current:
      return current(target, depth - 1);
    case Claimed::voltage:
      return voltage(target, depth - 1);
    case Claimed::power:
      return power(target, depth - 1);
    case Claimed::potential:
      return between(target.first, ground_of(book_.problem()), depth - 1);
    case Claimed::voltage_between:
      return between(target.first, target.second, depth - 1);
    case Claimed::value:
      return made_value(target);
    case Claimed::whole_resistance:
      return whole(depth - 1);
    case Claimed::resistance_between:
    case Claimed::resistance_seen_by:
      return is_main_resistance(book_.solved(), target) ? whole(depth - 1) : Found();
  }
  return std::nullopt;
}

bool Tracing::keep(Found route, Found& first) {
  ++laws_;
  if (!route) return false;
  if (gather_) {
    collect_->push_back(*route);
    if (!first) first = std::move(route);
    return laws_ >= kMostLaws;
  }
  first = std::move(route);
  return true;
}

Found Tracing::current_of(PartId part, int depth) {
  const Found found = value({Claimed::current, part, {}, {}}, depth);
  return found ? Found(size_of(*found)) : found;
}

Found Tracing::voltage_of(PartId part, int depth) {
  const Found found = value({Claimed::voltage, part, {}, {}}, depth);
  return found ? Found(size_of(*found)) : found;
}

Found Tracing::resistance_of(PartId part) const {
  return known({Claimed::value, part, {}, {}});
}

Found Tracing::times(const Found& a, const Found& b) {
  return a && b ? Found(*a * *b) : std::nullopt;
}

Found Tracing::over(const Found& a, const Found& b) {
  return a && b ? quotient(*a, *b) : std::nullopt;
}

Found Tracing::less(const Found& a, const Found& b) {
  return a && b ? Found(*a - *b) : std::nullopt;
}

Found Tracing::directed(Found size, const Target& target) const {
  if (!size || !book_.has_direction(target)) return size;
  const Truth truth = book_.truth(target);
  if (truth.value && truth.value->number.is_negative()) return exactly(0) - *size;
  return size;
}

}  // namespace ohmfold
