// Applies a case's settings to the parts of the file.
#include "circuit/set_case.h"

#include <algorithm>
#include <unordered_map>

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

// What becomes of a battery or a source of current.
enum class Source { as_stated, lifted_out, replaced_by_internal };

class Setter {
 public:
  Setter(const Problem& problem, const Case& setting)
      : problem_(problem), network_(problem.points.size()) {
    network_.reserve(problem.parts.size() + 1);
    for (const Setting& one : setting.settings) settings_[one.part.index] = &one;
  }

  // `becomes(PartId)` says what becomes of a source.
  template <class Becomes>
  Network run(Becomes becomes) {
    for (std::uint32_t i = 0; i < problem_.parts.size(); ++i) {
      const PartId id{i};
      add(problem_.parts[i], setting_of(id), becomes(id));
    }
    return std::move(network_);
  }

 private:
  const Setting* setting_of(PartId id) const {
    const auto at = settings_.find(id.index);
    return at == settings_.end() ? nullptr : at->second;
  }

  void add(const Part& part, const Setting* setting, Source source) {
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
        add_battery(part, value, source);
        return;
      case PartKind::current_source:
        add_current_source(part, value, source);
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

  void add_battery(const Part& part, const Number& volt, Source source) {
    switch (source) {
      case Source::as_stated:
        network_.add_battery(part.from, part.to, Voltage{volt}, Resistance{part.internal});
        return;
      case Source::lifted_out:
        network_.add(ElementKind::taken_out, part.from, part.to);
        return;
      case Source::replaced_by_internal:
        add_resistor(part, part.internal);
        return;
    }
  }

  void add_current_source(const Part& part, const Number& ampere, Source source) {
    switch (source) {
      case Source::as_stated:
        network_.add_current_source(part.from, part.to, Current{ampere});
        return;
      case Source::lifted_out:
        network_.add(ElementKind::taken_out, part.from, part.to);
        return;
      case Source::replaced_by_internal:
        network_.add(ElementKind::switched_off, part.from, part.to);
        return;
    }
  }

  const Problem& problem_;
  Network network_;
  std::unordered_map<std::uint32_t, const Setting*> settings_;
};

}  // namespace

Network set_case(const Problem& problem, const Case& setting) {
  return Setter(problem, setting).run([](PartId) { return Source::as_stated; });
}

Network resistors_between(const Problem& problem, const Case& setting, PointId first,
                          PointId second) {
  Network network = Setter(problem, setting).run([](PartId) { return Source::lifted_out; });
  network.add(ElementKind::port, first, second);
  return network;
}

Network seen_by(const Problem& problem, const Case& setting, PartId source) {
  Network network = Setter(problem, setting).run([&](PartId id) {
    return id == source ? Source::lifted_out : Source::replaced_by_internal;
  });
  const Part& part = problem.part(source);
  network.add(ElementKind::port, part.to, part.from);
  return network;
}

Network seen_from(const Problem& problem, const Case& setting, PointId first, PointId second) {
  Network network =
      Setter(problem, setting).run([](PartId) { return Source::replaced_by_internal; });
  network.add(ElementKind::port, first, second);
  return network;
}

Network with_sources(const Problem& problem, const Case& setting,
                     const std::vector<PartId>& sources) {
  return Setter(problem, setting).run([&](PartId id) {
    const bool stays = std::find(sources.begin(), sources.end(), id) != sources.end();
    return stays ? Source::as_stated : Source::replaced_by_internal;
  });
}

PointId ground_of(const Problem& problem) {
  if (problem.ground) return *problem.ground;
  const auto battery = std::find_if(problem.parts.begin(), problem.parts.end(),
                                    [](const Part& p) { return p.kind == PartKind::battery; });
  return battery == problem.parts.end() ? PointId{0} : battery->from;
}

}  // namespace ohmfold
