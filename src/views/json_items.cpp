// The entries of a trace as JSON.
#include "views/json_items.h"

#include <algorithm>
#include <array>

#include "views/bridge_json.h"
#include "views/conditions.h"
#include "views/json_unknown.h"
#include "views/lettering.h"
#include "views/reduction_chapter.h"
#include "views/step_lines.h"
#include "views/unknown_words.h"
#include "views/ways_words.h"

namespace ohmfold::views {

namespace {

Json part_list(const PartNames& names, std::span<const PartId> ids) {
  Json result = Json::array();
  for (const PartId id : ids) result.push_back(names.of(id));
  return result;
}

// The points that a step makes: of those between which its parts lie, the last ones.
std::vector<PointId> new_points(const Step& step) {
  std::vector<PointId> points;
  for (const NewPart& part : step.adds) {
    points.push_back(part.from);
    points.push_back(part.to);
  }
  std::sort(points.begin(), points.end());
  points.erase(std::unique(points.begin(), points.end()), points.end());
  points.erase(points.begin(),
               points.end() - std::min<std::ptrdiff_t>(step.new_points, std::ssize(points)));
  return points;
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
  const bool several = !step.adds.empty() && step.rule != RuleName::batteries;
  const bool single = step.makes.exists() && !several;
  Json result;
  result["number"] = step.number;
  result["stage"] = step.stage;
  result["rule"] = rule_word(step.rule);
  result["takes"] = part_list(scene.names, step.takes);
  result["makes"] = Json::array();
  const std::size_t count = several ? step.adds.size() : single ? 1 : 0;
  for (std::uint32_t i = 0; i < count; ++i) {
    result["makes"].push_back(scene.names.of(PartId{step.makes.index + i}));
  }
  if (!step.merges.empty()) result["merges"] = merged(scene, step);
  result["between"] =
      single ? Json(scene.names.of(std::array{step.first, step.second})) : Json(nullptr);
  result["value"] = single ? made_value(scene, step.makes) : Json(nullptr);
  if (several) result["parts"] = parts_made(scene, step);
  if (step.new_points > 0) result["points"] = scene.names.of(new_points(step));
  if (step.scope == Scope::as_seen_by_the_source) result["scope"] = "as-seen-by-the-source";
  const auto formula = combination(scene, step);
  result["formula"] = formula
                          ? Json(lettered(formula_text(*formula, Letters::ascii), Letters::ascii))
                          : Json(nullptr);
  if (step.rule == RuleName::batteries) {
    result["internal"] =
        json_value(problem_, Quantity(scene.reduction.end.battery(step.makes).internal), figures_);
  }
  result["reason"] = plain_text(scene.words.reason(step));
  return result;
}

Json JsonItems::parts_made(const Scene& scene, const Step& step) const {
  Json result = Json::array();
  for (std::uint32_t i = 0; i < step.adds.size(); ++i) {
    const PartId part{step.makes.index + i};
    Json one;
    one["name"] = scene.names.of(part);
    one["between"] = scene.names.of(std::array{step.adds[i].from, step.adds[i].to});
    one["value"] = made_value(scene, part);
    result.push_back(std::move(one));
  }
  return result;
}

Json JsonItems::merged(const Scene& scene, const Step& step) const {
  if (step.merging == Merging::together) return scene.names.of(step.merges);
  Json pairs = Json::array();
  for (std::size_t i = 0; i + 1 < step.merges.size(); i += 2) {
    pairs.push_back(scene.names.of(step.merges.subspan(i, 2)));
  }
  return pairs;
}

Json JsonItems::made_value(const Scene& scene, PartId made) const {
  const Network& end = scene.reduction.end;
  if (end.kind(made) == ElementKind::battery) {
    return json_value(problem_, Quantity(end.battery(made).emf), figures_);
  }
  const bool known = end.knows_resistance(made);
  if (known && (trace_.complete || end.resistance(made).bits() <= kMostStepBits)) {
    return json_value(problem_, scene.resistance(made), figures_);
  }
  return json_value(problem_, Reading(Undetermined::too_long), figures_);
}

Json JsonItems::bridge() const {
  return trace_.bridge ? bridge_json(scene_, *trace_.bridge) : Json(nullptr);
}

Json JsonItems::way(const Reduction& reduction) const {
  const Choice& choice = reduction.choice;
  if (!choice.made) return nullptr;
  Json result;
  if (choice.asked != Method::automatic) result["asked"] = method_word(choice.asked);
  result["method"] = method_word(choice.method);
  result["after"] = choice.after;
  result["ways"] = Json::array();
  for (const Way& way : choice.ways) {
    Json one;
    one["method"] = method_word(way.method);
    one["lines"] = way.lines;
    one["unknowns"] = way.unknowns;
    if (way.then != way.method) one["then"] = method_word(way.then);
    result["ways"].push_back(std::move(one));
  }
  const Scene scene(problem_, reduction, figures_);
  result["reason"] = plain_text(choice_words(scene));
  return result;
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
  if (answer.thevenin) {
    result["resistance"] = json_value(problem_, answer.thevenin->resistance, figures_);
    result["short_circuit_current"] =
        json_value(problem_, answer.thevenin->short_circuit_current, figures_);
  }
  if (answer.condition) result["condition"] = condition(*answer.condition);
  if (!answer.shown_by) return result;
  const Scene further(problem_, trace_.further.at(*answer.shown_by), figures_);
  const StepLog& steps = further.reduction.steps;
  result["steps"] = Json::array();
  for (std::size_t i = 0; i < steps.size(); ++i) {
    result["steps"].push_back(step_of(further, steps[i]));
  }
  if (further.reduction.choice.made) result["way"] = way(further.reduction);
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

Json JsonItems::remark(const Remark& remark) const {
  return plain_text(scene_.words.remark(remark));
}

Json JsonItems::share(const Share& share) const {
  const CaseTrace& alone = share.alone;
  const JsonItems items(problem_, alone, figures_);
  Json result;
  result["sources"] = part_list(scene_.names, share.sources);
  result["steps"] = Json::array();
  const StepLog& steps = alone.main.steps;
  for (std::size_t i = 0; i < steps.size(); ++i) result["steps"].push_back(items.step(steps[i]));
  result["equivalent"] = items.equivalent();
  result["returns"] = Json::array();
  for (const Return& item : alone.returns) result["returns"].push_back(items.returned(item));
  result["branches"] = Json::array();
  for (const BranchResult& item : alone.branches) result["branches"].push_back(items.branch(item));
  return result;
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
  const bool of_current = found.kind == ContradictionKind::current_blocked;
  result["remainder"] = json_value(
      problem_, of_current ? Quantity(found.surplus) : Quantity(found.remainder), figures_);
  result["sentence"] = plain_text(sentence(contradiction_words(scene_.words, problem_, trace_)));
  if (found.agree) result["agree"] = condition(*found.agree);
  return result;
}

}  // namespace ohmfold::views
