// A schematic as a tikzpicture. Symbols are turned here, so that every coordinate is one of the
// whole picture and the picture needs no transformation.
#include "drawing/tikz.h"

#include <algorithm>

#include "drawing/latex.h"
#include "drawing/lines.h"
#include "drawing/symbols.h"
#include "drawing/turned.h"

namespace ohmfold::drawing {

namespace {

/// TeX knows no length from 16384 pt on, nor pgf a coordinate.
constexpr int kLargest = 16'000;

std::string styled(std::string_view command, std::string_view style) {
  std::string written = '\\' + std::string(command);
  if (!style.empty()) written += '[' + std::string(style) + ']';
  return written + ' ';
}

class Picture {
 public:
  Picture(const Schematic& schematic, SymbolSet set)
      : schematic_(schematic),
        set_(set),
        arcs_(schematic.crossings),
        shrink_(std::max(schematic.width, schematic.height) / kLargest + 1) {}

  [[nodiscard]] std::string written() {
    text_ = "\\begin{tikzpicture}[circuit]\n";
    text_ += "\\path[use as bounding box] (0,0) rectangle " +
             at(fine({schematic_.width, schematic_.height})) + ";\n";
    for (const DrawnPart& part : schematic_.parts) add(part);
    // Behind the parts: a ring covers the end of the lead below it.
    for (const DrawnPoint& point : schematic_.points) add(point);
    return text_ + "\\end{tikzpicture}\n";
  }

 private:
  [[nodiscard]] std::string at(FineSpot spot) const {
    return '(' + decimal(spot.x / shrink_) + ',' + decimal(spot.y / shrink_) + ')';
  }

  void add(const DrawnPoint& point) {
    for (const Segment& wire : point.wires) add_line("", {fine(wire.from), fine(wire.to)});
    for (const Spot dot : point.dots) add_circle("fill", "", fine(dot), 3'200);
    for (const Spot ring : point.rings) add_circle("draw", "fill=white", fine(ring), 3'200);
    for (const Label& label : point.labels) add(label);
  }

  void add(const DrawnPart& part) {
    const Symbol symbol = symbol_of(part.kind, set_, part.mark == Mark::came, is_flipped(part));
    const std::string colour = part.mark == Mark::next   ? "circuit next"
                               : part.mark == Mark::came ? "circuit came"
                                                         : "";
    const bool plain_came = symbol.half == 0 && part.mark == Mark::came;
    const std::string of_lead =
        plain_came ? "circuit doubled," + colour : (symbol.half == 0 ? colour : std::string());
    for (const std::vector<FineSpot>& lead : leads(part, symbol.half)) add_line(of_lead, lead);
    add(symbol, part, colour);
    for (const Arrow& arrow : part.arrows) add_polygon("fill", "", arrow_head(arrow), true);
    if (part.mark == Mark::next) add_frame(symbol, part);
    for (const Label& label : part.labels) add(label);
  }

  void add_line(const std::string& style, const std::vector<FineSpot>& spots) {
    const Line line = arcs_.through(spots);
    text_ += styled("draw", style) + at(line.from);
    FineSpot from = line.from;
    for (const LinePiece& piece : line.pieces) {
      if (piece.arc) {
        add_arc(from, piece);
      } else {
        text_ += " -- " + at(piece.to);
      }
      from = piece.to;
    }
    text_ += ";\n";
  }

  /// Half a circle as two curves of Bézier, whose handles are 0.5523 of the radius long.
  void add_arc(FineSpot from, const LinePiece& piece) {
    const FineSpot middle{(from.x + piece.to.x) / 2, (from.y + piece.to.y) / 2};
    const FineSpot ahead{(piece.to.x - from.x) / 2, (piece.to.y - from.y) / 2};
    const FineSpot out =
        piece.clockwise ? FineSpot{ahead.y, -ahead.x} : FineSpot{-ahead.y, ahead.x};
    const auto spot = [&](Milli along, Milli aside) {
      return at({middle.x + (ahead.x * along + out.x * aside) / kMilli,
                 middle.y + (ahead.y * along + out.y * aside) / kMilli});
    };
    text_ += " .. controls " + spot(-1000, 552) + " and " + spot(-552, 1000) + " .. " +
             spot(0, 1000) + " .. controls " + spot(552, 1000) + " and " + spot(1000, 552) +
             " .. " + at(piece.to);
  }

  void add_polygon(std::string_view command, std::string_view style,
                   const std::vector<FineSpot>& corners, bool closed) {
    text_ += styled(command, style);
    for (std::size_t i = 0; i < corners.size(); ++i)
      text_ += (i == 0 ? "" : " -- ") + at(corners[i]);
    text_ += closed ? " -- cycle;\n" : ";\n";
  }

  void add_circle(std::string_view command, std::string_view style, FineSpot centre, Milli radius) {
    text_ += styled(command, style) + at(centre) + " circle[radius=" + decimal(radius / shrink_) +
             "];\n";
  }

  [[nodiscard]] static std::string_view style_of(Pen pen) {
    switch (pen) {
      case Pen::thick:
        return "circuit thick";
      case Pen::doubled:
        return "circuit doubled";
      case Pen::line:
      case Pen::filled:
        break;
    }
    return "";
  }

  void add(const Symbol& symbol, const DrawnPart& part, const std::string& colour) {
    const Turn turn = turn_to(part.direction);
    for (const Stroke& stroke : symbol.strokes) {
      std::vector<FineSpot> corners;
      for (const Spot corner : stroke.corners) {
        corners.push_back(placed(fine(corner), part.middle, turn));
      }
      std::string style(style_of(stroke.pen));
      if (!style.empty() && !colour.empty()) style += ',';
      style += colour;
      add_polygon(stroke.pen == Pen::filled ? "fill" : "draw", style, corners, stroke.closed);
    }
    for (const Circle& circle : symbol.circles) {
      add_circle("draw", colour, placed(fine(circle.centre), part.middle, turn),
                 circle.radius * kMilli);
    }
    for (const Sign& sign : symbol.signs) {
      text_ += "\\node[circuit sign] at " + at(placed(fine(sign.at), part.middle, turn)) + " {" +
               latex_text(sign.text) + "};\n";
    }
  }

  void add_frame(const Symbol& symbol, const DrawnPart& part) {
    const Turn turn = turn_to(part.direction);
    std::vector<FineSpot> corners;
    const auto [along, across] = symbol.frame;
    for (const Spot corner :
         {Spot{-along, -across}, Spot{along, -across}, Spot{along, across}, Spot{-along, across}}) {
      corners.push_back(placed(fine(corner), part.middle, turn));
    }
    add_polygon("draw", "circuit frame", corners, true);
    if (part.step == 0) return;
    const Tag tag = tag_of(part, schematic_);
    text_ += "\\node[circuit tag] at " + at(tag.middle) + " {" + tag.text + "};\n";
  }

  void add(const Label& label) {
    const std::string_view anchor = label.anchor == Anchor::start    ? "base west"
                                    : label.anchor == Anchor::middle ? "base"
                                                                     : "base east";
    Spot baseline = label.at;
    for (const LabelLine& line : label.lines) {
      text_ += "\\node[circuit text,anchor=" + std::string(anchor) + "] at " + at(fine(baseline)) +
               " {" + line_text(line) + "};\n";
      baseline.y += kLineHeight;
    }
  }

  [[nodiscard]] static std::string line_text(const LabelLine& line) {
    if (line.role == TextRole::part_name) return latex_name(line.text);
    if (line.role == TextRole::point_name) return "\\itshape " + latex_name(line.text);
    return latex_text(line.text);
  }

  const Schematic& schematic_;
  SymbolSet set_;
  Arcs arcs_;
  Milli shrink_;
  std::string text_;
};

/// A page of the size of the picture, without margins.
std::string page(const Schematic& schematic) {
  const auto points = [](int units) {
    return decimal(std::min(units, kLargest) * kMilli * 3 / 4) + "pt";
  };
  const std::string width = points(schematic.width);
  const std::string height = points(schematic.height);
  return "\\paperwidth=" + width + " \\paperheight=" + height +
         "\n\\hoffset=-1in \\voffset=-1in \\oddsidemargin=0pt \\topmargin=0pt\n"
         "\\headheight=0pt \\headsep=0pt \\footskip=0pt \\topskip=0pt \\maxdepth=0pt\n"
         "\\textwidth=" +
         width + " \\textheight=" + height + " \\parindent=0pt \\pagestyle{empty}\n";
}

}  // namespace

std::string tikz_preamble() {
  // The blue and vermilion of Okabe and Ito; see svg_style.cpp.
  return R"(\definecolor{circuitnext}{HTML}{0072B2}
\definecolor{circuitcame}{HTML}{D55E00}
\tikzset{
  circuit/.style={x=0.75pt, y=-0.75pt, line width=0.6pt, line cap=round, line join=round},
  circuit next/.style={color=circuitnext},
  circuit came/.style={color=circuitcame},
  circuit thick/.style={line width=3.2pt, line cap=butt},
  circuit doubled/.style={line width=0.9pt, double=white, double distance=1.2pt, line cap=butt},
  circuit frame/.style={color=circuitnext, dash pattern=on 3pt off 2.2pt, rounded corners=2.5pt},
  circuit text/.style={inner sep=0pt, outer sep=0pt, font=\fontsize{9}{11}\selectfont},
  circuit sign/.style={circuit text, anchor=center},
  circuit tag/.style={circuit text, anchor=center, fill=circuitnext, text=white,
    minimum size=9.5pt, rounded corners=4.7pt, inner xsep=2.5pt,
    font=\fontsize{7}{8}\selectfont\bfseries},
}
)";
}

std::string tikz(const Schematic& schematic, SymbolSet symbols, bool alone) {
  const std::string picture = Picture(schematic, symbols).written();
  if (!alone) return picture;
  return "\\documentclass{article}\n\\usepackage{tikz}\n" + tikz_preamble() + page(schematic) +
         "\\begin{document}%\n" + picture + "\\end{document}\n";
}

}  // namespace ohmfold::drawing
