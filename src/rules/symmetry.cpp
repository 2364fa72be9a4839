// Individualisation and refinement, with a stack of its own and a budget.
#include <algorithm>
#include <numeric>

#include "rules/seen_graph.h"

namespace ohmfold {
namespace {

// In edges looked at: about a second at most.
constexpr std::size_t kMostWork = 30'000'000;

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
    const std::size_t work = 4 * (graph_.edge_count + count_);
    if (work_left_ < work) return false;
    work_left_ -= work;
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

std::optional<Symmetry> SymmetrySearch::search(const Wishes& wishes) {
  struct Choice {
    Colours colours;
    std::uint32_t point = 0;                // of the first copy, to be set
    std::vector<std::uint32_t> candidates;  // of the second, those still to try, the best last
  };
  std::vector<Choice> open(1);
  open.back().colours.assign(2 * std::size_t{count_}, 0);
  std::uint32_t next_colour = 0;
  for (const auto& [from, to] : wishes) {
    open.back().colours[from] = ++next_colour;
    open.back().colours[count_ + to] = next_colour;
  }
  if (!refine(open.back().colours)) return std::nullopt;
  bool is_new = true;
  while (!open.empty()) {
    Choice& now = open.back();
    if (is_new) {
      std::vector<std::vector<std::uint32_t>> cells(2 * std::size_t{count_});
      for (std::uint32_t i = 0; i < count_; ++i) cells[now.colours[i]].push_back(i);
      const auto smaller = [](const auto& a, const auto& b) {
        return a.size() > 1 && (b.size() < 2 || a.size() < b.size());
      };
      const auto cell = std::min_element(cells.begin(), cells.end(), smaller);
      const bool discrete = cell->size() < 2;
      Symmetry symmetry(count_);
      if (!discrete) now.point = cell->front();
      for (std::uint32_t i = count_; i-- > 0;) {
        const std::uint32_t colour = now.colours[count_ + i];
        if (discrete) symmetry[cells[colour].front()] = i;
        if (!discrete && colour == now.colours[now.point] && i != now.point) {
          now.candidates.push_back(i);
        }
      }
      if (discrete) {
        if (is_symmetry(symmetry)) return symmetry;
      } else if (now.colours[count_ + now.point] == now.colours[now.point]) {
        now.candidates.push_back(now.point);
      }
    }
    if (now.candidates.empty()) {
      open.pop_back();
      is_new = false;
      continue;
    }
    Choice next;
    next.colours = now.colours;
    next.colours[now.point] = next.colours[count_ + now.candidates.back()] = 2 * count_;
    now.candidates.pop_back();
    is_new = refine(next.colours);
    if (is_new) open.push_back(std::move(next));
    if (work_left_ < 4 * (graph_.edge_count + count_)) return std::nullopt;
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
