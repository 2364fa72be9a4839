// The words of the circuit language for parts and questions.

#include "ohmfold/problem.h"

#include <algorithm>

#include "ohmfold/error.h"

namespace ohmfold {

std::string_view keyword(PartKind kind) {
  switch (kind) {
    case PartKind::battery:
      return "battery";
    case PartKind::resistor:
      return "resistor";
    case PartKind::lamp:
      return "lamp";
    case PartKind::wire:
      return "wire";
    case PartKind::knife_switch:
      return "switch";
    case PartKind::ammeter:
      return "ammeter";
    case PartKind::voltmeter:
      return "voltmeter";
    case PartKind::current_source:
      return "source";
  }
  throw InternalError("a kind of part without a keyword");
}

Unit unit_of_value(PartKind kind) {
  if (kind == PartKind::battery) return Unit::volt;
  return kind == PartKind::current_source ? Unit::ampere : Unit::ohm;
}

bool has_symbolic_values(const Problem& problem) {
  const auto in_part = [](const Part& part) {
    return (part.value.is_symbolic() && !part.unknown) || part.internal.is_symbolic();
  };
  const auto in_case = [](const Case& setting) {
    return std::any_of(setting.settings.begin(), setting.settings.end(),
                       [](const Setting& one) { return one.value.is_symbolic(); });
  };
  return std::any_of(problem.parts.begin(), problem.parts.end(), in_part) ||
         std::any_of(problem.cases.begin(), problem.cases.end(), in_case);
}

std::vector<SymbolValue> given_values(const Problem& problem) {
  std::vector<SymbolValue> values;
  for (const SymbolMeaning& symbol : problem.symbols) {
    if (symbol.value) values.emplace_back(symbol.name, *symbol.value);
  }
  return values;
}

Problem with_values_put_in(Problem problem) {
  const std::vector<SymbolValue> values = given_values(problem);
  const auto put_in = [&](Number& number) {
    if (!number.is_symbolic()) return;
    const std::optional<Number> plain = substitute(number, values);
    ensure(plain.has_value(), "a value of a file that a symbol divides");
    number = *plain;
  };
  for (Part& part : problem.parts) {
    put_in(part.value);
    put_in(part.internal);
  }
  const auto put_in_case = [&](Case& setting) {
    for (Setting& one : setting.settings) put_in(one.value);
  };
  for (Case& setting : problem.cases) put_in_case(setting);
  for (Given& given : problem.givens) {
    if (given.held_in) put_in_case(*given.held_in);
  }
  return problem;
}

std::string to_string(const Question& question, const Problem& problem) {
  struct Words {
    const Problem& problem;

    std::string operator()(const CurrentThrough& asked) const {
      return "current through " + problem.part(asked.part).name;
    }
    std::string operator()(const VoltageAcross& asked) const {
      return "voltage across " + problem.part(asked.part).name;
    }
    std::string operator()(const VoltageBetween& asked) const {
      return "voltage from " + problem.point(asked.from) + " to " + problem.point(asked.to);
    }
    std::string operator()(const PotentialAt& asked) const {
      return "potential at " + problem.point(asked.point);
    }
    std::string operator()(const PowerIn& asked) const {
      return "power in " + problem.part(asked.part).name;
    }
    std::string operator()(const ResistanceBetween& asked) const {
      return "resistance between " + problem.point(asked.from) + " and " + problem.point(asked.to);
    }
    std::string operator()(const ResistanceSeenBy& asked) const {
      return "resistance seen by " + problem.part(asked.battery).name;
    }
    std::string operator()(const TheveninBetween& asked) const {
      return "thevenin between " + problem.point(asked.from) + " and " + problem.point(asked.to);
    }
    std::string operator()(const ValueOf& asked) const { return problem.part(asked.part).name; }
  };
  return std::visit(Words{problem}, question);
}

Unit unit_of(const Question& question, const Problem& problem) {
  struct Reader {
    const Problem& problem;
    Unit operator()(const CurrentThrough&) const { return Unit::ampere; }
    Unit operator()(const VoltageAcross&) const { return Unit::volt; }
    Unit operator()(const VoltageBetween&) const { return Unit::volt; }
    Unit operator()(const PotentialAt&) const { return Unit::volt; }
    Unit operator()(const PowerIn&) const { return Unit::watt; }
    Unit operator()(const ResistanceBetween&) const { return Unit::ohm; }
    Unit operator()(const ResistanceSeenBy&) const { return Unit::ohm; }
    Unit operator()(const TheveninBetween&) const { return Unit::volt; }
    Unit operator()(const ValueOf& asked) const {
      return unit_of_value(problem.part(asked.part).kind);
    }
  };
  return std::visit(Reader{problem}, question);
}

std::vector<PartId> unknowns_of(const Problem& problem) {
  std::vector<PartId> unknowns;
  for (std::uint32_t i = 0; i < problem.parts.size(); ++i) {
    if (problem.parts[i].unknown) unknowns.push_back(PartId{i});
  }
  return unknowns;
}

}  // namespace ohmfold
