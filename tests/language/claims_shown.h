// Claims as short texts, so that tables can say what a line becomes.
#pragma once

#include <string>
#include <string_view>

#include "ohmfold/decimal.h"
#include "ohmfold/work.h"

namespace ohmfold {

template <class... Functions>
struct Cases : Functions... {
  using Functions::operator()...;
};
// Clang 14 does not deduce the arguments of an aggregate by itself.
template <class... Functions>
Cases(Functions...) -> Cases<Functions...>;

/// "20/3 [6.67 e3 ohm]": the number, its digits, the power of ten and the unit, "-" for none.
inline std::string shown(const WrittenValue& value) {
  return value.number.to_string() + " [" + value.digits + " e" + std::to_string(value.power) + " " +
         (value.unit ? std::string(symbol(*value.unit, Letters::ascii)) : "-") + "]";
}

inline std::string shown(const std::vector<WrittenName>& names) {
  std::string text;
  for (const WrittenName& name : names) text += (text.empty() ? "" : " ") + name.text;
  return text;
}

/// "series R3 R4, parallel R2 #0": an operand that is an earlier combination as its number.
inline std::string shown(const std::vector<Combination>& combinations) {
  std::string text;
  for (const Combination& combination : combinations) {
    if (!text.empty()) text += ", ";
    text += combination.how == Joining::series ? "series" : "parallel";
    for (const Combination::Operand& operand : combination.operands) {
      text += " " + (operand.inner ? "#" + std::to_string(*operand.inner) : operand.name.text);
    }
  }
  return text;
}

inline std::string_view shown(Claimed claimed) {
  switch (claimed) {
    case Claimed::current:
      return "current";
    case Claimed::voltage:
      return "voltage";
    case Claimed::power:
      return "power";
    case Claimed::value:
      return "value";
    case Claimed::voltage_between:
      return "voltage_between";
    case Claimed::potential:
      return "potential";
    case Claimed::resistance_between:
      return "resistance_between";
    case Claimed::resistance_seen_by:
      return "resistance_seen_by";
    case Claimed::whole_resistance:
      break;
  }
  return "whole_resistance";
}

inline std::string shown(const RewriteClaim& claim) {
  std::string text = claim.rule == RuleName::delta_star ? "delta_star " : "star_delta ";
  text += shown(claim.takes) + " -> " + shown(claim.makes);
  for (const WrittenValue& value : claim.values) text += " = " + shown(value);
  if (claim.middle) text += " at " + claim.middle->text;
  return text;
}

inline std::string shown(const Claim& claim) {
  const Cases cases{
      [](const CombineClaim& says) {
        return shown(says.combinations) + " -> " + says.makes.text +
               (says.value ? " = " + shown(*says.value) : "");
      },
      [](const ValueClaim& says) {
        std::string text(shown(says.claimed));
        for (const WrittenName* name : {&says.first, &says.second}) {
          if (!name->text.empty()) text += " " + name->text;
        }
        return text + " = " + shown(says.value);
      },
      [](const SamePotentialClaim& says) {
        return "same potential " + says.first.text + " " + says.second.text;
      },
      [](const NoCurrentClaim& says) { return "no current " + says.part.text; },
      [](const NoPairClaim&) { return std::string("no pair"); },
      [](const RewriteClaim& says) { return shown(says); },
      [](const CaseClaim& says) { return "case " + says.label.text; },
  };
  return std::visit(cases, claim.says);
}

}  // namespace ohmfold
