// The symbols of quantities.
#include "views/symbols.h"

#include <algorithm>

namespace ohmfold::views {

Symbols::Symbols(const Problem& problem, const PartNames& names)
    : problem_(problem), names_(names) {}

std::string Symbols::name(PartId part) const {
  // A wire without a name in the file is "wire 3": I_wire3.
  std::string text = names_.of(part);
  text.erase(std::remove(text.begin(), text.end(), ' '), text.end());
  return text;
}

bool Symbols::is_part(const std::string& name) const {
  return std::any_of(problem_.parts.begin(), problem_.parts.end(),
                     [&](const Part& part) { return part.name == name; });
}

Expression Symbols::potential(PointId point) const {
  const std::string& name = problem_.point(point);
  return {Symbol{"V", is_part(name) ? "(" + name + ")" : name}};
}

Expression Symbols::between(PointId from, PointId to, const char* letter) const {
  const std::string& first = problem_.point(from);
  const std::string& second = problem_.point(to);
  const bool plain = first.size() == 1 && second.size() == 1 && !is_part(first + second);
  return {Symbol{letter, plain ? first + second : "(" + first + "," + second + ")"}};
}

}  // namespace ohmfold::views
