// What a drawing needs to be read at all: room for everything.
#include <algorithm>

#include "drawing/read_back.h"

namespace ohmfold::test {

using support::Polygon;
using support::SvgDrawing;
using support::SvgPart;
using support::SvgText;

namespace {

// So much may things reach into each other, since letters are narrower or wider than reckoned.
constexpr double kSlack = 0.5;

/// Letters and signs belong to a symbol, and may lie in or on it.
bool is_of_symbol(const SvgText& text) {
  return text.role == "letter" || text.role == "sign";
}

class Judge {
 public:
  Judge(const SvgDrawing& drawing, const ReadBack& read) : drawing_(drawing), read_(read) {
    for (const SvgText& text : drawing.texts) {
      if (text.role != "letter") labels_.push_back(&text);
    }
  }

  std::vector<std::string> judge() {
    check_page();
    check_symbols();
    check_labels();
    check_lines();
    check_nearness();
    return std::move(faults_);
  }

 private:
  void fault(const std::string& what) { faults_.push_back(what); }

  void check_page() {
    const support::Frame& page = drawing_.page;
    const support::Frame& all = drawing_.extent;
    if (all.is_empty()) return;
    if (all.min.x < page.min.x - kSlack || all.min.y < page.min.y - kSlack ||
        all.max.x > page.max.x + kSlack || all.max.y > page.max.y + kSlack) {
      fault("something is outside the page");
    }
  }

  void check_symbols() {
    for (const SvgPart& a : drawing_.parts) {
      for (const SvgPart& b : drawing_.parts) {
        if (&a == &b) break;
        if (a.body.empty() || b.body.empty()) continue;
        if (support::overlap(a.body, b.body) > kSlack) {
          fault("symbols overlap: " + a.name + " and " + b.name);
        }
      }
      for (const auto& marks : {drawing_.dots, drawing_.rings}) {
        for (const support::SvgMark& mark : marks) {
          const Polygon spot{mark.at, mark.at + support::Vec{1, 0}, mark.at + support::Vec{1, 1}};
          if (!a.body.empty() && support::overlap(a.body, spot) > kSlack) {
            fault("a dot within the symbol of " + a.name);
          }
        }
      }
    }
  }

  void check_labels() {
    for (const SvgText* a : labels_) {
      const Polygon box = a->box.corners();
      for (const SvgText* b : labels_) {
        if (a == b) break;
        if (support::overlap(box, b->box.corners()) > kSlack) {
          fault("texts overlap: " + a->text + " and " + b->text);
        }
      }
      for (const SvgPart& part : drawing_.parts) {
        if (is_of_symbol(*a) && a->part == part.name) continue;
        for (const Polygon* symbol : {&part.body, &part.frame}) {
          if (symbol->empty() || support::overlap(box, *symbol) <= kSlack) continue;
          if (symbol == &part.frame && a->role == "step") continue;  // its number is on the frame
          fault("the text " + a->text + " lies on the symbol of " + part.name);
        }
      }
      for (const Polygon& arrow : drawing_.arrows) {
        if (support::overlap(box, arrow) > kSlack) fault("the text " + a->text + " is on an arrow");
      }
    }
  }

  void check_lines() {
    for (const Stretch& line : read_.lines) {
      for (const SvgPart& part : drawing_.parts) {
        const Polygon& symbol = line.part == part.name ? part.core : part.body;
        if (support::passes(symbol, line.from, line.to, kSlack)) {
          fault("a line of " + line.part + line.point + " leads through the symbol of " +
                part.name);
        }
      }
      for (const SvgText* text : labels_) {
        if (support::passes(text->box.corners(), line.from, line.to, kSlack)) {
          fault("a line of " + line.part + line.point + " leads through the text " + text->text);
        }
      }
    }
  }

  /// How far a text is from what stands for a part: its symbol, or the frame round a mere line.
  double away(const SvgText& text, const SvgPart& part) const {
    if (part.body.empty() && !part.frame.empty()) {
      return support::distance(text.box.corners(), part.frame);
    }
    if (!part.body.empty()) return support::distance(text.box.corners(), part.body);
    const auto read = std::ranges::find(read_.parts, part.name, &ReadPart::name);
    if (read == read_.parts.end()) return std::numeric_limits<double>::infinity();
    return support::distance(text.box.corners(), {read->inner[0], read->inner[1]});
  }

  void check_nearness() {
    for (const SvgText* text : labels_) {
      if (text->part.empty()) continue;
      const auto own = std::ranges::find(drawing_.parts, text->part, &SvgPart::name);
      const double least = away(*text, *own);
      for (const SvgPart& part : drawing_.parts) {
        if (text->role != "sign" && away(*text, part) < least - kSlack) {
          fault("the text " + text->text + " of " + text->part + " is nearer to " + part.name);
        }
      }
    }
  }

  const SvgDrawing& drawing_;
  const ReadBack& read_;
  std::vector<const SvgText*> labels_;
  std::vector<std::string> faults_;
};

}  // namespace

std::vector<std::string> faults_of_geometry(const SvgDrawing& drawing, const ReadBack& read) {
  return Judge(drawing, read).judge();
}

std::vector<std::string> faults_of(const std::string& svg, const Shown& shown) {
  try {
    const SvgDrawing drawing = support::read_svg(svg);
    const ReadBack read = read_back(drawing);
    std::vector<std::string> faults = faults_of_circuit(drawing, read, shown);
    const std::vector<std::string> more = faults_of_geometry(drawing, read);
    faults.insert(faults.end(), more.begin(), more.end());
    return faults;
  } catch (const support::XmlFault& fault) {
    return {fault.what()};
  }
}

}  // namespace ohmfold::test
