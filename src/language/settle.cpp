// What can be judged only when the whole circuit file is known: names, points, the file as a whole.

#include <algorithm>
#include <unordered_map>
#include <utility>

#include "language/draft.h"
#include "language/nearest.h"

namespace ohmfold {
namespace {

/// Enough names to look for the one that was meant among them.
constexpr std::size_t kMostNames = 10'000;

std::string nearest_known(const Draft& draft, std::string_view word, const NameTable& known,
                          std::string_view those) {
  if (draft.findings.is_full()) return {};
  std::vector<std::string_view> names;
  for (const std::string_view name : known.names()) {
    if (names.size() == kMostNames) break;
    if (!name.empty()) names.push_back(name);
  }
  return suggestion(word, names, those);
}

void settle_ground(Draft& draft) {
  if (draft.ground) draft.problem.ground = find_point(draft, *draft.ground);
}

void settle_places(Draft& draft) {
  std::unordered_map<std::string_view, Span> placed;
  for (DraftPlace& place : draft.places) {
    const auto [entry, is_new] = placed.try_emplace(place.point.text, place.point.where);
    if (!is_new) {
      draft.report(DiagnosticKind::given_twice, Severity::error, place.point.where,
                   {"the place of '" + std::string(place.point.text) + "'"}, {}, entry->second);
      continue;
    }
    const std::optional<PointId> point = find_point(draft, place.point);
    if (!point) continue;
    draft.problem.places.push_back({*point, std::move(place.x), std::move(place.y)});
  }
}

/// The points that questions name: a person who asks about a loose end has seen it.
std::vector<bool> asked_about(const Draft& draft) {
  std::vector<bool> asked(draft.problem.points.size());
  const auto mark = [&](const DraftQuestion& question) {
    for (const Token& name : {question.first, question.second}) {
      const std::optional<std::uint32_t> point = draft.points.find(name.text);
      if (asks_of_points(question.asked) && point) asked[*point] = true;
    }
  };
  for (const DraftQuestion& question : draft.questions) mark(question);
  for (const DraftGiven& given : draft.givens) mark(given.question);
  return asked;
}

void warn_of_lonely_points(Draft& draft) {
  const std::vector<bool> asked = asked_about(draft);
  for (std::size_t i = 0; i < draft.uses.size(); ++i) {
    const PointUse& use = draft.uses[i];
    if (use.ends > 1 || asked[i]) continue;
    draft.report(DiagnosticKind::lonely_point, Severity::warning, use.where,
                 {with_kind(draft.problem.part(use.part)), draft.problem.points[i]});
  }
}

}  // namespace

void Draft::report(DiagnosticKind kind, Severity severity, const Span& where,
                   std::vector<std::string> arguments, std::string remedy,
                   std::optional<Span> other) {
  findings.add({.kind = kind,
                .severity = severity,
                .where = where,
                .arguments = std::move(arguments),
                .remedy = std::move(remedy),
                .other = other});
}

std::optional<PartId> find_part(Draft& draft, const Token& name) {
  if (const auto known = draft.parts.find(name.text)) return PartId{*known};
  if (draft.broken.contains(name.text)) return std::nullopt;
  draft.report(DiagnosticKind::unknown_part, Severity::error, name.where, {std::string(name.text)},
               nearest_known(draft, name.text, draft.parts, "parts"));
  return std::nullopt;
}

std::optional<PointId> find_point(Draft& draft, const Token& name) {
  if (const auto known = draft.points.find(name.text)) return PointId{*known};
  if (draft.broken.contains(name.text)) return std::nullopt;
  draft.report(DiagnosticKind::unknown_point, Severity::error, name.where, {std::string(name.text)},
               nearest_known(draft, name.text, draft.points, "points"));
  return std::nullopt;
}

void settle_points(Draft& draft) {
  settle_ground(draft);
  settle_places(draft);
}

void settle_whole(Draft& draft) {
  // With an error in the file, a missing part is likely to be on the line with the error.
  if (draft.findings.has_error()) return;
  const std::vector<Part>& parts = draft.problem.parts;
  if (parts.empty()) {
    draft.report(DiagnosticKind::no_parts, Severity::error, {}, {});
    return;
  }
  warn_of_lonely_points(draft);
  const bool has_source = std::any_of(parts.begin(), parts.end(),
                                      [](const Part& part) { return is_source(part.kind); });
  if (!has_source && draft.questions.empty()) {
    draft.report(DiagnosticKind::nothing_to_find, Severity::warning, {}, {});
  }
}

}  // namespace ohmfold
