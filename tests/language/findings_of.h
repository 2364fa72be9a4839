// What a reader says about a text, as a person sees it.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "ohmfold/read.h"

namespace ohmfold {

inline SourceText circuit_text(std::string_view text) {
  return {.name = "a.circuit", .text = std::string(text)};
}

inline SourceText expression_text(std::string_view text) {
  return {.name = "expression", .text = std::string(text)};
}

/// All findings rendered, a line break after each.
inline std::string rendered(const Diagnostics& findings, const SourceText& source) {
  std::string text;
  for (const Diagnostic& finding : findings) text += render(finding, source) + '\n';
  return text;
}

inline std::string circuit_findings(std::string_view text) {
  const SourceText source = circuit_text(text);
  return rendered(read_circuit(source).diagnostics, source);
}

inline std::string expression_findings(std::string_view text) {
  const SourceText source = expression_text(text);
  return rendered(read_expression(source, std::nullopt).diagnostics, source);
}

/// A circuit file, all that is said of it, and a kind of finding among that.
struct FindingRow {
  DiagnosticKind kind;
  std::string input;
  std::string expected;
};

/// What is said of unknown values and given facts.
const std::vector<FindingRow>& unknown_rows();
/// What is said of works.
const std::vector<FindingRow>& work_rows();

}  // namespace ohmfold
