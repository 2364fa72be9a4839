// Stages of rewriting, and why they came to an end.
#include "solve/reduce.h"

#include <algorithm>
#include <queue>

#include "circuit/blocks.h"
#include "ohmfold/error.h"
#include "ohmfold/rule.h"

namespace ohmfold {
namespace {

// The place cut into twos: (a b) (c d) …; what is over waits for the next stage.
std::vector<Place> in_pairs(const Network& network, const Place& place, RuleName name) {
  std::vector<Place> pairs;
  PointId at = place.first;
  for (std::size_t i = 0; i + 1 < place.parts.size(); i += 2) {
    Place pair{{place.parts[i], place.parts[i + 1]}, place.first, place.second};
    if (name == RuleName::series) {
      pair.first = at;
      at = network.across(pair.parts[1], network.across(pair.parts[0], at));
      pair.second = at;
    }
    pairs.push_back(std::move(pair));
  }
  return pairs;
}

struct Candidate {
  PartId earliest;  // of the place's parts, in file order
  const Rule* rule;
  Place place;
};

Candidate candidate(const Rule& rule, Place place) {
  const PartId earliest = *std::min_element(place.parts.begin(), place.parts.end());
  return {earliest, &rule, std::move(place)};
}

// Sorts by number first, so that each candidate is moved only once.
std::vector<Candidate> in_file_order(std::vector<Candidate> candidates) {
  std::vector<std::pair<PartId, std::uint32_t>> order;
  order.reserve(candidates.size());
  for (std::uint32_t i = 0; i < candidates.size(); ++i) {
    order.emplace_back(candidates[i].earliest, i);
  }
  std::sort(order.begin(), order.end());
  std::vector<Candidate> sorted;
  sorted.reserve(candidates.size());
  for (const auto& [earliest, at] : order) sorted.push_back(std::move(candidates[at]));
  return sorted;
}

// What the values of taken parts may fill: 256 MiB.
constexpr std::size_t kMostKeptBits = std::size_t{1} << 31;
constexpr std::size_t kLastKept = 64;

class Reducer {
 public:
  Reducer(Network start, bool pairs) : pairs_(pairs) {
    result_.end.reserve(2 * start.part_count());
    result_.end = start;
    result_.steps.reserve(start.part_count());
    result_.start = std::move(start);
  }

  Reduction run() {
    clean_up();
    combine();
    conclude();
    return std::move(result_);
  }

 private:
  Network& network() { return result_.end; }

  void clean_up() {
    ++stage_;
    const Frontier frontier = whole(network());  // all that is there; nothing is made meanwhile
    for (const Rule& rule : all_rules()) {
      if (rule.tier != Tier::clean_up) continue;
      for (Place& place : rule.find(network(), frontier)) apply(rule, std::move(place));
    }
    if (result_.steps.empty()) --stage_;
  }

  void combine() {
    Frontier frontier = whole(network());
    while (true) {
      while (make(visible(frontier, Tier::sources))) {
        // What was to be looked at is so still, beside what came.
        frontier.parts.insert(frontier.parts.end(), next_.parts.begin(), next_.parts.end());
        frontier.points.insert(frontier.points.end(), next_.points.begin(), next_.points.end());
      }
      if (!make(visible(frontier, Tier::combine))) return;
      frontier = std::move(next_);
    }
  }

  // One stage. False where there is nothing to make.
  bool make(std::vector<Candidate> candidates) {
    if (candidates.empty()) return false;
    ++stage_;
    next_ = Frontier{};
    for (std::size_t i = 0; i < candidates.size(); ++i) {
      look_ahead(candidates, i);
      apply(*candidates[i].rule, std::move(candidates[i].place));
    }
    return true;
  }

  void look_ahead(const std::vector<Candidate>& candidates, std::size_t at) {
    constexpr std::size_t kFar = 12, kNear = 6;
    if (at + kFar < candidates.size()) {
      for (const PartId part : candidates[at + kFar].place.parts) network().expect(part);
    }
    if (at + kNear < candidates.size()) {
      for (const PartId part : candidates[at + kNear].place.parts) network().expect_ends(part);
    }
  }

  // All places of today's drawing, in file order. No two of them share a part: what hangs loose is
  // gone, and a part with a twin has a third part, or a source, at each of its ends.
  std::vector<Candidate> visible(const Frontier& frontier, Tier tier) {
    std::vector<Candidate> candidates;
    for (const Rule& rule : all_rules()) {
      if (rule.tier != tier) continue;
      for (Place& place : rule.find(network(), frontier)) {
        if (!pairs_ || tier == Tier::sources) {
          candidates.push_back(candidate(rule, std::move(place)));
          continue;
        }
        for (Place& pair : in_pairs(network(), place, rule.name)) {
          candidates.push_back(candidate(rule, std::move(pair)));
        }
      }
    }
    return in_file_order(std::move(candidates));
  }

  void apply(const Rule& rule, Place place) {
    const Verdict verdict = rule.judge(network(), place);
    ensure(verdict.allowed, "a rule found a place that it does not allow");
    Place recorded{{}, place.first, place.second};
    const Edit edit = rule.apply(network(), std::move(place));
    const PartId made = network().commit(edit);
    let_go(edit.removes);
    if (made.exists()) recorded = {{}, network().from(made), network().to(made)};
    result_.steps.append(rule.name, stage_, recorded, edit, made, verdict.facts);
    for (const PointId point : edit.merges) {
      next_.points.push_back(network().representative(point));
    }
    if (!made.exists()) return;
    next_.parts.push_back(made);
    next_.points.push_back(network().from(made));
    next_.points.push_back(network().to(made));
  }

  // Beyond the budget, values are let go a little after the step that took their part: those of the
  // first and of the last steps stay, for whoever shows them.
  void let_go(const std::vector<PartId>& taken) {
    for (const PartId part : taken) {
      if (part.index < result_.start.part_count()) continue;
      kept_bits_ += network().resistance(part).bits();
      if (kept_bits_ <= kMostKeptBits) continue;
      fading_.push(part);
      if (fading_.size() <= kLastKept) continue;
      network().forget_resistance(fading_.front());
      fading_.pop();
    }
  }

  void conclude() {
    std::vector<PartId> sources;
    std::vector<PartId> others;
    const Network& end = result_.end;
    for (std::uint32_t i = 0; i < end.part_count(); ++i) {
      const PartId part{i};
      if (!end.is_alive(part)) continue;
      result_.left.push_back(part);
      (is_source(end.kind(part)) ? sources : others).push_back(part);
    }
    if (sources.empty()) {
      result_.stop = Stop::no_source;
      return;
    }
    if (sources.size() == 1) result_.source = sources.front();
    if (others.empty() && none_fed(sources)) {
      result_.stop = Stop::open;
    } else if (sources.size() > 1) {
      result_.stop = Stop::several_sources;
    } else if (end.from(result_.source) == end.to(result_.source)) {
      result_.stop = Stop::short_circuit;
    } else if (others.size() == 1) {
      result_.stop = Stop::reduced;
      result_.root = others.front();
    } else {
      result_.stop = Stop::bridge;
    }
  }

  [[nodiscard]] bool none_fed(const std::vector<PartId>& sources) const {
    const std::vector<bool> fed = fed_by_source(result_.end, sources);
    return std::find(fed.begin(), fed.end(), true) == fed.end();
  }

  bool pairs_;
  Reduction result_;
  Frontier next_;
  std::uint32_t stage_ = 0;
  std::size_t kept_bits_ = 0;
  std::queue<PartId> fading_;
};

}  // namespace

Reduction reduce(Network start, bool pairs) {
  return Reducer(std::move(start), pairs).run();
}

}  // namespace ohmfold
