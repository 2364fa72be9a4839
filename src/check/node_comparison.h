// Comparing what a result states with potentials that were found another way, over any field.
#pragma once

#include <string>
#include <vector>

#include "check/flow.h"
#include "check/node_equations.h"
#include "check/report.h"

namespace ohmfold::check {

/// One check over everything that `flow` states: currents, voltages, and differences of potentials.
/// `potential` by point, as from node_potentials. Cost: linear.
template <class Field>
class FlowComparison {
 public:
  using Value = typename Field::Value;

  FlowComparison(const Field& field, const Network& network, const Wiring& wiring,
                 const Flow<Field>& flow, const std::vector<Value>& potential)
      : field_(field),
        network_(network),
        wiring_(wiring),
        flow_(flow),
        potential_(potential),
        zero_(field.from(Number(0))) {}

  Check run() {
    const std::vector<Value> currents = branch_currents(field_, network_, wiring_, potential_);
    for (const PartId part : wiring_.conducting) {
      compare_current(part, currents[part.index]);
      compare_voltage(part);
    }
    for (const PartId drive : wiring_.drives) {
      compare("current of " + name_of(drive), stated(flow_.current, drive.index),
              currents[drive.index], "A");
      compare_voltage(drive);
    }
    for (const PartId gap : wiring_.gaps) {
      compare("current of " + name_of(gap), stated(flow_.current, gap.index), zero_, "A");
      compare_voltage(gap);
    }
    compare_potentials();
    return check_;
  }

 private:
  void compare(const std::string& item, const std::optional<Value>& has, const Value& meant,
               const char* unit) {
    if (!has) return;
    ++check_.places;
    if (*has == meant) return;
    fail(check_, item + ": off by " + field_.text(field_.subtract(*has, meant)) + " " + unit +
                     ", compared with " + field_.text(meant) + " " + unit);
  }

  void compare_current(PartId part, const Value& meant) {
    const auto current = stated(flow_.current, part.index);
    if (current && wiring_.forbids_current(network_, part)) {
      fail(check_, "current of " + name_of(part) + ": stated, though ideal parts form a loop");
    } else {
      compare("current of " + name_of(part), current, meant, "A");
    }
  }

  void compare_voltage(PartId part) {
    const auto voltage = stated(flow_.voltage, part.index);
    const PointId from = network_.from(part);
    const PointId to = network_.to(part);
    if (voltage && !wiring_.forest.joined(from, to)) {
      fail(check_, "voltage of " + name_of(part) + ": stated, though nothing fixes it");
      return;
    }
    const Value drop = field_.subtract(potential_[from.index], potential_[to.index]);
    const bool is_battery = network_.kind(part) == ElementKind::battery;
    compare("voltage of " + name_of(part), voltage,
            is_battery ? field_.subtract(zero_, drop) : drop, "V");
  }

  // All against the first point that has a potential.
  void compare_potentials() {
    std::optional<PointId> reference;
    for (std::uint32_t i = 0; i < network_.point_count(); ++i) {
      const auto potential = stated(flow_.potential, i);
      if (!potential) continue;
      if (!reference) reference = PointId{i};
      if (!wiring_.forest.joined(*reference, PointId{i})) {
        fail(check_, "potential of " + name_of(PointId{i}) + ": stated, though nothing fixes it");
        continue;
      }
      const Value shift =
          field_.subtract(*stated(flow_.potential, reference->index), potential_[reference->index]);
      compare("potential of " + name_of(PointId{i}), potential, field_.add(potential_[i], shift),
              "V");
    }
  }

  const Field& field_;
  const Network& network_;
  const Wiring& wiring_;
  const Flow<Field>& flow_;
  const std::vector<Value>& potential_;
  Value zero_;
  Check check_{CheckLaw::node_voltage, true, 0, {}, {}, 0, 0, {}};
};

template <class Field>
[[nodiscard]] Check compare_flow(const Field& field, const Network& network, const Wiring& wiring,
                                 const Flow<Field>& flow,
                                 const std::vector<typename Field::Value>& potential) {
  return FlowComparison<Field>(field, network, wiring, flow, potential).run();
}

}  // namespace ohmfold::check
