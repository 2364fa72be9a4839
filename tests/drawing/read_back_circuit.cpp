// Compares what a drawing shows with the circuit that was meant.
#include <algorithm>
#include <limits>
#include <set>

#include "drawing/read_back.h"

namespace ohmfold::test {

using support::SvgDrawing;
using support::SvgText;
using support::Vec;

namespace {

/// Each set of joined lines stands for one point, and each point for one set.
class Pairing {
 public:
  bool agree(std::size_t set, std::size_t point) {
    const auto [of_set, new_set] = point_of_.try_emplace(set, point);
    const auto [of_point, new_point] = set_of_.try_emplace(point, set);
    return of_set->second == point && of_point->second == set;
  }
  [[nodiscard]] const std::map<std::size_t, std::size_t>& sets() const { return set_of_; }

 private:
  std::map<std::size_t, std::size_t> point_of_, set_of_;
};

void check_parts(const ReadBack& read, const Shown& shown, Pairing& pairing,
                 std::vector<std::string>& faults) {
  std::set<std::string> seen;
  for (const ReadPart& part : read.parts) {
    if (!seen.insert(part.name).second) faults.push_back("drawn twice: " + part.name);
    const auto meant = shown.parts.find(part.name);
    if (meant == shown.parts.end()) {
      faults.push_back("not in the circuit: " + part.name);
      continue;
    }
    if (!pairing.agree(part.joined[0], meant->second.from) ||
        !pairing.agree(part.joined[1], meant->second.to)) {
      faults.push_back("joined to other points: " + part.name);
    }
  }
  for (const auto& [name, ends] : shown.parts) {
    if (!seen.contains(name)) faults.push_back("not drawn: " + name);
  }
}

/// A battery's plus stands at the end of its second lead.
void check_polarity(const SvgDrawing& drawing, const ReadBack& read, const Shown& shown,
                    std::vector<std::string>& faults) {
  for (const ReadPart& part : read.parts) {
    const auto meant = shown.parts.find(part.name);
    if (meant == shown.parts.end() || !meant->second.battery) continue;
    const auto plus = std::ranges::find_if(drawing.texts, [&](const SvgText& text) {
      return text.part == part.name && text.text == "+";
    });
    if (plus == drawing.texts.end()) {
      faults.push_back("no plus: " + part.name);
      continue;
    }
    const Vec at = support::middle_of(plus->box.corners());
    if (support::length(at - part.inner[1]) >= support::length(at - part.inner[0])) {
      faults.push_back("the plus is at the wrong end: " + part.name);
    }
  }
}

/// Wires of a group belong to its point; a name stands at a line of its point.
void check_points(const SvgDrawing& drawing, const ReadBack& read, const Shown& shown,
                  const Pairing& pairing, std::vector<std::string>& faults) {
  const auto set_of = [&](const std::string& name) {
    const auto point = shown.points.find(name);
    if (point == shown.points.end()) return SIZE_MAX;
    const auto set = pairing.sets().find(point->second);
    return set == pairing.sets().end() ? SIZE_MAX : set->second;
  };
  for (const std::string& name : drawing.points) {
    if (set_of(name) == SIZE_MAX) faults.push_back("a point that joins no part: " + name);
  }
  for (std::size_t i = 0; i < read.lines.size(); ++i) {
    const std::string& name = read.lines[i].point;
    if (!name.empty() && read.set[i] != set_of(name)) {
      faults.push_back("a wire of another point: " + name);
    }
  }
  for (const SvgText& text : drawing.texts) {
    if (text.point.empty() || set_of(text.point) == SIZE_MAX) continue;
    double own = std::numeric_limits<double>::infinity();
    double other = own;
    for (std::size_t i = 0; i < read.lines.size(); ++i) {
      const double away =
          support::distance(text.box.corners(), {read.lines[i].from, read.lines[i].to});
      double& least = read.set[i] == set_of(text.point) ? own : other;
      least = std::min(least, away);
    }
    if (other < own) faults.push_back("nearer to another point: " + text.text);
  }
}

}  // namespace

Shown shown_by(const Network& network, const views::PartNames& names) {
  Shown shown;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    const ElementKind kind = network.kind(part);
    if (!network.is_alive(part) || kind == ElementKind::port || kind == ElementKind::taken_out ||
        kind == ElementKind::switched_off) {
      continue;
    }
    shown.parts[names.of(part)] = {network.from(part).index, network.to(part).index,
                                   kind == ElementKind::battery};
  }
  for (std::uint32_t i = 0; i < network.point_count(); ++i) {
    if (network.representative(PointId{i}) == PointId{i}) shown.points[names.of(PointId{i})] = i;
  }
  return shown;
}

std::vector<std::string> faults_of_circuit(const SvgDrawing& drawing, const ReadBack& read,
                                           const Shown& shown) {
  std::vector<std::string> faults = read.faults;
  Pairing pairing;
  check_parts(read, shown, pairing, faults);
  check_polarity(drawing, read, shown, faults);
  check_points(drawing, read, shown, pairing, faults);
  return faults;
}

}  // namespace ohmfold::test
