// The figures of a reduction: labels, captions and descriptions for the drawings of it.
#pragma once

#include "drawing/figures.h"
#include "ohmfold/handout.h"
#include "views/chapter.h"

namespace ohmfold::views {

struct PictureOptions {
  Notation notation = Notation::units;
  bool values = true;
  bool currents = false;
  bool potentials = false;
  bool marks = true;
};

/// With more living parts than this nothing is drawn within a document.
inline constexpr std::size_t kMostDrawn = 40;

/// Refers to all that it is made from, which must outlive it.
class Pictures {
 public:
  Pictures(const Scene& scene, const CaseTrace& trace, const drawing::Sizes& sizes,
           const PictureOptions& options);

  /// The circuit after so many steps of the scene's reduction, with a caption ("The circuit as
  /// stated", "Redraw 2: …"), a title and a description in words: what is joined to what, source
  /// first, then part by part; never how parts combine. Requires steps <= those of the reduction.
  [[nodiscard]] Figure after(std::size_t steps) const;

 private:
  const Scene& scene_;
  PictureOptions options_;
  std::string case_name_;  ///< of several cases
  drawing::Captions captions_;
  drawing::Figures figures_;
};

}  // namespace ohmfold::views
