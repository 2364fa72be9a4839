// Kirchhoff's laws, Ohm's law and the power balance, over any field.
#include <string>

#include "check/flow.h"
#include "check/rationals.h"
#include "check/report.h"
#include "exact/prime_field.h"

namespace ohmfold::check {
namespace {

template <class Field>
class FlowCheck {
 public:
  using Value = typename Field::Value;

  FlowCheck(const Field& field, const Network& network, const Wiring& wiring,
            const Flow<Field>& flow, std::size_t most_single)
      : field_(field),
        network_(network),
        wiring_(wiring),
        flow_(flow),
        most_single_(most_single),
        zero_(field.from(Number(0))),
        currents_(settled()) {}

  std::vector<Check> run() {
    check_currents();
    check_voltages();
    check_potentials();
    check_ohm();
    check_power();
    return std::move(checks_);
  }

 private:
  // Missing currents as zero, those that the model leaves open as the current law has them.
  std::vector<Value> settled() const {
    std::vector<Value> currents(network_.part_count(), zero_);
    std::vector<PartId> unknown;
    for (const PartId part : wiring_.conducting) {
      const auto current = stated(flow_.current, part.index);
      if (current) currents[part.index] = *current;
      if (!current && wiring_.is_open[part.index]) unknown.push_back(part);
    }
    for (const PartId part : wiring_.drives) {
      currents[part.index] = stated(flow_.current, part.index).value_or(zero_);
    }
    return settle_currents(field_, network_, unknown, std::move(currents));
  }

  Check new_check(CheckLaw law, std::size_t places) const {
    return {law, true, 0, {}, {}, places, 0, {}};
  }

  std::string off(const std::string& item, const Value& remainder, const char* unit,
                  const std::string& against) const {
    return item + ": off by " + field_.text(remainder) + " " + unit + ", compared with " + against;
  }

  void check_currents() {
    std::vector<Value> out(network_.point_count(), zero_);
    std::vector<std::string> faults(network_.point_count());
    for (const auto* parts : {&wiring_.conducting, &wiring_.drives}) {
      for (const PartId part : *parts) {
        Value& at_from = out[network_.from(part).index];
        at_from = field_.add(at_from, currents_[part.index]);
        Value& at_to = out[network_.to(part).index];
        at_to = field_.subtract(at_to, currents_[part.index]);
        const std::string fault = fault_in_current(part);
        if (!fault.empty()) faults[network_.from(part).index] = fault;
      }
    }
    std::vector<PointId> used;
    for (std::uint32_t i = 0; i < out.size(); ++i) {
      if (network_.degree(PointId{i}) > 0) used.push_back(PointId{i});
    }
    Check all = new_check(CheckLaw::current, used.size());
    for (const PointId point : used) {
      Check one = new_check(CheckLaw::current, 1);
      one.at = point;
      if (!faults[point.index].empty()) fail(one, faults[point.index]);
      if (out[point.index] != zero_) {
        fail(one, off("currents out of " + name_of(point), out[point.index], "A", "0 A"));
      }
      if (!one.holds) fail(all, one.detail);
      if (used.size() <= most_single_) checks_.push_back(std::move(one));
    }
    if (used.size() > most_single_) checks_.push_back(std::move(all));
  }

  // A current must be stated exactly where the model does not leave it open.
  std::string fault_in_current(PartId part) const {
    const auto current = stated(flow_.current, part.index);
    if (!current && !wiring_.is_open[part.index]) {
      return "the current of " + name_of(part) + " is missing";
    }
    if (current && wiring_.forbids_current(network_, part)) {
      return "the current of " + name_of(part) + " is stated, though ideal parts form a loop";
    }
    return {};
  }

  // The potential that a part's first point has above its second, by its stated voltage.
  Value drop(PartId part) const {
    const Value voltage = stated(flow_.voltage, part.index).value_or(zero_);
    const bool is_battery = network_.kind(part) == ElementKind::battery;
    return is_battery ? field_.subtract(zero_, voltage) : voltage;
  }

  void check_voltages() {
    heights_.assign(network_.point_count(), zero_);
    for (const PointId point : wiring_.forest.order) {
      const PartId up = wiring_.forest.up[point.index];
      if (!up.exists()) continue;
      const Value& above = heights_[wiring_.forest.above(network_, point).index];
      heights_[point.index] = network_.from(up) == point ? field_.add(above, drop(up))
                                                         : field_.subtract(above, drop(up));
    }
    std::vector<PartId> closing = wiring_.forest.chords;
    for (const auto* parts : {&wiring_.gaps, &wiring_.drives}) {
      for (const PartId part : *parts) {
        if (stated(flow_.voltage, part.index) &&
            wiring_.forest.joined(network_.from(part), network_.to(part))) {
          closing.push_back(part);
        }
      }
    }
    Check all = new_check(CheckLaw::voltage, closing.size());
    for (const PartId chord : closing) {
      Check one = new_check(CheckLaw::voltage, 1);
      const Value rise =
          field_.subtract(heights_[network_.from(chord).index], heights_[network_.to(chord).index]);
      const Value rest = field_.subtract(drop(chord), rise);
      if (rest != zero_) fail(one, off("loop through " + name_of(chord), rest, "V", "0 V"));
      if (!one.holds) fail(all, one.detail);
      if (closing.size() > most_single_) continue;
      one.loop = fundamental_loop(network_, wiring_.forest, chord);
      checks_.push_back(std::move(one));
    }
    if (closing.size() > most_single_) checks_.push_back(std::move(all));
  }

  // Potentials: known in one component as a whole, and differing by the voltages between.
  void check_potentials() {
    if (flow_.potential.empty()) return;
    std::optional<PointId> reference;
    for (std::uint32_t i = 0; i < network_.point_count() && !reference; ++i) {
      if (stated(flow_.potential, i)) reference = PointId{i};
    }
    if (!reference) return;
    const Value shift =
        field_.subtract(*stated(flow_.potential, reference->index), heights_[reference->index]);
    Check all = new_check(CheckLaw::voltage, 0);
    for (std::uint32_t i = 0; i < network_.point_count(); ++i) {
      const PointId point{i};
      const auto potential = stated(flow_.potential, i);
      const bool joined = wiring_.forest.joined(point, *reference);
      if (potential) ++all.places;
      if (potential.has_value() != joined) {
        fail(all, "the potential of " + name_of(point) +
                      (joined ? " is missing" : " is stated, though nothing fixes it"));
      } else if (potential && *potential != field_.add(heights_[i], shift)) {
        const Value meant = field_.add(heights_[i], shift);
        fail(all, off("potential of " + name_of(point), field_.subtract(*potential, meant), "V",
                      field_.text(meant) + " V"));
      }
    }
    checks_.push_back(std::move(all));
  }

  void check_ohm() {
    Check all = new_check(CheckLaw::ohm,
                          wiring_.conducting.size() + wiring_.gaps.size() + wiring_.drives.size());
    for (const PartId part : wiring_.conducting) {
      const auto voltage = stated(flow_.voltage, part.index);
      if (!voltage) {
        fail(all, "the voltage of " + name_of(part) + " is missing");
        continue;
      }
      const Value meant = own_voltage(part);
      if (*voltage == meant) continue;
      fail(all, off("voltage of " + name_of(part), field_.subtract(*voltage, meant), "V",
                    field_.text(meant) + " V"));
    }
    for (const PartId gap : wiring_.gaps) check_own_current(gap, zero_, all);
    for (const PartId drive : wiring_.drives) {
      check_own_current(drive, field_.from(network_.driven_current(drive).number), all);
    }
    checks_.push_back(std::move(all));
  }

  // What the part's own law says: V = I R, V = E - I r, or V = 0.
  Value own_voltage(PartId part) const {
    const Value& current = currents_[part.index];
    if (network_.kind(part) == ElementKind::resistor) {
      return field_.multiply(current, field_.from(network_.resistance(part)));
    }
    if (network_.kind(part) != ElementKind::battery) return zero_;
    const BatteryData& battery = network_.battery(part);
    const Value lost = field_.multiply(current, field_.from(battery.internal.number));
    return field_.subtract(field_.from(battery.emf.number), lost);
  }

  // A gap and a source of current have their current by themselves, and any voltage.
  void check_own_current(PartId gap, const Value& meant, Check& all) const {
    const Value current = stated(flow_.current, gap.index).value_or(zero_);
    if (current != meant) {
      fail(all, off("current of " + name_of(gap), field_.subtract(current, meant), "A",
                    field_.text(meant) + " A"));
    }
    const bool joined = wiring_.forest.joined(network_.from(gap), network_.to(gap));
    const bool has_voltage = stated(flow_.voltage, gap.index).has_value();
    if (has_voltage && !joined) {
      fail(all, "the voltage of " + name_of(gap) + " is stated, though nothing fixes it");
    }
    // Like a potential it follows from the voltages of the others: both are stated, or neither.
    const bool is_wanted = !flow_.potential.empty() && network_.kind(gap) != ElementKind::taken_out;
    if (!has_voltage && joined && is_wanted) {
      fail(all, "the voltage of " + name_of(gap) + " is missing");
    }
  }

  void check_power() {
    Check all = new_check(CheckLaw::power, 1);
    Value rest = zero_;
    Value delivered = zero_;
    for (const PartId part : wiring_.conducting) {
      const Value voltage = stated(flow_.voltage, part.index).value_or(zero_);
      const Value power = field_.multiply(voltage, currents_[part.index]);
      const bool is_battery = network_.kind(part) == ElementKind::battery;
      rest = is_battery ? field_.add(rest, power) : field_.subtract(rest, power);
      if (is_battery) delivered = field_.add(delivered, power);
      if (!flow_.power.empty()) check_stated_power(part, power, all);
    }
    for (const PartId part : wiring_.drives) {
      // Against the root of each piece: what flows in must flow out, so the roots cancel.
      const Value rise =
          field_.subtract(heights_[network_.to(part).index], heights_[network_.from(part).index]);
      const Value power = field_.multiply(rise, currents_[part.index]);
      rest = field_.add(rest, power);
      delivered = field_.add(delivered, power);
      if (!flow_.power.empty()) check_driven_power(part, power, all);
    }
    if (rest != zero_) {
      fail(all, off("power delivered less power taken up", rest, "W",
                    field_.text(delivered) + " W delivered"));
    }
    checks_.push_back(std::move(all));
  }

  void check_stated_power(PartId part, const Value& meant, Check& all) const {
    const auto power = stated(flow_.power, part.index);
    if (!power && !wiring_.is_open[part.index]) {
      fail(all, "the power of " + name_of(part) + " is missing");
    }
    // Where any current may circulate, so may any power, but for that of a wire.
    const bool is_fixed = !wiring_.is_open[part.index] || is_wire(network_.kind(part));
    if (!power || !is_fixed || *power == meant) return;
    fail(all, off("power of " + name_of(part), field_.subtract(*power, meant), "W",
                  field_.text(meant) + " W"));
  }

  // The power of a source of current is known where its voltage is.
  void check_driven_power(PartId part, const Value& meant, Check& all) const {
    const auto power = stated(flow_.power, part.index);
    const bool joined = wiring_.forest.joined(network_.from(part), network_.to(part));
    if (power.has_value() != joined) {
      fail(all, "the power of " + name_of(part) +
                    (joined ? " is missing" : " is stated, though nothing fixes it"));
    } else if (power && *power != meant) {
      fail(all, off("power of " + name_of(part), field_.subtract(*power, meant), "W",
                    field_.text(meant) + " W"));
    }
  }

  const Field& field_;
  const Network& network_;
  const Wiring& wiring_;
  const Flow<Field>& flow_;
  std::size_t most_single_;
  Value zero_;
  std::vector<Value> currents_;
  std::vector<Value> heights_;  // potentials against the root of each component
  std::vector<Check> checks_;
};

}  // namespace

template <class Field>
std::vector<Check> check_flow(const Field& field, const Network& network, const Wiring& wiring,
                              const Flow<Field>& flow, std::size_t most_single) {
  return FlowCheck<Field>(field, network, wiring, flow, most_single).run();
}

template std::vector<Check> check_flow(const Rationals&, const Network&, const Wiring&,
                                       const Flow<Rationals>&, std::size_t);
template std::vector<Check> check_flow(const PrimeField&, const Network&, const Wiring&,
                                       const Flow<PrimeField>&, std::size_t);

}  // namespace ohmfold::check
