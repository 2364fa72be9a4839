// A session of practice, line by line, without a terminal or a file.
#include "cli/practice.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>

#include "ohmfold/read.h"

namespace ohmfold {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

class PracticeTest : public ::testing::Test {
 protected:
  Practice begin(const std::string& text) const {
    return Practice::begin(exercise_, {.name = "own.work", .text = text}, {}).value.value();
  }

  const Exercise exercise_ =
      prepare(read_circuit({.name = "pair",
                            .text = "battery E = 6 V from G to T\nresistor R1 = 4 from T to A\n"
                                    "resistor R2 = 8 from A to G\nfind current through E\n"})
                  .value.value());
};

TEST_F(PracticeTest, ChangesTheWorkOnlyByRightClaims) {
  Practice practice = begin("");
  EXPECT_FALSE(practice.take("R12 = R1 || R2").changed);
  EXPECT_THAT(practice.text(), IsEmpty());
  EXPECT_TRUE(practice.take("R12 = R1 + R2 = 12 ohm").changed);
  EXPECT_EQ(practice.text(), "R12 = R1 + R2 = 12 ohm\n");
}

TEST_F(PracticeTest, SaysNothingToAnEmptyLine) {
  Practice practice = begin("");
  const Practice::Reply reply = practice.take("  \t ");
  EXPECT_THAT(reply.text, IsEmpty());
  EXPECT_FALSE(reply.changed);
  EXPECT_FALSE(reply.over);
}

TEST_F(PracticeTest, KeepsACommentOfItsOwn) {
  Practice practice = begin("# first");
  EXPECT_TRUE(practice.take("# second").changed);
  EXPECT_EQ(practice.text(), "# first\n# second\n");
}

TEST_F(PracticeTest, IsOverOnlyAtQuit) {
  Practice practice = begin("");
  for (const char* line : {"hint", "show", "undo", "why", "keep", "case", "help"}) {
    EXPECT_FALSE(practice.take(line).over) << line;
  }
  EXPECT_TRUE(practice.take("quit").over);
}

TEST_F(PracticeTest, ForgetsARejectedClaimBeforeItTakesBackAnother) {
  Practice practice = begin("");
  (void)practice.take("R12 = R1 + R2 = 12 ohm");
  (void)practice.take("I_E = 9 A");
  EXPECT_THAT(practice.take("undo").text, HasSubstr("Forgotten: I_E = 9 A"));
  EXPECT_EQ(practice.text(), "R12 = R1 + R2 = 12 ohm\n");
  EXPECT_THAT(practice.take("undo").text, HasSubstr("Taken back: R12"));
  EXPECT_THAT(practice.text(), IsEmpty());
}

TEST_F(PracticeTest, GivesTheReasonOfTheLastRightStep) {
  Practice practice = begin("");
  const std::string reply = practice.take("R12 = R1 + R2 = 12 ohm").text;
  EXPECT_THAT(reply, HasSubstr("A")) << "the point where they meet";
  EXPECT_EQ(practice.take("why").text, reply);
}

TEST_F(PracticeTest, RefusesAWorkThatCannotBeRead) {
  const Outcome<Practice> practice =
      Practice::begin(exercise_, {.name = "own.work", .text = "R = = 3\n"}, {});
  EXPECT_FALSE(practice);
  EXPECT_TRUE(has_error(practice.diagnostics));
}

TEST_F(PracticeTest, TakesNoMoreClaimsThanItCanJudgeInTime) {
  std::string text;
  for (std::size_t i = 0; i < kMostClaimsInPractice; ++i) text += "V_R1 = 2.0 V\n";
  Practice practice = begin(text);
  const Practice::Reply reply = practice.take("V_R2 = 4.0 V");
  EXPECT_FALSE(reply.changed);
  EXPECT_THAT(reply.text, HasSubstr("no more can be added"));
}

}  // namespace
}  // namespace ohmfold
