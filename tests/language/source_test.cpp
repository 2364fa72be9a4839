// A finding is shown at its place, whatever stands on the line.

#include "ohmfold/source.h"

#include <gtest/gtest.h>

#include <string>

namespace ohmfold {
namespace {

std::string shown_at(const std::string& line, std::uint32_t column, std::uint32_t length) {
  Diagnostic finding{};
  finding.kind = DiagnosticKind::negative_resistance;
  finding.where = {1, column, length};
  return render(finding, {.name = "f", .text = line});
}

TEST(SourceText, GivesItsLinesWithoutTheirEnds) {
  const SourceText source{.name = "f", .text = "\xEF\xBB\xBFone\r\n\ntwo\rthree\nlast"};
  EXPECT_EQ(source.line(0), "");
  EXPECT_EQ(source.line(1), "one");
  EXPECT_EQ(source.line(2), "");
  EXPECT_EQ(source.line(3), "two\rthree");
  EXPECT_EQ(source.line(4), "last");
  EXPECT_EQ(source.line(5), "");
}

TEST(Render, CountsCharactersNotBytes) {
  EXPECT_EQ(shown_at("größe kΩ x", 12, 1),
            "f:1:10: error: a resistance cannot be negative\n"
            "    größe kΩ x\n"
            "             ^");
}

TEST(Render, ShowsATabAsOneSpace) {
  EXPECT_EQ(shown_at("\ta\tbc", 3, 2),
            "f:1:4: error: a resistance cannot be negative\n"
            "     a bc\n"
            "       ^~");
}

TEST(Render, ShowsNoControlsAndNoBrokenBytes) {
  EXPECT_EQ(shown_at("\x1B[2J\xFF\x9B x", 7, 1),
            "f:1:8: error: a resistance cannot be negative\n"
            "    \xEF\xBF\xBD[2J\xEF\xBF\xBD\xEF\xBF\xBD x\n"
            "           ^");
}

TEST(Render, ShowsEightyColumnsAroundThePlace) {
  const std::string line = std::string(100, 'a') + "XY" + std::string(100, 'b');
  EXPECT_EQ(shown_at(line, 100, 2),
            "f:1:101: error: a resistance cannot be negative\n"
            "    ..." +
                std::string(37, 'a') + "XY" + std::string(35, 'b') +
                "...\n"
                "    " +
                std::string(40, ' ') + "^~");
}

TEST(Render, CutsAMarkThatIsTooLong) {
  EXPECT_EQ(shown_at(std::string(300, 'a'), 0, 300),
            "f:1:1: error: a resistance cannot be negative\n"
            "    " +
                std::string(77, 'a') +
                "...\n"
                "    ^" +
                std::string(76, '~'));
}

TEST(Render, MarksThePlaceAfterTheLastCharacter) {
  EXPECT_EQ(shown_at("ab", 2, 0),
            "f:1:3: error: a resistance cannot be negative\n"
            "    ab\n"
            "      ^");
  const std::string line(200, 'a');
  EXPECT_EQ(shown_at(line, 200, 0),
            "f:1:201: error: a resistance cannot be negative\n"
            "    ..." +
                std::string(37, 'a') +
                "\n"
                "    " +
                std::string(40, ' ') + "^");
}

TEST(Message, CutsLongWordsAndCleansThem) {
  Diagnostic finding{};
  finding.kind = DiagnosticKind::division_by_zero;
  finding.arguments = {std::string(1000, '4')};
  EXPECT_EQ(message(finding), "'" + std::string(120, '4') + "...' divides by zero");
  finding.arguments = {"a\x1B\xFFz"};
  EXPECT_EQ(message(finding), "'a\xEF\xBF\xBD\xEF\xBF\xBDz' divides by zero");
}

TEST(HasError, IgnoresWarnings) {
  Diagnostic warning{};
  warning.kind = DiagnosticKind::lonely_point;
  warning.severity = Severity::warning;
  EXPECT_FALSE(has_error({}));
  EXPECT_FALSE(has_error({warning}));
  Diagnostic error = warning;
  error.severity = Severity::error;
  EXPECT_TRUE(has_error({warning, error}));
}

}  // namespace
}  // namespace ohmfold
