// The answers of a case as sentences, in the order of the questions, and the cases side by side.
#include <algorithm>

#include "views/amounts.h"
#include "views/chapter.h"
#include "views/conditions.h"
#include "views/plan.h"
#include "views/questions.h"
#include "views/reduction_chapter.h"
#include "views/steps_asked.h"
#include "views/thevenin.h"
#include "views/unknown_words.h"

namespace ohmfold::views {

namespace {

/// What a minus sign means for this question; nothing where there is nothing to say.
class SignReader {
 public:
  explicit SignReader(const Problem& problem) : problem_(problem) {}

  Words operator()(const CurrentThrough& q) const {
    const Part& part = problem_.part(q.part);
    if (part.kind == PartKind::battery) {
      return say(" The minus sign: the current runs into its + terminal.");
    }
    return say(" The minus sign: it runs from ", point(part.to), " to ", point(part.from), ".");
  }
  Words operator()(const VoltageAcross& q) const {
    const Part& part = problem_.part(q.part);
    return say(" The minus sign: ", point(part.to), " has the higher potential.");
  }
  Words operator()(const VoltageBetween& q) const {
    return say(" The minus sign: ", point(q.to), " has the higher potential.");
  }
  Words operator()(const PotentialAt&) const { return {}; }
  Words operator()(const PowerIn& q) const {
    const bool battery = problem_.part(q.part).kind == PartKind::battery;
    return say(" The minus sign: the ", battery ? "battery" : "source", " takes up power.");
  }
  Words operator()(const TheveninBetween&) const { return {}; }
  Words operator()(const ResistanceBetween&) const { return {}; }
  Words operator()(const ResistanceSeenBy&) const { return {}; }
  Words operator()(const ValueOf&) const {
    return say(" The minus sign: its terminals are the other way round.");
  }

 private:
  Run point(PointId id) const { return PointName{problem_.point(id)}; }

  const Problem& problem_;
};

/// " = V_A − V_B = 12 V − 9 V", for the voltage between two points of known potentials.
Words difference(const Scene& scene, const CaseTrace& trace, const VoltageBetween& question) {
  if (std::max(question.from.index, question.to.index) >= trace.nodes.size()) return {};
  const Reading& first = trace.nodes[question.from.index].potential;
  const Reading& second = trace.nodes[question.to.index].potential;
  if (!first.value || !second.value) return {};
  const Expression symbols =
      sum({scene.symbols.potential(question.from), negative(scene.symbols.potential(question.to))});
  std::vector<Expression> terms = scene.put_in({*first.value, *second.value});
  terms[1] = negative(std::move(terms[1]));
  const Expression values = sum(std::move(terms));
  if (has_unwritten_amount(values)) return {};
  return say(" = ", formula_words(symbols), " = ", formula_text(values, Letters::unicode));
}

Words answer_sentence(const Scene& scene, const CaseTrace& trace, const Answer& answer) {
  if (answer.thevenin) return thevenin_sentence(scene, answer);
  const Words what = question_words(answer.question, scene.problem).capitalised();
  if (answer.irrational) {
    return say(what, " is ", formula_words(question_symbol(answer.question, scene.symbols)), " = ",
               answer_value(scene, answer), ".");
  }
  if (!answer.value.value) {
    return say(what, " is not determined: ", why_undetermined(answer.value.why), ".");
  }
  if (std::holds_alternative<ValueOf>(answer.question)) {
    const bool turned = answer.value.value->number.is_negative();
    return say(what, " is ", scene.value(*answer.value.value), ".",
               turned ? std::visit(SignReader(scene.problem), answer.question) : Words());
  }
  const Expression symbol = question_symbol(answer.question, scene.symbols);
  Words words = say(what, " is ", formula_words(symbol));
  if (const auto* between = std::get_if<VoltageBetween>(&answer.question)) {
    words.add(difference(scene, trace, *between));
  }
  words.add(say(" = ", scene.value(*answer.value.value), "."));
  if (answer.value.value->number.is_symbolic()) {
    const auto with = with_values(scene.problem, answer.value);
    if (with) words.add(say(" With ", given_symbols(scene.problem), ": ", scene.value(*with), "."));
  }
  if (answer.condition) {
    words.add(say(" It is ", condition_words(scene.problem, *answer.condition), "."));
  }
  if (answer.value.value->number.is_negative()) {
    words.add(std::visit(SignReader(scene.problem), answer.question));
  }
  return words;
}

/// The reduction that an answer about a resistance rests on, where it is not the main one.
void add_further(const Scene& scene, const CaseTrace& trace, const Answer& answer,
                 const OutlineOptions& options, Document& document) {
  const Reduction& reduction = trace.further.at(*answer.shown_by);
  const Scene further(scene.problem, reduction, scene.figures);
  const Words title = question_words(answer.question, scene.problem).capitalised();
  document.heading(3, title);
  const auto [first, second] = terminals(reduction);
  document.paragraph(say("Look into the circuit from ", further.words.point(first), " and ",
                         further.words.point(second), ". ", plan(further)));
  add_reduction(further, trace, options, document);
  const std::size_t from = document.blocks.size();
  if (const Words words = port_words(reduction); !words.empty()) document.paragraph(words);
  if (answer.thevenin) {
    add_thevenin(further, trace, answer, document);
    document.cover(from, title, asked_of_answers(further, {&answer}));
    return;
  }
  add_resistance(further, question_symbol(answer.question, further.symbols), answer.value,
                 document);
  document.cover(from, title, asked_of_terminals(further, answer.value));
}

/// Where everything was asked for, only resistances need a sentence: the table shows the rest.
bool has_sentence(const Problem& problem, const CaseTrace& trace, const Answer& answer) {
  return !problem.questions.empty() || !trace.complete || trace.only_answers ||
         std::holds_alternative<ValueOf>(answer.question) ||
         std::holds_alternative<ResistanceSeenBy>(answer.question);
}

}  // namespace

void add_remarks(const Scene& scene, const CaseTrace& trace, Document& document) {
  const Selection selection = select(trace.remarks.size());
  for (std::size_t i = 0; i < trace.remarks.size(); ++i) {
    if (selection.shows(i)) document.paragraph(scene.words.remark(trace.remarks[i]));
  }
}

void add_answers(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                 Document& document) {
  for (const Answer& answer : trace.answers) {
    if (!answer.shown_by) continue;
    add_further(scene, trace, answer, options, document);
  }
  add_answer_list(scene, trace, document);
}

void add_answer_list(const Scene& scene, const CaseTrace& trace, Document& document) {
  if (trace.answers.empty()) return;
  std::vector<const Answer*> told;
  for (const Answer& answer : trace.answers) {
    if (has_sentence(scene.problem, trace, answer)) told.push_back(&answer);
  }
  const bool everything = scene.problem.questions.empty() && trace.complete && !trace.only_answers;
  document.heading(3, say(told.size() == 1 && !everything ? "Answer" : "Answers"));
  const std::size_t from = document.blocks.size();
  const Selection selection = select(told.size());
  for (std::size_t i = 0; i < told.size(); ++i) {
    if (!selection.shows(i)) continue;
    document.entry(std::to_string(i + 1), answer_sentence(scene, trace, *told[i]));
    if (i + 1 == selection.first && selection.left_out() > 0) {
      document.paragraph(say(count_text(selection.left_out()), " answers are not listed here."));
    }
  }
  if (everything) {
    document.paragraph(
        say("The current, the voltage and the power of every part stand in the table above."));
  }
  document.cover(from, say("Answers"), asked_of_answers(scene, told));
}

void add_comparison(const Trace& trace, int figures, Document& document) {
  const auto has_answers = [](const CaseTrace& one) { return !one.answers.empty(); };
  const auto shown = std::find_if(trace.cases.begin(), trace.cases.end(), has_answers);
  if (trace.cases.size() < 2 || trace.cases.size() > 12 || shown == trace.cases.end()) return;
  const Words title = say("The cases side by side");
  document.heading(2, title);
  const std::size_t from = document.blocks.size();
  const Scene scene(*trace.problem, shown->main, figures);
  Table table;
  table.columns.push_back({say("Asked"), Align::left});
  for (const CaseTrace& one : trace.cases) table.columns.push_back({say(one.name), Align::left});
  const Selection selection = select(shown->answers.size(), false);
  for (std::size_t i = 0; i < shown->answers.size(); ++i) {
    if (!selection.shows(i)) continue;
    std::vector<Words> row{
        question_words(shown->answers[i].question, *trace.problem).capitalised()};
    for (const CaseTrace& one : trace.cases) {
      row.push_back(i < one.answers.size() ? short_answer(scene, one.answers[i])
                                           : say("contradiction"));
    }
    table.rows.push_back(std::move(row));
  }
  document.table(std::move(table));
  document.cover(from, title);
}

}  // namespace ohmfold::views
