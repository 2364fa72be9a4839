// Corners and paths as JSON.
#include "views/bridge_json.h"

namespace ohmfold::views {

namespace {

std::string part_name(const Scene& scene, PartId part) {
  const Network& start = scene.reduction.start;
  if (start.kind(part) != ElementKind::port) return scene.names.of(part);
  return "between " + scene.problem.point(start.from(part)) + " and " +
         scene.problem.point(start.to(part));
}

}  // namespace

Json bridge_json(const Scene& scene, const Certificate& bridge) {
  Json result;
  result["corners"] = Json::array();
  for (const PointId corner : bridge.corners) {
    result["corners"].push_back(scene.problem.point(corner));
  }
  result["paths"] = Json::array();
  for (const Certificate::Path& path : bridge.paths) {
    Json one;
    one["between"] = {scene.problem.point(path.from), scene.problem.point(path.to)};
    one["parts"] = Json::array();
    for (const PartId part : path.parts) one["parts"].push_back(part_name(scene, part));
    result["paths"].push_back(std::move(one));
  }
  return result;
}

}  // namespace ohmfold::views
