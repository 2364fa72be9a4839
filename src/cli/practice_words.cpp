// What a session of practice says by itself, around the replies and hints.
#include "cli/practice_words.h"

#include <algorithm>
#include <functional>
#include <string_view>

#include "views/lettering.h"

namespace ohmfold {
namespace {

/// Entries of a list that are shown; the others are counted.
constexpr std::size_t kMostListed = 12;

std::string paragraph(std::string_view text, const TextOptions& options) {
  std::string lines;
  const std::string shown = views::lettered(text, options.letters);
  for (const std::string& line : views::wrapped(shown, static_cast<std::size_t>(options.width))) {
    lines += line + '\n';
  }
  return lines;
}

std::string counted(std::size_t count, std::string_view one) {
  return std::to_string(count) + ' ' + std::string(one) + (count == 1 ? "" : "s");
}

/// "heading", and the entries indented below it; nothing where there are none.
std::string list(std::string_view heading, const std::vector<std::string>& entries) {
  if (entries.empty()) return {};
  std::string text = std::string(heading) + '\n';
  for (std::size_t i = 0; i < std::min(entries.size(), kMostListed); ++i) {
    text += "  " + entries[i] + '\n';
  }
  if (entries.size() > kMostListed) {
    text += "  and " + std::to_string(entries.size() - kMostListed) + " more\n";
  }
  return text;
}

std::string in_case(const Exercise& exercise, std::size_t index) {
  if (exercise.trace.cases.size() < 2) return {};
  return " (" + exercise.trace.cases.at(index).name + ")";
}

/// What no claim answers rightly yet, in the case `index`.
void add_open(const Situation& situation, std::size_t index, std::vector<std::string>& open) {
  const CaseStanding& standing = situation.judged.cases.at(index);
  std::vector<std::size_t> answers = standing.open;
  answers.insert(answers.end(), standing.attempted.begin(), standing.attempted.end());
  std::ranges::sort(answers);
  for (const std::size_t answer : answers) {
    const Question& question = situation.exercise.trace.cases.at(index).answers.at(answer).question;
    open.push_back(to_string(question, *situation.exercise.problem) +
                   in_case(situation.exercise, index));
  }
}

std::vector<std::string> still_open(const Situation& situation) {
  std::vector<std::string> open;
  for (std::size_t i = 0; i < situation.judged.cases.size(); ++i) add_open(situation, i, open);
  return open;
}

/// How a work that goes on stands, with what there is to say about its first lines that do not
/// hold.
std::string resumed_words(const Situation& situation) {
  std::vector<std::size_t> failing;
  for (std::size_t i = 0; i < situation.judged.lines.size(); ++i) {
    if (!situation.judged.lines[i].holds()) failing.push_back(i);
  }
  std::string text = "Your work goes on with " + counted(situation.work.claims.size(), "claim") +
                     (failing.empty() ? ", which hold.\n"
                                      : "; " + std::to_string(failing.size()) + " of them " +
                                            (failing.size() == 1 ? "does" : "do") + " not hold:\n");
  constexpr std::size_t kMostReplies = 5;
  for (std::size_t i = 0; i < std::min(failing.size(), kMostReplies); ++i) {
    const Claim& claim = situation.work.claims.at(situation.judged.lines[failing[i]].claim);
    text += "  line " + std::to_string(claim.where.line) + ": " + claim.text + '\n' +
            whole_lines(render_reply(situation.exercise, situation.work, situation.judged,
                                     failing[i], situation.options));
  }
  return text + '\n';
}

/// "R1 and R2 combined (S open), after 2 other claims, with 1 hint"
std::string attempt_words(const Situation& situation, const Attempt& attempt) {
  std::string text =
      render_topic(*situation.exercise.problem, attempt.topic, situation.options.letters) +
      in_case(situation.exercise, attempt.topic.case_index);
  if (attempt.wrong > 0) {
    const bool is_right = attempt.end == Attempt::End::right;
    text += ", after " + counted(attempt.wrong, is_right ? "other claim" : "claim");
  }
  if (attempt.hints > 0) text += ", with " + counted(attempt.hints, "hint");
  return text;
}

}  // namespace

std::string greeting_words(const Situation& situation, bool nothing_is_open) {
  const Problem& problem = *situation.exercise.problem;
  std::string text;
  if (!problem.title.empty()) text += paragraph(problem.title, situation.options) + '\n';
  for (const std::string& one : problem.texts) text += paragraph(one, situation.options) + '\n';
  if (!situation.work.claims.empty()) text += resumed_words(situation);
  text += standing_words(situation) + '\n';
  if (nothing_is_open) text += "Everything that is asked for is answered.\n";
  if (situation.exercise.trace.cases.size() > 1) text += case_words(situation.exercise);
  return text + "Write one claim on a line, such as R12 = R1 + R2 = 6 ohm; or: help, hint, quit.\n";
}

std::string standing_words(const Situation& situation) {
  const std::string circuit = whole_lines(render_standing(
      situation.exercise, situation.judged.cases.at(situation.case_index), situation.options));
  std::vector<std::string> open;
  add_open(situation, situation.case_index, open);
  return circuit + '\n' + list("Still asked:", open);
}

std::string summary_words(const Situation& situation, const std::vector<Attempt>& attempts) {
  std::vector<std::string> at_once;
  std::vector<std::string> later;
  std::vector<std::string> kept;
  std::vector<std::string> not_yet;
  for (const Attempt& attempt : attempts) {
    const std::string words = attempt_words(situation, attempt);
    if (attempt.end == Attempt::End::kept) {
      kept.push_back(words);
    } else if (attempt.end == Attempt::End::right) {
      (attempt.wrong + attempt.hints == 0 ? at_once : later).push_back(words);
    } else if (attempt.wrong > 0) {
      not_yet.push_back(words);
    }
  }
  return list("Right at once:", at_once) + list("Right in the end:", later) +
         list("Kept, though not right:", kept) + list("Not right yet:", not_yet) +
         list("Still asked:", still_open(situation));
}

std::string help_words(bool has_cases) {
  return std::string(
             "A claim is judged as soon as it is written; any order will do:\n"
             "  R12 = R1 + R2 = 6 ohm     R34 = R3 || R4     R_eq = 10 ohm\n"
             "  I_R1 = 0.5 A     V_R1 = 2 V     V_AB = -3 V     P_R1 = 1 W\n"
             "  no current through R5     no series or parallel pair left\n"
             "hint   which way to look; again: where to look; again: what to write\n"
             "why    the reason of the last reply, or more about what was not right\n"
             "show   the circuit as it stands in your own reduction\n"
             "undo   take back the last claim\n"
             "keep   put a claim into the work that is not right, and go on with it\n") +
         (has_cases ? "case   the cases; case \"...\" goes to another\n" : "") +
         "quit   end; the work is kept\n";
}

std::string case_words(const Exercise& exercise) {
  if (exercise.trace.cases.size() < 2) return "There is only one case.\n";
  std::vector<std::string> labels;
  for (const CaseTrace& trace : exercise.trace.cases)
    labels.push_back("case \"" + trace.name + '"');
  return list("To go to a case, write:", labels);
}

std::string findings_words(const Diagnostics& findings, const TextOptions& options) {
  std::string text;
  for (const Diagnostic& finding : findings) {
    const bool is_error = finding.severity == Severity::error;
    text += paragraph((is_error ? "This cannot be read: " : "Take care: ") + message(finding) + '.',
                      options);
  }
  return text;
}

Hint mend_last(const WorkJudgement& judged) {
  Hint hint;
  hint.kind = HintKind::mend;
  hint.claim = judged.lines.back().claim;
  hint.case_index = judged.lines.back().case_index;
  return hint;
}

std::string whole_lines(std::string text) {
  if (!text.empty() && !text.ends_with('\n')) text += '\n';
  return text;
}

}  // namespace ohmfold
