// Following the redraws of one placement, and finding the scale that has room for all of them.
#include "drawing/stretches.h"

#include <algorithm>
#include <limits>

#include "drawing/drawn_graph.h"
#include "drawing/layout.h"
#include "drawing/measures.h"
#include "drawing/slant.h"
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
    for (const PlacedPart& placed : first.parts) measure(placed);
    for (const PlacedPoint& placed : first.points) measure(placed);
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
      if (!is_between_stages(steps_, at)) continue;
      now.tidy();
      if (is_small_) tried_.push_back(now);
    }
    made_.end = at + 1;
  }

  /// What wires hid is seen once they are gone.
  [[nodiscard]] bool wants_new_layout(std::size_t after) const {
    if (was_series_parallel_ || !is_clean_up(steps_[after - 1].rule)) return false;
    if (after < steps_.size() && is_clean_up(steps_[after].rule)) return false;
    return is_series_parallel(replay(look_.reduction, after), look_.reduction.source);
  }

  void measure(const PlacedPart& placed) {
    const Measures measures(look_.sizes);
    const std::vector<LabelLine>& lines = look_.caption(placed.part);
    const Spot along = placed.path[placed.seat + 1] - placed.path[placed.seat];
    if (!is_upright(along) && !is_lying(along)) room_.slanted = true;
    if (lines.empty()) return;
    room_.width = std::max(room_.width, measures.width(lines));
    room_.height = std::max(room_.height, measures.height(lines));
  }

  void measure(const PlacedPoint& placed) {
    const int width = Measures(look_.sizes).width(look_.caption(placed.point));
    room_.name_width = std::max(room_.name_width, width);
  }

  /// The closest scale at which every label of every drawing has room.
  void find_scale() {
    const Scale close = close_scale(room_, look_.sizes);
    const Scale wide = wide_scale(room_, look_.sizes);
    constexpr int kTries = 5;
    for (int i = 0; i <= kTries; ++i) {
      made_.scale = close;
      made_.scale.x += even((wide.x - close.x) * i / kTries);
      made_.scale.y += even((wide.y - close.y) * i / kTries);
      if (room_.slanted) made_.scale.x = made_.scale.y = std::max(made_.scale.x, made_.scale.y);
      if (has_room()) break;
    }
    const int slack = is_small_ ? 0 : room_.width;
    made_.scale.origin = Spot{look_.sizes.margin + slack, look_.sizes.margin + slack} - least_;
  }

  [[nodiscard]] int even(int number) const {
    return look_.sizes.slanted ? number + number % 2 : number;
  }

  /// Finds out, and how far up and left the drawings reach.
  bool has_room() {
    bool all = true;
    least_ = {std::numeric_limits<int>::max(), std::numeric_limits<int>::max()};
    for (const Redrawing& one : tried_) {
      Schematic schematic;
      all = labelled(look_, one, made_.scale, false, schematic).empty() && all;
      const Box extent = extent_of(schematic, look_.sizes, look_.framed);
      least_ = {std::min(least_.x, extent.min.x), std::min(least_.y, extent.min.y)};
    }
    return all;
  }

  const Look& look_;
  const StepLog& steps_;
  StretchOfRedraws made_;
  LabelRoom room_;
  std::vector<Redrawing> tried_;
  Spot least_;
  bool is_small_ = true;
  bool was_series_parallel_ = false;
};

}  // namespace

bool is_between_stages(const StepLog& steps, std::size_t after) {
  return after == 0 || after == steps.size() || steps[after - 1].stage != steps[after].stage;
}

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
