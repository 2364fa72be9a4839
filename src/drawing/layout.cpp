// Puts the shapes of a network into their places, from the frame inwards.
#include "drawing/layout.h"

#include <algorithm>
#include <utility>

#include "drawing/boxes.h"
#include "drawing/canvas.h"
#include "drawing/hints.h"

namespace ohmfold::drawing {

namespace {

/// Where a shape goes: a stretch of a column. What it draws is counted from the port at its own
/// top, which lies below where the stretch is `turned`.
struct Stretch {
  std::uint32_t shape = 0;
  Spot at;         ///< the upper end
  int height = 0;  ///< at least that of its box
  bool turned = false;

  [[nodiscard]] Spot spot(int x, int down) const {
    return {at.x + x, turned ? at.y + height - down : at.y + down};
  }
  [[nodiscard]] Spot spot(Spot local) const { return spot(local.x, local.y); }
  /// A part of it for another shape, with its own top at `down`.
  [[nodiscard]] Stretch part(std::uint32_t other, int x, int down, int part_height,
                             bool turn = false) const {
    const int upper = turned ? height - down - part_height : down;
    return {other, {at.x + x, at.y + upper}, part_height, turned != turn};
  }
};

class Placing {
 public:
  Placing(const Network& network, const DrawnGraph& graph, const std::vector<Shape>& shapes,
          const Arrangement& made)
      : network_(network), graph_(graph), shapes_(shapes), made_(made), canvas_(network, graph) {}

  Placement run() {
    place_root();
    const std::vector<std::uint32_t> beside = beside_root(shapes_);
    place_beside(beside, columns(beside, made_.boxes, kCell), {0, {0, 0}, made_.height, false},
                 graph_.top, graph_.bottom);
    while (!open_.empty()) {
      const Stretch next = open_.back();
      open_.pop_back();
      place(next);
    }
    return std::move(canvas_).placement();
  }

 private:
  [[nodiscard]] const BoxOf& box(std::uint32_t shape) const { return made_.boxes[shape]; }

  void place_root() {
    const Spot above{0, 0};
    const Spot below{0, made_.height};
    canvas_.name(graph_.top, above);
    canvas_.name(graph_.bottom, below);
    if (network_.kind(graph_.root) == ElementKind::port) {
      canvas_.terminal(graph_.top, above);
      canvas_.terminal(graph_.bottom, below);
      return;
    }
    canvas_.part(graph_.root, graph_.first_on_top ? Path{above, below} : Path{below, above});
  }

  /// Shapes side by side, with the wires above and below them.
  void place_beside(const std::vector<std::uint32_t>& children, const Columns& columns,
                    const Stretch& stretch, std::uint32_t top, std::uint32_t bottom) {
    int above = 0;
    int below = 0;
    for (std::size_t i = 0; i < children.size(); ++i) {
      const BoxOf& child = box(children[i]);
      const int x = columns.at[i];
      if (child.top_joined) above = std::max(above, x);
      if (child.bottom_joined) {
        below =
            std::max(below, x + (is_lying(child) ? reach(child) - kCell * child.lying_below : 0));
      }
      open_.push_back(stretch.part(children[i], x, 0, stretch.height));
    }
    canvas_.wire(top, stretch.spot(0, 0), stretch.spot(above, 0));
    canvas_.wire(bottom, stretch.spot(0, stretch.height), stretch.spot(below, stretch.height));
  }

  [[nodiscard]] static bool is_lying(const BoxOf& one) {
    return one.lying_above + one.lying_below > 0;
  }

  void place(const Stretch& stretch) {
    const Shape& shape = shapes_[stretch.shape];
    switch (shape.kind) {
      case ShapeKind::edge: {
        Path line{stretch.spot(0, 0), stretch.spot(0, stretch.height)};
        if (shape.turned) std::swap(line.front(), line.back());
        canvas_.edge(shape.edge, std::move(line));
        return;
      }
      case ShapeKind::series:
        return place_series(stretch, shape);
      case ShapeKind::parallel:
        return place_beside(shape.children, columns(shape.children, made_.boxes, 0), stretch,
                            shape.top, shape.bottom);
      case ShapeKind::core:
        return place_core(stretch, shape, made_.cores[stretch.shape]);
    }
  }

  /// Parts that lie along the wire above, to the right.
  void lie_above(const Stretch& stretch, const Shape& shape) {
    const BoxOf& own = box(stretch.shape);
    std::uint32_t vertex = shape.top;
    for (int i = 0; i < own.lying_above; ++i) {
      vertex = lie(stretch, shape.children[static_cast<std::size_t>(i)], kCell * i, kCell, 0);
    }
    canvas_.wire(vertex, stretch.spot(kCell * own.lying_above, 0), stretch.spot(reach(own), 0));
  }

  /// Parts that lie along the wire below, back to the left. Their names are those of the points
  /// where they begin.
  void lie_below(const Stretch& stretch, const Shape& shape) {
    const BoxOf& own = box(stretch.shape);
    const std::size_t first = shape.children.size() - static_cast<std::size_t>(own.lying_below);
    for (int i = 0; i < own.lying_below; ++i) {
      const std::uint32_t child = shape.children[first + static_cast<std::size_t>(i)];
      const int x = reach(own) - kCell * i;
      if (i == 0) canvas_.name(shapes_[child].top, stretch.spot(x, stretch.height));
      lie(stretch, child, x, -kCell, stretch.height);
    }
  }

  /// One of them; gives the vertex at its end.
  std::uint32_t lie(const Stretch& stretch, std::uint32_t child, int x, int length, int down) {
    const Shape& part = shapes_[child];
    Path line{stretch.spot(x, down), stretch.spot(x + length, down)};
    canvas_.name(part.bottom, line.back());
    if (part.turned) std::swap(line.front(), line.back());
    canvas_.edge(part.edge, std::move(line));
    return part.bottom;
  }

  void place_series(const Stretch& stretch, const Shape& shape) {
    const BoxOf& own = box(stretch.shape);
    const int slack = stretch.height - own.height;
    // What ends loose hangs from where it is joined; all else stands in the middle.
    int down = !own.bottom_joined && own.top_joined   ? 0
               : !own.top_joined && own.bottom_joined ? slack
                                                      : slack / 2;
    if (is_lying(own)) {
      lie_above(stretch, shape);
      lie_below(stretch, shape);
    }
    const int x = reach(own);
    const std::size_t first = static_cast<std::size_t>(own.lying_above);
    const std::size_t end = shape.children.size() - static_cast<std::size_t>(own.lying_below);
    if (own.top_joined) {
      canvas_.wire(shapes_[shape.children[first]].top, stretch.spot(x, 0), stretch.spot(x, down));
    }
    for (std::size_t i = first; i < end; ++i) {
      const std::uint32_t child = shape.children[i];
      if (i > first) canvas_.name(shapes_[child].top, stretch.spot(x, down));
      open_.push_back(stretch.part(child, x, down, box(child).height));
      down += box(child).height;
    }
    if (own.bottom_joined) {
      canvas_.wire(shapes_[shape.children[end - 1]].bottom, stretch.spot(x, down),
                   stretch.spot(x, stretch.height));
    }
  }

  void place_core(const Stretch& stretch, const Shape& shape, const CorePlan& plan) {
    const int slack = stretch.height - plan.height;
    const Stretch own = stretch.part(stretch.shape, 0, slack / 2, plan.height);
    canvas_.wire(shape.top, stretch.spot(0, 0), own.spot(0, 0));
    canvas_.wire(shape.bottom, own.spot(0, plan.height), stretch.spot(0, stretch.height));
    for (std::size_t corner = 0; corner < plan.wires.size(); ++corner) {
      for (const Segment& wire : plan.wires[corner]) {
        canvas_.wire(shape.corners[corner], own.spot(wire.from), own.spot(wire.to));
      }
      canvas_.name(shape.corners[corner], own.spot(plan.at[corner]));
    }
    for (std::size_t i = 0; i < plan.edges.size(); ++i) {
      const EdgePlace& place = plan.edges[i];
      const std::uint32_t child = shape.children[i];
      if (place.line.empty()) {
        open_.push_back(own.part(child, place.top.x, place.top.y, box(child).height, place.turned));
      } else {
        place_line(own, shapes_[child], place);
      }
    }
  }

  /// A single part along a line of the core, which leads from the top of its shape.
  void place_line(const Stretch& stretch, const Shape& shape, const EdgePlace& place) {
    Path line;
    for (const Spot& corner : place.line) line.push_back(stretch.spot(corner));
    std::size_t seat = place.seat;
    if (shape.turned) {
      std::reverse(line.begin(), line.end());
      seat = line.size() - 2 - seat;
    }
    canvas_.edge(shape.edge, std::move(line), seat);
  }

  const Network& network_;
  const DrawnGraph& graph_;
  const std::vector<Shape>& shapes_;
  const Arrangement& made_;
  Canvas canvas_;
  std::vector<Stretch> open_;
};

/// The heights of the vertices, from those of the points.
std::vector<int> heights_by_vertex(const DrawnGraph& graph, const std::vector<int>& heights) {
  std::vector<int> by_vertex;
  if (heights.empty()) return by_vertex;
  for (const PointId point : graph.point_of) {
    if (point.index >= heights.size()) return {};
    by_vertex.push_back(heights[point.index]);
  }
  return by_vertex;
}

}  // namespace

Placement lay_out(const Network& network, const LayoutOptions& options) {
  const DrawnGraph graph = drawn_graph(network, options.root);
  if (!graph.root.exists()) return {};
  std::vector<Shape> shapes = structure(graph);
  const Arrangement made =
      arrange(shapes, graph, heights_by_vertex(graph, options.heights), options.slanted);
  Placement automatic = Placing(network, graph, shapes, made).run();
  if (options.hints.empty()) return automatic;
  std::optional<Placement> hinted = lay_out_by_hints(network, options, automatic);
  return hinted ? *std::move(hinted) : automatic;
}

}  // namespace ohmfold::drawing
