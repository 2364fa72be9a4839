// The works of a class as JSON, version 1 of "ohmfold-class" (docs/class-report.schema.json).
#include "ohmfold/render.h"
#include "views/json_values.h"
#include "views/marks_json.h"
#include "views/topic_words.h"

namespace ohmfold {

namespace views {
namespace {

Json errors_json(const std::vector<ErrorCount>& errors) {
  Json list = Json::array();
  for (const ErrorCount& error : errors) {
    Json one;
    one["error"] = word_of(error.error);
    one["count"] = error.count;
    list.push_back(std::move(one));
  }
  return list;
}

Json verdicts_json(const VerdictCounts& counts) {
  Json result;
  result["right"] = counts.right;
  result["follows"] = counts.follows;
  result["rounded_early"] = counts.rounded_early;
  result["not_right"] = counts.not_right;
  result["cannot_tell"] = counts.cannot_tell;
  return result;
}

Json work_json(const MarkedWork& work) {
  Json result;
  result["file"] = work.name;
  if (!work.is_judged()) {
    result["why_not"] = work.why_not;
    return result;
  }
  result["all_right"] = work.all_right;
  result["marks"] = marks_json(work.marks);
  result["verdicts"] = verdicts_json(work.verdicts);
  result["errors"] = errors_json(work.errors);
  result["first_mistake"] = work.first_mistake ? Json(*work.first_mistake) : Json(nullptr);
  return result;
}

Json step_json(const ClassReport& report, const ClassStep& step) {
  Json result;
  result["step"] = plain_text(topic_words(*report.problem, step.topic));
  result["case"] = report.cases.at(step.topic.case_index);
  result["parts"] = Json::array();
  for (const PartId part : step.topic.parts) {
    result["parts"].push_back(report.problem->part(part).name);
  }
  result["tried"] = step.tried;
  result["wrong"] = step.wrong;
  result["errors"] = errors_json(step.errors);
  return result;
}

}  // namespace
}  // namespace views

std::string render_class_report_json(const ClassReport& report) {
  views::Json result;
  result["format"] = "ohmfold-class";
  result["version"] = 1;
  result["title"] = report.problem->title;
  result["all_right"] = report.all_right();
  result["works"] = views::Json::array();
  for (const MarkedWork& work : report.works) result["works"].push_back(views::work_json(work));
  result["steps"] = views::Json::array();
  for (const ClassStep& step : report.steps) {
    result["steps"].push_back(views::step_json(report, step));
  }
  result["errors"] = views::errors_json(report.errors);
  return result.dump(2, ' ', false, views::Json::error_handler_t::replace) + '\n';
}

}  // namespace ohmfold
