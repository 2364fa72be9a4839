// A rule of rewriting: a value in a table, made of three pure functions and no prose.
#pragma once

#include <vector>

#include "ohmfold/network.h"

namespace ohmfold {

/// Whether a rule holds at a place, and the facts that make it so (or that stand against it).
struct Verdict {
  bool allowed = false;
  std::vector<Fact> facts;
};

/// What changed since a rule last looked: parts that are new, and points where the number of parts
/// changed. A place that the change does not touch was there before, or is still none.
struct Frontier {
  std::vector<PartId> parts;
  std::vector<PointId> points;
};

/// Everything, as a first look.
[[nodiscard]] Frontier whole(const Network& network);

/// The order in which rules are tried: the clean-up is used up before anything is combined, and
/// before each stage of combining the sources are. Those of `transform` are applied only where
/// solve/ways.h chooses to.
enum class Tier : std::uint8_t { clean_up, combine, sources, transform };

struct Rule {
  RuleName name;
  Tier tier;
  /// Every maximal place that touches the frontier and that `judge` allows, in file order, no two
  /// of them sharing a part. Of places that would share one, as deltas can, the first.
  std::vector<Place> (*find)(const Network&, const Frontier&);
  /// The one definition of the rule: does it hold at this place, and why or why not? Any set of
  /// parts may be asked about.
  Verdict (*judge)(const Network&, const Place&);
  /// The change. Requires that judge allows the place.
  Edit (*apply)(const Network&, Place);
};

/// All rules, in the order of their tiers.
[[nodiscard]] const std::vector<Rule>& all_rules();
[[nodiscard]] const Rule& rule(RuleName name);

}  // namespace ohmfold
