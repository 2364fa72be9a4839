// Lines, symbols, dots and arrows of a placement.
#include "drawing/scaling.h"

#include <algorithm>
#include <unordered_map>
#include <utility>

#include "drawing/junctions.h"
#include "drawing/measures.h"
#include "drawing/slant.h"

namespace ohmfold::drawing {

namespace {

const std::vector<LabelLine> kNothing;

bool is_of_kind(const Look& look, PartId part, PartKind kind) {
  return part.index < look.problem.parts.size() && look.problem.part(part).kind == kind;
}

SymbolKind symbol_of(const Look& look, PartId part) {
  switch (look.kind(part)) {
    case ElementKind::resistor:
      return is_of_kind(look, part, PartKind::lamp) ? SymbolKind::lamp : SymbolKind::resistor;
    case ElementKind::battery:
      return SymbolKind::battery;
    case ElementKind::current_source:
    case ElementKind::switched_off:
      return SymbolKind::current_source;
    case ElementKind::ammeter:
      return SymbolKind::ammeter;
    case ElementKind::voltmeter:
      return SymbolKind::voltmeter;
    case ElementKind::open_switch:
      return SymbolKind::open_switch;
    case ElementKind::closed_switch:
      return SymbolKind::closed_switch;
    case ElementKind::port:
    case ElementKind::wire:
    case ElementKind::shorted:
    case ElementKind::taken_out:
      break;
  }
  return SymbolKind::plain;
}

std::string text_of(const std::vector<LabelLine>& lines, TextRole role) {
  const auto found = std::find_if(lines.begin(), lines.end(),
                                  [&](const LabelLine& line) { return line.role == role; });
  return found == lines.end() ? std::string() : found->text;
}

/// Draws one placement.
class Drawing {
 public:
  Drawing(const Look& look, const Redrawing& redrawing, const Scale& scale, LabelTexts& texts)
      : look_(look), redrawing_(redrawing), scale_(scale), texts_(texts) {}

  Schematic run() {
    const Placement placement = redrawing_.placement();
    for (const PlacedPoint& placed : placement.points) {
      DrawnPoint point;
      point.point = placed.point;
      point.name = text_of(look_.caption(placed.point), TextRole::point_name);
      for (const Segment& wire : placed.wires) {
        point.wires.push_back({scale_(wire.from), scale_(wire.to)});
      }
      index_of_.emplace(placed.point.index, schematic_.points.size());
      schematic_.points.push_back(std::move(point));
      texts_.points.push_back(look_.caption(placed.point));
      texts_.names.push_back(scale_(placed.at));
    }
    ends_.resize(schematic_.points.size());
    for (const PlacedPart& placed : placement.parts) draw(placed);
    for (std::size_t i = 0; i < ends_.size(); ++i) mark_junctions(schematic_.points[i], ends_[i]);
    for (const Terminal& terminal : placement.terminals) ring(terminal);
    schematic_.crossings = crossings_of(schematic_);
    return std::move(schematic_);
  }

 private:
  /// That of the label; of a part without one that of the problem.
  [[nodiscard]] std::string name_of(PartId part) const {
    std::string name = text_of(look_.caption(part), TextRole::part_name);
    const bool is_of_file = part.index < look_.problem.parts.size();
    return name.empty() && is_of_file ? look_.problem.part(part).name : name;
  }

  void draw(const PlacedPart& placed) {
    DrawnPart part;
    part.part = placed.part;
    part.name = name_of(placed.part);
    part.kind = symbol_of(look_, placed.part);
    for (const Spot corner : placed.path) part.path.push_back(scale_(corner));
    const Spot from = part.path[placed.seat];
    const Spot to = part.path[placed.seat + 1];
    part.direction = to - from;
    part.middle = scale_.middle({placed.path[placed.seat], placed.path[placed.seat + 1]});
    const auto [first, second] = redrawing_.points_of(placed.part);
    if (look_.kind(placed.part) == ElementKind::switched_off) {
      draw_gap(part, placed.seat, first, second);
      return;
    }
    end_at(first, part.path.front());
    end_at(second, part.path.back());
    add_arrow(part);
    schematic_.parts.push_back(std::move(part));
    texts_.parts.push_back(look_.caption(placed.part));
    texts_.ends.push_back({index_of(first), index_of(second), placed.seat});
  }

  /// Its leads remain, as loose ends of its points.
  void draw_gap(const DrawnPart& part, std::size_t seat, PointId first, PointId second) {
    const Spot half = stride(part.direction, Measures(look_.sizes).half_length(part.direction));
    Path before(part.path.begin(), part.path.begin() + static_cast<std::ptrdiff_t>(seat) + 1);
    before.push_back(part.middle - half);
    Path after{part.middle + half};
    after.insert(after.end(), part.path.begin() + static_cast<std::ptrdiff_t>(seat) + 1,
                 part.path.end());
    const auto add = [&](PointId point, const Path& path) {
      const auto found = index_of_.find(point.index);
      if (found == index_of_.end()) return;
      for (std::size_t i = 0; i + 1 < path.size(); ++i) {
        schematic_.points[found->second].wires.push_back({path[i], path[i + 1]});
      }
    };
    add(first, before);
    add(second, after);
  }

  [[nodiscard]] std::size_t index_of(PointId point) const {
    const auto found = index_of_.find(point.index);
    return found == index_of_.end() ? SIZE_MAX : found->second;
  }

  void end_at(PointId point, Spot spot) {
    const auto found = index_of_.find(point.index);
    if (found != index_of_.end()) ends_[found->second].push_back(spot);
  }

  void ring(const Terminal& terminal) {
    const auto found = index_of_.find(terminal.point.index);
    if (found == index_of_.end()) return;
    std::vector<Spot>& rings = schematic_.points[found->second].rings;
    const Spot at = scale_(terminal.at);
    if (std::find(rings.begin(), rings.end(), at) == rings.end()) rings.push_back(at);
  }

  void add_arrow(DrawnPart& part) const {
    const std::vector<int>& currents = look_.captions.currents;
    if (part.part.index >= currents.size() || currents[part.part.index] == 0) return;
    const Spot along =
        currents[part.part.index] > 0 ? part.direction : Spot{-part.direction.x, -part.direction.y};
    const int tip = Measures(look_.sizes).arrow_tip(part.direction);
    part.arrows.push_back({part.middle + stride(along, tip), along});
  }

  const Look& look_;
  const Redrawing& redrawing_;
  const Scale& scale_;
  LabelTexts& texts_;
  Schematic schematic_;
  std::unordered_map<std::uint32_t, std::size_t> index_of_;  ///< by point
  std::vector<std::vector<Spot>> ends_;                      ///< of parts, by drawn point
};

}  // namespace

const std::vector<LabelLine>& Look::caption(PartId part) const {
  return part.index < captions.parts.size() ? captions.parts[part.index] : kNothing;
}

const std::vector<LabelLine>& Look::caption(PointId point) const {
  return point.index < captions.points.size() ? captions.points[point.index] : kNothing;
}

ElementKind Look::kind(PartId part) const {
  if (part.index < reduction.start.part_count()) return reduction.start.kind(part);
  return reduction.end.kind(part);
}

Schematic drawn(const Look& look, const Redrawing& redrawing, const Scale& scale,
                LabelTexts& texts) {
  return Drawing(look, redrawing, scale, texts).run();
}

}  // namespace ohmfold::drawing
