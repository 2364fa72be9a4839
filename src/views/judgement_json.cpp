// A judged work as JSON, version 1 of "ohmfold-judgement" (docs/judgement.md).
#include "ohmfold/render.h"
#include "views/json_values.h"
#include "views/judgement_words.h"
#include "views/marks_json.h"
#include "views/reply.h"
#include "views/wording.h"

namespace ohmfold {

namespace views {
namespace {

/// The parts of one line, each as JSON.
class LineJson {
 public:
  explicit LineJson(const JudgedLine& line) : line_(line), judgement_(line.judgement) {}

  [[nodiscard]] Json whole() const {
    Json result;
    result["line"] = line_.number();
    result["text"] = line_.claim.text;
    result["case"] = line_.judged.exercise.trace.cases.at(judgement_.case_index).name;
    result["verdict"] = verdict_word(verdict_of(judgement_));
    result["step"] = step();
    result["value"] = value();
    result["unit"] = unit();
    result["figures"] = figures_verdict_word(judgement_.figures);
    result["errors"] = Json::array();
    for (const Diagnosis& diagnosis : judgement_.errors) {
      result["errors"].push_back(error(diagnosis));
    }
    result["hindrance"] = hindrance();
    result["reply"] = plain_text(reply_words(line_));
    result["marks"]["method"] = mark_word(judgement_.method);
    result["marks"]["accuracy"] = mark_word(judgement_.accuracy);
    return result;
  }

 private:
  [[nodiscard]] Json part(PartId id) const {
    return id.exists() ? Json(line_.words.names.of(id)) : Json(nullptr);
  }
  [[nodiscard]] Json parts(const std::vector<PartId>& ids) const {
    Json names = Json::array();
    for (const PartId id : ids) names.push_back(part(id));
    return names;
  }
  [[nodiscard]] Json points(const std::vector<PointId>& ids) const {
    Json names = Json::array();
    for (const PointId id : ids) names.push_back(line_.words.names.of(id));
    return names;
  }

  [[nodiscard]] Json step() const {
    if (judgement_.step == StepVerdict::none) return nullptr;
    Json result;
    result["verdict"] = step_verdict_word(judgement_.step);
    const bool no_pair = std::holds_alternative<NoPairClaim>(line_.claim.says);
    result["rule"] = no_pair ? Json(nullptr) : Json(rule_word(judgement_.rule));
    result["operands"] = parts(judgement_.operands);
    result["makes"] = part(judgement_.makes);
    result["leaves"] = parts(judgement_.leaves);
    result["why"] = Json::array();
    for (const Fact& fact : judgement_.why) {
      result["why"].push_back(plain_text(line_.words.words.fact(fact)));
    }
    return result;
  }

  [[nodiscard]] Json value() const {
    if (judgement_.value == ValueVerdict::none) return nullptr;
    const Problem& problem = line_.words.problem;
    Json result;
    result["verdict"] = value_verdict_word(judgement_.value);
    result["of"] = judgement_.claimed ? Json(claimed_word(*judgement_.claimed)) : Json(nullptr);
    result["written"] = plain_text(line_.stated());
    result["stated"] = judgement_.stated
                           ? json_value(problem, *judgement_.stated, line_.words.figures)
                           : Json(nullptr);
    result["caused_by"] = Json::array();
    for (const std::size_t claim : judgement_.caused_by) {
      result["caused_by"].push_back(line_.judged.line_number(claim));
    }
    return result;
  }

  [[nodiscard]] Json unit() const {
    if (judgement_.unit == UnitVerdict::none) return nullptr;
    Json result;
    result["verdict"] = unit_verdict_word(judgement_.unit);
    result["expected"] = judgement_.expected_unit
                             ? Json(symbol(*judgement_.expected_unit, Letters::ascii))
                             : Json(nullptr);
    return result;
  }

  [[nodiscard]] Json error(const Diagnosis& diagnosis) const {
    Json result;
    result["error"] = word_of(diagnosis.error);
    result["parts"] = parts(diagnosis.parts);
    result["points"] = points(diagnosis.points);
    result["numbers"] = Json::array();
    for (const Quantity& number : diagnosis.numbers) {
      result["numbers"].push_back(json_value(line_.words.problem, number, line_.words.figures));
    }
    return result;
  }

  [[nodiscard]] Json hindrance() const {
    if (judgement_.hindrance == Hindrance::none) return nullptr;
    Json result;
    result["kind"] = hindrance_word(judgement_.hindrance);
    result["name"] = judgement_.name.empty() ? Json(nullptr) : Json(judgement_.name);
    result["suggestion"] =
        judgement_.suggestion.empty() ? Json(nullptr) : Json(judgement_.suggestion);
    result["part"] = part(judgement_.part);
    result["earlier"] =
        judgement_.earlier ? Json(line_.judged.line_number(*judgement_.earlier)) : Json(nullptr);
    return result;
  }

  const JudgedLine& line_;
  const Judgement& judgement_;
};

Json line_json(const JudgedLine& line) {
  return LineJson(line).whole();
}

Json questions(const JudgedWork& judged, const CaseTrace& trace,
               const std::vector<std::size_t>& answers) {
  Json result = Json::array();
  for (const std::size_t answer : answers) {
    result.push_back(to_string(trace.answers.at(answer).question, judged.problem()));
  }
  return result;
}

Json case_json(const JudgedWork& judged, std::size_t index) {
  const CaseTrace& trace = judged.exercise.trace.cases.at(index);
  const CaseStanding& standing = judged.judged.cases[index];
  Json result;
  result["name"] = trace.name;
  result["begun"] = standing.is_begun;
  result["own"] = standing.is_own;
  result["answered"] = questions(judged, trace, standing.answered);
  result["attempted"] = questions(judged, trace, standing.attempted);
  result["open"] = questions(judged, trace, standing.open);
  return result;
}

}  // namespace
}  // namespace views

std::string render_judgement_json(const Exercise& exercise, const Work& work,
                                  const WorkJudgement& judged) {
  const views::JudgedWork all(exercise, work, judged);
  views::Json result;
  result["format"] = "ohmfold-judgement";
  result["version"] = 1;
  result["title"] = exercise.problem->title;
  result["work"] = work.source_name;
  result["all_right"] = judged.all_right();
  result["lines"] = views::Json::array();
  for (std::size_t i = 0; i < judged.lines.size(); ++i) {
    result["lines"].push_back(views::line_json(views::JudgedLine(all, i)));
  }
  result["cases"] = views::Json::array();
  for (std::size_t i = 0; i < judged.cases.size(); ++i) {
    result["cases"].push_back(views::case_json(all, i));
  }
  result["marks"] = views::marks_json(judged.marks);
  return result.dump(2, ' ', false, views::Json::error_handler_t::replace) + '\n';
}

}  // namespace ohmfold
