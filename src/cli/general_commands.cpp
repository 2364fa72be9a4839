// What belongs to no command: help, version, and a command line that makes no sense.
#include "cli/command.h"
#include "cli/complain.h"
#include "cli/output.h"

namespace ohmfold {

ExitCode run(const ShowText& command) {
  return deliver(command.text, "");
}

ExitCode run(const WrongUse& command) {
  complain(command.complaint);
  return ExitCode::wrong_use;
}

}  // namespace ohmfold
