// Marks for judged work.
#include "coach/marks.h"

#include <algorithm>
#include <set>

#include "coach/standing.h"
#include "coach/value_judge.h"

namespace ohmfold {
namespace {

using Leaves = std::vector<PartId>;

// Beyond so many parts the steps of the solution are no scheme for a person's work.
constexpr std::size_t kMostParts = 500;

bool is_scheme_step(RuleName rule) {
  return rule == RuleName::series || rule == RuleName::parallel || rule == RuleName::delta_star ||
         rule == RuleName::star_delta;
}

// The blocks that the solution combines: parts of the file, in order.
std::vector<Leaves> blocks_of(const Reduction& reduction, std::size_t file_parts) {
  std::vector<Leaves> inside(reduction.end.part_count());
  for (std::uint32_t i = 0; i < inside.size() && i < file_parts; ++i) inside[i] = {PartId{i}};
  std::vector<Leaves> blocks;
  for (std::size_t i = 0; i < reduction.steps.size(); ++i) {
    const Step step = reduction.steps[i];
    if (!step.makes.exists()) continue;
    Leaves leaves;
    for (const PartId part : step.takes) {
      leaves.insert(leaves.end(), inside[part.index].begin(), inside[part.index].end());
    }
    std::sort(leaves.begin(), leaves.end());
    leaves.erase(std::unique(leaves.begin(), leaves.end()), leaves.end());
    const std::size_t made = std::max<std::size_t>(step.adds.size(), 1);
    for (std::size_t k = 0; k < made; ++k) inside[step.makes.index + k] = leaves;
    if (is_scheme_step(step.rule)) blocks.push_back(std::move(leaves));
  }
  return blocks;
}

bool contains(const Leaves& whole, const Leaves& part) {
  return part.size() <= whole.size() &&
         std::includes(whole.begin(), whole.end(), part.begin(), part.end());
}

Mark mark(bool earned) {
  return earned ? Mark::earned : Mark::lost;
}

// A wrong value keeps its method mark where some known error that gives it does.
bool keeps_method(const Judgement& line) {
  return std::any_of(line.errors.begin(), line.errors.end(),
                     [](const Diagnosis& error) { return !costs_method(error.error); });
}

void mark_line(Judgement& line, const JudgeOptions& options) {
  if (line.step != StepVerdict::none) {
    bool method = line.step == StepVerdict::right || line.step == StepVerdict::right_on_own;
    const bool wrong_law = line.value == ValueVerdict::wrong && !line.errors.empty();
    if (wrong_law && !keeps_method(line)) method = false;
    line.method = mark(method);
  } else if (line.value != ValueVerdict::none) {
    line.method = mark(may_stand(line.value) || keeps_method(line));
  }
  if (line.value == ValueVerdict::none) return;
  const bool by_slips = std::any_of(
      line.errors.begin(), line.errors.end(),
      [](const Diagnosis& error) { return error.error == KnownError::wrong_working_hit; });
  const bool early = options.strict_rounding && line.value == ValueVerdict::rounded_early;
  const bool right = may_stand(line.value) && !by_slips && !early;
  line.accuracy = mark(right && line.method == Mark::earned);
}

// The marks of one case.
class CaseMarks {
 public:
  CaseMarks(const CaseTrace& solved, const CaseBook& book, std::vector<Judgement>& lines)
      : solved_(solved), case_index_(book.case_index()), lines_(lines) {
    const std::size_t parts = book.problem().parts.size();
    if (parts > kMostParts) return;
    blocks_ = blocks_of(solved.main, parts);
    for (const Reduction& further : solved.further) {
      for (Leaves& block : blocks_of(further, parts)) {
        const bool known = std::find(blocks_.begin(), blocks_.end(), block) != blocks_.end();
        if (!known) blocks_.push_back(std::move(block));
      }
    }
  }

  void add_to(Marks& marks) {
    find_answers();
    find_blocks();
    for (const Leaves& block : blocks_) add_block(block, marks);
    charge_working();
    for (const Asked& asked : asked_) {
      marks.most_method += 1;
      marks.most_accuracy += 1;
      marks.method += asked.method ? 1 : 0;
      marks.accuracy += asked.accuracy ? 1 : 0;
      if (asked.line == nullptr) continue;
      if (asked.line->unit == UnitVerdict::missing) marks.unit_lost = true;
      if (asked.line->figures == FiguresVerdict::too_few) marks.figures_lost = true;
    }
  }

 private:
  struct Asked {
    Judgement* line = nullptr;  // the first that gives the value
    bool method = false, accuracy = false;
  };

  [[nodiscard]] bool is_here(const Judgement& line) const { return line.case_index == case_index_; }

  // Only the first of several values for one question is marked, as usual.
  void find_answers() {
    for (const Answer& answer : solved_.answers) {
      if (!answer.value.value && !answer.irrational) continue;
      std::vector<Asked> values(static_cast<std::size_t>(values_asked_by(answer.question)));
      std::size_t next = 0;
      for (Judgement& line : lines_) {
        if (next == values.size()) break;
        if (!is_here(line) || !answers(line, answer.question, solved_)) continue;
        const bool again = next > 0 && values[0].line->claimed == line.claimed;
        if (again) continue;
        values[next++] = {&line, line.method == Mark::earned, line.accuracy == Mark::earned};
        answering_.insert(line.claim);
      }
      any_answer_ = any_answer_ || std::any_of(values.begin(), values.end(), [](const Asked& one) {
                      return one.method && one.accuracy;
                    });
      asked_.insert(asked_.end(), values.begin(), values.end());
    }
  }

  // The smallest block of the scheme that the line works on.
  [[nodiscard]] const Leaves* block_of(const Judgement& line) const {
    const Leaves* smallest = nullptr;
    for (const Leaves& block : blocks_) {
      if (!contains(block, line.leaves)) continue;
      if (smallest == nullptr || block.size() < smallest->size()) smallest = &block;
    }
    return smallest;
  }

  void find_blocks() {
    block_of_.resize(lines_.size());
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      if (is_here(lines_[i]) && !lines_[i].leaves.empty()) block_of_[i] = block_of(lines_[i]);
    }
  }

  void add_block(const Leaves& block, Marks& marks) {
    marks.most_method += 1;
    marks.most_accuracy += 1;
    bool shown = false;
    bool method = true;
    bool accuracy = true;
    bool implied = any_answer_;
    for (const Judgement& line : lines_) {
      if (!is_here(line)) continue;
      const bool whole = line.claimed == Claimed::whole_resistance && line.leaves.empty();
      if (whole && line.holds()) implied = true;
      if (line.leaves.empty() || line.step == StepVerdict::none) continue;
      if (block_of_[line.claim] == &block) {
        shown = true;
        method = method && line.method != Mark::lost;
        accuracy = accuracy && line.accuracy != Mark::lost;
      } else if (line.step != StepVerdict::refused && line.step != StepVerdict::cannot_tell &&
                 contains(line.leaves, block)) {
        implied = true;
      }
    }
    if (!shown) method = accuracy = implied;
    marks.method += method ? 1 : 0;
    marks.accuracy += method && accuracy ? 1 : 0;
  }

  // A wrong line that nobody asked for costs what it is worth in the first answer that rests on it.
  void charge_working() {
    for (Judgement& line : lines_) {
      const bool working = is_here(line) && line.claimed && line.leaves.empty() &&
                           !answering_.contains(line.claim) && line.value == ValueVerdict::wrong;
      if (!working) continue;
      for (Asked& asked : asked_) {
        if (asked.line == nullptr || !rests_on(*asked.line, line.claim)) continue;
        if (line.method == Mark::lost && asked.method) {
          asked.method = false;
          break;
        }
        if (asked.accuracy) {
          asked.accuracy = false;
          break;
        }
      }
    }
  }

  [[nodiscard]] bool rests_on(const Judgement& line, std::size_t claim) const {
    std::set<std::size_t> seen;
    std::vector<std::size_t> open(line.caused_by);
    while (!open.empty()) {
      const std::size_t one = open.back();
      open.pop_back();
      if (one == claim) return true;
      if (!seen.insert(one).second) continue;
      open.insert(open.end(), lines_[one].caused_by.begin(), lines_[one].caused_by.end());
    }
    return false;
  }

  const CaseTrace& solved_;
  std::size_t case_index_;
  std::vector<Judgement>& lines_;
  std::vector<Leaves> blocks_;
  std::vector<const Leaves*> block_of_;  // by line
  std::vector<Asked> asked_;
  std::set<std::size_t> answering_;
  bool any_answer_ = false;
};

}  // namespace

void give_marks(const Exercise& exercise, const std::vector<const CaseBook*>& books,
                const JudgeOptions& options, WorkJudgement& result) {
  for (Judgement& line : result.lines) {
    mark_line(line, options);
    if (line.unit == UnitVerdict::wrong) result.marks.unit_lost = true;
    if (line.value == ValueVerdict::cut_off) result.marks.figures_lost = true;
  }
  for (const CaseBook* book : books) {
    CaseMarks(exercise.trace.cases[book->case_index()], *book, result.lines).add_to(result.marks);
  }
}

}  // namespace ohmfold
