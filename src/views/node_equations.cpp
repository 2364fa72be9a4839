// The equations of node-voltage analysis, set up from the parts that are left.
#include "views/node_equations.h"

#include <algorithm>
#include <map>

namespace ohmfold::views {

namespace {

constexpr std::size_t kMostParts = 14;

bool is_ideal_battery(const Network& network, PartId part) {
  return network.kind(part) == ElementKind::battery && network.battery(part).internal.is_zero();
}

class Builder {
 public:
  Builder(const Scene& scene, const CaseTrace& trace, PointId ground)
      : scene_(scene),
        trace_(trace),
        end_(scene.reduction.end),
        ground_(end_.representative(ground)) {}

  NodeEquations run() {
    if (scene_.reduction.left.size() > kMostParts) return {};
    for (const PartId part : scene_.reduction.left) {
      if (end_.kind(part) == ElementKind::port) return {};
      group_[end_.from(part)];
      group_[end_.to(part)];
    }
    for (auto& [point, group] : group_) group = point;
    for (const PartId part : scene_.reduction.left) {
      if (is_ideal_battery(end_, part)) join(part);
    }
    NodeEquations equations;
    for (const PartId part : scene_.reduction.left) {
      if (is_ideal_battery(end_, part)) equations.batteries.push_back(battery_line(part));
    }
    for (const auto& [point, group] : group_) {
      if (point != group || group == group_of_ground()) continue;
      equations.symbols.push_back(current_law(group, false));
      equations.values.push_back(current_law(group, true));
    }
    return equations;
  }

 private:
  void join(PartId battery) {
    const PointId kept = std::min(group_[end_.from(battery)], group_[end_.to(battery)]);
    const PointId gone = std::max(group_[end_.from(battery)], group_[end_.to(battery)]);
    for (auto& [point, group] : group_) {
      if (group == gone) group = kept;
    }
  }

  [[nodiscard]] PointId group_of_ground() const {
    const auto at = group_.find(ground_);
    return at == group_.end() ? PointId{} : at->second;
  }

  [[nodiscard]] Expression difference(PointId first, PointId second) const {
    return sum({scene_.symbols.potential(first), negative(scene_.symbols.potential(second))});
  }

  [[nodiscard]] Equation battery_line(PartId battery) const {
    Equation line{difference(end_.to(battery), end_.from(battery)),
                  {{Relation::equal, scene_.symbols.value(battery)}},
                  {}};
    append_value(line, end_.battery(battery).emf, scene_.figures);
    return line;
  }

  /// The value where ideal batteries fix it against the ground, otherwise the symbol.
  [[nodiscard]] Expression known_potential(PointId point) const {
    if (group_.at(point) == group_of_ground() && point.index < trace_.nodes.size()) {
      const Reading& potential = trace_.nodes[point.index].potential;
      if (potential.value) return scene_.put_in(*potential.value);
    }
    return scene_.symbols.potential(point);
  }

  /// The current that leaves `point` through `part`.
  [[nodiscard]] Expression leaving(PointId point, PartId part, bool values) const {
    if (end_.kind(part) == ElementKind::current_source) {
      Expression driven =
          values ? scene_.put_in(end_.driven_current(part)) : scene_.symbols.value(part);
      return end_.from(part) == point ? driven : negative(std::move(driven));
    }
    const PointId other = end_.across(part, point);
    std::vector<Expression> terms{scene_.symbols.potential(point)};
    if (!values) {
      terms.push_back(negative(scene_.symbols.potential(other)));
    } else if (other != ground_) {
      terms.push_back(negative(known_potential(other)));
    }
    if (end_.kind(part) != ElementKind::battery) {
      return quotient(sum(std::move(terms)),
                      values ? scene_.put_in(scene_.resistance(part)) : scene_.symbols.value(part));
    }
    const BatteryData& data = end_.battery(part);
    const Expression emf = values ? scene_.put_in(data.emf) : scene_.symbols.value(part);
    terms.push_back(point == end_.to(part) ? negative(emf) : emf);
    return quotient(sum(std::move(terms)),
                    values ? scene_.put_in(data.internal) : scene_.symbols.internal(part));
  }

  [[nodiscard]] Equation current_law(PointId group, bool values) const {
    std::vector<Expression> terms;
    std::vector<Words> points;
    for (const auto& [point, own] : group_) {
      if (own != group) continue;
      points.push_back(say(scene_.words.point(point)));
      for (const PartId part : scene_.reduction.left) {
        const bool here = end_.from(part) == point || end_.to(part) == point;
        if (!here || group_.at(end_.across(part, point)) == group) continue;
        terms.push_back(leaving(point, part, values));
      }
    }
    Equation line{sum(std::move(terms)), {}, {}};
    line.links.push_back({Relation::equal, {Count{Number(0)}}});
    line.note = say("at ", listed(points), points.size() > 1 ? " together" : "");
    return line;
  }

  const Scene& scene_;
  const CaseTrace& trace_;
  const Network& end_;
  PointId ground_;
  std::map<PointId, PointId> group_;
};

}  // namespace

NodeEquations node_equations(const Scene& scene, const CaseTrace& trace, PointId ground) {
  return Builder(scene, trace, ground).run();
}

}  // namespace ohmfold::views
