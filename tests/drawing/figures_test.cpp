// Figures of a reduction: what stays, what is marked, what is drawn as what.
#include "drawing/figures.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "drawing/reductions.h"

namespace ohmfold::drawing {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using ::testing::SizeIs;
using ::testing::UnorderedElementsAre;

class Drawn {
 public:
  explicit Drawn(const std::string& text, std::size_t which = 0)
      : trace_(solve(test::problem_of(text))),
        reduction_(trace_.cases.at(which).main),
        figures_(*trace_.problem, reduction_, captions_of(*trace_.problem, reduction_),
                 paper_sizes(), {}) {}

  [[nodiscard]] std::size_t steps() const { return reduction_.steps.size(); }
  [[nodiscard]] Schematic after(std::size_t steps) const { return figures_.after(steps); }
  [[nodiscard]] Stability stability() const { return figures_.stability(); }

  /// Names and marks of the parts after some steps.
  [[nodiscard]] std::vector<std::string> marks(std::size_t steps) const {
    std::vector<std::string> all;
    for (const DrawnPart& part : after(steps).parts) {
      const char* mark = part.mark == Mark::next   ? " next "
                         : part.mark == Mark::came ? " came"
                                                   : "";
      all.push_back(part.name + mark + (part.step > 0 ? std::to_string(part.step) : ""));
    }
    return all;
  }

  [[nodiscard]] DrawnPart part(std::size_t steps, const std::string& name) const {
    for (DrawnPart& part : after(steps).parts) {
      if (part.name == name) return part;
    }
    ADD_FAILURE() << "no part " << name;
    return {};
  }

 private:
  Trace trace_;
  const Reduction& reduction_;
  Figures figures_;
};

constexpr const char* kTwoThenOne =
    "battery E = 12 V from G to T\nresistor R1 = 2 ohm from T to A\n"
    "resistor R2 = 6 ohm from A to G\nresistor R3 = 3 ohm from A to G\n";

TEST(Figures, MarkWhatTheNextStageTakesAndWhatTheLastOneMade) {
  const Drawn drawn(kTwoThenOne);
  EXPECT_THAT(drawn.marks(0), UnorderedElementsAre("E", "R1", "R2 next 1", "R3 next 1"));
  EXPECT_THAT(drawn.marks(1), UnorderedElementsAre("E", "R1 next 2", "R23 next 2"));
  EXPECT_THAT(drawn.marks(2), UnorderedElementsAre("E", "R123 came"));
}

TEST(Figures, KeepPointsWhereTheyAre) {
  const Drawn drawn(kTwoThenOne);
  EXPECT_EQ(drawn.stability().moved, 0U);
  EXPECT_EQ(drawn.stability().redrawn, 0U);
  EXPECT_EQ(drawn.part(0, "E").path, drawn.part(2, "E").path);
}

TEST(Figures, AreTheSameInWhateverOrderTheyAreAskedFor) {
  for (const NamedTrace& one : random_traces(20)) {
    const Reduction& reduction = one.trace.cases.front().main;
    const Captions captions = captions_of(*one.trace.problem, reduction);
    const Figures upward(*one.trace.problem, reduction, captions, paper_sizes(), {});
    const Figures downward(*one.trace.problem, reduction, captions, paper_sizes(), {});
    std::vector<Path> up, down;
    const auto paths = [](const Schematic& schematic) {
      std::vector<Path> all;
      for (const DrawnPart& part : schematic.parts) all.push_back(part.path);
      return all;
    };
    const std::size_t steps = reduction.steps.size();
    std::vector<std::vector<Path>> forth, back;
    for (std::size_t i = 0; i <= steps; ++i) forth.push_back(paths(upward.after(i)));
    for (std::size_t i = 0; i <= steps; ++i) back.push_back(paths(downward.after(steps - i)));
    std::reverse(back.begin(), back.end());
    EXPECT_EQ(forth, back) << one.name;
  }
}

TEST(Figures, PutDotsWhereThreeMeetAndRingsAtLooseEnds) {
  const Schematic schematic = Drawn(
                                  "battery E = 12 V from G to T\nresistor R1 = 2 ohm from T to G\n"
                                  "resistor R2 = 6 ohm from T to D\n")
                                  .after(0);
  std::size_t dots = 0, rings = 0;
  for (const DrawnPoint& point : schematic.points) {
    dots += point.dots.size();
    rings += point.rings.size();
    if (point.name == "D") {
      EXPECT_THAT(point.rings, SizeIs(1));
    }
  }
  EXPECT_EQ(dots, 1U);
  EXPECT_EQ(rings, 1U);
}

TEST(Figures, DrawSwitchesAsTheCaseSetsThem) {
  const std::string text =
      "battery E = 12 V from G to T\nresistor R1 = 2 ohm from T to A\n"
      "switch S from A to G\nlamp L = 6 ohm from A to G\n"
      "case \"off\": S open\ncase \"on\": S closed\n";
  EXPECT_EQ(Drawn(text, 0).part(0, "S").kind, SymbolKind::open_switch);
  EXPECT_EQ(Drawn(text, 1).part(0, "S").kind, SymbolKind::closed_switch);
  EXPECT_EQ(Drawn(text, 0).part(0, "L").kind, SymbolKind::lamp);
}

TEST(Figures, CallAWireWithoutLabelAsTheProblemDoes) {
  Trace trace = solve(test::problem_of(
      "battery E = 6 V from G to T\nresistor R1 = 12 ohm from T to A\nwire from A to G\n"));
  const Reduction& reduction = trace.cases.front().main;
  Captions captions = captions_of(*trace.problem, reduction);
  captions.parts[2].clear();
  const Figures figures(*trace.problem, reduction, captions, paper_sizes(), {});
  const Schematic schematic = figures.after(0);
  ASSERT_THAT(schematic.parts, SizeIs(3));
  EXPECT_EQ(schematic.parts[2].name, "wire 1");
  EXPECT_THAT(schematic.parts[2].labels, IsEmpty());
}

TEST(Figures, LayOutAnewWhereWiresHidTheStructure) {
  // Three resistors in a chain, folded by two wires: all in parallel.
  const Drawn drawn(
      "battery E = 6 V from S to P\nresistor R1 = 12 ohm from P to Q\n"
      "resistor R2 = 6 ohm from Q to R\nresistor R3 = 4 ohm from R to S\n"
      "wire W1 from P to R\nwire W2 from Q to S\n");
  EXPECT_EQ(drawn.stability().redrawn, 1U);
}

TEST(Figures, ListACrossingWithTheUprightLineAsTheOneAbove) {
  for (const NamedTrace& one : solved_problems()) {
    const Reduction& reduction = one.trace.cases.front().main;
    const Figures figures(*one.trace.problem, reduction, captions_of(*one.trace.problem, reduction),
                          terminal_sizes(), {});
    for (const Crossing& crossing : figures.after(0).crossings) {
      EXPECT_EQ(crossing.over.from.x, crossing.over.to.x) << one.name;
      EXPECT_EQ(crossing.at.x, crossing.over.from.x) << one.name;
    }
  }
}

TEST(Figures, OfNothingAreEmpty) {
  const Problem problem;
  const Reduction reduction;
  const Figures figures(problem, reduction, {}, paper_sizes(), {});
  EXPECT_THAT(figures.after(0).parts, IsEmpty());
}

}  // namespace
}  // namespace ohmfold::drawing
