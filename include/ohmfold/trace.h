// What the engine did, found and checked: the single product that every view, check and hint reads.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "ohmfold/bridge.h"
#include "ohmfold/fact.h"
#include "ohmfold/method.h"
#include "ohmfold/network.h"
#include "ohmfold/node_elimination.h"
#include "ohmfold/problem.h"
#include "ohmfold/surd.h"

namespace ohmfold {

/// One recorded rewriting, as a view into the log that holds it.
struct Step {
  std::size_t number = 0;   ///< from 1
  std::uint32_t stage = 0;  ///< from 1; all steps of a stage are seen in the same drawing
  RuleName rule{};
  std::span<const PartId> takes;  ///< parts that go
  PartId makes;                   ///< the part that comes (of several: the first), or none
  /// Where something else comes than one resistor between first and second: all that comes, with
  /// ids that count up from `makes`. Otherwise empty.
  std::span<const NewPart> adds;
  std::uint32_t new_points = 0;     ///< points that come, with the next free ids
  std::span<const PointId> merges;  ///< points that become one, as `merging` says
  Merging merging{};
  PointId first, second;      ///< between which points (see Place)
  std::span<const Fact> why;  ///< what judge recorded
  Formula formula{};
  Scope scope{};
  std::array<Law, 2> back{};
};

/// The steps in flat arrays: no allocation for each step, so that a million of them fit.
class StepLog {
 public:
  [[nodiscard]] std::size_t size() const { return records_.size(); }
  [[nodiscard]] bool empty() const { return records_.empty(); }
  /// Requires index < size(). The view is good as long as the log is not changed.
  [[nodiscard]] Step operator[](std::size_t index) const;
  /// Makes room for the steps of a network of so many parts.
  void reserve(std::size_t parts);
  void append(RuleName rule, std::uint32_t stage, const Place& place, const Edit& edit,
              PartId makes, const std::vector<Fact>& why);

 private:
  struct Record {
    std::uint32_t takes_begin, merges_begin, why_begin, adds_begin, stage;
    std::uint32_t new_points;
    PointId first, second;
    PartId makes;
    RuleName rule;
    Merging merging;
    Formula formula;
    Scope scope;
    std::array<Law, 2> back;
  };
  std::vector<Record> records_;
  std::vector<PartId> takes_;
  std::vector<PointId> merges_;
  std::vector<Fact> why_;
  std::vector<NewPart> adds_;  // of steps that make something else than one resistor
};

/// Why reducing came to an end.
enum class Stop : std::uint8_t {
  reduced,          ///< one part is left between the terminals
  bridge,           ///< more than one part is left and no rule fits
  several_sources,  ///< more than one source is left
  short_circuit,    ///< the terminals have become one point
  open,             ///< nothing is left between the terminals
  no_source,        ///< there is nothing to look from
};

/// A way that leads on where series and parallel stop, and what it costs.
struct Way {
  Method method{};
  std::size_t lines = 0;      ///< values and equations to write down, there and back
  std::size_t bits = 0;       ///< of all resistances that it makes: how simple its fractions are
  std::size_t steps = 0;      ///< of rewriting, series and parallel among them
  std::size_t unknowns = 0;   ///< potentials that equations still have to give
  Method then{};              ///< equal_potentials only: what leads on where it stops, or itself
  RuleName first{};           ///< where it rewrites: its first step …
  std::vector<PointId> at;    ///< … and the points that it is about …
  std::vector<PartId> parts;  ///< … or the parts that it leaves out
};

/// Why a way that was asked for could not be taken.
enum class Refusal : std::uint8_t {
  none,
  no_equal_potentials,  ///< no balanced bridge, and no symmetry that keeps the terminals
  too_large,            ///< so many parts are left that nobody would rewrite them one by one
  one_source,           ///< superposition of one source has nothing to add up
};

/// How it goes on where series and parallel stop, and why so.
struct Choice {
  bool made = false;             ///< false: series and parallel sufficed, or there was no choice
  Method asked{};                ///< what was wished for
  Method method{};               ///< what is done
  std::size_t after = 0;         ///< steps that series and parallel had made until then
  std::vector<Way> ways;         ///< those that were looked at
  bool looked_at_delta = false;  ///< false: too many parts are left to try delta and star
  Refusal refusal{};             ///< why `asked` was not done
};

/// A network reduced as far as the rules go, with every step on record.
///
/// The values of parts that later steps took are kept in `end` as long as they are not too long
/// altogether. In a ladder of 100,000 resistors they would fill gigabytes: then `end` has let go of
/// most of those in the middle (Network::knows_resistance), and what needs them works them out
/// again from the steps.
struct Reduction {
  Network start;  ///< as the case sets it
  Network end;    ///< after the last step; knows every part that ever was
  StepLog steps;
  Stop stop = Stop::no_source;
  PartId source;             ///< the source or port that it is seen from; none for several
  PartId root;               ///< with Stop::reduced: the one part that is left
  std::vector<PartId> left;  ///< living parts at the end, sources included
  Choice choice;             ///< how it went on where series and parallel stopped
};

/// The network as it stands after the first `steps` steps. Cost: that of those steps.
[[nodiscard]] Network replay(const Reduction& reduction, std::size_t steps);

/// Why a quantity has no value.
enum class Undetermined : std::uint8_t {
  ideal_loop,  ///< ideal wires (or ideal batteries) form a loop: any circulating current would do
  floating,    ///< joined to nothing whose potential is known
  no_path,     ///< no path of resistors joins the two points
  taken_out,   ///< the case took this part out of the circuit
  too_long,    ///< the network is so large that finding this value exactly is beyond the budget
  beyond_method,  ///< series and parallel do not suffice, and nothing else was allowed
  unlimited,      ///< no resistance limits the current
  irrational,     ///< it is exact, but no rational: see Answer::irrational
  any_value,      ///< it depends on an unknown that every value fits
};

/// A quantity, or the reason why there is none.
struct Reading {
  std::optional<Quantity> value;
  Undetermined why = Undetermined::too_long;  ///< where there is no value

  Reading() = default;
  // NOLINTBEGIN(google-explicit-constructor): a reading is a value or a reason
  Reading(Quantity v) : value(std::move(v)) {}
  Reading(Undetermined w) : why(w) {}
  template <int V, int A>
  Reading(const Measure<V, A>& measure) : value(Quantity(measure)) {}
  // NOLINTEND(google-explicit-constructor)
};

/// What a return, or an answer, is about.
enum class Subject : std::uint8_t { current, voltage, power, potential, resistance };

/// One result of the way back: the law, of what, the value, and the parts it was found from.
struct Return {
  std::size_t number = 0;  ///< from 1
  Law law{};
  Subject subject{};
  PartId part;    ///< of this part …
  PointId point;  ///< … or at this point
  Reading value;
  std::vector<PartId> from;  ///< whose values were used
  std::size_t step = 0;      ///< number of the step that it undoes, 0 where it undoes none
};

struct BranchResult {
  PartId part;
  Reading current, voltage, power;
};
struct NodeResult {
  PointId point;
  Reading potential;
};

/// Where a quantity whose sign depends on symbols is zero, and its sign elsewhere.
struct SignCondition {
  /// A polynomial with whole coefficients that has the sign of the quantity, wherever the symbols
  /// are positive.
  Number decides;
  std::string symbol;         ///< the only symbol in it; empty for several
  std::vector<Number> zeros;  ///< of the one symbol: positive and rational, ascending
  /// Below the first zero, between neighbours, above the last. Empty where there are several
  /// symbols, or zeros that are no rationals: then only `decides` says where.
  std::vector<Sign> signs;
};

/// What a circuit is to whatever is joined to two of its points: a battery of the open-circuit
/// voltage, positive at the first point, in series with a resistance.
struct Thevenin {
  Reading voltage, resistance;
  Reading short_circuit_current;  ///< through a wire from the first point to the second
};

struct Answer {
  Question question;
  Reading value;  ///< for a Thevenin equivalent: its voltage
  /// The reduction that shows it, where that is not the main one: index into CaseTrace::further.
  std::optional<std::size_t> shown_by;
  std::optional<Thevenin> thevenin = {};        ///< where it is asked for
  std::optional<SignCondition> condition = {};  ///< where its sign depends on symbols
  std::optional<Surd> irrational = {};          ///< with Undetermined::irrational: the value
};

enum class CheckLaw : std::uint8_t {
  step,
  current,
  voltage,
  ohm,
  power,
  node_voltage,
  resistance,
  elimination,  ///< each equation of the node elimination follows as said, and holds
  short_circuit
};

/// One check that was made. In a large network one entry stands for all places of its law.
struct Check {
  CheckLaw law{};
  bool holds = false;
  std::size_t step = 0;      ///< CheckLaw::step: its number
  PointId at;                ///< CheckLaw::current
  std::vector<PartId> loop;  ///< CheckLaw::voltage
  std::size_t places = 1;    ///< how many steps, points, loops or parts this entry covers
  int primes = 0;            ///< 0: exact; otherwise modulo so many random primes of 61 bits
  std::string detail;        ///< where it fails: item, remainder, and what it was compared with
};

enum class CautionKind : std::uint8_t { part_power, high_voltage, battery_current, short_circuit };

struct Caution {
  CautionKind kind{};
  PartId part;
  Quantity value;
};

enum class RemarkKind : std::uint8_t {
  battery_charged,  ///< current runs into its positive terminal: it takes up power
  battery_idle      ///< it is one of several sources and delivers nothing
};

/// Something worth saying about a result that is no warning.
struct Remark {
  RemarkKind kind{};
  PartId part;
  Quantity value;  ///< the size of its current
};

enum class ContradictionKind : std::uint8_t {
  battery_shorted,     ///< an ideal battery whose terminals an ideal wire joins
  batteries_disagree,  ///< ideal batteries (and wires) form a loop whose voltages do not sum to
                       ///< zero
  current_blocked,     ///< what sources of current bring into a piece of the circuit has no way out
  unknown_not_found    ///< no value of the unknowns was found: CaseTrace::unknown says why
};

/// A circuit that no currents and voltages can satisfy.
struct Contradiction {
  ContradictionKind kind{};
  std::vector<PartId> loop;     ///< the ideal parts that form the loop, the battery first; with
                                ///< current_blocked the sources of current that end on the piece
  std::vector<PointId> points;  ///< the points it runs through, or the piece's
  Voltage remainder;            ///< what the voltages round the loop leave over
  Current surplus;              ///< what flows into the piece and not out of it
  std::optional<SignCondition> agree;  ///< with symbols: where the remainder would be zero
};

/// What kind of network a case is.
enum class Kind : std::uint8_t {
  series_parallel,
  bridge,
  several_sources,
  no_source,
  open_circuit
};

struct UnknownSolution;
struct Share;

/// A current that is zero for some values of the symbols: there the circuit is another one.
struct CurrentCondition {
  PartId part;
  SignCondition condition;
};

struct CaseTrace {
  std::string name;
  Kind kind = Kind::no_source;
  std::optional<Contradiction> contradiction;  ///< where there is one, nothing below has been found
  /// Why the case could not be solved with its symbols, some of which have no value; then nothing
  /// below has been found.
  std::optional<std::string> beyond_budget;
  Reduction main;
  /// Why series and parallel do not suffice, where they do not: never there for one source that
  /// sees a series-parallel network. Several sources are parts like others in it.
  std::optional<Certificate> bridge;
  std::optional<Standstill> standstill;  ///< where more than one part is left by these two rules
  std::vector<Reduction> further;        ///< for other questions about resistances
  std::optional<Reading> equivalent;     ///< between the terminals of main.source
  bool complete = true;                  ///< false: too large to find every value
  std::vector<Return> returns;
  std::vector<BranchResult> branches;  ///< by PartId, the parts of the file
  std::vector<NodeResult> nodes;       ///< by PointId, the points of the file
  std::vector<Answer> answers;
  /// Of the resistors that are left where no rule fits: a bridge may be balanced.
  std::vector<CurrentCondition> conditions;
  std::vector<Check> checks;
  std::vector<Caution> cautions;
  NodeElimination elimination;  ///< where node-voltage analysis found main.left
  std::vector<Remark> remarks;
  /// Where superposition was used: what each source does alone. Currents and voltages above are
  /// their sums.
  std::vector<Share> shares;
  /// How the values of unknown parts were found (unknown.h); cases with the same values share it.
  std::shared_ptr<const UnknownSolution> unknown;
  /// Index into UnknownSolution::roots, where the case has the values of one of them.
  std::optional<std::size_t> root;
  /// Only `main.start` and the answers were found: an unknown is irrational or not determined.
  bool only_answers = false;
};

/// One source (or the batteries of one chain) alone, the others replaced by their internal
/// resistance: ideal batteries by a wire, sources of current by a gap.
struct Share {
  std::vector<PartId> sources;  ///< those that stay, parts of the file
  CaseTrace alone;              ///< solved and checked like any other case, without answers
};

/// The voltage of a part in a share, counted as it is `together` with the other sources: what
/// stands for a battery counts its own the other way round. Requires a part of the file.
[[nodiscard]] Reading voltage_in_share(const Network& together, const Share& share, PartId part);

struct Trace {
  std::shared_ptr<const Problem> problem;
  std::vector<CaseTrace> cases;
  /// The values of the symbols were put in at the start, since with symbols the answers would have
  /// become too long; `problem` holds them.
  bool values_put_in_first = false;

  [[nodiscard]] bool has_contradiction() const;
  /// Is there a case that was beyond the budget for symbols?
  [[nodiscard]] bool is_beyond_budget() const;
};

}  // namespace ohmfold
