// Starts processes under limits and gathers what they write.
#include "programs/program.h"

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace ohmfold::testing {
namespace {

#ifdef OHMFOLD_SANITIZED
constexpr unsigned kMostSeconds = 200;
constexpr bool kLimitsMemory = false;
#else
constexpr unsigned kMostSeconds = 20;
constexpr bool kLimitsMemory = true;
#endif
constexpr rlim_t kMostMemory = rlim_t{2} << 30;

/// A file without a name, open for reading and writing.
class Scratch {
 public:
  explicit Scratch(const std::string& text = {}) : file_(std::tmpfile()) {
    if (file_ == nullptr) throw std::runtime_error("no temporary file");
    std::fwrite(text.data(), 1, text.size(), file_);
    std::rewind(file_);
  }
  ~Scratch() { std::fclose(file_); }
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;

  [[nodiscard]] int descriptor() const { return ::fileno(file_); }
  [[nodiscard]] std::string text() const {
    std::string all;
    std::rewind(file_);
    char piece[4096];
    for (std::size_t got = 0; (got = std::fread(piece, 1, sizeof piece, file_)) > 0;) {
      all.append(piece, got);
    }
    return all;
  }

 private:
  std::FILE* file_;
};

struct Streams {
  int in, out, err;
};

[[noreturn]] void become(const std::vector<std::string>& words, const Launch& run,
                         const Streams& streams) {
  if (::chdir(run.folder.c_str()) != 0) ::_exit(126);
  for (const auto& [name, value] : run.environment) ::setenv(name.c_str(), value.c_str(), 1);
  ::dup2(streams.in, STDIN_FILENO);
  ::dup2(streams.out, STDOUT_FILENO);
  ::dup2(streams.err, STDERR_FILENO);
  if (kLimitsMemory) {
    const rlimit memory{kMostMemory, kMostMemory};
    ::setrlimit(RLIMIT_AS, &memory);
  }
  const rlimit seconds{kMostSeconds, kMostSeconds};
  ::setrlimit(RLIMIT_CPU, &seconds);
  ::alarm(10 * kMostSeconds);
  if (run.prepare) run.prepare();
  std::vector<char*> pointers;
  for (const std::string& word : words) pointers.push_back(const_cast<char*>(word.c_str()));
  pointers.push_back(nullptr);
  ::execv(pointers.front(), pointers.data());
  ::_exit(127);
}

pid_t start(const std::vector<std::string>& words, const Launch& run, const Streams& streams) {
  const pid_t child = ::fork();
  if (child < 0) throw std::runtime_error("no new process");
  if (child == 0) become(words, run, streams);
  return child;
}

Ending wait_for(pid_t child) {
  int status = 0;
  if (::waitpid(child, &status, 0) != child) throw std::runtime_error("no such process");
  Ending ending;
  if (WIFEXITED(status)) ending.code = WEXITSTATUS(status);
  if (WIFSIGNALED(status)) ending.signal = WTERMSIG(status);
  return ending;
}

Ending run_words(const std::vector<std::string>& words, const Launch& run) {
  const Scratch in(run.input);
  const Scratch out;
  const Scratch err;
  Ending ending =
      wait_for(start(words, run, {in.descriptor(), out.descriptor(), err.descriptor()}));
  ending.out = out.text();
  ending.err = err.text();
  return ending;
}

std::vector<std::string> program_words(const Launch& run) {
  std::vector<std::string> words = run.arguments;
  words.insert(words.begin(), OHMFOLD_PROGRAM);
  return words;
}

}  // namespace

Ending run_program(const Launch& run) {
  return run_words(program_words(run), run);
}

Ending run_shell(const std::string& line, const std::filesystem::path& folder) {
  const std::string programs = std::filesystem::path(OHMFOLD_PROGRAM).parent_path().string();
  Launch run;
  run.folder = folder;
  run.environment["PATH"] = programs + ":" + std::getenv("PATH");
  return run_words({"/bin/sh", "-c", line}, run);
}

std::string written_to_terminal(const Launch& run) {
  const int terminal = ::posix_openpt(O_RDWR | O_NOCTTY);
  if (terminal < 0 || ::grantpt(terminal) != 0 || ::unlockpt(terminal) != 0) {
    throw std::runtime_error("no terminal");
  }
  const int other_side = ::open(::ptsname(terminal), O_RDWR | O_NOCTTY);
  const Scratch in(run.input);
  const pid_t child = start(program_words(run), run, {in.descriptor(), other_side, other_side});
  ::close(other_side);
  std::string all;
  char piece[4096];
  for (ssize_t got = 0; (got = ::read(terminal, piece, sizeof piece)) > 0;) {
    all.append(piece, static_cast<std::size_t>(got));
  }
  ::close(terminal);
  (void)wait_for(child);
  return all;
}

std::string read_file(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

void write_file(const std::filesystem::path& path, const std::string& text) {
  std::ofstream(path, std::ios::binary) << text;
}

TemporaryFolder::TemporaryFolder() {
  std::string name = (std::filesystem::temp_directory_path() / "ohmfold-test-XXXXXX").string();
  if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no temporary folder");
  path_ = name;
}

TemporaryFolder::~TemporaryFolder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

std::vector<std::string> TemporaryFolder::names() const {
  std::vector<std::string> found;
  for (const auto& entry : std::filesystem::directory_iterator(path_)) {
    found.push_back(entry.path().filename().string());
  }
  std::sort(found.begin(), found.end());
  return found;
}

}  // namespace ohmfold::testing
