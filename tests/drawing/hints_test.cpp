// Points lie where the file wants them, and all lines find their way; or there is no such drawing.
#include "drawing/hints.h"

#include <random>

#include "drawing/sound.h"

namespace ohmfold::drawing {
namespace {

/// Where a point is wanted, in steps of the file.
PlaceHint place(std::uint32_t point, const Number& x, const Number& y) {
  return {PointId{point}, x, y};
}

Network network_of(std::size_t points,
                   const std::vector<std::pair<std::uint32_t, std::uint32_t>>& parts) {
  Network network(points);
  for (const auto& [from, to] : parts) {
    network.add(ElementKind::resistor, PointId{from}, PointId{to}, Ratio(1));
  }
  return network;
}

std::optional<Placement> laid_out(const Network& network, const std::vector<PlaceHint>& hints) {
  LayoutOptions options;
  options.hints = hints;
  return lay_out_by_hints(network, options, {});
}

Spot at(const Placement& placement, std::uint32_t point) {
  for (const PlacedPoint& placed : placement.points) {
    if (placed.point == PointId{point}) return placed.at;
  }
  ADD_FAILURE() << "no point " << point;
  return {};
}

/// Sound, and the points where they are wanted, a step being two cells.
void expect_as_wanted(const Network& network, const std::vector<PlaceHint>& hints) {
  const std::optional<Placement> placement = laid_out(network, hints);
  ASSERT_TRUE(placement.has_value());
  expect_sound(network, *placement);
  const Spot origin = at(*placement, hints.front().point.index);
  for (const PlaceHint& hint : hints) {
    const Spot apart = at(*placement, hint.point.index) - origin;
    EXPECT_EQ(Number(apart.x), (hint.x - hints.front().x) * Number(2 * kCell));
    EXPECT_EQ(Number(-apart.y), (hint.y - hints.front().y) * Number(2 * kCell));
  }
}

/// Its wires and its line end to end: is everything in one row?
bool is_straight(const Placement& placement, std::size_t part) {
  const Path& path = placement.parts[part].path;
  return path.size() == 2 && path[0].y == path[1].y;
}

TEST(Hints, PutNeighboursIntoOneRowWithStraightLines) {
  const Network chain = network_of(4, {{0, 1}, {1, 2}, {3, 2}});
  const std::vector<PlaceHint> hints{place(0, 0, 0), place(1, 2, 0), place(2, 4, 0),
                                     place(3, 6, 0)};
  expect_as_wanted(chain, hints);
  const std::optional<Placement> placement = laid_out(chain, hints);
  ASSERT_TRUE(placement.has_value());
  for (std::size_t i = 0; i < 3; ++i) EXPECT_TRUE(is_straight(*placement, i));
  EXPECT_EQ(placement->parts[0].path[0].x - at(*placement, 0).x, kCell + kCell / 2)
      << "in the middle between its points";
}

TEST(Hints, OfTheFoldedChainLeaveRoomForItsWires) {
  const Network network = network_of(4, {{3, 0}, {0, 1}, {1, 2}, {2, 3}, {0, 2}, {1, 3}});
  expect_as_wanted(network, {place(0, 0, 0), place(1, 2, 0), place(2, 4, 0), place(3, 6, 0)});
}

TEST(Hints, CountUpwards) {
  const Network network = network_of(2, {{0, 1}});
  const std::optional<Placement> placement = laid_out(network, {place(0, 0, 0), place(1, 0, 1)});
  ASSERT_TRUE(placement.has_value());
  EXPECT_LT(at(*placement, 1).y, at(*placement, 0).y);
}

TEST(Hints, PutManyPartsSideBySide) {
  for (std::size_t count = 1; count <= 9; ++count) {
    SCOPED_TRACE(count);
    const Network network =
        network_of(2, std::vector<std::pair<std::uint32_t, std::uint32_t>>(count, {0, 1}));
    expect_as_wanted(network, {place(0, 0, 0), place(1, 0, 3)});
  }
}

TEST(Hints, MakeASquareWithBothDiagonals) {
  const Network network = network_of(4, {{0, 1}, {1, 2}, {2, 3}, {3, 0}, {0, 2}, {1, 3}});
  expect_as_wanted(network, {place(0, 0, 0), place(1, 3, 0), place(2, 3, 3), place(3, 0, 3)});
}

TEST(Hints, MakeCrossingsWhereLinesMustPass) {
  // Five points in a row, each joined to each.
  std::vector<std::pair<std::uint32_t, std::uint32_t>> parts;
  for (std::uint32_t a = 0; a < 5; ++a) {
    for (std::uint32_t b = a + 1; b < 5; ++b) parts.emplace_back(a, b);
  }
  expect_as_wanted(network_of(5, parts), {place(0, 0, 0), place(1, 3, 0), place(2, 6, 0),
                                          place(3, 9, 0), place(4, 12, 0)});
}

TEST(Hints, MayBeFractionsAndNegative) {
  const Network network = network_of(3, {{0, 1}, {1, 2}, {2, 0}});
  expect_as_wanted(network, {place(0, -3, Number(1) / Number(2)), place(1, 0, -2),
                             place(2, Number(-7) / Number(4), 3)});
  // A third is rounded to the grid, a quarter of a step.
  const std::optional<Placement> placement =
      laid_out(network, {place(0, 0, 0), place(1, Number(7) / Number(3), 0), place(2, 0, 2)});
  ASSERT_TRUE(placement.has_value());
  expect_sound(network, *placement);
  EXPECT_EQ(at(*placement, 1).x - at(*placement, 0).x, 9 * kCell / 2);
}

TEST(Hints, OfSomePointsPutTheOthersBetween) {
  const Network network = network_of(3, {{0, 1}, {1, 2}, {2, 0}});
  const std::optional<Placement> placement = laid_out(network, {place(0, 0, 0), place(2, 4, 0)});
  ASSERT_TRUE(placement.has_value());
  expect_sound(network, *placement);
  EXPECT_EQ(at(*placement, 1) - at(*placement, 0), (Spot{4 * kCell, 0}));
}

TEST(Hints, OfPointsFarFromOthersLeaveThemSomePlace) {
  const Network network =
      network_of(8, {{0, 1}, {2, 3}, {3, 4}, {4, 2}, {5, 6}, {6, 7}, {7, 5}, {5, 1}});
  const std::optional<Placement> placement = laid_out(network, {place(0, 0, 0), place(1, 2, 1)});
  ASSERT_TRUE(placement.has_value());
  expect_sound(network, *placement);
}

TEST(Hints, OfOnePointAloneAskForNothing) {
  const Network network = network_of(2, {{0, 1}});
  Placement automatic;
  automatic.parts = {{PartId{0}, {{0, 0}, {0, 12}}, 0}};
  automatic.points = {{PointId{0}, {}, {0, 0}}, {PointId{1}, {}, {0, 12}}};
  LayoutOptions options;
  options.hints = {place(1, 5, 7)};
  const std::optional<Placement> placement = lay_out_by_hints(network, options, automatic);
  ASSERT_TRUE(placement.has_value());
  expect_sound(network, *placement);
  EXPECT_EQ(placement->parts[0].path, automatic.parts[0].path);
}

TEST(Hints, ThatLeaveNoRoomAreNotFollowed) {
  const Network network = network_of(2, {{0, 1}});
  Number huge = 1;
  for (int i = 0; i < 40; ++i) huge = huge * Number(1000);
  EXPECT_FALSE(laid_out(network, {}).has_value());
  EXPECT_FALSE(laid_out(network, {place(0, 1, 1), place(1, 1, 1)}).has_value());
  EXPECT_FALSE(laid_out(network, {place(0, 0, 0), place(1, Number(1) / Number(9), 0)}).has_value());
  EXPECT_FALSE(laid_out(network, {place(0, 0, 0), place(1, huge, 0)}).has_value());
  EXPECT_FALSE(laid_out(network, {place(0, -huge, 0), place(1, 0, huge)}).has_value());
  EXPECT_FALSE(laid_out(network, {place(0, 0, 0), place(1, 1000, 0)}).has_value());
  EXPECT_FALSE(laid_out(network, {place(0, 0, 0), place(1, Number::symbol("r"), 0)}).has_value());
  EXPECT_FALSE(laid_out(Network(2), {place(0, 0, 0), place(1, 2, 0)}).has_value());
}

TEST(Hints, OfPointsNearEachOtherStillWork) {
  const Network network = network_of(3, {{0, 1}, {1, 2}, {2, 0}});
  const Number half = Number(1) / Number(2);
  expect_as_wanted(network, {place(0, 0, 0), place(1, half, 0), place(2, 0, half)});
}

TEST(Hints, OfMergedPointsAreThoseOfTheirRepresentative) {
  Network network(4);
  const PartId wire = network.add(ElementKind::wire, PointId{0}, PointId{1});
  network.add(ElementKind::resistor, PointId{1}, PointId{2}, Ratio(1));
  network.add(ElementKind::resistor, PointId{2}, PointId{0}, Ratio(1));
  Edit edit;
  edit.removes = {wire};
  edit.merges = {PointId{0}, PointId{1}};
  network.commit(edit);
  const std::optional<Placement> placement =
      laid_out(network, {place(1, 9, 9), place(0, 0, 0), place(2, 2, 0)});
  ASSERT_TRUE(placement.has_value());
  expect_sound(network, *placement);
  EXPECT_EQ(at(*placement, 2) - at(*placement, 0), (Spot{4 * kCell, 0}));
}

TEST(Hints, OfAPortLeadItsTerminalsOut) {
  Network network(4);
  network.add(ElementKind::port, PointId{0}, PointId{3});
  network.add(ElementKind::resistor, PointId{0}, PointId{1}, Ratio(1));
  network.add(ElementKind::resistor, PointId{1}, PointId{2}, Ratio(1));
  network.add(ElementKind::resistor, PointId{2}, PointId{3}, Ratio(1));
  network.add(ElementKind::resistor, PointId{0}, PointId{2}, Ratio(1));
  expect_as_wanted(network, {place(0, 0, 0), place(1, 2, 0), place(2, 4, 0), place(3, 6, 0)});
}

TEST(Hints, LeaveRoomForAPartWithBothEndsAtOnePoint) {
  const Network network = network_of(2, {{0, 1}, {1, 1}, {0, 0}});
  expect_as_wanted(network, {place(0, 0, 0), place(1, 2, 0)});
}

TEST(Hints, AtRandomAreFollowedSoundlyOrNotAtAll) {
  std::mt19937_64 random(5);
  int followed = 0;
  constexpr int kRounds = 120;
  for (int round = 0; round < kRounds; ++round) {
    SCOPED_TRACE(round);
    const auto points = static_cast<std::uint32_t>(2 + random() % 7);
    std::vector<std::pair<std::uint32_t, std::uint32_t>> parts;
    for (std::uint32_t i = 1; i < points; ++i) {
      parts.emplace_back(i, static_cast<std::uint32_t>(random() % i));
    }
    for (std::size_t i = random() % 8; i > 0; --i) {
      parts.emplace_back(static_cast<std::uint32_t>(random() % points),
                         static_cast<std::uint32_t>(random() % points));
    }
    const Network network = network_of(points, parts);
    std::vector<PlaceHint> hints;
    for (std::uint32_t i = 0; i < points; ++i) {
      if (random() % 5 == 0) continue;
      hints.push_back(place(i, static_cast<int>(random() % 6), static_cast<int>(random() % 5)));
    }
    const std::optional<Placement> placement = laid_out(network, hints);
    if (!placement || placement->parts.empty()) continue;
    ++followed;
    expect_sound(network, *placement);
    if (HasFailure()) return;
  }
  RecordProperty("followed", followed);
  EXPECT_GT(followed, kRounds / 3);
}

TEST(Hints, AreFollowedTheSameWayEachTime) {
  const Network network = network_of(4, {{0, 1}, {1, 2}, {2, 3}, {3, 0}, {0, 2}, {1, 3}});
  const std::vector<PlaceHint> hints{place(0, 0, 0), place(1, 3, 1), place(2, 2, 3)};
  const std::optional<Placement> one = laid_out(network, hints);
  const std::optional<Placement> other = laid_out(network, hints);
  ASSERT_TRUE(one && other);
  for (std::size_t i = 0; i < one->parts.size(); ++i) {
    EXPECT_EQ(one->parts[i].path, other->parts[i].path);
  }
  for (std::size_t i = 0; i < one->points.size(); ++i) {
    EXPECT_EQ(one->points[i].wires, other->points[i].wires);
  }
}

TEST(Hints, OfManyPointsFarApartEndSoon) {
  std::vector<std::pair<std::uint32_t, std::uint32_t>> parts;
  std::vector<PlaceHint> hints;
  for (std::uint32_t i = 0; i < 100; ++i) {
    hints.push_back(place(i, static_cast<int>(i * 37 % 60), static_cast<int>(i * 23 % 59)));
    parts.emplace_back(i, (i * 7 + 1) % 100);
    parts.emplace_back(i, (i * 11 + 3) % 100);
  }
  const Network network = network_of(100, parts);
  const std::optional<Placement> placement = laid_out(network, hints);
  if (placement) expect_sound(network, *placement);
}

}  // namespace
}  // namespace ohmfold::drawing
