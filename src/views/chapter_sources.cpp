// Superposition: each source alone with its own reduction and way back, then the sums in tables.
#include <algorithm>

#include "views/amounts.h"
#include "views/plan.h"
#include "views/reduction_chapter.h"
#include "views/steps_asked.h"

namespace ohmfold::views {

namespace {

bool has_source(const Share& share, PartId part) {
  return std::find(share.sources.begin(), share.sources.end(), part) != share.sources.end();
}

Words names_of(const Scene& scene, const Share& share) {
  return scene.words.parts(share.sources);
}

/// "E2 is replaced by a wire", for each source that does not stay.
Words replaced_words(const Scene& scene, const Share& share) {
  const Network& together = scene.reduction.start;
  const Network& alone = share.alone.main.start;
  std::vector<Words> clauses;
  for (std::uint32_t i = 0; i < together.part_count(); ++i) {
    const PartId part{i};
    if (!is_source(together.kind(part)) || has_source(share, part)) continue;
    if (alone.kind(part) == ElementKind::resistor) {
      const Quantity internal(together.battery(part).internal);
      clauses.push_back(say("its internal resistance of ", scene.brief(internal),
                            " stands in place of ", scene.words.part(part)));
    } else {
      clauses.push_back(say(alone.kind(part) == ElementKind::wire ? "a wire" : "a gap",
                            " stands in place of ", scene.words.part(part)));
    }
  }
  return listed(clauses);
}

void add_share(const Scene& scene, const Share& share, const OutlineOptions& options,
               Document& document) {
  const Scene alone(scene.problem, share.alone.main, scene.figures);
  const Words title = say(names_of(scene, share), " alone");
  document.heading(3, title);
  document.paragraph(say(sentence(replaced_words(scene, share)), " ", plan(alone)));
  add_reduction(alone, share.alone, options, document);
  const std::size_t from = document.blocks.size();
  if (share.alone.main.stop == Stop::open) {
    document.paragraph(say("So ", names_of(scene, share), " alone drives no current."));
    document.cover(from, title);
    return;
  }
  add_resistance(alone, Symbols::equivalent(), *share.alone.equivalent, document);
  document.cover(from, title, asked_of_terminals(alone, *share.alone.equivalent));
  add_short_way_back(alone, share.alone, document);
}

/// What one source alone does to a part, with the sign that the part has among all sources.
Reading partial(const Scene& scene, const Share& share, PartId part, Subject subject) {
  return subject == Subject::current ? share.alone.branches.at(part.index).current
                                     : voltage_in_share(scene.reduction.start, share, part);
}

Words cell(const Scene& scene, const Reading& reading) {
  return reading.value ? scene.brief(*reading.value) : say("not determined");
}

/// A battery on no closed path is in no share: it drives nothing.
bool is_summed(const Scene& scene, const CaseTrace& trace, PartId part, Subject subject) {
  const ElementKind kind = scene.reduction.start.kind(part);
  if (is_gap(kind) || (subject == Subject::voltage && is_wire(kind))) return false;
  return kind != ElementKind::battery ||
         std::any_of(trace.shares.begin(), trace.shares.end(),
                     [&](const Share& share) { return has_source(share, part); });
}

void add_sums(const Scene& scene, const CaseTrace& trace, Subject subject, Document& document) {
  const bool current = subject == Subject::current;
  std::vector<PartId> parts;
  for (const BranchResult& branch : trace.branches) {
    if (is_summed(scene, trace, branch.part, subject)) parts.push_back(branch.part);
  }
  Table table;
  table.columns.push_back({say(current ? "Current" : "Voltage"), Align::left});
  for (const Share& share : trace.shares) {
    table.columns.push_back({say(names_of(scene, share), " alone"), Align::left});
  }
  table.columns.push_back({say("together"), Align::left});
  const Selection selection = select(parts.size());
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (!selection.shows(i)) continue;
    const PartId part = parts[i];
    const BranchResult& branch = trace.branches[part.index];
    const Expression symbol = current ? scene.symbols.current(part) : scene.symbols.voltage(part);
    std::vector<Words> row{say(formula_words(symbol))};
    for (const Share& share : trace.shares) {
      row.push_back(cell(scene, partial(scene, share, part, subject)));
    }
    row.push_back(cell(scene, current ? branch.current : branch.voltage));
    table.rows.push_back(std::move(row));
  }
  document.table(std::move(table));
  if (selection.left_out() > 0) {
    document.paragraph(say(count_text(selection.left_out()), " parts are not listed here."));
  }
}

}  // namespace

void add_superposition(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                       Document& document) {
  const Network& start = scene.reduction.start;
  const bool batteries = !start.batteries().empty();
  const bool currents = !start.current_sources().empty();
  document.paragraph(say(
      "More than one source feeds the circuit. Take each source alone: in place of a",
      batteries ? " battery put its internal resistance, that of an ideal one being a wire" : "",
      batteries && currents ? ", and in place of a" : "",
      currents ? " source of current a gap" : "",
      ". Then add the currents and the voltages with their signs (superposition)."));
  for (const Share& share : trace.shares) add_share(scene, share, options, document);
  const Words together = say(trace.shares.size() == 2 ? "Both together" : "All together");
  document.heading(3, together);
  document.paragraph(
      say("Each current is the sum of the currents that the sources drive alone, and so is each "
          "voltage. A minus sign means against the direction in which the part counts."));
  const std::size_t from = document.blocks.size();
  add_sums(scene, trace, Subject::current, document);
  add_sums(scene, trace, Subject::voltage, document);
  document.paragraph(
      say("Powers do not add like this, since a power is a product: they follow from the currents "
          "and voltages together."));
  document.cover(from, together);
}

}  // namespace ohmfold::views
