// The trace as JSON keeps to its schema, its order of keys and its meaning.
#include <nlohmann/json.hpp>

#include "samples.h"
#include "schema.h"

namespace ohmfold {
namespace {

using test::problem_files;
using test::trace_of;
using Json = nlohmann::ordered_json;

Json json_of(const Trace& trace) {
  return Json::parse(render_json(trace));
}

std::vector<std::string> keys(const Json& object) {
  std::vector<std::string> names;
  for (const auto& item : object.items()) names.push_back(item.key());
  return names;
}

#ifdef OHMFOLD_HAS_VALIJSON
std::string objection(const std::string& text) {
  return test::schema_objection("docs/trace.schema.json", text);
}

TEST(TraceSchema, HoldsForEveryProblem) {
  for (const SourceText& file : problem_files()) {
    EXPECT_EQ(objection(render_json(trace_of(file))), "") << file.name;
  }
  for (const char* text : {test::kShorted, test::kDisagreeing, test::kUndetermined}) {
    EXPECT_EQ(objection(render_json(trace_of(text))), "") << text;
  }
}

TEST(TraceSchema, RefusesWhatIsNoTrace) {
  const std::string good = render_json(trace_of(problem_files().front()));
  const std::vector<std::pair<std::string, std::string>> changes{
      {"\"ohmfold-trace\"", "\"other\""},  {"\"version\": 1", "\"version\": \"1\""},
      {"\"kind\": \"", "\"kind\": \"un"},  {"\"stage\":1", "\"stage\":0"},
      {"\"exact\":\"", "\"exact\":\"1/0"}, {"\"holds\":true", "\"holds\":1"},
      {"\"takes\":", "\"took\":"},
  };
  test::expect_refusals("docs/trace.schema.json", good, changes);
}
#else
TEST(TraceSchema, HoldsForEveryProblem) {
  GTEST_SKIP() << "needs libvalijson-dev";
}
#endif

TEST(RenderJson, HasItsKeysInOrder) {
  const Json trace = json_of(trace_of(problem_files().front()));
  EXPECT_EQ(keys(trace), (std::vector<std::string>{"format", "version", "title", "cases"}));
  EXPECT_EQ(keys(trace["cases"][0]),
            (std::vector<std::string>{"name", "kind", "complete", "steps", "bridge", "way",
                                      "equivalent", "returns", "branches", "nodes", "answers",
                                      "checks", "cautions", "remarks", "shares"}));
}

TEST(RenderJson, WritesAStepAsTheLanguagePageShowsIt) {
  const Json trace =
      json_of(trace_of("battery E = 18 V from G to T\nresistor R1 = 4 ohm from T to A\n"
                       "resistor R2 = 2 ohm from A to G\nresistor R3 = 6 ohm from T to G\n"));
  const Json& steps = trace["cases"][0]["steps"];
  ASSERT_EQ(steps.size(), 2U);
  EXPECT_EQ(steps[0],
            Json::parse(R"({"number": 1, "stage": 1, "rule": "series", "takes": ["R1", "R2"],
                "makes": ["R12"], "between": ["T", "G"],
                "value": {"exact": "6", "unit": "ohm", "rounded": "6.00"}, "formula": "R1 + R2",
                "reason": "Only R1 and R2 meet at point A, so the same current runs through both."})"));
  EXPECT_EQ(steps[1]["formula"], "R3 || R12");
  EXPECT_EQ(trace["cases"][0]["equivalent"], Json::parse(R"({"between": ["T", "G"],
                "value": {"exact": "3", "unit": "ohm", "rounded": "3.00"}})"));
}

TEST(RenderJson, SaysWhyAValueIsMissing) {
  const Json one = json_of(trace_of(test::kUndetermined))["cases"][0];
  const Json& answer = one["answers"][0];
  EXPECT_EQ(answer["find"], "current through W1");
  EXPECT_TRUE(answer["value"]["exact"].is_null());
  EXPECT_FALSE(answer["value"]["why"].get<std::string>().empty());
  EXPECT_TRUE(one["answers"][2].contains("steps"));
}

TEST(RenderJson, WritesTheEliminationOfNodeEquations) {
  const Json one =
      json_of(trace_of("battery E = 12 V from G to T\nresistor R1 = 4 ohm from T to A\n"
                       "resistor R2 = 24 ohm from A to G\n"
                       "resistor R3 = 18 ohm from T to B\n"
                       "resistor R4 = 6 ohm from B to G\n"
                       "resistor R5 = 3 ohm from A to B\n"))["cases"][0];
  const Json& elimination = one["elimination"];
  EXPECT_EQ(elimination["ground"], "G");
  EXPECT_EQ(elimination["unknowns"], (Json{"A", "B"}));
  EXPECT_EQ(elimination["fixed"][0]["point"], "T");
  ASSERT_EQ(elimination["equations"].size(), 5U);
  EXPECT_EQ(elimination["equations"][2],
            Json::parse(R"({"origin": "combined", "label": "2'", "unknown": "A",
                "from": [{"equation": 1, "factor": "5"}, {"equation": 0, "factor": "1"}],
                "divisor": "1", "terms": [{"point": "B", "coefficient": "17"}],
                "constant": {"exact": "102", "unit": "V", "rounded": "102"}})"));
  EXPECT_EQ(elimination["equations"][4]["constant"]["exact"], "8");
}

TEST(RenderJson, LeavesNothingBesideAContradiction) {
  const Json one = json_of(trace_of(test::kDisagreeing))["cases"][0];
  EXPECT_EQ(one["contradiction"]["parts"], (Json{"E2", "E1"}));
  EXPECT_EQ(one["contradiction"]["points"], (Json{"G", "T"}));
  EXPECT_EQ(one["contradiction"]["remainder"]["exact"], "1");
  for (const char* list : {"steps", "returns", "branches", "nodes", "answers", "checks"}) {
    EXPECT_TRUE(one[list].is_array() && one[list].empty()) << list;
  }
}

TEST(RenderJson, EscapesWhatAFileMayContain) {
  Problem problem = *trace_of(test::kDisagreeing).problem;
  problem.title = "a \"b\" \\ \xC3\n";
  EXPECT_EQ(json_of(solve(problem))["title"], "a \"b\" \\ \uFFFD\n");
}

TEST(RenderJson, WritesExactValuesWholeUpToAHundredThousandDigits) {
  const auto answer_of = [](const std::string& digits) {
    return json_of(
        trace_of("battery E = " + digits + " V from G to T\n" +
                 "resistor R1 = 1 ohm from T to G\nfind voltage across E\n"))["cases"][0]["answers"]
                                                                             [0]["value"];
  };
  EXPECT_EQ(answer_of(std::string(500, '7'))["exact"], std::string(500, '7'));
  const Json found = answer_of(std::string(60'000, '7') + "/" + std::string(59'999, '3'));
  EXPECT_TRUE(found["exact"].is_null());
  EXPECT_EQ(found["unit"], "V");
  EXPECT_EQ(found["rounded"], "23.3");
}

}  // namespace
}  // namespace ohmfold
