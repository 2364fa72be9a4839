// Runs the real program, as a shell would, and says how it ended and what it wrote.
#pragma once

#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <vector>

namespace ohmfold::testing {

struct Ending {
  int code = -1;   ///< exit code; -1 where a signal ended it
  int signal = 0;  ///< that ended it; SIGXCPU: it took longer than it may
  std::string out, err;
};

/// One start of the program. Every run ends: after kMostSeconds of work (or ten times
/// as long in all) a signal stops it, and beyond
/// kMostMemory it gets no more memory (without sanitizers, which need all the addresses there are).
struct Launch {
  std::vector<std::string> arguments;  ///< without the program's own name
  std::string input;                   ///< on standard input
  std::filesystem::path folder = ".";  ///< where it runs
  std::map<std::string, std::string> environment;
  std::function<void()> prepare;  ///< in the new process, just before the program starts
};

/// `ohmfold` with the arguments of `run`.
[[nodiscard]] Ending run_program(const Launch& run);

/// A line of shell, in which `ohmfold` is the program under test.
[[nodiscard]] Ending run_shell(const std::string& line, const std::filesystem::path& folder);

/// What `run` writes to a terminal, line ends as the terminal gets them.
[[nodiscard]] std::string written_to_terminal(const Launch& run);

[[nodiscard]] std::string read_file(const std::filesystem::path& path);
void write_file(const std::filesystem::path& path, const std::string& text);

/// A new empty folder that goes when this goes.
class TemporaryFolder {
 public:
  TemporaryFolder();
  ~TemporaryFolder();
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;

  [[nodiscard]] const std::filesystem::path& path() const { return path_; }
  /// Names of all that is in it, sorted.
  [[nodiscard]] std::vector<std::string> names() const;

 private:
  std::filesystem::path path_;
};

}  // namespace ohmfold::testing
