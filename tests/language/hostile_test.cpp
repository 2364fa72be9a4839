// Any bytes end in a problem or in findings, and many of them stay bounded.

#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

#include "language/findings_of.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMany = 20'000;

std::string repeated(const std::string& line, std::size_t times) {
  std::string text;
  for (std::size_t i = 0; i < times; ++i) text += line;
  return text;
}

TEST(HostileText, OfManyBadLinesIsReportedInPart) {
  const Diagnostics found = read_circuit(circuit_text(repeated("foo\n", kMany))).diagnostics;
  ASSERT_EQ(found.size(), 101U);
  EXPECT_EQ(found.front().where.line, 1U);
  EXPECT_EQ(found[99].where.line, 100U);
  EXPECT_EQ(message(found.back()), "and 19900 more");
}

TEST(HostileText, OfManyWarningsStillShowsTheErrors) {
  std::string text = repeated("resistor R = 3 m from A to B\n", 1);
  for (std::size_t i = 0; i < 300; ++i) {
    text += "resistor R" + std::to_string(i) + " = 3 m from A to B\n";
  }
  const Diagnostics found = read_circuit(circuit_text(text + "ground X\n")).diagnostics;
  EXPECT_TRUE(has_error(found));
  ASSERT_EQ(found.size(), 102U);
  EXPECT_EQ(found.back().severity, Severity::warning);
  EXPECT_EQ(message(found.back()), "and 201 more");
}

TEST(HostileText, KeepsTheFirstErrorsInWhateverOrderTheyAreFound) {
  // Unknown names are found after the bad lines, but stand before them.
  const std::string text =
      "resistor R = 3 from A to B\n" + repeated("find power in X\n", 150) + repeated("foo\n", 150);
  const Diagnostics found = read_circuit(circuit_text(text)).diagnostics;
  ASSERT_EQ(found.size(), 101U);
  EXPECT_EQ(found[99].where.line, 101U);
  EXPECT_EQ(found[99].kind, DiagnosticKind::unknown_part);
  EXPECT_EQ(message(found.back()), "and 200 more");
}

TEST(HostileText, WithManySwitchesAndCasesStaysCheap) {
  std::string text;
  for (std::size_t i = 0; i < kMany; ++i) {
    const std::string number = std::to_string(i);
    text.append("switch S").append(number).append(" from A to B\ncase \"");
    text.append(number).append("\": S").append(number).append(" open\n");
  }
  const Diagnostics found = read_circuit(circuit_text(text)).diagnostics;
  ASSERT_EQ(found.size(), 101U);
  EXPECT_EQ(message(found.front()),
            "this case does not set the switches S1, S2, S3, S4, S5 and others; add open or closed "
            "for every switch");
}

TEST(HostileText, MayBeEmptyOrNothingButZeros) {
  EXPECT_EQ(read_circuit(circuit_text("")).diagnostics.front().kind, DiagnosticKind::no_parts);
  EXPECT_EQ(read_circuit(circuit_text("\xEF\xBB\xBF")).diagnostics.front().kind,
            DiagnosticKind::no_parts);
  EXPECT_EQ(read_circuit(circuit_text(std::string(kMany, '\0'))).diagnostics.front().kind,
            DiagnosticKind::nul_byte);
  EXPECT_EQ(read_circuit(circuit_text(std::string(kMany, '\n'))).diagnostics.front().kind,
            DiagnosticKind::no_parts);
  EXPECT_EQ(read_circuit(circuit_text(std::string(kMany, '"'))).diagnostics.size(), 1U);
  EXPECT_EQ(read_circuit(circuit_text(std::string(kMany, '='))).diagnostics.size(), 1U);
}

// RFC 3629: overlong forms, surrogates, what lies beyond U+10FFFF, and sequences that are cut off.
TEST(HostileText, IsCheckedForUtf8) {
  for (const std::string_view bytes :
       {"\xC0\x80", "\xC1\xBF", "\xE0\x80\x80", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xED\xBF\xBF",
        "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xF8\x88\x80\x80\x80", "\x80", "\xC3", "\xE2\x84",
        "\xC3(", "\xFF"}) {
    const std::string text = "# " + std::string(bytes) + "\nresistor R = 3 from A to B\n";
    const Diagnostics found = read_circuit(circuit_text(text)).diagnostics;
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().kind, DiagnosticKind::not_utf8);
    EXPECT_EQ(found.front().where.column, 2U);
  }
  EXPECT_EQ(circuit_findings("title \"\u00E9 \u20AC \U0001F600\"\nbattery E = 1 V from A to B\n"
                             "resistor R = 3 from A to B\n"),
            "");
}

/// Words of both languages and bytes that belong to neither, in any order.
std::string random_text(std::mt19937& random) {
  const std::vector<std::string> pieces{
      "battery", "resistor", "switch", "wire", "case", "find",    "current", "through",
      "from",    "to",       "R1",     "E",    "A",    "B",       "=",       ",",
      ":",       "\"",       "\"x\"",  "#",    "\n",   "\n",      "\n",      "4",
      "4k7",     "12 V",     "ohm",    "1/0",  "1e9",  "-3",      "4,7",     "open",
      "removed", "S",        "(",      ")",    "+",    "||",      "|",       "\u2225",
      "\xFF",    "\xC3",     "\x1B",   "\t",   " ",    " ",       "unknown", "internal",
      "voltage", "between",  "and",    "seen", "by",   "figures", "place",   "at",
      "ground",  "\u03A9",   "\u00A0", "R1:",  ".",    "e",       "/",       "title"};
  std::string text;
  const std::size_t count = random() % 60;
  for (std::size_t i = 0; i < count; ++i) {
    text += pieces[random() % pieces.size()];
    if (random() % 3 != 0) text += ' ';
  }
  return text;
}

TEST(HostileText, OfRandomWordsNeverBreaksTheReaders) {
  std::mt19937 random(20240611);
  for (int i = 0; i < 5'000; ++i) {
    const std::string text = random_text(random);
    const SourceText source = circuit_text(text);
    const Outcome<Problem> circuit = read_circuit(source);
    EXPECT_NE(circuit.value.has_value(), has_error(circuit.diagnostics)) << text;
    for (const Diagnostic& finding : circuit.diagnostics) {
      EXPECT_FALSE(render(finding, source).empty());
    }
    const Outcome<Problem> expression = read_expression(source, Number(1));
    EXPECT_NE(expression.value.has_value(), has_error(expression.diagnostics)) << text;
    for (const Diagnostic& finding : expression.diagnostics) {
      EXPECT_FALSE(render(finding, source).empty());
    }
  }
}

}  // namespace
}  // namespace ohmfold
