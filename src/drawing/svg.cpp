// A schematic as SVG. Leads and wires stand in coordinates of the whole drawing, so that a program
// can follow them; the strokes of a symbol stand in its own and are turned by a matrix.
#include "drawing/svg.h"

#include "drawing/lines.h"
#include "drawing/names.h"
#include "drawing/symbols.h"
#include "drawing/turned.h"
#include "drawing/xml.h"

namespace ohmfold::drawing {

namespace {

std::string pair(FineSpot spot) {
  return decimal(spot.x) + ' ' + decimal(spot.y);
}

std::string attribute(std::string_view name, std::string_view value) {
  return ' ' + std::string(name) + "=\"" + std::string(value) + '"';
}

std::string number(std::string_view name, Milli value) {
  return attribute(name, decimal(value));
}

std::string path(std::string_view kind, std::string_view commands) {
  return "<path" + attribute("class", kind) + attribute("d", commands) + "/>\n";
}

std::string circle(std::string_view kind, FineSpot centre, Milli radius) {
  const std::string of_kind = kind.empty() ? "" : attribute("class", kind);
  return "<circle" + of_kind + number("cx", centre.x) + number("cy", centre.y) +
         number("r", radius) + "/>\n";
}

std::string commands(const Line& line) {
  std::string written = 'M' + pair(line.from);
  const std::string radius = std::to_string(kArc);
  const std::string arc = " A" + radius + ' ' + radius + " 0 0 ";
  for (const LinePiece& piece : line.pieces) {
    if (piece.arc) {
      written += arc;
      written += piece.clockwise ? "1 " : "0 ";
    } else {
      written += " L";
    }
    written += pair(piece.to);
  }
  return written;
}

std::string polygon(const std::vector<FineSpot>& corners, bool closed) {
  std::string written;
  for (const FineSpot& corner : corners) written += (written.empty() ? "M" : " L") + pair(corner);
  return closed ? written + " Z" : written;
}

std::string_view role_class(TextRole role) {
  switch (role) {
    case TextRole::part_name:
      return "name";
    case TextRole::value:
      return "value";
    case TextRole::current:
      return "current";
    case TextRole::point_name:
      return "point-name";
    case TextRole::potential:
      break;
  }
  return "potential";
}

std::string name_text(std::string_view name) {
  const auto [stem, digits] = split_name(name);
  if (digits.empty()) return xml_text(name);
  return xml_text(stem) + R"(<tspan class="sub" dy="3">)" + xml_text(digits) + "</tspan>";
}

std::string label_text(const Label& label) {
  constexpr std::string_view kAnchors[] = {"start", "middle", "end"};
  std::string written = "<text" + attribute("class", "label") +
                        attribute("text-anchor", kAnchors[static_cast<int>(label.anchor)]) + '>';
  int y = label.at.y;
  for (const LabelLine& line : label.lines) {
    const bool is_name = line.role == TextRole::part_name || line.role == TextRole::point_name;
    written += "<tspan" + attribute("class", role_class(line.role)) +
               attribute("x", std::to_string(label.at.x)) + attribute("y", std::to_string(y)) +
               '>' + (is_name ? name_text(line.text) : xml_text(line.text)) + "</tspan>";
    y += kLineHeight;
  }
  return written + "</text>\n";
}

/// Upright letters, centred where the symbol has them.
std::string sign_text(const Sign& sign, const DrawnPart& part) {
  FineSpot at = placed(fine(sign.at), part.middle, turn_to(part.direction));
  at.y += sign.large ? 4'700 : 4'000;
  return "<text" + attribute("class", sign.large ? "letter" : "sign") +
         attribute("text-anchor", "middle") + number("x", at.x) + number("y", at.y) + '>' +
         std::string(sign.text) + "</text>\n";
}

std::string tag_text(const DrawnPart& part, const Schematic& schematic) {
  const Tag tag = tag_of(part, schematic);
  return "<rect" + attribute("class", "tag") + number("x", tag.middle.x - tag.width / 2) +
         number("y", tag.middle.y - tag.height / 2) + number("width", tag.width) +
         number("height", tag.height) + number("rx", tag.height / 2) + "/>\n<text" +
         attribute("class", "step") + attribute("text-anchor", "middle") +
         number("x", tag.middle.x) + number("y", tag.middle.y + 3'700) + '>' + tag.text +
         "</text>\n";
}

std::string frame(Spot half) {
  const std::string length = std::to_string(half.x);
  const std::string breadth = std::to_string(half.y);
  return "<rect" + attribute("class", "frame") + attribute("x", '-' + length) +
         attribute("y", '-' + breadth) + number("width", 2 * half.x * kMilli) +
         number("height", 2 * half.y * kMilli) + attribute("rx", "4") + "/>\n";
}

std::string_view pen_class(Pen pen) {
  switch (pen) {
    case Pen::thick:
      return "thick";
    case Pen::doubled:
      return "doubled";
    case Pen::filled:
      return "filled";
    case Pen::line:
      break;
  }
  return "stroke";
}

std::string body(const DrawnPart& part, const Symbol& symbol) {
  const Turn turn = turn_to(part.direction);
  const std::string matrix = "matrix(" + decimal(turn.cosine) + ' ' + decimal(turn.sine) + ' ' +
                             decimal(-turn.sine) + ' ' + decimal(turn.cosine) + ' ' +
                             pair(fine(part.middle)) + ')';
  std::string written = "<g" + attribute("class", "body") + attribute("transform", matrix) + ">\n";
  for (const Stroke& stroke : symbol.strokes) {
    std::vector<FineSpot> corners;
    for (const Spot corner : stroke.corners) corners.push_back(fine(corner));
    const std::string shape = polygon(corners, stroke.closed);
    written += path(pen_class(stroke.pen), shape);
    if (stroke.pen == Pen::doubled) written += path("inside", shape);
  }
  for (const Circle& round : symbol.circles) {
    written += circle("stroke", fine(round.centre), round.radius * kMilli);
  }
  if (part.mark == Mark::next) written += frame(symbol.frame);
  return written + "</g>\n";
}

std::string_view mark_class(Mark mark) {
  switch (mark) {
    case Mark::next:
      return " next";
    case Mark::came:
      return " came";
    case Mark::none:
      break;
  }
  return "";
}

std::string part_group(const DrawnPart& part, const Schematic& schematic, const Arcs& arcs,
                       SymbolSet set) {
  const Symbol symbol = symbol_of(part.kind, set, part.mark == Mark::came, is_flipped(part));
  std::string written = "<g" +
                        attribute("class", "part " + std::string(kind_word(part.kind)) +
                                               std::string(mark_class(part.mark))) +
                        attribute("data-part", xml_text(part.name)) + ">\n";
  for (const std::vector<FineSpot>& lead : leads(part, symbol.half)) {
    const std::string shape = commands(arcs.through(lead));
    written += path("lead", shape);
    if (symbol.half == 0 && part.mark == Mark::came) written += path("inside", shape);
  }
  if (symbol.half > 0 || part.mark == Mark::next) written += body(part, symbol);
  for (const Sign& sign : symbol.signs) written += sign_text(sign, part);
  for (const Arrow& arrow : part.arrows) written += path("arrow", polygon(arrow_head(arrow), true));
  if (part.mark == Mark::next && part.step > 0) written += tag_text(part, schematic);
  for (const Label& label : part.labels) written += label_text(label);
  return written + "</g>\n";
}

std::string point_group(const DrawnPoint& point, const Arcs& arcs) {
  std::string written =
      "<g" + attribute("class", "point") + attribute("data-point", xml_text(point.name)) + ">\n";
  for (const Segment& wire : point.wires) {
    written += path("wire", commands(arcs.through({fine(wire.from), fine(wire.to)})));
  }
  for (const Spot dot : point.dots) written += circle("dot", fine(dot), 3'200);
  for (const Spot ring : point.rings) written += circle("ring", fine(ring), 3'200);
  for (const Label& label : point.labels) written += label_text(label);
  return written + "</g>\n";
}

std::string head(const Schematic& schematic, const SvgText& text, bool alone) {
  const std::string width = std::to_string(schematic.width);
  const std::string height = std::to_string(schematic.height);
  const bool has_description = !text.description.empty();
  std::string written = alone ? "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" : "";
  written +=
      "<svg" + attribute("xmlns", "http://www.w3.org/2000/svg") +
      attribute("class", alone ? "circuit alone" : "circuit") +
      attribute("viewBox", "0 0 " + width + ' ' + height) + attribute("width", width) +
      attribute("height", height) + attribute("role", "img") +
      attribute("aria-labelledby", text.id + "-t" + (has_description ? ' ' + text.id + "-d" : "")) +
      ">\n<title" + attribute("id", text.id + "-t") + '>' + xml_text(text.title) + "</title>\n";
  if (has_description) {
    written +=
        "<desc" + attribute("id", text.id + "-d") + '>' + xml_text(text.description) + "</desc>\n";
  }
  if (alone) {
    written += "<style>\n" + svg_style() + "</style>\n<rect" + attribute("class", "paper") +
               attribute("width", width) + attribute("height", height) + "/>\n";
  }
  return written;
}

}  // namespace

std::string svg(const Schematic& schematic, const SvgText& text, SymbolSet symbols, bool alone) {
  const Arcs arcs(schematic.crossings);
  std::string written = head(schematic, text, alone);
  for (const DrawnPart& part : schematic.parts) {
    written += part_group(part, schematic, arcs, symbols);
  }
  // Behind the parts: a ring covers the end of the lead below it.
  for (const DrawnPoint& point : schematic.points) written += point_group(point, arcs);
  return written + "</svg>\n";
}

}  // namespace ohmfold::drawing
