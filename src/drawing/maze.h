// Lines at right angles between given spots, found one after the other on a lattice.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

#include "drawing/geometry.h"

namespace ohmfold::drawing {

/// A lattice on which several nets grow, each from a spot of its own. A net is a point of a
/// network: its lines hang together. Lines of different nets meet only where they cross at right
/// angles, straight on. Symbols lie on lines two steps long, round whose middle all is free.
class Maze {
 public:
  /// Spots in 0 <= x < size.x, 0 <= y < size.y, all different. `effort`: how many places all
  /// searches together may look at.
  Maze(Spot size, std::vector<Spot> spots, std::size_t effort);

  /// Leads a line with a symbol from one net to another or back to the same. Returns the line of
  /// the symbol from the first net to the second; nothing where there is no way. Dijkstra's search
  /// with costs for length, bends, crossings and narrow places (after Lee 1961). Cost: n log n for
  /// a lattice of n spots.
  [[nodiscard]] std::optional<Segment> join(std::uint32_t from, std::uint32_t to);

  /// Leads a line of the net out of all that is there. Returns its end.
  [[nodiscard]] std::optional<Spot> lead_out(std::uint32_t net);

  [[nodiscard]] std::size_t effort_left() const { return effort_; }

  /// The lines of each net without those of symbols.
  [[nodiscard]] std::vector<std::vector<Segment>> wires() const;

 private:
  using Node = std::uint32_t;
  /// A node, the direction in which it was reached, and whether the symbol lies behind.
  using State = std::uint32_t;
  /// What is wanted of a search: to reach net `to`, or, without one, to leave `used_`.
  struct Wanted {
    std::uint32_t from = 0, to = 0;
    bool outward = false;
  };
  struct Search;
  using Nodes = std::vector<Node>;

  [[nodiscard]] Spot spot_of(Node node) const;
  [[nodiscard]] Node node_of(Spot spot) const;
  [[nodiscard]] std::optional<Node> next(Node node, unsigned direction) const;
  [[nodiscard]] std::uint32_t edge(Node node, unsigned direction) const;
  void set_edge(Node node, Node other, std::uint32_t owner);
  [[nodiscard]] bool is_free(Node node) const { return net_at_[node] == kNone; }
  [[nodiscard]] bool is_tree(Node node, std::uint32_t net) const;
  [[nodiscard]] bool can_cross(Node node, unsigned direction, const Wanted& wanted) const;
  [[nodiscard]] bool can_seat(Node node) const;
  [[nodiscard]] bool is_goal(Node node, const Wanted& wanted) const;

  [[nodiscard]] std::optional<Nodes> find(const Wanted& wanted, std::size_t& seat);
  void begin(Search& search, const Wanted& wanted) const;
  void expand(Search& search, const Wanted& wanted, State state) const;
  void step(Search& search, const Wanted& wanted, State state, unsigned direction) const;
  void step_over_symbol(Search& search, const Wanted& wanted, State state,
                        unsigned direction) const;
  [[nodiscard]] Nodes trace(const Search& search, State state, std::size_t& seat) const;

  [[nodiscard]] std::size_t best_seat(const Nodes& path, std::size_t found) const;
  [[nodiscard]] bool is_straight(const Nodes& path, std::size_t i) const;
  void draw(const Nodes& path, std::size_t seat, const Wanted& wanted);
  void claim(Node node, std::uint32_t net);
  void crowd_round(Node node, int reach, int cost);

  static constexpr std::uint32_t kNone = UINT32_MAX;
  static constexpr std::uint32_t kSymbol = UINT32_MAX - 1;

  Spot size_;
  std::vector<Spot> spots_;
  std::size_t effort_;
  std::vector<std::uint32_t> right_, down_;  // by node: whose line leads on from there
  std::vector<std::uint32_t> net_at_;        // by node: whose it is
  std::vector<bool> vertex_;                 // by node: does a line end, turn or branch here?
  std::vector<bool> crossed_;                // by node: do two nets cross here?
  std::vector<int> crowd_;                   // by node: what it costs to pass there
  std::vector<Spot> seats_;
  Box used_;
};

}  // namespace ohmfold::drawing
