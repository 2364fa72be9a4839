// The figures of a worked solution: which of them there are, and where they stand.
#pragma once

#include <cstddef>
#include <optional>

#include "views/chapter.h"
#include "views/pictures.h"

namespace ohmfold::views {

/// The parts that live after so many steps.
[[nodiscard]] std::size_t alive_after(const Reduction& reduction, std::size_t steps);

/// The figures between the steps of one reduction. Refers to scene and trace.
class Redrawn {
 public:
  Redrawn(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options);

  /// The network before the first step, with the parts of that marked.
  void add_start(Document& document) const;
  /// Is there a figure after so many steps, the last of its stage or not?
  [[nodiscard]] bool is_shown(std::size_t steps, bool ends_stage) const;
  /// After so many steps. Requires that it is shown.
  void add_after(std::size_t steps, Document& document) const;

 private:
  const Scene& scene_;
  Redraws redraws_;
  std::optional<Pictures> pictures_;
};

/// The circuit as the problem states it, as in its first case; values that have to be found are not
/// in it.
void add_stated_figure(const Trace& trace, int figures, const OutlineOptions& options,
                       Document& document);

/// The circuit as a case sets it, where no other figure of the case shows that.
void add_case_figure(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                     Document& document);

/// The circuit with every current and every potential.
void add_annotated_figure(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                          Document& document);

}  // namespace ohmfold::views
