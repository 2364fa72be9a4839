// The catalogue of known errors, worked out exactly for the place where a wrong number stands.
#pragma once

#include <optional>
#include <vector>

#include "coach/case_book.h"
#include "ohmfold/known_error.h"

namespace ohmfold {

/// A combination with a value that is wrong; its operands with the person's own values.
struct CombinationPlace {
  const CaseBook& book;
  Joining how;
  const std::vector<PartId>& operands;
  const WrittenValue& written;
  std::optional<Number> right;  ///< the value that it should have been: true, or on their numbers
};

/// A value that is wrong, of what a person claims one.
struct TargetPlace {
  const CaseBook& book;
  const Target& target;
  const WrittenValue& written;
  std::optional<Number> right;
};

/// Errors that a refused step shows by itself, from the facts against it. `network`: where it was
/// judged.
[[nodiscard]] std::vector<Diagnosis> errors_of_step(const Network& network, Joining how,
                                                    const std::vector<PartId>& operands,
                                                    const std::vector<Fact>& why);
/// What a part that carries nothing was taken for, from the facts that it was left out by.
[[nodiscard]] std::vector<Diagnosis> errors_of_left_out(PartId part, const std::vector<Fact>& why);

/// Every error that gives exactly the written number; none that does not, and none that gives the
/// right one. Numbers of one figure are blamed on nothing.
[[nodiscard]] std::vector<Diagnosis> errors_in(const CombinationPlace& place);
[[nodiscard]] std::vector<Diagnosis> errors_in(const TargetPlace& place);

/// The values of the transformations between delta and star, by part made.
struct RewritePlace {
  const CaseBook& book;
  RuleName rule;
  const std::vector<PartId>& operands;  ///< the k-th lies opposite the k-th that comes
  std::size_t index;                    ///< of the one that comes
  const WrittenValue& written;
  std::optional<Number> right;
};
[[nodiscard]] std::vector<Diagnosis> errors_in(const RewritePlace& place);

}  // namespace ohmfold
