// A person's own network, solved with their own values.
#pragma once

#include <optional>
#include <vector>

#include "coach/case_book.h"
#include "coach/value_judge.h"

namespace ohmfold {

/// What flows in the person's own network as they have left it, and in the parts inside of its
/// parts; sizes only. Missing for parts that it says nothing of.
struct OwnSolution {
  std::vector<std::optional<Number>> current, voltage;  ///< by PartId
  std::vector<std::size_t> claims;                      ///< whose values it rests on

  /// Nothing where the network is large, a value is missing, or there is nothing to solve.
  [[nodiscard]] static std::optional<OwnSolution> find(const CaseBook& book);
};

}  // namespace ohmfold
