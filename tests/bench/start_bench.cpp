// A whole run of the program on a textbook problem, beside a program that only starts.
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>

#include <cstdlib>
#include <string>
#include <vector>

extern char** environ;  // NOLINT(readability-redundant-declaration)

namespace ohmfold::bench {
namespace {

void run(std::vector<std::string> words) {
  std::vector<char*> arguments;
  for (std::string& word : words) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_addopen(&actions, 1, "/dev/null", O_WRONLY, 0);
  pid_t child = 0;
  int status = -1;
  if (posix_spawn(&child, arguments[0], &actions, nullptr, arguments.data(), environ) == 0) {
    waitpid(child, &status, 0);
  }
  posix_spawn_file_actions_destroy(&actions);
  if (status != 0) std::abort();
}

void start_an_empty_program(benchmark::State& state) {
  for (auto _ : state) run({OHMFOLD_EMPTY});
}

void solve_a_textbook_problem(benchmark::State& state) {
  for (auto _ : state) {
    run({OHMFOLD_PROGRAM, "solve", OHMFOLD_SOURCE_DIR "/problems/05-reading-nook.circuit"});
  }
}

BENCHMARK(start_an_empty_program)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(solve_a_textbook_problem)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace ohmfold::bench
