// Whole runs as people see them: each folder of tests/programs/cases holds its input, a `command`
// (a line of shell), and what it must write (`out`, `err`) and end with (`code`).
//
// OHMFOLD_REWRITE=1 in the environment writes what the program does now into those files; read the
// difference before you keep it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

#include "programs/program.h"

namespace ohmfold::testing {
namespace {

const std::filesystem::path kCases =
    std::filesystem::path(OHMFOLD_SOURCE_DIR) / "tests" / "programs" / "cases";

std::vector<std::string> case_names() {
  std::vector<std::string> names;
  for (const auto& entry : std::filesystem::directory_iterator(kCases)) {
    names.push_back(entry.path().filename().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

class Case : public ::testing::TestWithParam<std::string> {};

TEST_P(Case, WritesWhatItsFolderSays) {
  const std::filesystem::path folder = kCases / GetParam();
  const Ending ending = run_shell(read_file(folder / "command"), folder);
  const std::string code = std::to_string(ending.code) + '\n';
  if (std::getenv("OHMFOLD_REWRITE") != nullptr) {
    write_file(folder / "out", ending.out);
    write_file(folder / "err", ending.err);
    write_file(folder / "code", code);
  }
  EXPECT_EQ(ending.signal, 0);
  EXPECT_EQ(code, read_file(folder / "code"));
  EXPECT_EQ(ending.out, read_file(folder / "out"));
  EXPECT_EQ(ending.err, read_file(folder / "err"));
}

INSTANTIATE_TEST_SUITE_P(Programs, Case, ::testing::ValuesIn(case_names()),
                         [](const auto& tested) { return tested.param; });

}  // namespace
}  // namespace ohmfold::testing
