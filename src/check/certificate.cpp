// Walks along the paths of a certificate, and looks whether a source feeds them.
#include "check/certificate.h"

#include <algorithm>
#include <set>
#include <utility>
#include <vector>

#include "check/report.h"
#include "circuit/disjoint_sets.h"
#include "circuit/spanning.h"

namespace ohmfold {
namespace {

using check::name_of;

// A network with the points that ideal wires join made one, and without what conducts nothing.
struct Joined {
  Network network;                 // parts of no kind, since only their ends matter
  std::vector<PartId> parts;       // of the network above, all of them
  std::vector<PartId> own;         // by part of the original: the one above, or none
  std::vector<PointId> one_point;  // by point of the original
};

Joined join_points(const Network& start) {
  DisjointSets sets(start.point_count());
  const auto each_living = [&](auto visit) {
    for (std::uint32_t i = 0; i < start.part_count(); ++i) {
      if (start.is_alive(PartId{i})) visit(PartId{i});
    }
  };
  each_living([&](PartId part) {
    if (is_wire(start.kind(part))) sets.join(start.from(part).index, start.to(part).index);
  });
  Joined joined{Network(start.point_count()), {}, std::vector<PartId>(start.part_count()), {}};
  for (std::uint32_t i = 0; i < start.point_count(); ++i) {
    joined.one_point.push_back(PointId{sets.find(i)});
  }
  each_living([&](PartId part) {
    const PointId from = joined.one_point[start.from(part).index];
    const PointId to = joined.one_point[start.to(part).index];
    if (is_wire(start.kind(part)) || is_gap(start.kind(part)) || from == to) return;
    const PartId own = joined.network.add(ElementKind::port, from, to);
    joined.own[part.index] = own;
    joined.parts.push_back(own);
  });
  return joined;
}

// Parts that lie on closed paths together are one set: the loops that the parts outside a spanning
// forest close join them all. A run is a stretch towards the root whose parts are one set already,
// so that no loop is walked twice.
class ClosedPaths {
 public:
  explicit ClosedPaths(const Joined& joined)
      : network_(joined.network),
        forest_(span_forest(joined.network, joined.parts)),
        sets_(joined.network.part_count()),
        run_(joined.network.point_count()) {
    for (std::uint32_t i = 0; i < run_.size(); ++i) run_[i] = i;
    for (const PartId chord : forest_.chords) join_loop(chord);
  }

  bool together(PartId first, PartId second) { return sets_.joined(first.index, second.index); }

 private:
  // One side of a loop, on its way up to where the two sides meet.
  struct Climber {
    PointId at;
    std::uint32_t last_top = PointId::kNone;  // of the run that it came from
  };

  void join_loop(PartId chord) {
    Climber one{network_.from(chord)};
    Climber two{network_.to(chord)};
    while (one.at != two.at) {
      const bool first = forest_.depth[one.at.index] >= forest_.depth[two.at.index];
      climb(first ? one : two, chord);
    }
  }

  void climb(Climber& climber, PartId chord) {
    if (climber.last_top != PointId::kNone) run_[climber.last_top] = climber.at.index;
    const std::uint32_t top = top_of_run(climber.at.index);
    sets_.join(chord.index, forest_.up[top].index);
    climber = {forest_.above(network_, PointId{top}), top};
  }

  std::uint32_t top_of_run(std::uint32_t point) {
    while (run_[point] != point) point = run_[point] = run_[run_[point]];
    return point;
  }

  const Network& network_;
  SpanningForest forest_;
  DisjointSets sets_;
  std::vector<std::uint32_t> run_;  // by point: a point further up whose part is in the same run
};

class Verifier {
 public:
  Verifier(const Certificate& certificate, const Network& start)
      : certificate_(certificate), start_(start), joined_(join_points(start)) {}

  std::string run() {
    std::string fault = fault_in_corners();
    for (const Certificate::Path& path : certificate_.paths) {
      if (fault.empty()) fault = fault_in_ends(path);
      if (fault.empty()) fault = fault_along(path);
    }
    return fault.empty() ? fault_in_feeding() : fault;
  }

 private:
  [[nodiscard]] bool is_there(PointId point) const { return point.index < start_.point_count(); }
  [[nodiscard]] PointId one(PointId point) const { return joined_.one_point[point.index]; }

  std::string fault_in_corners() {
    for (const PointId corner : certificate_.corners) {
      if (!is_there(corner)) return "a corner is no point of the network";
      if (!corners_.insert(one(corner)).second) return name_of(corner) + " is two of the corners";
    }
    return {};
  }

  std::string fault_in_ends(const Certificate::Path& path) {
    for (const PointId end : {path.from, path.to}) {
      if (!is_there(end) || !corners_.contains(one(end))) return "a path does not end at a corner";
    }
    const PointId from = one(path.from);
    const PointId to = one(path.to);
    if (from == to) return "a path comes back to " + name_of(path.from);
    if (!pairs_.insert(std::minmax(from, to)).second) {
      return "two paths join " + name_of(path.from) + " and " + name_of(path.to);
    }
    return {};
  }

  std::string fault_along(const Certificate::Path& path) {
    if (path.parts.empty()) return "a path has no part";
    PointId at = one(path.from);
    for (std::size_t i = 0; i < path.parts.size(); ++i) {
      const PartId part = path.parts[i];
      if (part.index >= start_.part_count() || !joined_.own[part.index].exists()) {
        return name_of(part) + " joins no two points";
      }
      if (!parts_.insert(part).second) return name_of(part) + " is used twice";
      const PartId own = joined_.own[part.index];
      const Network& network = joined_.network;
      if (network.from(own) != at && network.to(own) != at) {
        return name_of(part) + " does not go on where the part before it ends";
      }
      at = network.across(own, at);
      if (i + 1 < path.parts.size() && (corners_.contains(at) || !inner_.insert(at).second)) {
        return "paths meet at " + name_of(at);
      }
    }
    return at == one(path.to) ? std::string() : "a path does not reach " + name_of(path.to);
  }

  std::string fault_in_feeding() {
    const PartId part = joined_.own[certificate_.paths.front().parts.front().index];
    ClosedPaths closed(joined_);
    for (std::uint32_t i = 0; i < start_.part_count(); ++i) {
      const PartId own = joined_.own[i];
      if (own.exists() && is_source(start_.kind(PartId{i})) && closed.together(part, own)) {
        return {};
      }
    }
    return "no source feeds the paths";
  }

  const Certificate& certificate_;
  const Network& start_;
  Joined joined_;
  std::set<PointId> corners_, inner_;
  std::set<PartId> parts_;
  std::set<std::pair<PointId, PointId>> pairs_;
};

}  // namespace

std::string verify(const Certificate& certificate, const Network& start) {
  return Verifier(certificate, start).run();
}

}  // namespace ohmfold
