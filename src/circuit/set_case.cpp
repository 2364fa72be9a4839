// Applies a case's settings to the parts of the file.
#include "circuit/set_case.h"

#include <algorithm>
#include <unordered_map>

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

// What becomes of the batteries.
enum class Batteries { as_stated, lifted_out, replaced_by_internal };

class Setter {
 public:
  Setter(const Problem& problem, const Case& setting)
      : problem_(problem), network_(problem.points.size()) {
    network_.reserve(problem.parts.size() + 1);
    for (const Setting& one : setting.settings) settings_[one.part.index] = &one;
  }

  Network run(Batteries batteries, PartId lifted = {}) {
    for (std::uint32_t i = 0; i < problem_.parts.size(); ++i) {
      const PartId id{i};
      const bool lift = batteries == Batteries::lifted_out || id == lifted;
      add(problem_.parts[i], setting_of(id), lift, batteries == Batteries::as_stated);
    }
    return std::move(network_);
  }

 private:
  const Setting* setting_of(PartId id) const {
    const auto at = settings_.find(id.index);
    return at == settings_.end() ? nullptr : at->second;
  }

  void add(const Part& part, const Setting* setting, bool lift, bool as_stated) {
    if (setting != nullptr && setting->kind == SettingKind::removed) {
      network_.add(ElementKind::taken_out, part.from, part.to);
      return;
    }
    if (setting != nullptr && setting->kind == SettingKind::shorted) {
      network_.add(ElementKind::shorted, part.from, part.to);
      return;
    }
    const bool has_value = setting != nullptr && setting->kind == SettingKind::value;
    const Number& value = has_value ? setting->value : part.value;
    switch (part.kind) {
      case PartKind::resistor:
      case PartKind::lamp:
        add_resistor(part, value);
        return;
      case PartKind::battery:
        add_battery(part, value, lift, as_stated);
        return;
      case PartKind::wire:
        network_.add(ElementKind::wire, part.from, part.to);
        return;
      case PartKind::ammeter:
        network_.add(ElementKind::ammeter, part.from, part.to);
        return;
      case PartKind::voltmeter:
        network_.add(ElementKind::voltmeter, part.from, part.to);
        return;
      case PartKind::knife_switch:
        ensure(setting != nullptr, "a switch without a setting");
        network_.add(setting->kind == SettingKind::closed ? ElementKind::closed_switch
                                                          : ElementKind::open_switch,
                     part.from, part.to);
        return;
    }
  }

  void add_resistor(const Part& part, const Number& ohm) {
    if (ohm.is_zero()) {
      network_.add(ElementKind::wire, part.from, part.to);
    } else {
      network_.add(ElementKind::resistor, part.from, part.to, Ratio(ohm));
    }
  }

  void add_battery(const Part& part, const Number& volt, bool lift, bool as_stated) {
    if (lift) {
      network_.add(ElementKind::taken_out, part.from, part.to);
    } else if (as_stated) {
      network_.add_battery(part.from, part.to, Voltage{volt}, Resistance{part.internal});
    } else {
      add_resistor(part, part.internal);
    }
  }

  const Problem& problem_;
  Network network_;
  std::unordered_map<std::uint32_t, const Setting*> settings_;
};

}  // namespace

Network set_case(const Problem& problem, const Case& setting) {
  return Setter(problem, setting).run(Batteries::as_stated);
}

Network resistors_between(const Problem& problem, const Case& setting, PointId first,
                          PointId second) {
  Network network = Setter(problem, setting).run(Batteries::lifted_out);
  network.add(ElementKind::port, first, second);
  return network;
}

Network seen_by(const Problem& problem, const Case& setting, PartId battery) {
  Network network = Setter(problem, setting).run(Batteries::replaced_by_internal, battery);
  const Part& part = problem.part(battery);
  network.add(ElementKind::port, part.to, part.from);
  return network;
}

PointId ground_of(const Problem& problem) {
  if (problem.ground) return *problem.ground;
  const auto battery = std::find_if(problem.parts.begin(), problem.parts.end(),
                                    [](const Part& p) { return p.kind == PartKind::battery; });
  return battery == problem.parts.end() ? PointId{0} : battery->from;
}

}  // namespace ohmfold
