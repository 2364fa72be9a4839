// Thinning out a graph, and finding the parts behind its edges.
#include "bridge/path_graph.h"

#include <algorithm>

#include "ohmfold/rule.h"

namespace ohmfold {

PathGraph::PathGraph(const Network& start) : graph_(start) {
  clear_up();
  marks_.resize(graph_.part_count());
  for (std::uint32_t i = 0; i < graph_.part_count(); ++i) {
    if (!graph_.is_alive(PartId{i})) continue;
    edges_.push_back(PartId{i});
    marks_[i].holds_source = is_source(graph_.kind(PartId{i}));
  }
}

void PathGraph::clear_up() {
  const Frontier frontier = whole(graph_);
  for (const Rule& rule : all_rules()) {
    if (rule.tier != Tier::clean_up) continue;
    for (Place& place : rule.find(graph_, frontier)) {
      graph_.commit(rule.apply(graph_, std::move(place)));
    }
  }
}

void PathGraph::take_away(const std::vector<PartId>& edges) {
  Edit edit;
  edit.removes = edges;
  graph_.commit(edit);
}

void PathGraph::note_edges() {
  std::erase_if(edges_, [this](PartId edge) { return !graph_.is_alive(edge); });
}

bool PathGraph::is_better(PartId one, PartId other) const {
  const Marks& a = marks_[one.index];
  const Marks& b = marks_[other.index];
  if (a.holds_source != b.holds_source) return a.holds_source;
  if (a.length != b.length) return a.length < b.length;
  return one < other;
}

PartId PathGraph::best_twin(PartId edge) const {
  PartId best = edge;
  graph_.for_each_twin(edge, [&](PartId twin) {
    if (is_better(twin, best)) best = twin;
  });
  return best;
}

PartId PathGraph::keep_best_twin(PartId edge, std::vector<PointId>& changed) {
  if (!graph_.has_twin(edge)) return edge;
  const PartId best = best_twin(edge);
  std::vector<PartId> others;
  graph_.for_each_twin(edge, [&](PartId twin) {
    if (twin != best) others.push_back(twin);
  });
  take_away(others);
  changed.push_back(graph_.from(best));
  changed.push_back(graph_.to(best));
  return best;
}

void PathGraph::combine_at(PointId point, std::vector<PointId>& changed) {
  const std::size_t degree = graph_.degree(point);
  if (degree == 0 || degree > 2) return;
  std::vector<PartId> met;
  graph_.for_each_at(point, [&](PartId edge) { met.push_back(edge); });
  const PointId first = graph_.across(met.front(), point);
  const PointId second = graph_.across(met.back(), point);
  if (degree == 1) {
    take_away(met);
  } else {
    std::sort(met.begin(), met.end());
    const PartId made =
        replace(met, met, graph_.across(met.front(), point), graph_.across(met.back(), point));
    keep_best_twin(made, changed);
  }
  changed.push_back(first);
  changed.push_back(second);
}

PartId PathGraph::replace(const std::vector<PartId>& removed, const std::vector<PartId>& path,
                          PointId from, PointId to) {
  Edit edit;
  edit.removes = removed;
  edit.adds.push_back({from, to, Ratio(1, 1)});  // resistances play no part here
  const PartId made = graph_.commit(edit);
  Marks marks{0, false, static_cast<std::uint32_t>(pool_.size()), 0};
  for (const PartId edge : path) {
    marks.length += length(edge);
    marks.holds_source = marks.holds_source || holds_source(edge);
    pool_.push_back(edge);
  }
  marks.end = static_cast<std::uint32_t>(pool_.size());
  marks_.push_back(marks);
  edges_.push_back(made);
  return made;
}

void PathGraph::thin_out() {
  std::vector<PointId> changed;
  for (const PartId edge : edges_) {
    if (!graph_.is_alive(edge)) continue;
    if (graph_.from(edge) == graph_.to(edge)) {  // the source is short-circuited
      take_away({edge});
      continue;
    }
    keep_best_twin(edge, changed);
    changed.push_back(graph_.from(edge));
    changed.push_back(graph_.to(edge));
  }
  while (!changed.empty()) {
    const PointId point = changed.back();
    changed.pop_back();
    combine_at(point, changed);
  }
  note_edges();
}

void PathGraph::keep(const std::vector<PartId>& kept, const std::vector<PartId>& detour,
                     PointId from, PointId to) {
  std::vector<PartId> removed;
  std::set_difference(edges_.begin(), edges_.end(), kept.begin(), kept.end(),
                      std::back_inserter(removed));
  if (detour.empty()) {
    take_away(removed);
  } else {
    replace(removed, detour, from, to);
  }
  note_edges();
}

void PathGraph::expand(const std::vector<PartId>& path, PointId from,
                       std::vector<PartId>& parts) const {
  // Edges still to go along, the next one last. Each is entered where the one before it ended.
  std::vector<PartId> ahead(path.rbegin(), path.rend());
  PointId at = from;
  while (!ahead.empty()) {
    const PartId edge = ahead.back();
    ahead.pop_back();
    const Marks& marks = marks_[edge.index];
    if (marks.begin == marks.end) {
      parts.push_back(edge);
      at = graph_.across(edge, at);
    } else if (graph_.from(edge) == at) {
      for (std::uint32_t i = marks.end; i > marks.begin; --i) ahead.push_back(pool_[i - 1]);
    } else {
      for (std::uint32_t i = marks.begin; i < marks.end; ++i) ahead.push_back(pool_[i]);
    }
  }
}

}  // namespace ohmfold
