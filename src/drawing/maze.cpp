// What lies on the lattice of a maze, and drawing on it.
#include "drawing/maze.h"

#include <algorithm>
#include <tuple>

namespace ohmfold::drawing {
namespace {

// Costs of passing near: a symbol and its label, a point, another line.
constexpr int kNearSymbol = 8;
constexpr int kByTheSymbol = 3;
constexpr int kNearPoint = 4;
constexpr int kNearLine = 1;

}  // namespace

Maze::Maze(Spot size, std::vector<Spot> spots, std::size_t effort)
    : size_(size), spots_(std::move(spots)), effort_(effort) {
  const auto count = static_cast<std::size_t>(size.x) * static_cast<std::size_t>(size.y);
  right_.assign(count, kNone);
  down_.assign(count, kNone);
  net_at_.assign(count, kNone);
  vertex_.assign(count, false);
  crossed_.assign(count, false);
  crowd_.assign(count, 0);
  used_ = {spots_.front(), spots_.front()};
  for (std::uint32_t net = 0; net < spots_.size(); ++net) {
    const Node node = node_of(spots_[net]);
    claim(node, net);
    vertex_[node] = true;
    crowd_round(node, 1, kNearPoint);
  }
}

Spot Maze::spot_of(Node node) const {
  const auto columns = static_cast<Node>(size_.x);
  return {static_cast<int>(node % columns), static_cast<int>(node / columns)};
}

Maze::Node Maze::node_of(Spot spot) const {
  return static_cast<Node>(spot.y) * static_cast<Node>(size_.x) + static_cast<Node>(spot.x);
}

std::uint32_t Maze::edge(Node node, unsigned direction) const {
  const auto columns = static_cast<Node>(size_.x);
  if (direction == 0) return right_[node];
  if (direction == 1) return down_[node];
  if (direction == 2) return node % columns == 0 ? kNone : right_[node - 1];
  return node < columns ? kNone : down_[node - columns];
}

void Maze::set_edge(Node node, Node other, std::uint32_t owner) {
  const auto [low, high] = std::minmax(node, other);
  (high - low == 1 ? right_ : down_)[low] = owner;
}

void Maze::claim(Node node, std::uint32_t net) {
  net_at_[node] = net;
  const Spot spot = spot_of(node);
  used_.min = {std::min(used_.min.x, spot.x), std::min(used_.min.y, spot.y)};
  used_.max = {std::max(used_.max.x, spot.x), std::max(used_.max.y, spot.y)};
}

void Maze::crowd_round(Node node, int reach, int cost) {
  const Spot middle = spot_of(node);
  for (int y = std::max(0, middle.y - reach); y <= std::min(size_.y - 1, middle.y + reach); ++y) {
    for (int x = std::max(0, middle.x - reach); x <= std::min(size_.x - 1, middle.x + reach); ++x) {
      crowd_[node_of({x, y})] += cost;
    }
  }
}

bool Maze::is_straight(const Nodes& path, std::size_t i) const {
  return i > 0 && i + 1 < path.size() && path[i + 1] - path[i] == path[i] - path[i - 1];
}

/// The middle of the longest stretch round the one found that no other line comes near.
std::size_t Maze::best_seat(const Nodes& path, std::size_t found) const {
  const auto is_plain = [&](std::size_t i) { return is_straight(path, i) && is_free(path[i]); };
  const auto is_foot = [&](std::size_t i) {
    return i == 0 || i + 1 == path.size() || is_free(path[i]);
  };
  std::size_t best = found;
  std::tuple<int, int, int> best_score{-1, 0, 0};
  for (std::size_t i = 1; i + 1 < path.size(); ++i) {
    if (!is_plain(i) || !is_foot(i - 1) || !is_foot(i + 1) || !can_seat(path[i])) continue;
    int before = 1;
    int after = 1;
    for (std::size_t k = i - 1; is_plain(k); --k) ++before;
    for (std::size_t k = i + 1; is_plain(k); ++k) ++after;
    const int room = std::min(before, after);
    const std::tuple<int, int, int> score{std::min(room, 2), -crowd_[path[i]], room};
    if (score > best_score) {
      best = i;
      best_score = score;
    }
  }
  return best;
}

/// With a seat of 0 the line has no symbol.
void Maze::draw(const Nodes& path, std::size_t seat, const Wanted& wanted) {
  for (std::size_t i = 0; i < path.size(); ++i) {
    const bool is_seat = seat != 0 && i == seat;
    const std::uint32_t net = seat == 0 || i < seat ? wanted.from : wanted.to;
    const Node node = path[i];
    const bool is_end = i == 0 || i + 1 == path.size();
    if (!is_end && !is_free(node)) {
      crossed_[node] = true;
    } else if (!is_end || is_free(node)) {
      claim(node, is_seat ? kSymbol : net);
    }
    const bool is_foot = seat != 0 && (i + 1 == seat || i == seat + 1);
    if (is_end || is_foot || is_seat || !is_straight(path, i)) vertex_[node] = true;
    if (i + 1 == path.size()) break;
    const bool is_line_of_symbol = seat != 0 && (i + 1 == seat || i == seat);
    set_edge(node, path[i + 1], is_line_of_symbol ? kSymbol : net);
    crowd_round(node, 1, kNearLine);
  }
  if (seat == 0) return;
  seats_.push_back(spot_of(path[seat]));
  crowd_round(path[seat], 1, kNearSymbol);
  crowd_round(path[seat], 2, kByTheSymbol);
}

std::optional<Segment> Maze::join(std::uint32_t from, std::uint32_t to) {
  const Wanted wanted{from, to, false};
  std::size_t seat = 0;
  const std::optional<Nodes> path = find(wanted, seat);
  if (!path) return {};
  seat = best_seat(*path, seat);
  draw(*path, seat, wanted);
  return Segment{spot_of((*path)[seat - 1]), spot_of((*path)[seat + 1])};
}

std::optional<Spot> Maze::lead_out(std::uint32_t net) {
  const Wanted wanted{net, net, true};
  std::size_t seat = 0;
  const std::optional<Nodes> path = find(wanted, seat);
  if (!path) return {};
  draw(*path, 0, wanted);
  return spot_of(path->back());
}

std::vector<std::vector<Segment>> Maze::wires() const {
  std::vector<std::vector<Segment>> wires(spots_.size());
  for (const unsigned direction : {0U, 1U}) {
    const Node ahead = direction == 0 ? 1 : static_cast<Node>(size_.x);
    const auto leads_on = [&](Node node, std::uint32_t net) {
      // Pieces end where their net branches, so that all hang together by their ends.
      const bool branches =
          edge(node, direction ^ 1U) == net || edge(node, (direction ^ 1U) + 2) == net;
      return edge(node, direction) == net && !branches;
    };
    for (Node node = 0; node < net_at_.size(); ++node) {
      const std::uint32_t net = edge(node, direction);
      if (net == kNone || net == kSymbol) continue;
      if (edge(node, direction + 2) == net && leads_on(node, net)) continue;
      Node end = node + ahead;
      while (leads_on(end, net)) end += ahead;
      wires[net].push_back({spot_of(node), spot_of(end)});
    }
  }
  return wires;
}

}  // namespace ohmfold::drawing
