// What the lines of a circuit file mean.

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "language/findings_of.h"

namespace ohmfold {
namespace {

std::string setting_text(const Setting& setting, const Problem& problem) {
  const std::string name = problem.part(setting.part).name;
  switch (setting.kind) {
    case SettingKind::open:
      return name + " open";
    case SettingKind::closed:
      return name + " closed";
    case SettingKind::removed:
      return name + " removed";
    case SettingKind::shorted:
      return name + " shorted";
    case SettingKind::value:
      return name + " = " + setting.value.to_string();
  }
  return {};
}

/// Parts, cases and questions of a problem, a line each.
std::string dump(const Problem& problem) {
  std::string text;
  for (const Part& part : problem.parts) {
    text += std::string(keyword(part.kind)) + " " + part.name + " = " + part.value.to_string();
    if (!part.internal.is_zero()) text += " internal " + part.internal.to_string();
    text += " from " + problem.point(part.from) + " to " + problem.point(part.to) + "\n";
  }
  for (const Case& each : problem.cases) {
    text += "case '" + each.label + "':";
    for (const Setting& setting : each.settings) text += " " + setting_text(setting, problem);
    text += "\n";
  }
  for (const Question& question : problem.questions) {
    text += "find " + to_string(question, problem) + "\n";
  }
  return text;
}

Problem read(std::string_view text) {
  const SourceText source = circuit_text(text);
  Outcome<Problem> outcome = read_circuit(source);
  EXPECT_TRUE(outcome) << rendered(outcome.diagnostics, source);
  return outcome.value.value_or(Problem());
}

TEST(ReadCircuit, ReadsAWholeProblem) {
  const Problem problem = read(R"(
    title   "Cabin lights on a model ferry"
    text    "One pack feeds two strings of lights. Switch S joins the middles of the strings."
    text    "How hard does the pack work, and what does a meter between A and B read?"

    battery  E  = 18 V      from G to T         # from the negative terminal to the positive one
    resistor R1 = 4 ohm     from T to A
    resistor R2 = 2 ohm     from A to G
    resistor R3 = 6 ohm     from T to B
    resistor R4 = 6 ohm     from B to G
    switch   S              from A to B

    case "S open":    S open
    case "S closed":  S closed

    find current through E
    find voltage from A to B                    # V_A − V_B
    find power in R2
)");
  EXPECT_EQ(problem.source_name, "a.circuit");
  EXPECT_EQ(problem.title, "Cabin lights on a model ferry");
  ASSERT_EQ(problem.texts.size(), 2U);
  EXPECT_EQ(problem.texts[1],
            "How hard does the pack work, and what does a meter between A and B read?");
  EXPECT_EQ(problem.points, (std::vector<std::string>{"G", "T", "A", "B"}));
  EXPECT_EQ(problem.figures, 3);
  EXPECT_FALSE(problem.ground);
  EXPECT_EQ(problem.parts[0].where, (Span{6, 13, 1}));
  EXPECT_EQ(dump(problem),
            "battery E = 18 from G to T\n"
            "resistor R1 = 4 from T to A\n"
            "resistor R2 = 2 from A to G\n"
            "resistor R3 = 6 from T to B\n"
            "resistor R4 = 6 from B to G\n"
            "switch S = 0 from A to B\n"
            "case 'S open': S open\n"
            "case 'S closed': S closed\n"
            "find current through E\n"
            "find voltage from A to B\n"
            "find power in R2\n");
}

TEST(ReadCircuit, ReadsEveryKindOfPart) {
  EXPECT_EQ(dump(read("battery E = 9 V internal 0.5 ohm from G to T\n"
                      "resistor R = 0 ohm from T to A\n"
                      "lamp L = 15/8 kohm from A to B\n"
                      "wire from B to C\n"
                      "wire W from B to C\n"
                      "wire from B to C\n"
                      "ammeter M from C to G\n"
                      "voltmeter V from T to G\n")),
            "battery E = 9 internal 1/2 from G to T\n"
            "resistor R = 0 from T to A\n"
            "lamp L = 1875 from A to B\n"
            "wire wire 1 = 0 from B to C\n"
            "wire W = 0 from B to C\n"
            "wire wire 2 = 0 from B to C\n"
            "ammeter M = 0 from C to G\n"
            "voltmeter V = 0 from T to G\n"
            "case '':\n");
}

const std::string kTwo =
    "battery E = 9 V from G to T\n"
    "resistor R = 3 ohm from T to G\n";

TEST(ReadCircuit, ReadsEveryQuestion) {
  EXPECT_EQ(dump(read(kTwo + "find current through R\n"
                             "find voltage across E\n"
                             "find voltage from T to G\n"
                             "find potential at T\n"
                             "find power in E\n"
                             "find resistance between T and G\n"
                             "find resistance seen by E\n")),
            "battery E = 9 from G to T\n"
            "resistor R = 3 from T to G\n"
            "case '':\n"
            "find current through R\n"
            "find voltage across E\n"
            "find voltage from T to G\n"
            "find potential at T\n"
            "find power in E\n"
            "find resistance between T and G\n"
            "find resistance seen by E\n");
}

TEST(ReadCircuit, ReadsEverySettingOfACase) {
  EXPECT_EQ(dump(read("switch S from T to G\nlamp L = 3 from T to G\nwire W from T to G\n" + kTwo +
                      "case \"as built\": S open\n"
                      "case \"changed\": S closed, R = 12 kohm,L shorted, W removed,E = 1.5\n")),
            "switch S = 0 from T to G\n"
            "lamp L = 3 from T to G\n"
            "wire W = 0 from T to G\n"
            "battery E = 9 from G to T\n"
            "resistor R = 3 from T to G\n"
            "case 'as built': S open\n"
            "case 'changed': S closed R = 12000 L shorted W removed E = 3/2\n");
}

TEST(ReadCircuit, TakesQuestionsAndCasesBeforeTheParts) {
  const Problem problem = read(
      "find power in R\nground G\ncase \"short\": R shorted\n"
      "case \"other\": R = 4k7, E = 1.5 kV\ncase \"as built\":\n" +
      kTwo);
  EXPECT_EQ(problem.ground, PointId{0});
  EXPECT_EQ(dump(problem),
            "battery E = 9 from G to T\n"
            "resistor R = 3 from T to G\n"
            "case 'short': R shorted\n"
            "case 'other': R = 4700 E = 1500\n"
            "case 'as built':\n"
            "find power in R\n");
}

TEST(ReadCircuit, MakesBothStatesOfASingleSwitch) {
  EXPECT_EQ(dump(read(kTwo + "switch S from T to G\n")),
            "battery E = 9 from G to T\n"
            "resistor R = 3 from T to G\n"
            "switch S = 0 from T to G\n"
            "case 'S open': S open\n"
            "case 'S closed': S closed\n");
}

TEST(ReadCircuit, ReadsFiguresAndPlaces) {
  const Problem problem = read(kTwo + "figures 5\nplace T at 1, -2.5\nplace G at 3,4\n");
  EXPECT_EQ(problem.figures, 5);
  ASSERT_EQ(problem.places.size(), 2U);
  EXPECT_EQ(problem.places[0].point, PointId{1});
  EXPECT_EQ(problem.places[0].y, Number::quotient(-5, 2));
  EXPECT_EQ(problem.places[1].x, Number(3));
}

TEST(ReadCircuit, PassesByteOrderMarkCarriageReturnsAndUnusualSpaces) {
  EXPECT_EQ(dump(read("\xEF\xBB\xBF"
                      "battery\tE\u00A0= 9\u202FV from G to T\r\n"
                      "resistor R=3ohm from T to G#c\r\n"
                      "\r\n")),
            "battery E = 9 from G to T\n"
            "resistor R = 3 from T to G\n"
            "case '':\n");
}

TEST(ReadCircuit, ReadsASourceOfCurrentItsCasesAndATheveninQuestion) {
  EXPECT_EQ(dump(read("source J = 250 mA from G to T\nsource K = 1/3 from G to T\n"
                      "resistor R = 3 from T to G\ncase \"a\": J = 2 A, K removed\n"
                      "case \"b\": J shorted\nfind thevenin between T and G\n"
                      "find resistance seen by J\nfind power in J\n")),
            "source J = 1/4 from G to T\n"
            "source K = 1/3 from G to T\n"
            "resistor R = 3 from T to G\n"
            "case 'a': J = 2 K removed\n"
            "case 'b': J shorted\n"
            "find thevenin between T and G\n"
            "find resistance seen by J\n"
            "find power in J\n");
}

TEST(ReadCircuit, KeepsNamesOfPointsAndPartsApart) {
  EXPECT_EQ(dump(read("battery A = 9 V from A to a\nresistor a = 3 from a to A\n")),
            "battery A = 9 from A to a\n"
            "resistor a = 3 from a to A\n"
            "case '':\n");
}

TEST(ReadCircuit, ReportsOneSlipOnceOnly) {
  // R2 and B stand on lines with an error; that they are unknown later is no news.
  EXPECT_EQ(circuit_findings(kTwo + "resistor R2 = 4 V from T to B\n"
                                    "lamb L = 4 ohm from B to G\n"
                                    "case \"x\": R2 = 4, L removed\n"
                                    "find potential at B\n"
                                    "find power in L\n"),
            "a.circuit:3:17: error: 'V' is no unit of resistance; the unit here is ohm\n"
            "    resistor R2 = 4 V from T to B\n"
            "                    ^\n"
            "a.circuit:4:1: error: 'lamb' is not a statement; did you mean 'lamp'?\n"
            "    lamb L = 4 ohm from B to G\n"
            "    ^~~~\n");
}

TEST(ReadCircuit, ReportsAllErrorsInTheOrderOfTheirPlaces) {
  const Diagnostics found =
      read_circuit(circuit_text("find power in X\n" + kTwo + "foo\ncase \"a\": Y open, Z open\n" +
                                "resistor R = 4 from A to B\nground Q\n"))
          .diagnostics;
  std::vector<std::uint32_t> lines;
  for (const Diagnostic& each : found) lines.push_back(each.where.line);
  EXPECT_EQ(lines, (std::vector<std::uint32_t>{1, 4, 5, 5, 6, 7}));
}

TEST(ReadCircuit, SaysNothingOfALooseEndThatIsAskedAbout) {
  EXPECT_EQ(circuit_findings(kTwo + "resistor Q = 3 from T to X\nfind potential at X\n"), "");
  EXPECT_NE(circuit_findings(kTwo + "resistor Q = 3 from T to X\nfind power in Q\n"), "");
}

struct Refusal {
  std::string_view line;
  std::string_view expected;
};

TEST(ReadCircuit, SaysWhatItExpected) {
  const std::vector<Refusal> table{
      {"resistor Q 4 ohm from T to G", "expected '=', found '4'"},
      {"resistor Q = 4 ohm from T", "expected 'to', found the end of the line"},
      {"resistor = 4 ohm from T to G", "expected the name of a resistor, found '='"},
      {"resistor from T to G", "expected the name of a resistor, found 'from'"},
      {"resistor Q = from T to G", "expected a value, found 'from'"},
      {"resistor Q = \"4\" from T to G", "expected a value, found a text in quotes"},
      {"resistor Q = 4 ohm from to G", "expected the name of a point, found 'to'"},
      {"ammeter Q = 4 ohm from T to G", "expected 'from', found '='"},
      {"battery Q = 9 V internal from T to G", "expected a value, found 'from'"},
      {"find",
       "expected current, voltage, potential, power, resistance or thevenin, found the end of the "
       "line"},
      {"find curent through R",
       "expected current, voltage, potential, power, resistance or thevenin, found 'curent'; did "
       "you mean 'current'?"},
      {"find voltage of R", "expected 'across' or 'from', found 'of'"},
      {"find resistance seen from E", "expected 'by', found 'from'"},
      {"place T on 3, 4", "expected 'at', found 'on'"},
      {"place T at 3 4", "expected ',', found '4'"},
      {"title Porch", "expected a text in quotes, found 'Porch'"},
      {"case \"x\" R removed", "expected ':', found 'R'"},
      {"case \"x\": R ajar", "expected open, closed, removed, shorted or '=', found 'ajar'"},
      {"case \"x\": R =", "expected a value, found the end of the line"},
      {"case \"x\": R = , E = 3", "expected a value, found ','"},
      {"case \"x\": R removed,", "expected the name of a part, found the end of the line"},
      {"case \"x\": R removed E shorted", "expected ',', found 'E'"},
      {"= 4",
       "expected a statement, found '='; a line begins with a word such as resistor or "
       "find"},
      {"find norton between T and G",
       "'find norton' is not part of this version; ask for a current, voltage, potential, power, "
       "resistance or thevenin"},
      {"find thevenin at T", "expected 'between', found 'at'"},
      {"find thevenin between T", "expected 'and', found the end of the line"},
      {"find thevenin between T and T",
       "both ends of the Thevenin equivalent asked for are at 'T'; name two points"},
      {"source J = 2 V from T to G", "'V' is no unit of current; the unit here is A"},
      {"source J = 2 m from T to G", "'m' is a prefix without a unit; write mA"},
      {"source J = 2 amps from T to G",
       "'amps' is not a unit; units are ohm, V, A, W and S, with p n u m k M G"},
      {"source J = 2 A from T to T",
       "both ends of source J are at 'T'; its terminals need two points"},
      {"source J = 2 A internal 3 ohm from T to G", "expected 'from', found 'internal'"},
      {"case \"x\": R = 4 V", "'V' is no unit of resistance; the unit here is ohm"},
      {"case \"x\": R = 4,7", "'4,7' is not a number; write 4.7"},
      {"case \"x\": R = 4 E = 3",
       "'E' is not a unit; units are ohm, V, A, W and S, with p n u m k "
       "M G"},
      {"find resistance between T and T",
       "both ends of the resistance asked for are at 'T'; name two points"},
      {"find resistance seen by R",
       "'R' is a resistor: only a battery or a source sees a resistance; find resistance between "
       "two points"},
  };
  for (const Refusal& row : table) {
    const Diagnostics found = read_circuit(circuit_text(kTwo + std::string(row.line))).diagnostics;
    ASSERT_EQ(found.size(), 1U) << row.line;
    EXPECT_EQ(message(found.front()), row.expected);
    EXPECT_EQ(found.front().where.line, 3U);
  }
}

TEST(ReadCircuit, RefusesSettingsThatMakeNoSense) {
  const std::vector<Refusal> table{
      {"case \"x\": S removed",
       "'S' is a switch: it cannot be removed or shorted; say open or "
       "closed"},
      {"case \"x\": S = 4", "'S' is a switch: it has no value"},
      {"case \"x\": S open, R closed",
       "'R' is a resistor: only a switch can be open or closed; a part can be removed or shorted"},
  };
  for (const Refusal& row : table) {
    const std::string text = kTwo + "switch S from T to G\n" + std::string(row.line);
    const Diagnostics found = read_circuit(circuit_text(text)).diagnostics;
    ASSERT_EQ(found.size(), 1U) << row.line;
    EXPECT_EQ(message(found.front()), row.expected);
  }
}

}  // namespace
}  // namespace ohmfold
