// Asks the environment what may be written to the terminal.
#include "cli/terminal.h"

#include <unistd.h>

#include <algorithm>
#include <cctype>
#include <cstdlib>
#include <string>
#include <string_view>

namespace ohmfold {
namespace {

/// The value of an environment variable; empty where it is not set, which means the same to all
/// variables asked for here.
std::string_view environment(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string_view() : std::string_view(value);
}

/// By the convention of no-color.org, and only where the terminal understands colours.
bool shows_colour() {
  const std::string_view terminal = environment("TERM");
  return environment("NO_COLOR").empty() && !terminal.empty() && terminal != "dumb";
}

/// Whether the locale's characters are UTF-8: the first of the three variables that is set decides,
/// as POSIX says. Nothing set means the plain C locale.
bool shows_unicode() {
  for (const char* name : {"LC_ALL", "LC_CTYPE", "LANG"}) {
    std::string locale(environment(name));
    if (locale.empty()) continue;
    std::transform(locale.begin(), locale.end(), locale.begin(),
                   [](unsigned char letter) { return static_cast<char>(std::tolower(letter)); });
    return locale.find("utf-8") != std::string::npos || locale.find("utf8") != std::string::npos;
  }
  return false;
}

}  // namespace

TextOptions text_options(const OutputChoice& choice) {
  const bool on_terminal = choice.file.empty() && isatty(STDOUT_FILENO) == 1;
  TextOptions options;
  options.width = choice.width;
  options.figures = choice.figures;
  options.colour = on_terminal && shows_colour();
  options.letters =
      choice.ascii || (on_terminal && !shows_unicode()) ? Letters::ascii : Letters::unicode;
  return options;
}

}  // namespace ohmfold
