// Is a written value right: in itself, on the person's own numbers, or as far as rounding goes?
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "coach/case_book.h"

namespace ohmfold {

/// One way to the value from the person's own numbers.
struct Route {
  Number value;
  Range range;                      ///< of the result, for all that its operands can stand for
  std::vector<std::size_t> claims;  ///< whose values it uses
};

/// What is to be judged.
struct ValueQuestion {
  const WrittenValue& written;
  std::optional<Number> right;  ///< the true value, where there is one
  bool any_sign = false;        ///< the direction is nobody's choice
  /// All ways to it from what the person has; asked for only where the value is not right.
  std::function<std::vector<Route>()> routes;
};

struct ValueFinding {
  ValueVerdict verdict = ValueVerdict::none;
  std::optional<Number> own;           ///< where the verdict rests on the person's own numbers
  std::vector<std::size_t> caused_by;  ///< claims that it comes from
  std::vector<Route> routes;           ///< those looked at
};

/// Judges in this order: the true value; the person's own numbers; what rounding explains; a value
/// cut off; wrong. A decimal is blamed on rounding only where each number that it was found from
/// has two figures or more and the result is narrower than a twentieth of itself.
[[nodiscard]] ValueFinding judge_value(const CaseBook& book, const ValueQuestion& question);

/// Where a right value does not follow from the person's own numbers, since one of these is wrong:
/// the wrong claims that its way leads through. Empty where some way from right numbers leads to
/// it, or the wrong ones give it, too.
[[nodiscard]] std::vector<std::size_t> wrong_claims_passed(const CaseBook& book,
                                                           const WrittenValue& written,
                                                           const std::vector<Route>& routes);

/// Is it neither wrong nor beyond judging?
[[nodiscard]] constexpr bool may_stand(ValueVerdict verdict) {
  return verdict != ValueVerdict::wrong && verdict != ValueVerdict::cannot_tell;
}

/// How far others can rely on a value with this verdict.
[[nodiscard]] Quality quality_of(ValueVerdict verdict);

}  // namespace ohmfold
