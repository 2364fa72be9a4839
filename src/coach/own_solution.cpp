// A person's own network, solved with their own values.
#include "coach/own_solution.h"

#include <algorithm>
#include <utility>

#include "solve/flow.h"
#include "solve/node_voltage.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostParts = 300;

class Solving {
 public:
  explicit Solving(const CaseBook& book) : book_(book), own_(book.networks.own()) {
    solution_.current.resize(own_.part_count());
    solution_.voltage.resize(own_.part_count());
  }

  std::optional<OwnSolution> run() && {
    if (own_.alive_count() > kMostParts || !copy_living() || !solve()) return std::nullopt;
    for (const PartId part : living_) unfold(part);
    std::sort(solution_.claims.begin(), solution_.claims.end());
    solution_.claims.erase(std::unique(solution_.claims.begin(), solution_.claims.end()),
                           solution_.claims.end());
    return std::move(solution_);
  }

 private:
  // The living parts with the person's own values; false where one is missing.
  bool copy_living() {
    Network network(own_.point_count());
    for (std::uint32_t i = 0; i < own_.part_count(); ++i) {
      const PartId part{i};
      if (!own_.is_alive(part)) continue;
      if (!add(network, part)) return false;
      living_.push_back(part);
    }
    reduction_.start = network;
    reduction_.end = std::move(network);
    for (std::uint32_t i = 0; i < living_.size(); ++i) reduction_.left.push_back(PartId{i});
    return true;
  }

  bool add(Network& network, PartId part) {
    const PointId from = own_.from(part);
    const PointId to = own_.to(part);
    if (from == to) return false;
    switch (own_.kind(part)) {
      case ElementKind::resistor: {
        const auto value = book_.own_resistance(part);
        if (!value || !value->number.is_positive()) return false;
        network.add(ElementKind::resistor, from, to, Ratio(value->number));
        rest_on(*value);
        return true;
      }
      case ElementKind::battery: {
        const BatteryData& data = own_.battery(part);
        network.add_battery(from, to, data.emf, data.internal);
        has_source_ = true;
        return true;
      }
      case ElementKind::current_source:
        network.add_current_source(from, to, own_.driven_current(part));
        has_source_ = true;
        return true;
      case ElementKind::port:
        network.add(ElementKind::port, from, to);
        reduction_.source = PartId{static_cast<std::uint32_t>(living_.size())};
        has_source_ = true;
        return true;
      default:
        return false;
    }
  }

  void rest_on(const OwnValue& value) {
    solution_.claims.insert(solution_.claims.end(), value.claims.begin(), value.claims.end());
  }

  bool solve() {
    if (!has_source_ || living_.size() < 2) return false;
    Flow<ExactField> flow(ExactField{}, living_.size());
    // Loops of ideal sources are solved nowhere but in the case itself.
    std::size_t ideal = 0;
    for (const BatteryData& data : reduction_.end.batteries()) {
      if (data.internal.is_zero()) ++ideal;
    }
    if (ideal > 1 || !solve_by_node_voltage(reduction_, flow)) return false;
    for (std::uint32_t i = 0; i < living_.size(); ++i) {
      solution_.current[living_[i].index] = abs(flow.current[i]);
      // The equations say nothing of the voltage of a source of current.
      if (own_.kind(living_[i]) == ElementKind::current_source) continue;
      solution_.voltage[living_[i].index] = abs(flow.voltage[i]);
    }
    return true;
  }

  // What flows inside of a part that was made: in series one current, in parallel one voltage.
  void unfold(PartId part) {
    std::vector<PartId> open{part};
    while (!open.empty()) {
      const PartId whole = open.back();
      open.pop_back();
      const Making* making = book_.making(whole);
      if (making == nullptr || !making->how) continue;
      for (const PartId operand : making->operands) {
        const auto value = book_.own_resistance(operand);
        if (!value || value->number.is_zero() || operand.index >= solution_.current.size())
          continue;
        rest_on(*value);
        auto& current = solution_.current[operand.index];
        auto& voltage = solution_.voltage[operand.index];
        if (making->how == Joining::series) {
          current = solution_.current[whole.index];
          voltage = *current * value->number;
        } else {
          voltage = solution_.voltage[whole.index];
          current = *voltage / value->number;
        }
        open.push_back(operand);
      }
    }
  }

  const CaseBook& book_;
  const Network& own_;
  std::vector<PartId> living_;
  Reduction reduction_;
  OwnSolution solution_;
  bool has_source_ = false;
};

}  // namespace

std::optional<OwnSolution> OwnSolution::find(const CaseBook& book) {
  return Solving(book).run();
}

}  // namespace ohmfold
