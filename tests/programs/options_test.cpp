// The options of the program, of its manual page and of the completions are the same ones.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "programs/program.h"

namespace ohmfold::testing {
namespace {

using ::testing::HasSubstr;
using Options = std::set<std::string>;

const std::vector<std::string> kCommands = {"solve", "draw", "inspect",  "combine",
                                            "check", "hint", "practise", "mark"};
const std::filesystem::path kDocs = std::filesystem::path(OHMFOLD_SOURCE_DIR) / "docs";

/// All that `pattern`'s first group finds, as long options.
Options found(const std::string& text, const std::string& pattern) {
  Options options;
  const std::regex searched(pattern);
  for (std::sregex_iterator at(text.begin(), text.end(), searched), end; at != end; ++at) {
    options.insert("--" + (*at)[1].str());
  }
  return options;
}

Options dashed(const std::string& text) {
  return found(text, "--([a-z][a-z-]+)");
}

std::string help(const std::vector<std::string>& arguments) {
  Launch run;
  run.arguments = arguments;
  return run_program(run).out;
}

Options of_the_program() {
  Options all = dashed(help({"--help"}));
  for (const std::string& command : kCommands) all.merge(dashed(help({command, "--help"})));
  return all;
}

TEST(Options, OfTheProgramAreThere) {
  const Options expected = {
      "--across",     "--after",     "--answer-key",      "--as",      "--ascii",
      "--case",       "--content",   "--currents",        "--figures", "--figures-in-text",
      "--fragment",   "--help",      "--inline",          "--level",   "--method",
      "--no-marks",   "--no-values", "--notation",        "--output",  "--pairs",
      "--potentials", "--redraws",   "--strict-rounding", "--symbols", "--version",
      "--width",      "--work",      "--workbook"};
  EXPECT_EQ(of_the_program(), expected);
}

TEST(Options, OfTheManualPageAreThose) {
  const std::string page =
      std::regex_replace(read_file(kDocs / "ohmfold.1"), std::regex("\\\\-"), "-");
  EXPECT_EQ(dashed(page), of_the_program());
}

TEST(Options, OfTheCompletionsAreThose) {
  EXPECT_EQ(dashed(read_file(kDocs / "completions" / "ohmfold.bash")), of_the_program());
  EXPECT_EQ(dashed(read_file(kDocs / "completions" / "_ohmfold")), of_the_program());
  EXPECT_EQ(
      found(read_file(kDocs / "completions" / "ohmfold.fish"), "complete [^\n]* -l ([a-z][a-z-]+)"),
      of_the_program());
}

TEST(Options, OfEachCommandAreCompletedByBash) {
  for (const std::string& command : kCommands) {
    const Ending ending =
        run_shell("exec bash -c 'source ohmfold.bash; COMP_WORDS=(ohmfold " + command +
                      " --); COMP_CWORD=2; _ohmfold; printf \"%s\\n\" \"${COMPREPLY[@]}\"'",
                  kDocs / "completions");
    EXPECT_EQ(dashed(ending.out), dashed(help({command, "--help"}))) << ending.err;
  }
}

TEST(Options, AreExplainedWithinEightyColumns) {
  std::vector<std::string> helps = {help({"--help"})};
  for (const std::string& command : kCommands) helps.push_back(help({command, "--help"}));
  for (const std::string& text : helps) {
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) EXPECT_LE(line.size(), 80U) << line;
  }
}

TEST(ManualPage, IsOfThisVersion) {
  Launch run;
  run.arguments = {"--version"};
  std::string version = run_program(run).out;
  version.pop_back();
  EXPECT_THAT(read_file(kDocs / "ohmfold.1"), HasSubstr('"' + version + '"'));
}

TEST(ReadMe, MentionsEveryCommandAndItsManual) {
  const std::string text = read_file(std::filesystem::path(OHMFOLD_SOURCE_DIR) / "README.md");
  for (const std::string& command : kCommands) EXPECT_THAT(text, HasSubstr("ohmfold " + command));
  EXPECT_THAT(text, HasSubstr("manual page"));
}

}  // namespace
}  // namespace ohmfold::testing
