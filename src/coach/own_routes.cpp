// Ways from a person's own numbers to a value.
#include "coach/own_routes.h"

#include "coach/route_arithmetic.h"
#include "coach/tracing.h"

namespace ohmfold {

std::optional<Route> combined_route(const CaseBook& book, Joining how,
                                    const std::vector<PartId>& operands) {
  Route sum = exactly(0);
  for (const PartId operand : operands) {
    const auto own = book.own_resistance(operand);
    if (!own) return std::nullopt;
    if (how == Joining::series) {
      sum = sum + route_of(*own);
      continue;
    }
    const auto inverse = quotient(exactly(1), route_of(*own));
    if (!inverse) return std::nullopt;
    sum = sum + *inverse;
  }
  if (how == Joining::series) return sum;
  return quotient(exactly(1), sum);
}

std::vector<Route> own_routes(const CaseBook& book, const Target& target) {
  return Tracing(book).all(target);
}

}  // namespace ohmfold
