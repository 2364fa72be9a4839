// Figures in words.
#include "views/figure_words.h"

#include <algorithm>
#include <utility>

#include "drawing/stages.h"
#include "views/amounts.h"

namespace ohmfold::views {

namespace {

/// "has come" or "have come", with the names of what came.
Words came_words(const Scene& scene, std::size_t begin, std::size_t end) {
  std::vector<PartId> made;
  for (std::size_t i = begin; i < end; ++i) {
    const Step step = scene.reduction.steps[i];
    for (std::uint32_t n = 0; n < drawing::parts_made(step); ++n) {
      made.push_back(PartId{step.makes.index + n});
    }
  }
  if (made.empty()) return {};
  constexpr std::size_t kMost = 4;
  return say(scene.words.parts(made, kMost), made.size() == 1 ? " has come" : " have come");
}

Words next_words(const Scene& scene, std::size_t begin, std::size_t end) {
  constexpr std::size_t kMost = 3;
  Words words;
  for (std::size_t i = begin; i < end; ++i) {
    if (i == begin + kMost) return say(words, "; and so on");
    words.add(i == begin ? "next " : "; ");
    words.add(scene.words.parts(scene.reduction.steps[i].takes, kMost + 1));
  }
  return words;
}

std::string redraw_name(const StepLog& steps, std::size_t after) {
  const std::string stage = "redraw " + std::to_string(steps[after - 1].stage);
  return drawing::is_between_stages(steps, after)
             ? stage
             : stage + ", step " + std::to_string(after) + " done";
}

/// What is alive after some steps, from the source on.
class Description {
 public:
  Description(const Scene& scene, std::size_t steps, const std::vector<std::string>& values)
      : scene_(scene), network_(replay(scene.reduction, steps)), values_(values) {
    order();
  }

  std::string run() {
    Words words = say(overview());
    for (const PointId point : points_) {
      words.add(" ");
      words.add(meeting(point));
    }
    for (const PartId part : parts_) {
      words.add(" ");
      words.add(course(part));
    }
    return plain_text(words);
  }

 private:
  [[nodiscard]] bool is_shown(PartId part) const {
    return network_.is_alive(part) && network_.kind(part) != ElementKind::taken_out;
  }
  [[nodiscard]] bool is_port(PartId part) const { return network_.kind(part) == ElementKind::port; }

  /// From the plus of the source along the parts; what does not hang together with it follows.
  void order() {
    const auto count = static_cast<std::uint32_t>(network_.part_count());
    seen_parts_.assign(count, false);
    seen_points_.assign(network_.point_count(), false);
    std::vector<PartId> starts;
    for (std::uint32_t i = 0; i < count; ++i) starts.push_back(PartId{i});
    std::stable_sort(starts.begin(), starts.end(), [&](PartId a, PartId b) {
      return std::make_pair(!is_source(network_.kind(a)), a) <
             std::make_pair(!is_source(network_.kind(b)), b);
    });
    for (const PartId start : starts) {
      if (!is_shown(start) || seen_parts_[start.index]) continue;
      visit(start);
      const bool rises = counts_rise(network_.kind(start)) && !is_port(start);
      walk(rises ? network_.to(start) : network_.from(start));
    }
  }

  void visit(PartId part) {
    seen_parts_[part.index] = true;
    if (!is_port(part)) parts_.push_back(part);
  }

  void reach(PointId point) {
    if (seen_points_[point.index]) return;
    seen_points_[point.index] = true;
    points_.push_back(point);
  }

  void walk(PointId start) {
    std::size_t at = points_.size();
    reach(start);
    for (; at < points_.size(); ++at) {
      const PointId here = points_[at];
      for (const PartId part : parts_at(here)) {
        if (!seen_parts_[part.index]) visit(part);
        reach(network_.across(part, here));
      }
    }
  }

  [[nodiscard]] std::vector<PartId> parts_at(PointId point) const {
    std::vector<PartId> parts;
    network_.for_each_at(point, [&](PartId part) {
      if (is_shown(part)) parts.push_back(part);
    });
    std::sort(parts.begin(), parts.end());
    parts.erase(std::unique(parts.begin(), parts.end()), parts.end());
    return parts;
  }

  [[nodiscard]] Words overview() const {
    std::vector<PartId> sources;
    bool port = false;
    for (std::uint32_t i = 0; i < network_.part_count(); ++i) {
      port = port || (network_.is_alive(PartId{i}) && is_port(PartId{i}));
    }
    for (const PartId part : parts_) {
      if (is_source(network_.kind(part))) sources.push_back(part);
    }
    const std::size_t others = parts_.size() - sources.size();
    constexpr std::size_t kMostNamed = 2;
    Words words = say("A circuit of ");
    if (!sources.empty() && sources.size() <= kMostNamed) {
      for (std::size_t i = 0; i < sources.size(); ++i) {
        if (i > 0) words.add(", ");
        words.add(scene_.words.described(sources[i]));
      }
      if (others > 0) words.add(" and ");
    } else if (!sources.empty()) {
      words.add(count_text(sources.size()) + " sources" + (others > 0 ? " and " : ""));
    }
    if (others > 0 || sources.empty()) words.add(counted(others, sources.empty() ? "" : "other "));
    words.add(port ? ", with two open terminals," : "");
    const std::size_t count = points_.size();
    return say(words, " between ", count_text(count), count == 1 ? " point." : " points.");
  }

  static std::string counted(std::size_t count, const std::string& which) {
    return count_text(count) + " " + which + (count == 1 ? "part" : "parts");
  }

  [[nodiscard]] Words meeting(PointId point) const {
    constexpr std::size_t kMostAtOne = 40;
    std::vector<Words> entries;
    for (const PartId part : parts_at(point)) {
      entries.push_back(is_port(part) ? say("a terminal") : say(scene_.words.part(part)));
    }
    Words words = say("At point ", scene_.words.point(point), ": ");
    for (std::size_t i = 0; i < entries.size(); ++i) {
      if (i > 0) words.add(", ");
      if (i == kMostAtOne) return say(words, "and others.");
      words.add(entries[i]);
    }
    return say(words, ".");
  }

  [[nodiscard]] Words course(PartId part) const {
    Words words = scene_.words.described(part).capitalised();
    if (part.index < values_.size() && !values_[part.index].empty()) {
      words.add(", " + values_[part.index]);
    }
    const char* state = state_of(part);
    if (*state != 0) words.add(std::string(", ") + state);
    const bool battery = network_.kind(part) == ElementKind::battery;
    return say(words, ", from ", scene_.words.point(network_.from(part)), battery ? " (minus)" : "",
               " to ", scene_.words.point(network_.to(part)), battery ? " (plus)." : ".");
  }

  [[nodiscard]] const char* state_of(PartId part) const {
    switch (network_.kind(part)) {
      case ElementKind::closed_switch:
        return "closed";
      case ElementKind::open_switch:
        return "open";
      case ElementKind::shorted:
        return "bridged by a wire";
      case ElementKind::switched_off:
        return "replaced by a gap";
      case ElementKind::wire:
        return "an ideal wire";
      case ElementKind::resistor:
      case ElementKind::battery:
      case ElementKind::port:
      case ElementKind::current_source:
      case ElementKind::ammeter:
      case ElementKind::voltmeter:
      case ElementKind::taken_out:
        break;
    }
    return "";
  }

  const Scene& scene_;
  const Network network_;
  const std::vector<std::string>& values_;
  std::vector<PartId> parts_;
  std::vector<PointId> points_;
  std::vector<bool> seen_parts_, seen_points_;
};

}  // namespace

Words figure_caption(const Scene& scene, const std::string& case_name, std::size_t steps,
                     bool marks) {
  const StepLog& log = scene.reduction.steps;
  Words words = steps == 0 ? (case_name.empty() ? say("The circuit as stated")
                                                : say("The circuit in case \"", case_name, "\""))
                           : say(redraw_name(log, steps)).capitalised();
  if (!marks) return say(words, ".");
  const drawing::Neighbours near = drawing::neighbours_of(log, steps);
  const Words came = came_words(scene, near.came_begin, near.now);
  const Words next = next_words(scene, near.now, near.next_end);
  if (!came.empty()) words = say(words, ": ", came);
  if (!next.empty()) words = say(words, came.empty() ? ": " : "; ", next);
  return say(words, ".");
}

std::string figure_title(const Scene& scene, const std::string& case_name, std::size_t steps) {
  std::string title = scene.problem.title.empty() ? "Circuit" : scene.problem.title;
  if (!case_name.empty()) title += ", " + case_name;
  if (steps > 0) title += ": " + redraw_name(scene.reduction.steps, steps);
  return title;
}

std::string figure_description(const Scene& scene, std::size_t steps,
                               const std::vector<std::string>& values) {
  return Description(scene, steps, values).run();
}

}  // namespace ohmfold::views
