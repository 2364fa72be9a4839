// Traces for the tests of the views: of a text, and of every problem that comes with the program.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "ohmfold/read.h"
#include "ohmfold/render.h"
#include "ohmfold/solve.h"

namespace ohmfold::test {

inline Trace trace_of(const SourceText& source) {
  const Outcome<Problem> problem = read_circuit(source);
  for (const Diagnostic& diagnostic : problem.diagnostics) {
    if (diagnostic.severity == Severity::error) ADD_FAILURE() << render(diagnostic, source);
  }
  if (!problem) {
    Trace nothing;
    nothing.problem = std::make_shared<const Problem>();
    return nothing;
  }
  return solve(*problem.value);
}

inline Trace trace_of(std::string text) {
  return trace_of(SourceText{"sample.circuit", std::move(text)});
}

inline std::string contents(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

/// All of problems/*.circuit, by name.
inline std::vector<SourceText> problem_files() {
  std::vector<SourceText> files;
  const std::filesystem::path folder = std::filesystem::path(OHMFOLD_SOURCE_DIR) / "problems";
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (entry.path().extension() != ".circuit") continue;
    files.push_back({entry.path().filename().string(), contents(entry.path())});
  }
  std::sort(files.begin(), files.end(),
            [](const SourceText& a, const SourceText& b) { return a.name < b.name; });
  EXPECT_GE(files.size(), 20U);
  return files;
}

inline std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    lines.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return lines;
}

// Circuits whose kind the problems do not all show.
inline constexpr const char* kShorted =
    "battery E = 18 V from G to T\nresistor R1 = 4 ohm from T to G\nswitch S from T to G\n";
inline constexpr const char* kDisagreeing =
    "battery E1 = 18 V from G to T\nbattery E2 = 17 V from G to T\n"
    "resistor R1 = 4 ohm from T to G\n";
inline constexpr const char* kUndetermined =
    "battery E = 18 V from G to T\nwire W1 from T to A\nwire W2 from T to A\n"
    "resistor R1 = 4.7 kohm from A to G\nresistor R2 = 3.3 kohm from X to Y\n"
    "voltmeter M from A to X\nfind current through W1\nfind potential at X\n"
    "find resistance between X and A\n";

}  // namespace ohmfold::test
