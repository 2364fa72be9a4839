// Series and parallel on links: one worklist of vertices, one table of pairs.
#include "drawing/reduction.h"

#include <algorithm>
#include <deque>
#include <unordered_map>

namespace ohmfold::drawing {

namespace {

class Reducing {
 public:
  Reducing(std::uint32_t top, std::uint32_t bottom, std::vector<Node>& nodes)
      : top_(top), bottom_(bottom), nodes_(nodes) {}

  std::vector<Link> run(const std::vector<Link>& links) {
    for (const Link& link : links) {
      note(link.a);
      note(link.b);
    }
    for (const Link& link : links) add(link);
    // In the order of the vertices, then as they come up: the same every time.
    for (const std::uint32_t vertex : seen_) open_.push_back(vertex);
    while (!open_.empty()) {
      const std::uint32_t vertex = open_.front();
      open_.pop_front();
      pass(vertex);
    }
    std::vector<Link> left;
    for (std::size_t i = 0; i < links_.size(); ++i) {
      if (alive_[i]) left.push_back(links_[i]);
    }
    return left;
  }

 private:
  struct At {
    std::vector<std::uint32_t> links;  // dead ones among them
    std::uint32_t degree = 0;
  };

  void note(std::uint32_t vertex) {
    if (at_.try_emplace(vertex).second) seen_.push_back(vertex);
  }

  static std::uint64_t key(std::uint32_t a, std::uint32_t b) {
    return (std::uint64_t{std::min(a, b)} << 32U) | std::max(a, b);
  }

  std::uint32_t joined(NodeKind kind, std::uint32_t a, std::uint32_t b, std::uint32_t first,
                       std::uint32_t second) {
    nodes_.push_back({kind, 0, a, b, {first, second}, {}, {}});
    return static_cast<std::uint32_t>(nodes_.size() - 1);
  }

  /// Puts in a link, or joins it with the one between the same vertices.
  void add(const Link& link) {
    const auto [entry, is_new] =
        between_.try_emplace(key(link.a, link.b), static_cast<std::uint32_t>(links_.size()));
    if (!is_new) {
      Link& there = links_[entry->second];
      there.node = joined(NodeKind::parallel, there.a, there.b, there.node, link.node);
      return;
    }
    for (const std::uint32_t vertex : {link.a, link.b}) {
      At& at = at_[vertex];
      at.links.push_back(entry->second);
      ++at.degree;
    }
    links_.push_back(link);
    alive_.push_back(true);
  }

  void remove(std::uint32_t number) {
    const Link& link = links_[number];
    alive_[number] = false;
    between_.erase(key(link.a, link.b));
    --at_[link.a].degree;
    --at_[link.b].degree;
  }

  /// Joins the two links of a vertex that has no more.
  void pass(std::uint32_t vertex) {
    At& at = at_[vertex];
    if (vertex == top_ || vertex == bottom_ || at.degree != 2) return;
    std::vector<std::uint32_t> two;
    for (const std::uint32_t number : at.links) {
      if (alive_[number]) two.push_back(number);
    }
    std::sort(two.begin(), two.end());
    const Link first = links_[two[0]];
    const Link second = links_[two[1]];
    const std::uint32_t from = first.a == vertex ? first.b : first.a;
    const std::uint32_t to = second.a == vertex ? second.b : second.a;
    remove(two[0]);
    remove(two[1]);
    add({from, to, joined(NodeKind::series, from, to, first.node, second.node)});
    open_.push_back(from);
    open_.push_back(to);
  }

  std::uint32_t top_, bottom_;
  std::vector<Node>& nodes_;
  std::vector<std::uint32_t> seen_;
  std::unordered_map<std::uint32_t, At> at_;
  std::unordered_map<std::uint64_t, std::uint32_t> between_;
  std::vector<Link> links_;
  std::vector<bool> alive_;
  std::deque<std::uint32_t> open_;
};

}  // namespace

std::vector<Link> reduce_links(const std::vector<Link>& links, std::uint32_t top,
                               std::uint32_t bottom, std::vector<Node>& nodes) {
  return Reducing(top, bottom, nodes).run(links);
}

}  // namespace ohmfold::drawing
