// Decides from the top down what lies and what stands, then measures from the bottom up.
#include "drawing/boxes.h"

#include <algorithm>

#include "drawing/bridge.h"
#include "drawing/placement.h"

namespace ohmfold::drawing {

namespace {

constexpr int kPhantom = kCell / 2;  ///< the height of a gap below a loose end
constexpr int kMostLying = 4;        ///< parts in a row above or below
constexpr std::size_t kShortChain = 4;
constexpr std::size_t kLongestLoop = 12;

class Arranging {
 public:
  Arranging(std::vector<Shape>& shapes, const DrawnGraph& graph, const std::vector<int>& heights,
            bool slanted)
      : shapes_(shapes), graph_(graph), heights_(heights), slanted_(slanted) {
    made_.boxes.resize(shapes.size());
    made_.cores.resize(shapes.size());
    outer_above_.resize(shapes.size(), false);
    outer_below_.resize(shapes.size(), false);
    in_ladder_.resize(shapes.size(), false);
  }

  Arrangement run() {
    find_joined();
    decide();
    for (std::size_t i = shapes_.size(); i-- > 0;) measure(i);
    const std::vector<std::uint32_t> beside = beside_root(shapes_);
    made_.width = columns(beside, made_.boxes, kCell).width;
    made_.height = kCell;
    for (const std::uint32_t child : beside) {
      made_.height = std::max(made_.height, made_.boxes[child].height);
    }
    return std::move(made_);
  }

 private:
  [[nodiscard]] bool is_part(std::uint32_t shape) const {
    return shapes_[shape].kind == ShapeKind::edge &&
           graph_.edges[shapes_[shape].edge].kind == EdgeKind::part;
  }
  [[nodiscard]] bool is_single(std::uint32_t shape) const {
    return shapes_[shape].kind == ShapeKind::edge;
  }

  void find_joined() {
    for (std::size_t i = shapes_.size(); i-- > 0;) {
      const Shape& shape = shapes_[i];
      BoxOf& box = made_.boxes[i];
      switch (shape.kind) {
        case ShapeKind::edge:
          box.top_joined = graph_.edges[shape.edge].kind != EdgeKind::phantom;
          box.bottom_joined = box.top_joined;
          break;
        case ShapeKind::series:
          box.top_joined = made_.boxes[shape.children.front()].top_joined;
          box.bottom_joined = made_.boxes[shape.children.back()].bottom_joined;
          break;
        case ShapeKind::parallel:
          box.top_joined = false;
          box.bottom_joined = false;
          for (const std::uint32_t child : shape.children) {
            box.top_joined = box.top_joined || made_.boxes[child].top_joined;
            box.bottom_joined = box.bottom_joined || made_.boxes[child].bottom_joined;
          }
          break;
        case ShapeKind::core:
          break;
      }
    }
  }

  /// Which shapes have the outermost wires above and below them, and what lies along these.
  void decide() {
    outer_above_[0] = true;
    outer_below_[0] = true;
    if (shapes_[0].kind == ShapeKind::series) lay_along(0);
    for (std::uint32_t i = 0; i < shapes_.size(); ++i) {
      if (shapes_[i].kind == ShapeKind::parallel) order(i);
    }
  }

  /// Loose ends stand to the right of what is joined at both ends. A series with lying parts comes
  /// last, and only where all others are single parts: like stands beside like.
  void order(std::uint32_t number) {
    std::vector<std::uint32_t>& children = shapes_[number].children;
    std::stable_partition(children.begin(), children.end(), [&](std::uint32_t child) {
      return made_.boxes[child].top_joined && made_.boxes[child].bottom_joined;
    });
    if (!outer_above_[number] && !outer_below_[number]) return;
    auto wide = children.end();
    for (auto at = children.begin(); at != children.end(); ++at) {
      const BoxOf& box = made_.boxes[*at];
      if (is_single(*at) || !box.top_joined || !box.bottom_joined) continue;
      if (wide != children.end()) return;
      wide = at;
    }
    if (wide == children.end() || shapes_[*wide].kind != ShapeKind::series) return;
    const std::uint32_t series = *wide;
    std::rotate(wide, wide + 1, children.end());
    outer_above_[series] = outer_above_[number];
    outer_below_[series] = outer_below_[number];
    in_ladder_[series] = in_ladder_[number];
    lay_along(series);
  }

  void lay_along(std::uint32_t number) {
    const std::vector<std::uint32_t>& children = shapes_[number].children;
    BoxOf& box = made_.boxes[number];
    if (!box.top_joined || !box.bottom_joined) return;
    const auto wide = std::find_if(children.begin(), children.end(),
                                   [&](std::uint32_t child) { return !is_part(child); });
    if (wide == children.end()) {
      if (number == 0) close_loop(box, children.size());
      if (in_ladder_[number]) end_ladder(number, children.size());
      return;
    }
    const auto above = static_cast<int>(wide - children.begin());
    const auto last = std::find_if(children.rbegin(), children.rend(),
                                   [&](std::uint32_t child) { return !is_part(child); });
    const auto below = static_cast<int>(last - children.rbegin());
    if (outer_above_[number]) box.lying_above = std::min(above, kMostLying);
    if (outer_below_[number]) box.lying_below = std::min(below, kMostLying);
    if (box.lying_above == above) outer_above_[*wide] = outer_above_[number];
    in_ladder_[*wide] = box.lying_above > 0;
    if (box.lying_below == below) outer_below_[*last] = outer_below_[number];
  }

  /// The last rung of a ladder stands below its rail, like those before it.
  void end_ladder(std::uint32_t number, std::size_t count) {
    BoxOf& box = made_.boxes[number];
    box.lying_above = outer_above_[number] ? 1 : 0;
    box.lying_below = outer_below_[number] && count > 2 ? 1 : 0;
  }

  /// A plain loop of some parts goes round in a rectangle.
  static void close_loop(BoxOf& box, std::size_t count) {
    if (count <= kShortChain || count > kLongestLoop) return;
    const int upright = (static_cast<int>(count) + 2) / 3;
    box.lying_above = (static_cast<int>(count) - upright + 1) / 2;
    box.lying_below = static_cast<int>(count) - upright - box.lying_above;
  }

  void measure(std::size_t number) {
    const Shape& shape = shapes_[number];
    BoxOf& box = made_.boxes[number];
    switch (shape.kind) {
      case ShapeKind::edge:
        box.height = box.top_joined ? kCell : kPhantom;
        return;
      case ShapeKind::series:
        return measure_series(shape, box);
      case ShapeKind::parallel:
        box.width = columns(shape.children, made_.boxes, 0).width;
        for (const std::uint32_t child : shape.children) {
          box.height = std::max(box.height, made_.boxes[child].height);
        }
        return;
      case ShapeKind::core:
        made_.cores[number] = plan_core(core_of(shape), slanted_);
        box.width = made_.cores[number].width;
        box.height = made_.cores[number].height;
        return;
    }
  }

  void measure_series(const Shape& shape, BoxOf& box) const {
    const auto above = static_cast<std::size_t>(box.lying_above);
    const std::size_t end = shape.children.size() - static_cast<std::size_t>(box.lying_below);
    int widest = 0;
    for (std::size_t i = above; i < end; ++i) {
      const BoxOf& child = made_.boxes[shape.children[i]];
      widest = std::max(widest, child.width);
      box.height += child.height;
    }
    box.width = reach(box) + widest;
  }

  [[nodiscard]] Core core_of(const Shape& shape) const {
    Core core;
    core.corners = static_cast<std::uint32_t>(shape.corners.size());
    for (std::size_t i = 0; i < shape.links.size(); ++i) {
      const BoxOf& box = made_.boxes[shape.children[i]];
      core.edges.push_back({shape.links[i].from, shape.links[i].to, box.width, box.height,
                            is_single(shape.children[i])});
    }
    if (heights_.empty()) return core;
    for (const std::uint32_t vertex : shape.corners) core.heights.push_back(heights_[vertex]);
    return core;
  }

  std::vector<Shape>& shapes_;
  const DrawnGraph& graph_;
  const std::vector<int>& heights_;
  const bool slanted_;
  Arrangement made_;
  std::vector<bool> outer_above_, outer_below_;  // by shape: are its outermost wires the frame's?
  std::vector<bool> in_ladder_;                  // by shape: is it fed by a part that lies?
};

}  // namespace

int reach(const BoxOf& box) {
  return kCell * std::max(box.lying_above, box.lying_below);
}

Columns columns(const std::vector<std::uint32_t>& children, const std::vector<BoxOf>& boxes,
                int first) {
  Columns made;
  int next = first;
  for (const std::uint32_t child : children) {
    const BoxOf& box = boxes[child];
    const bool lies = box.lying_above + box.lying_below > 0;
    made.at.push_back(lies ? next - kCell : next);
    made.width = made.at.back() + box.width;
    next = made.width + kCell;
  }
  return made;
}

std::vector<std::uint32_t> beside_root(const std::vector<Shape>& shapes) {
  if (shapes.front().kind == ShapeKind::parallel) return shapes.front().children;
  return {0};
}

Arrangement arrange(std::vector<Shape>& shapes, const DrawnGraph& graph,
                    const std::vector<int>& heights, bool slanted) {
  return Arranging(shapes, graph, heights, slanted).run();
}

}  // namespace ohmfold::drawing
