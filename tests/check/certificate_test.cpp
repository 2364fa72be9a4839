// A right certificate passes; each way in which one can be wrong is found.
#include "check/certificate.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>
#include <string>
#include <vector>

#include "check/building.h"

namespace ohmfold {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

// Corners 0 to 3. Point 4 lies between 1 and 2, point 5 between 1 and 3; a wire joins 0 and 6, so
// that part 2 begins at point 0 too. Beside the bridge: a second part between 2 and 3, and a dead
// end with a bridge of its own at the points 7 to 10.
Network sample() {
  return Builder(11)
      .battery(0, 1, 12)                      // 0
      .resistor(0, 2, 1)                      // 1
      .resistor(6, 3, 1)                      // 2
      .wire(0, 6)                             // 3
      .resistor(1, 4, 1)                      // 4
      .resistor(2, 4, 1)                      // 5
      .resistor(1, 5, 1)                      // 6
      .resistor(5, 3, 1)                      // 7
      .resistor(2, 3, 1)                      // 8
      .resistor(3, 2, 2)                      // 9
      .other(ElementKind::open_switch, 2, 3)  // 10
      .resistor(4, 5, 1)                      // 11
      .resistor(3, 7, 1)                      // 12: the only way to the dead end
      .resistor(7, 8, 1)                      // 13
      .resistor(7, 9, 1)                      // 14
      .resistor(7, 10, 1)                     // 15
      .resistor(8, 9, 1)                      // 16
      .resistor(8, 10, 1)                     // 17
      .resistor(9, 10, 1)                     // 18
      .resistor(0, 6, 1)                      // 19: short-circuited by the wire
      .build();
}

Certificate::Path path(int from, int to, const std::vector<int>& parts) {
  Certificate::Path one{point(from), point(to), {}};
  for (const int each : parts) one.parts.push_back(part(each));
  return one;
}

Certificate right() {
  return {{point(0), point(1), point(2), point(3)},
          {path(0, 1, {0}), path(0, 2, {1}), path(0, 3, {2}), path(1, 2, {4, 5}),
           path(1, 3, {6, 7}), path(2, 3, {8})}};
}

TEST(Verify, AcceptsFourCornersAndSixPaths) {
  EXPECT_THAT(verify(right(), sample()), IsEmpty());
}

TEST(Verify, TakesPointsThatWiresJoinForOne) {
  Certificate certificate = right();
  certificate.corners[0] = point(6);
  certificate.paths[1].from = point(6);
  EXPECT_THAT(verify(certificate, sample()), IsEmpty());
}

TEST(Verify, AcceptsPathsInAnyOrderAndDirection) {
  Certificate certificate = right();
  certificate.paths[3] = path(2, 1, {5, 4});
  std::swap(certificate.paths[0], certificate.paths[5]);
  EXPECT_THAT(verify(certificate, sample()), IsEmpty());
}

TEST(Verify, FindsEachKindOfCorruption) {
  struct Corruption {
    const char* what;
    std::function<void(Certificate&)> change;
    const char* finding;
  };
  const std::vector<Corruption> corruptions = {
      {"a corner that is not there", [](auto& c) { c.corners[3] = point(11); }, "no point"},
      {"a corner that is none", [](auto& c) { c.corners[3] = PointId{}; }, "no point"},
      {"a corner twice", [](auto& c) { c.corners[3] = point(2); }, "two of the corners"},
      {"corners that a wire joins", [](auto& c) { c.corners[3] = point(6); }, "two of the corners"},
      {"another corner", [](auto& c) { c.corners[3] = point(5); }, "end at a corner"},
      {"a path between others", [](auto& c) { c.paths[0] = path(0, 4, {0}); }, "end at a corner"},
      {"a path in a circle",
       [](auto& c) {
         c.paths[5] = path(2, 2, {8, 9});
       },
       "comes back"},
      {"a pair joined twice", [](auto& c) { c.paths[4] = path(2, 3, {9}); }, "two paths join"},
      {"no part", [](auto& c) { c.paths[0].parts.clear(); }, "no part"},
      {"a part that is not there", [](auto& c) { c.paths[0] = path(0, 1, {20}); }, "joins no two"},
      {"no such part", [](auto& c) { c.paths[0].parts = {PartId{}}; }, "joins no two"},
      {"a wire",
       [](auto& c) {
         c.paths[2] = path(0, 3, {3, 2});
       },
       "joins no two"},
      {"an open switch", [](auto& c) { c.paths[5] = path(2, 3, {10}); }, "joins no two"},
      {"a part with both ends on one point",
       [](auto& c) {
         c.paths[2] = path(0, 3, {19, 2});
       },
       "joins no two"},
      {"a part swapped", [](auto& c) { std::swap(c.paths[3].parts[0], c.paths[3].parts[1]); },
       "does not go on"},
      {"a part of elsewhere", [](auto& c) { c.paths[3].parts[1] = part(7); }, "does not go on"},
      {"a path cut short", [](auto& c) { c.paths[3].parts.pop_back(); }, "does not reach"},
      {"a path that goes past its corner",
       [](auto& c) {
         c.paths[5] = path(2, 3, {8, 12});
       },
       "paths meet"},
      {"a part used twice",
       [](auto& c) {
         c.paths[5] = path(2, 3, {5, 11, 7});
       },
       "used twice"},
      {"two paths through one point",
       [](auto& c) {
         c.paths[3] = path(1, 2, {4, 11, 7, 8});
       },
       "paths meet"},
      {"paths that share a point",
       [](auto& c) {
         c.paths[4] = path(1, 3, {6, 11, 7});
       },
       "paths meet"},
  };
  for (const Corruption& corruption : corruptions) {
    Certificate certificate = right();
    corruption.change(certificate);
    EXPECT_THAT(verify(certificate, sample()), HasSubstr(corruption.finding)) << corruption.what;
  }
}

TEST(Verify, FindsAPathThroughAPointOfAnother) {
  // Both of the paths from corner 1 pass point 4, by parts of their own.
  const Network network = Builder(5)
                              .battery(0, 1, 12)
                              .resistor(0, 2, 1)
                              .resistor(0, 3, 1)
                              .resistor(1, 4, 1)
                              .resistor(4, 2, 1)
                              .resistor(1, 4, 1)
                              .resistor(4, 3, 1)
                              .resistor(2, 3, 1)
                              .build();
  const Certificate certificate{{point(0), point(1), point(2), point(3)},
                                {path(0, 1, {0}), path(0, 2, {1}), path(0, 3, {2}),
                                 path(1, 2, {3, 4}), path(1, 3, {5, 6}), path(2, 3, {7})}};
  EXPECT_THAT(verify(certificate, network), HasSubstr("paths meet at point #4"));
}

TEST(Verify, FindsABridgeThatNoSourceFeeds) {
  const Certificate dead{{point(7), point(8), point(9), point(10)},
                         {path(7, 8, {13}), path(7, 9, {14}), path(7, 10, {15}), path(8, 9, {16}),
                          path(8, 10, {17}), path(9, 10, {18})}};
  EXPECT_THAT(verify(dead, sample()), HasSubstr("no source"));
}

TEST(Verify, FindsAPartThatIsGone) {
  Network network = sample();
  Edit edit;
  edit.removes = {part(8)};
  network.commit(edit);
  EXPECT_THAT(verify(right(), network), HasSubstr("joins no two"));
}

// The bridge lies far from the source, in the same closed paths; and beyond a point that all paths
// to the source pass.
TEST(Verify, TellsAFedBridgeFromOneBehindASinglePoint) {
  const auto bridge_at = [](int first_end, int second_end) {
    Builder builder(60);
    builder.battery(0, 1, 6);
    for (int i = 1; i < 40; ++i) builder.resistor(i, i + 1, 1);
    builder.resistor(40, 0, 1);                                           // 40
    builder.resistor(50, 51, 1).resistor(50, 52, 1).resistor(50, 53, 1);  // 41 to 43
    builder.resistor(51, 52, 1).resistor(51, 53, 1).resistor(52, 53, 1);  // 44 to 46
    builder.resistor(50, first_end, 1).resistor(53, second_end, 1);
    return builder.build();
  };
  const Certificate certificate{{point(50), point(51), point(52), point(53)},
                                {path(50, 51, {41}), path(50, 52, {42}), path(50, 53, {43}),
                                 path(51, 52, {44}), path(51, 53, {45}), path(52, 53, {46})}};
  EXPECT_THAT(verify(certificate, bridge_at(10, 30)), IsEmpty());
  EXPECT_THAT(verify(certificate, bridge_at(20, 20)), HasSubstr("no source"));
}

}  // namespace
}  // namespace ohmfold
