// One step, by conductances and cuts.
#include "check/step.h"

#include <algorithm>

#include "check/battery_step.h"
#include "check/elimination.h"
#include "check/excerpt.h"
#include "check/rationals.h"
#include "check/report.h"
#include "check/separation.h"
#include "check/step_conductance.h"
#include "check/step_potentials.h"
#include "check/step_replacement.h"

namespace ohmfold::check {
namespace {

StepFinding failed(std::string detail) {
  return {false, std::move(detail)};
}

bool as_seen(const Step& step) {
  return step.scope == Scope::as_seen_by_the_source;
}

StepFinding check_merges(const Network& before, const Excerpt& excerpt, const Step& step) {
  if (as_seen(step)) return check_joined(before, step);
  DisjointSets wired = excerpt.wired();
  std::optional<std::uint32_t> first;
  for (const PointId point : step.merges) {
    const auto number = excerpt.number_of(point);
    if (!number) return failed(name_of(point) + " is merged, but no part taken ends there");
    if (!first) first = number;
    if (!wired.joined(*first, *number)) {
      return failed(name_of(point) + " is merged with " + name_of(excerpt.point(*first)) +
                    ", but no wire taken joins them");
    }
  }
  return {};
}

StepFinding check_sources(const Network& before, const Excerpt& excerpt) {
  for (const Excerpt::Part& part : excerpt.parts()) {
    if (part.kind == ElementKind::port) return failed(name_of(part.id) + " is a port, and taken");
    if (part.kind == ElementKind::current_source && !before.driven_current(part.id).is_zero()) {
      return failed(name_of(part.id) + " drives a current, and is taken");
    }
  }
  const PartId battery = excerpt.driving_battery();
  if (!battery.exists()) return {};
  return failed(name_of(battery) + " is a battery on a closed path of the parts taken");
}

// Condition 4: the pieces and the components of the rest form no closed path.
StepFinding check_links(const Network& before, const Excerpt& excerpt,
                        const std::vector<Excerpt::Piece>& links, const Step& step) {
  std::vector<std::vector<PointId>> groups;  // one for each terminal
  std::vector<std::uint32_t> group_of(excerpt.point_count(), PartId::kNone);
  if (!step.merges.empty()) {
    // Points that become one are one way through the rest, whether or not a link ends there.
    const PointId first = *std::min_element(step.merges.begin(), step.merges.end());
    group_of[*excerpt.number_of(first)] = 0;
    groups.emplace_back(step.merges.begin(), step.merges.end());
  }
  for (const Excerpt::Piece& piece : links) {
    for (const std::uint32_t terminal : piece.terminals) {
      if (group_of[terminal] != PartId::kNone) continue;
      group_of[terminal] = static_cast<std::uint32_t>(groups.size());
      groups.push_back({excerpt.point(terminal)});
    }
  }
  const std::vector<std::uint32_t> component = separate(before, step.takes, groups);
  DisjointSets paths(groups.size() + links.size());
  for (std::size_t i = 0; i < links.size(); ++i) {
    for (const std::uint32_t terminal : links[i].terminals) {
      const std::uint32_t side = component[group_of[terminal]];
      if (paths.join(side, static_cast<std::uint32_t>(groups.size() + i))) continue;
      return failed("what is taken conducts to " + name_of(excerpt.point(terminal)) +
                    " on a closed path with the rest, and nothing takes its place");
    }
  }
  return {};
}

// The two terminals that the part made has to replace, where it has two.
std::optional<std::array<std::uint32_t, 2>> span_of(const Excerpt& excerpt, const NewPart& made) {
  const auto from = excerpt.number_of(made.from);
  const auto to = excerpt.number_of(made.to);
  if (!from || !to || *from == *to) return std::nullopt;
  if (!excerpt.is_boundary(*from) || !excerpt.is_boundary(*to)) return std::nullopt;
  return std::array{std::min(*from, *to), std::max(*from, *to)};
}

// The structure that condition 3 asks for.
StepFinding check_replaced(const Excerpt& excerpt, const std::vector<Excerpt::Piece>& links,
                           const NewPart& made) {
  for (const PointId end : {made.from, made.to}) {
    if (!excerpt.number_of(end)) {
      return failed(name_of(end) + " is an end of the part made, but of no part taken");
    }
  }
  const auto span = span_of(excerpt, made);
  if (links.empty()) {
    if (!span) return {};
    return failed("the part made conducts between " + name_of(made.from) + " and " +
                  name_of(made.to) + ", which the parts taken did not");
  }
  const Excerpt::Piece& piece = links.front();
  if (piece.has_source) return failed("a source is taken together with parts that are combined");
  if (links.size() > 1 || piece.terminals.size() > 2 || piece.wire_between) {
    return failed("the parts taken conduct between more than two points, or without resistance");
  }
  if (!span || piece.terminals != std::vector<std::uint32_t>(span->begin(), span->end())) {
    return failed("the parts taken conduct between " + name_of(excerpt.point(piece.terminals[0])) +
                  " and " + name_of(excerpt.point(piece.terminals[1])) +
                  ", the part made does not");
  }
  return {};
}

}  // namespace

StepFinding check_structure(const Network& before, const Step& step,
                            const std::optional<NewPart>& made) {
  const std::string fault = fault_in_parts(before, step.takes);
  if (!fault.empty()) return failed(fault);
  const Excerpt excerpt(before, step.takes);
  for (const StepFinding& finding :
       {check_merges(before, excerpt, step), check_sources(before, excerpt)}) {
    if (!finding.holds) return finding;
  }
  if (as_seen(step)) return check_equal(before, excerpt, step, made);
  if (!step.adds.empty()) return check_several(before, excerpt, step);
  std::vector<Excerpt::Piece> links = excerpt.pieces(step.merges);
  std::erase_if(links, [](const Excerpt::Piece& piece) { return piece.terminals.size() < 2; });
  if (made) return check_replaced(excerpt, links, *made);
  if (links.empty()) return {};
  return check_links(before, excerpt, links, step);
}

StepFinding check_step(const Network& before, const Step& step,
                       const std::optional<NewPart>& made) {
  if (is_battery_step(step)) return check_battery_step(before, step);
  StepFinding finding = check_structure(before, step, made);
  if (!finding.holds) return finding;
  const Rationals field;
  const auto resistance_of = [&](PartId part) { return Rationals::from(before.resistance(part)); };
  if (!finding.equal.empty()) return check_potentials(field, before, finding.equal, resistance_of);
  if (!step.adds.empty()) return check_replacement(field, before, step, resistance_of);
  return made ? check_conductance(field, before, step, *made) : finding;
}

}  // namespace ohmfold::check
