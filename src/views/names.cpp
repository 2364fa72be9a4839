// Names of all parts of a reduction, found in one pass over its steps.
#include "views/names.h"

#include <algorithm>
#include <cstddef>
#include <string_view>
#include <unordered_set>

namespace ohmfold::views {

namespace {

constexpr std::size_t kLongestHistory = 6;
constexpr std::size_t kLongestName = 12;
/// … of parts whose names are more than a number: longer ones could not be read.
constexpr std::size_t kLongestMixedHistory = 3;

/// The digits of R12, or of another letter; nothing for any other name.
std::string_view digits_of(std::string_view name, char letter = 'R') {
  if (name.size() < 2 || name.front() != letter) return {};
  const std::string_view digits = name.substr(1);
  const bool all =
      std::all_of(digits.begin(), digits.end(), [](char c) { return c >= '0' && c <= '9'; });
  return all ? digits : std::string_view();
}

/// The parts of the file that a part was made from, in file order; empty where they are too many.
using History = std::vector<PartId>;

class Naming {
 public:
  Naming(const Problem& problem, const Reduction& reduction)
      : problem_(problem), reduction_(reduction) {}

  /// The names of all parts.
  std::vector<std::string> run() {
    // A case that contradicts itself is not reduced: then only the parts of the file have names.
    const std::size_t count = std::max(reduction_.end.part_count(), problem_.parts.size());
    names_.resize(count);
    histories_.resize(count);
    taken_.reserve(count);
    for (std::size_t i = 0; i < std::min(count, problem_.parts.size()); ++i) {
      const bool internal =
          problem_.parts[i].kind == PartKind::battery && i < reduction_.start.part_count() &&
          reduction_.start.kind(PartId{static_cast<std::uint32_t>(i)}) == ElementKind::resistor;
      names_[i] = (internal ? "r_" : "") + problem_.parts[i].name;
      histories_[i] = {PartId{static_cast<std::uint32_t>(i)}};
      taken_.insert(names_[i]);
    }
    for (std::size_t i = 0; i < reduction_.steps.size(); ++i) name(reduction_.steps[i]);
    return std::move(names_);
  }

  /// The names of the points that steps make. Requires run().
  std::vector<std::string> new_points() { return std::move(new_points_); }

 private:
  void name(const Step& step) {
    if (!step.makes.exists()) return;
    if (step.rule == RuleName::batteries) return name_battery(step);
    for (std::uint32_t i = 0; i < step.new_points; ++i) name_next_point();
    if (!step.adds.empty()) {
      for (std::size_t i = 0; i < step.adds.size(); ++i) name_rewritten(step, i);
      return;
    }
    History history = history_of(step);
    std::string telling = history.empty() ? std::string() : telling_name(history);
    if (telling.empty() || telling.size() > kLongestName || taken_.contains(telling))
      telling = next_letters();
    histories_[step.makes.index] = std::move(history);
    taken_.insert(telling);
    names_[step.makes.index] = std::move(telling);
  }

  /// A part of a star, delta or mesh: its history tells nothing.
  void name_rewritten(const Step& step, std::size_t at) {
    const PointId corner = step.adds[at].from;
    std::string name;
    if (step.formula == Formula::star_arm && corner.index < problem_.points.size()) {
      name = "R_" + problem_.point(corner);
    }
    if (name.empty() || name.size() > kLongestName || taken_.contains(name)) name = next_letters();
    taken_.insert(name);
    names_[step.makes.index + at] = std::move(name);
  }

  void name_next_point() {
    std::string name;
    do {
      name = "N" + std::to_string(++used_points_);
    } while (taken_.contains(name) || std::find(problem_.points.begin(), problem_.points.end(),
                                                name) != problem_.points.end());
    new_points_.push_back(std::move(name));
  }

  /// E1 and E2 make E12; others make Ea, Eb, ….
  void name_battery(const Step& step) {
    std::string name = "E";
    for (const PartId part : step.takes) {
      const std::string_view digits = digits_of(names_[part.index], 'E');
      if (digits.size() != 1) name = std::string(kLongestName, 'E');
      name += digits;
    }
    if (name.size() >= kLongestName || taken_.contains(name)) name = next_letters("E");
    taken_.insert(name);
    names_[step.makes.index] = std::move(name);
  }

  History history_of(const Step& step) const {
    History all;
    for (const PartId part : step.takes) {
      const History& one = histories_[part.index];
      if (one.empty() || all.size() + one.size() > kLongestHistory) return {};
      all.insert(all.end(), one.begin(), one.end());
    }
    std::sort(all.begin(), all.end());
    return all;
  }

  std::string telling_name(const History& history) const {
    bool all_numbered = true;
    bool all_short = true;
    for (const PartId part : history) {
      const std::string_view digits = digits_of(names_[part.index]);
      all_numbered = all_numbered && !digits.empty();
      all_short = all_short && digits.size() == 1;
    }
    if (!all_numbered && history.size() > kLongestMixedHistory) return {};
    std::string name = all_numbered ? "R" : "R_";
    for (const PartId part : history) {
      const std::string_view digits = digits_of(names_[part.index]);
      if (part != history.front() && !all_short) name += '_';
      name += digits.empty() ? std::string_view(names_[part.index]) : digits;
    }
    return name;
  }

  /// Ra, …, Rz, Raa, …: the next one that is free.
  std::string next_letters(const char* letter = "R") {
    std::string name;
    do {
      name = letter;
      std::string letters;
      for (std::size_t n = ++used_letters_; n > 0; n = (n - 1) / 26) {
        letters.insert(letters.begin(), static_cast<char>('a' + (n - 1) % 26));
      }
      name += letters;
    } while (taken_.contains(name));
    return name;
  }

  const Problem& problem_;
  const Reduction& reduction_;
  std::vector<std::string> names_;
  std::vector<History> histories_;
  std::unordered_set<std::string> taken_;
  std::size_t used_letters_ = 0;
  std::vector<std::string> new_points_;
  std::size_t used_points_ = 0;
};

}  // namespace

PartNames::PartNames(const Problem& problem, const Reduction& reduction) : problem_(problem) {
  Naming naming(problem, reduction);
  names_ = naming.run();
  new_points_ = naming.new_points();
}

PartNames::PartNames(const Problem& problem, std::vector<std::string> parts,
                     const std::vector<std::string>& points)
    : problem_(problem), names_(std::move(parts)) {
  const std::size_t of_file = std::min(problem.points.size(), points.size());
  new_points_.assign(points.begin() + static_cast<std::ptrdiff_t>(of_file), points.end());
}

const std::string& PartNames::of(PointId point) const {
  const std::size_t of_file = problem_.points.size();
  return point.index < of_file ? problem_.point(point) : new_points_.at(point.index - of_file);
}

std::vector<std::string> PartNames::of(std::span<const PointId> points) const {
  std::vector<std::string> names;
  names.reserve(points.size());
  for (const PointId point : points) names.push_back(of(point));
  return names;
}

}  // namespace ohmfold::views
