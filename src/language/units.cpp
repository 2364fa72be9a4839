// Units and their prefixes as people write them.

#include "language/units.h"

#include <array>

#include "language/nearest.h"

namespace ohmfold {
namespace {

struct UnitWord {
  std::string_view text;
  Unit unit;
};
// The letter omega and the sign ohm (U+2126) look alike, as do the letter mu and the sign micro.
constexpr std::array<UnitWord, 7> kUnits{{{"ohm", Unit::ohm},
                                          {"\xCE\xA9", Unit::ohm},
                                          {"\xE2\x84\xA6", Unit::ohm},
                                          {"V", Unit::volt},
                                          {"A", Unit::ampere},
                                          {"W", Unit::watt},
                                          {"S", Unit::siemens}}};

struct Prefix {
  std::string_view text;
  long power;
};
constexpr std::array<Prefix, 9> kPrefixes{{{"p", -12},
                                           {"n", -9},
                                           {"u", -6},
                                           {"\xC2\xB5", -6},
                                           {"\xCE\xBC", -6},
                                           {"m", -3},
                                           {"k", 3},
                                           {"M", 6},
                                           {"G", 9}}};

std::optional<Unit> plain_unit(std::string_view word) {
  for (const UnitWord& entry : kUnits) {
    if (entry.text == word) return entry.unit;
  }
  return std::nullopt;
}

}  // namespace

bool begins_unit(std::string_view word) {
  const char c = word.front();
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
}

std::optional<ParsedUnit> parse_unit(std::string_view word) {
  if (const auto unit = plain_unit(word)) return ParsedUnit{0, unit};
  for (const Prefix& prefix : kPrefixes) {
    if (!word.starts_with(prefix.text)) continue;
    const std::string_view rest = word.substr(prefix.text.size());
    if (rest.empty()) return ParsedUnit{prefix.power, std::nullopt};
    if (const auto unit = plain_unit(rest)) return ParsedUnit{prefix.power, unit};
  }
  return std::nullopt;
}

std::string_view quantity_in(Unit unit) {
  switch (unit) {
    case Unit::ohm:
      return "resistance";
    case Unit::ampere:
      return "current";
    case Unit::watt:
      return "power";
    case Unit::siemens:
      return "conductance";
    case Unit::volt:
      break;
  }
  return "voltage";
}

std::string unit_remedy(std::string_view word, Unit wanted) {
  constexpr std::array<std::string_view, 8> kUsual{"ohm",  "kohm", "Mohm", "mohm",
                                                   "volt", "V",    "from", "internal"};
  const bool has_digit = word.find_first_of("0123456789") != std::string_view::npos;
  if (has_digit && wanted != Unit::ohm) return "letter codes such as 4k7 are for resistances";
  if (has_digit) return "the letters of codes such as 4k7 are R, k or K, M, G, L and T";
  std::string_view singular = word;
  if (singular.ends_with('s')) singular.remove_suffix(1);
  const std::string_view meant = nearest(singular, kUsual);
  if (meant.empty()) return {};
  return std::string("did you mean '").append(meant == "volt" ? "V" : meant).append("'?");
}

}  // namespace ohmfold
