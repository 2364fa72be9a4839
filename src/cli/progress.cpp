// How far a long run has come, for whoever watches it.
#include "cli/progress.h"

#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <utility>

namespace ohmfold {
namespace {

/// So many lines at most are written in a run.
constexpr std::size_t kMostLines = 200;

}  // namespace

Progress::Progress(std::string kind, std::size_t all)
    : kind_(std::move(kind)), all_(all), watched_(isatty(STDERR_FILENO) == 1) {}

Progress::~Progress() {
  if (shown_columns_ > 0) show("");
}

void Progress::advance() {
  ++done_;
  const std::size_t stride = std::max<std::size_t>(1, all_ / kMostLines);
  if (!watched_ || done_ % stride != 0) return;
  show(std::to_string(done_) + " of " + std::to_string(all_) + ' ' + kind_);
}

/// Spaces cover what was there before.
void Progress::show(const std::string& line) {
  const std::size_t covered = std::max(shown_columns_, line.size());
  std::fprintf(stderr, "\r%-*s%s", static_cast<int>(covered), line.c_str(),
               line.empty() ? "\r" : "");
  std::fflush(stderr);
  shown_columns_ = line.size();
}

}  // namespace ohmfold
