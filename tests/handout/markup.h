// Reads markup strictly: an element that is not closed, a stray ampersand or an attribute that
// comes twice is a fault.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace ohmfold::test {

struct Element {
  std::string name;
  std::map<std::string, std::string> attributes;  ///< references resolved
  std::string text;                               ///< of it and all within, references resolved
  std::size_t depth = 0;
};

struct Markup {
  std::vector<Element> elements;  ///< in the order in which they begin
  std::string fault;              ///< empty where there is none
};

/// A page: a DOCTYPE, then elements as XML has them; what stands within script and style is taken
/// as it is, up to their end tags, as HTML does.
[[nodiscard]] Markup read_markup(const std::string& text);

/// Those of this name.
[[nodiscard]] std::vector<Element> all_of(const Markup& markup, const std::string& name);

}  // namespace ohmfold::test
