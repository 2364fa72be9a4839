// Points at the same potential: by the ratio of a bridge, by a symmetry, or as a solution shows.
#include "rules/equal_potentials.h"

#include <algorithm>
#include <array>

#include "rules/rules.h"
#include "rules/seen_graph.h"
#include "rules/seen_potentials.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostPoints = 150;
constexpr std::size_t kMostEdges = 2'500;
constexpr std::size_t kMostSolved = 60;  // points

bool is_within_reach(const SeenGraph& graph) {
  return graph.points.size() <= kMostPoints && graph.edge_count <= kMostEdges;
}

// The two other resistors at one end of a part, each with the point that it leads to; in file
// order.
using Arms = std::array<std::pair<PartId, PointId>, 2>;

std::optional<Arms> arms_at(const Network& network, PartId part, PointId end) {
  if (network.degree(end) != 3) return std::nullopt;
  std::vector<std::pair<PartId, PointId>> arms;
  network.for_each_at(end, [&](PartId other) {
    if (other == part || network.kind(other) != ElementKind::resistor) return;
    arms.emplace_back(other, network.across(other, end));
  });
  if (arms.size() != 2) return std::nullopt;
  std::sort(arms.begin(), arms.end());
  return Arms{arms[0], arms[1]};
}

// R1 / R2 = R3 / R4 for the four resistors round a part that bridges them.
std::optional<Balanced> balance_at(const Network& network, PartId part) {
  if (network.kind(part) != ElementKind::resistor) return std::nullopt;
  const auto first = arms_at(network, part, network.from(part));
  auto second = arms_at(network, part, network.to(part));
  if (!first || !second) return std::nullopt;
  if ((*second)[0].second != (*first)[0].second) std::swap((*second)[0], (*second)[1]);
  const bool is_bridge = (*second)[0].second == (*first)[0].second &&
                         (*second)[1].second == (*first)[1].second &&
                         (*first)[0].second != (*first)[1].second;
  if (!is_bridge) return std::nullopt;
  const auto value = [&](const std::pair<PartId, PointId>& arm) {
    return network.resistance(arm.first).lowest_terms();
  };
  if (value((*first)[0]) * value((*second)[1]) != value((*first)[1]) * value((*second)[0])) {
    return std::nullopt;
  }
  return Balanced{part, (*first)[0].first, (*first)[1].first, (*second)[0].first,
                  (*second)[1].first};
}

void add_moves(const SeenGraph& graph, const Symmetry& symmetry, std::vector<Fact>& facts) {
  for (std::uint32_t i = 0; i < symmetry.size(); ++i) {
    if (symmetry[i] != i) facts.emplace_back(Moves{graph.points[i], graph.points[symmetry[i]]});
  }
}

// Decides for pairs of points whether they are at the same potential, and why or why not.
class Comparison {
 public:
  Comparison(const Network& network, const SeenGraph& graph)
      : network_(network),
        graph_(graph),
        group_(graph.points.size()),
        is_middle_(graph.points.size(), false) {
    for (std::uint32_t i = 0; i < group_.size(); ++i) group_[i] = i;
  }

  // Adds the facts; false where the potentials differ, with that as the only fact. `bridge`: a part
  // between the points, or none.
  bool compare(PointId first, PointId second, PartId bridge) {
    const auto a = graph_.number_of(first);
    const auto b = graph_.number_of(second);
    if (!a || !b) return refuse(NotFed{a ? second : first});
    if (group_[*a] == group_[*b]) return true;
    if (!by_balance(bridge) && !by_symmetry(*a, *b) && !by_solution(*a, *b)) return false;
    const std::uint32_t from = group_[*b];
    for (std::uint32_t& group : group_) {
      if (group == from) group = group_[*a];
    }
    return true;
  }

  // What was found, each symmetry once with all that it says.
  [[nodiscard]] std::vector<Fact> facts() && {
    for (const Shown& one : shown_) {
      facts_.insert(facts_.end(), one.facts.begin(), one.facts.end());
      add_moves(graph_, one.by, facts_);
    }
    return std::move(facts_);
  }

 private:
  struct Shown {
    Symmetry by;
    std::vector<Fact> facts;
  };

  bool refuse(const Fact& fact) {
    shown_.clear();
    facts_ = {fact};
    return false;
  }

  void show(const Symmetry& by, const Fact& fact) {
    auto at =
        std::find_if(shown_.begin(), shown_.end(), [&](const Shown& one) { return one.by == by; });
    if (at == shown_.end()) at = shown_.insert(at, {by, {}});
    at->facts.push_back(fact);
  }

  bool by_balance(PartId bridge) {
    const auto balanced = bridge.exists() ? balance_at(network_, bridge) : std::nullopt;
    if (balanced) facts_.emplace_back(*balanced);
    return balanced.has_value();
  }

  bool by_symmetry(std::uint32_t a, std::uint32_t b) {
    if (!is_within_reach(graph_)) return false;
    if (!search_) search_.emplace(graph_);
    if (const auto kept = search_->keeping(a, b)) {
      show(*kept, Symmetric{graph_.points[a], graph_.points[b]});
      return true;
    }
    const auto first = search_->turning(a);
    const auto second = first ? search_->turning(b) : std::nullopt;
    if (!second) return false;
    for (const auto& [point, by] : {std::pair(a, *first), std::pair(b, *second)}) {
      if (is_middle_[point]) continue;
      is_middle_[point] = true;
      show(by, InTheMiddle{graph_.points[point]});
    }
    return true;
  }

  bool by_solution(std::uint32_t a, std::uint32_t b) {
    if (!potential_) potential_ = seen_potentials(graph_, kMostSolved);
    if (!potential_) return refuse(TooLargeToTell{});
    for (const std::uint32_t point : {a, b}) {
      if (!(*potential_)[point]) return refuse(NotFed{graph_.points[point]});
    }
    const Number& first = *(*potential_)[a];
    const Number& second = *(*potential_)[b];
    if (first != second) {
      const bool falls = first > second;
      return refuse(PotentialsDiffer{graph_.points[falls ? a : b], graph_.points[falls ? b : a]});
    }
    facts_.emplace_back(SamePotential{graph_.points[a], graph_.points[b]});
    return true;
  }

  const Network& network_;
  const SeenGraph& graph_;
  std::vector<std::uint32_t> group_;  // by point: equal where the potentials are known to be
  std::vector<bool> is_middle_;       // by point: told to be half-way
  std::optional<SymmetrySearch> search_;
  std::optional<std::vector<std::optional<Number>>> potential_;
  std::vector<Fact> facts_;
  std::vector<Shown> shown_;
};

Verdict judge(const Network& network, const Place& place) {
  for (const PartId part : place.parts) {
    if (network.kind(part) != ElementKind::resistor) return {false, {NotAResistor{part}}};
  }
  if (place.parts.empty() && place.points.size() < 2) return {false, {TooFewParts{}}};
  const std::optional<SeenGraph> graph = seen_graph(network);
  if (!graph) return {false, {NotOneSource{}}};
  Comparison comparison(network, *graph);
  bool allowed = true;
  for (std::size_t i = 1; allowed && i < place.points.size(); ++i) {
    allowed = comparison.compare(place.points[0], place.points[i], {});
  }
  for (std::size_t i = 0; allowed && i < place.parts.size(); ++i) {
    const PartId part = place.parts[i];
    allowed = comparison.compare(network.from(part), network.to(part), part);
  }
  return {allowed, std::move(comparison).facts()};
}

std::vector<Place> find(const Network& network, const Frontier& /*frontier*/) {
  EqualPotentials found = equal_potentials_in(network);
  std::vector<Place> places = std::move(found.cuts);
  places.insert(places.end(), found.merges.begin(), found.merges.end());
  return places;
}

Edit apply(const Network& /*network*/, Place place) {
  Edit edit;
  edit.merges = std::move(place.points);
  std::sort(edit.merges.begin(), edit.merges.end());
  edit.removes = std::move(place.parts);
  edit.scope = Scope::as_seen_by_the_source;
  edit.back = {Law::equal_potentials, Law::ohm_current};
  return edit;
}

// Classes of points that symmetries put at the same potential.
class Classes {
 public:
  explicit Classes(const SeenGraph& graph) : graph_(graph), search_(graph) {
    std::vector<bool> is_placed(graph.points.size(), false);
    is_placed[graph.terminal] = is_placed[graph.other] = true;
    for (std::uint32_t i = 0; i < graph.points.size(); ++i) {
      if (is_placed[i]) continue;
      std::vector<std::uint32_t> own{i};
      for (std::uint32_t j = i + 1; j < graph.points.size(); ++j) {
        if (is_placed[j] || !search_.keeping(i, j)) continue;
        is_placed[j] = true;
        own.push_back(j);
      }
      classes_.push_back(std::move(own));
    }
    find_middle();
  }

  [[nodiscard]] std::vector<Place> merges() const {
    std::vector<Place> places;
    const auto add = [&](const std::vector<std::uint32_t>& numbers) {
      if (numbers.size() < 2) return;
      Place place;
      for (const std::uint32_t number : numbers) place.points.push_back(graph_.points[number]);
      places.push_back(std::move(place));
    };
    for (const auto& one : classes_) add(one);
    add(middle_);
    return places;
  }

  // By point: equal for points at the same potential.
  [[nodiscard]] std::vector<std::uint32_t> numbers() const {
    std::vector<std::uint32_t> number(graph_.points.size());
    for (std::uint32_t i = 0; i < number.size(); ++i) number[i] = i;
    for (const auto& one : classes_) {
      const bool middle = std::binary_search(middle_.begin(), middle_.end(), one.front());
      for (const std::uint32_t point : one) number[point] = middle ? middle_.front() : one.front();
    }
    return number;
  }

 private:
  // The first points of the classes that lie half-way.
  void find_middle() {
    for (const auto& one : classes_) {
      if (search_.turning(one.front())) middle_.push_back(one.front());
    }
    if (middle_.size() < 2) middle_.clear();
  }

  const SeenGraph& graph_;
  SymmetrySearch search_;
  std::vector<std::vector<std::uint32_t>> classes_;
  std::vector<std::uint32_t> middle_;
};

}  // namespace

EqualPotentials equal_potentials_in(const Network& network) {
  EqualPotentials found;
  const std::optional<SeenGraph> graph = seen_graph(network);
  if (!graph || !is_within_reach(*graph)) return found;
  const Classes classes(*graph);
  found.merges = classes.merges();
  const std::vector<std::uint32_t> number = classes.numbers();
  std::vector<Place> cuts(graph->points.size());  // by number of the class
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part) || network.kind(part) != ElementKind::resistor) continue;
    const std::uint32_t from = number[*graph->number_of(network.from(part))];
    const std::uint32_t to = number[*graph->number_of(network.to(part))];
    if (from == to && network.from(part) != network.to(part)) {
      cuts[from].parts.push_back(part);
    } else if (from != to && balance_at(network, part)) {
      found.cuts.push_back({{part}, network.from(part), network.to(part)});
    }
  }
  for (Place& place : cuts) {
    if (!place.parts.empty()) found.cuts.push_back(std::move(place));
  }
  return found;
}

Rule equal_potentials_rule() {
  return {RuleName::equal_potentials, Tier::transform, find, judge, apply};
}

}  // namespace ohmfold
