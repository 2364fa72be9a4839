// What was checked, with some of the sums written out.
#include <algorithm>

#include "views/amounts.h"
#include "views/another_way.h"
#include "views/chapter.h"
#include "views/check_sums.h"

namespace ohmfold::views {

namespace {

constexpr std::size_t kMostSums = 2;

class Checks {
 public:
  Checks(const Scene& scene, const CaseTrace& trace, Document& document)
      : scene_(scene), trace_(trace), document_(document) {}

  void run() {
    if (trace_.checks.empty()) return;
    document_.heading(3, say("Check"));
    // The steps that a reader of a superposition sees are those of each source alone.
    if (trace_.shares.empty()) add_law(CheckLaw::step);
    // Where nothing flows, the laws hold for zeros: not worth a line.
    if (trace_.kind != Kind::no_source) {
      for (const CheckLaw law : {CheckLaw::current, CheckLaw::voltage, CheckLaw::ohm,
                                 CheckLaw::power, CheckLaw::elimination, CheckLaw::node_voltage}) {
        add_law(law);
      }
    }
    add_law(CheckLaw::resistance);
    add_law(CheckLaw::short_circuit);
    if (const auto way = another_way(scene_, trace_)) {
      document_.entry("", way->rule);
      document_.working({way->line});
    }
    if (!trace_.shares.empty()) {
      document_.entry(
          "", say("The circuit with each source alone was checked in the same way, step by step."));
    }
    if (modulo_) {
      document_.paragraph(
          say("Where primes are named, the exact numbers are too long for a check digit by digit: "
              "it was made modulo random primes of 61 bits instead. An error would pass each of "
              "them with a chance of less than one in a million million."));
    }
  }

 private:
  void add_law(CheckLaw law) {
    std::vector<const Check*> checks;
    std::size_t places = 0;
    int primes = 0;
    for (const Check& check : trace_.checks) {
      if (check.law != law) continue;
      if (!check.holds) {
        document_.entry("", say("Does not hold: ", check_title(law), ". ", check.detail));
        return;
      }
      checks.push_back(&check);
      places += check.places;
      primes = std::max(primes, check.primes);
    }
    if (checks.empty() || places == 0) return;
    Words words = statement(law, checks, places);
    if (primes > 0) words.add(say(" (Modulo ", std::to_string(primes), " primes.)"));
    modulo_ = modulo_ || primes > 0;
    document_.entry("", words);
    document_.working(sums(law, checks));
  }

  // Does a step hold only as seen by the source?
  [[nodiscard]] bool rests_on_potentials() const {
    const auto rests = [](const Reduction& reduction) {
      for (std::size_t i = 0; i < reduction.steps.size(); ++i) {
        if (reduction.steps[i].scope == Scope::as_seen_by_the_source) return true;
      }
      return false;
    };
    return rests(trace_.main) || std::any_of(trace_.further.begin(), trace_.further.end(), rests);
  }

  [[nodiscard]] Words statement(CheckLaw law, const std::vector<const Check*>& checks,
                                std::size_t places) const {
    switch (law) {
      case CheckLaw::step:
        return say("Steps: ",
                   places == 1 ? "the step leaves" : "all " + count_text(places) + " steps leave",
                   " the circuit the same as seen from the points that stay",
                   rests_on_potentials()
                       ? ", or, where potentials are equal, as seen by its source."
                       : ".");
      case CheckLaw::current:
        return say("Current law: what comes in goes out, at ", at(checks, places), ".");
      case CheckLaw::voltage:
        return say("Voltage law: the voltages sum to zero round ", loops(checks),
                   ", and the potentials agree with them.");
      case CheckLaw::ohm:
        return say(
            "Ohm's law: V = I · R for a resistor, and likewise each part's own law, holds ",
            places == 1 ? "for the only part." : "for all " + count_text(places) + " parts.");
      case CheckLaw::power:
        return say("Power: what is delivered is what is taken up.");
      case CheckLaw::node_voltage:
        return say(
            "An independent solution by node-voltage analysis gives the same currents and "
            "voltages.");
      case CheckLaw::resistance:
        return say("Node-voltage analysis gives the same ",
                   checks.size() == 1 ? "resistance." : "resistances.");
      case CheckLaw::elimination:
        return say(
            "Elimination: each equation follows from those before it, and the potentials "
            "satisfy it.");
      case CheckLaw::short_circuit:
        return say("Node-voltage analysis with a wire put in gives the same short-circuit ",
                   checks.size() == 1 ? "current." : "currents.");
    }
    return {};
  }

  [[nodiscard]] Words at(const std::vector<const Check*>& checks, std::size_t places) const {
    std::vector<Words> points;
    for (const Check* check : checks) {
      if (!check->at.exists()) return say("all ", count_text(places), " points");
      points.push_back(say(scene_.words.point(check->at)));
    }
    return points.size() > kMostTerms ? say("all ", count_text(places), " points") : listed(points);
  }

  /// One entry may stand for all loops, or for the potentials: neither names a loop.
  static Words loops(const std::vector<const Check*>& checks) {
    const auto count = std::count_if(checks.begin(), checks.end(),
                                     [](const Check* check) { return !check->loop.empty(); });
    if (count == 0) return say("every loop");
    if (count == 1) return say("the loop");
    return say("each of ", count_text(static_cast<std::size_t>(count)), " independent loops");
  }

  [[nodiscard]] std::vector<Equation> sums(CheckLaw law,
                                           const std::vector<const Check*>& checks) const {
    std::vector<Equation> lines;
    for (const Check* check : checks) {
      if (lines.size() == kMostSums) break;
      std::optional<Equation> line;
      if (law == CheckLaw::current && check->at.exists()) {
        line = current_sum(scene_, trace_, check->at);
      } else if (law == CheckLaw::voltage && lines.empty()) {
        line = loop_sum(scene_, trace_, check->loop);
      } else if (law == CheckLaw::power && lines.empty()) {
        line = power_sum(scene_, trace_);
      }
      if (line) lines.push_back(std::move(*line));
    }
    return lines;
  }

  const Scene& scene_;
  const CaseTrace& trace_;
  Document& document_;
  bool modulo_ = false;
};

}  // namespace

void add_checks(const Scene& scene, const CaseTrace& trace, Document& document) {
  Checks(scene, trace, document).run();
}

}  // namespace ohmfold::views
