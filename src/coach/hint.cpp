// The next useful thing to mend or to do, from where a person stands.
#include <algorithm>

#include "coach/judged_work.h"
#include "coach/main_port.h"
#include "coach/next_value.h"
#include "solve/reduce.h"

namespace ohmfold {
namespace {

// A later line that puts right what this one got wrong.
bool is_put_right(const WorkJudgement& judged, const Judgement& wrong) {
  return std::any_of(judged.lines.begin() + static_cast<std::ptrdiff_t>(wrong.claim) + 1,
                     judged.lines.end(), [&](const Judgement& line) {
                       if (!line.holds() || line.case_index != wrong.case_index) return false;
                       if (!wrong.leaves.empty()) return line.leaves == wrong.leaves;
                       const bool same = line.claimed == wrong.claimed && line.of == wrong.of &&
                                         line.at == wrong.at && line.to == wrong.to;
                       return wrong.claimed && same && line.value != ValueVerdict::none;
                     });
}

class NextStep {
 public:
  NextStep(const CaseBook& book, const WorkJudgement& judged) : book_(book), judged_(judged) {
    hint_.case_index = book.case_index();
  }

  Hint run() && {
    const CaseStanding& standing = judged_.cases[book_.case_index()];
    const std::size_t open =
        standing.open.empty() ? standing.attempted.front() : standing.open.front();
    question_ = &book_.solved().answers[open].question;
    if (!is_about_one_source() || !reduces_further()) {
      const Answer& answer = book_.solved().answers[open];
      hint_ = next_value(book_, answer);
      hint_.case_index = book_.case_index();
    }
    return std::move(hint_);
  }

 private:
  // With several sources, or for resistances between other points, a reduction of the main network
  // leads nowhere.
  [[nodiscard]] bool is_about_one_source() const {
    if (!book_.solved().main.source.exists()) return false;
    if (std::holds_alternative<ResistanceBetween>(*question_)) {
      return is_main_resistance(book_.solved(), target_of(*question_));
    }
    return !std::holds_alternative<TheveninBetween>(*question_) &&
           !std::holds_alternative<ValueOf>(*question_);
  }

  // Something is left to combine, or to change so that it can be.
  bool reduces_further() {
    const Network& own = book_.networks.own();
    if (book_.networks.is_lost() || whole_is_known()) return false;
    if (living_resistors(own).size() < 2) return false;
    for (const RuleName name : {RuleName::series, RuleName::parallel}) {
      std::vector<Place> places = rule(name).find(own, whole(own));
      if (places.empty()) continue;
      if (!earliest_ || places.front().parts < earliest_->parts) {
        earliest_ = std::move(places.front());
        hint_.rule = name;
      }
    }
    if (earliest_) {
      combine();
      return true;
    }
    return at_standstill();
  }

  [[nodiscard]] bool whole_is_known() const {
    return book_.claimed({Claimed::whole_resistance, {}, {}, {}}) != nullptr;
  }

  void combine() {
    hint_.kind = HintKind::combine;
    hint_.place = std::move(*earliest_);
    const Rule& found = rule(hint_.rule);
    hint_.why = found.judge(book_.networks.own(), hint_.place).facts;
    hint_.value = value_of(hint_.rule == RuleName::series ? Joining::series : Joining::parallel,
                           hint_.place.parts);
  }

  // On the person's own values where one of them is wrong; otherwise on the exact ones.
  [[nodiscard]] std::optional<Quantity> value_of(Joining how,
                                                 const std::vector<PartId>& parts) const {
    const bool right = std::all_of(parts.begin(), parts.end(), [&](PartId part) {
      const auto own = book_.own_resistance(part);
      const auto truth = book_.networks.resistance(part);
      return own && truth && !book_.rests_on_wrong(own->claims);
    });
    if (right) {
      const Edit edit = test_for(how).edit(book_.networks.own(), {parts, {}, {}});
      return Quantity(edit.adds.front().resistance.lowest_terms(), Unit::ohm);
    }
    const auto own = combined_route(book_, how, parts);
    if (!own) return std::nullopt;
    return Quantity(own->value, Unit::ohm);
  }

  [[nodiscard]] bool has_said_so() const {
    return std::any_of(judged_.lines.begin(), judged_.lines.end(), [&](const Judgement& line) {
      const bool statement = line.step == StepVerdict::right && line.operands.empty() &&
                             line.rule == RuleName::series && !line.claimed;
      return statement && line.case_index == book_.case_index();
    });
  }

  bool at_standstill() {
    if (!has_said_so()) {
      hint_.kind = HintKind::no_pair;
      return true;
    }
    if (book_.networks.own().alive_count() > kMostTried) return false;
    const Reduction way = reduce(book_.networks.own(), SolveOptions{});
    if (way.steps.empty()) return false;
    const Step step = way.steps[0];
    hint_.kind = HintKind::rewrite;
    hint_.rule = step.rule;
    hint_.place.parts.assign(step.takes.begin(), step.takes.end());
    hint_.place.points.assign(step.merges.begin(), step.merges.end());
    hint_.place.first = step.first;
    hint_.place.second = step.second;
    hint_.why.assign(step.why.begin(), step.why.end());
    return true;
  }

  static constexpr std::size_t kMostTried = 60;

  const CaseBook& book_;
  const WorkJudgement& judged_;
  const Question* question_ = nullptr;
  std::optional<Place> earliest_;
  Hint hint_;
};

}  // namespace

Hint next_hint(const Exercise& exercise, const Work& work, const WorkJudgement& judged) {
  for (const Judgement& line : judged.lines) {
    if (line.holds() || is_put_right(judged, line)) continue;
    Hint hint;
    hint.kind = HintKind::mend;
    hint.claim = line.claim;
    hint.case_index = line.case_index;
    return hint;
  }
  const JudgedWork again = judge_with_books(exercise, work, {});
  // First the case that the work has come to, then those that are not begun.
  std::vector<std::size_t> order;
  if (!judged.lines.empty()) order.push_back(judged.lines.back().case_index);
  for (std::size_t i = 0; i < judged.cases.size(); ++i) order.push_back(i);
  for (const std::size_t index : order) {
    const CaseStanding& standing = judged.cases[index];
    if (standing.open.empty() && standing.attempted.empty()) continue;
    return NextStep(again.books[index], again.result).run();
  }
  return {};
}

}  // namespace ohmfold
