// The exit codes, one table for all ways to end.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "programs/program.h"

namespace ohmfold::testing {
namespace {

using ::testing::HasSubstr;

const std::string kGood =
    "battery E = 6 V from G to T\nresistor R = 3 from T to A\nswitch S from A to G\n"
    "case \"S open\": S open\ncase \"S closed\": S closed\n";
const std::string kShorted =
    "battery E = 6 V from G to T\nresistor R = 3 from T to G\nswitch S from T to G\n"
    "case \"apart\": S open\ncase \"joined\": S closed\n";

class ExitCode : public ::testing::Test {
 protected:
  void SetUp() override {
    write_file(folder_.path() / "good.circuit", kGood);
    write_file(folder_.path() / "wrong.circuit", "resistor R\n");
    write_file(folder_.path() / "shorted.circuit", kShorted);
    write_file(folder_.path() / "right.work", "case \"S closed\"\nI_R = 2 A\n");
    write_file(folder_.path() / "mistake.work", "case \"S closed\"\nI_R = 18 A\n");
    write_file(folder_.path() / "broken.work", "I_R = = 2 A\n");
    std::filesystem::create_directory(folder_.path() / "folder");
    std::filesystem::create_directory(folder_.path() / "class");
    std::filesystem::copy_file(folder_.path() / "right.work", folder_.path() / "class/a.work");
  }
  Ending run(std::vector<std::string> arguments) {
    Launch run;
    run.arguments = std::move(arguments);
    run.folder = folder_.path();
    return run_program(run);
  }

  TemporaryFolder folder_;
};

struct Row {
  std::vector<std::string> arguments;
  int code;
  std::string out, err;  ///< must occur there; "" says that nothing may
};

TEST_F(ExitCode, SaysHowTheRunWent) {
  const std::vector<Row> rows = {
      {{"--help"}, 0, "solve", ""},
      {{"solve", "--help"}, 0, "--case", ""},
      {{"combine", "-h"}, 0, "--across", ""},
      {{"--version"}, 0, "ohmfold 0.", ""},
      {{"solve", "good.circuit"}, 0, "S closed", ""},
      {{"solve", "good.circuit", "--method", "series-parallel"}, 0, "S closed", ""},
      {{"combine", "4 + 6 || 3"}, 0, "6", ""},
      {{"combine", "4 + 6 || 3", "--across", "12V"}, 0, "2", ""},
      {{"check", "good.circuit", "right.work"}, 0, "right", ""},
      {{"check", "good.circuit", "right.work", "--as", "json"}, 0, "ohmfold-judgement", ""},
      {{"hint", "good.circuit"}, 0, "\n", ""},
      {{"hint", "good.circuit", "right.work", "--level", "tell"}, 0, "\n", ""},
      {{"mark", "good.circuit", "class"}, 0, "a.work", ""},
      {{"mark", "good.circuit", "right.work", "class", "--as", "csv"}, 0, "class/a.work", ""},
      {{"practise", "good.circuit"}, 0, "kept in good.work", ""},
      // mistakes
      {{"check", "good.circuit", "mistake.work"}, 1, "not right", ""},
      {{"hint", "good.circuit", "mistake.work"}, 1, "Line 2", ""},
      {{"mark", "good.circuit", "right.work", "mistake.work"}, 1, "mistake.work", ""},
      {{"mark", "good.circuit", "class", "broken.work"}, 1, "line 1:", ""},
      {{"mark", "good.circuit", "missing.work"}, 1, "missing.work", ""},
      // wrong use
      {{}, 2, "", "a command is needed"},
      {{"slove", "good.circuit"}, 2, "", "did you mean 'solve'?"},
      {{"combin", "4"}, 2, "", "did you mean 'combine'?"},
      {{"good.circuit"}, 2, "", "did you mean 'solve good.circuit'?"},
      {{"solve"}, 2, "", "FILE is required"},
      {{"solve", "good.circuit", "--figres", "4"}, 2, "", "did you mean '--figures'?"},
      {{"solve", "good.circuit", "--figures", "0"}, 2, "", "--figures"},
      {{"solve", "good.circuit", "--figures", "31"}, 2, "", "--figures"},
      {{"solve", "good.circuit", "--figures", "three"}, 2, "", "--figures"},
      {{"solve", "good.circuit", "--as", "pdf"}, 2, "", "--as"},
      {{"solve", "good.circuit", "--method", "guess"}, 2, "", "--method"},
      {{"solve", "good.circuit", "--case", "S opne"}, 2, "", "'S open'"},
      {{"solve", "good.circuit", "-o", "good.circuit"}, 2, "", "overwrite"},
      {{"chekc", "good.circuit", "right.work"}, 2, "", "did you mean 'check'?"},
      {{"practice", "good.circuit"}, 2, "", "did you mean 'practise'?"},
      {{"right.work"}, 2, "", "did you mean 'check PROBLEM right.work'?"},
      {{"check", "good.circuit"}, 2, "", "WORK is required"},
      {{"check", "-", "-"}, 2, "", "standard input"},
      {{"check", "good.circuit", "right.work", "-o", "right.work"}, 2, "", "overwrite"},
      {{"check", "good.circuit", "right.work", "--as", "csv"}, 2, "", "--as"},
      {{"check", "good.circuit", "right.work", "--strict"}, 2, "", "no option '--strict'"},
      {{"hint", "-", "-"}, 2, "", "standard input"},
      {{"hint", "good.circuit", "--level", "all"}, 2, "", "--level"},
      {{"hint", "good.circuit", "--levle", "tell"}, 2, "", "did you mean '--level'?"},
      {{"practise", "-"}, 2, "", "standard input"},
      {{"practise", "good.circuit", "--work", "good.circuit"}, 2, "", "overwrite"},
      {{"mark", "good.circuit"}, 2, "", "WORKS is required"},
      {{"mark", "good.circuit", "-"}, 2, "", "standard input"},
      {{"mark", "good.circuit", "class", "-o", "class/a.work"}, 2, "", "overwrite"},
      {{"combine", "4", "+", "6"}, 2, "", "in quotes"},
      {{"combine", "4", "--across", "12 ohm"}, 2, "", "--across"},
      // wrong input
      {{"solve", "missing.circuit"}, 3, "", "missing.circuit"},
      {{"solve", "folder"}, 3, "", "folder"},
      {{"solve", "wrong.circuit"}, 3, "", "wrong.circuit:1:"},
      {{"combine", "4 +"}, 3, "", "error:"},
      {{"combine", ""}, 3, "", "error:"},
      {{"combine", "4 ohm + 6 V"}, 3, "", "error:"},
      {{"check", "missing.circuit", "right.work"}, 3, "", "missing.circuit"},
      {{"check", "good.circuit", "missing.work"}, 3, "", "missing.work"},
      {{"check", "good.circuit", "broken.work"}, 3, "", "broken.work:1:"},
      {{"check", "shorted.circuit", "right.work"}, 3, "", "joined"},
      {{"hint", "good.circuit", "broken.work"}, 3, "", "broken.work:1:"},
      {{"practise", "good.circuit", "--work", "broken.work"}, 3, "", "left as it is"},
      {{"practise", "good.circuit", "--work", "folder"}, 3, "", "no ordinary file"},
      {{"mark", "good.circuit", "folder"}, 3, "", "ends in .work"},
      {{"mark", "shorted.circuit", "class"}, 3, "", "joined"},
      // the rest is still solved
      {{"solve", "shorted.circuit"}, 3, "apart", "joined"},
      {{"solve", "wrong.circuit", "good.circuit"}, 3, "S closed", "wrong.circuit:1:"},
      {{"solve", "good.circuit", "missing.circuit"}, 3, "S closed", "missing.circuit"},
  };
  for (const Row& row : rows) {
    SCOPED_TRACE(::testing::PrintToString(row.arguments));
    const Ending ending = run(row.arguments);
    EXPECT_EQ(ending.code, row.code);
    EXPECT_THAT(ending.out, HasSubstr(row.out));
    EXPECT_THAT(ending.err, HasSubstr(row.err));
    EXPECT_EQ(ending.out.empty(), row.out.empty());
    EXPECT_EQ(ending.err.empty(), row.err.empty());
  }
}

TEST_F(ExitCode, CaseLeavesOutTheOthers) {
  const Ending ending = run({"solve", "shorted.circuit", "--case", "apart"});
  EXPECT_EQ(ending.code, 0);
  EXPECT_EQ(ending.out.find("joined"), std::string::npos);
}

}  // namespace
}  // namespace ohmfold::testing
