// A work file that grows while a person works.
#include "cli/work_file.h"

#include <filesystem>
#include <system_error>
#include <utility>

#include "cli/complain.h"
#include "cli/input.h"
#include "cli/output.h"

namespace ohmfold {
namespace {

/// The text of a file, empty where there is none.
Outcome<SourceText> text_of(const std::string& name) {
  std::error_code unknown;
  const std::filesystem::file_status status = std::filesystem::status(name, unknown);
  if (status.type() == std::filesystem::file_type::not_found) {
    return {.value = SourceText{.name = name, .text = {}}, .diagnostics = {}};
  }
  return read_ordinary_file(name);
}

}  // namespace

std::optional<SourceText> WorkFile::open() {
  Outcome<SourceText> source = text_of(name_);
  if (!source) {
    complain(source.diagnostics, {.name = name_, .text = {}});
    return std::nullopt;
  }
  saved_ = source.value->text;
  return std::move(source.value);
}

ExitCode WorkFile::save(const std::string& text) {
  const Outcome<SourceText> now = text_of(name_);
  if (!now || now.value->text != saved_) {
    complain(name_ +
             " has been changed by another program and is left as it is; "
             "what you write here is not kept");
    return ExitCode::wrong_input;
  }
  const ExitCode code = deliver(text, name_);
  if (code == ExitCode::solved) saved_ = text;
  return code;
}

}  // namespace ohmfold
