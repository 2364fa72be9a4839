// All replies and hints on one page, and what each of them keeps to. OHMFOLD_REWRITE=1 writes the
// page anew.
#include <array>
#include <cstdlib>
#include <regex>

#include "judged_samples.h"
#include "views/error_words.h"
#include "views/hint_words.h"
#include "views/judgement_words.h"
#include "views/reply.h"
#include "views/wording.h"

namespace ohmfold::views {
namespace {

using test::JudgedSample;

/// What a wording has to keep to beyond what all do.
struct Kept {
  bool names_something = false;  ///< a part or a point
  bool holds_no_value = false;
};

/// Words that judge the person, and words of no first-year course.
constexpr std::array kUnwanted{
    "you forgot", "you should",  "you did",   "wrong",        "mistake", "fail",      "bad ",
    "careless",   "obvious",     "simply",    "just ",        "stupid",  "of course", "must not",
    "topology",   "admittance",  "impedance", "degenerate",   "matrix",  "merge",     "invalid",
    "operand",    "contraction", "incidence", "terminal pair"};

std::size_t letters_in(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  }));
}

std::size_t sentences_in(const std::string& text) {
  static const std::regex kEnd("[.?](?= |$)");
  return static_cast<std::size_t>(
      std::distance(std::sregex_iterator(text.begin(), text.end(), kEnd), std::sregex_iterator()));
}

/// What is wrong with a wording; empty where it keeps to all.
std::string objection(const std::string& text, const Kept& kept) {
  constexpr std::size_t kMostLetters = 240;
  if (text.empty()) return "nothing is said";
  if (!text.ends_with('.') && !text.ends_with('?')) return "no full stop";
  if (text.front() >= 'a' && text.front() <= 'z') return "begins with a small letter";
  if (letters_in(text) > kMostLetters) return "too long: " + std::to_string(letters_in(text));
  const std::size_t sentences = sentences_in(text);
  if (sentences < 1 || sentences > 3) return std::to_string(sentences) + " sentences";
  if (text.find("  ") != std::string::npos || text.find("..") != std::string::npos ||
      text.find(" .") != std::string::npos || text.find(":.") != std::string::npos) {
    return "spaces or stops";
  }
  if (text.find("this part") != std::string::npos && kept.names_something) return "an unnamed part";
  for (const char* word : kUnwanted) {
    if (text.find(word) != std::string::npos) return std::string("says ") + word;
  }
  static const std::regex kName("\\b([RESNM][0-9]*|R[0-9]+|[A-G]|[Ll]ines? [0-9]+)\\b");
  if (kept.names_something && !std::regex_search(text, kName)) return "names nothing";
  static const std::regex kValue("[0-9] ([kmM]?Ω|[kmM]?[VAW]\\b)|= *[0-9]");
  if (kept.holds_no_value && std::regex_search(text, kValue)) return "holds a value";
  return "";
}

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

enum class About { series, parallel, current, voltage, power, whole, no_pair, no_current, delta };

struct Row {
  KnownError error;
  About about;
  std::string of;      // the operands, or the part
  std::string digits;  // as written
  std::string right;   // the true value
  std::string parts, points;
  std::string number = {};
};

const std::vector<Row>& rows() {
  using enum KnownError;
  static const std::vector<Row> kRows{
      {series_at_a_junction, About::series, "R1 R2", "13", "", "R1 R2 R3", "B"},
      {parallel_ends_apart, About::parallel, "R2 R4", "4.95", "", "R2 R4", "B C"},
      {parallel_from_a_fork, About::parallel, "R2 R3", "3.94", "", "R2 R3", "B D C"},
      {series_of_parallel, About::series, "R2 R34", "27", "6", "R2 R34", "B D"},
      {bridge_part_combined, About::series, "R3 R5", "13", "", "R5", "C F"},
      {used_already, About::parallel, "R3 R34", "5.04", "", "R3 R34", ""},
      {shorted_part_counted, About::whole, "", "16", "10", "R5", "C"},
      {dead_end_counted, About::whole, "", "16", "10", "R5", "C"},
      {gap_taken_for_wire, About::whole, "", "8.29", "10", "S", ""},
      {switch_taken_for_gap, About::whole, "", "8.29", "10", "S", ""},
      {meter_taken_for_other, About::whole, "", "4", "10", "M", ""},
      {meter_taken_for_other, About::current, "E", "0", "5/2", "N", ""},
      {other_two_points, About::whole, "", "6", "10", "", "B D A D"},
      {part_forgotten, About::whole, "", "22", "10", "R2", ""},
      {part_taken_for_wire, About::whole, "", "8.95", "10", "R3", ""},
      {wrong_word, About::series, "R2 R34", "6", "6", "R2 R34", ""},
      {pair_overlooked, About::no_pair, "", "", "", "R2 R34", "B D"},
      {pair_overlooked, About::no_pair, "", "", "", "R3 R4", "C"},
      {not_balanced, About::no_current, "R5", "", "", "R5", ""},
      {wrong_sides_at_corner, About::delta, "R2 R3 R4", "77/27", "7/3", "R2 R3", ""},
      {star_rule_reversed, About::delta, "R2 R3 R4", "239/11", "7/3", "R2 R3 R4", ""},
      {shorted_part_carries, About::current, "R5", "2", "0", "R5", "C"},
      {no_voltage_across_gap, About::voltage, "S", "0", "15", "S", ""},
      {dead_end_carries, About::current, "R5", "2", "0", "R5", ""},
      {internal_left_out, About::current, "E", "3", "5/2", "E", ""},
      {not_inverted, About::parallel, "R2 R34", "1/6", "6", "R2 R34", ""},
      {product_without_sum, About::parallel, "R2 R34", "162", "6", "R2 R34", ""},
      {sum_over_product, About::parallel, "R2 R34", "1/6", "6", "R2 R34", ""},
      {average, About::parallel, "R2 R34", "13.5", "6", "R2 R34", ""},
      {added_in_parallel, About::parallel, "R2 R34", "27", "6", "R2 R34", ""},
      {reciprocals_in_series, About::series, "R3 R4", "4.28", "18", "R3 R4", ""},
      {product_over_sum_of_all, About::parallel, "R2 R3 R4", "25.7", "693/239", "R2 R3 R4", ""},
      {reciprocal_of_sum, About::parallel, "R2 R34", "1/27", "6", "R2 R34", ""},
      {difference, About::parallel, "R2 R34", "9", "6", "R2 R34", ""},
      {divided_by_count, About::parallel, "R2 R34", "4.5", "6", "R2 R34", ""},
      {operand_left_out, About::parallel, "R2 R3 R4", "3.94", "693/239", "R4", ""},
      {brackets_missing, About::parallel, "R2 R34", "36", "6", "R2 R34", ""},
      {numerators_added, About::parallel, "R2 R34", "81", "6", "R2 R34", ""},
      {prefix_slip, About::parallel, "R2 R34", "6000", "6", "R2 R34", ""},
      {decimal_point_slip, About::parallel, "R2 R34", "60", "6", "R2 R34", ""},
      {miscopied, About::parallel, "R2 R34", "4.5", "6", "R2", "", "6"},
      {impossible_size, About::parallel, "R2 R34", "11", "6", "R2 R34", "", "9"},
      {impossible_size, About::series, "R3 R4", "8", "18", "R3 R4", "", "11"},
      {impossible_size, About::whole, "", "40", "10", "R1 R2 R3 R4", "", "31"},
      {source_on_one_part, About::voltage, "R2", "30", "15", "R2 E", ""},
      {split_equally, About::current, "R2", "1.25", "5/3", "R2 R34", ""},
      {split_in_proportion, About::current, "R2", "0.833", "5/3", "R2 R34", ""},
      {two_branch_rule_on_more, About::current, "R2", "1.67", "5/4", "R2 R3 R4", ""},
      {no_split, About::current, "R2", "2.5", "5/3", "R2 R1", ""},
      {split_by_parts, About::current, "R2", "0.833", "5/3", "R2 R3 R4", ""},
      {voltage_shared_equally, About::voltage, "R3", "7.5", "35/6", "R3 R4", ""},
      {voltage_split_in_parallel, About::voltage, "R2", "7.5", "15", "R2 R34", ""},
      {divider_upside_down, About::voltage, "R4", "5.83", "55/6", "R4 R3", ""},
      {divider_without_load, About::voltage, "R2", "20.8", "15", "R2 R3", "B"},
      {divider_from_source, About::voltage, "R4", "18.3", "55/6", "R4 E", ""},
      {current_used_up, About::current, "R4", "0.5", "5/6", "R4 R3", ""},
      {sequential, About::current, "R2", "2.31", "5/3", "R2 R1", ""},
      {current_stays, About::current, "E", "3", "5/2", "E", ""},
      {source_over_all, About::current, "E", "0.909", "5/2", "E R1 R2 R3 R4", ""},
      {ohm_upside_down, About::current, "R2", "0.6", "5/3", "R2", ""},
      {values_of_two_parts, About::voltage, "R4", "18.3", "55/6", "R4 R2", ""},
      {wrong_sign, About::current, "R2", "-1.67", "5/3", "R2", "B D"},
      {wrong_order_of_points, About::voltage, "R2", "-15", "15", "", "B D"},
      {wrong_drop_subtracted, About::voltage, "R2", "24.2", "15", "R2 R3", ""},
      {drops_of_parallel_added, About::voltage, "R2", "30", "15", "R2 R34", ""},
      {current_sum_wrong, About::current, "R1", "0.833", "5/2", "R1 R2 R3", "B"},
      {potential_for_voltage, About::voltage, "R1", "25", "10", "R1", "A"},
      {power_formula, About::power, "R2", "15", "25", "R2", ""},
      {power_of_the_whole, About::power, "R2", "56.3", "25", "R2 R1", ""},
      {lost_volts_for_terminal, About::voltage, "E", "5", "25", "E", ""},
      {cut_off, About::current, "R2", "1.66", "5/3", "", ""},
      {preferred_value, About::parallel, "R2 R34", "6.2", "6", "", ""},
      {wrong_working_hit, About::whole, "", "10", "10", "", ""},
  };
  return kRows;
}

/// A sample with one line of working, and then the line of the row.
struct Told {
  JudgedSample sample;

  explicit Told(const Row& row) {
    sample.add_combination(Joining::series, "R3 R4", "R34", "18.0").value = ValueVerdict::exact;
    Judgement& judgement = line_of(row);
    judgement.value = row.digits.empty() ? ValueVerdict::none : ValueVerdict::wrong;
    if (!row.right.empty()) {
      const Unit unit = judgement.stated ? judgement.stated->unit : Unit::ohm;
      judgement.right = Quantity(parse_number(row.right).number, unit);
    }
    Diagnosis diagnosis;
    diagnosis.error = row.error;
    if (!row.parts.empty()) diagnosis.parts = sample.parts(row.parts);
    if (!row.points.empty()) diagnosis.points = sample.points(row.points);
    if (!row.number.empty()) {
      diagnosis.numbers.emplace_back(parse_number(row.number).number, Unit::ohm);
    }
    const bool is_right =
        row.error == KnownError::wrong_word || row.error == KnownError::wrong_working_hit;
    if (is_right) judgement.value = ValueVerdict::exact;
    if (row.error == KnownError::wrong_working_hit) judgement.caused_by = {0};
    judgement.errors = {diagnosis};
  }

  Judgement& line_of(const Row& row) {
    switch (row.about) {
      case About::series:
        return sample.add_combination(Joining::series, row.of, "Rx", row.digits);
      case About::parallel:
        return sample.add_combination(Joining::parallel, row.of, "Rx", row.digits);
      case About::current:
        return sample.add_value(Claimed::current, row.of, row.digits, Unit::ampere);
      case About::voltage:
        return sample.add_value(Claimed::voltage, row.of, row.digits, Unit::volt);
      case About::power:
        return sample.add_value(Claimed::power, row.of, row.digits, Unit::watt);
      case About::whole:
        return sample.add_value(Claimed::whole_resistance, "", row.digits, Unit::ohm);
      case About::no_pair: {
        Judgement& judgement = sample.add("no series or parallel pair left", NoPairClaim{});
        judgement.step = StepVerdict::refused;
        return judgement;
      }
      case About::no_current: {
        Judgement& judgement =
            sample.add("no current through " + row.of, NoCurrentClaim{{row.of, {}}});
        judgement.step = StepVerdict::refused;
        judgement.rule = RuleName::equal_potentials;
        judgement.operands = sample.parts(row.of);
        return judgement;
      }
      case About::delta: {
        RewriteClaim claim;
        claim.rule = RuleName::delta_star;
        claim.values = {JudgedSample::written(row.digits, Unit::ohm)};
        Judgement& judgement = sample.add(
            "R2 R3 R4 in delta make Ra Rb Rc = " + row.digits + ", 11/3, 7/3 ohm", claim);
        judgement.step = StepVerdict::right;
        judgement.rule = RuleName::delta_star;
        judgement.operands = sample.parts(row.of);
        judgement.stated = Quantity(parse_number(row.digits).number, Unit::ohm);
        return judgement;
      }
    }
    return sample.judged.lines.front();
  }
};

void add_errors(Page& page) {
  for (const Row& row : rows()) {
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
  page.plain(
      "", std::string("[") + std::string(verdict_mark(verdict_of(line))) + "] " + line.claim.text);
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
  for (const Row& row : rows()) seen[static_cast<std::size_t>(row.error)] = true;
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
