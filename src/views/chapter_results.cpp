// The results of a case in tables: every part, every point.
#include <algorithm>
#include <set>

#include "views/amounts.h"
#include "views/chapter.h"
#include "views/conditions.h"
#include "views/lettering.h"
#include "views/redraws.h"

namespace ohmfold::views {

namespace {

/// The longest value with symbols that a table shows.
constexpr std::size_t kMostInCell = 36;

class Results {
 public:
  Results(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
          Document& document)
      : scene_(scene), trace_(trace), options_(options), document_(document) {}

  void run() {
    // Without a source every entry would be zero.
    if (trace_.branches.empty() || trace_.kind == Kind::no_source) return;
    document_.heading(3, say("All parts and points"));
    if (options_.content == Content::solution) {
      add_annotated_figure(scene_, trace_, options_, document_);
    }
    add_parts();
    add_points();
    if (any_rounded_) {
      document_.paragraph(
          say("Where a table shows only a rounded value, the exact one stands in the working."));
    }
    add_parts_with_values();
    for (const Undetermined why : reasons_) {
      document_.paragraph(say("Not determined: ", why_undetermined(why), "."));
    }
  }

 private:
  /// Two narrow tables: values with symbols are wide.
  void add_symbolic_parts() {
    Table voltages, currents;
    voltages.columns = {
        {say("Part"), Align::left}, {say("R"), Align::left}, {say("V"), Align::left}};
    currents.columns = {
        {say("Part"), Align::left}, {say("I"), Align::left}, {say("P"), Align::left}};
    for (const BranchResult& branch : trace_.branches) {
      const Words name = say(scene_.problem.part(branch.part).name);
      voltages.rows.push_back({name, resistance(branch.part), cell(branch.voltage)});
      currents.rows.push_back({name, cell(branch.current), cell(branch.power)});
    }
    document_.table(std::move(voltages));
    document_.table(std::move(currents));
  }

  void add_parts() {
    if (has_symbolic_values(scene_.problem) && trace_.branches.size() <= kMostEntries) {
      add_symbolic_parts();
      return;
    }
    Table table;
    table.columns = {{say("Part"), Align::left},
                     {say("R"), Align::left},
                     {say("V"), Align::left},
                     {say("I"), Align::left},
                     {say("P"), Align::left}};
    const Selection selection = select(trace_.branches.size());
    for (std::size_t i = 0; i < trace_.branches.size(); ++i) {
      if (!selection.shows(i)) continue;
      const BranchResult& branch = trace_.branches[i];
      table.rows.push_back({say(scene_.problem.part(branch.part).name), resistance(branch.part),
                            cell(branch.voltage), cell(branch.current), cell(branch.power)});
      if (i + 1 == selection.first && selection.left_out() > 0) {
        table.rows.push_back({say("…"), {}, {}, {}, {}});
      }
    }
    document_.table(std::move(table));
    if (selection.left_out() > 0) {
      document_.paragraph(say(count_text(selection.left_out()), " parts are not listed here."));
    }
  }

  /// The same table with the values of the symbols put in, where the file gives all of them.
  void add_parts_with_values() {
    if (!has_symbolic_values(scene_.problem)) return;
    Table table;
    table.columns = {{say("Part"), Align::left},
                     {say("V"), Align::left},
                     {say("I"), Align::left},
                     {say("P"), Align::left}};
    for (const BranchResult& branch : trace_.branches) {
      const auto voltage = with_values(scene_.problem, branch.voltage);
      const auto current = with_values(scene_.problem, branch.current);
      const auto power = with_values(scene_.problem, branch.power);
      if (!voltage || !current || !power) return;
      table.rows.push_back({say(scene_.problem.part(branch.part).name), cell(*voltage),
                            cell(*current), cell(*power)});
    }
    if (table.rows.size() > kMostEntries) return;
    document_.paragraph(say("With ", given_symbols(scene_.problem), ":"));
    document_.table(std::move(table));
  }

  void add_points() {
    Table table;
    table.columns = {{say("Point"), Align::left}, {say("Potential"), Align::left}};
    const Selection selection = select(trace_.nodes.size());
    for (std::size_t i = 0; i < trace_.nodes.size(); ++i) {
      if (!selection.shows(i)) continue;
      const NodeResult& node = trace_.nodes[i];
      table.rows.push_back({say(scene_.words.point(node.point)), cell(node.potential)});
      if (i + 1 == selection.first && selection.left_out() > 0)
        table.rows.push_back({say("…"), {}});
    }
    if (!table.rows.empty()) document_.table(std::move(table));
  }

  Words cell(const Reading& reading) {
    if (!reading.value) {
      reasons_.insert(reading.why);
      return say("not determined");
    }
    const Quantity& quantity = *reading.value;
    if (quantity.number.is_symbolic()) {
      const Amount amount = scene_.amount(quantity, Form::exact);
      const bool fits = display_width(amount_text(amount, Letters::unicode)) <= kMostInCell;
      return fits ? say(amount) : say("see the working");
    }
    if (is_short(scene_.amount(quantity, Form::exact))) return scene_.value(quantity);
    any_rounded_ = any_rounded_ || decimal_beside(quantity, scene_.figures) != Beside::equal;
    return scene_.brief(quantity);
  }

  [[nodiscard]] Words resistance(PartId part) const {
    const Network& network = scene_.reduction.start;
    switch (network.kind(part)) {
      case ElementKind::resistor: {
        const Quantity quantity(network.resistance(part).lowest_terms(), Unit::ohm);
        return say(scene_.amount(quantity, Form::given));
      }
      case ElementKind::battery: {
        const Resistance& internal = network.battery(part).internal;
        if (internal.is_zero()) return say("battery");
        return say("battery, ", scene_.amount(internal, Form::given));
      }
      case ElementKind::current_source:
        return say("source");
      case ElementKind::port:
        return {};
      case ElementKind::wire:
        return say("wire");
      case ElementKind::closed_switch:
        return say("closed");
      case ElementKind::ammeter:
        return say("ammeter");
      case ElementKind::shorted:
        return say("wire");
      case ElementKind::open_switch:
        return say("open");
      case ElementKind::voltmeter:
        return say("voltmeter");
      case ElementKind::taken_out:
        return say("taken out");
      case ElementKind::switched_off:
        return say("gap");
    }
    return {};
  }

  const Scene& scene_;
  const CaseTrace& trace_;
  const OutlineOptions& options_;
  Document& document_;
  bool any_rounded_ = false;
  std::set<Undetermined> reasons_;
};

}  // namespace

void add_results(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                 Document& document) {
  Results(scene, trace, options, document).run();
}

}  // namespace ohmfold::views
