// The cheapest way through a maze.
#include <algorithm>
#include <functional>
#include <queue>

#include "drawing/maze.h"

namespace ohmfold::drawing {
namespace {

constexpr int kStep = 2;
constexpr int kBend = 6;
constexpr int kCross = 14;
constexpr int kBranch = 6;   ///< to begin or end on a line of the net, away from its spot
constexpr int kOutside = 2;  ///< how far beyond all else a line leads out

}  // namespace

struct Maze::Search {
  explicit Search(std::size_t states) : cost(states, INT32_MAX), before(states, kNone) {}

  void offer(State state, int new_cost, State from) {
    if (new_cost >= cost[state]) return;
    cost[state] = new_cost;
    before[state] = from;
    open.emplace(new_cost, state);
  }

  std::vector<int> cost;
  std::vector<State> before;
  // Of equal costs the state with the lower number comes first: always the same way.
  using Entry = std::pair<int, State>;
  std::priority_queue<Entry, std::vector<Entry>, std::greater<>> open;
};

std::optional<Maze::Node> Maze::next(Node node, unsigned direction) const {
  Spot spot = spot_of(node);
  if (direction == 0) ++spot.x;
  if (direction == 1) ++spot.y;
  if (direction == 2) --spot.x;
  if (direction == 3) --spot.y;
  if (spot.x < 0 || spot.y < 0 || spot.x >= size_.x || spot.y >= size_.y) return {};
  return node_of(spot);
}

bool Maze::is_tree(Node node, std::uint32_t net) const {
  return net_at_[node] == net && !crossed_[node];
}

bool Maze::can_cross(Node node, unsigned direction, const Wanted& wanted) const {
  const std::uint32_t net = net_at_[node];
  if (net == kNone || net == kSymbol || net == wanted.from || net == wanted.to) return false;
  if (vertex_[node] || crossed_[node]) return false;
  // Straight on: a line across has an edge to the side.
  return edge(node, direction ^ 1U) == net;
}

bool Maze::can_seat(Node node) const {
  if (!is_free(node)) return false;
  const Spot spot = spot_of(node);
  return std::none_of(seats_.begin(), seats_.end(), [&](Spot seat) {
    const Spot apart = seat - spot;
    return apart.x * apart.x + apart.y * apart.y < 4;
  });
}

bool Maze::is_goal(Node node, const Wanted& wanted) const {
  if (!wanted.outward) return is_tree(node, wanted.to);
  const Spot spot = spot_of(node);
  return is_free(node) && (spot.x <= used_.min.x - kOutside || spot.x >= used_.max.x + kOutside ||
                           spot.y <= used_.min.y - kOutside || spot.y >= used_.max.y + kOutside);
}

void Maze::begin(Search& search, const Wanted& wanted) const {
  const unsigned phase = wanted.outward ? 1 : 0;
  for (Node node = 0; node < net_at_.size(); ++node) {
    if (!is_tree(node, wanted.from)) continue;
    const int cost = node == node_of(spots_[wanted.from]) ? 0 : kBranch;
    for (unsigned direction = 0; direction < 4; ++direction) {
      search.offer((node * 4 + direction) * 2 + phase, cost, kNone);
    }
  }
}

void Maze::step(Search& search, const Wanted& wanted, State state, unsigned direction) const {
  const Node node = state / 8;
  const std::optional<Node> other = next(node, direction);
  if (!other || edge(node, direction) != kNone) return;
  const bool has_symbol = state % 2 == 1;
  int cost = search.cost[state] + kStep;
  if (search.before[state] != kNone && direction != state / 2 % 4) cost += kBend;
  if (has_symbol && is_goal(*other, wanted)) {
    if (!wanted.outward && *other != node_of(spots_[wanted.to])) cost += kBranch;
  } else if (is_free(*other)) {
    cost += crowd_[*other];
  } else if (can_cross(*other, direction, wanted)) {
    cost += kCross;
  } else {
    return;
  }
  search.offer((*other * 4 + direction) * 2 + state % 2, cost, state);
}

void Maze::step_over_symbol(Search& search, const Wanted& wanted, State state,
                            unsigned direction) const {
  const Node node = state / 8;
  const std::optional<Node> middle = next(node, direction);
  if (!middle || edge(node, direction) != kNone || !can_seat(*middle)) return;
  const std::optional<Node> end = next(*middle, direction);
  if (!end || edge(*middle, direction) != kNone) return;
  int cost = search.cost[state] + 2 * kStep + 2 * crowd_[*middle];
  if (search.before[state] != kNone && direction != state / 2 % 4) cost += kBend;
  if (is_goal(*end, wanted)) {
    if (*end != node_of(spots_[wanted.to])) cost += kBranch;
  } else if (is_free(*end)) {
    cost += crowd_[*end];
  } else {
    return;
  }
  search.offer((*end * 4 + direction) * 2 + 1, cost, state);
}

void Maze::expand(Search& search, const Wanted& wanted, State state) const {
  const Node node = state / 8;
  const unsigned direction = state / 2 % 4;
  const bool is_start = search.before[state] == kNone;
  if (is_start) {
    step(search, wanted, state, direction);
    if (state % 2 == 0) step_over_symbol(search, wanted, state, direction);
    return;
  }
  if (!is_free(node)) {
    step(search, wanted, state, direction);
    return;
  }
  for (unsigned turn = 0; turn < 4; ++turn) {
    if (turn == (direction ^ 2U)) continue;
    step(search, wanted, state, turn);
    if (state % 2 == 0) step_over_symbol(search, wanted, state, turn);
  }
}

Maze::Nodes Maze::trace(const Search& search, State state, std::size_t& seat) const {
  Nodes path;
  seat = 0;
  for (State at = state; at != kNone; at = search.before[at]) {
    path.push_back(at / 8);
    const State before = search.before[at];
    if (before == kNone || before % 2 == at % 2) continue;
    seat = path.size();
    path.push_back(*next(before / 8, at / 2 % 4));
  }
  std::reverse(path.begin(), path.end());
  if (seat != 0) seat = path.size() - 1 - seat;
  return path;
}

std::optional<Maze::Nodes> Maze::find(const Wanted& wanted, std::size_t& seat) {
  // To make room for a search takes a while, too.
  effort_ -= std::min(effort_, net_at_.size() / 4);
  Search search(net_at_.size() * 8);
  begin(search, wanted);
  while (!search.open.empty()) {
    const auto [cost, state] = search.open.top();
    search.open.pop();
    if (cost > search.cost[state]) continue;
    if (effort_ == 0) return {};
    --effort_;
    const bool is_start = search.before[state] == kNone;
    if (is_start || state % 2 == 0 || !is_goal(state / 8, wanted)) {
      expand(search, wanted, state);
      continue;
    }
    Nodes path = trace(search, state, seat);
    // Before and after its symbol a way may have come by the same place.
    Nodes inner(path.begin() + 1, path.end() - 1);
    std::sort(inner.begin(), inner.end());
    if (std::adjacent_find(inner.begin(), inner.end()) != inner.end()) return {};
    return path;
  }
  return {};
}

}  // namespace ohmfold::drawing
