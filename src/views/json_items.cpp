// The entries of a trace as JSON.
#include "views/json_items.h"

#include <array>

#include "views/conditions.h"
#include "views/json_unknown.h"
#include "views/lettering.h"
#include "views/reduction_chapter.h"
#include "views/step_lines.h"
#include "views/unknown_words.h"

namespace ohmfold::views {

namespace {

Json part_list(const PartNames& names, std::span<const PartId> ids) {
  Json result = Json::array();
  for (const PartId id : ids) result.push_back(names.of(id));
  return result;
}

// In a network too large to find every value, the values of steps are written only up to about a
// thousand digits: together they would fill gigabytes. What is asked for is written whole.
constexpr std::size_t kMostStepBits = 4'000;

}  // namespace

JsonItems::JsonItems(const Problem& problem, const CaseTrace& trace, int figures)
    : problem_(problem), trace_(trace), figures_(figures), scene_(problem, trace.main, figures) {}

Json JsonItems::points(std::span<const PointId> ids) const {
  Json result = Json::array();
  for (const PointId id : ids) result.push_back(problem_.point(id));
  return result;
}

Json JsonItems::step_of(const Scene& scene, const Step& step) const {
  const bool makes = step.makes.exists();
  Json result;
  result["number"] = step.number;
  result["stage"] = step.stage;
  result["rule"] = rule_word(step.rule);
  result["takes"] = part_list(scene.names, step.takes);
  result["makes"] = Json::array();
  if (makes) result["makes"].push_back(scene.names.of(step.makes));
  if (!step.merges.empty()) result["merges"] = points(step.merges);
  result["between"] = makes ? points(std::array{step.first, step.second}) : Json(nullptr);
  result["value"] = makes ? made_value(scene, step.makes) : Json(nullptr);
  const auto formula = combination(scene, step);
  result["formula"] = formula
                          ? Json(lettered(formula_text(*formula, Letters::ascii), Letters::ascii))
                          : Json(nullptr);
  result["reason"] = plain_text(scene.words.reason(step));
  return result;
}

Json JsonItems::made_value(const Scene& scene, PartId made) const {
  const Network& end = scene.reduction.end;
  const bool known = end.knows_resistance(made);
  if (known && (trace_.complete || end.resistance(made).bits() <= kMostStepBits)) {
    return json_value(problem_, scene.resistance(made), figures_);
  }
  return json_value(problem_, Reading(Undetermined::too_long), figures_);
}

Json JsonItems::equivalent() const {
  if (!trace_.equivalent || !trace_.main.source.exists()) return nullptr;
  const auto [first, second] = terminals(trace_.main);
  Json result;
  result["between"] = points(std::array{first, second});
  result["value"] = json_value(problem_, *trace_.equivalent, figures_);
  return result;
}

Json JsonItems::returned(const Return& item) const {
  Json result;
  result["number"] = item.number;
  if (item.step != 0) result["step"] = item.step;
  result["rule"] = law_word(item.law);
  result["of"] = item.point.exists() ? problem_.point(item.point) : scene_.names.of(item.part);
  result["quantity"] = subject_word(item.subject);
  result["value"] = json_value(problem_, item.value, figures_);
  result["from"] = part_list(scene_.names, item.from);
  result["reason"] = plain_text(scene_.words.reason(item));
  return result;
}

Json JsonItems::branch(const BranchResult& branch) const {
  const Part& part = problem_.part(branch.part);
  Json result;
  result["name"] = part.name;
  result["kind"] = keyword(part.kind);
  result["from"] = problem_.point(part.from);
  result["to"] = problem_.point(part.to);
  result["current"] = json_value(problem_, branch.current, figures_);
  result["voltage"] = json_value(problem_, branch.voltage, figures_);
  result["power"] = json_value(problem_, branch.power, figures_);
  return result;
}

Json JsonItems::node(const NodeResult& node) const {
  Json result;
  result["name"] = problem_.point(node.point);
  result["potential"] = json_value(problem_, node.potential, figures_);
  return result;
}

Json JsonItems::answer(const Answer& answer) const {
  Json result;
  result["find"] = to_string(answer.question, problem_);
  result["value"] = answer.irrational ? json_surd(problem_, *answer.irrational,
                                                  unit_of(answer.question, problem_), figures_)
                                      : json_value(problem_, answer.value, figures_);
  if (answer.condition) result["condition"] = condition(*answer.condition);
  if (!answer.shown_by) return result;
  const Scene further(problem_, trace_.further.at(*answer.shown_by), figures_);
  const StepLog& steps = further.reduction.steps;
  result["steps"] = Json::array();
  for (std::size_t i = 0; i < steps.size(); ++i) {
    result["steps"].push_back(step_of(further, steps[i]));
  }
  return result;
}

Json JsonItems::check(const Check& check) const {
  Json result;
  result["law"] = check_word(check.law);
  if (check.step != 0) result["number"] = check.step;
  if (check.at.exists()) result["at"] = problem_.point(check.at);
  if (!check.loop.empty()) result["loop"] = part_list(scene_.names, check.loop);
  result["holds"] = check.holds;
  if (check.places != 1) result["places"] = check.places;
  if (check.primes != 0) result["primes"] = check.primes;
  if (!check.detail.empty()) result["detail"] = check.detail;
  return result;
}

Json JsonItems::caution(const Caution& caution) const {
  return plain_text(scene_.words.caution(caution));
}

Json JsonItems::condition(const SignCondition& found) const {
  Json result;
  result["decides"] = found.decides.to_string();
  result["zeros"] = Json::array();
  for (const Number& zero : found.zeros) result["zeros"].push_back(zero.to_string());
  result["sentence"] = plain_text(condition_words(problem_, found));
  return result;
}

Json JsonItems::condition(const CurrentCondition& found) const {
  Json result = condition(found.condition);
  result["current"] = scene_.names.of(found.part);
  return result;
}

Json JsonItems::contradiction(const Contradiction& found) const {
  Json result;
  result["parts"] = part_list(scene_.names, found.loop);
  result["points"] = points(found.points);
  result["remainder"] = json_value(problem_, Quantity(found.remainder), figures_);
  result["sentence"] = plain_text(sentence(contradiction_words(scene_.words, problem_, trace_)));
  if (found.agree) result["agree"] = condition(*found.agree);
  return result;
}

}  // namespace ohmfold::views
