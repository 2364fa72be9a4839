// The words of the circuit language for parts and questions.

#include "ohmfold/problem.h"

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
  };
  return std::visit(Words{problem}, question);
}

}  // namespace ohmfold
