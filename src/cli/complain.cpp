// Writes findings to standard error.
#include "cli/complain.h"

#include <cstdio>
#include <string>

namespace ohmfold {
namespace {

/// A standard error that cannot be written to leaves nobody to tell.
void write(const std::string& text) {
  std::fwrite(text.data(), 1, text.size(), stderr);
}

}  // namespace

void complain(const Diagnostics& findings, const SourceText& source) {
  for (const Diagnostic& finding : findings) write(render(finding, source) + '\n');
}

void complain(std::string_view what) {
  write("ohmfold: " + std::string(what) + '\n');
}

}  // namespace ohmfold
