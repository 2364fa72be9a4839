// Every known error: the work that it produces, on at least ten networks, is diagnosed as that
// error, and any other that is named gives the same number.
#include <gtest/gtest.h>

#include <set>

#include "coach/error_formulas.h"
#include "coach/error_scene.h"
#include "support/judged.h"

namespace ohmfold {
namespace {

constexpr int kNetworks = 10;
constexpr int kTries = 3000;

std::vector<test::ErrorRow> all_rows() {
  std::vector<test::ErrorRow> rows;
  for (auto some : {test::structure_rows(), test::whole_network_rows(), test::arithmetic_rows(),
                    test::current_rows(), test::voltage_rows()}) {
    rows.insert(rows.end(), some.begin(), some.end());
  }
  return rows;
}

TEST(KnownErrors, EachHasWorksThatItProduces) {
  std::set<KnownError> found;
  for (const test::ErrorRow& row : all_rows()) found.insert(row.error);
  for (std::size_t i = 0; i < kKnownErrors; ++i) {
    const auto error = static_cast<KnownError>(i);
    EXPECT_TRUE(found.contains(error)) << word_of(error) << " has no row";
  }
}

// What is wrong with what is found about the work; empty where nothing is.
std::string fault_of(const test::ErrorRow& row, const test::ErrorWork& work) {
  const test::JudgedText found = test::judged(work.exercise, work.text);
  if (found.result.lines.empty()) return "it cannot be read";
  const std::size_t last = found.result.lines.size() - 1;
  const Judgement& line = found.result.lines[last];
  // A wrong word for the right law costs nothing, and a right number from wrong lines is right by
  // itself: the line holds.
  const bool may_hold =
      row.error == KnownError::wrong_word || row.error == KnownError::wrong_working_hit;
  if (found.first_that_fails() != last && !(may_hold && line.holds()))
    return "not its last line is wrong: " + found.told(last);
  bool named = false;
  for (const Diagnosis& diagnosis : line.errors) {
    named = named || diagnosis.error == row.error;
    if (!work.scene) continue;
    const auto gives = test::gives(diagnosis.error, *work.scene, work.key, *work.number);
    if (gives.value_or(true)) continue;
    return std::string(word_of(diagnosis.error)) + " gives another number: " + found.told(last);
  }
  return named ? "" : "it is not named: " + found.told(last);
}

TEST(KnownErrors, AreNamedOnTenNetworksEach) {
  std::uint64_t seed = 500;
  for (const test::ErrorRow& row : all_rows()) {
    support::RandomCircuits random(++seed);
    int made = 0;
    bool right = true;
    for (int i = 0; i < kTries && made < kNetworks; ++i) {
      const auto work = row.make(random);
      if (!work) continue;
      ++made;
      const std::string fault = fault_of(row, *work);
      if (fault.empty()) continue;
      ADD_FAILURE() << word_of(row.error) << ", row " << seed - 500 << ": " << fault << "\n"
                    << work->text;
      right = false;
      break;
    }
    EXPECT_TRUE(made == kNetworks || !right) << word_of(row.error) << " on " << made;
  }
}

}  // namespace
}  // namespace ohmfold
