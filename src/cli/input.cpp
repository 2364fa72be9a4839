// Reads whole texts from files and standard input.
#include "cli/input.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <memory>
#include <string>
#include <system_error>
#include <utility>

namespace ohmfold {
namespace {

constexpr std::size_t kChunk = std::size_t{64} << 10;

struct CloseFile {
  void operator()(std::FILE* file) const {
    if (file != stdin) std::fclose(file);
  }
};
using File = std::unique_ptr<std::FILE, CloseFile>;

Outcome<SourceText> refused(DiagnosticKind kind, std::string why) {
  Diagnostic finding;
  finding.kind = kind;
  finding.arguments = {std::move(why)};
  return {.value = std::nullopt, .diagnostics = {finding}};
}

}  // namespace

Outcome<SourceText> read_input(const std::string& name) {
  const File file(name == "-" ? stdin : std::fopen(name.c_str(), "rb"));
  if (!file) return refused(DiagnosticKind::unreadable_file, std::strerror(errno));
  SourceText source{.name = name, .text = {}};
  std::size_t got = kChunk;
  while (got == kChunk) {
    const std::size_t start = source.text.size();
    if (start > kMostBytes) {
      return refused(DiagnosticKind::file_too_large, std::to_string(kMostBytes >> 20) + " MiB");
    }
    source.text.resize(start + kChunk);
    got = std::fread(source.text.data() + start, 1, kChunk, file.get());
    source.text.resize(start + got);
  }
  if (std::ferror(file.get()) != 0) {
    return refused(DiagnosticKind::unreadable_file, std::strerror(errno));
  }
  return {.value = std::move(source), .diagnostics = {}};
}

Outcome<SourceText> read_ordinary_file(const std::string& name) {
  std::error_code unknown;
  const std::filesystem::file_status status = std::filesystem::status(name, unknown);
  if (std::filesystem::exists(status) && !std::filesystem::is_regular_file(status)) {
    return refused(DiagnosticKind::unreadable_file, "this is no ordinary file");
  }
  return read_input(name == "-" ? "./-" : name);
}

}  // namespace ohmfold
