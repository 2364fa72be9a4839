// Names are numbered in the order in which they come.

#include "language/name_table.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace ohmfold {
namespace {

TEST(NameTable, FindsManyNamesByTheirNumbers) {
  constexpr std::uint32_t kCount = 5'000;
  std::vector<std::string> names;
  for (std::uint32_t i = 0; i < kCount; ++i) names.push_back("R" + std::to_string(i));
  NameTable table;
  EXPECT_FALSE(table.find("R0"));
  for (std::uint32_t i = 0; i < kCount; ++i) {
    const NameTable::Entry entry = table.add(names[i]);
    EXPECT_TRUE(entry.is_new);
    EXPECT_EQ(entry.number, i);
  }
  for (std::uint32_t i = 0; i < kCount; ++i) {
    EXPECT_EQ(table.find(names[i]), i);
    EXPECT_FALSE(table.add(names[i]).is_new);
  }
  EXPECT_FALSE(table.contains("R5000"));
}

TEST(NameTable, CountsTheNameless) {
  NameTable table;
  table.add("A");
  table.add_nameless();
  EXPECT_EQ(table.add("B").number, 2U);
  EXPECT_EQ(table.find("B"), 2U);
  EXPECT_FALSE(table.contains(""));
  EXPECT_EQ(table.names(), (std::vector<std::string_view>{"A", "", "B"}));
}

}  // namespace
}  // namespace ohmfold
