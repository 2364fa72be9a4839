// The way back: each step undone in reverse order, then what belongs to the original points.
#include <algorithm>

#include "views/amounts.h"
#include "views/chapter.h"
#include "views/reduction_chapter.h"
#include "views/return_lines.h"
#include "views/steps_asked.h"

namespace ohmfold::views {

namespace {

/// Of more lines in one group than this, the middle ones are left out.
constexpr std::size_t kMostLines = 60;

using Items = std::vector<const Return*>;

/// The returns of a trace, sorted by what they belong to.
struct Groups {
  Items source;                ///< the battery and the part or parts that are left
  std::vector<Items> by_step;  ///< by number of the step, from the last
  Items superposed, drives, wires, gaps, potentials, powers;
};

Groups group(const CaseTrace& trace) {
  Groups groups;
  for (const Return& item : trace.returns) {
    if (item.step != 0) {
      const bool same = !groups.by_step.empty() && groups.by_step.back().front()->step == item.step;
      if (!same) groups.by_step.emplace_back();
      groups.by_step.back().push_back(&item);
    } else if (item.subject == Subject::potential) {
      groups.potentials.push_back(&item);
    } else if (item.law == Law::power) {
      groups.powers.push_back(&item);
    } else if (item.law == Law::superposition) {
      groups.superposed.push_back(&item);
    } else if (item.step == 0 && item.subject == Subject::voltage &&
               trace.main.end.kind(item.part) == ElementKind::current_source) {
      groups.drives.push_back(&item);
    } else if (item.law == Law::voltage_loop ||
               (item.law == Law::not_determined && item.subject == Subject::voltage)) {
      groups.gaps.push_back(&item);
    } else if (item.part.exists() && is_wire(trace.main.end.kind(item.part))) {
      groups.wires.push_back(&item);
    } else {
      groups.source.push_back(&item);
    }
  }
  return groups;
}

class WayBack {
 public:
  WayBack(const Scene& scene, const CaseTrace& trace, Document& document)
      : scene_(scene), trace_(trace), document_(document), lines_(scene, trace) {}

  /// For a source alone: what follows from the original points in other ways is left out.
  void run_short() {
    with_headings_ = false;
    const Groups groups = group(trace_);
    document_.paragraph(say("So this is what flows:"));
    add_source(groups.source);
    add_undone(groups.by_step);
    if (groups.wires.empty()) return;
    const Items wires = in_order(groups.wires);
    document_.begin_step(say("Currents in wires"), asked_of_returns(scene_, wires));
    document_.paragraph(say("At one end of a wire, what comes in goes out:"));
    add_lines(wires, false);
    document_.end_step();
  }

  void run() {
    const Groups groups = group(trace_);
    for (const Return* item : groups.superposed) lines_.pass(*item);  // these stand in tables
    if (is_analysed()) {
      add_analysed(groups.source);
    } else if (trace_.shares.empty()) {
      add_source(groups.source);
    }
    add_undone(groups.by_step);
    add_rest("Currents in wires, closed switches and ammeters",
             "By the current law at one end: what comes in goes out.", in_order(groups.wires));
    add_rest("Potentials of the points",
             "Walk from point to point, adding or taking away the voltage of the part between.",
             new_potentials(groups.potentials));
    add_rest("Voltages of the sources of current",
             "The difference of the potentials at the two ends, first less second.", groups.drives);
    add_rest("Voltages across open places", "The difference of the potentials at the two ends.",
             groups.gaps);
    add_rest("Powers", power_words(), groups.powers);
  }

 private:
  [[nodiscard]] std::string power_words() const {
    const Network& start = trace_.main.start;
    std::string words = "Power is voltage times current";
    const bool batteries = !start.batteries().empty();
    if (!start.current_sources().empty()) {
      return words + ": what a part takes up, and what a " + (batteries ? "battery or a " : "") +
             "source delivers. A source of current delivers −V · I, since its voltage is counted "
             "first point less second.";
    }
    if (batteries) words += ": what a part takes up, and what a battery delivers";
    return words + ".";
  }

  [[nodiscard]] bool is_analysed() const {
    if (!trace_.shares.empty()) return false;
    return trace_.main.stop == Stop::bridge || trace_.main.stop == Stop::several_sources;
  }

  void heading(const Words& words) {
    if (with_headings_) document_.heading(3, words);
  }

  void add_source(const Items& items) {
    if (items.empty()) return;
    const PartId source = trace_.main.source;
    const bool battery = !source.exists() || trace_.main.end.kind(source) == ElementKind::battery;
    const Words title = say(battery ? "Current of the battery" : "Current of the source");
    heading(title);
    document_.begin_step(title, asked_of_returns(scene_, items));
    add_lines(items);
    document_.end_step();
  }

  /// What node-voltage analysis found of the parts that are left.
  void add_analysed(const Items& items) {
    if (items.empty()) return;
    for (const NodeResult& node : trace_.nodes) lines_.know(node);
    Items voltages, currents, sums;
    for (const Return* item : items) {
      if (item->subject == Subject::voltage) {
        voltages.push_back(item);
      } else {
        // A current that the current law gives can only follow those that it sums up.
        (item->law == Law::current_cut ? sums : currents).push_back(item);
      }
    }
    currents.insert(currents.end(), sums.begin(), sums.end());
    const Words title = say("Voltages and currents of what is left");
    document_.heading(3, title);
    const std::size_t from = document_.blocks.size();
    document_.paragraph(say("Each voltage is a difference of potentials:"));
    add_lines(voltages, false);
    document_.paragraph(say("Each current follows from its voltage, or from other currents:"));
    add_lines(currents);
    document_.cover(from, title, asked_of_returns(scene_, items));
    add_equivalent();
  }

  /// R_eq = V / I of the battery that feeds a bridge.
  void add_equivalent() {
    if (trace_.main.stop != Stop::bridge || !trace_.equivalent || !trace_.equivalent->value) return;
    const PartId source = trace_.main.source;
    if (source.index >= trace_.branches.size()) return;
    const BranchResult& branch = trace_.branches[source.index];
    Equation line{Symbols::equivalent(), {}, {}};
    const bool flows = branch.current.value && !branch.current.value->number.is_zero();
    if (flows && branch.voltage.value) {
      line.links.push_back({Relation::equal, quotient(scene_.symbols.voltage(source),
                                                      scene_.symbols.current(source))});
      Expression values =
          quotient(scene_.put_in(*branch.voltage.value), scene_.put_in(*branch.current.value));
      if (!has_unwritten_amount(values)) {
        line.links.push_back({Relation::equal, std::move(values)});
      }
    }
    append_value(line, *trace_.equivalent->value, scene_.figures);
    const Words title = say("Equivalent resistance");
    document_.heading(3, title);
    document_.begin_step(title, asked_of_terminals(scene_, *trace_.equivalent));
    document_.paragraph(say("Seen by battery ", scene_.words.part(source), ":"));
    document_.working({line});
    document_.end_step();
  }

  /// Wires one after the other, so that each current follows from those above it where it can.
  [[nodiscard]] Items in_order(Items items) const {
    if (items.size() > kMostLines) return items;
    Items sorted;
    ReturnLines found = lines_;
    while (!items.empty()) {
      auto next = std::find_if(items.begin(), items.end(),
                               [&](const Return* item) { return found.is_ready(*item); });
      if (next == items.end()) next = items.begin();
      found.pass(**next);
      sorted.push_back(*next);
      items.erase(next);
    }
    return sorted;
  }

  /// Without those that node-voltage analysis has shown already.
  [[nodiscard]] Items new_potentials(const Items& items) const {
    if (!is_analysed()) return items;
    const std::vector<PointId> shown = points_left(trace_.main);
    Items others;
    for (const Return* item : items) {
      if (!std::binary_search(shown.begin(), shown.end(), item->point)) others.push_back(item);
    }
    return others;
  }

  void add_undone(const std::vector<Items>& by_step) {
    const StepLog& steps = scene_.reduction.steps;
    const Selection selection = select(steps.size(), trace_.complete);
    bool any = false;
    bool any_left_out = false;
    for (const Items& items : by_step) {
      const Step step = steps[items.front()->step - 1];
      if (step.rule == RuleName::ideal_wire || step.rule == RuleName::gap) {
        for (const Return* item : items) lines_.pass(*item);
        continue;
      }
      if (!selection.shows(step.number - 1)) {
        for (const Return* item : items) lines_.pass(*item);
        any_left_out = true;
        continue;
      }
      if (!any) heading(say("The way back"));
      any = true;
      const Words undo = say("Undo step ", std::to_string(step.number));
      document_.begin_step(undo, asked_of_returns(scene_, items));
      document_.paragraph(say(undo, ": ", undone(step)));
      add_lines(items);
      document_.end_step();
    }
    if (any_left_out) {
      document_.paragraph(say("The steps that are not shown above are undone in the same way."));
    }
  }

  [[nodiscard]] Words undone(const Step& step) const {
    const Words parts = scene_.words.parts(step.takes);
    const bool two = step.takes.size() == 2;
    switch (step.rule) {
      case RuleName::series:
        return say(scene_.words.part(step.makes), " is ", parts, " in series, so the current of ",
                   scene_.words.part(step.makes), " runs through ", two ? "both." : "all of them.");
      case RuleName::parallel:
        return say(scene_.words.part(step.makes), " is ", parts, " in parallel, so the voltage of ",
                   scene_.words.part(step.makes), " lies across ", two ? "both." : "all of them.");
      case RuleName::dead_end:
        return say("no closed path runs through ", parts, ", so no current does.");
      case RuleName::shorted:
        return say("both ends of ", parts, " are on one point, so there is no voltage.");
      case RuleName::equal_potentials:
        return say(parts, two ? " lie" : " lies", " between points at the same potential.");
      case RuleName::delta_star:
        return say(scene_.words.made(step), " is the star of ", parts,
                   ", so the voltage of each is that along two arms.");
      case RuleName::star_delta:
      case RuleName::node_elimination:
        return say(scene_.words.made(step), " stand for ", parts,
                   ", so the current of each is what they carry from its outer end.");
      case RuleName::batteries:
        return say(scene_.words.part(step.makes), " stands for ", parts,
                   ", so its current runs through ", two ? "both." : "all of them.");
      case RuleName::gap:
      case RuleName::ideal_wire:
        return {};
    }
    return {};
  }

  void add_rest(std::string_view heading, std::string_view text, const Items& items) {
    if (items.empty()) return;
    document_.heading(3, say(heading));
    document_.begin_step(say(heading), asked_of_returns(scene_, items));
    if (!text.empty()) document_.paragraph(say(text));
    add_lines(items, false);  // the text above has named the law
    document_.end_step();
  }

  /// With `margins`, the law stands beside each line.
  void add_lines(const Items& items, bool margins = true) {
    const Selection selection = select(items.size(), items.size() <= kMostLines);
    std::vector<Equation> equations;
    for (std::size_t i = 0; i < items.size(); ++i) {
      lines_.pass(*items[i]);
      if (!items[i]->value.value || !selection.shows(i)) continue;
      equations.push_back(lines_.line(*items[i]));
      if (!margins) equations.back().note = {};
    }
    document_.working(std::move(equations));
    if (selection.left_out() > 0) {
      document_.paragraph(
          say(count_text(selection.left_out()), " lines of this kind are not shown here."));
    }
    for (std::size_t i = 0; i < items.size(); ++i) {
      if (items[i]->value.value || !selection.shows(i)) continue;
      const Return* item = items[i];
      document_.paragraph(say(Run(std::get<Symbol>(lines_.left_side(*item).node)),
                              " is not determined: ", why_undetermined(item->value.why), "."),
                          1);
    }
  }

  const Scene& scene_;
  const CaseTrace& trace_;
  Document& document_;
  ReturnLines lines_;
  bool with_headings_ = true;
};

}  // namespace

void add_short_way_back(const Scene& scene, const CaseTrace& trace, Document& document) {
  WayBack(scene, trace, document).run_short();
}

void add_way_back(const Scene& scene, const CaseTrace& trace, Document& document) {
  WayBack(scene, trace, document).run();
}

}  // namespace ohmfold::views
