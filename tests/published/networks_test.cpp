// Every published network, solved: the exact values, and whether the printed ones agree with them.
#include "published/networks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "ohmfold/decimal.h"
#include "ohmfold/solve.h"
#include "ohmfold/trace.h"

namespace ohmfold::published {
namespace {

/// A unit of the file taken apart: the plain unit, and the power of ten that its prefix adds.
struct PrintedUnit {
  Unit unit = Unit::ohm;
  int scale = 0;
};

PrintedUnit printed_unit(const std::string& text) {
  static const std::map<std::string, PrintedUnit> kUnits = {
      {"ohm", {Unit::ohm, 0}},    {"kohm", {Unit::ohm, 3}}, {"V", {Unit::volt, 0}},
      {"mV", {Unit::volt, -3}},   {"A", {Unit::ampere, 0}}, {"mA", {Unit::ampere, -3}},
      {"uA", {Unit::ampere, -6}}, {"W", {Unit::watt, 0}},   {"mW", {Unit::watt, -3}},
      {"kW", {Unit::watt, 3}},
  };
  return kUnits.at(text);
}

/// Does the printed value agree? A printed power of ten ("2.00e2") joins that of the prefix.
bool printed_agrees(const PublishedAnswer& answer) {
  const std::size_t exponent = answer.printed.find('e');
  int scale = printed_unit(answer.unit).scale;
  if (exponent != std::string::npos) scale += std::stoi(answer.printed.substr(exponent + 1));
  return agrees(answer.printed.substr(0, exponent), answer.exact, scale);
}

/// The network with each of its questions once, as the reader gets it.
struct Asked {
  Problem problem;
  std::vector<std::string> questions;
};

Asked ask(const PublishedNetwork& network) {
  Asked asked;
  std::string text = circuit_text(network);
  for (const PublishedAnswer& answer : network.answers) {
    const std::optional<std::string> question = question_text(answer);
    if (!question) continue;
    const auto& known = asked.questions;
    if (std::find(known.begin(), known.end(), *question) != known.end()) continue;
    asked.questions.push_back(*question);
    text += "find " + *question + "\n";
  }
  asked.problem = read(text);
  return asked;
}

/// The sum of the powers of all parts of one kind; nothing where one of them is not determined.
std::optional<Quantity> sum_of_powers(const Trace& trace, PartKind kind) {
  Power sum;
  for (const BranchResult& branch : trace.cases.front().branches) {
    if (trace.problem->part(branch.part).kind != kind) continue;
    if (!branch.power.value) return std::nullopt;
    sum += Power{branch.power.value->number};
  }
  return Quantity(sum);
}

class PublishedNetworks : public testing::TestWithParam<PublishedNetwork> {
 protected:
  void SetUp() override {
    asked_ = ask(GetParam());
    trace_ = solve(asked_.problem);
    ASSERT_EQ(trace_.cases.size(), 1U);
    ASSERT_FALSE(trace_.has_contradiction());
  }

  /// Requires an answer to a question, not a sum.
  [[nodiscard]] const Answer& reply(const PublishedAnswer& answer) const {
    const auto& all = asked_.questions;
    const auto place = std::find(all.begin(), all.end(), question_text(answer));
    return trace_.cases.front().answers.at(static_cast<std::size_t>(place - all.begin()));
  }

  [[nodiscard]] std::optional<Quantity> found(const PublishedAnswer& answer) const {
    if (answer.of == "all resistors") return sum_of_powers(trace_, PartKind::resistor);
    if (answer.of == "all batteries") return sum_of_powers(trace_, PartKind::battery);
    return reply(answer).value.value;
  }

  Asked asked_;
  Trace trace_;
};

TEST_P(PublishedNetworks, GiveThePublishedAnswers) {
  for (const PublishedAnswer& answer : GetParam().answers) {
    SCOPED_TRACE(answer.quantity + " of " + answer.of + ", printed " + answer.printed + " " +
                 answer.unit + " in " + GetParam().source);
    const std::optional<Quantity> value = found(answer);
    ASSERT_TRUE(value);
    EXPECT_EQ(value->number.to_string(), answer.exact.to_string());
    EXPECT_EQ(value->unit, printed_unit(answer.unit).unit);
    EXPECT_EQ(printed_agrees(answer), answer.agrees)
        << (answer.agrees ? "" : "the source's own rounding misses the exact value");
  }
}

TEST_P(PublishedNetworks, ReduceWhereSeriesAndParallelSuffice) {
  const CaseTrace& solved = trace_.cases.front();
  const bool one_chain = solved.main.source.exists();  // batteries of one chain count as one
  switch (GetParam().count("battery") + GetParam().count("current source")) {
    case 0:
      EXPECT_EQ(solved.kind, Kind::no_source);
      break;
    case 1:
      EXPECT_EQ(solved.kind, *GetParam().series_parallel ? Kind::series_parallel : Kind::bridge);
      break;
    default:
      EXPECT_EQ(solved.kind, one_chain ? Kind::series_parallel : Kind::several_sources);
  }
  for (const PublishedAnswer& answer : GetParam().answers) {
    if (!answer.series_parallel) continue;
    SCOPED_TRACE("resistance of " + answer.of);
    const Reduction& by_steps = shown(reply(answer), solved);
    EXPECT_EQ(by_steps.choice.made, !*answer.series_parallel);
    if (*answer.series_parallel) {
      EXPECT_EQ(by_steps.stop, Stop::reduced);
    }
  }
}

TEST_P(PublishedNetworks, GiveTheSameByEveryMethod) {
  for (const Method method : {Method::equal_potentials, Method::delta_star, Method::node_voltage}) {
    SolveOptions options;
    options.method = method;
    const Trace other = solve(asked_.problem, options);
    const std::vector<Answer>& expected = trace_.cases.front().answers;
    for (std::size_t i = 0; i < expected.size(); ++i) {
      EXPECT_EQ(other.cases.front().answers.at(i).value.value, expected[i].value.value)
          << asked_.questions.at(i) << " by method " << static_cast<int>(method);
    }
  }
}

std::string test_name(const testing::TestParamInfo<PublishedNetwork>& info) {
  std::string name = info.param.id;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(All, PublishedNetworks, testing::ValuesIn(networks()), test_name);

TEST(PublishedFile, HoldsAHundredAndTenNetworks) {
  EXPECT_EQ(networks().size(), 110U);
}

TEST(PublishedFile, DisagreesWithPrintInSixPlaces) {
  std::size_t places = 0;
  for (const PublishedNetwork& network : networks()) {
    for (const PublishedAnswer& answer : network.answers) places += answer.agrees ? 0 : 1;
  }
  EXPECT_EQ(places, 6U);
}

}  // namespace

/// Shown where a test fails, instead of the bytes of the network.
void PrintTo(const PublishedNetwork& network, std::ostream* stream) {
  *stream << network.id << ", " << network.title;
}

}  // namespace ohmfold::published
