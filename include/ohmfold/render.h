// Views: functions from a trace to text. None of them knows how an answer was found.
#pragma once

#include <string>

#include "ohmfold/class_report.h"
#include "ohmfold/coach.h"
#include "ohmfold/decimal.h"
#include "ohmfold/handout.h"
#include "ohmfold/inspect.h"
#include "ohmfold/trace.h"

namespace ohmfold {

struct TextOptions {
  Letters letters = Letters::unicode;
  bool colour = false;
  int width = 80;   ///< columns; lines longer than that occur only where a name is
  int figures = 0;  ///< significant figures; 0: as the problem says
};

/// The worked solution as a person would write it on paper.
[[nodiscard]] std::string render_text(const Trace& trace, const TextOptions& options = {});

/// The same with the content, redraws, notation and symbols of a handout; its other options are not
/// used. `drawn`: figures stand in it, in box-drawing characters, instead of redraws in words.
[[nodiscard]] std::string render_text(const Trace& trace, const TextOptions& options,
                                      const HandoutOptions& handout, bool drawn);

/// The trace as JSON, version 1 of "ohmfold-trace" (docs/trace.md). `figures` as in TextOptions.
[[nodiscard]] std::string render_json(const Trace& trace, int figures = 0);

/// Whether each case is series-parallel, in words; where not, the embedded bridge and why each
/// tempting pair is none.
[[nodiscard]] std::string render_inspection_text(const Inspection& inspection,
                                                 const TextOptions& options = {});

/// The same as JSON, version 1 of "ohmfold-inspection" (docs/trace.md).
[[nodiscard]] std::string render_inspection_json(const Inspection& inspection);

/// What there is to say about each line of a work, the marks, what is right so far and what is
/// still asked. No right value is given that the work does not have.
[[nodiscard]] std::string render_judgement_text(const Exercise& exercise, const Work& work,
                                                const WorkJudgement& judged,
                                                const TextOptions& options = {});

/// The same as JSON, version 1 of "ohmfold-judgement" (docs/judgement.md).
[[nodiscard]] std::string render_judgement_json(const Exercise& exercise, const Work& work,
                                                const WorkJudgement& judged);

/// What there is to say about one line, as one wrapped paragraph of one to three sentences; ""
/// where there is nothing to say, as of a line that starts a case.
[[nodiscard]] std::string render_reply(const Exercise& exercise, const Work& work,
                                       const WorkJudgement& judged, std::size_t claim,
                                       const TextOptions& options = {});

/// A hint in words, as one wrapped paragraph. Only HintLevel::tell states a value.
[[nodiscard]] std::string render_hint(const Exercise& exercise, const Work& work,
                                      const WorkJudgement& judged, const Hint& hint,
                                      HintLevel level, const TextOptions& options = {});

/// The circuit of a case as the person's own reduction has left it: each part, its points, its
/// value as far as they have it.
[[nodiscard]] std::string render_standing(const Exercise& exercise, const CaseStanding& standing,
                                          const TextOptions& options = {});

/// Which case contradicts itself and where, or is beyond the budget for symbols, as one line each,
/// for standard error.
[[nodiscard]] std::string render_contradictions(const Trace& trace);

/// What a claim is about: "R1 and R2 combined", "current through R3", without the case.
[[nodiscard]] std::string render_topic(const Problem& problem, const Topic& topic,
                                       Letters letters = Letters::unicode);

/// The works of a class as a table, and what went wrong how often.
[[nodiscard]] std::string render_class_report_text(const ClassReport& report,
                                                   const TextOptions& options = {});

/// A line for each work, as comma-separated values (RFC 4180) with a line of headings.
[[nodiscard]] std::string render_class_report_csv(const ClassReport& report);

/// All of it as JSON, version 1 of "ohmfold-class" (docs/class-report.schema.json).
[[nodiscard]] std::string render_class_report_json(const ClassReport& report);

}  // namespace ohmfold
