// Whole logs of steps, exactly and modulo primes.
#include <gtest/gtest.h>

#include "check/building.h"
#include "check/step.h"

namespace ohmfold {
namespace {

using check::Arithmetic;

// Applies written steps and keeps the log, as whoever solves would.
class Recorder {
 public:
  explicit Recorder(const Network& start) {
    reduction_.start = start;
    reduction_.end = start;
  }

  PartId apply(const WrittenStep& step) {
    Edit edit;
    edit.removes = step.takes;
    edit.merges = step.merges;
    if (step.made) edit.adds = {*step.made};
    const PartId made = reduction_.end.commit(edit);
    Place place;
    if (step.made) place = {{}, step.made->from, step.made->to};
    reduction_.steps.append(RuleName::series, 1, place, edit, made, {});
    return made;
  }

  [[nodiscard]] const Reduction& reduction() const { return reduction_; }
  Reduction& reduction() { return reduction_; }

 private:
  Reduction reduction_;
};

// A ladder of `rungs` rungs of 1 ohm, rails of 1 ohm on one side, reduced from its far end.
Recorder reduced_ladder(int rungs) {
  Builder builder(rungs + 1);
  builder.battery(0, 1, 1);
  for (int i = 1; i <= rungs; ++i) builder.resistor(i, 0, 1);
  for (int i = 1; i < rungs; ++i) builder.resistor(i, i + 1, 1);
  Recorder recorder(builder.build());
  int last = rungs;  // the part from the last point to point 0
  Ratio value = ohm(1);
  for (int i = rungs; i > 1; --i) {
    value = Ratio::series(ohm(1), value);
    const PartId chain = recorder.apply(making({rungs + i - 1, last}, i - 1, 0, value));
    value = Ratio::parallel(ohm(1), value);
    const PartId both =
        recorder.apply(making({i - 1, static_cast<int>(chain.index)}, i - 1, 0, value));
    last = static_cast<int>(both.index);
  }
  return recorder;
}

TEST(StepLog, HasOneCheckForEachStep) {
  const Recorder recorder = reduced_ladder(4);
  const std::vector<Check> checks = check_steps(recorder.reduction());
  ASSERT_EQ(checks.size(), 6U);
  EXPECT_TRUE(all_hold(checks));
  EXPECT_EQ(checks[3].step, 4U);
  EXPECT_EQ(checks[3].law, CheckLaw::step);
  EXPECT_EQ(checks[3].primes, 0);
}

TEST(StepLog, HasOneCheckForAllWhereThereAreMany) {
  const Recorder recorder = reduced_ladder(300);
  for (const auto arithmetic : {Arithmetic::exact, Arithmetic::modular}) {
    const std::vector<Check> checks = check_steps(recorder.reduction(), 200, arithmetic);
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_TRUE(checks[0].holds);
    EXPECT_EQ(checks[0].places, 598U);
    EXPECT_EQ(checks[0].primes, arithmetic == Arithmetic::exact ? 0 : check::kPrimes);
  }
}

TEST(StepLog, StopsAtTheFirstWrongStep) {
  for (const auto arithmetic : {Arithmetic::exact, Arithmetic::modular}) {
    Recorder recorder(
        Builder(4).battery(0, 3, 12).resistor(3, 2, 4).resistor(2, 1, 6).resistor(1, 0, 5).build());
    recorder.apply(making({1, 2}, 3, 1, ohm(11)));
    recorder.apply(making({3, 4}, 3, 0, ohm(16)));
    const std::vector<Check> checks = check_steps(recorder.reduction(), 200, arithmetic);
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_FALSE(checks[0].holds);
    EXPECT_EQ(checks[0].step, 1U);
    EXPECT_EQ(checks[0].detail.substr(0, 8), "step 1: ");
  }
}

TEST(StepLog, FailsWhereTheEndIsAnotherNetwork) {
  Recorder recorder = reduced_ladder(3);
  recorder.reduction().end = recorder.reduction().start;
  EXPECT_FALSE(all_hold(check_steps(recorder.reduction())));
  Recorder second = reduced_ladder(3);
  Edit edit;
  edit.removes = {part(0)};
  second.reduction().end.commit(edit);
  EXPECT_FALSE(all_hold(check_steps(second.reduction())));
}

TEST(StepLog, IsLinearForALongChainTakenAtOnce) {
  constexpr int kParts = 20'000;
  Builder builder(kParts + 1);
  builder.battery(0, kParts, 12);
  std::vector<int> parts;
  for (int i = 0; i < kParts; ++i) {
    builder.resistor(i + 1, i, 1 + i % 7);
    parts.push_back(i + 1);
  }
  int sum = 0;
  for (int i = 0; i < kParts; ++i) sum += 1 + i % 7;
  for (const auto arithmetic : {Arithmetic::exact, Arithmetic::modular}) {
    Recorder right(builder.build());
    right.apply(making(parts, kParts, 0, ohm(sum)));
    EXPECT_TRUE(all_hold(check_steps(right.reduction(), 200, arithmetic)));
    Recorder wrong(builder.build());
    wrong.apply(making(parts, kParts, 0, ohm(sum + 1)));
    EXPECT_FALSE(all_hold(check_steps(wrong.reduction(), 200, arithmetic)));
  }
}

TEST(StepLog, IsQuickWhereLinksGoOneByOne) {
  // Each link is the only one between a small loop and all that is left.
  constexpr int kLoops = 2'000;
  Builder builder(2 * kLoops);
  for (int i = 0; i < kLoops; ++i)
    builder.battery(2 * i, 2 * i + 1, 3).resistor(2 * i, 2 * i + 1, 2);
  for (int i = 1; i < kLoops; ++i) builder.resistor(2 * i - 1, 2 * i, 5);
  Recorder recorder(builder.build());
  for (int i = 1; i < kLoops; ++i) recorder.apply(taking({2 * kLoops + i - 1}));
  EXPECT_TRUE(all_hold(check_steps(recorder.reduction())));
}

}  // namespace
}  // namespace ohmfold
