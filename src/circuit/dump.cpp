// A network as one canonical line, for tests and for reports of our own faults.
#include <string_view>

#include "ohmfold/network.h"

namespace ohmfold {
namespace {

std::string_view word(ElementKind kind) {
  switch (kind) {
    case ElementKind::resistor:
      return "resistor";
    case ElementKind::battery:
      return "battery";
    case ElementKind::port:
      return "port";
    case ElementKind::current_source:
      return "current-source";
    case ElementKind::wire:
      return "wire";
    case ElementKind::closed_switch:
      return "closed-switch";
    case ElementKind::ammeter:
      return "ammeter";
    case ElementKind::shorted:
      return "shorted";
    case ElementKind::open_switch:
      return "open-switch";
    case ElementKind::voltmeter:
      return "voltmeter";
    case ElementKind::taken_out:
      return "taken-out";
    case ElementKind::switched_off:
      return "switched-off";
  }
  return "";
}

}  // namespace

std::string Network::dump() const {
  std::string line;
  for (std::uint32_t i = 0; i < part_count(); ++i) {
    const PartId part{i};
    if (!is_alive(part)) continue;
    if (!line.empty()) line += "; ";
    line += std::to_string(i);
    line += ' ';
    line += word(kind(part));
    line += ' ' + std::to_string(from(part).index) + '-' + std::to_string(to(part).index);
    if (kind(part) == ElementKind::resistor)
      line += ' ' + resistance(part).lowest_terms().to_string();
    if (kind(part) == ElementKind::current_source)
      line += ' ' + driven_current(part).number.to_string();
    if (kind(part) == ElementKind::battery) {
      const BatteryData& data = battery(part);
      line += ' ' + data.emf.number.to_string() + '/' + data.internal.number.to_string();
    }
  }
  return line;
}

}  // namespace ohmfold
