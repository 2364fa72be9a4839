// Sessions of practice: at a terminal, through a pipe, killed and gone on with.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <string>
#include <vector>

#include "programs/conversation.h"
#include "programs/program.h"

namespace ohmfold::testing {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

// E drives 3 A: R1 in series with R2 || R3 = 6 ohm.
const std::string kCircuit =
    "title \"A lamp behind two\"\nbattery E = 30 V from G to T\nresistor R1 = 4 from T to A\n"
    "resistor R2 = 9 from A to G\nresistor R3 = 18 from A to G\nfind current through E\n"
    "find voltage across R1\n";
const std::string kRightStep = "R23 = R2 || R3 = 6 ohm";
const std::string kWrongStep = "R12 = R1 + R2 = 13 ohm";  // R3 joins where they meet

class Practise : public ::testing::Test {
 protected:
  void SetUp() override { write_file(folder_.path() / "lamp.circuit", kCircuit); }

  Launch launch(std::vector<std::string> more = {}) const {
    Launch run;
    run.arguments = {"practise", "lamp.circuit"};
    run.arguments.insert(run.arguments.end(), more.begin(), more.end());
    run.folder = folder_.path();
    return run;
  }
  /// A session through a pipe.
  Ending hold(const std::string& lines, std::vector<std::string> more = {}) const {
    Launch run = launch(std::move(more));
    run.input = lines;
    return run_program(run);
  }
  std::string work(const std::string& name = "lamp.work") const {
    return read_file(folder_.path() / name);
  }
  void write(const std::string& text, const std::string& name = "lamp.work") const {
    write_file(folder_.path() / name, text);
  }

  TemporaryFolder folder_;
};

TEST_F(Practise, SaysAtTheStartWhereTheWorkIsKept) {
  const Ending ending = hold("");
  EXPECT_EQ(ending.code, 0) << ending.err;
  EXPECT_THAT(ending.out, HasSubstr("kept in lamp.work"));
  EXPECT_THAT(ending.out, HasSubstr("A lamp behind two"));
  EXPECT_THAT(ending.out, HasSubstr("Still asked:\n  current through E\n  voltage across R1\n"));
  EXPECT_THAT(folder_.names(), ElementsAre("lamp.circuit")) << "nothing was claimed";
}

TEST_F(Practise, KeepsRightClaimsInTheFileAndNoOthers) {
  const Ending ending = hold(kWrongStep + '\n' + kRightStep + "\nI_E = 3 A\nquit\n");
  EXPECT_EQ(ending.code, 0) << ending.err;
  EXPECT_EQ(work(), kRightStep + "\nI_E = 3 A\n");
}

TEST_F(Practise, WritesNoControlSequencesThroughAPipe) {
  Launch run = launch();
  run.input = kRightStep + "\nhint\nshow\nquit\n";
  run.environment = {{"TERM", "xterm"}, {"LC_ALL", "C.UTF-8"}};
  const Ending ending = run_program(run);
  EXPECT_EQ(ending.out.find('\033'), std::string::npos);
  EXPECT_THAT(ending.out, HasSubstr("> " + kRightStep + '\n')) << "the session can be read";
}

TEST_F(Practise, KeepsAMistakeOnlyWhenAsked) {
  (void)hold(kWrongStep + "\nquit\n");
  EXPECT_THAT(folder_.names(), ElementsAre("lamp.circuit"));
  const Ending kept = hold(kWrongStep + "\nkeep\nquit\n");
  EXPECT_EQ(work(), kWrongStep + '\n');
  EXPECT_THAT(kept.out, HasSubstr("Kept, though not right:"));
  const Ending resumed = hold("quit\n");
  EXPECT_THAT(resumed.out, HasSubstr("1 of them does not hold"));
  EXPECT_THAT(resumed.out, HasSubstr("line 1: " + kWrongStep));
}

TEST_F(Practise, TakesBackTheLastClaimWithItsLine) {
  (void)hold("# mine\n" + kRightStep + "\nR = R1 + R23 # all\nundo\nquit\n");
  EXPECT_EQ(work(), "# mine\n" + kRightStep + '\n');
  const Ending empty = hold("undo\nundo\nquit\n");
  EXPECT_EQ(work(), "# mine\n");
  EXPECT_THAT(empty.out, HasSubstr("nothing to take back"));
}

TEST_F(Practise, GoesOnWithAWorkAndItsComments) {
  const std::string before = "# Monday\n" + kRightStep + " # they share both points\n";
  write(before);
  const Ending ending = hold("I_E = 3 A\nquit\n");
  EXPECT_THAT(ending.out, HasSubstr("Your work goes on with 1 claim"));
  EXPECT_EQ(work(), before + "I_E = 3 A\n");
}

TEST_F(Practise, GoesOnBehindALineWithoutEnd) {
  write(kRightStep);
  (void)hold("I_E = 3 A\n");
  EXPECT_EQ(work(), kRightStep + "\nI_E = 3 A\n");
}

TEST_F(Practise, LeavesAFileWithErrorsAsItIs) {
  write("R23 = = 6\n");
  const Ending ending = hold("I_E = 3 A\n");
  EXPECT_EQ(ending.code, 3);
  EXPECT_EQ(ending.out, "");
  EXPECT_THAT(ending.err, HasSubstr("lamp.work:1:"));
  EXPECT_THAT(ending.err, HasSubstr("left as it is"));
  EXPECT_EQ(work(), "R23 = = 6\n");
}

TEST_F(Practise, NeverWritesOverTheProblem) {
  const Ending ending = hold("I_E = 3 A\n", {"--work", "lamp.circuit"});
  EXPECT_EQ(ending.code, 2);
  EXPECT_EQ(read_file(folder_.path() / "lamp.circuit"), kCircuit);
}

TEST_F(Practise, KeepsTheWorkWhereItIsTold) {
  EXPECT_THAT(hold(kRightStep + "\n", {"--work", "other.txt"}).out, HasSubstr("kept in other.txt"));
  EXPECT_EQ(work("other.txt"), kRightStep + '\n');
}

TEST_F(Practise, TellsWhatCannotBeKept) {
  const Ending ending = hold(kRightStep + "\nquit\n", {"--work", "no/such/folder.work"});
  EXPECT_EQ(ending.code, 3);
  EXPECT_THAT(ending.err, HasSubstr("cannot write to no/such/folder.work"));
}

TEST_F(Practise, DoesNotReadAPipeAsAWorkFile) {
  ASSERT_EQ(::mkfifo((folder_.path() / "lamp.work").c_str(), 0600), 0);
  const Ending ending = hold(kRightStep + '\n');
  EXPECT_EQ(ending.code, 3);
  EXPECT_THAT(ending.err, HasSubstr("no ordinary file"));
}

TEST_F(Practise, GivesMoreAwayWithEachHintAndStartsAnewAfterAClaim) {
  const std::string said = hold("hint\nhint\nhint\n" + kRightStep + "\nhint\n").out;
  const std::size_t first = said.find("> hint");
  const std::size_t third = said.find("> hint", said.find("> hint", first + 1) + 1);
  const std::size_t value = said.find("6 Ω", first);
  EXPECT_GT(value, third) << "only the third hint states a value";
  EXPECT_LT(value, said.find("> " + kRightStep));
  EXPECT_EQ(said.find("10 Ω"), std::string::npos) << "the next step begins with a nudge";
  EXPECT_THAT(said, HasSubstr("R2 and R3 combined, with 3 hints"));
}

TEST_F(Practise, TellsAtTheEndWhatWasSure) {
  const Ending ending = hold(kWrongStep + '\n' + kWrongStep + '\n' + kRightStep +
                             "\nI_E = 1 A\nI_E = 3 A\nundo\nI_E = 3 A\nquit\n");
  EXPECT_THAT(ending.out, HasSubstr("A hint is there for the asking"));
  EXPECT_THAT(ending.out, HasSubstr("Right at once:\n  R2 and R3 combined\n"));
  EXPECT_THAT(ending.out,
              HasSubstr("Right in the end:\n  current through E, after 1 other claim\n"));
  EXPECT_THAT(ending.out, HasSubstr("Not right yet:\n  R1 and R2 combined, after 2 claims\n"));
  EXPECT_THAT(ending.out, HasSubstr("Still asked:\n  voltage across R1\n"));
}

TEST_F(Practise, OffersToEndWhenNothingIsOpen) {
  const Ending ending = hold("I_E = 3 A\nV_R1 = 12 V\nP_R1 = 36 W\n");
  EXPECT_THAT(ending.out, HasSubstr("Everything that is asked for is answered. Go on"));
  EXPECT_EQ(work(), "I_E = 3 A\nV_R1 = 12 V\nP_R1 = 36 W\n") << "going on is possible";
}

TEST_F(Practise, KnowsAMistypedWord) {
  EXPECT_THAT(hold("hnit\n").out, HasSubstr("Did you mean 'hint'?"));
  EXPECT_THAT(hold("nonsense of all kinds\n").out, HasSubstr("This cannot be read:"));
}

TEST_F(Practise, EndsWithAnyInput) {
  std::string bytes;
  for (int i = 0; i < 3000; ++i) bytes += static_cast<char>((i * 7919) % 256);
  bytes += std::string(200'000, 'R') + '\n' + std::string(70, '(') + '\n';
  const Ending ending = hold(bytes);
  EXPECT_EQ(ending.signal, 0);
  EXPECT_EQ(ending.code, 0) << ending.err;
}

TEST_F(Practise, GoesThroughTheCases) {
  write(
      "battery E = 6 V from G to T\nresistor R = 3 from T to A\nswitch S from A to G\n"
      "case \"S open\": S open\ncase \"S closed\": S closed\nfind voltage across R\n",
      "two.circuit");
  Launch run;
  run.arguments = {"practise", "two.circuit"};
  run.folder = folder_.path();
  run.input = "case\nV_R = 0 V\ncase \"S closed\"\nV_R = 6 V\nquit\n";
  const Ending ending = run_program(run);
  EXPECT_EQ(ending.code, 0) << ending.err;
  EXPECT_THAT(ending.out, HasSubstr("S open> V_R = 0 V"));
  EXPECT_THAT(ending.out, HasSubstr("S closed> V_R = 6 V"));
  EXPECT_EQ(work("two.work"), "V_R = 0 V\ncase \"S closed\"\nV_R = 6 V\n");
  EXPECT_THAT(ending.out, HasSubstr("Everything that is asked for"));
}

// --- at a terminal -----------------------------------------------------------------------------

TEST_F(Practise, EditsLinesAtATerminal) {
  Conversation talk(launch());
  ASSERT_TRUE(talk.shows("> ")) << talk.screen();
  talk.type("I_E = 4 A\b\b\b3 A\r");  // the 4 is taken away again
  ASSERT_TRUE(talk.shows("> ")) << talk.screen();
  talk.type("quit\r");
  EXPECT_EQ(talk.ended(), 0);
  EXPECT_EQ(work(), "I_E = 3 A\n") << talk.screen();
}

TEST_F(Practise, BringsEarlierLinesBackWithTheArrowUp) {
  Conversation talk(launch());
  ASSERT_TRUE(talk.shows("> "));
  talk.type("V_R1 = 1 V\r");  // wrong, so it is not kept
  ASSERT_TRUE(talk.shows("\n> ")) << talk.screen();
  talk.type("\033[A");
  ASSERT_TRUE(talk.shows("V_R1 = 1 V"));
  talk.type("\b\b2 V\r");
  ASSERT_TRUE(talk.shows("\n> ")) << talk.screen();
  talk.type("quit\r");
  EXPECT_EQ(talk.ended(), 0);
  EXPECT_EQ(work(), "V_R1 = 12 V\n") << talk.screen();
}

TEST_F(Practise, EndsAtTheEndOfInputFromATerminal) {
  Conversation talk(launch());
  ASSERT_TRUE(talk.shows("> "));
  talk.type("\004");
  ASSERT_TRUE(talk.shows("Still asked:")) << talk.screen();
  EXPECT_EQ(talk.ended(), 0);
}

TEST_F(Practise, LosesNothingWhenKilled) {
  {
    Conversation talk(launch());
    ASSERT_TRUE(talk.shows("> "));
    talk.type(kRightStep + "\r");
    ASSERT_TRUE(talk.shows("\n> ")) << talk.screen();
    talk.type("I_E = 3 A\r");
    ASSERT_TRUE(talk.shows("\n> ")) << talk.screen();
    talk.type("V_R1 = 1");  // not a line yet
    talk.kill();
  }
  EXPECT_EQ(work(), kRightStep + "\nI_E = 3 A\n");
  EXPECT_THAT(folder_.names(), ElementsAre("lamp.circuit", "lamp.work"));
  Conversation talk(launch());
  ASSERT_TRUE(talk.shows("goes on with 2 claims")) << talk.screen();
  ASSERT_TRUE(talk.shows("> "));
  talk.type("V_R1 = 12 V\r");
  ASSERT_TRUE(talk.shows("Everything that is asked for"));
  talk.type("quit\r");
  EXPECT_EQ(talk.ended(), 0);
  EXPECT_EQ(work(), kRightStep + "\nI_E = 3 A\nV_R1 = 12 V\n");
}

TEST_F(Practise, LeavesAFileThatSomebodyElseChanged) {
  Conversation talk(launch());
  ASSERT_TRUE(talk.shows("> "));
  talk.type("I_E = 3 A\r");
  ASSERT_TRUE(talk.shows("\n> ")) << talk.screen();
  write("# another hand\n");
  talk.type("V_R1 = 12 V\r");
  EXPECT_TRUE(talk.shows("has been changed by another program")) << talk.screen();
  talk.type("quit\r");
  EXPECT_EQ(talk.ended(), 3);
  EXPECT_EQ(work(), "# another hand\n");
}

}  // namespace
}  // namespace ohmfold::testing
