// Judgements built by hand, for the tests of what is said about them.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "ohmfold/coach.h"
#include "samples.h"
#include "views/names.h"

namespace ohmfold::test {

/// A 30 V battery with 2 ohm inside feeds R1, then R2 beside R3 and R4; R5 hangs loose at C, and so
/// does what the open switch S and the meters N and M join.
inline constexpr const char* kJudgedCircuit =
    "title \"Lamps of a toy theatre\"\n"
    "battery E = 30 V internal 2 ohm from G to A\n"
    "resistor R1 = 4 ohm from A to B\n"
    "resistor R2 = 9 ohm from B to D\n"
    "resistor R3 = 7 ohm from B to C\n"
    "resistor R4 = 11 ohm from C to D\n"
    "resistor R5 = 6 ohm from C to F\n"
    "ammeter N from D to G\n"
    "voltmeter M from B to D\n"
    "switch S from F to G\n"
    "case \"S open\": S open\n"
    "find current through E\n"
    "find voltage from A to B\n"
    "find power in R2\n";

/// A problem, a work that grows by hand, and what is found about it.
class JudgedSample {
 public:
  explicit JudgedSample(const char* circuit = kJudgedCircuit) {
    exercise.trace = trace_of(circuit);
    exercise.problem = exercise.trace.problem;
    work.source_name = "toy.work";
    for (const CaseTrace& one : exercise.trace.cases) judged.cases.push_back(standing_of(one));
  }

  [[nodiscard]] PartId part(const std::string& name) const {
    const std::vector<std::string>& names = judged.cases.front().part_names;
    for (std::uint32_t i = 0; i < names.size(); ++i) {
      if (names[i] == name) return PartId{i};
    }
    ADD_FAILURE() << "no part " << name;
    return {};
  }
  [[nodiscard]] PointId point(const std::string& name) const {
    const std::vector<std::string>& names = judged.cases.front().point_names;
    for (std::uint32_t i = 0; i < names.size(); ++i) {
      if (names[i] == name) return PointId{i};
    }
    ADD_FAILURE() << "no point " << name;
    return {};
  }
  /// "R1 R2"
  [[nodiscard]] std::vector<PartId> parts(const std::string& names) const {
    std::vector<PartId> ids;
    for (const std::string& name : words_of(names)) ids.push_back(part(name));
    return ids;
  }
  [[nodiscard]] std::vector<PointId> points(const std::string& names) const {
    std::vector<PointId> ids;
    for (const std::string& name : words_of(names)) ids.push_back(point(name));
    return ids;
  }

  /// Adds a claim; what is found about it is to be filled in.
  Judgement& add(std::string text, decltype(Claim::says) says) {
    Claim claim;
    claim.text = std::move(text);
    claim.where.line = static_cast<std::uint32_t>(work.claims.size() + 1);
    claim.says = std::move(says);
    work.claims.push_back(std::move(claim));
    Judgement judgement;
    judgement.claim = work.claims.size() - 1;
    judged.lines.push_back(std::move(judgement));
    return judged.lines.back();
  }
  /// A combination of "R3 R4" with a value as "18.0 ohm".
  Judgement& add_combination(Joining how, const std::string& operands, const std::string& made,
                             const std::string& digits) {
    const std::string sign = how == Joining::series ? " + " : " || ";
    CombineClaim claim;
    Combination combination;
    combination.how = how;
    std::string text = made + " = ";
    for (const std::string& name : words_of(operands)) {
      if (!combination.operands.empty()) text += sign;
      text += name;
      combination.operands.push_back({{name, {}}, {}});
    }
    claim.combinations.push_back(combination);
    claim.makes.text = made;
    claim.value = written(digits, Unit::ohm);
    Judgement& judgement = add(text + " = " + digits + " ohm", claim);
    judgement.step = StepVerdict::right;
    judgement.rule = how == Joining::series ? RuleName::series : RuleName::parallel;
    judgement.operands = parts(operands);
    judgement.stated = Quantity(claim.value->number, Unit::ohm);
    judgement.unit = UnitVerdict::right;
    judgement.expected_unit = Unit::ohm;
    return judgement;
  }
  /// A value of a part.
  Judgement& add_value(Claimed claimed, const std::string& of, const std::string& digits,
                       Unit unit) {
    ValueClaim claim;
    claim.claimed = claimed;
    claim.first.text = of;
    claim.value = written(digits, unit);
    const std::string kind = claimed == Claimed::current ? "current through "
                             : claimed == Claimed::power ? "power in "
                                                         : "voltage across ";
    const bool whole = claimed == Claimed::whole_resistance;
    Judgement& judgement = add((whole ? "R_eq" : kind + of) + " = " + digits + " " +
                                   std::string(symbol(unit, Letters::ascii)),
                               claim);
    judgement.claimed = claimed;
    if (!whole) judgement.of = part(of);
    judgement.stated = Quantity(claim.value.number, unit);
    judgement.unit = UnitVerdict::right;
    judgement.expected_unit = unit;
    return judgement;
  }

  static WrittenValue written(const std::string& digits, std::optional<Unit> unit, int power = 0) {
    WrittenValue value;
    value.number = parse_number(digits).number;
    for (int i = 0; i < power; ++i) value.number = value.number * Number(10);
    value.digits = digits;
    value.power = power;
    value.unit = unit;
    return value;
  }

  Exercise exercise;
  Work work;
  WorkJudgement judged;

 private:
  static std::vector<std::string> words_of(const std::string& text) {
    std::vector<std::string> words;
    for (std::size_t at = 0; at < text.size();) {
      const std::size_t end = std::min(text.find(' ', at), text.size());
      words.push_back(text.substr(at, end - at));
      at = end + 1;
    }
    return words;
  }

  [[nodiscard]] CaseStanding standing_of(const CaseTrace& one) const {
    CaseStanding standing;
    standing.network = one.main.end;
    const views::PartNames names(*exercise.problem, one.main);
    for (std::uint32_t i = 0; i < one.main.end.part_count(); ++i) {
      standing.part_names.push_back(names.of(PartId{i}));
    }
    standing.point_names = exercise.problem->points;
    standing.is_begun = true;
    return standing;
  }
};

}  // namespace ohmfold::test
