// An inspection as JSON, version 1 of "ohmfold-inspection" (docs/trace.md).
#include "ohmfold/render.h"
#include "views/bridge_json.h"
#include "views/proof_chapter.h"

namespace ohmfold {

namespace views {
namespace {

std::string_view likeness_word(Likeness likeness) {
  switch (likeness) {
    case Likeness::share_a_point:
      return "share-a-point";
    case Likeness::opposite_sides:
      return "opposite-sides";
    case Likeness::same_value:
      return "same-value";
  }
  return "";
}

/// True or false where there is a source to look from, otherwise null.
Json verdict(Stop stop, bool bridge) {
  if (bridge) return false;
  switch (stop) {
    case Stop::reduced:
    case Stop::short_circuit:
    case Stop::several_sources:
      return true;
    case Stop::open:
    case Stop::no_source:
      return nullptr;
    case Stop::bridge:
      return false;
  }
  return nullptr;
}

Json left_part(const Scene& scene, const Standstill::Left& left) {
  Json result;
  result["name"] = scene.names.of(left.part);
  result["between"] = {scene.problem.point(left.from), scene.problem.point(left.to)};
  return result;
}

Json pair_json(const Scene& scene, const TemptingPair& pair) {
  Json result;
  result["parts"] = {scene.names.of(pair.first), scene.names.of(pair.second)};
  result["likeness"] = likeness_word(pair.likeness);
  result["not_series"] = plain_text(sentence(not_series_words(scene, pair)));
  result["not_parallel"] = plain_text(sentence(not_parallel_words(scene, pair)));
  return result;
}

Json case_json(const Problem& problem, const CaseTrace& trace, const std::vector<SeenBy>& views,
               int figures) {
  const Scene scene(problem, trace.main, figures);
  Json result;
  result["name"] = trace.name;
  result["contradiction"] =
      trace.contradiction
          ? Json(plain_text(sentence(scene.words.contradiction(*trace.contradiction))))
          : Json(nullptr);
  result["kind"] = kind_word(trace.kind);
  result["series_parallel"] =
      trace.contradiction ? Json(nullptr) : verdict(trace.main.stop, trace.bridge.has_value());
  result["steps"] = trace.standstill ? trace.standstill->steps : trace.main.steps.size();
  result["bridge"] = trace.bridge ? bridge_json(scene, *trace.bridge) : Json(nullptr);
  result["left"] = Json::array();
  result["pairs"] = Json::array();
  if (trace.standstill) {
    for (const Standstill::Left& left : trace.standstill->left) {
      if (scene.reduction.end.kind(left.part) == ElementKind::port) continue;
      result["left"].push_back(left_part(scene, left));
    }
    for (const TemptingPair& pair : trace.standstill->pairs) {
      result["pairs"].push_back(pair_json(scene, pair));
    }
  }
  result["more_pairs"] = trace.standstill ? trace.standstill->more_pairs : 0;
  result["seen_by"] = Json::array();
  for (const SeenBy& view : views) {
    const Scene seen(problem, view.reduction, figures);
    Json one;
    one["battery"] = problem.part(view.battery).name;
    one["series_parallel"] = verdict(view.reduction.stop, view.bridge.has_value());
    one["steps"] = view.reduction.steps.size();
    one["bridge"] = view.bridge ? bridge_json(seen, *view.bridge) : Json(nullptr);
    result["seen_by"].push_back(std::move(one));
  }
  return result;
}

}  // namespace
}  // namespace views

std::string render_inspection_json(const Inspection& inspection) {
  const Problem& problem = *inspection.trace.problem;
  views::Json result;
  result["format"] = "ohmfold-inspection";
  result["version"] = 1;
  result["title"] = problem.title;
  result["cases"] = views::Json::array();
  for (std::size_t i = 0; i < inspection.trace.cases.size(); ++i) {
    result["cases"].push_back(views::case_json(problem, inspection.trace.cases[i],
                                               inspection.seen_by[i], problem.figures));
  }
  return result.dump(2, ' ', false, views::Json::error_handler_t::replace) + '\n';
}

}  // namespace ohmfold
