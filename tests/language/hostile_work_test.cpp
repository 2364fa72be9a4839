// Any bytes end in a work or in findings, and long ones stay bounded.

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <string>
#include <vector>

#include "language/findings_of.h"
#include "language/work_problem.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMany = 100'000;

std::string repeated(const std::string& piece, std::size_t times) {
  std::string text;
  for (std::size_t i = 0; i < times; ++i) text += piece;
  return text;
}

Outcome<Work> work_of(const std::string& text) {
  return read_work(work_text(text), problem_of_works());
}

TEST(HostileWork, MayNestBracketsToAnyDepth) {
  const std::string deep = repeated("(", kMany) + "R1" + repeated(" || R2)", kMany);
  const Outcome<Work> work = work_of("Rx = " + deep + " = 3 ohm");
  ASSERT_TRUE(work);
  EXPECT_EQ(std::get<CombineClaim>(work.value->claims.front().says).combinations.size(), kMany);
  EXPECT_FALSE(work_of("Rx = " + repeated("(", kMany)));
  EXPECT_FALSE(work_of("Rx = R1 + " + repeated(")", kMany)));
  EXPECT_FALSE(work_of("R5 = r + " + repeated("(", kMany)));
  EXPECT_FALSE(work_of(repeated("(", kMany)));
}

TEST(HostileWork, MayHaveVeryLongLines) {
  const Outcome<Work> sum = work_of("Rx = R1" + repeated(" + R2", kMany));
  ASSERT_TRUE(sum);
  EXPECT_EQ(std::get<CombineClaim>(sum.value->claims.front().says).combinations.size(), 1U);
  EXPECT_TRUE(work_of("R1" + repeated(", R2", kMany) + " in series make Rx"));
  EXPECT_TRUE(work_of("I_" + repeated("x", kMany) + " = 3"));
  EXPECT_TRUE(work_of("V_" + repeated("A", kMany) + " = 3"));
  EXPECT_FALSE(work_of("R5 = r" + repeated(" + r", kMany)));
  EXPECT_FALSE(work_of("R5 = " + repeated("-", kMany)));
  EXPECT_FALSE(work_of("R5 = " + repeated("\u2212", kMany)));
  EXPECT_FALSE(work_of("Rx = R1" + repeated(" = R2", kMany)));
  EXPECT_FALSE(work_of("R1 R2 R3 in delta make A B C = 1" + repeated(", 1", kMany)));
  EXPECT_FALSE(work_of(repeated("x", 4'000'001)));
}

TEST(HostileWork, MayHoldValuesThatGrowWithoutBound) {
  const std::string power = "((((r + U + 1)^20)^20)^20)";
  EXPECT_FALSE(work_of("R5 = " + power));
  const Outcome<Work> many = work_of(repeated("R5 = " + power + "\n", 2'000));
  EXPECT_FALSE(many);
  EXPECT_EQ(many.diagnostics.size(), 101U);
  EXPECT_FALSE(work_of("R5 = r" + repeated(" * 1e9999", 100)));
  EXPECT_FALSE(work_of("R5 = 1e99999 r"));
}

TEST(HostileWork, IsReportedInPartWhereManyLinesAreBad) {
  const Outcome<Work> work = work_of(repeated("foo\n", kMany));
  ASSERT_EQ(work.diagnostics.size(), 101U);
  EXPECT_EQ(message(work.diagnostics.back()), "and 99900 more");
}

TEST(HostileWork, MayBeAnyBytes) {
  EXPECT_EQ(work_of(std::string(kMany, '\0')).diagnostics.front().kind, DiagnosticKind::nul_byte);
  EXPECT_EQ(work_of("R12 = R1 + \xFF").diagnostics.front().kind, DiagnosticKind::not_utf8);
  EXPECT_EQ(work_of("I_E = 3\x1B[0m").diagnostics.front().kind, DiagnosticKind::stray_character);
  EXPECT_TRUE(work_of(std::string(kMany, '\n')));
  for (const char sign : {'=', '+', '|', '"', '(', ')', ',', ':', '~', '-', '_', '/'}) {
    EXPECT_EQ(work_of(std::string(kMany, sign)).diagnostics.size(), 1U) << sign;
  }
}

/// Words of works and bytes that belong to none, in any order.
std::string random_text(std::mt19937& random) {
  const std::vector<std::string> pieces{
      "R1",       "R2",      "R12",  "E",          "A",       "B",    "N",      "V_A",
      "V_AB",     "I_E",     "P_R2", "R_eq",       "=",       "=",    "+",      "||",
      "|",        "\u2225",  "(",    ")",          ",",       ":",    "\u2248", "~",
      "-",        "\u2212",  "4",    "2/3",        "4k7",     "1e9",  "4,7",    "ohm",
      "V",        "mA",      "k",    "R",          "r",       "U",    "r^2",    "\u00B2",
      "current",  "through", "no",   "series",     "or",      "make", "in",     "parallel",
      "delta",    "star",    "and",  "meeting",    "at",      "the",  "same",   "potential",
      "voltage",  "from",    "to",   "resistance", "between", "seen", "by",     "equivalent",
      "value",    "of",      "case", "\"S\"",      "\"",      "#",    "\n",     "\n",
      "resistor", "\xFF",    "\x1B", "\t",         "pair",    "left", "/",      "*"};
  const std::vector<std::string> claims{
      "R234 = R2 || (R3 + R4) = 6 ohm\n",
      "V_AB = -3 mV\n",
      "R5 = 3/2 r + 2 ohm\n",
      "R1 and R2 in series make R12 = 4 2/3\n",
      "A and B at the same potential\n",
      "R1 R2 R3 in delta make Ra Rb Rc = 2, 3, 1 ohm meeting at N\n"};
  std::string text;
  const std::size_t count = random() % 20;
  for (std::size_t i = 0; i < count; ++i) {
    text += pieces[random() % pieces.size()];
    if (random() % 3 != 0) text += ' ';
  }
  std::string claim = claims[random() % claims.size()];
  claim.insert(random() % claim.size(), random() % 2 == 0 ? "" : pieces[random() % pieces.size()]);
  return random() % 2 == 0 ? text : claim + claims[random() % claims.size()];
}

TEST(HostileWork, OfRandomWordsNeverBreaksTheReader) {
  std::mt19937 random(20240611);
  std::size_t read = 0;
  for (int i = 0; i < 20'000; ++i) {
    const SourceText source = work_text(random_text(random));
    const Outcome<Work> work = read_work(source, problem_of_works());
    EXPECT_NE(work.value.has_value(), has_error(work.diagnostics)) << source.text;
    for (const Diagnostic& finding : work.diagnostics) {
      EXPECT_FALSE(render(finding, source).empty());
      EXPECT_FALSE(message(finding).empty());
    }
    if (!work) continue;
    for (const Claim& claim : work.value->claims) {
      ++read;
      EXPECT_EQ(source.line(claim.where.line).substr(claim.where.column, claim.where.length),
                claim.text);
    }
  }
  EXPECT_GT(read, 1'000U);
}

}  // namespace
}  // namespace ohmfold
