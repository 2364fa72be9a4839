// Marking the works of a class: many of them, broken ones, and what cannot be read.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <sstream>
#include <string>
#include <vector>

#include "programs/program.h"

namespace ohmfold::testing {
namespace {

using ::testing::HasSubstr;
using ::testing::StartsWith;

// E drives 3 A: R1 in series with R2 || R3 = 6 ohm.
const std::string kCircuit =
    "title \"A lamp behind two\"\nbattery E = 30 V from G to T\nresistor R1 = 4 from T to A\n"
    "resistor R2 = 9 from A to G\nresistor R3 = 18 from A to G\nfind current through E\n";
const std::string kRight = "R23 = R2 || R3 = 6 ohm\nR = R1 + R23 = 10 ohm\nI_E = 3.0 A\n";
/// The sum where the parts are in parallel, in other names.
const std::string kAdded = "Rp = R2 || R3 = 27 ohm\nRt = R1 + Rp = 31 ohm\n";
/// R3 joins where R1 and R2 meet.
const std::string kJunction = "\nR12 = R1 + R2 = 13 ohm\n";

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) lines.push_back(line);
  return lines;
}

class Mark : public ::testing::Test {
 protected:
  void SetUp() override {
    write_file(folder_.path() / "lamp.circuit", kCircuit);
    std::filesystem::create_directory(class_);
  }
  void TearDown() override { std::filesystem::permissions(class_, std::filesystem::perms::all); }

  void add(const std::string& name, const std::string& text) const {
    write_file(class_ / name, text);
  }
  Ending mark(std::vector<std::string> more = {},
              std::vector<std::string> works = {"class"}) const {
    Launch run;
    run.arguments = {"mark", "lamp.circuit"};
    run.arguments.insert(run.arguments.end(), works.begin(), works.end());
    run.arguments.insert(run.arguments.end(), more.begin(), more.end());
    run.folder = folder_.path();
    return run_program(run);
  }

  TemporaryFolder folder_;
  const std::filesystem::path class_ = folder_.path() / "class";
};

TEST_F(Mark, GivesEachWorkALineInTheOrderOfNames) {
  add("b.work", kRight);
  add("c.work", kJunction);
  add("a.work", kAdded);
  add("notes.txt", "no work");
  std::filesystem::create_directory(class_ / "older.work");
  const Ending ending = mark({"--as", "csv"});
  EXPECT_EQ(ending.code, 1) << ending.err;
  const std::vector<std::string> lines = lines_of(ending.out);
  ASSERT_EQ(lines.size(), 4U);
  EXPECT_EQ(lines[0],
            "file,marks,most,method,most_method,accuracy,most_accuracy,unit_lost,figures_lost,"
            "right,follows,rounded_early,not_right,cannot_tell,first_mistake,errors,why_not\r");
  EXPECT_THAT(lines[1], StartsWith("a.work,"));
  EXPECT_THAT(lines[1], HasSubstr(",0,1,0,1,0,1,added-in-parallel,\r")) << "one follows";
  EXPECT_THAT(lines[2], StartsWith("b.work,"));
  EXPECT_THAT(lines[2], HasSubstr(",3,0,0,0,0,,,\r"));
  EXPECT_THAT(lines[3], StartsWith("c.work,"));
  EXPECT_THAT(lines[3], HasSubstr(",2,series-at-a-junction,\r")) << "in the second line";
}

TEST_F(Mark, EndsWithZeroWhereAllIsRight) {
  add("a.work", kRight);
  EXPECT_EQ(mark().code, 0);
}

TEST_F(Mark, TellsForTheClassWhichStepWentWrongWhateverItsName) {
  add("a.work", kAdded);
  add("b.work", "X = R3 || R2 = 27 ohm\n");
  add("c.work", kJunction);
  add("d.work", kRight);
  const std::string text = mark().out;
  EXPECT_THAT(text, HasSubstr("4 works, 1 right."));
  const std::size_t heading = text.find("What went wrong");
  const std::size_t often = text.find("R2 and R3 combined      2   3  added-in-parallel", heading);
  const std::size_t once =
      text.find("R1 and R2 combined      1   1  series-at-a-junction", heading);
  EXPECT_NE(often, std::string::npos) << text;
  EXPECT_NE(once, std::string::npos) << text;
  EXPECT_LT(often, once) << "most often first";
}

TEST_F(Mark, GoesOnAfterAFileThatCannotBeRead) {
  add("a.work", "R23 = = 6\n");
  add("b.work", std::string("R\0\xff", 3));
  add("d.work", kRight);
  add("secret.work", kRight);
  ASSERT_EQ(::mkfifo((class_ / "c.work").c_str(), 0600), 0);
  std::filesystem::permissions(class_ / "secret.work", std::filesystem::perms::none);
  std::filesystem::create_symlink("nowhere", class_ / "gone.work");
  const Ending ending = mark({"--as", "csv"});
  EXPECT_EQ(ending.code, 1);
  EXPECT_EQ(ending.err, "");
  const std::vector<std::string> lines = lines_of(ending.out);
  ASSERT_EQ(lines.size(), 7U) << ending.out;
  EXPECT_THAT(lines[1], StartsWith("a.work,,,,,,,,,,,,,,,,"));
  EXPECT_THAT(lines[1], HasSubstr("line 1:"));
  EXPECT_THAT(lines[2], HasSubstr("line 1:"));
  EXPECT_THAT(lines[3], HasSubstr("no ordinary file"));
  EXPECT_THAT(lines[4], HasSubstr(",3,0,0,0,0,"));
  EXPECT_THAT(lines[5], HasSubstr("No such file"));
  if (::geteuid() != 0) {
    EXPECT_THAT(lines[6], HasSubstr("Permission denied"));
  }
}

TEST_F(Mark, WantsAFolderWithWorks) {
  EXPECT_EQ(mark().code, 3);
  EXPECT_THAT(mark().err, HasSubstr("no file in class ends in .work"));
  if (::geteuid() == 0) return;
  std::filesystem::permissions(class_, std::filesystem::perms::none);
  EXPECT_EQ(mark().code, 3);
  EXPECT_THAT(mark().err, HasSubstr("cannot read the folder class"));
}

TEST_F(Mark, TakesFilesByName) {
  add("a.work", kRight);
  add("b.work", kRight);
  const Ending ending = mark({"--as", "csv"}, {"class/b.work", "class/a.work"});
  const std::vector<std::string> lines = lines_of(ending.out);
  ASSERT_EQ(lines.size(), 3U);
  EXPECT_THAT(lines[1], StartsWith("class/b.work,"));
  EXPECT_THAT(lines[2], StartsWith("class/a.work,"));
}

TEST_F(Mark, LetsNoSpreadsheetTakeANameForAFormula) {
  const std::vector<std::string> names = {"+1.work", "-1.work", "=A1, \"x\".work", "@sum.work"};
  for (const std::string& name : names) add(name, kRight);
  const std::vector<std::string> lines = lines_of(mark({"--as", "csv"}).out);
  ASSERT_EQ(lines.size(), 5U);
  EXPECT_THAT(lines[1], StartsWith("'+1.work,"));
  EXPECT_THAT(lines[2], StartsWith("'-1.work,"));
  EXPECT_THAT(lines[3], StartsWith("\"'=A1, \"\"x\"\".work\","));
  EXPECT_THAT(lines[4], StartsWith("'@sum.work,"));
}

TEST_F(Mark, MarksTwoThousandWorksInSeconds) {
  for (int i = 0; i < 2000; ++i) {
    const std::string name = std::to_string(10'000 + i) + ".work";
    add(name, i % 3 == 0 ? kAdded : i % 3 == 1 ? kJunction : kRight);
  }
  const Ending ending = mark({"--as", "csv"});
  EXPECT_EQ(ending.signal, 0) << "the time that a run may take";
  EXPECT_EQ(ending.code, 1);
  EXPECT_EQ(ending.err, "") << "no progress where nobody watches";
  EXPECT_EQ(lines_of(ending.out).size(), 2001U);
}

TEST_F(Mark, ShowsItsProgressOnATerminal) {
  for (int i = 0; i < 10; ++i) add(std::to_string(i) + ".work", kRight);
  Launch run;
  run.arguments = {"mark", "lamp.circuit", "class", "-o", "marks.txt"};
  run.folder = folder_.path();
  EXPECT_THAT(written_to_terminal(run), HasSubstr("\r10 of 10 works"));
  EXPECT_THAT(read_file(folder_.path() / "marks.txt"), HasSubstr("10 works, all right."));
}

}  // namespace
}  // namespace ohmfold::testing
