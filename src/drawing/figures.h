// The drawings of one reduction: the circuit as its case sets it, and every redraw, with each point
// at the same place in all of them as far as that can be.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "drawing/schematic.h"
#include "ohmfold/trace.h"

namespace ohmfold::drawing {

/// What stands beside the parts and points; made by whoever knows the words.
struct Captions {
  std::vector<std::vector<LabelLine>> parts;   ///< by PartId, made ones included; may be empty
  std::vector<std::vector<LabelLine>> points;  ///< by PointId
  /// By PartId: the sign of its current from first to second point, 1, 0 or -1; empty: no arrows.
  std::vector<int> currents;
};

struct FigureOptions {
  std::vector<int> heights;  ///< as in LayoutOptions
  bool marks = true;         ///< mark what comes next and what has just come?
};

/// How much stayed where it was.
struct Stability {
  std::size_t kept = 0;     ///< points of a redraw that lie where they lay before
  std::size_t moved = 0;    ///< points that lie elsewhere
  std::size_t redrawn = 0;  ///< redraws that were laid out anew
};

/// Refers to problem and reduction, which must outlive it.
class Figures {
 public:
  Figures(const Problem& problem, const Reduction& reduction, Captions captions, const Sizes& sizes,
          FigureOptions options);
  ~Figures();
  Figures(const Figures&) = delete;
  Figures& operator=(const Figures&) = delete;

  /// The circuit after so many steps; 0: as the case sets it. Marks what the steps of the next
  /// stage take and what the steps of the last stage made. Requires steps <= those of the
  /// reduction.
  [[nodiscard]] Schematic after(std::size_t steps) const;

  /// From each stage's drawing to the next.
  [[nodiscard]] Stability stability() const;

 private:
  struct State;
  std::unique_ptr<State> state_;
};

}  // namespace ohmfold::drawing
