// Marks as JSON.
#include "views/marks_json.h"

namespace ohmfold::views {

Json marks_json(const Marks& marks) {
  Json result;
  result["method"] = marks.method;
  result["most_method"] = marks.most_method;
  result["accuracy"] = marks.accuracy;
  result["most_accuracy"] = marks.most_accuracy;
  result["unit_lost"] = marks.unit_lost;
  result["figures_lost"] = marks.figures_lost;
  result["earned"] = marks.earned();
  result["most"] = marks.most();
  return result;
}

}  // namespace ohmfold::views
