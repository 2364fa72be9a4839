// A judged work as JSON keeps to its schema, and holds no right value.
#include "judged_samples.h"
#include "schema.h"

namespace ohmfold {
namespace {

using test::JudgedSample;
using Json = nlohmann::ordered_json;

/// A line of every kind, with all that can be said of it.
JudgedSample full() {
  JudgedSample sample;
  sample.add("case \"S open\"", CaseClaim{{"S open", {}}});
  Judgement& series = sample.add_combination(Joining::series, "R3 R4", "R34", "18.0");
  series.value = ValueVerdict::exact;
  series.why = {MeetOnlyAt{sample.part("R3"), sample.part("R4"), sample.point("C")}};
  series.makes = sample.part("R34");
  series.leaves = sample.parts("R3 R4");
  series.method = Mark::earned;
  Judgement& current = sample.add_value(Claimed::current, "R2", "1.25", Unit::ampere);
  current.value = ValueVerdict::wrong;
  current.right = Quantity(Number::quotient(7, 3), Unit::ampere);
  current.own = Quantity(Number::quotient(11, 3), Unit::ampere);
  current.caused_by = {1};
  Diagnosis diagnosis;
  diagnosis.error = KnownError::split_equally;
  diagnosis.parts = sample.parts("R2 R34");
  diagnosis.points = sample.points("B");
  diagnosis.numbers = {Quantity(Number(2), Unit::ampere)};
  current.errors = {diagnosis};
  current.accuracy = Mark::lost;
  Judgement& unknown = sample.add_combination(Joining::parallel, "R2 R34", "R234", "6");
  unknown.step = StepVerdict::cannot_tell;
  unknown.value = ValueVerdict::cannot_tell;
  unknown.hindrance = Hindrance::unknown_name;
  unknown.name = "R43";
  unknown.suggestion = "R34";
  unknown.earlier = 1;
  unknown.part = sample.part("R34");
  Judgement& none = sample.add("no series or parallel pair left", NoPairClaim{});
  none.step = StepVerdict::refused;
  sample.judged.cases.front().open = {1, 2};
  sample.judged.cases.front().attempted = {0};
  return sample;
}

std::string text_of(const JudgedSample& sample) {
  return render_judgement_json(sample.exercise, sample.work, sample.judged);
}

#ifdef OHMFOLD_HAS_VALIJSON
std::string objection(const std::string& text) {
  return test::schema_objection("docs/judgement.schema.json", text);
}

TEST(JudgementSchema, HoldsForEveryKindOfLine) {
  EXPECT_EQ(objection(text_of(full())), "");
  EXPECT_EQ(objection(text_of(JudgedSample())), "");
}

TEST(JudgementSchema, HoldsForEveryVerdict) {
  for (int i = 0; i <= static_cast<int>(ValueVerdict::cannot_tell); ++i) {
    JudgedSample sample = full();
    Judgement& line = sample.judged.lines[1];
    line.value = static_cast<ValueVerdict>(i);
    line.step = static_cast<StepVerdict>(i % 5);
    line.unit = static_cast<UnitVerdict>(i % 4);
    line.figures = static_cast<FiguresVerdict>(i % 3);
    EXPECT_EQ(objection(text_of(sample)), "") << i;
  }
  for (int i = 0; i <= static_cast<int>(Hindrance::several_sources); ++i) {
    JudgedSample sample = full();
    sample.judged.lines[3].hindrance = static_cast<Hindrance>(i);
    EXPECT_EQ(objection(text_of(sample)), "") << i;
  }
  for (std::size_t i = 0; i < kKnownErrors; ++i) {
    JudgedSample sample = full();
    sample.judged.lines[2].errors.front().error = static_cast<KnownError>(i);
    EXPECT_EQ(objection(text_of(sample)), "") << i;
  }
}

TEST(JudgementSchema, RefusesWhatIsNoJudgement) {
  const std::string good = text_of(full());
  const std::vector<std::pair<std::string, std::string>> changes{
      {"\"ohmfold-judgement\"", "\"other\""},
      {"\"version\": 1", "\"version\": 2"},
      {"\"verdict\": \"exact\"", "\"verdict\": \"exactly\""},
      {"\"earned\": 0", "\"earned\": -1"},
      {"\"line\": 1", "\"line\": 0"},
      {"\"caused_by\"", "\"because_of\""},
      {"\"rule\": \"series\"", "\"rule\": \"sery\""},
  };
  test::expect_refusals("docs/judgement.schema.json", good, changes);
}
#else
TEST(JudgementSchema, HoldsForEveryKindOfLine) {
  GTEST_SKIP() << "needs libvalijson-dev";
}
#endif

TEST(JudgementJson, HoldsNoRightValue) {
  const std::string text = text_of(full());
  EXPECT_EQ(text.find("7/3"), std::string::npos);
  EXPECT_EQ(text.find("11/3"), std::string::npos);
}

TEST(JudgementJson, NamesPartsPointsAndLines) {
  const Json all = Json::parse(text_of(full()));
  EXPECT_EQ(all["work"], "toy.work");
  EXPECT_EQ(all["all_right"], false);
  const Json& series = all["lines"][1];
  EXPECT_EQ(series["line"], 2);
  EXPECT_EQ(series["case"], "S open");
  EXPECT_EQ(series["verdict"], "right");
  EXPECT_EQ(series["step"], Json::parse(R"({"verdict": "right", "rule": "series",
      "operands": ["R3", "R4"], "makes": "R34", "leaves": ["R3", "R4"],
      "why": ["only R3 and R4 meet at point C"]})"));
  EXPECT_EQ(series["value"]["written"], "18.0 Ω");
  const Json& current = all["lines"][2];
  EXPECT_EQ(current["value"]["caused_by"], Json::parse("[2]"));
  EXPECT_EQ(current["errors"][0]["error"], "split-equally");
  EXPECT_EQ(current["errors"][0]["points"], Json::parse(R"(["B"])"));
  EXPECT_EQ(current["marks"]["accuracy"], "lost");
  EXPECT_EQ(all["lines"][3]["hindrance"]["earlier"], 2);
  EXPECT_TRUE(all["lines"][4]["step"]["rule"].is_null());
  EXPECT_EQ(all["cases"][0]["open"], Json::parse(R"(["voltage from A to B", "power in R2"])"));
}

}  // namespace
}  // namespace ohmfold
