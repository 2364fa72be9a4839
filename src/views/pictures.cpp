// The figures of a reduction: what stands beside the parts and points, and what is said of them.
#include "views/pictures.h"

#include <algorithm>
#include <numeric>
#include <string_view>

#include "views/amounts.h"
#include "views/figure_words.h"
#include "views/letter_code.h"

namespace ohmfold::views {

namespace {

using drawing::LabelLine;
using drawing::TextRole;

/// Longer values do not fit beside a part.
constexpr std::size_t kMostLetters = 22;

/// Before an internal resistance, in a drawing and in words.
constexpr const char* kInternal = "r = ";
constexpr const char* kInternalInWords = "internal ";

/// A value of a label, as a description says it.
std::string in_words(const std::string& value) {
  const std::string_view before = kInternal;
  return value.starts_with(before) ? kInternalInWords + value.substr(before.size()) : value;
}

/// Makes the captions of one reduction.
class CaptionWriter {
 public:
  CaptionWriter(const Scene& scene, const CaseTrace& trace, const PictureOptions& options)
      : scene_(scene), trace_(trace), options_(options) {}

  drawing::Captions run() {
    const Reduction& reduction = scene_.reduction;
    const std::size_t parts = std::max(reduction.start.part_count(), reduction.end.part_count());
    const std::size_t points = std::max(reduction.start.point_count(), reduction.end.point_count());
    for (std::uint32_t i = 0; i < parts; ++i) add(PartId{i});
    for (std::uint32_t i = 0; i < points; ++i) add(PointId{i});
    return std::move(captions_);
  }

 private:
  /// Currents and potentials are those of the main reduction.
  [[nodiscard]] bool is_main() const { return &scene_.reduction == &trace_.main; }
  [[nodiscard]] bool is_of_file(PartId part) const {
    return part.index < scene_.problem.parts.size();
  }

  [[nodiscard]] const Network& network_with(PartId part) const {
    const Network& start = scene_.reduction.start;
    return part.index < start.part_count() ? start : scene_.reduction.end;
  }

  void add(PartId part) {
    captions_.parts.emplace_back();
    if (options_.currents) captions_.currents.push_back(0);
    const std::string& name = scene_.names.of(part);
    // A port has no name, and that of a nameless wire nobody wrote.
    if (name.empty() || name.find(' ') != std::string::npos) return;
    std::vector<LabelLine>& lines = captions_.parts.back();
    lines.push_back({TextRole::part_name, name});
    if (options_.values) add_values(part, lines);
    if (options_.currents && is_main() && part.index < trace_.branches.size()) {
      add_current(trace_.branches[part.index].current, lines);
    }
  }

  void add_values(PartId part, std::vector<LabelLine>& lines) const {
    const Network& network = network_with(part);
    if (is_of_file(part) && scene_.problem.part(part).unknown) {
      lines.push_back({TextRole::value, "?"});
      return;
    }
    switch (network.kind(part)) {
      case ElementKind::resistor:
        if (!network.knows_resistance(part)) return;
        add_resistance(network.resistance(part).lowest_terms(), "", lines);
        return;
      case ElementKind::battery: {
        const BatteryData& data = network.battery(part);
        add_value(Quantity(data.emf), lines);
        if (!data.internal.is_zero()) add_resistance(data.internal.number, kInternal, lines);
        return;
      }
      case ElementKind::current_source:
        add_value(Quantity(network.driven_current(part)), lines);
        return;
      case ElementKind::port:
      case ElementKind::wire:
      case ElementKind::closed_switch:
      case ElementKind::ammeter:
      case ElementKind::shorted:
      case ElementKind::open_switch:
      case ElementKind::voltmeter:
      case ElementKind::taken_out:
      case ElementKind::switched_off:
        return;
    }
  }

  void add_resistance(const Number& ohms, const char* before, std::vector<LabelLine>& lines) const {
    const auto code =
        options_.notation == Notation::letters ? letter_code(ohms) : std::optional<std::string>();
    if (code) {
      lines.push_back({TextRole::value, before + *code});
    } else {
      add_value({ohms, Unit::ohm}, lines, before);
    }
  }

  /// Nothing where it is too long to stand in a drawing.
  void add_value(const Quantity& value, std::vector<LabelLine>& lines,
                 const char* before = "") const {
    const std::string text = brief(value);
    if (!text.empty()) lines.push_back({TextRole::value, before + text});
  }

  [[nodiscard]] std::string brief(const Quantity& value) const {
    if (is_too_long_to_show(value.number) && value.number.is_symbolic()) return {};
    // 4.7 kΩ rather than 4700 Ω, as long as it says the same.
    const bool prefixed = !value.number.is_symbolic() && !(value.number < Number(1000)) &&
                          terminating_decimal(value.number, scene_.figures);
    std::string text =
        plain_text(prefixed ? say(scene_.amount(value, Form::decimal)) : scene_.brief(value));
    return text.size() > kMostLetters ? std::string() : text;
  }

  void add_current(const Reading& current, std::vector<LabelLine>& lines) {
    if (!current.value) return;
    const Number& number = current.value->number;
    const bool is_against = number.is_negative();
    const std::string text = brief(is_against ? Quantity{-number, Unit::ampere} : *current.value);
    if (text.empty()) return;
    lines.push_back({TextRole::current, text});
    if (is_against || number.is_positive()) captions_.currents.back() = is_against ? -1 : 1;
  }

  void add(PointId point) {
    captions_.points.push_back({{TextRole::point_name, scene_.names.of(point)}});
    const bool shows = options_.potentials && is_main() && point.index < trace_.nodes.size();
    if (!shows || !trace_.nodes[point.index].potential.value) return;
    const std::string text = brief(*trace_.nodes[point.index].potential.value);
    if (!text.empty()) captions_.points.back().push_back({TextRole::potential, text});
  }

  const Scene& scene_;
  const CaseTrace& trace_;
  const PictureOptions& options_;
  drawing::Captions captions_;
};

/// The points of the file in order of their potentials, equal ones alike; empty where one of them
/// is not known.
std::vector<int> heights_of(const Scene& scene, const CaseTrace& trace) {
  if (&scene.reduction != &trace.main) return {};
  std::vector<std::size_t> order(trace.nodes.size());
  std::iota(order.begin(), order.end(), 0U);
  const auto potential = [&](std::size_t i) -> const Number& {
    return trace.nodes[i].potential.value->number;
  };
  const bool all_known = std::all_of(order.begin(), order.end(), [&](std::size_t i) {
    return trace.nodes[i].potential.value && !potential(i).is_symbolic();
  });
  if (!all_known) return {};
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return potential(b) < potential(a); });
  std::vector<int> heights(order.size(), 0);
  for (std::size_t i = 1; i < order.size(); ++i) {
    const bool lower = potential(order[i]) < potential(order[i - 1]);
    heights[order[i]] = heights[order[i - 1]] + (lower ? 1 : 0);
  }
  return heights;
}

}  // namespace

Pictures::Pictures(const Scene& scene, const CaseTrace& trace, const drawing::Sizes& sizes,
                   const PictureOptions& options)
    : scene_(scene),
      options_(options),
      case_name_(scene.problem.cases.size() > 1 ? trace.name : std::string()),
      captions_(CaptionWriter(scene, trace, options).run()),
      figures_(scene.problem, scene.reduction, captions_, sizes,
               {heights_of(scene, trace), options.marks}) {}

Figure Pictures::after(std::size_t steps) const {
  std::vector<std::string> values;
  for (const std::vector<LabelLine>& lines : captions_.parts) {
    values.emplace_back();
    for (const LabelLine& line : lines) {
      if (line.role != TextRole::value) continue;
      values.back() += (values.back().empty() ? "" : ", ") + in_words(line.text);
    }
  }
  return {figure_caption(scene_, case_name_, steps, options_.marks),
          figure_title(scene_, case_name_, steps), figure_description(scene_, steps, values),
          figures_.after(steps)};
}

}  // namespace ohmfold::views
