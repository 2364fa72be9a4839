// Finds tempting pairs and has the rules judge them.
#include "bridge/standstill.h"

#include <algorithm>
#include <optional>

#include "ohmfold/rule.h"

namespace ohmfold {
namespace {

// With more resistors than this nobody sees squares or equal values at a glance.
constexpr std::size_t kFew = 16;

// A point at which both parts have an end, or none.
PointId shared_point(const Network& network, PartId a, PartId b) {
  for (const PointId point : {network.from(a), network.to(a)}) {
    if (network.from(b) == point || network.to(b) == point) return point;
  }
  return {};
}

class PairLister {
 public:
  PairLister(const Network& network, Standstill& result) : network_(network), result_(result) {
    for (const auto& [part, from, to] : result.left) {
      if (network.kind(part) == ElementKind::resistor) resistors_.push_back(part);
    }
  }

  void run() { resistors_.size() <= kFew ? list_all() : list_meeting(); }

 private:
  void list_all() {
    for (const Likeness wanted :
         {Likeness::share_a_point, Likeness::opposite_sides, Likeness::same_value}) {
      for (std::size_t i = 0; i < resistors_.size(); ++i) {
        for (std::size_t k = i + 1; k < resistors_.size(); ++k) {
          if (likeness_of(resistors_[i], resistors_[k]) != wanted) continue;
          list(resistors_[i], resistors_[k], wanted);
        }
      }
    }
  }

  void list_meeting() {
    for (const PartId part : resistors_) {
      for (const PartId other : meeting_after(part)) list(part, other, Likeness::share_a_point);
      if (result_.pairs.size() == kMostPairs) break;
    }
    result_.more_pairs = count_meeting() - result_.pairs.size();
  }

  [[nodiscard]] std::optional<Likeness> likeness_of(PartId a, PartId b) const {
    if (shared_point(network_, a, b).exists()) return Likeness::share_a_point;
    const bool straight = are_joined(network_.from(a), network_.from(b)) &&
                          are_joined(network_.to(a), network_.to(b));
    const bool crossed = are_joined(network_.from(a), network_.to(b)) &&
                         are_joined(network_.to(a), network_.from(b));
    if (straight || crossed) return Likeness::opposite_sides;
    const auto equal = std::count_if(resistors_.begin(), resistors_.end(),
                                     [&](PartId part) { return have_equal_values(part, a); });
    if (equal == 2 && have_equal_values(a, b)) return Likeness::same_value;
    return std::nullopt;
  }

  [[nodiscard]] bool have_equal_values(PartId a, PartId b) const {
    const Ratio& one = network_.resistance(a);
    const Ratio& two = network_.resistance(b);
    if (one.is_symbolic() || two.is_symbolic()) return one.lowest_terms() == two.lowest_terms();
    return one.p() * two.q() == two.p() * one.q();
  }

  // Does a resistor join the two points?
  [[nodiscard]] bool are_joined(PointId a, PointId b) const {
    return std::any_of(resistors_.begin(), resistors_.end(), [&](PartId part) {
      const PointId from = network_.from(part);
      const PointId to = network_.to(part);
      return (from == a && to == b) || (from == b && to == a);
    });
  }

  // The resistors of higher id that share a point with `part`, by id.
  [[nodiscard]] std::vector<PartId> meeting_after(PartId part) const {
    std::vector<PartId> others;
    for (const PointId point : {network_.from(part), network_.to(part)}) {
      network_.for_each_at(point, [&](PartId other) {
        if (other > part && network_.kind(other) == ElementKind::resistor) others.push_back(other);
      });
    }
    std::sort(others.begin(), others.end());
    others.erase(std::unique(others.begin(), others.end()), others.end());
    return others;
  }

  [[nodiscard]] std::size_t count_meeting() const {
    std::vector<std::size_t> ends(network_.point_count(), 0);
    std::size_t count = 0;
    for (const PartId part : resistors_) {
      count += ends[network_.from(part).index]++;
      count += ends[network_.to(part).index]++;
    }
    return count;
  }

  void list(PartId first, PartId second, Likeness likeness) {
    if (result_.pairs.size() == kMostPairs) {
      ++result_.more_pairs;
      return;
    }
    const Place place{{first, second}, {}, {}};
    const Verdict series = rule(RuleName::series).judge(network_, place);
    const Verdict parallel = rule(RuleName::parallel).judge(network_, place);
    if (series.allowed || parallel.allowed) return;
    result_.pairs.push_back({first, second, likeness, shared_point(network_, first, second),
                             series.facts, parallel.facts});
  }

  const Network& network_;
  Standstill& result_;
  std::vector<PartId> resistors_;
};

}  // namespace

std::size_t plain_steps(const StepLog& steps) {
  std::size_t count = 0;
  while (count < steps.size()) {
    if (rule(steps[count].rule).tier == Tier::transform) break;
    ++count;
  }
  return count;
}

Standstill stand_still(const Reduction& reduction) {
  Standstill result;
  result.steps = plain_steps(reduction.steps);
  const Network network = replay(reduction, result.steps);
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part)) continue;
    result.left.push_back({part, network.from(part), network.to(part)});
  }
  PairLister(network, result).run();
  return result;
}

}  // namespace ohmfold
