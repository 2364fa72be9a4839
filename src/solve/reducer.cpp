// Stages of rewriting, and why they came to an end.
#include "solve/reducer.h"

#include <algorithm>

#include "circuit/blocks.h"
#include "ohmfold/error.h"

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

// What the values of taken parts may fill: 256 MiB.
constexpr std::size_t kMostKeptBits = std::size_t{1} << 31;
constexpr std::size_t kLastKept = 64;

PartId earliest_of(const Place& place) {
  return place.parts.empty() ? PartId{} : *std::min_element(place.parts.begin(), place.parts.end());
}

}  // namespace

// Sorts by number first, so that each candidate is moved only once.
std::vector<Reducer::Candidate> Reducer::in_file_order(std::vector<Candidate> candidates) {
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

Reducer::Reducer(Network start, bool pairs) : pairs_(pairs) {
  result_.end.reserve(2 * start.part_count());
  result_.end = start;
  result_.steps.reserve(start.part_count());
  result_.start = std::move(start);
}

void Reducer::run() {
  clean_up();
  combine();
}

void Reducer::transform(const std::vector<Move>& moves) {
  ++stage_;
  std::vector<Verdict> verdicts;
  verdicts.reserve(moves.size());
  for (const Move& move : moves) verdicts.push_back(rule(move.rule).judge(network(), move.place));
  for (std::size_t i = 0; i < moves.size(); ++i) {
    if (verdicts[i].allowed) make(rule(moves[i].rule), moves[i].place, verdicts[i].facts);
  }
  run();
}

void Reducer::clean_up() {
  ++stage_;
  const std::size_t before = result_.steps.size();
  const Frontier frontier = whole(network());  // all that is there; nothing is made meanwhile
  for (const Rule& rule : all_rules()) {
    if (rule.tier != Tier::clean_up) continue;
    for (Place& place : rule.find(network(), frontier)) apply(rule, std::move(place));
  }
  if (result_.steps.size() == before) --stage_;
}

void Reducer::combine() {
  Frontier frontier = whole(network());
  while (true) {
    while (make_stage(visible(frontier, Tier::sources))) {
      // What was to be looked at is so still, beside what came.
      frontier.parts.insert(frontier.parts.end(), next_.parts.begin(), next_.parts.end());
      frontier.points.insert(frontier.points.end(), next_.points.begin(), next_.points.end());
    }
    if (!make_stage(visible(frontier, Tier::combine))) return;
    frontier = std::move(next_);
  }
}

// One stage. False where there is nothing to make.
bool Reducer::make_stage(std::vector<Candidate> candidates) {
  if (candidates.empty()) return false;
  ++stage_;
  next_ = Frontier{};
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    look_ahead(candidates, i);
    apply(*candidates[i].rule, std::move(candidates[i].place));
  }
  return true;
}

void Reducer::look_ahead(const std::vector<Candidate>& candidates, std::size_t at) const {
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
std::vector<Reducer::Candidate> Reducer::visible(const Frontier& frontier, Tier tier) const {
  std::vector<Candidate> candidates;
  const auto add = [&](const Rule& rule, Place place) {
    const PartId earliest = earliest_of(place);
    candidates.push_back({earliest, &rule, std::move(place)});
  };
  for (const Rule& rule : all_rules()) {
    if (rule.tier != tier) continue;
    for (Place& place : rule.find(network(), frontier)) {
      if (!pairs_ || tier == Tier::sources) {
        add(rule, std::move(place));
        continue;
      }
      for (Place& pair : in_pairs(network(), place, rule.name)) add(rule, std::move(pair));
    }
  }
  return in_file_order(std::move(candidates));
}

void Reducer::apply(const Rule& rule, Place place) {
  const Verdict verdict = rule.judge(network(), place);
  ensure(verdict.allowed, "a rule found a place that it does not allow");
  make(rule, std::move(place), verdict.facts);
}

void Reducer::make(const Rule& rule, Place place, const std::vector<Fact>& why) {
  Place recorded{{}, place.first, place.second};
  const Edit edit = rule.apply(network(), std::move(place));
  const PartId made = result_.end.commit(edit);
  let_go(edit.removes);
  if (edit.adds.size() == 1) recorded = {{}, network().from(made), network().to(made)};
  result_.steps.append(rule.name, stage_, recorded, edit, made, why);
  for (const PointId point : edit.merges) {
    next_.points.push_back(network().representative(point));
  }
  for (std::uint32_t i = 0; i < edit.adds.size(); ++i) {
    const PartId part{made.index + i};
    next_.parts.push_back(part);
    next_.points.push_back(network().from(part));
    next_.points.push_back(network().to(part));
  }
}

// Beyond the budget, values are let go a little after the step that took their part: those of the
// first and of the last steps stay, for whoever shows them.
void Reducer::let_go(const std::vector<PartId>& taken) {
  for (const PartId part : taken) {
    if (part.index < result_.start.part_count()) continue;
    kept_bits_ += network().resistance(part).bits();
    if (kept_bits_ <= kMostKeptBits) continue;
    fading_.push(part);
    if (fading_.size() <= kLastKept) continue;
    result_.end.forget_resistance(fading_.front());
    fading_.pop();
  }
}

Reducer::Left Reducer::left() const {
  Left left;
  for (std::uint32_t i = 0; i < network().part_count(); ++i) {
    const PartId part{i};
    if (!network().is_alive(part)) continue;
    (is_source(network().kind(part)) ? left.sources : left.others).push_back(part);
  }
  return left;
}

Stop Reducer::stop() const {
  return stop(left());
}

Stop Reducer::stop(const Left& left) const {
  const Network& end = network();
  if (left.sources.empty()) return Stop::no_source;
  if (left.others.empty()) {
    const std::vector<bool> fed = fed_by_source(end, left.sources);
    if (std::find(fed.begin(), fed.end(), true) == fed.end()) return Stop::open;
  }
  if (left.sources.size() > 1) return Stop::several_sources;
  const PartId source = left.sources.front();
  if (end.from(source) == end.to(source)) return Stop::short_circuit;
  return left.others.size() == 1 ? Stop::reduced : Stop::bridge;
}

Reduction Reducer::finish() && {
  Left left = this->left();
  result_.stop = stop(left);
  if (left.sources.size() == 1) result_.source = left.sources.front();
  if (result_.stop == Stop::reduced) result_.root = left.others.front();
  result_.left = std::move(left.sources);
  result_.left.insert(result_.left.end(), left.others.begin(), left.others.end());
  std::sort(result_.left.begin(), result_.left.end());
  return std::move(result_);
}

}  // namespace ohmfold
