// Puts the judged works of a class together.
#include "ohmfold/class_report.h"

#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <utility>

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

using Counts = std::map<KnownError, std::size_t>;

std::vector<ErrorCount> in_order(const Counts& counts) {
  std::vector<ErrorCount> list;
  list.reserve(counts.size());
  for (const auto& [error, count] : counts) list.push_back({error, count});
  return list;
}

std::vector<ErrorCount> most_frequent_first(const Counts& counts) {
  std::vector<ErrorCount> list = in_order(counts);
  std::ranges::stable_sort(list, std::greater<>(), &ErrorCount::count);
  return list;
}

void count(LineVerdict verdict, VerdictCounts& counts) {
  switch (verdict) {
    case LineVerdict::nothing:
      return;
    case LineVerdict::right:
      ++counts.right;
      return;
    case LineVerdict::follows:
      ++counts.follows;
      return;
    case LineVerdict::rounded_early:
      ++counts.rounded_early;
      return;
    case LineVerdict::not_right:
      ++counts.not_right;
      return;
    case LineVerdict::cannot_tell:
      ++counts.cannot_tell;
      return;
  }
}

struct Tries {
  bool wrong = false;
  std::set<KnownError> errors;
};

std::vector<MarkedWork::Step> steps_of(std::map<Topic, Tries>&& tries) {
  std::vector<MarkedWork::Step> steps;
  steps.reserve(tries.size());
  for (auto& [topic, tried] : tries) {
    steps.push_back({topic, tried.wrong, {tried.errors.begin(), tried.errors.end()}});
  }
  return steps;
}

/// A step as the class takes it.
struct Tally {
  std::size_t tried = 0, wrong = 0;
  Counts errors;
};

std::vector<ClassStep> often_wrong_first(const std::map<Topic, Tally>& tallies) {
  std::vector<ClassStep> steps;
  for (const auto& [topic, tally] : tallies) {
    if (tally.wrong == 0) continue;
    steps.push_back({topic, tally.tried, tally.wrong, most_frequent_first(tally.errors)});
  }
  std::ranges::stable_sort(steps, std::greater<>(), &ClassStep::wrong);
  return steps;
}

}  // namespace

MarkedWork marked_work(std::string name, const Exercise& exercise, const Work& work,
                       const WorkJudgement& judged) {
  MarkedWork row;
  row.name = std::move(name);
  row.all_right = judged.all_right();
  row.marks = judged.marks;
  const std::vector<std::optional<Topic>> topics = topics_of(exercise, work, judged);
  Counts errors;
  std::map<Topic, Tries> tries;
  for (std::size_t i = 0; i < judged.lines.size(); ++i) {
    const Judgement& line = judged.lines[i];
    const Claim& claim = work.claims.at(line.claim);
    const LineVerdict verdict = verdict_of(line);
    const bool wrong = verdict == LineVerdict::not_right;
    if (wrong)
      row.first_mistake = std::min(row.first_mistake.value_or(claim.where.line), claim.where.line);
    count(verdict, row.verdicts);
    for (const Diagnosis& error : line.errors) ++errors[error.error];
    if (!topics[i]) continue;
    Tries& tried = tries[*topics[i]];
    tried.wrong = tried.wrong || wrong;
    for (const Diagnosis& error : line.errors) tried.errors.insert(error.error);
  }
  row.errors = in_order(errors);
  row.steps = steps_of(std::move(tries));
  return row;
}

MarkedWork unmarked_work(std::string name, std::string why_not) {
  ensure(!why_not.empty(), "a work that is not judged has a reason");
  MarkedWork row;
  row.name = std::move(name);
  row.why_not = std::move(why_not);
  return row;
}

ClassReport class_report(const Exercise& exercise, std::vector<MarkedWork> works) {
  ClassReport report;
  report.problem = exercise.problem;
  for (const CaseTrace& trace : exercise.trace.cases) report.cases.push_back(trace.name);
  std::map<Topic, Tally> tallies;
  Counts errors;
  for (const MarkedWork& work : works) {
    std::set<KnownError> in_this_work;
    for (const MarkedWork::Step& step : work.steps) {
      Tally& tally = tallies[step.topic];
      ++tally.tried;
      if (step.wrong) ++tally.wrong;
      for (const KnownError error : step.errors) ++tally.errors[error];
      in_this_work.insert(step.errors.begin(), step.errors.end());
    }
    for (const KnownError error : in_this_work) ++errors[error];
  }
  report.works = std::move(works);
  report.steps = often_wrong_first(tallies);
  report.errors = most_frequent_first(errors);
  return report;
}

}  // namespace ohmfold
