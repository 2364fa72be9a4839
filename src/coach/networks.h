// The networks of one case that a person's steps change: those that are true, and their own.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "ohmfold/coach.h"
#include "ohmfold/rule.h"

namespace ohmfold {

/// A way to see whether a step may be made in a network, and to make it.
struct StepTest {
  Verdict (*judge)(const Network&, const Place&);
  Edit (*edit)(const Network&, const Place&);
};

/// Parts in series (in the wider sense of one_current.h), parts in parallel.
[[nodiscard]] StepTest test_for(Joining how);
[[nodiscard]] StepTest test_for(RuleName rule);

/// The resistors that are left in a network, in order.
[[nodiscard]] std::vector<PartId> living_resistors(const Network& network);

/// What came of a step.
struct StepResult {
  StepVerdict verdict = StepVerdict::none;
  std::vector<Fact> why;
  PartId makes;                       ///< the first that came; ids count up
  bool in_main = false;               ///< made in the true network of the case as it works
  std::optional<Number> value;        ///< of `makes`, in the true network
  std::optional<Network> refused_in;  ///< as it was before; none where it is large
};

/// All networks of a case. There can be several true ones, since a case can ask for several
/// resistances, each seen from other points, and since points at one potential may be joined or
/// not. Ids of parts and points are the same in all of them.
class Networks {
 public:
  /// The networks that a solved case starts from, cleaned up of what carries nothing.
  explicit Networks(const CaseTrace& solved);

  /// Makes the step where its test allows it: in the true networks, else in the person's own. Where
  /// none allows it, `forced` makes the person's own ones as if it were right (each possible one).
  [[nodiscard]] StepResult combine(Joining how, const std::vector<PartId>& parts);
  /// The same for delta and star; a refused one is not carried out. `order`: the edit's adds are
  /// put in this order.
  [[nodiscard]] StepResult rewrite(RuleName rule, const std::vector<PartId>& parts,
                                   const std::vector<std::size_t>& order);
  /// An id that no part of any network has.
  [[nodiscard]] PartId reserve();
  /// Joins two points, or leaves out a part, which the potentials allow. Either allows the other,
  /// too: later steps tell which of them the person does.
  void join(PointId first, PointId second) { join_or_cut(first, second, true); }
  void leave_out(PartId part);

  /// Why a part of the file is in no network any more from the start; empty where it is.
  [[nodiscard]] const std::vector<Fact>& left_out(PartId part) const;
  /// Is there a network, true or the person's own, that has all of them alive?
  [[nodiscard]] bool has_together(const std::vector<PartId>& parts) const;
  /// The person's own network; the first of several.
  [[nodiscard]] const Network& own() const;
  [[nodiscard]] const Network& original() const { return start_; }
  /// The true network of the main question, as the right steps have left it.
  [[nodiscard]] const Network& truth() const { return families_.front().front(); }
  [[nodiscard]] bool has_diverged() const { return diverged_; }
  /// A wrong step has left no network that could be the person's own.
  [[nodiscard]] bool is_lost() const { return diverged_ && own_.empty(); }
  /// The exact resistance of a resistor in a true network that has it.
  [[nodiscard]] std::optional<Number> resistance(PartId part) const;
  /// All true networks that have all these parts alive.
  [[nodiscard]] std::vector<const Network*> with(const std::vector<PartId>& parts) const;
  [[nodiscard]] std::size_t part_count() const { return truth().part_count(); }

 private:
  // Networks of one question: which of them the person has is open until a step tells.
  using Family = std::vector<Network>;

  [[nodiscard]] StepResult make(const StepTest& test, const Place& place,
                                const std::vector<std::size_t>& order);
  bool make_in_truth(const StepTest& test, const Place& place,
                     const std::vector<std::size_t>& order, StepResult& result);
  bool make_in_own(const StepTest& test, const Place& place, const std::vector<std::size_t>& order,
                   StepResult& result);
  [[nodiscard]] std::optional<Network> refusing(const std::vector<PartId>& parts) const;
  void join_or_cut(PointId first, PointId second, bool joined_first);
  void align();

  Network start_;
  std::vector<Family> families_;  // true ones; the main question's first
  std::vector<Network> own_;      // where it has diverged
  bool diverged_ = false;
  std::map<PartId, Number> made_;  // by the first part that a right step made: its resistance
  std::vector<std::vector<Fact>> left_out_;  // by PartId of the file
};

}  // namespace ohmfold
