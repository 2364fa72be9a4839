// Hints: whoever does what they tell, step after step, arrives.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "ohmfold/coach.h"
#include "ohmfold/read.h"

namespace ohmfold {
namespace {

std::vector<std::filesystem::path> problem_files() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(OHMFOLD_SOURCE_DIR "/problems")) {
    if (entry.path().extension() == ".circuit") files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

Problem problem_in(const std::filesystem::path& file) {
  std::ifstream in(file);
  std::stringstream text;
  text << in.rdbuf();
  Outcome<Problem> read = read_circuit({file.filename(), text.str()});
  EXPECT_TRUE(read.value) << file;
  return *read.value;
}

// A person who does what the hint tells.
class Follower {
 public:
  explicit Follower(const Exercise& exercise) : exercise_(exercise) {}

  // Lines until nothing more is told; what went wrong, if anything did.
  std::string run() {
    for (int i = 0; i < 400; ++i) {
      const Outcome<Work> work = read_work({"w", text_}, *exercise_.problem);
      if (!work) return "cannot read\n" + text_ + message(work.diagnostics.front());
      const WorkJudgement judged = judge_work(exercise_, *work.value);
      if (!judged.all_right()) return "a told line does not hold\n" + text_;
      const Hint hint = next_hint(exercise_, *work.value, judged);
      if (hint.kind == HintKind::done) return is_answered(judged);
      const std::string line = claim_for(hint, judged);
      if (line.empty() || !said_.insert(case_ + ": " + line).second)
        return "stuck at '" + line + "'\n" + text_;
      text_ += line + "\n";
    }
    return "no end\n" + text_;
  }

 private:
  std::string is_answered(const WorkJudgement& judged) const {
    for (const CaseStanding& standing : judged.cases) {
      if (!standing.open.empty() || !standing.attempted.empty()) return "not answered\n" + text_;
    }
    if (judged.marks.earned() != judged.marks.most()) return "marks missing\n" + text_;
    return {};
  }

  std::string names(const CaseStanding& standing, const std::vector<PartId>& parts,
                    const std::string& between) const {
    std::string text;
    for (const PartId part : parts) {
      text += (text.empty() ? "" : between) + standing.part_names.at(part.index);
    }
    return text;
  }

  static std::string value_text(const Quantity& value) {
    const std::string number = value.number.to_string();
    const bool plain = number.find_first_not_of("-0123456789/") == std::string::npos;
    const std::string exact = plain ? number : "(" + number + ")";
    return exact + " " + std::string(symbol(value.unit, Letters::ascii));
  }

  std::string claim_for(const Hint& hint, const WorkJudgement& judged) {
    const CaseStanding& standing = judged.cases.at(hint.case_index);
    const CaseTrace& solved = exercise_.trace.cases.at(hint.case_index);
    std::string prefix;
    if (!solved.name.empty() && solved.name != case_) {
      case_ = solved.name;
      prefix = "case \"" + case_ + "\"\n";
    }
    return prefix + without_case(hint, standing);
  }

  std::string without_case(const Hint& hint, const CaseStanding& standing) {
    const std::string value = hint.value ? " = " + value_text(*hint.value) : "";
    switch (hint.kind) {
      case HintKind::combine: {
        const bool series = hint.rule == RuleName::series;
        return "made" + std::to_string(++made_) + " = " +
               names(standing, hint.place.parts, series ? " + " : " || ") + value;
      }
      case HintKind::rewrite:
        return rewriting(hint, standing);
      case HintKind::no_pair:
        return "no series or parallel pair left";
      case HintKind::whole:
        return "equivalent resistance" + value;
      case HintKind::quantity:
        return hint.value ? quantity(hint, standing) + value : "";
      case HintKind::mend:
      case HintKind::done:
        break;
    }
    return {};
  }

  std::string rewriting(const Hint& hint, const CaseStanding& standing) {
    if (hint.rule == RuleName::equal_potentials) {
      if (!hint.place.points.empty()) {
        return standing.point_names.at(hint.place.points[0].index) + " and " +
               standing.point_names.at(hint.place.points[1].index) + " at the same potential";
      }
      return "no current through " + standing.part_names.at(hint.place.parts[0].index);
    }
    const bool delta = hint.rule == RuleName::delta_star;
    std::string made;
    for (int i = 0; i < 3; ++i) made += " made" + std::to_string(++made_);
    return names(standing, hint.place.parts, " ") + (delta ? " in delta make" : " in star make") +
           made;
  }

  static std::string quantity(const Hint& hint, const CaseStanding& standing) {
    const auto part = [&] { return standing.part_names.at(hint.of.index); };
    const auto point = [&](PointId id) { return standing.point_names.at(id.index); };
    switch (hint.claimed) {
      case Claimed::current:
        return "current through " + part();
      case Claimed::voltage:
        return "voltage across " + part();
      case Claimed::power:
        return "power in " + part();
      case Claimed::value:
        return "value of " + part();
      case Claimed::voltage_between:
        return "voltage from " + point(hint.at) + " to " + point(hint.to);
      case Claimed::potential:
        return "potential at " + point(hint.at);
      case Claimed::resistance_between:
        return "resistance between " + point(hint.at) + " and " + point(hint.to);
      case Claimed::resistance_seen_by:
        return "resistance seen by " + part();
      case Claimed::whole_resistance:
        return "equivalent resistance";
    }
    return {};
  }

  const Exercise& exercise_;
  std::string text_, case_;
  std::set<std::string> said_;
  int made_ = 0;
};

TEST(Hints, LeadThroughEveryProblemToItsAnswers) {
  for (const auto& file : problem_files()) {
    const Exercise exercise = prepare(problem_in(file));
    if (exercise.trace.has_contradiction() || exercise.trace.is_beyond_budget()) continue;
    EXPECT_EQ(Follower(exercise).run(), "") << file.filename();
  }
}

}  // namespace
}  // namespace ohmfold
