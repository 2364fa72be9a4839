// A work file that grows while a person works.
#pragma once

#include <optional>
#include <string>

#include "cli/exit_code.h"
#include "ohmfold/source.h"

namespace ohmfold {

class WorkFile {
 public:
  explicit WorkFile(std::string name) : name_(std::move(name)) {}

  /// What is in it now; no text where there is no such file. What keeps it from being read is told
  /// on standard error; then there is nothing.
  [[nodiscard]] std::optional<SourceText> open();

  /// The whole text takes the place of the former one: whoever looks sees the one or the other,
  /// also where the program is killed. A file that somebody else has changed since is left as it
  /// is. What goes wrong is told on standard error.
  [[nodiscard]] ExitCode save(const std::string& text);

  [[nodiscard]] const std::string& name() const { return name_; }

 private:
  std::string name_;
  std::string saved_;  ///< what is in the file, as far as we know
};

}  // namespace ohmfold
