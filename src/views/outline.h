// The worked solution as a document: what stands in it and in which order.
#pragma once

#include <cstddef>

#include "ohmfold/handout.h"
#include "ohmfold/trace.h"
#include "views/document.h"

namespace ohmfold::views {

struct OutlineOptions {
  int figures = 0;  ///< significant figures; 0: as the problem says
  Content content = Content::solution;
  Redraws redraws = Redraws::none;
  Notation notation = Notation::units;
  /// What figures are measured in; none: there are no figures at all.
  const drawing::Sizes* sizes = nullptr;
  std::size_t number = 0;  ///< of the problem among several; 0: it is the only one
};

/// Built once from the trace; every writer renders the same document. Cost: linear in the trace,
/// though long lists are shown in part only, and large circuits are not drawn.
///
/// All that tells a result of the solution stands in a step (document.h); the statement, the plan,
/// headings and the reasons for the choice of a method stand outside.
[[nodiscard]] Document outline(const Trace& trace, const OutlineOptions& options);

}  // namespace ohmfold::views
