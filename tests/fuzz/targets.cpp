// The readers and the whole way from text to answer, with what has to hold for any input.
#include "fuzz/targets.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "ohmfold/coach.h"
#include "ohmfold/decimal.h"
#include "ohmfold/error.h"
#include "ohmfold/read.h"
#include "ohmfold/render.h"
#include "ohmfold/solve.h"

namespace ohmfold::fuzz {
namespace {

constexpr std::size_t kMostParts = 40;
constexpr std::size_t kMostCases = 8;
constexpr std::size_t kMostBits = 2000;

template <class T>
void check_findings(const Outcome<T>& outcome, const SourceText& source) {
  ensure(outcome.value.has_value() != has_error(outcome.diagnostics), "either a value or an error");
  for (const Diagnostic& finding : outcome.diagnostics) {
    ensure(!message(finding).empty(), "a finding has words");
    ensure(!render(finding, source).empty(), "a finding can be shown");
    ensure(
        finding.where.line == 0 || finding.where.column <= source.line(finding.where.line).size(),
        "a finding lies in the text");
  }
}

bool is_small(const Problem& problem) {
  return problem.parts.size() <= kMostParts && problem.cases.size() <= kMostCases &&
         std::ranges::all_of(problem.parts, [](const Part& part) {
           return part.value.bits() <= kMostBits && part.internal.bits() <= kMostBits;
         });
}

void solve_and_show(const Problem& problem, const SolveOptions& options) {
  const Trace trace = solve(problem, options);
  // An unknown can have several values: then a case stands there once for each.
  ensure(trace.cases.size() == trace.problem->cases.size(), "each case has a trace");
  ensure(trace.cases.size() >= problem.cases.size(), "no case is lost");
  ensure(!render_text(trace).empty(), "a solution has text");
  ensure(!render_text(trace, {.letters = Letters::ascii, .colour = true, .width = 40}).empty(),
         "a solution has text");
  ensure(nlohmann::json::accept(render_json(trace)), "a trace is JSON");
  ensure(trace.has_contradiction() != render_contradictions(trace).empty(),
         "a contradiction is told");
}

/// A decimal that we wrote, as a number. One that is written with a larger exponent than can be
/// read stands for itself.
ParsedNumber read_back(const std::string& decimal, const Number& written) {
  const ParsedNumber read = parse_number(decimal);
  if (read.fault == NumberFault::too_large) return {.number = written};
  ensure(read.fault == NumberFault::none, "a decimal can be read");
  return read;
}

/// Problems whose names invite every meaning of a short form, and circuits with something to get
/// wrong: a bridge, what carries nothing, a contradiction, an answer that is no rational.
const std::vector<Exercise>& exercises_of_works() {
  constexpr std::array<std::string_view, 6> kTexts{
      "battery E = 18 V from G to T\n"
      "resistor R1 = 4 ohm from T to A\nresistor R2 = 2 ohm from A to G\n"
      "resistor R3 = 6 ohm from T to B\nresistor R4 = 6 ohm from B to G\n"
      "switch S from A to B\n",
      "symbol r\nsymbol U\nbattery E = U from G to T\n"
      "resistor R1 = 2 r from T to A\nresistor R2 = r/3 from A to G\n",
      "source J = 2 A from A to AB\nresistor A = 3 ohm from AB to BA\n"
      "resistor R_AB = 1 ohm from BA to B\nresistor I_A = 2 ohm from B to A\n",
      "battery E = 12 V internal 1 ohm from G to T\n"
      "resistor R1 = 1 ohm from T to A\nresistor R2 = 2 ohm from A to G\n"
      "resistor R3 = 3 ohm from T to B\nresistor R4 = 4 ohm from B to G\n"
      "resistor R5 = 5 ohm from A to B\nresistor R6 = 6 ohm from A to C\n"
      "voltmeter M from C to G\nresistor R7 = 7 ohm from T to D\nwire W from T to D\n"
      "find thevenin between A and B\nfind resistance seen by E\nfind power in R5\n",
      "battery E = 6 V from G to T\nwire W from G to T\nresistor R1 = 2 ohm from T to G\n",
      "battery E = 12 V from G to T\nresistor R1 = 1 ohm from T to A\n"
      "resistor R2 = unknown from A to G\ngiven power in R2 = 5 W\n"};
  static const std::vector<Exercise> kExercises = [&kTexts] {
    std::vector<Exercise> exercises;
    for (const std::string_view text : kTexts) {
      const Outcome<Problem> problem = read_circuit({.name = "circuit", .text = std::string(text)});
      ensure(problem.value.has_value(), "a problem for works can be read");
      exercises.push_back(prepare(*problem.value));
    }
    return exercises;
  }();
  return kExercises;
}

bool is_small(const Work& work) {
  constexpr std::size_t kMostClaims = 60;
  constexpr std::size_t kMostText = 400;
  return work.claims.size() <= kMostClaims &&
         std::ranges::all_of(work.claims,
                             [](const Claim& claim) { return claim.text.size() <= kMostText; });
}

void judge_and_show(const Exercise& exercise, const Work& work) {
  const WorkJudgement judged = judge_work(exercise, work);
  ensure(judged.lines.size() == work.claims.size(), "each claim is judged");
  ensure(judged.cases.size() == exercise.trace.cases.size(), "each case has a standing");
  ensure(judged.marks.earned() <= judged.marks.most(), "no more marks than there are");
  for (const Judgement& line : judged.lines) {
    ensure(!judged.all_right() || line.holds(), "all is right where each line holds");
    ensure(line.holds() || verdict_of(line) == LineVerdict::not_right ||
               verdict_of(line) == LineVerdict::cannot_tell,
           "a line that does not hold has a verdict that says so");
  }
  const Hint hint = next_hint(exercise, work, judged);
  for (const HintLevel level : {HintLevel::nudge, HintLevel::point, HintLevel::tell}) {
    ensure(!render_hint(exercise, work, judged, hint, level).empty(), "a hint has words");
  }
  ensure(!render_judgement_text(exercise, work, judged).empty(), "a judgement has text");
  ensure(nlohmann::json::accept(render_judgement_json(exercise, work, judged)),
         "a judgement is JSON");
}

/// Each claim stands in the text where it says, and reads as itself after those before it.
void check_claims(const Work& work, const SourceText& source, const Problem& problem) {
  constexpr std::size_t kMostClaims = 20;
  Work before;
  for (const Claim& claim : work.claims) {
    const std::string_view line = source.line(claim.where.line);
    ensure(line.substr(claim.where.column, claim.where.length) == claim.text,
           "a claim has its text");
    if (before.claims.size() == kMostClaims) return;
    const SourceText alone{.name = "claim", .text = claim.text};
    const Outcome<Claim> again = read_claim(alone, problem, before);
    check_findings(again, alone);
    ensure(again.value.has_value() && again.value->says.index() == claim.says.index(),
           "a claim reads as itself");
    before.claims.push_back(claim);
  }
}

}  // namespace

void number(std::string_view bytes) {
  (void)parse_letter_code(bytes);
  const ParsedNumber parsed = parse_number(bytes);
  if (parsed.fault != NumberFault::none) return;
  const ParsedNumber again = parse_number(parsed.number.to_string());
  ensure(again.fault == NumberFault::none && again.number == parsed.number,
         "an exact number reads as itself");
  for (const int figures : {1, 3, 12}) {
    const ParsedNumber near = read_back(round_to_figures(parsed.number, figures), parsed.number);
    ensure(near.number.is_negative() == parsed.number.is_negative(), "rounding keeps the sign");
    const Number half = abs(parsed.number) * Number::quotient(1, 2);
    ensure(abs(near.number - parsed.number) <= half, "rounding stays near");
  }
  if (const auto decimal = terminating_decimal(parsed.number, 20)) {
    ensure(read_back(*decimal, parsed.number).number == parsed.number,
           "a decimal that ends is exact");
  }
}

void expression(std::string_view bytes) {
  const SourceText source{.name = "expression", .text = std::string(bytes)};
  check_findings(read_expression(source, std::nullopt), source);
  const Outcome<Problem> problem = read_expression(source, Number(12));
  check_findings(problem, source);
  if (problem && is_small(*problem.value)) solve_and_show(*problem.value, {});
}

void circuit(std::string_view bytes) {
  const SourceText source{.name = "circuit", .text = std::string(bytes)};
  check_findings(read_circuit(source), source);
  check_findings(read_voltage(source), source);
}

void pipeline(std::string_view bytes) {
  const SourceText source{.name = "pipeline", .text = std::string(bytes)};
  const Outcome<Problem> problem = read_circuit(source);
  check_findings(problem, source);
  if (!problem || !is_small(*problem.value)) return;
  solve_and_show(*problem.value, {});
  solve_and_show(*problem.value, {.pairs = true});
}

void work(std::string_view bytes) {
  const SourceText source{.name = "work", .text = std::string(bytes)};
  for (const Exercise& exercise : exercises_of_works()) {
    const Problem& problem = *exercise.problem;
    const Outcome<Work> outcome = read_work(source, problem);
    check_findings(outcome, source);
    if (!outcome) continue;
    check_claims(*outcome.value, source, problem);
    if (is_small(*outcome.value)) judge_and_show(exercise, *outcome.value);
  }
}

}  // namespace ohmfold::fuzz
