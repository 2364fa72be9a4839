// The findings of one text while it is read.

#include "language/findings.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace ohmfold {
namespace {

bool stands_before(const Diagnostic& a, const Diagnostic& b) {
  return std::tie(a.where.line, a.where.column) < std::tie(b.where.line, b.where.column);
}

}  // namespace

void Findings::add(Diagnostic diagnostic) {
  Kept& kept = diagnostic.severity == Severity::error ? errors_ : warnings_;
  ++kept.count;
  if (kept.heap.size() == kMost) {
    if (!stands_before(diagnostic, kept.heap.front())) return;
    std::pop_heap(kept.heap.begin(), kept.heap.end(), stands_before);
    kept.heap.pop_back();
  }
  kept.heap.push_back(std::move(diagnostic));
  std::push_heap(kept.heap.begin(), kept.heap.end(), stands_before);
}

Diagnostics Findings::sorted() const {
  Diagnostics all = errors_.heap;
  all.insert(all.end(), warnings_.heap.begin(), warnings_.heap.end());
  std::sort(all.begin(), all.end(), [](const Diagnostic& a, const Diagnostic& b) {
    return std::tie(a.where.line, a.where.column, a.kind) <
           std::tie(b.where.line, b.where.column, b.kind);
  });
  for (const Kept* kept : {&errors_, &warnings_}) {
    const std::size_t more = kept->count - kept->heap.size();
    if (more == 0) continue;
    const Severity severity = kept == &errors_ ? Severity::error : Severity::warning;
    all.push_back({.kind = DiagnosticKind::more_findings,
                   .severity = severity,
                   .where = {},
                   .arguments = {std::to_string(more)},
                   .remedy = {},
                   .other = {}});
  }
  return all;
}

}  // namespace ohmfold
