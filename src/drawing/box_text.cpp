// A schematic for a terminal: a unit is a column or a line.
#include "drawing/box_text.h"

#include <algorithm>

#include "drawing/box_canvas.h"
#include "drawing/box_symbols.h"

namespace ohmfold::drawing {

namespace {

class BoxDrawing {
 public:
  BoxDrawing(const Schematic& schematic, SymbolSet set, Letters letters)
      : schematic_(schematic),
        set_(set),
        letters_(letters),
        canvas_(schematic.width, schematic.height, letters) {}

  [[nodiscard]] std::string drawn(bool colour) {
    for (const DrawnPoint& point : schematic_.points) {
      for (const Segment& wire : point.wires) canvas_.line(wire.from, wire.to);
    }
    for (const DrawnPart& part : schematic_.parts) {
      for (std::size_t i = 0; i + 1 < part.path.size(); ++i) {
        canvas_.line(part.path[i], part.path[i + 1]);
      }
    }
    for (const Crossing& crossing : schematic_.crossings) canvas_.pass(crossing.at);
    for (const DrawnPoint& point : schematic_.points) add_joints(point);
    for (const DrawnPart& part : schematic_.parts) add(part);
    for (const DrawnPoint& point : schematic_.points) add(point.labels);
    for (const DrawnPart& part : schematic_.parts) add(part.labels);
    return canvas_.rows(colour);
  }

 private:
  [[nodiscard]] bool is_unicode() const { return letters_ == Letters::unicode; }

  void add_joints(const DrawnPoint& point) {
    for (const Spot dot : point.dots) canvas_.write(dot, is_unicode() ? "●" : "*");
    for (const Spot ring : point.rings) canvas_.write(ring, is_unicode() ? "○" : "o");
  }

  void add(const DrawnPart& part) {
    for (const Arrow& arrow : part.arrows) canvas_.write(arrow.at, head(arrow.direction));
    for (const CellRow& row :
         cell_symbol(part.kind, part.direction, set_, letters_, part.mark == Mark::came)) {
      add(row, part);
    }
    if (part.mark == Mark::next) add_step(part);
  }

  /// Runs of characters between the spaces of a row.
  void add(const CellRow& row, const DrawnPart& part) {
    Spot at = part.middle + Spot{row.x, row.y};
    for (std::size_t begin = 0; begin < row.text.size();) {
      if (row.text[begin] == ' ' || row.text[begin] == '_') {
        if (row.text[begin] == '_') canvas_.clear(at);
        ++begin;
        ++at.x;
        continue;
      }
      const std::size_t end = std::min(row.text.find_first_of(" _", begin), row.text.size());
      const std::string_view run = row.text.substr(begin, end - begin);
      canvas_.write(at, run, part.mark);
      at.x += columns_written(run, letters_);
      begin = end;
    }
  }

  /// The number of the step in brackets: within a resistor, beside or before another symbol.
  void add_step(const DrawnPart& part) {
    const std::string tag = part.step == 0 ? "[ ]" : '[' + std::to_string(part.step) + ']';
    const int half = static_cast<int>(tag.size() - 1) / 2;
    const bool lies = part.direction.y == 0;
    const bool is_switch =
        part.kind == SymbolKind::open_switch || part.kind == SymbolKind::closed_switch;
    Spot begin = part.middle - Spot{half, 0};
    if (part.kind == SymbolKind::battery) {
      begin = lies ? part.middle + Spot{1, 1} : begin + Spot{0, 2};
    } else if (part.kind != SymbolKind::resistor && part.kind != SymbolKind::plain) {
      begin.y -= is_switch && !lies ? 2 : 1;
    }
    canvas_.write(begin, tag, Mark::next);
  }

  [[nodiscard]] std::string_view head(Spot direction) const {
    if (direction.y == 0) {
      if (direction.x < 0) return is_unicode() ? "◄" : "<";
      return is_unicode() ? "►" : ">";
    }
    if (direction.y < 0) return is_unicode() ? "▲" : "^";
    return is_unicode() ? "▼" : "v";
  }

  void add(const std::vector<Label>& labels) {
    for (const Label& label : labels) {
      Spot at = label.at;
      for (const LabelLine& line : label.lines) {
        const int columns = columns_written(line.text, letters_);
        const int before = label.anchor == Anchor::start    ? 0
                           : label.anchor == Anchor::middle ? columns / 2
                                                            : columns - 1;
        canvas_.write({at.x - before, at.y}, line.text);
        ++at.y;
      }
    }
  }

  const Schematic& schematic_;
  SymbolSet set_;
  Letters letters_;
  BoxCanvas canvas_;
};

}  // namespace

std::string box_text(const Schematic& schematic, SymbolSet symbols, Letters letters, bool colour) {
  if (schematic.width <= 0 || schematic.height <= 0) return {};
  if (schematic.width > kMostCells / schematic.height) return {};
  return BoxDrawing(schematic, symbols, letters).drawn(colour);
}

}  // namespace ohmfold::drawing
