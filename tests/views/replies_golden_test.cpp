// All replies and hints on one page, and what each of them keeps to. OHMFOLD_REWRITE=1 writes the
// page anew.
#include <cstdlib>

#include "error_samples.h"
#include "views/error_words.h"
#include "views/hint_words.h"
#include "views/judgement_words.h"
#include "views/reply.h"
#include "views/wording.h"
#include "wording_rules.h"

namespace ohmfold::views {
namespace {

using test::error_rows;
using test::ErrorRow;
using test::JudgedSample;
using test::Kept;
using test::objection;
using test::Told;

/// The page, as it grows.
class Page {
 public:
  void heading(const std::string& text) { text_ += (text_.empty() ? "" : "\n") + text + "\n"; }
  void put(const std::string& label, const std::string& text, const Kept& kept) {
    EXPECT_EQ(objection(text, kept), "") << label << ": " << text;
    text_ += "  " + label + std::string(label.size() < 7 ? 7 - label.size() : 1, ' ') + text + "\n";
  }
  void plain(const std::string& label, const std::string& text) {
    text_ += "  " + label + std::string(label.size() < 7 ? 7 - label.size() : 1, ' ') + text + "\n";
  }
  [[nodiscard]] const std::string& text() const { return text_; }

 private:
  std::string text_;
};

void add_errors(Page& page) {
  for (const ErrorRow& row : error_rows()) {
    const Told told(row);
    const JudgedWork judged(told.sample.exercise, told.sample.work, told.sample.judged);
    const JudgedLine line(judged, 1);
    const ErrorWords words = error_words(Diagnosed(line, line.judgement.errors.front()));
    page.heading(std::string(word_of(row.error)));
    page.plain("line", line.claim.text);
    const Kept named{!row.parts.empty() || !row.points.empty(), false};
    page.put("reply", plain_text(reply_words(line)), {named.names_something, false});
    page.put("nudge", plain_text(words.nudge), {false, true});
    page.put("point", plain_text(words.point), named);
    page.put("tell", plain_text(words.tell), named);
  }
}

/// One line by itself, as a person reads it.
void add_reply(Page& page, const std::string& label, const JudgedSample& sample) {
  const JudgedWork judged(sample.exercise, sample.work, sample.judged);
  const std::size_t last = sample.work.claims.size() - 1;
  const JudgedLine line(judged, last);
  page.put(label, plain_text(reply_words(line)), {});
  page.plain("", std::string("[") + std::string(verdict_mark(verdict_of(line.judgement))) + "] " +
                     line.claim.text);
}

void add_steps(Page& page) {
  page.heading("Steps");
  const auto step = [&](const std::string& label, StepVerdict verdict, Joining how,
                        const std::string& operands, const std::vector<Fact>& why,
                        ValueVerdict value = ValueVerdict::exact) {
    JudgedSample sample;
    Judgement& judgement = sample.add_combination(how, operands, "Rx", "18");
    judgement.step = verdict;
    judgement.why = why;
    judgement.value = value;
    add_reply(page, label, sample);
  };
  const JudgedSample s;
  const auto part = [&](const char* name) { return s.part(name); };
  const auto point = [&](const char* name) { return s.point(name); };
  step("right", StepVerdict::right, Joining::series, "R3 R4",
       {MeetOnlyAt{part("R3"), part("R4"), point("C")}});
  step("right", StepVerdict::right, Joining::parallel, "R2 R34",
       {JoinSameTwoPoints{point("B"), point("D")}});
  step("right", StepVerdict::right, Joining::series, "R1 R3 R4",
       {MeetOnlyAt{part("R1"), part("R3"), point("B")},
        MeetOnlyAt{part("R3"), part("R4"), point("C")}});
  step("on own", StepVerdict::right_on_own, Joining::series, "R3 R4",
       {MeetOnlyAt{part("R3"), part("R4"), point("C")}}, ValueVerdict::none);
  step("refused", StepVerdict::refused, Joining::series, "R1 R2",
       {AlsoMeets{part("R3"), point("B")}});
  step("refused", StepVerdict::refused, Joining::series, "R1 R4",
       {ShareNoPoint{part("R1"), part("R4")}}, ValueVerdict::none);
  step("refused", StepVerdict::refused, Joining::series, "R1 R4",
       {SourceBetween{part("E"), point("A")}}, ValueVerdict::wrong);
  step("refused", StepVerdict::refused, Joining::parallel, "R2 R4",
       {EndsDiffer{part("R2"), part("R4"), point("B"), point("C")}}, ValueVerdict::on_own);
  step("refused", StepVerdict::refused, Joining::parallel, "R2 R4", {}, ValueVerdict::none);
  step("no tell", StepVerdict::cannot_tell, Joining::parallel, "R2 R4", {}, ValueVerdict::none);
}

void add_values(Page& page) {
  for (const ValueVerdict verdict :
       {ValueVerdict::exact, ValueVerdict::rounded, ValueVerdict::within_rounding,
        ValueVerdict::rounded_early, ValueVerdict::on_own, ValueVerdict::cut_off,
        ValueVerdict::wrong, ValueVerdict::cannot_tell}) {
    page.heading("value " + std::string(value_verdict_word(verdict)));
    JudgedSample sample;
    sample.add_combination(Joining::series, "R3 R4", "R34", "18.0").value = ValueVerdict::exact;
    Judgement& combined = sample.add_combination(Joining::parallel, "R2 R34", "R234", "6.02");
    combined.value = verdict;
    combined.caused_by = {0};
    combined.right = Quantity(parse_number("6.0133").number, Unit::ohm);
    add_reply(page, "joined", sample);
    Judgement& current = sample.add_value(Claimed::current, "R2", "1.67", Unit::ampere);
    current.value = verdict;
    current.caused_by = {0, 1};
    current.right = Quantity(parse_number("1.679").number, Unit::ampere);
    add_reply(page, "part", sample);
  }
}

void add_units_and_figures(Page& page) {
  for (const Unit unit : {Unit::ohm, Unit::volt, Unit::ampere, Unit::watt, Unit::siemens}) {
    for (const UnitVerdict verdict : {UnitVerdict::missing, UnitVerdict::wrong}) {
      page.heading("unit " + std::string(unit_verdict_word(verdict)));
      JudgedSample sample;
      Judgement& line = sample.add_value(Claimed::current, "R2", "1.67", Unit::ampere);
      line.value = ValueVerdict::rounded;
      line.unit = verdict;
      line.expected_unit = unit;
      add_reply(page, "reply", sample);
    }
  }
  for (const FiguresVerdict verdict : {FiguresVerdict::too_few, FiguresVerdict::too_many}) {
    page.heading("figures " + std::string(figures_verdict_word(verdict)));
    JudgedSample sample;
    Judgement& line = sample.add_value(Claimed::current, "R2", "1.67", Unit::ampere);
    line.value = ValueVerdict::rounded;
    line.figures = verdict;
    add_reply(page, "reply", sample);
  }
}

void add_hindrances(Page& page) {
  for (int i = 1; i <= static_cast<int>(Hindrance::several_sources); ++i) {
    const auto hindrance = static_cast<Hindrance>(i);
    page.heading("hindrance " + std::string(hindrance_word(hindrance)));
    for (const bool full : {false, true}) {
      JudgedSample sample;
      sample.add_combination(Joining::series, "R3 R4", "R34", "18.0").value = ValueVerdict::exact;
      Judgement& line = sample.add_combination(Joining::parallel, "R2 R34", "R234", "6");
      line.hindrance = hindrance;
      line.step = StepVerdict::cannot_tell;
      line.value = ValueVerdict::cannot_tell;
      line.name = "R43";
      line.part = sample.part(hindrance == Hindrance::not_a_resistor ? "S" : "R5");
      if (full) {
        line.suggestion = "R34";
        line.earlier = 0;
        line.why = {HangsFrom{sample.point("C")}};
      }
      add_reply(page, full ? "full" : "short", sample);
    }
  }
}

void add_several(Page& page) {
  page.heading("several errors for one number");
  JudgedSample sample;
  Judgement& line = sample.add_combination(Joining::parallel, "R2 R34", "R234", "1/6");
  line.value = ValueVerdict::wrong;
  line.right = Quantity(Number(6), Unit::ohm);
  for (const KnownError error : {KnownError::not_inverted, KnownError::sum_over_product}) {
    Diagnosis diagnosis;
    diagnosis.error = error;
    diagnosis.parts = line.operands;
    line.errors.push_back(diagnosis);
  }
  add_reply(page, "two", sample);
  Diagnosis third;
  third.error = KnownError::miscopied;
  third.parts = sample.parts("R2");
  third.numbers = {Quantity(Number(6), Unit::ohm)};
  sample.judged.lines.front().errors.push_back(third);
  add_reply(page, "three", sample);
}

void add_hint(Page& page, const JudgedSample& sample, const Hint& hint) {
  const JudgedWork judged(sample.exercise, sample.work, sample.judged);
  page.put("nudge", plain_text(hint_words(judged, hint, HintLevel::nudge)), {false, true});
  page.put("point", plain_text(hint_words(judged, hint, HintLevel::point)), {false, true});
  page.put("tell", plain_text(hint_words(judged, hint, HintLevel::tell)), {});
}

void add_step_hints(Page& page) {
  const JudgedSample sample;
  Hint hint;
  hint.kind = HintKind::combine;
  hint.rule = RuleName::series;
  hint.place.parts = sample.parts("R3 R4");
  hint.why = {MeetOnlyAt{sample.part("R3"), sample.part("R4"), sample.point("C")}};
  hint.value = Quantity(Number(18), Unit::ohm);
  page.heading("hint: series");
  add_hint(page, sample, hint);
  hint.rule = RuleName::parallel;
  hint.place = {sample.parts("R2 R34"), sample.point("B"), sample.point("D")};
  hint.why = {JoinSameTwoPoints{sample.point("B"), sample.point("D")}};
  hint.value = Quantity(Number(6), Unit::ohm);
  page.heading("hint: parallel");
  add_hint(page, sample, hint);

  hint.kind = HintKind::rewrite;
  const auto rewrite = [&](RuleName rule, const Place& place, const std::vector<Fact>& why) {
    hint.rule = rule;
    hint.place = place;
    hint.why = why;
    hint.value.reset();
    page.heading("hint: " + std::string(rule_word(rule)));
    add_hint(page, sample, hint);
  };
  const PointId c = sample.point("C");
  const PointId b = sample.point("B");
  const PartId r5 = sample.part("R5");
  rewrite(RuleName::gap, {sample.parts("S"), {}, {}}, {IsOpenSwitch{sample.part("S")}});
  rewrite(RuleName::ideal_wire, {sample.parts("N"), {}, {}, sample.points("D G")},
          {IsAmmeter{sample.part("N")}});
  rewrite(RuleName::shorted, {sample.parts("R5"), {}, {}}, {BothEndsOn{r5, c}});
  rewrite(RuleName::dead_end, {sample.parts("R5"), {}, {}}, {HangsFrom{c}});
  rewrite(
      RuleName::equal_potentials, {sample.parts("R5"), {}, {}},
      {Balanced{r5, sample.part("R1"), sample.part("R2"), sample.part("R3"), sample.part("R4")}});
  rewrite(RuleName::equal_potentials, {{}, {}, {}, {b, c}}, {SamePotential{b, c}});
  rewrite(RuleName::delta_star, {sample.parts("R2 R3 R4"), {}, {}},
          {FormDelta{b, c, sample.point("D")}});
  rewrite(RuleName::star_delta, {sample.parts("R1 R2 R3"), b, {}}, {AllMeetAt{b}});
  rewrite(RuleName::node_elimination, {sample.parts("R1 R2 R3 R5"), b, {}}, {AllMeetAt{b}});
  rewrite(RuleName::batteries, {sample.parts("E R1"), {}, {}},
          {DriveAlike{sample.part("E"), sample.part("R1")}});
}

void add_other_hints(Page& page) {
  const JudgedSample sample;
  Hint hint;
  const std::vector<std::pair<HintKind, std::string>> kinds{
      {HintKind::no_pair, "no pair"}, {HintKind::whole, "whole"}, {HintKind::done, "done"}};
  for (const auto& [kind, label] : kinds) {
    hint.kind = kind;
    hint.of = sample.part("R234");
    hint.value = Quantity(Number(10), Unit::ohm);
    page.heading("hint: " + label);
    add_hint(page, sample, hint);
  }
  hint = Hint();
  hint.kind = HintKind::quantity;
  for (int i = 0; i <= static_cast<int>(Law::superposition); ++i) {
    hint.law = static_cast<Law>(i);
    const bool voltage = hint.law == Law::same_voltage || hint.law == Law::ohm_voltage ||
                         hint.law == Law::voltage_loop || hint.law == Law::zero_voltage ||
                         hint.law == Law::terminal || hint.law == Law::two_arms ||
                         hint.law == Law::equal_potentials || hint.law == Law::node_voltage;
    const bool power = hint.law == Law::power;
    const bool of_source = hint.law == Law::source || hint.law == Law::terminal;
    hint.claimed = power ? Claimed::power : voltage ? Claimed::voltage : Claimed::current;
    hint.of = sample.part(of_source ? "E" : "R2");
    hint.from = sample.parts(voltage ? "R34" : "R1 R34");
    hint.value = Quantity(parse_number("5/3").number, power     ? Unit::watt
                                                      : voltage ? Unit::volt
                                                                : Unit::ampere);
    if (hint.law == Law::not_determined) hint.value.reset();
    page.heading("hint: value by " + std::string(law_word(hint.law)));
    add_hint(page, sample, hint);
  }
}

void add_mending_hints(Page& page) {
  const auto mend = [&](const std::string& label, auto change) {
    JudgedSample sample;
    sample.add_combination(Joining::series, "R3 R4", "R34", "18.0").value = ValueVerdict::exact;
    Judgement& line = sample.add_combination(Joining::parallel, "R2 R34", "R234", "6.02");
    line.value = ValueVerdict::wrong;
    line.why = {JoinSameTwoPoints{sample.point("B"), sample.point("D")}};
    line.right = Quantity(parse_number("6").number, Unit::ohm);
    line.caused_by = {0};
    change(sample, sample.judged.lines.back());
    Hint hint;
    hint.kind = HintKind::mend;
    hint.claim = 1;
    page.heading("hint: mend " + label);
    add_hint(page, sample, hint);
  };
  mend("same potential", [](JudgedSample& sample, Judgement& line) {
    line.step = StepVerdict::refused;
    line.value = ValueVerdict::none;
    line.why = {PotentialsDiffer{sample.point("B"), sample.point("C")}};
    sample.work.claims[1].says = SamePotentialClaim{{"B", {}}, {"C", {}}};
  });
  mend("unexplained", [](const JudgedSample&, Judgement&) {});
  mend("added", [](const JudgedSample&, Judgement& line) {
    Diagnosis diagnosis;
    diagnosis.error = KnownError::added_in_parallel;
    diagnosis.parts = line.operands;
    line.errors = {diagnosis};
  });
  mend("two errors", [](const JudgedSample&, Judgement& line) {
    Diagnosis diagnosis;
    diagnosis.error = KnownError::not_inverted;
    diagnosis.parts = line.operands;
    line.errors = {diagnosis, diagnosis};
    line.errors.back().error = KnownError::sum_over_product;
  });
  mend("refused", [](const JudgedSample& sample, Judgement& line) {
    line.step = StepVerdict::refused;
    line.why = {AlsoMeets{sample.part("R5"), sample.point("C")}};
  });
  mend("cut off", [](const JudgedSample&, Judgement& line) { line.value = ValueVerdict::cut_off; });
  mend("rounded early",
       [](const JudgedSample&, Judgement& line) { line.value = ValueVerdict::rounded_early; });
  mend("unit", [](const JudgedSample&, Judgement& line) {
    line.value = ValueVerdict::exact;
    line.unit = UnitVerdict::missing;
  });
  mend("figures", [](const JudgedSample&, Judgement& line) {
    line.value = ValueVerdict::rounded;
    line.figures = FiguresVerdict::too_many;
  });
  mend("hindered", [](const JudgedSample&, Judgement& line) {
    line.hindrance = Hindrance::unknown_name;
    line.name = "R43";
    line.suggestion = "R34";
  });
}

TEST(Replies, AreUnchanged) {
  Page page;
  add_errors(page);
  add_several(page);
  add_steps(page);
  add_values(page);
  add_units_and_figures(page);
  add_hindrances(page);
  add_mending_hints(page);
  add_step_hints(page);
  add_other_hints(page);
  const std::filesystem::path file =
      std::filesystem::path(OHMFOLD_SOURCE_DIR) / "tests/views/golden/replies.txt";
  if (std::getenv("OHMFOLD_REWRITE") != nullptr) {  // NOLINT(concurrency-mt-unsafe): one thread
    std::ofstream(file, std::ios::binary) << page.text();
    GTEST_SKIP() << "written anew: " << file;
  }
  EXPECT_EQ(page.text(), test::contents(file)) << file;
}

TEST(Replies, SpeakOfEveryKnownError) {
  std::vector<bool> seen(kKnownErrors, false);
  for (const ErrorRow& row : error_rows()) seen[static_cast<std::size_t>(row.error)] = true;
  for (std::size_t i = 0; i < kKnownErrors; ++i) {
    EXPECT_TRUE(seen[i]) << word_of(static_cast<KnownError>(i));
  }
}

TEST(Replies, AreLookedAtForWhatTheyKeepTo) {
  EXPECT_EQ(objection("Look at R1.", {true, true}), "");
  EXPECT_NE(objection("", {}), "");
  EXPECT_NE(objection("Look at R1", {}), "");
  EXPECT_NE(objection("look at R1.", {}), "");
  EXPECT_NE(objection("One. Two. Three. Four.", {}), "");
  EXPECT_NE(objection("Look there.", {true, false}), "");
  EXPECT_NE(objection("It is 6 Ω.", {false, true}), "");
  EXPECT_NE(objection("This is wrong.", {}), "");
  EXPECT_NE(objection(std::string(250, 'A') + ".", {}), "");
}

}  // namespace
}  // namespace ohmfold::views
