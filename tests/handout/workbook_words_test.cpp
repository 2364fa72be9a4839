// The remarks of a workbook.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <regex>
#include <set>

#include "handout/html_assets.h"
#include "views/page_words.h"
#include "views/wording_rules.h"

namespace ohmfold::test {
namespace {

std::set<std::string> keys_of_remarks() {
  std::set<std::string> keys;
  for (const views::WorkbookRemark& remark : views::workbook_remarks()) keys.insert(remark.key);
  return keys;
}

TEST(WorkbookRemarks, KeepToTheRulesOfWording) {
  for (const views::WorkbookRemark& remark : views::workbook_remarks()) {
    if (remark.key.starts_with("figures")) continue;
    EXPECT_EQ(objection(remark.words, {}), "") << remark.key;
  }
}

TEST(WorkbookRemarks, ExistForAllThatTheScriptFinds) {
  const std::string script(handout::kWorkbookJudge);
  static const std::regex kKey("key: \"([a-z]+)\"");
  const std::set<std::string> keys = keys_of_remarks();
  std::set<std::string> found;
  for (std::sregex_iterator at(script.begin(), script.end(), kKey), end; at != end; ++at) {
    found.insert((*at)[1].str());
  }
  EXPECT_GE(found.size(), 10U);
  for (const std::string& key : found) EXPECT_TRUE(keys.contains(key)) << key;
  EXPECT_EQ(keys.size(), views::workbook_remarks().size());
}

}  // namespace
}  // namespace ohmfold::test
