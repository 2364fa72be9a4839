// From one redraw to the next what can stay stays: counted by the drawings' own account, and
// measured once more on the SVG files.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "drawing/figures.h"
#include "drawing/read_back_trace.h"
#include "ohmfold/read.h"
#include "ohmfold/solve.h"
#include "properties/rounds.h"
#include "support/random_network.h"

namespace ohmfold::test {
namespace {

using support::Vec;

/// Where a point is: its wires, and the ends of the leads that are joined to it.
struct Whereabouts {
  std::vector<std::pair<Vec, Vec>> wires;
  std::vector<Vec> ends;

  [[nodiscard]] bool has(Vec spot) const {
    return std::ranges::any_of(ends, [&](Vec end) { return support::is_near(end, spot); }) ||
           std::ranges::any_of(wires, [&](const auto& wire) {
             return support::distance(wire.first, wire.second, spot) < support::kNear;
           });
  }
  [[nodiscard]] std::vector<Vec> spots() const {
    std::vector<Vec> all = ends;
    for (const auto& [from, to] : wires) {
      all.push_back(from);
      all.push_back(to);
    }
    return all;
  }
};

/// By the number of a point in the network.
std::map<std::size_t, Whereabouts> whereabouts(const std::string& svg, const Shown& shown) {
  const ReadBack read = read_back(support::read_svg(svg));
  std::map<std::size_t, std::size_t> point_of;  // by set
  for (const ReadPart& part : read.parts) {
    const auto meant = shown.parts.find(part.name);
    if (meant == shown.parts.end()) continue;
    point_of[part.joined[0]] = meant->second.from;
    point_of[part.joined[1]] = meant->second.to;
  }
  std::map<std::size_t, Whereabouts> found;
  for (std::size_t i = 0; i < read.lines.size(); ++i) {
    const Stretch& line = read.lines[i];
    const auto point = point_of.find(read.set[i]);
    if (point == point_of.end()) continue;
    Whereabouts& where = found[point->second];
    if (line.part.empty()) {
      where.wires.emplace_back(line.from, line.to);
    } else {
      if (line.from_open) where.ends.push_back(line.from);
      if (line.to_open) where.ends.push_back(line.to);
    }
  }
  return found;
}

/// Does a point lie where it lay, in part at least? It may lose wires with the parts that they led
/// to, or get longer ones.
bool stays(const Whereabouts& before, const Whereabouts& after) {
  const std::vector<Vec> then = before.spots();
  const std::vector<Vec> now = after.spots();
  return std::ranges::any_of(now, [&](Vec spot) { return before.has(spot); }) ||
         std::ranges::any_of(then, [&](Vec spot) { return after.has(spot); });
}

struct Measured {
  std::size_t kept = 0, moved = 0;
  std::size_t redraws = 0;  ///< in which something moved
};

Measured measured(const Trace& trace, std::size_t index) {
  const Reduction& reduction = trace.cases[index].main;
  const views::PartNames names(*trace.problem, reduction);
  Measured all;
  std::map<std::size_t, Whereabouts> before;
  for (const std::size_t steps : ends_of_stages(reduction.steps)) {
    const auto now =
        whereabouts(draw_svg(trace, index, steps), shown_by(replay(reduction, steps), names));
    const std::size_t moved = all.moved;
    for (const auto& [point, where] : now) {
      const auto then = before.find(point);
      if (then == before.end()) continue;
      ++(stays(then->second, where) ? all.kept : all.moved);
    }
    if (all.moved > moved) ++all.redraws;
    before = now;
  }
  return all;
}

class Account {
 public:
  /// Points may only leave their lines where a redraw was laid out anew. Their own account is
  /// stricter: to it a point lies where its name belongs, which moves where the wire under it goes.
  void add(const Trace& trace, std::size_t index, const std::string& where) {
    const CaseTrace& one = trace.cases[index];
    drawing::Captions captions;
    captions.parts.resize(one.main.end.part_count());
    captions.points.resize(one.main.end.point_count());
    const drawing::Figures figures(*trace.problem, one.main, captions, drawing::paper_sizes(), {});
    const drawing::Stability own = figures.stability();
    const Measured seen = measured(trace, index);
    EXPECT_LE(seen.redraws, own.redrawn) << where << ": " << seen.moved << " points moved";
    EXPECT_LE(own.redrawn, ends_of_stages(one.main.steps).size() - 1) << where;
    kept_ += own.kept;
    moved_ += own.moved;
    redrawn_ += own.redrawn;
    redraws_ += ends_of_stages(one.main.steps).size() - 1;
    seen_kept_ += seen.kept;
    seen_moved_ += seen.moved;
  }

  void record() const {
    ::testing::Test::RecordProperty("kept", std::to_string(kept_));
    ::testing::Test::RecordProperty("moved", std::to_string(moved_));
    ::testing::Test::RecordProperty("redrawn", std::to_string(redrawn_));
    ::testing::Test::RecordProperty("redraws", std::to_string(redraws_));
    ::testing::Test::RecordProperty("measured_kept", std::to_string(seen_kept_));
    ::testing::Test::RecordProperty("measured_moved", std::to_string(seen_moved_));
    EXPECT_GT(kept_, 0U);
    EXPECT_GT(seen_kept_, 0U);
  }

 private:
  std::size_t kept_ = 0, moved_ = 0, redrawn_ = 0, redraws_ = 0, seen_kept_ = 0, seen_moved_ = 0;
};

TEST(Stability, OfProblemsMovesPointsOnlyWhereARedrawIsLaidOutAnew) {
  Account account;
  const std::filesystem::path top = OHMFOLD_SOURCE_DIR;
  for (const auto& entry : std::filesystem::directory_iterator(top / "problems")) {
    if (entry.path().extension() != ".circuit") continue;
    std::ostringstream text;
    text << std::ifstream(entry.path()).rdbuf();
    const Outcome<Problem> problem = read_circuit({.name = entry.path(), .text = text.str()});
    ASSERT_TRUE(problem) << entry.path();
    const Trace trace = solve(*problem.value);
    for (std::size_t i = 0; i < trace.cases.size(); ++i) account.add(trace, i, entry.path());
  }
  account.record();
}

// Series and parallel alone never need a new layout.
TEST(Stability, OfRandomSeriesAndParallelMovesNoPoint) {
  Account account;
  support::RandomCircuits random(40'101);
  for (std::uint64_t i = 0; i < rounds(100); ++i) {
    const Trace trace = solve(random.series_parallel(2 + random.below(23)));
    account.add(trace, 0, "round " + std::to_string(i));
    EXPECT_EQ(measured(trace, 0).moved, 0U) << i;
  }
  account.record();
}

TEST(Stability, SeesAPointThatMoves) {
  const auto drawn = [](const std::string& x) {
    return R"(<svg viewBox="0 0 100 100"><g class="part" data-part="R"><path class="lead" d="M)" +
           x + R"( 50L90 50"/></g></svg>)";
  };
  const Shown shown{{{"R", {0, 1}}}, {}};
  const auto before = whereabouts(drawn("10"), shown);
  const auto after = whereabouts(drawn("12"), shown);
  EXPECT_TRUE(stays(before.at(0), before.at(0)));
  EXPECT_FALSE(stays(before.at(0), after.at(0)));
  EXPECT_TRUE(stays(before.at(1), after.at(1)));
}

}  // namespace
}  // namespace ohmfold::test
