// A judged work as text: line by line, then what is right so far, what is still asked, the marks.
#include <algorithm>

#include "ohmfold/render.h"
#include "views/document_text.h"
#include "views/hint_words.h"
#include "views/lettering.h"
#include "views/questions.h"
#include "views/reply.h"

namespace ohmfold {

namespace views {
namespace {

/// What a line says, with the mark behind it, and below it the reply.
void add_line(const JudgedLine& line, Document& document) {
  document.entry(std::to_string(line.number()), say(line.claim.text));
  const Words reply = reply_words(line);
  document.paragraph(
      say(verdict_mark(verdict_of(line.judgement)), reply.empty() ? "." : ". ", reply), 1);
}

Words case_words(const CaseTrace& one) {
  return say("Case \"", one.name, "\"");
}

Words questions(const JudgedWork& judged, std::size_t index,
                const std::vector<std::size_t>& answers) {
  std::vector<Words> asked;
  for (const std::size_t answer : answers) {
    const Answer& one = judged.exercise.trace.cases.at(index).answers.at(answer);
    asked.push_back(question_words(one.question, judged.problem()));
  }
  return listed(asked);
}

void add_answers(const JudgedWork& judged, std::size_t index, Document& document) {
  const CaseStanding& standing = judged.judged.cases[index];
  const CaseTrace& trace = judged.exercise.trace.cases.at(index);
  const bool several = judged.judged.cases.size() > 1;
  const auto put = [&](std::string_view what, const std::vector<std::size_t>& answers) {
    if (answers.empty()) return;
    Words words = several ? say(case_words(trace), ", ", what) : say(what).capitalised();
    document.entry("", say(words, ": ", questions(judged, index, answers), "."));
  };
  put("right so far", standing.answered);
  put("not right yet", standing.attempted);
  put("still asked", standing.open);
}

Words marks_words(const Marks& marks) {
  Words words = say("Marks: method ", std::to_string(marks.method), " of ",
                    std::to_string(marks.most_method), ", accuracy ",
                    std::to_string(marks.accuracy), " of ", std::to_string(marks.most_accuracy));
  words.add(".");
  if (marks.unit_lost) words.add(" One mark less for a unit, once in a work.");
  if (marks.figures_lost) words.add(" One mark less for figures, once in a work.");
  return say(words, " In all ", std::to_string(marks.earned()), " of ",
             std::to_string(marks.most()), ".");
}

/// The lines about a case, below its heading where there are several cases.
void add_lines(const JudgedWork& judged, std::size_t index, Document& document) {
  bool has_heading = judged.judged.cases.size() == 1;
  for (std::size_t claim = 0; claim < judged.judged.lines.size(); ++claim) {
    if (judged.judged.lines[claim].case_index != index) continue;
    const JudgedLine line(judged, claim);
    if (verdict_of(line.judgement) == LineVerdict::nothing) continue;
    if (!has_heading) {
      document.heading(2, case_words(judged.exercise.trace.cases.at(index)));
      has_heading = true;
    }
    add_line(line, document);
  }
}

Document judgement_document(const JudgedWork& judged) {
  Document document;
  const std::vector<CaseStanding>& cases = judged.judged.cases;
  for (std::size_t i = 0; i < cases.size(); ++i) add_lines(judged, i, document);
  document.heading(2, say("So far"));
  const bool all_found = std::all_of(cases.begin(), cases.end(), [](const CaseStanding& one) {
    return one.open.empty() && one.attempted.empty();
  });
  for (std::size_t i = 0; i < cases.size(); ++i) add_answers(judged, i, document);
  if (all_found) document.entry("", say("Nothing more is asked."));
  document.paragraph(marks_words(judged.judged.marks));
  return document;
}

/// One paragraph, wrapped.
std::string paragraph_text(const Words& words, const TextOptions& options) {
  if (words.empty()) return "";
  Document document;
  document.paragraph(words);
  return document_text(document, options);
}

}  // namespace
}  // namespace views

std::string render_judgement_text(const Exercise& exercise, const Work& work,
                                  const WorkJudgement& judged, const TextOptions& options) {
  const views::JudgedWork all(exercise, work, judged, options.figures);
  return views::document_text(views::judgement_document(all), options);
}

std::string render_reply(const Exercise& exercise, const Work& work, const WorkJudgement& judged,
                         std::size_t claim, const TextOptions& options) {
  const views::JudgedWork all(exercise, work, judged, options.figures);
  return views::paragraph_text(views::reply_words(views::JudgedLine(all, claim)), options);
}

std::string render_hint(const Exercise& exercise, const Work& work, const WorkJudgement& judged,
                        const Hint& hint, HintLevel level, const TextOptions& options) {
  const views::JudgedWork all(exercise, work, judged, options.figures);
  return views::paragraph_text(views::hint_words(all, hint, level), options);
}

}  // namespace ohmfold
