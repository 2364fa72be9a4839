// The current of one part, along its own path through the steps, without those of the others.
#pragma once

#include <optional>

#include "ohmfold/trace.h"

namespace ohmfold {

/// For a reduction that came down to one part.
///
/// With every resistance kept as a pair P/Q that is not in lowest terms, the way back needs no
/// division: a part carries E k Q / (P0 + r Q0), or J k Q / Q0 where a source of current feeds it,
/// where P0/Q0 is the whole network, k is 1 for it, k grows by Q/Qa into each part a of a series
/// step and by P/Pa into each part of a parallel step (whole numbers, both).
class PathBack {
 public:
  /// Requires `leads`; keeps a reference. Cost: one walk over the steps.
  explicit PathBack(const Reduction& reduction);
  /// Did it come down to one part, seen from a battery or a source of current, by series and
  /// parallel alone?
  [[nodiscard]] static bool leads(const Reduction& reduction);

  /// The current through a part in ampere, not in lowest terms; nothing for an ideal wire, whose
  /// current follows from others. Cost: the part's path; where values were let go (see Reduction),
  /// also that of working them out again.
  [[nodiscard]] std::optional<Ratio> current(PartId part) const;

 private:
  [[nodiscard]] Ratio resistance(PartId part) const;
  [[nodiscard]] Ratio driven() const;
  [[nodiscard]] cln::cl_I cofactor(const Step& step, PartId part) const;

  const Reduction& reduction_;
  std::vector<std::uint32_t> taken_by_;  ///< by part: index of the step that took it
  std::vector<std::uint32_t> made_by_;   ///< by part made, from the first: index of its step
};

}  // namespace ohmfold
