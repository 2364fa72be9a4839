// The network's flat arrays: linking parts at their points, and commit.
#include "ohmfold/network.h"

#include <algorithm>

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

constexpr std::uint64_t pair_key(PointId a, PointId b) {
  return (std::uint64_t{std::min(a, b).index} << 32) | std::max(a, b).index;
}

}  // namespace

Network::Network(std::size_t points) : points_(points), merged_into_(points) {
  for (std::uint32_t i = 0; i < points; ++i) merged_into_[i] = PointId{i};
}

void Network::reserve(std::size_t parts) {
  parts_.reserve(parts);
}

PartId Network::add(ElementKind kind, PointId from, PointId to, const Ratio& resistance) {
  ensure(from.index < point_count() && to.index < point_count(), "a part between unknown points");
  ensure(kind != ElementKind::resistor || resistance.is_positive(),
         "a resistor of no positive resistance");
  const PartId part{static_cast<std::uint32_t>(parts_.size())};
  PartRecord record;
  record.resistance = resistance;
  record.end = {from, to};
  record.kind = kind;
  parts_.push_back(std::move(record));
  link(part);
  return part;
}

PartId Network::add_battery(PointId negative, PointId positive, const Voltage& emf,
                            const Resistance& internal) {
  const PartId part = add(ElementKind::battery, negative, positive);
  batteries_.push_back({part, emf, internal});
  return part;
}

const BatteryData& Network::battery(PartId part) const {
  // Batteries are added in the order of their ids.
  const auto at = std::lower_bound(batteries_.begin(), batteries_.end(), part,
                                   [](const BatteryData& b, PartId id) { return b.part < id; });
  ensure(at != batteries_.end() && at->part == part, "no battery by this id");
  return *at;
}

PartId Network::add_current_source(PointId from, PointId to, const Current& current) {
  const PartId part = add(ElementKind::current_source, from, to);
  current_sources_.push_back({part, current});
  return part;
}

const Current& Network::driven_current(PartId part) const {
  // As for batteries.
  const auto at =
      std::lower_bound(current_sources_.begin(), current_sources_.end(), part,
                       [](const CurrentSourceData& s, PartId id) { return s.part < id; });
  ensure(at != current_sources_.end() && at->part == part, "no source of current by this id");
  return at->current;
}

bool Network::is_symbolic(PartId part) const {
  if (kind(part) == ElementKind::battery) {
    const BatteryData& data = battery(part);
    return data.emf.number.is_symbolic() || data.internal.number.is_symbolic();
  }
  if (kind(part) == ElementKind::current_source) return driven_current(part).number.is_symbolic();
  return resistance(part).is_symbolic();
}

std::size_t Network::value_bits(PartId part) const {
  if (kind(part) == ElementKind::battery) {
    const BatteryData& data = battery(part);
    return data.emf.number.bits() + data.internal.number.bits();
  }
  if (kind(part) == ElementKind::current_source) return driven_current(part).number.bits();
  return resistance(part).bits();
}

void Network::link_half(std::uint32_t half) {
  PartRecord& part = parts_[half / 2];
  const std::uint32_t which = half % 2;
  PointRecord& point = points_[part.end[which].index];
  part.previous[which] = kNil;
  part.next[which] = point.head;
  if (point.head != kNil) parts_[point.head / 2].previous[point.head % 2] = half;
  point.head = half;
  ++point.degree;
}

void Network::unlink_half(std::uint32_t half) {
  const PartRecord& part = parts_[half / 2];
  const std::uint32_t which = half % 2;
  PointRecord& point = points_[part.end[which].index];
  const std::uint32_t before = part.previous[which];
  const std::uint32_t after = part.next[which];
  (before == kNil ? point.head : parts_[before / 2].next[before % 2]) = after;
  if (after != kNil) parts_[after / 2].previous[after % 2] = before;
  --point.degree;
}

void Network::link(PartId part) {
  link_half(2 * part.index);
  link_half(2 * part.index + 1);
  ++alive_count_;
  PartRecord& record = parts_[part.index];
  const PartId twin = pairs_.find_or_insert(pair_key(from(part), to(part)), part);
  if (twin == part) {
    record.twin_next = record.twin_previous = part;
    return;
  }
  const PartId after = parts_[twin.index].twin_next;
  record.twin_previous = twin;
  record.twin_next = after;
  parts_[twin.index].twin_next = part;
  parts_[after.index].twin_previous = part;
}

void Network::unlink(PartId part) {
  unlink_half(2 * part.index);
  unlink_half(2 * part.index + 1);
  --alive_count_;
  PartRecord& record = parts_[part.index];
  const std::uint64_t key = pair_key(from(part), to(part));
  if (record.twin_next == part) {
    pairs_.erase(key);
    return;
  }
  parts_[record.twin_previous.index].twin_next = record.twin_next;
  parts_[record.twin_next.index].twin_previous = record.twin_previous;
  pairs_.replace(key, part, record.twin_next);
  record.twin_next = record.twin_previous = part;
}

void Network::merge(const std::vector<PointId>& points) {
  const PointId target = *std::min_element(points.begin(), points.end());
  auto& members = members_[target.index];
  if (members.empty()) members.push_back(target);
  for (const PointId point : points) {
    if (point == target) continue;
    while (points_[point.index].head != kNil) {
      const PartId part{points_[point.index].head / 2};
      unlink(part);
      for (PointId& end : parts_[part.index].end) {
        if (end == point) end = target;
      }
      link(part);
    }
    const auto own = members_.find(point.index);
    if (own == members_.end()) {
      merged_into_[point.index] = target;
      members.push_back(point);
    } else {
      for (const PointId member : own->second) merged_into_[member.index] = target;
      members.insert(members.end(), own->second.begin(), own->second.end());
      members_.erase(own);
    }
  }
}

void Network::expect_ends(PartId part) const {
  __builtin_prefetch(&points_[from(part).index]);
  __builtin_prefetch(&points_[to(part).index]);
  pairs_.expect(pair_key(from(part), to(part)));
}

PartId Network::commit(const Edit& edit) {
  for (const PartId part : edit.removes) {
    ensure(is_alive(part), "an edit removes a part that is not there");
    unlink(part);
    parts_[part.index].alive = false;
  }
  if (edit.merging == Merging::by_twos) {
    for (std::size_t i = 0; i + 1 < edit.merges.size(); i += 2) {
      const PointId one = representative(edit.merges[i]);
      const PointId two = representative(edit.merges[i + 1]);
      if (one != two) merge({one, two});
    }
  } else if (edit.merges.size() > 1) {
    merge(edit.merges);
  }
  for (std::uint32_t i = 0; i < edit.new_points; ++i) {
    merged_into_.push_back(PointId{static_cast<std::uint32_t>(points_.size())});
    points_.emplace_back();
  }
  PartId first;
  for (const NewPart& part : edit.adds) {
    const PointId from = representative(part.from);
    const PointId to = representative(part.to);
    const PartId id = part.kind == ElementKind::battery
                          ? add_battery(from, to, part.emf, {part.resistance.lowest_terms()})
                          : add(part.kind, from, to, part.resistance);
    if (!first.exists()) first = id;
  }
  return first;
}

}  // namespace ohmfold
