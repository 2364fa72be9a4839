// Labels of figures: beside what they name, and on nothing else.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "drawing/figures.h"
#include "drawing/reductions.h"

namespace ohmfold::drawing {
namespace {

using ::testing::IsEmpty;

bool overlap(const Box& a, const Box& b) {
  return a.min.x <= b.max.x && b.min.x <= a.max.x && a.min.y <= b.max.y && b.min.y <= a.max.y;
}

/// Looks at whole units along the line: slow, and nothing like the code that places labels.
bool passes(const Box& box, const Segment& line) {
  const int steps =
      std::max({std::abs(line.to.x - line.from.x), std::abs(line.to.y - line.from.y), 1});
  for (int i = 0; i <= steps; ++i) {
    const int x = line.from.x + (line.to.x - line.from.x) * i / steps;
    const int y = line.from.y + (line.to.y - line.from.y) * i / steps;
    if (overlap(box, {{x, y}, {x, y}})) return true;
  }
  return false;
}

/// Everything that is drawn wrong about the labels of a schematic.
class LabelCheck {
 public:
  explicit LabelCheck(const Schematic& schematic) : schematic_(schematic) {}

  std::vector<std::string> faults() {
    for (const DrawnPart& part : schematic_.parts) {
      for (const Label& label : part.labels) labels_.push_back(&label);
      for (std::size_t i = 0; i + 1 < part.path.size(); ++i) {
        lines_.push_back({part.path[i], part.path[i + 1]});
      }
    }
    for (const DrawnPoint& point : schematic_.points) {
      for (const Label& label : point.labels) labels_.push_back(&label);
      lines_.insert(lines_.end(), point.wires.begin(), point.wires.end());
    }
    for (std::size_t i = 0; i < labels_.size(); ++i) look_at(i);
    return faults_;
  }

 private:
  static std::string name(const Label& label) { return label.lines.front().text; }

  void look_at(std::size_t index) {
    const Label& label = *labels_[index];
    for (std::size_t other = 0; other < index; ++other) {
      if (overlap(label.box, labels_[other]->box)) {
        faults_.push_back(name(label) + " lies on " + name(*labels_[other]));
      }
    }
    for (const Segment& line : lines_) {
      if (passes(label.box, line)) faults_.push_back("a line passes " + name(label));
    }
    for (const DrawnPart& part : schematic_.parts) {
      const bool plain = part.kind == SymbolKind::plain;
      if (!plain && overlap(label.box, {part.middle, part.middle})) {
        faults_.push_back("a symbol lies on " + name(label));
      }
      for (const Arrow& arrow : part.arrows) {
        if (overlap(label.box, {arrow.at, arrow.at})) {
          faults_.push_back("an arrow points at " + name(label));
        }
      }
    }
    const bool inside = label.box.min.x >= 0 && label.box.min.y >= 0 &&
                        label.box.max.x <= schematic_.width && label.box.max.y <= schematic_.height;
    if (!inside) faults_.push_back(name(label) + " leaves the drawing");
  }

  const Schematic& schematic_;
  std::vector<const Label*> labels_;
  std::vector<Segment> lines_;
  std::vector<std::string> faults_;
};

void expect_clear_labels(const NamedTrace& one, const Sizes& sizes) {
  SCOPED_TRACE(one.name);
  for (const Reduction* reduction : reductions_of(one.trace)) {
    const Problem& problem = *one.trace.problem;
    const Figures figures(problem, *reduction, captions_of(problem, *reduction), sizes, {});
    for (std::size_t steps = 0; steps <= reduction->steps.size(); ++steps) {
      EXPECT_THAT(LabelCheck(figures.after(steps)).faults(), IsEmpty())
          << "after " << steps << " steps";
    }
  }
}

// The upper wire runs from a corner over two dots to another corner.
TEST(Labels, NameAPointAtTheLeftOfItsWires) {
  const Trace trace =
      solve(test::problem_of("battery E = 6 V from G to T\nresistor R1 = 1 ohm from T to G\n"
                             "resistor R2 = 2 ohm from T to G\nresistor R3 = 3 ohm from T to G\n"));
  const Reduction& reduction = trace.cases.front().main;
  const Figures figures(*trace.problem, reduction, captions_of(*trace.problem, reduction),
                        paper_sizes(), {});
  const Schematic schematic = figures.after(0);
  const Label& label = schematic.points.at(1).labels.at(0);
  EXPECT_EQ(label.lines.front().text, "T");
  for (const DrawnPart& part : schematic.parts) {
    if (part.name == "E") continue;
    EXPECT_LT(label.box.max.x, part.middle.x) << part.name;
  }
}

TEST(Labels, LieOnNothingInAllProblems) {
  for (const NamedTrace& one : solved_problems()) expect_clear_labels(one, paper_sizes());
}

TEST(Labels, LieOnNothingInAllProblemsOnATerminal) {
  for (const NamedTrace& one : solved_problems()) expect_clear_labels(one, terminal_sizes());
}

TEST(Labels, LieOnNothingInRandomNetworks) {
  for (const NamedTrace& one : random_traces(60)) {
    expect_clear_labels(one, paper_sizes());
    expect_clear_labels(one, terminal_sizes());
  }
}

}  // namespace
}  // namespace ohmfold::drawing
