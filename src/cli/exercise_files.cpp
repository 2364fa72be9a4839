// Problems to work on, and works on them, out of files, with every complaint on the way.
#include "cli/exercise_files.h"

#include <cstdio>

#include "cli/complain.h"
#include "cli/input.h"
#include "ohmfold/read.h"
#include "ohmfold/render.h"

namespace ohmfold {
namespace {

std::optional<SourceText> read_told(const std::string& name) {
  Outcome<SourceText> source = read_input(name);
  if (!source) complain(source.diagnostics, {.name = name, .text = {}});
  return std::move(source.value);
}

}  // namespace

std::optional<Exercise> read_exercise(const std::string& name) {
  const std::optional<SourceText> source = read_told(name);
  if (!source) return std::nullopt;
  const Outcome<Problem> problem = read_circuit(*source);
  complain(problem.diagnostics, *source);
  if (!problem) return std::nullopt;
  Exercise exercise = prepare(*problem.value);
  if (exercise.trace.has_contradiction() || exercise.trace.is_beyond_budget()) {
    std::fputs(render_contradictions(exercise.trace).c_str(), stderr);
    return std::nullopt;
  }
  return exercise;
}

std::optional<Work> read_work_file(const std::string& name, const Problem& problem) {
  const std::optional<SourceText> source = read_told(name);
  if (!source) return std::nullopt;
  Outcome<Work> work = read_work(*source, problem);
  complain(work.diagnostics, *source);
  return std::move(work.value);
}

}  // namespace ohmfold
