// Circuits for tests, written in the circuit language.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <string_view>

#include "circuit/set_case.h"
#include "ohmfold/read.h"

namespace ohmfold::test {

/// The problem that the text states. Fails the test where the text has an error.
inline Problem problem_of(std::string text) {
  const SourceText source{"test.circuit", std::move(text)};
  Outcome<Problem> outcome = read_circuit(source);
  for (const Diagnostic& diagnostic : outcome.diagnostics) {
    if (diagnostic.severity == Severity::error) ADD_FAILURE() << render(diagnostic, source);
  }
  return outcome.value ? std::move(*outcome.value) : Problem{};
}

/// Part and point by name. Fails the test where there is none.
inline PartId part(const Problem& problem, std::string_view name) {
  for (std::uint32_t i = 0; i < problem.parts.size(); ++i) {
    if (problem.parts[i].name == name) return PartId{i};
  }
  ADD_FAILURE() << "no part " << name;
  return PartId{0};
}
inline PointId point(const Problem& problem, std::string_view name) {
  for (std::uint32_t i = 0; i < problem.points.size(); ++i) {
    if (problem.points[i] == name) return PointId{i};
  }
  ADD_FAILURE() << "no point " << name;
  return PointId{0};
}

/// p/q.
inline Number fraction(int p, int q) {
  return Number(p) / Number(q);
}

}  // namespace ohmfold::test
