// What each claim of a work is about, told by the parts and points of the file.
#include <algorithm>
#include <map>
#include <utility>

#include "ohmfold/class_report.h"

namespace ohmfold {
namespace {

/// Follows the parts that the claims make, so that a part of the person's own is known by the parts
/// of the file that are in it.
class TopicFinder {
 public:
  explicit TopicFinder(const Problem& problem) : problem_(problem) {}

  [[nodiscard]] std::optional<Topic> topic(const Claim& claim, const Judgement& line) {
    Topic about;
    about.case_index = line.case_index;
    const bool told =
        std::visit([&](const auto& says) { return tell(says, line, about); }, claim.says);
    if (std::holds_alternative<CaseClaim>(claim.says)) return std::nullopt;
    if (told) return about;
    Topic unclear;
    unclear.case_index = line.case_index;
    unclear.name = line.name;
    return unclear;
  }

  /// What `line` makes is known to the lines that follow.
  void remember(const Judgement& line) {
    if (line.makes.exists()) made_[{line.case_index, line.makes}] = line.leaves;
  }

 private:
  bool tell(const CombineClaim&, const Judgement& line, Topic& about) const {
    about.kind = Topic::Kind::combination;
    about.parts = line.leaves;
    std::ranges::sort(about.parts);
    return !about.parts.empty();
  }

  bool tell(const RewriteClaim& claim, const Judgement& line, Topic& about) const {
    about.kind = Topic::Kind::rewriting;
    about.rule = claim.rule;
    return std::ranges::all_of(line.operands,
                               [&](PartId part) { return add_leaves(part, line, about); }) &&
           !about.parts.empty();
  }

  bool tell(const ValueClaim& claim, const Judgement& line, Topic& about) const {
    about.kind = Topic::Kind::quantity;
    about.claimed = line.claimed.value_or(claim.claimed);
    if (about.claimed == Claimed::whole_resistance) return true;
    if (line.of.exists()) return add_leaves(line.of, line, about);
    return set_points(line, about);
  }

  bool tell(const SamePotentialClaim&, const Judgement& line, Topic& about) const {
    about.kind = Topic::Kind::same_potential;
    return set_points(line, about) && about.to.exists();
  }

  bool tell(const NoCurrentClaim&, const Judgement& line, Topic& about) const {
    about.kind = Topic::Kind::no_current;
    const PartId part = line.of.exists() || line.operands.empty() ? line.of : line.operands[0];
    return part.exists() && add_leaves(part, line, about);
  }

  static bool tell(const NoPairClaim&, const Judgement&, Topic& about) {
    about.kind = Topic::Kind::no_pair;
    return true;
  }

  static bool tell(const CaseClaim&, const Judgement&, const Topic&) { return true; }

  bool add_leaves(PartId part, const Judgement& line, Topic& about) const {
    if (part.index < problem_.parts.size()) {
      about.parts.push_back(part);
    } else {
      const auto made = made_.find({line.case_index, part});
      if (made == made_.end()) return false;
      about.parts.insert(about.parts.end(), made->second.begin(), made->second.end());
    }
    std::ranges::sort(about.parts);
    return true;
  }

  /// Points that a person's own star has brought in are no point of the file.
  bool set_points(const Judgement& line, Topic& about) const {
    about.at = line.at;
    about.to = line.to;
    if (about.to.exists() && about.to < about.at) std::swap(about.at, about.to);
    const auto is_of_file = [&](PointId point) { return point.index < problem_.points.size(); };
    return is_of_file(about.at) && (!about.to.exists() || is_of_file(about.to));
  }

  const Problem& problem_;
  std::map<std::pair<std::size_t, PartId>, std::vector<PartId>> made_;
};

}  // namespace

std::vector<std::optional<Topic>> topics_of(const Exercise& exercise, const Work& work,
                                            const WorkJudgement& judged) {
  TopicFinder finder(*exercise.problem);
  for (const Judgement& line : judged.lines) finder.remember(line);
  std::vector<std::optional<Topic>> topics;
  topics.reserve(judged.lines.size());
  for (const Judgement& line : judged.lines) {
    topics.push_back(finder.topic(work.claims.at(line.claim), line));
  }
  return topics;
}

}  // namespace ohmfold
