// Known errors of structure in words: what is in the circuit, and what it is.
#include "views/error_words.h"

namespace ohmfold::views {

ErrorWords shorted_part_counted(const Diagnosed& d) {
  return {.cause = say(d.part(0), " is counted, though both its ends are on ", d.point(0)),
          .nudge = say("Is there an easier way for the current past one of these parts?"),
          .point = say("Look at the two ends of ", d.part(0), ": does a plain wire join them?"),
          .tell = say("Both ends of ", d.part(0), " are on ", d.point(0),
                      ", so there is no voltage across it and no current through it: leave it out.",
                      d.so())};
}

ErrorWords dead_end_counted(const Diagnosed& d) {
  return {
      .cause = say(d.part(0), " is counted, though no closed path runs through it"),
      .nudge = say("Can the current come back from each of these parts?"),
      .point = say("Follow the current on through ", d.part(0), ": where could it go from there?"),
      .tell = say("No closed path through a source runs through ", d.part(0),
                  ", so it carries no current: leave it out.", d.so())};
}

ErrorWords gap_taken_for_wire(const Diagnosed& d) {
  return {
      .cause = say(d.described(0), " is taken for a wire"),
      .nudge = say("Is there a closed path everywhere that the current is thought to run?"),
      .point = say("Look at ", d.described(0), ": does it join its two points?"),
      .tell = say(d.described(0), " joins nothing, so no current runs there: leave it out.", d.so())
                  .capitalised()};
}

ErrorWords switch_taken_for_gap(const Diagnosed& d) {
  return {.cause = say(d.described(0), " is taken for a gap"),
          .nudge = say("What does a closed switch, or a plain wire, do to its two points?"),
          .point = say("Look at ", d.described(0), ": can current pass there?"),
          .tell = say(d.described(0), " is as good as a plain wire, so its two ends are one point.",
                      d.so())
                      .capitalised()};
}

ErrorWords meter_taken_for_other(const Diagnosed& d) {
  const bool ammeter = d.line.words.words.is_kind(d.part_id(0), ElementKind::ammeter);
  const std::string kind = ammeter ? "ammeter" : "voltmeter";
  return {.cause = say(d.described(0), " is taken for a ", ammeter ? "gap" : "wire"),
          .nudge = say("What resistance has an ideal ", kind, "?"),
          .point = say("Look at ", d.described(0), ": does current pass through it, or not?"),
          .tell = say(ammeter ? "An ideal ammeter is as good as a plain wire, so the two ends of "
                              : "An ideal voltmeter lets no current through, so leave out ",
                      d.part(0), ammeter ? " are one point." : ".", d.so())};
}

ErrorWords other_two_points(const Diagnosed& d) {
  return {.cause = say("the resistance is taken between ", d.name_of_point(0), " and ",
                       d.name_of_point(1)),
          .nudge = say("Between which two points is the resistance asked for?"),
          .point = say("Look at the points of this line: are they ", d.name_of_point(0), " and ",
                       d.name_of_point(1), ", or two others?"),
          .tell = say("The resistance between ", d.name_of_point(2), " and ", d.name_of_point(3),
                      " is asked for, not that between ", d.name_of_point(0), " and ",
                      d.name_of_point(1), ".", d.so())};
}

ErrorWords part_forgotten(const Diagnosed& d) {
  return {
      .cause = say(d.part(0), " is left out"),
      .nudge = say("Is every part of the circuit in this number?"),
      .point = say("Look at ", d.part(0),
                   ": between which points does it lie, and how does it come into this number?"),
      .tell = say(d.part(0), " carries current too, so it belongs in this number.", d.so())
                  .capitalised()};
}

ErrorWords part_taken_for_wire(const Diagnosed& d) {
  return {
      .cause = say(d.part(0), " is taken for a plain wire"),
      .nudge = say("Is every part of the circuit in this number?"),
      .point = say("Look at ", d.part(0), ": how does its resistance come into this number?"),
      .tell =
          say(d.part(0),
              " has a resistance of its own and is no plain wire, so it belongs in this number.",
              d.so())
              .capitalised()};
}

ErrorWords shorted_part_carries(const Diagnosed& d) {
  return {.cause = say(d.part(0), " is given a voltage, though both its ends are on ", d.point(0)),
          .nudge = say("What is the voltage between two ends that a plain wire joins?"),
          .point = say("Look at the two ends of ", d.part(0), ": on which point is each of them?"),
          .tell = say("Both ends of ", d.part(0), " are on ", d.point(0),
                      ", so there is no voltage across it and no current through it.")};
}

ErrorWords no_voltage_across_gap(const Diagnosed& d) {
  return {
      .cause = say("no current through ", d.part(0), " is taken for no voltage across it"),
      .nudge = say("Does no current always mean no voltage?"),
      .point = say("Find the potential on each side of ", d.described(0), ": are they equal?"),
      .tell = say("Without a current, the parts that lead to ", d.part(0),
                  " take up no voltage, so what is there lies across ", d.part(0), ".", d.so())};
}

ErrorWords dead_end_carries(const Diagnosed& d) {
  return {
      .cause = say(d.part(0), " is given a current, though no closed path runs through it"),
      .nudge = say("Can charge that goes in there come out again?"),
      .point = say("Follow the current on through ", d.part(0), ": where could it go from there?"),
      .tell = say("No closed path through a source runs through ", d.part(0),
                  ", so there is no current in it and no voltage across it.")};
}

ErrorWords internal_left_out(const Diagnosed& d) {
  return {.cause = say("the internal resistance of ", d.described(0), " is left out"),
          .nudge = say("Is the battery an ideal one?"),
          .point = say("Look at ", d.described(0),
                       ": what does the problem say about it besides its voltage?"),
          .tell = say(d.described(0),
                      " has an internal resistance, in series with all that it feeds.", d.so())
                      .capitalised()};
}

}  // namespace ohmfold::views
