// Which points hang together when parts are taken out.
#include "check/separation.h"

#include <gtest/gtest.h>

#include "check/building.h"

namespace ohmfold::check {
namespace {

TEST(Separate, TellsWhichPointsHangTogetherWithoutAPart) {
  const Network network = Builder(6).wire(0, 1).wire(1, 2).wire(2, 3).wire(4, 5).build();
  const PartId cut = part(1);
  const std::vector<std::uint32_t> apart =
      separate(network, {&cut, 1}, {{point(0)}, {point(2)}, {point(1)}, {point(5)}});
  EXPECT_EQ(apart[0], apart[2]);
  EXPECT_NE(apart[0], apart[1]);
  EXPECT_NE(apart[3], apart[0]);
  EXPECT_NE(apart[3], apart[1]);
  const std::vector<std::uint32_t> whole = separate(network, {}, {{point(0)}, {point(3)}});
  EXPECT_EQ(whole[0], whole[1]);
}

TEST(Separate, DoesNotPassGapsButPassesSourcesAndGroups) {
  const Network network = Builder(6)
                              .other(ElementKind::open_switch, 0, 1)
                              .battery(1, 2, 3)
                              .other(ElementKind::port, 2, 3)
                              .wire(4, 5)
                              .build();
  const auto apart =
      separate(network, {}, {{point(0)}, {point(1)}, {point(3), point(4)}, {point(5)}});
  EXPECT_NE(apart[0], apart[1]);
  EXPECT_EQ(apart[1], apart[2]);
  EXPECT_EQ(apart[2], apart[3]);
}

TEST(Separate, HandlesManyGroupsAtOnce) {
  Builder builder(1000);
  for (int i = 0; i + 2 < 1000; ++i) builder.wire(i, i + 2);
  std::vector<std::vector<PointId>> groups(1000);
  for (std::uint32_t i = 0; i < 1000; ++i) groups[i] = {PointId{i}};
  const auto number = separate(builder.build(), {}, groups);
  for (std::size_t i = 2; i < 1000; ++i) EXPECT_EQ(number[i], number[i - 2]);
  EXPECT_NE(number[0], number[1]);
}

}  // namespace
}  // namespace ohmfold::check
