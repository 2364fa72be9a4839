// Individualisation and refinement, with a stack of its own and a budget.
#include <algorithm>
#include <numeric>

#include "rules/seen_graph.h"

namespace ohmfold {
namespace {

// In edges looked at: some tenths of a second at most.
constexpr std::size_t kMostWork = 8'000'000;

// How a point looks with the colours so far: its own, then weight and colour of each neighbour.
using Look = std::vector<std::uint64_t>;

}  // namespace

SymmetrySearch::SymmetrySearch(const SeenGraph& graph)
    : graph_(graph),
      count_(static_cast<std::uint32_t>(graph.points.size())),
      work_left_(kMostWork) {
  Colours colours(2 * std::size_t{count_}, 0);
  for (const std::uint32_t copy : {0U, count_}) {
    colours[copy + graph.terminal] = 1;
    colours[copy + graph.other] = 2;
  }
  cells_.resize(count_);
  if (refine(colours)) {
    cells_.assign(colours.begin(), colours.begin() + count_);
  } else {
    std::iota(cells_.begin(), cells_.end(), 0U);  // no candidates
  }
}

// New colours from looks until no more points are told apart; false where the copies differ or the
// budget is used up.
bool SymmetrySearch::refine(Colours& colours) {
  std::size_t known = 0;
  while (true) {
    if (work_left_ < work_of_refining()) return false;
    work_left_ -= work_of_refining();
    std::vector<std::pair<Look, std::uint32_t>> looks;
    looks.reserve(colours.size());
    for (std::uint32_t i = 0; i < colours.size(); ++i) {
      const std::uint32_t copy = i < count_ ? 0 : count_;
      Look look;
      for (const SeenGraph::Edge& edge : graph_.edges[i - copy]) {
        look.push_back(std::uint64_t{edge.weight} << 32 | colours[copy + edge.to]);
      }
      std::sort(look.begin(), look.end());
      look.insert(look.begin(), colours[i]);
      looks.emplace_back(std::move(look), i);
    }
    std::sort(looks.begin(), looks.end());
    std::uint32_t colour = 0;
    int balance = 0;  // points of this colour in the first copy, less those in the second
    for (std::size_t k = 0; k < looks.size(); ++k) {
      if (k > 0 && looks[k].first != looks[k - 1].first) {
        if (balance != 0) return false;
        ++colour;
      }
      balance += looks[k].second < count_ ? 1 : -1;
      colours[looks[k].second] = colour;
    }
    if (balance != 0) return false;
    if (colour + std::size_t{1} == known) return true;
    known = colour + std::size_t{1};
  }
}

bool SymmetrySearch::is_symmetry(const Symmetry& symmetry) const {
  for (std::uint32_t i = 0; i < count_; ++i) {
    std::vector<SeenGraph::Edge> moved;
    for (const SeenGraph::Edge& edge : graph_.edges[i]) {
      moved.push_back({symmetry[edge.to], edge.weight});
    }
    std::sort(moved.begin(), moved.end());
    if (moved != graph_.edges[symmetry[i]]) return false;
  }
  return true;
}

// The smallest set of points that are not told apart yet; its first point is set next, and stays
// where it is if it can.
void SymmetrySearch::choose(Choice& now) const {
  std::vector<std::vector<std::uint32_t>> cells(2 * std::size_t{count_});
  for (std::uint32_t i = 0; i < count_; ++i) cells[now.colours[i]].push_back(i);
  const auto is_better = [](const auto& a, const auto& b) {
    return a.size() > 1 && (b.size() < 2 || a.size() < b.size());
  };
  const auto cell = std::min_element(cells.begin(), cells.end(), is_better);
  now.is_discrete = cell->size() < 2;
  if (now.is_discrete) return;
  now.point = cell->front();
  const std::uint32_t colour = now.colours[now.point];
  for (std::uint32_t i = count_; i-- > 0;) {
    if (i != now.point && now.colours[count_ + i] == colour) now.candidates.push_back(i);
  }
  if (now.colours[count_ + now.point] == colour) now.candidates.push_back(now.point);
}

// Where each point goes once all are told apart.
Symmetry SymmetrySearch::read(const Colours& colours) const {
  std::vector<std::uint32_t> by_colour(2 * std::size_t{count_});
  for (std::uint32_t i = 0; i < count_; ++i) by_colour[colours[count_ + i]] = i;
  Symmetry symmetry(count_);
  for (std::uint32_t i = 0; i < count_; ++i) symmetry[i] = by_colour[colours[i]];
  return symmetry;
}

std::optional<Symmetry> SymmetrySearch::search(const Wishes& wishes) {
  Choice start;
  start.colours.assign(2 * std::size_t{count_}, 0);
  std::uint32_t wish = 0;
  for (const auto& [from, to] : wishes) {
    ++wish;
    start.colours[from] = start.colours[count_ + to] = wish;
  }
  if (!refine(start.colours)) return std::nullopt;
  choose(start);
  std::vector<Choice> open{std::move(start)};
  while (!open.empty() && work_left_ >= work_of_refining()) {
    Choice& now = open.back();
    if (now.is_discrete) {
      Symmetry symmetry = read(now.colours);
      if (is_symmetry(symmetry)) return symmetry;
    }
    if (now.candidates.empty()) {
      open.pop_back();
      continue;
    }
    Choice next;
    next.colours = now.colours;
    next.colours[now.point] = next.colours[count_ + now.candidates.back()] = 2 * count_;
    now.candidates.pop_back();
    if (!refine(next.colours)) continue;
    choose(next);
    open.push_back(std::move(next));
  }
  return std::nullopt;
}

// Do the two points have the same neighbours at the same weights, apart from each other?
bool SymmetrySearch::can_exchange(std::uint32_t a, std::uint32_t b) const {
  const auto without = [&](std::uint32_t point) {
    std::vector<SeenGraph::Edge> edges = graph_.edges[point];
    std::erase_if(edges, [&](const SeenGraph::Edge& e) { return e.to == a || e.to == b; });
    return edges;
  };
  return without(a) == without(b);
}

std::optional<Symmetry> SymmetrySearch::keeping(std::uint32_t from, std::uint32_t to) {
  const bool possible = from != to && cells_[from] == cells_[to];
  if (!possible) return std::nullopt;
  if (can_exchange(from, to)) {
    Symmetry exchange(count_);
    std::iota(exchange.begin(), exchange.end(), 0U);
    std::swap(exchange[from], exchange[to]);
    return exchange;
  }
  for (const Symmetry& symmetry : known_) {
    if (symmetry[from] == to) return symmetry;
  }
  // Most often the two change places; otherwise any symmetry will do.
  const Wishes kept{{graph_.terminal, graph_.terminal}, {graph_.other, graph_.other}, {from, to}};
  Wishes exchanged = kept;
  exchanged.emplace_back(to, from);
  std::optional<Symmetry> found = search(exchanged);
  if (!found) found = search(kept);
  if (found) known_.push_back(*found);
  return found;
}

std::optional<Symmetry> SymmetrySearch::turning(std::uint32_t point) {
  for (const Symmetry& symmetry : turned_) {
    if (symmetry[point] == point) return symmetry;
  }
  const Wishes wishes{
      {graph_.terminal, graph_.other}, {graph_.other, graph_.terminal}, {point, point}};
  std::optional<Symmetry> found = search(wishes);
  if (found) turned_.push_back(*found);
  return found;
}

}  // namespace ohmfold
