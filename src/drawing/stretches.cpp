// Following the redraws of one placement, and finding the scale that has room for all of them.
#include "drawing/stretches.h"

#include <algorithm>
#include <limits>

#include "drawing/drawn_graph.h"
#include "drawing/layout.h"
#include "drawing/measures.h"
#include "drawing/slant.h"
#include "drawing/stages.h"
#include "drawing/structure.h"

namespace ohmfold::drawing {

namespace {

/// With more parts than this, labels are tried in the first drawing of a stretch only.
constexpr std::size_t kMostTried = 60;

bool is_clean_up(RuleName rule) {
  return rule == RuleName::gap || rule == RuleName::ideal_wire || rule == RuleName::shorted ||
         rule == RuleName::dead_end;
}

/// Has a drawing of it, seen from the root, nothing but series and parallel?
bool is_series_parallel(const Network& network, PartId root) {
  const DrawnGraph graph = drawn_graph(network, root);
  if (graph.edges.empty()) return true;
  const std::vector<Shape> shapes = structure(graph);
  return std::none_of(shapes.begin(), shapes.end(),
                      [](const Shape& shape) { return shape.kind == ShapeKind::core; });
}

/// Round everything that is placed.
Box grid_of(const Placement& placement) {
  std::vector<Spot> spots{{}};
  for (const PlacedPart& placed : placement.parts) {
    spots.insert(spots.end(), placed.path.begin(), placed.path.end());
  }
  for (const PlacedPoint& placed : placement.points) {
    spots.push_back(placed.at);
    for (const Segment& wire : placed.wires) spots.insert(spots.end(), {wire.from, wire.to});
  }
  return box_of(spots);
}

class Following {
 public:
  Following(const Look& look, const std::vector<int>& heights, std::size_t begin)
      : look_(look), steps_(look.reduction.steps) {
    made_.begin = begin;
    const Network network = replay(look.reduction, begin);
    LayoutOptions options;
    options.root = look.reduction.source;
    options.heights = heights;
    options.slanted = look.sizes.slanted;
    // A redraw that is laid out anew shows another network than the file had in mind.
    if (begin == 0) options.hints = look.problem.places;
    made_.start.lay(network, lay_out(network, options));
    made_.start.tidy();
    was_series_parallel_ = is_series_parallel(network, options.root);
  }

  StretchOfRedraws run() {
    follow();
    find_scale();
    return std::move(made_);
  }

 private:
  void follow() {
    Redrawing now = made_.start;
    const Placement first = now.placement();
    made_.scale = Scale(grid_of(first), least_pitch(), look_.sizes.slanted);
    for (const PlacedPart& placed : first.parts) {
      for (std::size_t i = 0; i + 1 < placed.path.size(); ++i) {
        keep_angle({placed.path[i], placed.path[i + 1]});
      }
    }
    for (const PlacedPoint& placed : first.points) {
      for (const Segment& wire : placed.wires) keep_angle(wire);
    }
    for (const PlacedPart& placed : first.parts) measure(placed);
    is_small_ = first.parts.size() <= kMostTried;
    tried_.push_back(made_.start);
    std::size_t at = made_.begin;
    while (at < steps_.size()) {
      const Step step = steps_[at];
      if (!now.apply(step)) break;
      ++at;
      if (wants_new_layout(at)) {
        made_.end = at;
        return;
      }
      if (step.makes.exists() && now.line(step.makes) != nullptr) measure(*now.line(step.makes));
      // Of a large drawing only the first figure is tried, and tidying each costs all of it.
      if (!is_small_) continue;
      if (is_between_stages(steps_, at)) now.tidy();
      tried_.push_back(now);
      tried_.back().tidy();
    }
    made_.end = at + 1;
  }

  /// What wires hid is seen once they are gone.
  [[nodiscard]] bool wants_new_layout(std::size_t after) const {
    if (was_series_parallel_ || !is_clean_up(steps_[after - 1].rule)) return false;
    if (after < steps_.size() && is_clean_up(steps_[after].rule)) return false;
    return is_series_parallel(replay(look_.reduction, after), look_.reduction.source);
  }

  /// A line beside a symbol leaves its frame free.
  [[nodiscard]] int least_pitch() const {
    const Measures measures(look_.sizes);
    return even((measures.frame_across() + measures.clearance() + 1) / 2);
  }

  void keep_angle(const Segment& segment) {
    if (is_slanted(segment.to - segment.from)) made_.scale.share(segment);
  }

  /// Widens the cell of a part for its symbol, arrow and label.
  void measure(const PlacedPart& placed) {
    const Measures measures(look_.sizes);
    const std::vector<LabelLine>& lines = look_.caption(placed.part);
    const Segment segment{placed.path[placed.seat], placed.path[placed.seat + 1]};
    const Spot along = segment.to - segment.from;
    const Spot begin{(segment.from.x + segment.to.x - kCell) / 2,
                     (segment.from.y + segment.to.y - kCell) / 2};
    const int apart = 2 * measures.clearance();
    const int length = 2 * (measures.arrow_tip(along) + apart);
    const int width = lines.empty() ? 0 : measures.width(lines);
    const int height = lines.empty() ? 0 : measures.height(lines);
    widest_ = std::max(widest_, width);
    Scale& scale = made_.scale;
    if (is_lying(along)) {
      scale.widen_columns(begin.x, begin.x + kCell, std::max(length, width + apart));
    } else if (is_upright(along)) {
      const int beside =
          measures.label_offset() + width + look_.sizes.gap + apart + measures.frame_across();
      scale.widen_rows(begin.y, begin.y + kCell, std::max(length, height + apart));
      if (width > 0) scale.widen_columns(begin.x + kCell / 2, begin.x + 3 * kCell / 2, beside);
    } else {
      // At 45 degrees a line is longer than its cell, by about 7 / 5.
      scale.widen_columns(begin.x, begin.x + kCell, 5 * length / 7);
    }
  }

  /// Widens columns and rows where labels find no room, a little each time, until all drawings have
  /// room for all labels.
  void find_scale() {
    const int tries = is_small_ ? 24 : 6;
    for (int i = 0; i < tries; ++i) {
      made_.scale.settle();
      const std::vector<Crowded> crowded = try_labels();
      if (crowded.empty()) break;
      for (const Crowded& one : crowded) make_room(one, i >= tries / 3);
    }
    made_.scale.settle();
    const int slack = is_small_ ? 0 : widest_;
    made_.scale.origin = Spot{look_.sizes.margin + slack, look_.sizes.margin + slack} - least_;
  }

  void make_room(const Crowded& one, bool on_all_sides) {
    const Spot line = made_.scale.lines_at(one.at);
    constexpr int kSide = kCell / 2;
    for (const int side : {-1, 1}) {
      const int from = side < 0 ? -kSide : 0;
      if (on_all_sides || one.side.x == side) widen_columns(line.x + from, one.room.x);
      if (on_all_sides || one.side.y == side) widen_rows(line.y + from, one.room.y);
    }
  }

  /// Half a cell from this grid line on, a little towards the room that is wanted, or past it.
  void widen_columns(int from, int room) {
    const int to = from + kCell / 2;
    const int there = made_.scale({to, 0}).x - made_.scale({from, 0}).x;
    made_.scale.widen_columns(from, to, there + std::max({2, (room - there) / 4, room / 16}));
  }
  void widen_rows(int from, int room) {
    const int to = from + kCell / 2;
    const int there = made_.scale({0, to}).y - made_.scale({0, from}).y;
    made_.scale.widen_rows(from, to, there + std::max({2, (room - there) / 4, room / 16}));
  }

  [[nodiscard]] int even(int number) const {
    return look_.sizes.slanted ? number + number % 2 : number;
  }

  /// The labels without a place in any of the drawings. Finds out how far up and left these reach.
  std::vector<Crowded> try_labels() {
    std::vector<Crowded> all;
    least_ = {std::numeric_limits<int>::max(), std::numeric_limits<int>::max()};
    for (const Redrawing& one : tried_) {
      Schematic schematic;
      const std::vector<Crowded> crowded = labelled(look_, one, made_.scale, false, schematic);
      all.insert(all.end(), crowded.begin(), crowded.end());
      const Box extent = extent_of(schematic, look_.sizes, look_.framed);
      least_ = {std::min(least_.x, extent.min.x), std::min(least_.y, extent.min.y)};
    }
    return all;
  }

  const Look& look_;
  const StepLog& steps_;
  StretchOfRedraws made_;
  int widest_ = 0;  ///< of the labels
  std::vector<Redrawing> tried_;
  Spot least_;
  bool is_small_ = true;
  bool was_series_parallel_ = false;
};

}  // namespace

StretchOfRedraws stretch_from(const Look& look, const std::vector<int>& heights,
                              std::size_t begin) {
  return Following(look, heights, begin).run();
}

std::vector<Crowded> labelled(const Look& look, const Redrawing& redrawing, const Scale& scale,
                              bool bounded, Schematic& schematic) {
  LabelTexts texts;
  schematic = drawn(look, redrawing, scale, texts);
  std::optional<Spot> least;
  if (bounded) least = Spot{look.sizes.margin, look.sizes.margin};
  return put_labels(schematic, texts, look.sizes, look.framed, least);
}

}  // namespace ohmfold::drawing
