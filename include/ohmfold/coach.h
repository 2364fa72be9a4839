// Judging a person's own work, line by line, on their own network and with their own numbers.
//
// Two networks stand side by side: the true one, changed by every step that is right in it, and the
// person's own, changed by every step as it was claimed. Parts have the same ids in both. As long
// as no step was wrong they are one and the same.
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "ohmfold/fact.h"
#include "ohmfold/known_error.h"
#include "ohmfold/network.h"
#include "ohmfold/problem.h"
#include "ohmfold/trace.h"
#include "ohmfold/work.h"

namespace ohmfold {

/// A problem with its solution, so that many works on it can be judged.
struct Exercise {
  std::shared_ptr<const Problem> problem;
  Trace trace;
};

/// Solves the problem. Throws as solve() does.
[[nodiscard]] Exercise prepare(const Problem& problem);

struct JudgeOptions {
  /// Rounding too early costs the accuracy mark; otherwise it is only remarked upon.
  bool strict_rounding = false;
  /// Fewer figures than this in a rounded value are too few.
  int least_figures = 2;
};

/// May what the line claims to do be done?
enum class StepVerdict : std::uint8_t {
  none,          ///< the line makes no step
  right,         ///< in the circuit as it is
  right_on_own,  ///< not there, but in the network that the person's earlier lines have made
  refused,       ///< in neither
  cannot_tell    ///< see Hindrance
};

/// Why a line cannot be judged, or refers to what it should not. `name` and `part` say of what.
enum class Hindrance : std::uint8_t {
  none,
  unknown_name,    ///< no part, point or case is called `name`; `suggestion` may say what was meant
  made_later,      ///< `name` is made only in the claim `earlier`, which waits in turn
  name_taken,      ///< `name`, which the claim wants to give, is the name of something else
  named_twice,     ///< `name` stands twice among the operands
  used_already,    ///< `part` is inside another by now, which the claim `earlier` made
  left_out,        ///< `part` carries nothing in this case; `why` says why
  not_a_resistor,  ///< `part`
  no_values,       ///< a value was left out of an earlier line that this one needs
  lost_track,      ///< an earlier wrong step leaves open what the network has become
  not_determined,  ///< the circuit leaves the quantity open
  too_large,       ///< the circuit is too large for this value to be found
  several_sources  ///< "equivalent resistance" of a network with none or several sources
};

/// Is the value right?
enum class ValueVerdict : std::uint8_t {
  none,             ///< no value is stated
  exact,            ///< equal to the true value
  rounded,          ///< the true value, rounded to the figures given
  within_rounding,  ///< not quite, but rounding in earlier lines explains it
  rounded_early,    ///< right on the person's own rounded numbers, which change a figure
  on_own,           ///< right on the person's own earlier numbers, one of which is wrong
  cut_off,          ///< the true value, cut where it had to be rounded
  wrong,
  cannot_tell  ///< there is no true value to compare with, and nothing of the person's own
};

enum class UnitVerdict : std::uint8_t { none, right, missing, wrong };
enum class FiguresVerdict : std::uint8_t { fine, too_few, too_many };

/// What became of a mark: not at stake in this line, earned, or lost here.
enum class Mark : std::uint8_t { none, earned, lost };

/// What there is to say about one claim.
struct Judgement {
  std::size_t claim = 0;       ///< index into Work::claims
  std::size_t case_index = 0;  ///< into Trace::cases

  StepVerdict step = StepVerdict::none;
  std::vector<Fact> why;  ///< why the step may be made, or what stands against it
  RuleName rule{};        ///< what the line does, where it makes a step
  std::vector<PartId> operands;
  PartId makes;                ///< none where the step was not carried out
  std::vector<PartId> leaves;  ///< parts of the file that a combination is made of, in their order

  Hindrance hindrance = Hindrance::none;
  std::string name;
  std::string suggestion;
  PartId part;
  std::optional<std::size_t> earlier;  ///< a claim

  ValueVerdict value = ValueVerdict::none;
  std::optional<Claimed> claimed;      ///< of a claim about a value: what of …
  PartId of;                           ///< … this part
  PointId at, to;                      ///< … or this point, or between these two
  std::optional<Quantity> stated;      ///< what is written
  std::optional<Quantity> right;       ///< the true value; a view must not give it away unasked
  std::optional<Quantity> own;         ///< on the person's own numbers, where that is another
  std::vector<std::size_t> caused_by;  ///< claims whose rounding, or wrong value, it comes from
  UnitVerdict unit = UnitVerdict::none;
  std::optional<Unit> expected_unit;
  FiguresVerdict figures = FiguresVerdict::fine;

  std::vector<Diagnosis> errors;  ///< all known errors that give just this
  Mark method = Mark::none;
  Mark accuracy = Mark::none;

  /// Nothing is wrong with the line itself: what follows from earlier wrong lines is right.
  [[nodiscard]] bool holds() const;
};

/// What a line comes to, in one word.
enum class LineVerdict : std::uint8_t {
  nothing,  ///< it claims nothing: it starts a case
  right,
  follows,        ///< right on the person's own earlier lines, one of which is not
  rounded_early,  ///< right but for a figure that rounding in an earlier line has changed
  not_right,
  cannot_tell
};

/// `not_right` where anything in the line is not; else `cannot_tell` where something cannot be
/// judged.
[[nodiscard]] LineVerdict verdict_of(const Judgement& line);

/// Marks by the published convention: M for method, A for accuracy, follow-through; a missing or
/// wrong unit, and wrong figures, cost one accuracy mark each, once in a work.
struct Marks {
  int method = 0, accuracy = 0;
  int most_method = 0, most_accuracy = 0;
  bool unit_lost = false, figures_lost = false;

  [[nodiscard]] int earned() const {
    const int sum = method + accuracy - (unit_lost ? 1 : 0) - (figures_lost ? 1 : 0);
    return sum > 0 ? sum : 0;
  }
  [[nodiscard]] int most() const { return most_method + most_accuracy; }
};

/// Where a person stands in one case.
struct CaseStanding {
  /// The person's own network; the first, where a wrong step leaves open which it is.
  Network network;
  std::vector<std::string> part_names;   ///< by PartId
  std::vector<std::string> point_names;  ///< by PointId
  /// By PartId, for the parts alive in the network: the person's own value of a resistor, where
  /// they have one.
  std::vector<std::optional<Number>> own_resistance;
  bool is_begun = false;  ///< there is a claim about this case
  bool is_own = false;    ///< it differs from the true network: some step was wrong
  std::vector<std::size_t>
      answered;  ///< indices into CaseTrace::answers that a claim gives rightly
  std::vector<std::size_t> attempted;  ///< … that claims give, but none rightly
  std::vector<std::size_t> open;       ///< … that no claim gives
};

struct WorkJudgement {
  std::vector<Judgement> lines;     ///< by claim
  std::vector<CaseStanding> cases;  ///< by case of the trace
  Marks marks;

  /// Every line holds and each value is right in itself.
  [[nodiscard]] bool all_right() const;
};

/// Judges every claim. A claim that uses what only a later one makes waits for it. Cost: near
/// linear in the claims for right work; a wrong number is compared with all known errors, which
/// costs some solutions of the network.
[[nodiscard]] WorkJudgement judge_work(const Exercise& exercise, const Work& work,
                                       const JudgeOptions& options = {});

/// How much a hint gives away: which way to look, where to look, or what to write.
enum class HintLevel : std::uint8_t { nudge, point, tell };

enum class HintKind : std::uint8_t {
  mend,      ///< the line `claim` holds a mistake
  combine,   ///< parts in series or in parallel: rule, parts, first, second, why
  rewrite,   ///< another rule: rule, parts, first, second, points, why
  no_pair,   ///< nothing is left to combine: say so, and go on another way
  whole,     ///< the equivalent resistance can be read off: part, value
  quantity,  ///< a value of the way back: law, claimed, of, at, to, from
  done       ///< nothing is asked any more
};

/// The next useful thing to do, or to mend, from where the person stands.
struct Hint {
  HintKind kind = HintKind::done;
  std::size_t claim = 0;
  std::size_t case_index = 0;
  RuleName rule{};
  Place place;
  std::vector<Fact> why;
  Law law{};
  Claimed claimed{};
  PartId of;
  PointId at, to;
  std::vector<PartId> from;       ///< parts whose values lead there
  std::optional<Quantity> value;  ///< what comes out, on the person's own numbers
};

/// A mistake comes before any next step; then what leads on to the first case with something open.
[[nodiscard]] Hint next_hint(const Exercise& exercise, const Work& work,
                             const WorkJudgement& judged);

}  // namespace ohmfold
