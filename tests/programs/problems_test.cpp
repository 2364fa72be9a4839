// The problem collection: every file is solved, and comes to the answers found without this
// program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

#include "ohmfold/read.h"
#include "ohmfold/solve.h"
#include "programs/problem_answers.h"

namespace ohmfold {
namespace {

const std::filesystem::path& folder() {
  static const std::filesystem::path kFolder = OHMFOLD_SOURCE_DIR "/problems";
  return kFolder;
}

std::string text_of(const std::string& file) {
  std::ifstream stream(folder() / file, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  return text.str();
}

std::set<std::string> problem_files() {
  std::set<std::string> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder())) {
    if (entry.path().extension() == ".circuit") files.insert(entry.path().filename().string());
  }
  return files;
}

/// Reads a problem of the collection. Fails the test with all findings where it has errors.
Problem problem_in(const std::string& file) {
  const SourceText source{file, text_of(file)};
  const Outcome<Problem> outcome = read_circuit(source);
  for (const Diagnostic& diagnostic : outcome.diagnostics) {
    if (diagnostic.severity == Severity::error) ADD_FAILURE() << render(diagnostic, source);
  }
  return outcome ? *outcome.value : Problem{};
}

/// The cautions of a problem's case.
std::vector<CautionKind> cautions(const std::string& file, std::size_t setting) {
  std::vector<CautionKind> kinds;
  const Trace trace = solve(problem_in(file));
  for (const Caution& caution : trace.cases.at(setting).cautions) {
    kinds.push_back(caution.kind);
  }
  return kinds;
}

class Problems : public testing::TestWithParam<ProblemAnswers> {};

TEST_P(Problems, ComeToTheAnswersFoundWithoutThisProgram) {
  const Problem problem = problem_in(GetParam().file);
  const Trace trace = solve(problem);
  auto expected = GetParam().answers.begin();
  for (const CaseTrace& solved : trace.cases) {
    for (const Answer& answer : solved.answers) {
      ASSERT_NE(expected, GetParam().answers.end()) << "more answers than expected";
      SCOPED_TRACE(expected->setting + ": " + expected->question);
      EXPECT_EQ(solved.name, expected->setting);
      EXPECT_EQ(to_string(answer.question, problem), expected->question);
      ASSERT_TRUE(answer.value.value);
      EXPECT_EQ(answer.value.value->number.to_string(), expected->exact);
      ++expected;
    }
  }
  EXPECT_EQ(expected, GetParam().answers.end()) << "fewer answers than expected";
}

TEST_P(Problems, StateThemselvesInFull) {
  const Problem problem = problem_in(GetParam().file);
  EXPECT_FALSE(problem.title.empty());
  EXPECT_FALSE(problem.texts.empty());
  EXPECT_FALSE(problem.questions.empty());
  const std::string text = text_of(GetParam().file);
  const std::string first = text.substr(0, text.find('\n'));
  EXPECT_EQ(first.rfind("# Teaches: ", 0), 0U) << first;
  EXPECT_NE(first.find(" Invented scenario."), std::string::npos) << first;
}

std::string test_name(const testing::TestParamInfo<ProblemAnswers>& info) {
  std::string name = info.param.file.substr(0, info.param.file.find('.'));
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(All, Problems, testing::ValuesIn(problem_answers()), test_name);

TEST(ProblemCollection, HasExpectedAnswersForEveryFile) {
  std::set<std::string> expected;
  for (const ProblemAnswers& answers : problem_answers()) expected.insert(answers.file);
  EXPECT_EQ(problem_files(), expected);
}

TEST(ProblemCollection, ListsEveryFileInItsReadmeWithWhatItTeaches) {
  const std::string readme = text_of("README.md");
  const std::string head = "# Teaches: ";
  for (const std::string& file : problem_files()) {
    const std::string text = text_of(file);
    std::string row = "| [" + file;
    row += "](" + file;
    row += ") | ";
    row += text.substr(head.size(), text.find(". Invented scenario.") - head.size());
    row += " |\n";
    EXPECT_NE(readme.find(row), std::string::npos) << row;
  }
}

TEST(ProblemCollection, ListsNothingElseInItsReadme) {
  const std::set<std::string> files = problem_files();
  std::istringstream readme(text_of("README.md"));
  std::size_t rows = 0;
  for (std::string line; std::getline(readme, line);) {
    if (line.rfind("| [", 0) != 0) continue;
    ++rows;
    EXPECT_EQ(files.count(line.substr(3, line.find(']') - 3)), 1U) << line;
  }
  EXPECT_EQ(rows, files.size());
}

TEST(ProblemCollection, CautionsAgainstTheShortCircuitOfTheSpanner) {
  EXPECT_THAT(cautions("28-dropped-spanner.circuit", 1),
              testing::Contains(CautionKind::short_circuit));
}

TEST(ProblemCollection, CautionsAgainstTheVoltageOfTheOldReceiver) {
  EXPECT_THAT(cautions("29-valve-radio.circuit", 0), testing::Contains(CautionKind::high_voltage));
}

}  // namespace

/// Shown where a test fails, instead of the bytes of the table.
void PrintTo(const ProblemAnswers& answers, std::ostream* stream) {
  *stream << answers.file;
}

}  // namespace ohmfold
