// Where answers go: standard output, files, terminals, and what happens when that fails.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "programs/program.h"

namespace ohmfold::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

const std::string kProblem =
    "title \"A lamp\"\nbattery E = 6 V from G to T\nresistor R = 3 ohm from T to G\n";

class Output : public ::testing::Test {
 protected:
  void SetUp() override { write_file(folder_.path() / "lamp.circuit", kProblem); }

  [[nodiscard]] Launch solving(std::vector<std::string> more = {}) const {
    Launch run;
    run.arguments = {"solve", "lamp.circuit"};
    run.arguments.insert(run.arguments.end(), more.begin(), more.end());
    run.folder = folder_.path();
    return run;
  }
  [[nodiscard]] std::string on_standard_output() const { return run_program(solving()).out; }

  TemporaryFolder folder_;
};

TEST_F(Output, GoesToAFileWithTheSameBytes) {
  const Ending ending = run_program(solving({"-o", "answer.txt"}));
  EXPECT_EQ(ending.code, 0);
  EXPECT_THAT(ending.out, IsEmpty());
  EXPECT_EQ(read_file(folder_.path() / "answer.txt"), on_standard_output());
  EXPECT_THAT(folder_.names(), ElementsAre("answer.txt", "lamp.circuit"));
}

TEST_F(Output, HasThePermissionsOfAnyNewFile) {
  Launch run = solving({"-o", "answer.txt"});
  run.prepare = [] { ::umask(027); };
  ASSERT_EQ(run_program(run).code, 0);
  struct stat found {};
  ASSERT_EQ(::stat((folder_.path() / "answer.txt").c_str(), &found), 0);
  EXPECT_EQ(found.st_mode & 0777U, 0640U);
}

TEST_F(Output, KeepsThePermissionsOfTheFileItReplaces) {
  write_file(folder_.path() / "answer.txt", "old");
  ASSERT_EQ(::chmod((folder_.path() / "answer.txt").c_str(), 0600), 0);
  ASSERT_EQ(run_program(solving({"-o", "answer.txt"})).code, 0);
  struct stat found {};
  ASSERT_EQ(::stat((folder_.path() / "answer.txt").c_str(), &found), 0);
  EXPECT_EQ(found.st_mode & 0777U, 0600U);
}

TEST_F(Output, GoesThroughALink) {
  write_file(folder_.path() / "old.txt", "old");
  std::filesystem::create_symlink("old.txt", folder_.path() / "link.txt");
  ASSERT_EQ(run_program(solving({"-o", "link.txt"})).code, 0);
  EXPECT_TRUE(std::filesystem::is_symlink(folder_.path() / "link.txt"));
  EXPECT_EQ(read_file(folder_.path() / "old.txt"), on_standard_output());
}

TEST_F(Output, LeavesTheOldFileWhereTheProblemIsWrong) {
  write_file(folder_.path() / "lamp.circuit", "rubbish\n");
  write_file(folder_.path() / "answer.txt", "old");
  EXPECT_EQ(run_program(solving({"-o", "answer.txt"})).code, 3);
  EXPECT_EQ(read_file(folder_.path() / "answer.txt"), "old");
}

/// The limit makes the disk full after a few bytes.
TEST_F(Output, LeavesNoHalfFileOnAFullDisk) {
  write_file(folder_.path() / "answer.txt", "old");
  ASSERT_GT(on_standard_output().size(), 200U);
  Launch run = solving({"-o", "answer.txt"});
  run.prepare = [] {
    const rlimit limit{150, 150};
    ::setrlimit(RLIMIT_FSIZE, &limit);
    ::signal(SIGXFSZ, SIG_IGN);
  };
  const Ending ending = run_program(run);
  EXPECT_EQ(ending.code, 3);
  EXPECT_THAT(ending.err, HasSubstr("cannot write to answer.txt"));
  EXPECT_EQ(read_file(folder_.path() / "answer.txt"), "old");
  EXPECT_THAT(folder_.names(), ElementsAre("answer.txt", "lamp.circuit"));
}

TEST_F(Output, SaysWhyAFileCannotBeWritten) {
  std::filesystem::create_directory(folder_.path() / "folder");
  const std::vector<std::pair<std::string, std::string>> table = {
      {"nowhere/answer.txt", "No such file or directory"},
      {"folder", "Is a directory"},
      {"/dev/full", "No space left on device"},
      {"lamp.circuit/answer.txt", "Not a directory"},
  };
  for (const auto& [name, reason] : table) {
    const Ending ending = run_program(solving({"-o", name}));
    EXPECT_EQ(ending.code, 3) << name;
    EXPECT_EQ(ending.err, "ohmfold: cannot write to " + name + ": " + reason + '\n');
  }
  EXPECT_THAT(folder_.names(), ElementsAre("folder", "lamp.circuit"));
}

TEST_F(Output, GoesToDevicesAndBackToStandardOutput) {
  const std::string expected = on_standard_output();
  EXPECT_EQ(run_program(solving({"-o", "/dev/null"})).code, 0);
  EXPECT_EQ(run_program(solving({"-o", "/dev/stdout"})).out, expected);
  EXPECT_EQ(run_program(solving({"-o", "-"})).out, expected);
  EXPECT_THAT(folder_.names(), ElementsAre("lamp.circuit"));
}

TEST_F(Output, SaysWhereStandardOutputIsClosedOrFull) {
  Launch closed = solving();
  closed.prepare = [] { ::close(STDOUT_FILENO); };
  const Ending of_closed = run_program(closed);
  EXPECT_EQ(of_closed.code, 3);
  EXPECT_THAT(of_closed.err, HasSubstr("cannot write to standard output"));

  Launch full = solving();
  full.prepare = [] { ::dup2(::open("/dev/full", O_WRONLY), STDOUT_FILENO); };
  const Ending of_full = run_program(full);
  EXPECT_EQ(of_full.code, 3);
  EXPECT_THAT(of_full.err, HasSubstr("No space left"));
}

TEST_F(Output, IsQuietWhenTheReaderHasGone) {
  Launch run = solving();
  run.prepare = [] {
    int ends[2];
    if (::pipe(ends) != 0) return;
    ::close(ends[0]);
    ::dup2(ends[1], STDOUT_FILENO);
  };
  const Ending ending = run_program(run);
  EXPECT_EQ(ending.signal, 0);
  EXPECT_EQ(ending.code, 0);
  EXPECT_THAT(ending.err, IsEmpty());
}

TEST_F(Output, OfSeveralFilesIsOneArray) {
  Launch run = solving({"missing.circuit", "lamp.circuit", "--as", "json"});
  const Ending ending = run_program(run);
  EXPECT_EQ(ending.code, 3);
  const auto document = nlohmann::json::parse(ending.out);
  ASSERT_TRUE(document.is_array());
  ASSERT_EQ(document.size(), 2U);
  EXPECT_EQ(document[0], document[1]);
  EXPECT_EQ(document[0], nlohmann::json::parse(run_program(solving({"--as", "json"})).out));
}

TEST_F(Output, NamesEachOfSeveralFiles) {
  write_file(folder_.path() / "b.circuit", kProblem);
  const std::string out = run_program(solving({"b.circuit"})).out;
  EXPECT_THAT(out, HasSubstr("lamp.circuit"));
  EXPECT_THAT(out, HasSubstr("b.circuit"));
}

TEST_F(Output, IsTheSameEveryTime) {
  const std::string first = run_program(solving({"--as", "json"})).out;
  for (int i = 0; i < 3; ++i) EXPECT_EQ(run_program(solving({"--as", "json"})).out, first);
}

struct Terminal {
  std::map<std::string, std::string> environment;
  bool colour, unicode;
};

TEST_F(Output, FitsTheTerminal) {
  const std::vector<Terminal> table = {
      {{{"TERM", "xterm"}, {"NO_COLOR", ""}, {"LC_ALL", "C.UTF-8"}}, true, true},
      {{{"TERM", "xterm"}, {"NO_COLOR", "1"}, {"LC_ALL", "C.UTF-8"}}, false, true},
      {{{"TERM", "dumb"}, {"NO_COLOR", ""}, {"LC_ALL", "en_GB.utf8"}}, false, true},
      {{{"TERM", ""}, {"NO_COLOR", ""}, {"LC_ALL", ""}, {"LC_CTYPE", "C.UTF-8"}}, false, true},
      {{{"TERM", "xterm"}, {"NO_COLOR", ""}, {"LC_ALL", "C"}}, true, false},
      {{{"TERM", "xterm"}, {"NO_COLOR", ""}, {"LC_ALL", "POSIX"}, {"LANG", "C.UTF-8"}},
       true,
       false},
      {{{"TERM", "dumb"}, {"LC_ALL", ""}, {"LC_CTYPE", ""}, {"LANG", ""}}, false, false},
  };
  for (const Terminal& row : table) {
    SCOPED_TRACE(::testing::PrintToString(row.environment));
    Launch run = solving();
    run.environment = row.environment;
    const std::string written = written_to_terminal(run);
    EXPECT_EQ(written.find('\x1b') != std::string::npos, row.colour);
    EXPECT_EQ(written.find("Ω") != std::string::npos, row.unicode);
    EXPECT_EQ(written.find("ohm") == std::string::npos, row.unicode);
  }
}

TEST_F(Output, WithoutTerminalHasNoColourAndAlwaysUnicode) {
  Launch run = solving();
  run.environment = {{"TERM", "xterm"}, {"NO_COLOR", ""}, {"LC_ALL", "C"}};
  const std::string out = run_program(run).out;
  EXPECT_EQ(out.find('\x1b'), std::string::npos);
  EXPECT_THAT(out, HasSubstr("Ω"));
}

TEST_F(Output, InAsciiHasNoOtherLetters) {
  for (const char letter : run_program(solving({"--ascii"})).out) {
    ASSERT_LT(static_cast<unsigned char>(letter), 128) << "in the output of --ascii";
  }
}

TEST_F(Output, FollowsFiguresAndWidth) {
  Launch run;
  run.arguments = {"combine", "3 || 4 || 5", "--across", "10 V", "--figures", "7"};
  EXPECT_THAT(run_program(run).out, HasSubstr("1.276596"));  // 60/47
  EXPECT_THAT(on_standard_output(), Not(HasSubstr("1.276596")));
}

}  // namespace
}  // namespace ohmfold::testing
