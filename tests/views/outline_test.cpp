// What the outline of a worked solution holds, and what it keeps to itself until it is asked for.
#include "views/outline.h"

#include <gmock/gmock.h>

#include "ohmfold/unknown.h"
#include "outline_reading.h"
#include "samples.h"
#include "views/pictures.h"

namespace ohmfold::views {
namespace {

using test::all_of;
using test::amounts_of;
using test::outside;
using test::problem_files;
using test::text_of;
using test::trace_of;
using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::StartsWith;

constexpr const char* kKiln =
    "title \"A kiln\"\nbattery E = 12 V from G to T\nresistor R1 = 2 ohm from T to A\n"
    "resistor R2 = 9 ohm from A to G\nresistor R3 = 4 ohm from A to B\n"
    "resistor R4 = 14 ohm from B to G\nfind current through R3\nfind resistance seen by E\n";

const OutlineOptions kDrawn{.redraws = Redraws::steps, .sizes = &drawing::paper_sizes()};

OutlineOptions with(Content content) {
  OutlineOptions options = kDrawn;
  options.content = content;
  return options;
}

std::vector<std::string> titles(const Document& document) {
  std::vector<std::string> all;
  for (const StepBegin& step : all_of<StepBegin>(document)) {
    all.push_back(plain_text(step.title));
  }
  return all;
}

/// "What is R12? 5 Ω", in the order asked.
std::vector<std::string> questions(const Document& document) {
  std::vector<std::string> all;
  for (const StepBegin& step : all_of<StepBegin>(document)) {
    for (const Asked& asked : step.asked) {
      all.push_back(plain_text(asked.question) + " " + exact_text(asked.value, Letters::unicode));
    }
  }
  return all;
}

TEST(Outline, EndsEveryStepBeforeTheNextAndHoldsNoHeadingInOne) {
  for (const SourceText& file : problem_files()) {
    bool inside = false;
    for (const Block& block : outline(trace_of(file), kDrawn).blocks) {
      if (std::holds_alternative<StepBegin>(block)) {
        EXPECT_FALSE(inside) << file.name;
        inside = true;
      } else if (std::holds_alternative<StepEnd>(block)) {
        EXPECT_TRUE(inside) << file.name;
        inside = false;
      }
      EXPECT_FALSE(inside && std::holds_alternative<Heading>(block)) << file.name;
    }
    EXPECT_FALSE(inside) << file.name;
  }
}

TEST(Outline, TellsNoResultInATitleOrAQuestion) {
  for (const SourceText& file : problem_files()) {
    for (const StepBegin& step : all_of<StepBegin>(outline(trace_of(file), kDrawn))) {
      EXPECT_FALSE(step.title.empty()) << file.name;
      EXPECT_THAT(amounts_of(step.title), IsEmpty()) << file.name << plain_text(step.title);
      for (const Asked& asked : step.asked) {
        EXPECT_THAT(amounts_of(asked.question), IsEmpty()) << file.name;
        EXPECT_FALSE(asked.value.number.is_symbolic()) << file.name;
      }
    }
  }
}

TEST(Outline, HasNoWorkingOutsideOfSteps) {
  for (const SourceText& file : problem_files()) {
    for (const Block& block : outside(outline(trace_of(file), kDrawn))) {
      EXPECT_FALSE(std::holds_alternative<Working>(block)) << file.name;
    }
  }
}

/// The values that stand in the file: of parts, of givens, of cases.
std::vector<Number> stated_values(const Problem& problem) {
  std::vector<Number> values;
  for (const Part& part : problem.parts) {
    if (!part.unknown) values.push_back(part.value);
    values.push_back(part.internal);
  }
  for (const Given& given : problem.givens) values.push_back(given.value);
  for (const SymbolMeaning& symbol : problem.symbols) {
    if (symbol.value) values.push_back(*symbol.value);
  }
  for (const Case& one : problem.cases) {
    for (const Setting& setting : one.settings) {
      if (!setting.found) values.push_back(setting.value);
    }
  }
  return values;
}

void expect_no_other_amounts(const std::vector<Block>& blocks, const SourceText& file,
                             const Problem& problem) {
  const std::vector<Number> stated = stated_values(problem);
  for (const Block& block : blocks) {
    for (const Words& words : test::words_of(block)) {
      for (const Quantity& amount : amounts_of(words)) {
        EXPECT_THAT(stated, Contains(amount.number)) << file.name << ": " << plain_text(words);
      }
    }
  }
}

TEST(Outline, HasNoValueButThoseOfTheFileOutsideOfSteps) {
  for (const SourceText& file : problem_files()) {
    const Trace trace = trace_of(file);
    expect_no_other_amounts(outside(outline(trace, kDrawn)), file, *trace.problem);
  }
}

TEST(Outline, AsksForWhatEachStepMakesAndForEveryAnswer) {
  EXPECT_THAT(
      questions(outline(trace_of(kKiln), kDrawn)),
      ElementsAre(
          "What is R34? 18 Ω", "What is R234? 6 Ω", "What is R1234? 8 Ω",
          "What is the resistance between T and G? 8 Ω", "What is the current through E? 3/2 A",
          "What is the voltage across E? 12 V", "What is the current through R1234? 3/2 A",
          "What is the voltage across R1234? 12 V", "What is the current through R1? 3/2 A",
          "What is the current through R234? 3/2 A", "What is the voltage across R1? 3 V",
          "What is the voltage across R234? 9 V", "What is the voltage across R2? 9 V",
          "What is the voltage across R34? 9 V", "What is the current through R2? 1 A",
          "What is the current through R34? 1/2 A", "What is the current through R3? 1/2 A",
          "What is the current through R4? 1/2 A", "What is the voltage across R3? 2 V",
          "What is the voltage across R4? 7 V", "What is the potential at G? 0 V",
          "What is the potential at B? 7 V", "What is the potential at A? 9 V",
          "What is the potential at T? 12 V", "What is the power that battery E delivers? 18 W",
          "What is the power in R1? 9/2 W", "What is the power in R2? 9 W",
          "What is the power in R3? 1 W", "What is the power in R4? 7/2 W",
          "What is the current through R3? 1/2 A",
          "What is the resistance that battery E sees? 8 Ω"));
}

TEST(Outline, CallsStepsByTheirPartsNotByTheirRule) {
  EXPECT_THAT(
      titles(outline(trace_of(kKiln), kDrawn)),
      ElementsAre("Step 1: combine R3 and R4", "Step 2: combine R2 and R34",
                  "Step 3: combine R1 and R234", "Equivalent resistance", "Current of the battery",
                  "Undo step 3", "Undo step 2", "Undo step 1", "Potentials of the points", "Powers",
                  "All parts and points", "Answers", "Check", "Caution"));
}

TEST(Outline, AsksNothingThatHoldsASymbol) {
  const Trace trace = trace_of(
      "symbol r\nbattery E = 6 V from G to T\nresistor R1 = 2 r from T to A\n"
      "resistor R2 = r from A to G\nfind current through R1\n");
  EXPECT_THAT(questions(outline(trace, kDrawn)), Not(Contains(StartsWith("What is R12?"))));
  EXPECT_THAT(titles(outline(trace, kDrawn)), Contains("Step 1: combine R1 and R2"));
}

TEST(Outline, DrawsTheCircuitAsStatedBeforeEachStepAndWithItsResults) {
  const Trace trace = trace_of(kKiln);
  OutlineOptions options = kDrawn;
  EXPECT_EQ(all_of<Figure>(outline(trace, options)).size(), 6U);
  EXPECT_THAT(text_of(outline(trace, options).blocks), Not(HasSubstr("Redraw 1: battery")));
  options.redraws = Redraws::none;
  EXPECT_EQ(all_of<Figure>(outline(trace, options)).size(), 2U);
  EXPECT_THAT(text_of(outline(trace, options).blocks), HasSubstr("Redraw 1: battery E"));
  options.sizes = nullptr;
  EXPECT_THAT(all_of<Figure>(outline(trace, options)), IsEmpty());
}

TEST(Outline, DrawsOnceForAStageOfSeveralSteps) {
  const Trace trace = trace_of(
      "battery E = 6 V from G to T\nresistor R1 = 1 from T to A\nresistor R2 = 1 from A to G\n"
      "resistor R3 = 1 from T to B\nresistor R4 = 1 from B to G\n");
  OutlineOptions options = kDrawn;
  const std::size_t each_step = all_of<Figure>(outline(trace, options)).size();
  options.redraws = Redraws::stages;
  EXPECT_EQ(all_of<Figure>(outline(trace, options)).size() + 1, each_step);
}

TEST(Outline, DrawsNothingWithMoreThanFortyParts) {
  std::string ladder = "battery E = 6 V from G to N0\n";
  for (int i = 0; i < 41; ++i) {
    const std::string next = i == 40 ? "G" : "N" + std::to_string(i + 1);
    ladder += "resistor R" + std::to_string(i + 1) + " = 1 from N" + std::to_string(i) + " to " +
              next + "\nresistor Q" + std::to_string(i + 1) + " = 1 from N" + std::to_string(i) +
              " to G\n";
  }
  const Document document = outline(trace_of(ladder), kDrawn);
  const std::vector<Heading> headings = all_of<Heading>(document);
  const bool reduces = std::any_of(headings.begin(), headings.end(), [](const Heading& heading) {
    return plain_text(heading.words) == "Reducing the circuit";
  });
  EXPECT_TRUE(reduces);
  EXPECT_FALSE(std::holds_alternative<Figure>(document.blocks.at(1)));
  EXPECT_LT(all_of<Figure>(document).size(), all_of<StepBegin>(document).size());
}

TEST(ProblemAlone, HoldsNoValueButThoseOfTheFile) {
  for (const SourceText& file : problem_files()) {
    const Trace trace = trace_of(file);
    const Document document = outline(trace, with(Content::problem));
    EXPECT_THAT(all_of<Working>(document), IsEmpty()) << file.name;
    EXPECT_THAT(all_of<StepBegin>(document), IsEmpty()) << file.name;
    expect_no_other_amounts(document.blocks, file, *trace.problem);
  }
}

TEST(ProblemAlone, TellsNothingOfTheStructure) {
  for (const SourceText& file : problem_files()) {
    const Trace trace = trace_of(file);
    std::string text;
    for (const Block& block : outline(trace, with(Content::problem)).blocks) {
      if (std::holds_alternative<Paragraph>(block)) continue;  // the author's own text
      text += text_of({block});
    }
    EXPECT_THAT(text, Not(HasSubstr("in parallel"))) << file.name;
    EXPECT_THAT(text, Not(HasSubstr("Combine"))) << file.name;
    EXPECT_THAT(text, Not(HasSubstr("∥"))) << file.name;
  }
}

TEST(ProblemAlone, HasOneFigure) {
  EXPECT_EQ(all_of<Figure>(outline(trace_of(kKiln), with(Content::problem))).size(), 1U);
}

TEST(ProblemAlone, DoesNotDrawAValueThatHasToBeFound) {
  for (const SourceText& file : problem_files()) {
    const Trace trace = trace_of(file);
    if (!trace.cases.front().unknown) continue;
    const Document document = outline(trace, with(Content::problem));
    for (const Figure& figure : all_of<Figure>(document)) {
      for (const drawing::DrawnPart& part : figure.schematic.parts) {
        if (!trace.problem->part(part.part).unknown) continue;
        for (const drawing::Label& label : part.labels) {
          for (const drawing::LabelLine& line : label.lines) {
            if (line.role != drawing::TextRole::value) continue;
            EXPECT_EQ(line.text.find_first_of("123456789"), std::string::npos) << line.text;
          }
        }
      }
    }
  }
}

TEST(AnswersAlone, HoldEveryAnswerAndNoStepOfTheWay) {
  for (const SourceText& file : problem_files()) {
    const Trace trace = trace_of(file);
    const Document document = outline(trace, with(Content::answers));
    EXPECT_THAT(all_of<Figure>(document), IsEmpty()) << file.name;
    EXPECT_THAT(text_of(document.blocks), Not(HasSubstr("Combine"))) << file.name;
    for (const CaseTrace& one : trace.cases) {
      if (trace.problem->questions.empty()) continue;
      for (const Answer& answer : one.answers) {
        if (!answer.value.value) continue;
        bool told = false;
        for (const Block& block : document.blocks) {
          for (const Words& words : test::words_of(block)) {
            const std::vector<Quantity> amounts = amounts_of(words);
            told = told ||
                   std::find(amounts.begin(), amounts.end(), *answer.value.value) != amounts.end();
          }
        }
        EXPECT_TRUE(told) << file.name;
      }
    }
  }
}

TEST(Outline, MarksResistorsInLettersWhereAsked) {
  OutlineOptions options = with(Content::problem);
  options.notation = Notation::letters;
  const std::string text = text_of(
      outline(trace_of("battery E = 6 V from G to T\nresistor R = 4.7 kohm from T to G\n"), options)
          .blocks);
  EXPECT_THAT(text, HasSubstr("4K7"));
  EXPECT_THAT(text, HasSubstr("6 V"));
}

TEST(Document, CoversWhatIsBelowAHeadingUnderItsName) {
  Document document;
  document.paragraph(say("open"));
  document.paragraph(say("before"));
  document.heading(3, say("Results"));
  document.paragraph(say("one"));
  document.paragraph(say("two"));
  document.begin_step(say("Step"));
  document.paragraph(say("three"));
  document.end_step();
  document.paragraph(say("four"));
  document.cover(1, say("Title"));
  EXPECT_THAT(titles(document), ElementsAre("Title", "Results", "Step", "Results"));
  EXPECT_EQ(text_of(outside(document)), "open\nResults\n");
  EXPECT_EQ(all_of<StepEnd>(document).size(), 4U);
}

TEST(Document, CoversNothingWhereNothingWasAdded) {
  Document document;
  document.heading(3, say("Results"));
  document.cover(1, say("Title"));
  document.cover(0, say("Title"));
  EXPECT_THAT(all_of<StepBegin>(document), IsEmpty());
}

}  // namespace
}  // namespace ohmfold::views
