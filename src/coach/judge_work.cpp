// All claims of a work, each against the book of its case; those that use a later one wait for it.
#include <algorithm>
#include <deque>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "coach/claim_judge.h"
#include "coach/judged_work.h"
#include "coach/marks.h"
#include "coach/standing.h"
#include "language/nearest.h"
#include "ohmfold/solve.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

// For one claim: some hundredths of a second.
constexpr std::uint64_t kMostSymbolicWork = 4'000'000;

std::vector<std::string> names_made(const Claim& claim) {
  if (const auto* combine = std::get_if<CombineClaim>(&claim.says)) return {combine->makes.text};
  std::vector<std::string> names;
  if (const auto* rewrite = std::get_if<RewriteClaim>(&claim.says)) {
    for (const WrittenName& name : rewrite->makes) names.push_back(name.text);
  }
  return names;
}

// The claims of one case in the order in which they can be judged.
class CaseRun {
 public:
  CaseRun(const Exercise& exercise, std::size_t case_index, const Work& work,
          const JudgeOptions& options)
      : book_(exercise, case_index), judge_(book_, options), work_(work) {}

  void add(std::size_t claim) {
    for (const std::string& name : names_made(work_.claims[claim])) {
      makers_.emplace(name, claim);
    }
    claims_.push_back(claim);
  }

  void run(std::vector<Judgement>& lines) {
    for (const std::size_t claim : claims_) {
      if (const std::string* name = awaited(claim)) {
        waiting_[*name].push_back(claim);
        continue;
      }
      judge_with_followers(claim, lines);
    }
    for (const auto& [name, claims] : waiting_) {
      for (const std::size_t claim : claims) cannot_reach(claim, name, lines);
    }
  }

  [[nodiscard]] const CaseBook& book() const { return book_; }
  [[nodiscard]] CaseBook take_book() && { return std::move(book_); }
  [[nodiscard]] bool is_begun() const { return !claims_.empty(); }

 private:
  // A name that the claim needs and that another claim, not judged yet, makes.
  const std::string* awaited(std::size_t claim) {
    for (const std::string& name : judge_.missing_names(work_.claims[claim])) {
      const auto maker = makers_.find(name);
      if (maker != makers_.end() && maker->second != claim && !done_.contains(maker->second)) {
        return &maker->first;
      }
    }
    return nullptr;
  }

  void judge_with_followers(std::size_t first, std::vector<Judgement>& lines) {
    std::deque<std::size_t> ready{first};
    while (!ready.empty()) {
      const std::size_t claim = ready.front();
      ready.pop_front();
      judge(claim, lines[claim]);
      done_.insert(claim);
      for (const std::string& name : names_made(work_.claims[claim])) {
        const auto followers = waiting_.find(name);
        if (followers == waiting_.end()) continue;
        const std::vector<std::size_t> claims = std::move(followers->second);
        waiting_.erase(followers);
        for (const std::size_t next : claims) {
          if (const std::string* other = awaited(next)) {
            waiting_[*other].push_back(next);
          } else {
            ready.push_back(next);
          }
        }
      }
    }
  }

  void judge(std::size_t claim, Judgement& line) {
    try {
      const WorkLimit limit(kMostSymbolicWork);
      line = judge_.judge(work_.claims[claim], claim);
    } catch (const BeyondBudget&) {
      line = Judgement{};
      line.claim = claim;
      line.case_index = book_.case_index();
      line.value = ValueVerdict::cannot_tell;
      line.hindrance = Hindrance::too_large;
    }
  }

  void cannot_reach(std::size_t claim, const std::string& name, std::vector<Judgement>& lines) {
    Judgement& line = lines[claim];
    line.claim = claim;
    line.case_index = book_.case_index();
    line.step = StepVerdict::cannot_tell;
    line.hindrance = Hindrance::made_later;
    line.name = name;
    line.earlier = makers_.at(name);
  }

  CaseBook book_;
  ClaimJudge judge_;
  const Work& work_;
  std::vector<std::size_t> claims_;
  std::unordered_map<std::string, std::size_t> makers_;
  std::unordered_map<std::string, std::vector<std::size_t>> waiting_;
  std::unordered_set<std::size_t> done_;
};

// Where each claim belongs: the case that the line before says, at first the first.
class Judging {
 public:
  Judging(const Exercise& exercise, const Work& work, const JudgeOptions& options)
      : exercise_(exercise), work_(work), options_(options) {
    result_.lines.resize(work.claims.size());
  }

  JudgedWork run() && {
    std::vector<CaseRun> runs;
    runs.reserve(exercise_.trace.cases.size());
    for (std::size_t i = 0; i < exercise_.trace.cases.size(); ++i) {
      runs.emplace_back(exercise_, i, work_, options_);
    }
    share_out(runs);
    std::vector<const CaseBook*> books;
    books.reserve(runs.size());
    for (CaseRun& run : runs) {
      run.run(result_.lines);
      books.push_back(&run.book());
    }
    give_marks(exercise_, books, options_, result_);
    for (CaseRun& run : runs) {
      result_.cases.push_back(standing_in(run.book(), result_.lines, run.is_begun()));
    }
    std::vector<CaseBook> kept;
    kept.reserve(runs.size());
    for (CaseRun& run : runs) kept.push_back(std::move(run).take_book());
    return {std::move(result_), std::move(kept)};
  }

 private:
  void share_out(std::vector<CaseRun>& runs) {
    std::optional<std::size_t> now = 0;
    for (std::size_t i = 0; i < work_.claims.size(); ++i) {
      Judgement& line = result_.lines[i];
      line.claim = i;
      if (const auto* begins = std::get_if<CaseClaim>(&work_.claims[i].says)) {
        now = case_called(begins->label.text);
        if (now) {
          line.case_index = *now;
        } else {
          hinder_unknown_case(begins->label.text, line);
        }
        continue;
      }
      if (now && *now < runs.size()) {
        line.case_index = *now;
        runs[*now].add(i);
      } else {
        line.step = StepVerdict::cannot_tell;
        line.hindrance = Hindrance::unknown_name;
        line.name = unknown_case_;
      }
    }
  }

  [[nodiscard]] std::optional<std::size_t> case_called(const std::string& label) const {
    for (std::size_t i = 0; i < exercise_.trace.cases.size(); ++i) {
      if (exercise_.trace.cases[i].name == label) return i;
    }
    return std::nullopt;
  }

  void hinder_unknown_case(const std::string& label, Judgement& line) {
    std::vector<std::string_view> known;
    for (const CaseTrace& one : exercise_.trace.cases) known.push_back(one.name);
    line.step = StepVerdict::cannot_tell;
    line.hindrance = Hindrance::unknown_name;
    line.name = label;
    line.suggestion = nearest(label, known);
    unknown_case_ = label;
  }

  const Exercise& exercise_;
  const Work& work_;
  const JudgeOptions& options_;
  std::string unknown_case_;
  WorkJudgement result_;
};

}  // namespace

Exercise prepare(const Problem& problem) {
  Trace trace = solve(problem);
  std::shared_ptr<const Problem> solved = trace.problem;
  return {std::move(solved), std::move(trace)};
}

JudgedWork judge_with_books(const Exercise& exercise, const Work& work,
                            const JudgeOptions& options) {
  return Judging(exercise, work, options).run();
}

WorkJudgement judge_work(const Exercise& exercise, const Work& work, const JudgeOptions& options) {
  return judge_with_books(exercise, work, options).result;
}

}  // namespace ohmfold
