// The works of a class in a table, and what went wrong how often.
#include "views/class_report_outline.h"

#include <string>
#include <string_view>
#include <vector>

#include "views/chapter.h"
#include "views/topic_words.h"

namespace ohmfold::views {

namespace {

Words number(std::size_t count) {
  return say(std::to_string(count));
}

/// "5/6"
Words share(int earned, int most) {
  return say(std::to_string(earned), "/", std::to_string(most));
}

Column left(std::string_view heading) {
  return {say(heading), Align::left};
}

Column right(std::string_view heading) {
  return {say(heading), Align::right};
}

/// "series-at-a-junction 2, not-inverted"
Words errors_words(const std::vector<ErrorCount>& errors) {
  Words words;
  for (const ErrorCount& error : errors) {
    if (!words.empty()) words.add(", ");
    words.add(word_of(error.error));
    if (error.count > 1) words.add(say("\u00A0", std::to_string(error.count)));
  }
  return words;
}

std::vector<Words> row_of(const MarkedWork& work) {
  if (!work.is_judged()) {
    return {say(work.name),   say("-"), say("-"), say("-"), {}, {}, {}, {}, {}, {},
            say(work.why_not)};
  }
  const Marks& marks = work.marks;
  const VerdictCounts& count = work.verdicts;
  return {say(work.name),
          share(marks.earned(), marks.most()),
          share(marks.method, marks.most_method),
          share(marks.accuracy, marks.most_accuracy),
          number(count.right),
          number(count.follows),
          number(count.rounded_early),
          number(count.not_right),
          number(count.cannot_tell),
          work.first_mistake ? number(*work.first_mistake) : Words(),
          errors_words(work.errors)};
}

void add_works(const ClassReport& report, Document& document) {
  document.paragraph(
      say("M: method, A: accuracy. Lines: R right, F right on an earlier mistake, E rounded early, "
          "N not right, ? cannot be judged. First: the first line that is not right."));
  Table table;
  table.columns = {left("File"),
                   right("Marks"),
                   right("M"),
                   right("A"),
                   right("R"),
                   right("F"),
                   right("E"),
                   right("N"),
                   right("?"),
                   right("First"),
                   left("Errors found, or why there are no marks")};
  for (const MarkedWork& work : report.works) table.rows.push_back(row_of(work));
  document.table(std::move(table));
}

void add_summary(const ClassReport& report, Document& document) {
  std::size_t right_works = 0;
  std::size_t unjudged = 0;
  for (const MarkedWork& work : report.works) {
    if (work.all_right) ++right_works;
    if (!work.is_judged()) ++unjudged;
  }
  const std::size_t count = report.works.size();
  Words words = say(std::to_string(count), count == 1 ? " work" : " works", ", ",
                    right_works == count ? "all" : std::to_string(right_works), " right");
  if (unjudged > 0) words.add(say(", ", std::to_string(unjudged), " without marks"));
  document.paragraph(say(words, "."));
}

void add_steps(const ClassReport& report, Document& document) {
  if (report.steps.empty()) return;
  const bool has_cases = report.cases.size() > 1;
  document.heading(2, say("What went wrong"));
  Table table;
  table.columns = {left("Step")};
  if (has_cases) table.columns.push_back(left("Case"));
  for (Column& column : std::vector<Column>{right("Wrong"), right("Of"), left("Errors found")}) {
    table.columns.push_back(std::move(column));
  }
  const Selection selection = select(report.steps.size());
  for (std::size_t i = 0; i < report.steps.size(); ++i) {
    if (!selection.shows(i)) continue;
    const ClassStep& step = report.steps[i];
    std::vector<Words> row = {topic_words(*report.problem, step.topic)};
    if (has_cases) row.push_back(say(report.cases.at(step.topic.case_index)));
    row.push_back(number(step.wrong));
    row.push_back(number(step.tried));
    row.push_back(errors_words(step.errors));
    table.rows.push_back(std::move(row));
  }
  document.table(std::move(table));
  if (selection.left_out() == 0) return;
  document.paragraph(say(std::to_string(selection.left_out()),
                         " steps that fewer have wrong are not shown here."));
}

void add_errors(const ClassReport& report, Document& document) {
  if (report.errors.empty()) return;
  document.heading(2, say("Errors of the class"));
  Table table;
  table.columns = {left("Error"), right("Works")};
  for (const ErrorCount& error : report.errors) {
    table.rows.push_back({say(word_of(error.error)), number(error.count)});
  }
  document.table(std::move(table));
}

}  // namespace

Document class_report_outline(const ClassReport& report) {
  const Problem& problem = *report.problem;
  Document document;
  document.heading(1, say("Marks: ", problem.title.empty() ? problem.source_name : problem.title));
  add_summary(report, document);
  add_works(report, document);
  add_steps(report, document);
  add_errors(report, document);
  return document;
}

}  // namespace ohmfold::views
