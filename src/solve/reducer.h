// The loop that applies rules to one network, stage after stage.
#pragma once

#include <queue>

#include "ohmfold/rule.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// A reduction in the making. Copying it is how a way is tried out.
class Reducer {
 public:
  /// One rewriting beyond series and parallel.
  struct Move {
    RuleName rule{};
    Place place;
  };

  Reducer(Network start, bool pairs);

  /// Cleans up, then combines what is in series and parallel until none is left.
  void run();
  /// Makes these moves, all judged in today's network, as one stage, then runs. Those that their
  /// rules do not allow are left out. Requires moves that do not hinder each other.
  void transform(const std::vector<Move>& moves);
  /// Says why it came to an end; there are no more steps. Nothing else may be called afterwards.
  [[nodiscard]] Reduction finish() &&;

  [[nodiscard]] const Network& network() const { return result_.end; }
  [[nodiscard]] const StepLog& steps() const { return result_.steps; }
  /// Why it would end here.
  [[nodiscard]] Stop stop() const;

 private:
  struct Candidate {
    PartId earliest;  // of the place's parts, in file order
    const Rule* rule;
    Place place;
  };
  // What is alive, sorted into sources and others.
  struct Left {
    std::vector<PartId> sources, others;
  };

  [[nodiscard]] static std::vector<Candidate> in_file_order(std::vector<Candidate> candidates);
  void clean_up();
  void combine();
  [[nodiscard]] bool make_stage(std::vector<Candidate> candidates);
  void look_ahead(const std::vector<Candidate>& candidates, std::size_t at) const;
  [[nodiscard]] std::vector<Candidate> visible(const Frontier& frontier, Tier tier) const;
  void apply(const Rule& rule, Place place);
  void make(const Rule& rule, Place place, const std::vector<Fact>& why);
  void let_go(const std::vector<PartId>& taken);
  [[nodiscard]] Left left() const;
  [[nodiscard]] Stop stop(const Left& left) const;

  bool pairs_;
  Reduction result_;
  Frontier next_;
  std::uint32_t stage_ = 0;
  std::size_t kept_bits_ = 0;
  std::queue<PartId> fading_;
};

}  // namespace ohmfold
