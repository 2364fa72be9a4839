// Quantities and readings as JSON.
#include "views/json_values.h"

#include "ohmfold/decimal.h"
#include "ohmfold/symbolic.h"
#include "views/amounts.h"
#include "views/conditions.h"
#include "views/wording.h"

namespace ohmfold::views {

Json json_value(const Problem& problem, const Quantity& quantity, int figures) {
  Json value;
  const std::size_t digits = digit_estimate(quantity.number);
  const bool too_long = digits > kMostWrittenDigits;
  value["exact"] = too_long ? Json(nullptr) : Json(quantity.number.to_string());
  value["unit"] = symbol(quantity.unit, Letters::ascii);
  if (quantity.number.is_symbolic()) {
    value["rounded"] = nullptr;
    value["symbols"] = symbols_of(quantity.number);
    if (const auto plain = with_values(problem, quantity)) {
      value["put_in"] = json_value(problem, *plain, figures);
    }
  } else {
    value["rounded"] = round_to_figures(quantity.number, figures);
  }
  if (too_long) value["why"] = "a number of " + digits_text(quantity.number);
  return value;
}

Json json_value(const Problem& problem, const Reading& reading, int figures) {
  if (reading.value) return json_value(problem, *reading.value, figures);
  Json value;
  value["exact"] = nullptr;
  value["why"] = why_undetermined(reading.why);
  return value;
}

}  // namespace ohmfold::views
