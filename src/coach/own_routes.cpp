// Ways from a person's own numbers to a value.
#include "coach/own_routes.h"

#include <algorithm>
#include <utility>

#include "circuit/set_case.h"
#include "coach/own_solution.h"
#include "coach/route_arithmetic.h"

namespace ohmfold {
namespace {

constexpr int kMostLaws = 400;  // that are tried for one value
constexpr int kDeepest = 5;     // laws one after the other
constexpr std::size_t kMostLoopParts = 6;

using Found = std::optional<Route>;

class Tracing {
 public:
  explicit Tracing(const CaseBook& book) : book_(book), start_(book.networks.original()) {}

  // All ways to the target itself; what it claims of itself is no way.
  std::vector<Route> all(const Target& target) {
    open_.push_back(target);
    gather_ = true;
    std::vector<Route> routes;
    collect_ = &routes;
    (void)derive(target, kDeepest);
    if (auto solved = by_solution(target)) routes.push_back(std::move(*solved));
    return routes;
  }

 private:
  // --- what is known outright ------------------------------------------------------------------
  [[nodiscard]] Found known(const Target& target) const {
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

  Found value(const Target& target, int depth) {
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

  // The first way to it; while gathering, all ways are kept.
  Found derive(const Target& target, int depth) {
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
        return is_main_question(target) ? whole(depth - 1) : Found();
    }
    return std::nullopt;
  }

  // Keeps a way; true where the search may end with it.
  bool keep(Found route, Found& first) {
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

  // --- short words for targets -----------------------------------------------------------------
  Found current_of(PartId part, int depth) {
    const Found found = value({Claimed::current, part, {}, {}}, depth);
    return found ? Found(size_of(*found)) : found;
  }
  Found voltage_of(PartId part, int depth) {
    const Found found = value({Claimed::voltage, part, {}, {}}, depth);
    return found ? Found(size_of(*found)) : found;
  }
  Found power_of(PartId part, int depth) { return value({Claimed::power, part, {}, {}}, depth); }
  [[nodiscard]] Found resistance_of(PartId part) const {
    return known({Claimed::value, part, {}, {}});
  }
  static Found times(const Found& a, const Found& b) {
    return a && b ? Found(*a * *b) : std::nullopt;
  }
  static Found over(const Found& a, const Found& b) {
    return a && b ? quotient(*a, *b) : std::nullopt;
  }
  static Found less(const Found& a, const Found& b) {
    return a && b ? Found(*a - *b) : std::nullopt;
  }

  // With the sign that the true value has: what is worked out along a tree is a size.
  [[nodiscard]] Found directed(Found size, const Target& target) const {
    if (!size || !book_.has_direction(target)) return size;
    const Truth truth = book_.truth(target);
    if (truth.value && truth.value->number.is_negative()) return exactly(0) - *size;
    return size;
  }

  // --- currents ----------------------------------------------------------------------------------
  Found current(const Target& target, int depth) {
    const PartId part = target.part;
    Found first;
    const Making* making = book_.making(part);
    const PartId whole_part = book_.container(part);
    const Making* around = whole_part.exists() ? book_.making(whole_part) : nullptr;
    if (is_source_of_network(part)) {
      if (keep(source_current(part, depth), first)) return first;
    } else if (keep(directed(over(voltage_of(part, depth), resistance_of(part)), target), first)) {
      return first;
    }
    if (is_only_part(part)) {
      if (keep(directed(current_of(source_of_network(), depth), target), first)) return first;
    }
    if (around != nullptr && around->how) {
      const bool series = around->how == Joining::series;
      Found outer = current_of(whole_part, depth);
      if (!series) outer = over(times(outer, resistance_of(whole_part)), resistance_of(part));
      if (keep(directed(std::move(outer), target), first)) return first;
      const Found rest = series ? std::nullopt : sum_of(around->operands, part, depth, true);
      if (keep(directed(less(current_of(whole_part, depth), rest), target), first)) return first;
      for (const PartId other : series ? around->operands : std::vector<PartId>{}) {
        if (other == part) continue;
        if (keep(directed(current_of(other, depth), target), first)) return first;
      }
    }
    if (making != nullptr && making->how) {
      const bool series = making->how == Joining::series;
      Found inner = series ? current_of(making->operands.front(), depth)
                           : sum_of(making->operands, PartId{}, depth, true);
      if (keep(directed(std::move(inner), target), first)) return first;
    }
    if (keep(directed(over(power_of(part, depth), voltage_of(part, depth)), target), first)) {
      return first;
    }
    if (book_.is_of_file(part)) {
      for (const bool at_first : {true, false}) {
        if (keep(by_current_law(part, at_first, depth), first)) return first;
      }
    }
    return first;
  }

  // E / (R + r) with the person's resistance of the whole network.
  Found source_current(PartId source, int depth) {
    if (start_.kind(source) != ElementKind::battery) return std::nullopt;
    const BatteryData& data = start_.battery(source);
    const Found outside = value({Claimed::whole_resistance, {}, {}, {}}, depth);
    if (!outside) return std::nullopt;
    return directed(quotient(exactly(data.emf.number), *outside + exactly(data.internal.number)),
                    {Claimed::current, source, {}, {}});
  }

  // The sum of currents or voltages of parts, but for one.
  Found sum_of(const std::vector<PartId>& parts, PartId without, int depth, bool currents) {
    Route sum = exactly(0);
    for (const PartId part : parts) {
      if (part == without) continue;
      const Found one = currents ? current_of(part, depth) : voltage_of(part, depth);
      if (!one) return std::nullopt;
      sum = sum + *one;
    }
    return sum;
  }

  // Kirchhoff's current law at one end of a part, in the circuit of the file.
  Found by_current_law(PartId part, bool at_first, int depth) {
    const PointId point = at_first ? start_.from(part) : start_.to(part);
    std::vector<PartId> others;
    start_.for_each_at(point, [&](PartId other) { others.push_back(other); });
    if (others.size() > 2 * kMostLoopParts) return std::nullopt;
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

  // --- voltages ----------------------------------------------------------------------------------
  Found voltage(const Target& target, int depth) {
    const PartId part = target.part;
    Found first;
    const Making* making = book_.making(part);
    const PartId whole_part = book_.container(part);
    const Making* around = whole_part.exists() ? book_.making(whole_part) : nullptr;
    if (is_battery(part)) {
      const BatteryData& data = start_.battery(part);
      const Found lost = times(current_of(part, depth), exactly(data.internal.number));
      if (keep(less(exactly(data.emf.number), lost), first)) return first;
    } else if (keep(directed(times(current_of(part, depth), resistance_of(part)), target), first)) {
      return first;
    }
    if (is_only_part(part)) {
      if (keep(directed(voltage_of(source_of_network(), depth), target), first)) return first;
    }
    if (around != nullptr && around->how) {
      const bool series = around->how == Joining::series;
      Found outer = voltage_of(whole_part, depth);
      const Found share = over(times(outer, resistance_of(part)), resistance_of(whole_part));
      if (keep(directed(series ? share : outer, target), first)) return first;
      const Found rest = series ? sum_of(around->operands, part, depth, false) : std::nullopt;
      if (keep(directed(less(outer, rest), target), first)) return first;
      for (const PartId other : series ? std::vector<PartId>{} : around->operands) {
        if (other == part) continue;
        if (keep(directed(voltage_of(other, depth), target), first)) return first;
      }
    }
    if (making != nullptr && making->how) {
      const bool series = making->how == Joining::series;
      Found inner = series ? sum_of(making->operands, PartId{}, depth, false)
                           : voltage_of(making->operands.front(), depth);
      if (keep(directed(std::move(inner), target), first)) return first;
    }
    if (keep(directed(over(power_of(part, depth), current_of(part, depth)), target), first)) {
      return first;
    }
    if (book_.is_of_file(part) && !is_battery(part)) {
      if (keep(value({Claimed::voltage_between, {}, start_.from(part), start_.to(part)}, depth),
               first)) {
        return first;
      }
    }
    return first;
  }

  // A difference of potentials: of the two potentials, or along a short path of parts.
  Found between(PointId from, PointId to, int depth) {
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

  struct Walk {
    PointId from, to;
    int depth;
  };

  // Depth first along parts whose voltage is known or follows, a few parts at most.
  void walk(const Walk& asked, Found& first) {
    struct Stop {
      PointId at;
      Route sum;
      std::vector<PartId> passed;
    };
    std::vector<Stop> open{{asked.from, exactly(0), {}}};
    std::size_t looked = 0;
    while (!open.empty() && looked < 60) {
      const Stop stop = std::move(open.back());
      open.pop_back();
      ++looked;
      if (stop.at == asked.to && !stop.passed.empty()) {
        if (keep(stop.sum, first)) return;
        continue;
      }
      if (stop.passed.size() == kMostLoopParts) continue;
      start_.for_each_at(stop.at, [&](PartId part) {
        if (is_gap(start_.kind(part)) || start_.kind(part) == ElementKind::port) return;
        if (std::find(stop.passed.begin(), stop.passed.end(), part) != stop.passed.end()) return;
        const Found one = value({Claimed::voltage, part, {}, {}}, std::min(asked.depth, 1));
        if (!one) return;
        const bool along = start_.from(part) == stop.at;
        const bool falls = along != counts_rise(start_.kind(part));
        Stop next{start_.across(part, stop.at), falls ? stop.sum + *one : stop.sum - *one,
                  stop.passed};
        next.passed.push_back(part);
        open.push_back(std::move(next));
      });
    }
  }

  // --- power and resistance ----------------------------------------------------------------------
  Found power(const Target& target, int depth) {
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

  Found power_of_others(PartId source, int depth) {
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

  Found made_value(const Target& target) {
    Found first;
    const Making* making = book_.making(target.part);
    if (making != nullptr && making->how) {
      keep(combined_route(book_, *making->how, making->operands), first);
    }
    return first;
  }

  Found whole(int depth) {
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

  // --- the person's own network
  // -------------------------------------------------------------------
  [[nodiscard]] PartId source_of_network() const {
    const Network& own = book_.networks.own();
    PartId source;
    for (const PartId part : living()) {
      if (!is_source(own.kind(part))) continue;
      if (source.exists()) return {};
      source = part;
    }
    return source;
  }
  [[nodiscard]] bool is_source_of_network(PartId part) const { return part == source_of_network(); }
  [[nodiscard]] bool is_battery(PartId part) const {
    return book_.is_of_file(part) && start_.kind(part) == ElementKind::battery;
  }
  // The one resistor that is left beside the source, or none.
  [[nodiscard]] PartId only_part() const {
    PartId only;
    for (const PartId part : living()) {
      if (is_source(book_.networks.own().kind(part))) continue;
      if (only.exists()) return {};
      only = part;
    }
    return only;
  }
  [[nodiscard]] bool is_only_part(PartId part) const {
    return part == only_part() && source_of_network().exists();
  }
  [[nodiscard]] const std::vector<PartId>& living() const {
    if (!living_) {
      living_.emplace();
      const Network& own = book_.networks.own();
      for (std::uint32_t i = 0; i < own.part_count(); ++i) {
        if (own.is_alive(PartId{i})) living_->push_back(PartId{i});
      }
    }
    return *living_;
  }
  [[nodiscard]] bool is_main_question(const Target& target) const {
    const PartId source = book_.solved().main.source;
    if (!source.exists()) return false;
    if (target.claimed == Claimed::resistance_seen_by) return target.part == source;
    const bool port = start_.kind(source) == ElementKind::port;
    const auto ends = std::minmax(start_.from(source), start_.to(source));
    return port && ends == std::minmax(target.first, target.second);
  }

  Found by_solution(const Target& target) {
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
        const bool main = target.claimed == Claimed::whole_resistance || is_main_question(target);
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

  const CaseBook& book_;
  const Network& start_;
  std::vector<Target> open_;  // being worked out: a way must not run through itself
  bool gather_ = false;
  std::vector<Route>* collect_ = nullptr;
  int laws_ = 0;
  mutable std::optional<std::vector<PartId>> living_;
  std::optional<std::optional<OwnSolution>> solution_;
};

}  // namespace

std::optional<Route> combined_route(const CaseBook& book, Joining how,
                                    const std::vector<PartId>& operands) {
  Route sum = exactly(0);
  for (const PartId operand : operands) {
    const auto own = book.own_resistance(operand);
    if (!own) return std::nullopt;
    if (how == Joining::series) {
      sum = sum + route_of(*own);
      continue;
    }
    const auto inverse = quotient(exactly(1), route_of(*own));
    if (!inverse) return std::nullopt;
    sum = sum + *inverse;
  }
  if (how == Joining::series) return sum;
  return quotient(exactly(1), sum);
}

std::vector<Route> own_routes(const CaseBook& book, const Target& target) {
  return Tracing(book).all(target);
}

}  // namespace ohmfold
