// Taking parts out of a network to look at them by themselves.
#include "check/excerpt.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "check/report.h"

namespace ohmfold::check {

Excerpt::Excerpt(const Network& network, std::span<const PartId> parts) {
  for (const PartId part : parts) {
    points_.push_back(network.from(part));
    points_.push_back(network.to(part));
  }
  std::sort(points_.begin(), points_.end());
  points_.erase(std::unique(points_.begin(), points_.end()), points_.end());

  std::vector<std::size_t> ends(points_.size(), 0);
  for (const PartId part : parts) {
    const Part own{part, network.kind(part), *number_of(network.from(part)),
                   *number_of(network.to(part))};
    ++ends[own.from];
    ++ends[own.to];
    parts_.push_back(own);
  }
  for (std::size_t i = 0; i < points_.size(); ++i) {
    is_boundary_.push_back(network.degree(points_[i]) > ends[i]);
  }
}

std::optional<std::uint32_t> Excerpt::number_of(PointId point) const {
  const auto at = std::lower_bound(points_.begin(), points_.end(), point);
  if (at == points_.end() || *at != point) return std::nullopt;
  return static_cast<std::uint32_t>(at - points_.begin());
}

DisjointSets Excerpt::wired() const {
  DisjointSets sets(points_.size());
  for (const Part& part : parts_) {
    if (is_wire(part.kind)) sets.join(part.from, part.to);
  }
  return sets;
}

PartId Excerpt::driving_battery() const {
  DisjointSets sets = wired();
  for (const Part& part : parts_) {
    if (part.kind == ElementKind::resistor) sets.join(part.from, part.to);
  }
  // A closed path through batteries is one in the graph of the batteries between those sets.
  for (const Part& part : parts_) {
    if (part.kind == ElementKind::battery && !sets.join(part.from, part.to)) return part.id;
  }
  return {};
}

std::vector<Excerpt::Piece> Excerpt::pieces(std::span<const PointId> merges) const {
  std::vector<std::uint32_t> terminal(points_.size());
  for (std::uint32_t i = 0; i < terminal.size(); ++i) terminal[i] = i;
  if (!merges.empty()) {
    const auto first = number_of(*std::min_element(merges.begin(), merges.end()));
    for (const PointId point : merges) terminal[number_of(point).value()] = first.value();
  }

  DisjointSets joined(points_.size());
  for (const Part& part : parts_) {
    if (!is_gap(part.kind)) joined.join(part.from, part.to);
  }
  std::vector<Piece> pieces;
  std::unordered_map<std::uint32_t, std::size_t> number;  // of a piece, by its first point
  std::unordered_map<std::uint32_t, std::uint32_t>
      wired_to;  // first terminal of a cluster of wires
  DisjointSets sets = wired();
  for (std::uint32_t i = 0; i < points_.size(); ++i) {
    if (!is_boundary_[i]) continue;
    const auto [at, is_new] = number.emplace(joined.find(i), pieces.size());
    if (is_new) pieces.emplace_back();
    Piece& piece = pieces[at->second];
    piece.terminals.push_back(terminal[i]);
    const auto cluster = wired_to.emplace(sets.find(i), terminal[i]).first;
    if (cluster->second != terminal[i]) piece.wire_between = true;
  }
  for (const Part& part : parts_) {
    if (!is_source(part.kind)) continue;
    const auto at = number.find(joined.find(part.from));
    if (at != number.end()) pieces[at->second].has_source = true;
  }
  for (Piece& piece : pieces) {
    std::sort(piece.terminals.begin(), piece.terminals.end());
    piece.terminals.erase(std::unique(piece.terminals.begin(), piece.terminals.end()),
                          piece.terminals.end());
  }
  return pieces;
}

std::string fault_in_parts(const Network& network, std::span<const PartId> parts) {
  std::unordered_set<std::uint32_t> seen;
  for (const PartId part : parts) {
    if (part.index >= network.part_count() || !network.is_alive(part)) {
      return name_of(part) + " is not there to be taken";
    }
    if (!seen.insert(part.index).second) return name_of(part) + " is taken twice";
  }
  return {};
}

}  // namespace ohmfold::check
