// Where a name is split for a subscript.
#include "drawing/names.h"

#include <gtest/gtest.h>

namespace ohmfold::drawing {
namespace {

TEST(SplitName, TakesDigitsFromTheEnd) {
  EXPECT_EQ(split_name("R12").stem, "R");
  EXPECT_EQ(split_name("R12").digits, "12");
}

TEST(SplitName, LeavesOtherNamesWhole) {
  for (const char* name : {"R", "12", "R_1_2", "R_L1_L2", "a-1", ""}) {
    EXPECT_EQ(split_name(name).stem, name);
    EXPECT_EQ(split_name(name).digits, "") << name;
  }
}

}  // namespace
}  // namespace ohmfold::drawing
