// The drawn things of an SVG file, in the coordinates of the page. It knows how the writer of
// drawings names things (classes and data attributes), and nothing of how they were placed.
#pragma once

#include <map>
#include <optional>
#include <sstream>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "support/svg_shapes.h"
#include "support/xml.h"

namespace ohmfold::support {

/// A straight stretch of a wire or a lead.
struct SvgLine {
  Vec from, to;
  std::vector<Vec> arcs;  ///< middles of the small arcs by which it passes over others
  std::string part;       ///< of a lead
  std::string point;      ///< of a wire, where its group names one
  std::size_t path = 0;   ///< stretches of one path have one number
};

struct SvgText {
  std::string text;
  Frame box;
  std::string part, point;  ///< whose group it is in
  std::string role;  ///< class of the whole text: "label", "letter" and "sign" of symbols, …
};

struct SvgPart {
  std::string name;
  std::vector<std::size_t> leads;  ///< numbers of paths, in the order of the file
  Polygon body;                    ///< empty: nothing but a line
  Polygon core;                    ///< the body without an arrow on its own lead
  Polygon frame;                   ///< round what is marked; often none
};

struct SvgMark {
  Vec at;
  std::string point;
};

struct SvgDrawing {
  std::string title, description;
  Frame page;  ///< its viewBox
  Frame extent;
  std::vector<SvgLine> lines;
  std::vector<SvgPart> parts;
  std::vector<SvgText> texts;
  std::vector<SvgMark> dots, rings;
  std::vector<Polygon> arrows;
  std::vector<std::string> points;  ///< of groups with data-point
};

class SvgReader {
 public:
  explicit SvgReader(const Xml& xml) : xml_(xml), placed_(xml.nodes.size()) {
    if (xml.root().name != "svg") throw XmlFault("no drawing but " + xml.root().name);
    read_styles();
    read_page();
  }

  SvgDrawing read() {
    for (std::size_t i = 0; i < xml_.nodes.size(); ++i) {
      const XmlNode& node = xml_.nodes[i];
      Place& here = placed_[i];
      if (node.parent != SIZE_MAX) here = placed_[node.parent];
      if (here.hidden || node.name.empty()) continue;
      here.hidden = node.name == "defs" || node.name == "style" || node.name == "title" ||
                    node.name == "desc" || node.name == "metadata";
      if (node.name == "title" && node.parent == 0) drawing_.title = xml_.text_of(i);
      if (node.name == "desc" && node.parent == 0) drawing_.description = xml_.text_of(i);
      if (here.hidden) continue;
      read_element(i, here);
    }
    for (const Body& body : bodies_) {
      const auto on_page = [&body](const Frame& frame) {
        Polygon corners = frame.corners();
        for (Vec& corner : corners) corner = body.to_page.of(corner);
        return corners;
      };
      SvgPart& part = drawing_.parts[body.part];
      part.body = on_page(body.all);
      part.core = on_page(body.core);
      part.frame = on_page(body.frame);
    }
    return std::move(drawing_);
  }

 private:
  struct Place {
    SvgMatrix to_page;
    SvgMatrix in_body;  ///< from here to the body's own coordinates
    std::optional<std::size_t> part, body;
    std::string point;
    bool hidden = false;
  };
  struct Body {
    std::size_t part;
    SvgMatrix to_page;
    Frame all, core, frame;
  };
  using Style = std::map<std::string, std::string>;

  void read_page() {
    const std::vector<double> box = numbers(xml_.root()["viewBox"]);
    if (box.size() != 4) throw XmlFault("no viewBox");
    drawing_.page.take_in({box[0], box[1]});
    drawing_.page.take_in({box[0] + box[2], box[1] + box[3]});
  }

  /// What rules of style say of a class, or of an element's name: of the last one of a selector.
  void read_styles() {
    for (std::size_t i = 0; i < xml_.nodes.size(); ++i) {
      if (xml_.nodes[i].name != "style") continue;
      const std::string text = xml_.text_of(i);
      std::size_t begin = 0;
      for (std::size_t open = text.find('{'); open != std::string::npos;
           open = text.find('{', begin)) {
        const std::size_t close = std::min(text.find_first_of("{}", open + 1), text.size());
        if (close < text.size() && text[close] == '{') {  // the head of a block of rules
          begin = open + 1;
          continue;
        }
        read_rule(text.substr(begin, open - begin), text.substr(open + 1, close - open - 1));
        begin = close + 1;
      }
    }
  }
  static std::string trimmed(const std::string& text) {
    const std::size_t begin = std::min(text.find_first_not_of(" \n\t}"), text.size());
    return text.substr(begin, text.find_last_not_of(" \n\t") + 1 - begin);
  }
  void read_rule(const std::string& selectors, const std::string& settings) {
    std::istringstream each(selectors);
    for (std::string selector; std::getline(each, selector, ',');) {
      selector = trimmed(selector);
      const std::size_t begin = selector.find_last_of(" \n\t>.");
      const bool is_class = begin != std::string::npos && selector[begin] == '.';
      const std::string subject = selector.substr(is_class ? begin : begin + 1);
      std::istringstream lines(settings);
      for (std::string setting; std::getline(lines, setting, ';');) {
        const std::size_t colon = setting.find(':');
        if (colon == std::string::npos) continue;
        styles_[subject][trimmed(setting.substr(0, colon))] = trimmed(setting.substr(colon + 1));
      }
    }
  }
  /// Of the node or of the nearest one around it that says.
  std::string style_of(std::size_t node, const std::string& property) const {
    for (; node != SIZE_MAX; node = xml_.nodes[node].parent) {
      const XmlNode& at = xml_.nodes[node];
      std::istringstream classes(at["class"]);
      for (std::string word; classes >> word;) {
        const auto style = styles_.find("." + word);
        if (style != styles_.end() && style->second.contains(property)) {
          return style->second.at(property);
        }
      }
      const auto style = styles_.find(at.name);
      if (style != styles_.end() && style->second.contains(property)) {
        return style->second.at(property);
      }
      if (at.has(property)) return at[property];
    }
    return {};
  }

  void read_element(std::size_t index, Place& here) {
    const XmlNode& node = xml_.nodes[index];
    const SvgMatrix local = matrix_of(node["transform"]);
    here.to_page = here.to_page * local;
    here.in_body = here.in_body * local;
    if (node.name == "g") return read_group(node, here);
    if (node.name == "text") return read_text(index, here);
    if (node.name == "path" && (node.is_of("wire") || node.is_of("lead"))) {
      return read_line(node, here);
    }
    const std::vector<Vec> spots = spots_of(node);
    for (const Vec spot : spots) drawing_.extent.take_in(here.to_page.of(spot));
    if (here.body) {
      Body& body = bodies_[*here.body];
      for (const Vec spot : spots) {
        const Vec own = here.in_body.of(spot);
        (node.is_of("frame") ? body.frame : body.all).take_in(own);
        if (!node.is_of("frame") && !node.is_of("filled")) body.core.take_in(own);
      }
    }
    const SvgMark mark{here.to_page.of({number(node, "cx"), number(node, "cy")}), here.point};
    if (node.name == "circle" && node.is_of("dot")) drawing_.dots.push_back(mark);
    if (node.name == "circle" && node.is_of("ring")) drawing_.rings.push_back(mark);
    if (node.is_of("arrow")) {
      Frame frame;
      for (const Vec spot : spots) frame.take_in(here.to_page.of(spot));
      drawing_.arrows.push_back(frame.corners());
    }
  }

  void read_group(const XmlNode& node, Place& here) {
    if (node.is_of("part")) {
      if (!node.has("data-part")) throw XmlFault("a part without name");
      here.part = drawing_.parts.size();
      drawing_.parts.push_back({node["data-part"], {}, {}, {}, {}});
    }
    if (node.is_of("point")) {
      here.point = node["data-point"];
      drawing_.points.push_back(here.point);
    }
    if (node.is_of("body")) {
      if (!here.part) throw XmlFault("a body outside a part");
      here.body = bodies_.size();
      here.in_body = {};
      bodies_.push_back({*here.part, here.to_page, {}, {}, {}});
    }
  }

  /// Stretches of M, L and A; an arc must go on in the direction in which it came.
  void read_line(const XmlNode& node, const Place& here) {
    const std::string data = node["d"];
    const std::size_t path = paths_++;
    std::string part;
    if (node.is_of("lead")) {
      if (!here.part) throw XmlFault("a lead outside a part");
      part = drawing_.parts[*here.part].name;
      drawing_.parts[*here.part].leads.push_back(path);
    }
    std::optional<Vec> at;
    bool joins = false;  // may the next stretch lengthen the one before?
    for (const auto& [command, n] : commands_of(data)) {
      const std::size_t each = command == 'A' ? 7 : 2;
      if ((command != 'M' && command != 'L' && command != 'A') || n.empty() || n.size() % each != 0)
        throw XmlFault("a line drawn in an unknown way: " + data);
      for (std::size_t k = 0; k < n.size(); k += each) {
        const Vec next = here.to_page.of({n[k + each - 2], n[k + each - 1]});
        drawing_.extent.take_in(next);
        if (command == 'M' && k == 0) {
          joins = false;
        } else if (!at) {
          throw XmlFault("a line without a beginning: " + data);
        } else {
          add_stretch(*at, next, command == 'A', joins, part, here.point, path);
          joins = true;
        }
        at = next;
      }
    }
  }

  void add_stretch(Vec from, Vec to, bool arc, bool joins, const std::string& part,
                   const std::string& point, std::size_t path) {
    const Vec along = to - from;
    if (length(along) < 1e-9) return;
    std::vector<Vec> arcs;
    if (arc) arcs.push_back(0.5 * (from + to));
    if (joins) {
      SvgLine& last = drawing_.lines.back();
      const Vec before = last.to - last.from;
      const double turn = cross(before, along) / (length(before) * length(along));
      if (std::abs(turn) < 0.01 && dot(before, along) > 0) {
        last.to = to;
        last.arcs.insert(last.arcs.end(), arcs.begin(), arcs.end());
        return;
      }
    }
    drawing_.lines.push_back({from, to, arcs, part, point, path});
  }

  /// Every line of a text has a box of its own. A letter reaches from 0.72 em above the baseline to
  /// 0.2 em below it.
  void read_text(std::size_t index, const Place& here) {
    struct Line {
      Vec at;
      std::string text;
      double width = 0, size = 0;
    };
    std::vector<Line> lines{{{number(xml_.nodes[index], "x"), number(xml_.nodes[index], "y")}, ""}};
    std::vector<std::size_t> open{index};
    while (!open.empty()) {
      const std::size_t i = open.back();
      open.pop_back();
      const XmlNode& node = xml_.nodes[i];
      open.insert(open.end(), node.children.rbegin(), node.children.rend());
      if (i != index && (node.has("x") || node.has("y")) && !lines.back().text.empty()) {
        lines.push_back({lines.back().at, ""});
      }
      Line& line = lines.back();
      if (node.has("x")) line.at.x = number(node, "x");
      if (node.has("y")) line.at.y = number(node, "y");
      if (node.has("dy") && node.has("x")) line.at.y += number(node, "dy");
      if (node.text.find_first_not_of(" \n\t") == std::string::npos) continue;
      const std::string size = style_of(i, "font-size");
      const double em = size.empty() ? 16 : numbers(size).front();
      line.text += node.text;
      line.width += em * text_width(node.text);
      line.size = std::max(line.size, em);
    }
    const std::string anchor = style_of(index, "text-anchor");
    const double before = anchor == "end" ? 1 : anchor == "middle" ? 0.5 : 0;
    for (const Line& line : lines) {
      if (line.text.empty()) continue;
      const Vec left = line.at - Vec{before * line.width, 0};
      Frame box;
      for (const Vec corner :
           {left + Vec{0, -0.72 * line.size}, left + Vec{line.width, -0.72 * line.size},
            left + Vec{0, 0.2 * line.size}, left + Vec{line.width, 0.2 * line.size}}) {
        box.take_in(here.to_page.of(corner));
      }
      drawing_.extent.take_in(box.min);
      drawing_.extent.take_in(box.max);
      drawing_.texts.push_back({line.text, box, here.part ? drawing_.parts[*here.part].name : "",
                                here.point, xml_.nodes[index]["class"]});
    }
  }

  const Xml& xml_;
  std::vector<Place> placed_;
  std::map<std::string, Style> styles_;
  std::vector<Body> bodies_;
  std::size_t paths_ = 0;
  SvgDrawing drawing_;
};

/// Throws XmlFault where the text is no drawing as the writer makes them.
inline SvgDrawing read_svg(std::string_view text) {
  const Xml xml = read_xml(text);
  return SvgReader(xml).read();
}

}  // namespace ohmfold::support
