// Inputs that mean harm, or that nobody thought of: each ends in an answer or a clear error, in
// seconds and within a memory limit.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <ostream>
#include <string>
#include <vector>

#include "programs/program.h"

namespace ohmfold::testing {
namespace {

using ::testing::HasSubstr;

constexpr std::size_t kMany = 100'000;

std::string repeated(const std::string& piece, std::size_t times) {
  std::string text;
  text.reserve(piece.size() * times);
  for (std::size_t i = 0; i < times; ++i) text += piece;
  return text;
}

std::string point(std::size_t number) {
  return "p" + std::to_string(number);
}

std::string resistor(std::size_t number, const std::string& from, const std::string& to) {
  return "resistor R" + std::to_string(number) + " = " + std::to_string(number % 9 + 1) + " from " +
         from + " to " + to + '\n';
}

std::string battery(const std::string& from, const std::string& to) {
  return "battery E = 12 V from " + from + " to " + to + '\n';
}

std::string chain(std::size_t length) {
  std::string text = battery(point(0), point(length));
  for (std::size_t i = 0; i < length; ++i) text += resistor(i, point(i), point(i + 1));
  return text;
}

/// Rungs between the points p1, p2, … and ground, rails from each to the next.
std::string ladder(std::size_t rungs) {
  std::string text = battery("G", point(0));
  for (std::size_t i = 0; i < rungs; ++i) {
    text += resistor(2 * i, point(i), point(i + 1));
    text += resistor(2 * i + 1, point(i + 1), "G");
  }
  return text;
}

std::string bundle(std::size_t parts) {
  std::string text = battery("G", "T");
  for (std::size_t i = 0; i < parts; ++i) text += resistor(i, "T", "G");
  return text;
}

/// One resistor that closes a loop, and many that hang loose.
std::string star(std::size_t parts) {
  std::string text = battery("G", "T") + resistor(parts, "T", "G");
  for (std::size_t i = 0; i < parts; ++i) text += resistor(i, "T", point(i));
  return text;
}

/// A square mesh: nothing in it is in series or in parallel.
std::string mesh(std::size_t side) {
  const auto at = [&](std::size_t row, std::size_t column) { return point(row * side + column); };
  std::string text = battery(at(0, 0), at(side - 1, side - 1));
  std::size_t number = 0;
  for (std::size_t row = 0; row < side; ++row) {
    for (std::size_t column = 0; column < side; ++column) {
      if (column + 1 < side) text += resistor(number++, at(row, column), at(row, column + 1));
      if (row + 1 < side) text += resistor(number++, at(row, column), at(row + 1, column));
    }
  }
  return text;
}

/// A part between each two points; all alike, or all different.
std::string complete(std::size_t points, bool alike) {
  std::string text = battery(point(0), point(1));
  std::size_t number = 0;
  for (std::size_t i = 0; i < points; ++i) {
    for (std::size_t j = i + 1; j < points; ++j) {
      number += alike ? 9 : 1;
      text += resistor(number, point(i), point(j));
    }
  }
  return text;
}

/// Bridges one after the other, none of them balanced.
std::string bridges(std::size_t count) {
  std::string text = battery(point(0), point(3 * count));
  for (std::size_t i = 0; i < count; ++i) {
    const std::string a = point(3 * i), b = point(3 * i + 1), c = point(3 * i + 2);
    const std::string d = point(3 * i + 3);
    text += resistor(5 * i, a, b) + resistor(5 * i + 1, a, c) + resistor(5 * i + 2, b, c);
    text += resistor(5 * i + 3, b, d) + resistor(5 * i + 4, c, d);
  }
  return text;
}

const std::string kCurrent = "find current through E\n";
const std::string kSmall = "battery E = 6 V from G to T\nresistor R = 3 from T to G\n";

/// Batteries with resistors between them, all in one ring: one chain.
std::string battery_chain(std::size_t batteries) {
  std::string text;
  for (std::size_t i = 0; i < batteries; ++i) {
    text += "battery E" + std::to_string(i) + " = " + std::to_string(i % 7) +
            (i % 2 == 0 ? " V internal 1 from " : " V from ") + point(2 * i) + " to " +
            point(2 * i + 1) + '\n';
    text += resistor(i, point(2 * i + 1), i + 1 == batteries ? point(0) : point(2 * i + 2));
  }
  return text;
}

/// A ladder whose rails are symbols, a new one for each rung or one and the same.
std::string symbolic_ladder(std::size_t rungs, bool alike) {
  std::string text = battery("G", point(0));
  for (std::size_t i = 0; i < rungs; ++i) {
    const std::string name = alike ? "rail" : "rail" + std::to_string(i);
    if (i == 0 || !alike) text += "symbol " + name + "\n";
    text += "resistor S" + std::to_string(i) + " = " + name + " from " + point(i) + " to " +
            point(i + 1) + "\n";
    text += resistor(i, point(i + 1), "G");
  }
  return text;
}

const std::string kUnknown = "battery E = 6 V from G to T\nresistor X = unknown from T to G\n";

/// Batteries beside each other, each with its resistor: no two in one chain.
std::string battery_bundle(std::size_t batteries) {
  std::string text = resistor(batteries, "T", "G");
  for (std::size_t i = 0; i < batteries; ++i) {
    text += "battery E" + std::to_string(i) + " = 6 V from G to " + point(i) + '\n';
    text += resistor(i, point(i), "T");
  }
  return text;
}

/// Sources of current round a ring of themselves, and a resistor.
std::string source_ring(std::size_t sources) {
  std::string text = resistor(0, point(0), point(1));
  for (std::size_t i = 0; i < sources; ++i) {
    text += "source J" + std::to_string(i) + " = 2 A from " + point(i) + " to " +
            point((i + 1) % sources) + '\n';
  }
  return text;
}

struct Hostile {
  std::string name;
  /// Made when the test runs: each test is a run of this program, which lists all of them.
  std::function<std::string()> input;
  int code;
  std::vector<std::string> arguments = {"solve", "-"};
};

void PrintTo(const Hostile& hostile, std::ostream* out) {
  *out << hostile.name;
}

std::vector<Hostile> answered() {
  return {
      {"ChainAskedForOneCurrent", [] { return std::string(chain(kMany) + kCurrent); }, 0},
      {"ChainAskedForEverything", [] { return std::string(chain(kMany)); }, 0},
      {"ChainInPairs",
       [] { return std::string(chain(kMany) + kCurrent); },
       0,
       {"solve", "-", "--pairs"}},
      {"LadderAskedForOneCurrent", [] { return std::string(ladder(kMany / 10) + kCurrent); }, 0},
      {"LadderAskedForEverything", [] { return std::string(ladder(kMany / 10)); }, 0},
      {"LadderAsJson",
       [] { return std::string(ladder(kMany / 10)); },
       0,
       {"solve", "-", "--as", "json"}},
      {"BundleAskedForOneCurrent", [] { return std::string(bundle(10'000) + kCurrent); }, 0},
      {"BundleAskedForEverything", [] { return std::string(bundle(10'000)); }, 0},
      {"MeshOfTwentyByTwenty", [] { return std::string(mesh(20) + kCurrent); }, 0},
      {"InspectionOfAMesh", [] { return std::string(mesh(71)); }, 0, {"inspect", "-"}},
      {"InspectionOfAMeshAsJson",
       [] { return std::string(mesh(71)); },
       0,
       {"inspect", "-", "--as", "json"}},
      {"InspectionOfACompleteGraph",
       [] { return std::string(complete(142, false)); },
       0,
       {"inspect", "-"}},
      {"InspectionOfALadder", [] { return std::string(ladder(kMany / 10)); }, 0, {"inspect", "-"}},
      {"InspectionOfAChain", [] { return std::string(chain(kMany)); }, 0, {"inspect", "-"}},
      {"InspectionOfManyDeadEnds", [] { return std::string(star(kMany)); }, 0, {"inspect", "-"}},
      {"MeshByDeltaStar",
       [] { return std::string(mesh(10) + kCurrent); },
       0,
       {"solve", "-", "--method", "delta-star"}},
      {"MeshBySymmetry",
       [] { return std::string(mesh(12) + kCurrent); },
       0,
       {"solve", "-", "--method", "equal-potentials"}},
      {"CompleteGraphOfEqualParts", [] { return std::string(complete(60, true) + kCurrent); }, 0},
      {"CompleteGraph", [] { return std::string(complete(40, false) + kCurrent); }, 0},
      {"CompleteGraphByDeltaStar",
       [] { return std::string(complete(40, false) + kCurrent); },
       0,
       {"solve", "-", "--method", "delta-star"}},
      {"TenThousandPartsInBridges", [] { return std::string(bridges(2'000) + kCurrent); }, 0},
      {"TenThousandPartsInBridgesOnlyReduced",
       [] { return std::string(bridges(2'000) + kCurrent); },
       0,
       {"solve", "-", "--method", "series-parallel"}},
      {"LadderOfOneSymbol", [] { return std::string(symbolic_ladder(50, true) + kCurrent); }, 0},
      {"UnknownThatCancelsOut",
       [] {
         return std::string(kUnknown +
                            "resistor R = 3 from T to G\ngiven current through R = 2 A\nfind X\n");
       },
       0},
      {"MillionCommentLines",
       [] { return std::string(repeated("# nothing\n", 1'000'000) + kSmall); }, 0},
      {"LongNumber",
       [] {
         return std::string("battery E = 6 V from G to T\nresistor R = " + repeated("7", 10'000) +
                            " from T to G\n");
       },
       0},
      {"LongDecimal",
       [] {
         return std::string("battery E = 6 V from G to T\nresistor R = 1." + repeated("3", 10'000) +
                            " from T to G\n");
       },
       0},
      {"LongName",
       [] {
         return std::string("battery E = 6 V from G to T\nresistor R" + repeated("x", 10'000) +
                            " = 3 from T to G\n");
       },
       0},
      {"ThousandBatteriesInAChain", [] { return std::string(battery_chain(1'000)); }, 0},
      {"ManyBatteriesInAChain",
       [] { return std::string(battery_chain(kMany / 2) + "find current through E1\n"); }, 0},
      {"ManyBatteriesInAChainInPairs",
       [] { return std::string(battery_chain(10'000)); },
       0,
       {"solve", "-", "--pairs"}},
      {"ThousandBatteriesBesideEachOther",
       [] { return std::string(battery_bundle(1'000) + "find current through E1\n"); }, 0},
      {"ManySourcesOfCurrentInARing",
       [] { return std::string(source_ring(10'000) + "find current through R0\n"); }, 0},
      {"ManyDeadEnds", [] { return std::string(star(kMany) + kCurrent); }, 0},
      {"LongSum", [] { return std::string(repeated("1 + ", kMany) + "1"); }, 0, {"combine", "-"}},
      {"LongParallelSum",
       [] { return std::string(repeated("1 || ", 10'000) + "1"); },
       0,
       {"combine", "-"}},
  };
}

std::vector<Hostile> refused() {
  return {
      {"CurrentWithoutAWay",
       [] { return std::string("source J = 1 A from G to T\nresistor R = 1 from T to A\n"); }, 3},
      {"ManyCurrentsThatDisagree",
       [] { return std::string(source_ring(10'000) + "source X = 1 A from p1 to p5\n"); }, 3},
      {"LongLadderOfOneSymbol", [] { return std::string(symbolic_ladder(3'000, true) + kCurrent); },
       3},
      {"ThousandSymbols", [] { return std::string(symbolic_ladder(1'000, false) + kCurrent); }, 3},
      {"PowerOfASymbol",
       [] { return std::string("symbol r\nresistor R = r^1000000 from T to G\n"); }, 3},
      {"UnknownThatNoValueFits",
       [] { return std::string(kUnknown + "given voltage across X = 1e1000 V\nfind X\n"); }, 3},
      {"Empty", [] { return std::string(""); }, 3},
      {"OnlyComments", [] { return std::string("# nothing here\n"); }, 3},
      {"MillionWrongLines", [] { return std::string(repeated("rubbish\n", 1'000'000)); }, 3},
      {"OneLineOfTenMillion", [] { return std::string(repeated("x", 10'000'000)); }, 3},
      {"NulBytes", [] { return std::string(kSmall + std::string(1000, '\0')); }, 3},
      {"InvalidUtf8", [] { return std::string(kSmall + "title \"\xff\xfe\xc0\x80\"\n"); }, 3},
      {"HalfOfASign", [] { return std::string(kSmall + "title \"\xe2\x84"); }, 3},
      {"EndlessNumber",
       [] { return std::string("resistor R = " + repeated("7", 1'000'000) + " from T to G\n"); },
       3},
      {"EndlessExponent", [] { return std::string("resistor R = 1e999999999999 from T to G\n"); },
       3},
      {"DivisionByZero",
       [] { return std::string("battery E = 6 V from G to T\nresistor R = 1/0 from T to G\n"); },
       3},
      {"SameNameTwice", [] { return std::string(kSmall + "resistor R = 4 from T to G\n"); }, 3},
      {"ManyOfTheSameName",
       [] { return std::string(repeated("resistor R = 4 from T to G\n", kMany)); }, 3},
      {"UnknownPoint", [] { return std::string(kSmall + "find potential at Q\n"); }, 3},
      {"UnknownPart", [] { return std::string(kSmall + "find current through R99\n"); }, 3},
      {"ManyUnknownParts",
       [] { return std::string(chain(10'000) + repeated("find current through Rx\n", 10'000)); },
       3},
      {"OpenText", [] { return std::string(kSmall + "title \"" + repeated("x", 100'000)); }, 3},
      {"ShortCircuit",
       [] { return std::string("battery E = 6 V from G to T\nwire from T to G\n"); }, 3},
      {"OpenBrackets", [] { return std::string(repeated("(", kMany)); }, 3, {"combine", "-"}},
      {"NoExpression", [] { return std::string(""); }, 3, {"combine", "-"}},
      {"ManyOperators", [] { return std::string(repeated("+", kMany)); }, 3, {"combine", "-"}},
      {"ZeroInParallel", [] { return std::string("4 || 1/0"); }, 3, {"combine", "-"}},
  };
}

class Answered : public ::testing::TestWithParam<Hostile> {};
class Refused : public ::testing::TestWithParam<Hostile> {};

TEST_P(Answered, EndsInAnAnswer) {
  Launch run;
  run.arguments = GetParam().arguments;
  run.input = GetParam().input();
  const Ending ending = run_program(run);
  EXPECT_EQ(ending.signal, 0);
  EXPECT_EQ(ending.code, GetParam().code) << ending.err.substr(0, 1000);
  EXPECT_FALSE(ending.out.empty());
}

TEST_P(Refused, EndsInAClearError) {
  Launch run;
  run.arguments = GetParam().arguments;
  run.input = GetParam().input();
  const Ending ending = run_program(run);
  EXPECT_EQ(ending.signal, 0);
  EXPECT_EQ(ending.code, GetParam().code);
  EXPECT_THAT(ending.err, HasSubstr("error:"));
  EXPECT_LT(ending.err.size(), 40'000U);
}

const auto kName = [](const auto& tested) { return tested.param.name; };
INSTANTIATE_TEST_SUITE_P(Hostile, Answered, ::testing::ValuesIn(answered()), kName);
INSTANTIATE_TEST_SUITE_P(Hostile, Refused, ::testing::ValuesIn(refused()), kName);

void expect_an_answer_or_a_clear_error(const Launch& launch) {
  const Ending ending = run_program(launch);
  EXPECT_EQ(ending.signal, 0);
  EXPECT_TRUE(ending.code == 0 || (ending.code == 3 && !ending.err.empty()))
      << ending.code << '\n'
      << ending.err.substr(0, 1000);
}

TEST(Hostile, DeepBracketsDoNotEndInTheStack) {
  Launch launch;
  launch.arguments = {"combine", "-"};
  launch.input = repeated("(", kMany) + "1" + repeated(")", kMany);
  expect_an_answer_or_a_clear_error(launch);
}

/// The exact resistances of its steps grow with every rung: more memory than there is.
TEST(Hostile, LadderOfAHundredThousandResistorsIsSolvedOrRefused) {
  Launch launch;
  launch.arguments = {"solve", "-"};
  launch.input = ladder(kMany / 2) + kCurrent;
  expect_an_answer_or_a_clear_error(launch);
}

/// A text that a terminal would obey is shown, not obeyed.
TEST(Hostile, NoControlCharacterOfTheFileReachesTheTerminal) {
  Launch run;
  run.arguments = {"solve", "-"};
  run.input = "title \"\x1b[2Jgone\"\n" + kSmall + "resistor \x1b[31m\n";
  const Ending ending = run_program(run);
  EXPECT_EQ(ending.out.find('\x1b'), std::string::npos);
  EXPECT_EQ(ending.err.find('\x1b'), std::string::npos);
}

TEST(Hostile, EndlessInputIsCutOff) {
  Launch run;
  run.arguments = {"solve", "/dev/zero"};
  const Ending ending = run_program(run);
  EXPECT_EQ(ending.code, 3);
  EXPECT_THAT(ending.err, HasSubstr("/dev/zero"));
  EXPECT_THAT(ending.err, HasSubstr("256 MiB"));
}

}  // namespace
}  // namespace ohmfold::testing
