// The program: reads its arguments, runs the command, and turns our own faults into exit code 70.
#include <cln/malloc.h>

#include <csignal>
#include <cstddef>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <new>
#include <variant>

#include "cli/command.h"

namespace {

using ohmfold::ExitCode;

/// Where the numbers get their memory. CLN's own way out has no type to tell it by.
void* allocate(std::size_t size) {
  void* memory = std::malloc(size);
  if (memory == nullptr) throw std::bad_alloc();
  return memory;
}

ExitCode report_fault(const char* what) {
  std::fprintf(stderr,
               "ohmfold: internal error: %s\n"
               "This is a fault of ohmfold, not of your circuit. No answer has been written.\n"
               "Please report it, with the circuit and the command.\n",
               what);
  return ExitCode::internal_fault;
}

ExitCode run_guarded(int count, const char* const* arguments) {
  try {
    return std::visit([](const auto& command) { return run(command); },
                      ohmfold::read_arguments(count, arguments));
  } catch (const std::bad_alloc&) {
    std::fputs("ohmfold: out of memory: this circuit is too large for this machine\n", stderr);
    return ExitCode::wrong_input;
  } catch (const std::exception& fault) {
    return report_fault(fault.what());
  }
}

}  // namespace

int main(int count, char** arguments) {
  // A reader that goes away (a pager that is left) shows as a failed write, not as a signal.
  std::signal(SIGPIPE, SIG_IGN);
  cln::malloc_hook = allocate;
  return static_cast<int>(run_guarded(count, arguments));
}
