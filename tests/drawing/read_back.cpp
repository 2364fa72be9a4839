#include "drawing/read_back.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace ohmfold::test {

using support::is_near;
using support::kNear;
using support::SvgDrawing;
using support::SvgPart;
using support::Vec;

namespace {

std::string text(Vec spot) {
  return "(" + std::to_string(static_cast<int>(std::lround(spot.x))) + ", " +
         std::to_string(static_cast<int>(std::lround(spot.y))) + ")";
}

std::string owner(const Stretch& line) {
  if (!line.part.empty()) return "lead of " + line.part;
  return line.point.empty() ? "wire" : "wire of " + line.point;
}

/// The lines of a drawing, and which of them are joined.
class Reader {
 public:
  explicit Reader(const SvgDrawing& drawing) : drawing_(drawing) {}

  ReadBack read() {
    for (const support::SvgLine& line : drawing_.lines) {
      out_.lines.push_back({line.from, line.to, line.arcs, line.part, line.point});
      path_.push_back(line.path);
    }
    for (const SvgPart& part : drawing_.parts) cut(part);
    out_.set.resize(out_.lines.size());
    std::iota(out_.set.begin(), out_.set.end(), std::size_t{0});
    for (std::size_t i = 0; i < out_.lines.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) compare(i, j);
    }
    check_arcs();
    for (std::size_t i = 0; i < out_.set.size(); ++i) out_.set[i] = find(i);
    check_dots();
    for (std::size_t i = 0; i < out_.parts.size(); ++i) {
      for (const std::size_t end : {0U, 1U}) {
        out_.parts[i].joined[end] = out_.set[outer_[i][end]];
      }
    }
    return std::move(out_);
  }

 private:
  void fault(const std::string& what) { out_.faults.push_back(what); }

  std::vector<std::size_t> lines_of(std::size_t path) const {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < path_.size(); ++i) {
      if (path_[i] == path) found.push_back(i);
    }
    return found;
  }

  /// Where nothing but a line stands for a part, the part is its middle.
  void cut_in_two(const SvgPart& part) {
    const std::vector<std::size_t> lines = lines_of(part.leads.front());
    if (lines.empty()) return fault("no line stands for " + part.name);
    const std::size_t longest = *std::ranges::max_element(lines, {}, [this](std::size_t i) {
      return support::length(out_.lines[i].to - out_.lines[i].from);
    });
    const Vec middle = 0.5 * (out_.lines[longest].from + out_.lines[longest].to);
    Stretch rest = out_.lines[longest];
    out_.lines[longest].to = middle;
    out_.lines[longest].to_open = false;
    rest.from = middle;
    rest.from_open = false;
    for (Stretch* half : {&out_.lines[longest], &rest}) {
      std::erase_if(half->arcs,
                    [&](Vec arc) { return support::distance(half->from, half->to, arc) > 0.5; });
    }
    out_.lines.push_back(rest);
    path_.push_back(SIZE_MAX);
    const std::size_t second = lines.back() == longest ? out_.lines.size() - 1 : lines.back();
    out_.parts.push_back({part.name, {middle, middle}, {}});
    outer_.push_back({lines.front(), second});
  }

  /// Finds the two ends of a part, and keeps what is within its symbol apart.
  void cut(const SvgPart& part) {
    if (part.leads.size() == 1 && part.body.empty()) return cut_in_two(part);
    if (part.leads.size() != 2) return fault("not two leads: " + part.name);
    std::array<std::vector<std::size_t>, 2> leads{lines_of(part.leads[0]), lines_of(part.leads[1])};
    if (leads[0].empty() || leads[1].empty()) return fault("an empty lead: " + part.name);
    const Vec aim = part.body.empty() ? middle_without_body(leads) : support::middle_of(part.body);
    ReadPart read{part.name, {}, {}};
    std::array<std::size_t, 2> outer{};
    for (const std::size_t k : {0U, 1U}) {
      Stretch& first = out_.lines[leads[k].front()];
      Stretch& last = out_.lines[leads[k].back()];
      const bool from_symbol = support::length(first.from - aim) < support::length(last.to - aim);
      (from_symbol ? first.from_open : last.to_open) = false;
      read.inner[k] = from_symbol ? first.from : last.to;
      outer[k] = from_symbol ? leads[k].back() : leads[k].front();
    }
    out_.parts.push_back(read);
    outer_.push_back(outer);
  }
  Vec middle_without_body(const std::array<std::vector<std::size_t>, 2>& leads) const {
    for (const Vec end : {out_.lines[leads[0].front()].from, out_.lines[leads[0].back()].to}) {
      if (is_near(end, out_.lines[leads[1].front()].from) ||
          is_near(end, out_.lines[leads[1].back()].to)) {
        return end;
      }
    }
    return out_.lines[leads[0].back()].to;
  }

  std::size_t find(std::size_t i) {
    while (out_.set[i] != i) i = out_.set[i] = out_.set[out_.set[i]];
    return i;
  }
  void join(std::size_t i, std::size_t j) {
    i = find(i);
    j = find(j);
    out_.set[std::max(i, j)] = std::min(i, j);
  }

  static std::vector<Vec> open_ends(const Stretch& line) {
    std::vector<Vec> ends;
    if (line.from_open) ends.push_back(line.from);
    if (line.to_open) ends.push_back(line.to);
    return ends;
  }
  [[nodiscard]] bool has_dot(Vec spot) const {
    return std::ranges::any_of(drawing_.dots,
                               [&](const auto& one) { return is_near(one.at, spot); });
  }

  void compare(std::size_t i, std::size_t j) {
    const Stretch& a = out_.lines[i];
    const Stretch& b = out_.lines[j];
    const auto apart = [](double a1, double a2, double b1, double b2) {
      return std::max(a1, a2) + 1 < std::min(b1, b2) || std::max(b1, b2) + 1 < std::min(a1, a2);
    };
    if (apart(a.from.x, a.to.x, b.from.x, b.to.x) || apart(a.from.y, a.to.y, b.from.y, b.to.y)) {
      return;
    }
    for (const Vec end : open_ends(a)) {
      if (support::distance(b.from, b.to, end) >= kNear) continue;
      const bool within =
          (!b.from_open && is_near(end, b.from)) || (!b.to_open && is_near(end, b.to));
      within ? fault("a line ends at a symbol: " + owner(a) + " at " + owner(b)) : join(i, j);
    }
    for (const Vec end : open_ends(b)) {
      if (support::is_inside(a.from, a.to, end)) join(i, j);
    }
    check_crossing(i, j);
  }

  void check_crossing(std::size_t i, std::size_t j) {
    const Stretch& a = out_.lines[i];
    const Stretch& b = out_.lines[j];
    const Vec along_a = a.to - a.from;
    const Vec along_b = b.to - b.from;
    const double turn = support::cross(along_a, along_b);
    if (std::abs(turn) < 1e-6 * support::length(along_a) * support::length(along_b)) {
      return check_overlap(a, b);
    }
    const Vec spot = a.from + (support::cross(b.from - a.from, along_b) / turn) * along_a;
    if (!support::is_inside(a.from, a.to, spot) || !support::is_inside(b.from, b.to, spot)) return;
    if (has_dot(spot)) return join(i, j);
    const auto arc_at = [&spot](const Stretch& line) {
      return std::ranges::count_if(line.arcs,
                                   [&](Vec arc) { return support::length(arc - spot) < 0.6; });
    };
    if (arc_at(a) + arc_at(b) != 1) {
      fault(owner(a) + " and " + owner(b) + " cross at " + text(spot) + " with " +
            std::to_string(arc_at(a) + arc_at(b)) + " arcs");
    }
    crossings_.push_back(spot);
  }

  void check_overlap(const Stretch& a, const Stretch& b) {
    const Vec along = (1 / support::length(a.to - a.from)) * (a.to - a.from);
    if (std::abs(support::cross(along, b.from - a.from)) > kNear) return;
    const auto [low, high] = std::minmax({dot(along, b.from - a.from), dot(along, b.to - a.from)});
    if (std::min(high, support::length(a.to - a.from)) - std::max(low, 0.0) < kNear) return;
    if (a.part != b.part || a.point != b.point) {
      fault(owner(a) + " lies on " + owner(b) + " near " + text(a.from));
    }
  }

  void check_arcs() {
    for (const Stretch& line : out_.lines) {
      for (const Vec arc : line.arcs) {
        const bool needed = std::ranges::any_of(
            crossings_, [&](Vec spot) { return support::length(arc - spot) < 0.6; });
        if (!needed) fault("an arc where nothing is crossed: " + owner(line) + " at " + text(arc));
      }
    }
  }

  /// How many ways lead away from a spot.
  [[nodiscard]] std::size_t ways_from(Vec spot) const {
    std::vector<Vec> ways;
    const auto add = [&ways, &spot](Vec to) {
      const Vec way = (1 / support::length(to - spot)) * (to - spot);
      if (std::ranges::none_of(ways, [&](Vec one) { return support::length(one - way) < 0.01; })) {
        ways.push_back(way);
      }
    };
    for (const Stretch& line : out_.lines) {
      if (support::distance(line.from, line.to, spot) >= kNear) continue;
      if (!is_near(spot, line.from)) add(line.from);
      if (!is_near(spot, line.to)) add(line.to);
    }
    return ways.size();
  }

  void check_dots() {
    std::vector<Vec> seen;
    for (const Stretch& line : out_.lines) {
      for (const Vec end : open_ends(line)) {
        if (std::ranges::any_of(seen, [&](Vec one) { return is_near(one, end); })) continue;
        seen.push_back(end);
        const std::size_t ways = ways_from(end);
        if (ways >= 3 && !has_dot(end)) fault("no dot at " + text(end) + " on " + owner(line));
        const bool has_ring = std::ranges::any_of(
            drawing_.rings, [&](const auto& ring) { return support::length(ring.at - end) < 6; });
        if (ways == 1 && !has_ring) fault("a loose end at " + text(end) + " of " + owner(line));
        if (ways > 1 && has_ring) fault("a ring at " + text(end) + " on " + owner(line));
      }
    }
    for (const support::SvgMark& one : drawing_.dots) {
      if (ways_from(one.at) < 3) fault("a dot where nothing meets: " + text(one.at));
    }
  }

  const SvgDrawing& drawing_;
  ReadBack out_;
  std::vector<std::size_t> path_;                  // by line
  std::vector<std::array<std::size_t, 2>> outer_;  // by part: the outermost lines of its leads
  std::vector<Vec> crossings_;
};

}  // namespace

ReadBack read_back(const SvgDrawing& drawing) {
  return Reader(drawing).read();
}

}  // namespace ohmfold::test
