// `ohmfold draw` and the documents of `ohmfold solve`: which options go together, which case and
// which step is drawn, which files are written.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "programs/program.h"

namespace ohmfold::testing {
namespace {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

const std::string kLamps =
    "title \"Two lamps\"\nbattery E = 6 V from G to T\nresistor R1 = 3 ohm from T to A\n"
    "resistor R2 = 3 ohm from A to G\nswitch S from A to G\n"
    "case \"S open\": S open\ncase \"S closed\": S closed\nfind current through R1\n";
const std::string kChain =
    "title \"A chain\"\nbattery E = 6 V from G to T\nresistor R1 = 1 ohm from T to A\n"
    "resistor R2 = 2 ohm from A to G\nfind current through R1\n";
const std::string kShorted =
    "battery E = 6 V from G to T\nwire W from T to G\nresistor R = 1 ohm from T to G\n";

class Drawing : public ::testing::Test {
 protected:
  void SetUp() override {
    write_file(folder_.path() / "lamps.circuit", kLamps);
    write_file(folder_.path() / "chain.circuit", kChain);
    write_file(folder_.path() / "shorted.circuit", kShorted);
  }

  [[nodiscard]] Ending run(std::vector<std::string> arguments) const {
    Launch launch;
    launch.arguments = std::move(arguments);
    launch.folder = folder_.path();
    return run_program(launch);
  }
  [[nodiscard]] std::string in_folder(const std::string& name) const {
    return read_file(folder_.path() / name);
  }

  TemporaryFolder folder_;
};

TEST_F(Drawing, OfSeveralCasesTakesTheFirstAndSaysSo) {
  const Ending ending = run({"draw", "lamps.circuit", "-o", "lamps.svg"});
  EXPECT_EQ(ending.code, 0);
  EXPECT_EQ(ending.err,
            "ohmfold: lamps.circuit has 2 cases; this is the first, 'S open'. --case chooses "
            "another\n");
}

TEST_F(Drawing, OfAChosenCaseSaysNothing) {
  const Ending ending = run({"draw", "lamps.circuit", "--case", "S closed"});
  EXPECT_EQ(ending.code, 0);
  EXPECT_THAT(ending.err, IsEmpty());
}

TEST_F(Drawing, OfAnUnknownCaseSuggestsOne) {
  const Ending ending = run({"draw", "lamps.circuit", "--case", "S opn"});
  EXPECT_EQ(ending.code, 2);
  EXPECT_EQ(ending.err, "ohmfold: lamps.circuit has no case 'S opn'; did you mean 'S open'?\n");
}

TEST_F(Drawing, AfterTooManyStepsSaysHowManyThereAre) {
  const Ending ending = run({"draw", "chain.circuit", "--after", "2"});
  EXPECT_EQ(ending.code, 2);
  EXPECT_EQ(ending.err, "ohmfold: --after 2 is too many: the circuit has 1 step\n");
  EXPECT_THAT(ending.out, IsEmpty());
}

TEST_F(Drawing, AfterTheLastStepIsThatAfterSoMany) {
  const Ending last = run({"draw", "chain.circuit", "--after", "last"});
  EXPECT_EQ(last.code, 0);
  EXPECT_EQ(last.out, run({"draw", "chain.circuit", "--after", "1"}).out);
  EXPECT_NE(last.out, run({"draw", "chain.circuit"}).out);
}

TEST_F(Drawing, AfterSomethingElseThanANumberIsWrongUse) {
  for (const char* word : {"-1", "first", "1.5", "99999999999999999999"}) {
    const Ending ending = run({"draw", "chain.circuit", "--after", word});
    EXPECT_EQ(ending.code, 2) << word;
    EXPECT_THAT(ending.err, HasSubstr("ohmfold draw --help")) << word;
  }
}

TEST_F(Drawing, OfAContradictionIsThereAndTheProgramSaysWhatIsWrong) {
  const Ending ending = run({"draw", "shorted.circuit", "-o", "shorted.svg"});
  EXPECT_EQ(ending.code, 3);
  EXPECT_THAT(ending.err, HasSubstr("shorted"));
  EXPECT_TRUE(std::filesystem::exists(folder_.path() / "shorted.svg"));
}

TEST_F(Drawing, OfTooManyPartsSaysSo) {
  std::string text = "battery E = 6 V from G to N0\n";
  for (int i = 0; i < 10'000; ++i) {
    text += "resistor R" + std::to_string(i) + " = 1 from N0 to G\n";
  }
  write_file(folder_.path() / "many.circuit", text);
  const Ending ending = run({"draw", "many.circuit"});
  EXPECT_EQ(ending.code, 3);
  EXPECT_EQ(ending.err,
            "ohmfold: many.circuit has 10001 parts; figures are drawn of at most 10000\n");
}

TEST_F(Drawing, TakesItsFormatFromTheEndingOfTheFile) {
  for (const auto& [file, format] : std::vector<std::pair<std::string, std::string>>{
           {"a.svg", "svg"}, {"a.tex", "tikz"}, {"a.txt", "text"}, {"a.xyz", "svg"}}) {
    EXPECT_EQ(run({"draw", "chain.circuit", "-o", file}).code, 0);
    EXPECT_EQ(run({"draw", "chain.circuit", "-o", "b", "--as", format}).code, 0);
    EXPECT_EQ(in_folder(file), in_folder("b")) << file;
  }
  EXPECT_THAT(in_folder("a.svg"), HasSubstr("<svg"));
  EXPECT_THAT(in_folder("a.tex"), HasSubstr("tikzpicture"));
}

TEST_F(Drawing, DoesNotOverwriteItsCircuit) {
  EXPECT_EQ(run({"draw", "chain.circuit", "-o", "chain.circuit"}).code, 2);
  EXPECT_EQ(in_folder("chain.circuit"), kChain);
}

struct Misfit {
  std::vector<std::string> options;
  std::string complaint;
};

TEST_F(Drawing, AndHandoutsRefuseOptionsThatDoNotGoTogether) {
  const std::vector<Misfit> misfits = {
      {{"solve", "--workbook"}, "--workbook has no use here; it goes with --as html"},
      {{"solve", "--workbook", "--as", "latex"},
       "--workbook has no use here; it goes with --as html"},
      {{"solve", "--fragment", "--as", "html"},
       "--fragment has no use here; it goes with --as latex"},
      {{"solve", "--inline", "--as", "html"},
       "--inline has no use here; it goes with --as markdown"},
      {{"solve", "--answer-key"},
       "--answer-key has no use here; it goes with --as html, latex or markdown"},
      {{"solve", "--content", "answers", "--as", "json"},
       "--content has no use here; it goes with --as text, html, latex or markdown"},
      {{"solve", "--figures-in-text", "--as", "html"},
       "--figures-in-text has no use here; it goes with --as text"},
      {{"solve", "--width", "60", "--as", "html"},
       "--width has no use here; it goes with --as text or json"},
      {{"solve", "--redraws", "steps"},
       "--redraws is about figures; in text they need --figures-in-text"},
      {{"solve", "--as", "html", "--workbook", "--content", "problem"},
       "--workbook covers the steps of a solution; it goes with --content solution"},
      {{"solve", "--as", "html", "--answer-key", "--content", "answers"},
       "--answer-key has no use here; --content answers gives all answers already"},
      {{"draw", "--ascii"}, "--ascii has no use here; it goes with --as text"},
  };
  for (const Misfit& misfit : misfits) {
    std::vector<std::string> arguments = misfit.options;
    arguments.emplace_back("chain.circuit");
    const Ending ending = run(arguments);
    EXPECT_EQ(ending.code, 2) << misfit.complaint;
    EXPECT_EQ(ending.err, "ohmfold: " + misfit.complaint + "\nTry: ohmfold " +
                              misfit.options.front() + " --help\n");
    EXPECT_THAT(ending.out, IsEmpty());
  }
}

TEST_F(Drawing, StaysOutOfTextThatHoldsTheProblemAlone) {
  const Ending ending = run({"solve", "chain.circuit", "--content", "problem"});
  EXPECT_EQ(ending.code, 0);
  EXPECT_THAT(ending.out, AllOf(HasSubstr("A chain"), HasSubstr("Given"), Not(HasSubstr("Plan"))));
}

TEST_F(Drawing, StandsInTextInPlaceOfRedrawsInWords) {
  const Ending ending = run({"solve", "chain.circuit", "--figures-in-text"});
  EXPECT_EQ(ending.code, 0);
  EXPECT_THAT(ending.out, Not(HasSubstr("Redraw 1: battery E")));
  EXPECT_THAT(run({"solve", "chain.circuit"}).out, HasSubstr("Redraw 1: battery E"));
}

TEST_F(Drawing, OfAProblemThatContradictsItselfIsInTheHandoutTooAndTold) {
  const Ending ending = run({"solve", "--as", "html", "shorted.circuit", "chain.circuit"});
  EXPECT_EQ(ending.code, 3);
  EXPECT_THAT(ending.err, HasSubstr("shorted"));
  EXPECT_THAT(ending.out, AllOf(HasSubstr("A chain"), HasSubstr("contradict")));
}

/// The files that a Markdown text names as its figures.
std::set<std::string> named_figures(const std::string& text) {
  std::set<std::string> names;
  const std::regex figure("[a-z]+-[0-9]+\\.svg");
  for (std::sregex_iterator at(text.begin(), text.end(), figure), end; at != end; ++at) {
    names.insert(at->str());
  }
  return names;
}

TEST_F(Drawing, OfMarkdownIsAFileForEachFigureThatItNames) {
  ASSERT_EQ(run({"solve", "--as", "markdown", "-o", "out.md", "chain.circuit"}).code, 0);
  const std::set<std::string> named = named_figures(in_folder("out.md"));
  EXPECT_THAT(named, Not(IsEmpty()));
  std::set<std::string> there;
  for (const std::string& name : folder_.names()) {
    if (name.ends_with(".svg")) there.insert(name);
  }
  EXPECT_EQ(there, named);
}

TEST_F(Drawing, OfMarkdownOnStandardOutputOrInlineNeedsNoFiles) {
  const std::vector<std::string> before = folder_.names();
  const Ending ending = run({"solve", "--as", "markdown", "chain.circuit"});
  EXPECT_EQ(ending.code, 0);
  EXPECT_THAT(ending.out, HasSubstr("<svg"));
  EXPECT_EQ(folder_.names(), before);
  ASSERT_EQ(run({"solve", "--as", "markdown", "--inline", "-o", "out.md", "chain.circuit"}).code,
            0);
  EXPECT_EQ(in_folder("out.md"), ending.out);
  EXPECT_EQ(folder_.names().size(), before.size() + 1);
}

TEST_F(Drawing, OfMarkdownIsThereWholeOrNotAtAll) {
  std::filesystem::create_directory(folder_.path() / "out-1.svg");
  const std::vector<std::string> before = folder_.names();
  const Ending ending = run({"solve", "--as", "markdown", "-o", "out.md", "chain.circuit"});
  EXPECT_EQ(ending.code, 3);
  EXPECT_THAT(ending.err, HasSubstr("cannot write to out-1.svg"));
  EXPECT_EQ(folder_.names(), before);
}

}  // namespace
}  // namespace ohmfold::testing
