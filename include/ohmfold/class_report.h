// The works of a class on one problem, marked side by side, and what went wrong how often.
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "ohmfold/coach.h"

namespace ohmfold {

/// What a claim is about: the same for all who solve the problem, whatever names they give.
struct Topic {
  enum class Kind : std::uint8_t {
    combination,     ///< of `parts`
    rewriting,       ///< of `parts` by `rule`
    quantity,        ///< `claimed`: of `parts` combined, or at `at`, or between `at` and `to`
    same_potential,  ///< of `at` and `to`
    no_current,      ///< through `parts` combined
    no_pair,         ///< no series or parallel pair is left
    named_wrongly    ///< what `name` means cannot be told
  };
  Kind kind = Kind::named_wrongly;
  std::size_t case_index = 0;  ///< into Trace::cases
  RuleName rule{};
  Claimed claimed{};
  std::vector<PartId> parts;  ///< of the file, in their order
  PointId at, to;             ///< of the file; of two the one that is first in the file is `at`
  std::string name;

  friend auto operator<=>(const Topic&, const Topic&) = default;
};

/// By claim; nothing for a line that names a case. Requires `judged` to be of `work`. Cost: near
/// linear in the claims and the parts that they combine.
[[nodiscard]] std::vector<std::optional<Topic>> topics_of(const Exercise& exercise,
                                                          const Work& work,
                                                          const WorkJudgement& judged);

struct VerdictCounts {
  std::size_t right = 0, follows = 0, rounded_early = 0, not_right = 0, cannot_tell = 0;
};

struct ErrorCount {
  KnownError error{};
  std::size_t count = 0;
};

/// One work of a class: a row of the table.
struct MarkedWork {
  /// What one or more lines of the work are about, and how they went.
  struct Step {
    Topic topic;
    bool wrong = false;              ///< at least one of the lines is not right
    std::vector<KnownError> errors;  ///< each once, in the order of the catalogue
  };

  std::string name;     ///< of its file
  std::string why_not;  ///< what keeps it from being judged; empty where it was judged
  bool all_right = false;
  Marks marks;
  VerdictCounts verdicts;
  std::vector<ErrorCount> errors;              ///< by lines, in the order of the catalogue
  std::optional<std::uint32_t> first_mistake;  ///< the line of the file, from 1
  std::vector<Step> steps;                     ///< in the order of Topic

  [[nodiscard]] bool is_judged() const { return why_not.empty(); }
};

/// The row of a work that was judged.
[[nodiscard]] MarkedWork marked_work(std::string name, const Exercise& exercise, const Work& work,
                                     const WorkJudgement& judged);

/// The row of a work that cannot be judged. Requires a reason.
[[nodiscard]] MarkedWork unmarked_work(std::string name, std::string why_not);

/// A step that some of the class have wrong.
struct ClassStep {
  Topic topic;
  std::size_t tried = 0;           ///< works with a line about it
  std::size_t wrong = 0;           ///< … of which so many have one that is not right
  std::vector<ErrorCount> errors;  ///< by works, most frequent first
};

struct ClassReport {
  std::shared_ptr<const Problem> problem;
  std::vector<std::string> cases;  ///< names, by case of the trace; "" where there is but one
  std::vector<MarkedWork> works;   ///< in the order given
  std::vector<ClassStep> steps;    ///< most often wrong first, then in the order of Topic
  std::vector<ErrorCount> errors;  ///< of all steps: by works, most frequent first

  /// Every work was judged, and is right.
  [[nodiscard]] bool all_right() const;
};

/// Cost: near linear in all steps of the works.
[[nodiscard]] ClassReport class_report(const Exercise& exercise, std::vector<MarkedWork> works);

}  // namespace ohmfold
