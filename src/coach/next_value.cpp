// The next value of the way back, towards what is asked.
#include "coach/next_value.h"

#include <algorithm>
#include <deque>
#include <map>

#include "circuit/set_case.h"
#include "coach/main_port.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostOnTheWay = 1'000;  // values looked at, one after the other

// A value, the law that gives it, and the parts that it is found from.
struct Need {
  Target target;
  Law law{};
  std::vector<PartId> from;
};

class WayBack {
 public:
  explicit WayBack(const CaseBook& book) : book_(book), own_(book.networks.own()) {
    for (std::uint32_t i = 0; i < own_.part_count(); ++i) {
      const PartId part{i};
      if (!own_.is_alive(part)) continue;
      if (is_source(own_.kind(part))) {
        source_ = part;
        ++sources_;
      } else {
        root_ = part;
        ++others_;
      }
    }
  }

  // The first of the values that lead to the target that is not known yet; the target itself last.
  Need first_unknown(Target target) {
    Need need = step_to(target);
    for (std::size_t i = 0; i < kMostOnTheWay; ++i) {
      const auto missing = std::find_if(before_.begin(), before_.end(),
                                        [&](const Target& one) { return !is_known(one); });
      if (missing == before_.end()) return need;
      need = step_to(Target(*missing));
    }
    return need;
  }

 private:
  [[nodiscard]] bool reduces() const { return sources_ == 1 && others_ == 1; }

  [[nodiscard]] bool is_known(const Target& target) const {
    if (book_.claimed(target) != nullptr) return true;
    if (target.claimed == Claimed::voltage && book_.is_of_file(target.part)) {
      const Network& start = book_.networks.original();
      const ElementKind kind = start.kind(target.part);
      if (is_wire(kind)) return true;
      return kind == ElementKind::battery && start.battery(target.part).internal.is_zero();
    }
    return false;
  }

  // The law for a value; what it needs is left in before_.
  Need step_to(const Target& target) {
    before_.clear();
    switch (target.claimed) {
      case Claimed::current:
        return current(target);
      case Claimed::voltage:
        return voltage(target);
      case Claimed::power: {
        needs(Claimed::voltage, target.part);
        needs(Claimed::current, target.part);
        return {target, Law::power, {target.part}};
      }
      case Claimed::potential:
        return along_parts(target, target.first, ground_of(book_.problem()));
      case Claimed::voltage_between:
        return along_parts(target, target.first, target.second);
      case Claimed::value:
      case Claimed::resistance_between:
      case Claimed::resistance_seen_by:
      case Claimed::whole_resistance:
        break;
    }
    return {target, Law::node_voltage, {}};
  }

  void needs(Claimed claimed, PartId part) { before_.push_back({claimed, part, {}, {}}); }

  Need current(const Target& target) {
    const PartId part = target.part;
    if (part == source_ && own_.kind(part) == ElementKind::battery) {
      if (reduces() || book_.claimed({Claimed::whole_resistance, {}, {}, {}}) != nullptr) {
        if (!is_known({Claimed::whole_resistance, {}, {}, {}})) {
          before_.push_back({Claimed::whole_resistance, {}, {}, {}});
        }
        return {target, Law::source, {root_}};
      }
      return {target, Law::node_voltage, {}};
    }
    if (book_.is_of_file(part) && !book_.networks.left_out(part).empty()) {
      return {target, Law::zero_current, {}};
    }
    if (part == root_ && reduces()) {
      needs(Claimed::current, source_);
      return {target, Law::same_current, {source_}};
    }
    const PartId whole = book_.container(part);
    const Making* making = book_.making(whole);
    if (making != nullptr && making->how == Joining::series) {
      needs(Claimed::current, whole);
      return {target, Law::same_current, {whole}};
    }
    if (making != nullptr && making->how == Joining::parallel) {
      needs(Claimed::voltage, whole);
      return {target, Law::ohm_current, {whole}};
    }
    return {target, Law::node_voltage, {}};
  }

  Need voltage(const Target& target) {
    const PartId part = target.part;
    if (part == source_) {
      needs(Claimed::current, part);
      return {target, Law::terminal, {part}};
    }
    if (part == root_ && reduces()) {
      needs(Claimed::voltage, source_);
      return {target, Law::same_voltage, {source_}};
    }
    const PartId whole = book_.container(part);
    const Making* making = book_.making(whole);
    if (making != nullptr && making->how == Joining::parallel) {
      needs(Claimed::voltage, whole);
      return {target, Law::same_voltage, {whole}};
    }
    if (making != nullptr && making->how == Joining::series) {
      needs(Claimed::current, part);
      return {target, Law::ohm_voltage, {part}};
    }
    return {target, Law::node_voltage, {}};
  }

  // Over the fewest parts from one point to the other.
  Need along_parts(const Target& target, PointId from, PointId to) {
    const Network& start = book_.networks.original();
    std::map<PointId, PartId> reached{{from, PartId{}}};
    std::deque<PointId> open{from};
    while (!open.empty() && !reached.contains(to)) {
      const PointId point = open.front();
      open.pop_front();
      start.for_each_at(point, [&](PartId part) {
        const ElementKind kind = start.kind(part);
        if (is_gap(kind) || kind == ElementKind::port || kind == ElementKind::current_source)
          return;
        const PointId next = start.across(part, point);
        if (reached.emplace(next, part).second) open.push_back(next);
      });
    }
    if (!reached.contains(to)) return {target, Law::node_voltage, {}};
    std::vector<PartId> path;
    for (PointId point = to; point != from;) {
      const PartId part = reached.at(point);
      path.push_back(part);
      point = start.across(part, point);
    }
    std::reverse(path.begin(), path.end());
    for (const PartId part : path) needs(Claimed::voltage, part);
    return {target, Law::voltage_loop, std::move(path)};
  }

  const CaseBook& book_;
  const Network& own_;
  PartId source_, root_;
  std::size_t sources_ = 0, others_ = 0;
  std::vector<Target> before_;
};

Unit unit_of(const Target& target, const Answer& answer, const CaseBook& book) {
  return target.claimed == Claimed::value ? unit_of(answer.question, book.problem())
                                          : ohmfold::unit_of(target.claimed);
}

}  // namespace

Hint next_value(const CaseBook& book, const Answer& answer) {
  Target target = target_of(answer.question);
  if (is_main_resistance(book.solved(), target)) {
    target = {Claimed::whole_resistance, {}, {}, {}};
  }
  if (std::holds_alternative<TheveninBetween>(answer.question) && book.claimed(target) != nullptr) {
    target.claimed = Claimed::resistance_between;
  }
  const Need need = WayBack(book).first_unknown(target);
  Hint hint;
  hint.kind =
      need.target.claimed == Claimed::whole_resistance ? HintKind::whole : HintKind::quantity;
  hint.law = need.law;
  hint.claimed = need.target.claimed;
  hint.of = need.target.part;
  hint.at = need.target.first;
  hint.to = need.target.second;
  hint.from = need.from;
  const std::vector<Route> routes = own_routes(book, need.target);
  const Truth truth = book.truth(need.target);
  const Unit unit = unit_of(need.target, answer, book);
  // On their own numbers where one of these is wrong; rounding is not passed on.
  const auto wrong = std::find_if(routes.begin(), routes.end(), [&](const Route& route) {
    return book.rests_on_wrong(route.claims);
  });
  if (wrong != routes.end()) {
    hint.value = Quantity(wrong->value, unit);
  } else if (truth.value) {
    hint.value = truth.value;
  } else if (!routes.empty()) {
    hint.value = Quantity(routes.front().value, unit);
  }
  return hint;
}

}  // namespace ohmfold
