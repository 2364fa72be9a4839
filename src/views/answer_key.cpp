// The answers of several problems side by side.
#include "views/answer_key.h"

#include <algorithm>
#include <utility>

#include "views/amounts.h"
#include "views/chapter.h"
#include "views/questions.h"
#include "views/thevenin.h"

namespace ohmfold::views {

namespace {

class Key {
 public:
  Key(std::span<const Trace> traces, int figures) : traces_(traces), figures_(figures) {
    several_ = traces.size() > 1;
    cases_ = std::any_of(traces.begin(), traces.end(),
                         [](const Trace& trace) { return trace.cases.size() > 1; });
  }

  Table table() && {
    if (several_) table_.columns.push_back({say("Problem"), Align::left});
    if (cases_) table_.columns.push_back({say("Case"), Align::left});
    table_.columns.push_back({say("Asked"), Align::left});
    table_.columns.push_back({say("Answer"), Align::left});
    for (std::size_t i = 0; i < traces_.size(); ++i) add_problem(i);
    return std::move(table_);
  }

 private:
  void add_problem(std::size_t index) {
    const Trace& trace = traces_[index];
    const Selection selection = select(trace.cases.size());
    Words problem = say(std::to_string(index + 1), ". ", title_of(*trace.problem));
    for (std::size_t i = 0; i < trace.cases.size(); ++i) {
      if (selection.shows(i)) add_case(trace, trace.cases[i], problem);
    }
    if (selection.left_out() > 0) {
      Words no_case;
      add_row(problem, no_case, say(count_text(selection.left_out()), " cases are not listed here"),
              {});
    }
  }

  void add_case(const Trace& trace, const CaseTrace& one, Words& problem) {
    Words label = say(one.name);
    if (one.contradiction || one.beyond_budget) {
      add_row(problem, label, say("everything"),
              say(one.contradiction ? "contradiction" : "too long with its symbols"));
      return;
    }
    const int figures = figures_ > 0 ? figures_ : trace.problem->figures;
    const Scene scene(*trace.problem, one.main, figures);
    const Selection selection = select(one.answers.size());
    for (std::size_t i = 0; i < one.answers.size(); ++i) {
      if (!selection.shows(i)) continue;
      add_row(problem, label, question_words(one.answers[i].question, *trace.problem).capitalised(),
              short_answer(scene, one.answers[i]));
    }
    if (selection.left_out() > 0) {
      add_row(problem, label, say(count_text(selection.left_out()), " answers are not listed here"),
              {});
    }
  }

  /// The name of a problem, and that of a case, stands in its first row alone.
  void add_row(Words& problem, Words& label, const Words& asked, const Words& answer) {
    std::vector<Words> row;
    if (several_) row.push_back(std::exchange(problem, {}));
    if (cases_) row.push_back(std::exchange(label, {}));
    row.push_back(asked);
    row.push_back(answer);
    table_.rows.push_back(std::move(row));
  }

  std::span<const Trace> traces_;
  int figures_;
  bool several_ = false;
  bool cases_ = false;
  Table table_;
};

}  // namespace

Words collection_title(std::span<const Trace> traces, Content content) {
  if (traces.size() == 1) return title_of(*traces.front().problem);
  switch (content) {
    case Content::solution:
      return say("Worked solutions");
    case Content::problem:
      return say("Problems");
    case Content::answers:
      return say("Answers");
  }
  return {};
}

void add_answer_key(std::span<const Trace> traces, int figures, Document& document) {
  document.heading(1, say("Answers"));
  const std::size_t from = document.blocks.size();
  document.table(Key(traces, figures).table());
  document.cover(from, say("Answers"));
}

}  // namespace ohmfold::views
