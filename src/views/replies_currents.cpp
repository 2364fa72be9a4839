// Known errors of the way back in words: currents, and Ohm's law.
#include "views/error_words.h"

namespace ohmfold::views {

ErrorWords split_equally(const Diagnosed& d) {
  return {
      .cause = say("the current is shared out equally between ", d.part(0), " and ", d.others()),
      .nudge = say("Are the branches alike?"),
      .point = say("Compare ", d.part(0), " with ", d.others(), ": which is the easier path?"),
      .tell = say(d.part(0), " and ", d.others(),
                  " have the same voltage, so I = V / R for each of them.", d.so())
                  .capitalised()};
}

ErrorWords split_in_proportion(const Diagnosed& d) {
  return {
      .cause = say(d.part(0), " and ", d.others(),
                   " share the current in the ratio of their resistances"),
      .nudge = say("Which path takes more of the current: the easier one, or the harder one?"),
      .point = say("Compare ", d.part(0), " with ", d.others(), ": which should carry more?"),
      .tell = say(
          "At the same voltage the smaller resistance carries the larger current: I = V / R for ",
          d.part(0), ".", d.so())};
}

ErrorWords two_branch_rule_on_more(const Diagnosed& d) {
  return {.cause = say("the rule for two branches is used for ", d.part(0), " beside ", d.others()),
          .nudge = say("For how many branches does that rule hold?"),
          .point = say("Count the branches: how many share the current with ", d.part(0), "?"),
          .tell = say("That rule holds for two branches. For ", d.part(0),
                      ", divide the voltage that it has in common with ", d.others(),
                      " by its resistance.", d.so())};
}

ErrorWords no_split(const Diagnosed& d) {
  return {.cause = say(d.part(0), " is given the whole current of ", d.part(1)),
          .nudge = say("What happens to the current where the path forks?"),
          .point = say("Follow the current from ", d.part(1), " to ", d.part(0),
                       ": what else is joined on the way?"),
          .tell = say("The current of ", d.part(1), " divides before it comes to ", d.part(0),
                      ": the currents of all branches add up to it.", d.so())};
}

ErrorWords split_by_parts(const Diagnosed& d) {
  return {.cause = say("the current is divided by the number of parts, not of branches"),
          .nudge = say("What shares the current: parts, or paths?"),
          .point =
              say("Which of ", d.all(), " lie on one path, so that one current runs through them?"),
          .tell = say("Parts on one path carry the same current, so paths count. I = V / R holds "
                      "for the whole path of ",
                      d.part(0), ".", d.so())};
}

ErrorWords current_used_up(const Diagnosed& d) {
  return {.cause = say(d.part(0), " is given another current than ", d.part(1), " before it"),
          .nudge = say("Does a part use up some of the current?"),
          .point = say("Look between ", d.part(1), " and ", d.part(0),
                       ": is anything else joined there?"),
          .tell = say("Nothing else is joined between ", d.part(1), " and ", d.part(0),
                      ", so both carry the same current.", d.so())};
}

ErrorWords sequential(const Diagnosed& d) {
  return {.cause = say(d.part(0), " is counted with ", d.others(), " alone"),
          .nudge = say("Do the parts further on matter for the current here?"),
          .point = say("Which parts come after ", d.part(0),
                       ", and where do they come into this number?"),
          .tell = say(
              "All parts of the circuit settle the current together, also those that come after ",
              d.part(0), ".", d.so())};
}

ErrorWords current_stays(const Diagnosed& d) {
  const Words of = d.has_part(0) ? say(" of ", d.part(0)) : Words();
  return {.cause = say("the current", of, " is kept from another case"),
          .nudge = say("What does a battery keep when the circuit changes: its voltage, or its "
                       "current?"),
          .point = say("The same current", of, " belongs to another case: what has changed since?"),
          .tell = say("The battery keeps its voltage, and the current", of,
                      " follows from the resistance of this case.", d.so())};
}

ErrorWords source_over_all(const Diagnosed& d) {
  return {
      .cause = say("the voltage of ", d.part(0), " is divided by the sum of all resistances"),
      .nudge = say("Is the whole circuit one single path?"),
      .point = say("Look at the parts that ", d.part(0), " feeds: do all of them lie on one path?"),
      .tell = say("Not all the parts that ", d.part(0),
                  " feeds lie on one path, so divide its voltage by the equivalent resistance.",
                  d.so())};
}

ErrorWords current_sum_wrong(const Diagnosed& d) {
  return {.cause = say("the currents of ", d.others(), " are added or subtracted for ", d.part(0)),
          .nudge = say("Does as much current leave the point as comes in?"),
          .point = say("Look at ", d.point(0),
                       ": which of the parts there bring current in, and which take it out?"),
          .tell = say("At ", d.point(0), " as much comes in as goes out: count the currents of ",
                      d.all(), ", each with its direction.", d.so())};
}

ErrorWords wrong_sign(const Diagnosed& d) {
  return {.cause = say("it is counted from ", d.name_of_point(1), " to ", d.name_of_point(0)),
          .nudge = say("Which way is this counted as positive?"),
          .point = say("The size is right. Counted from ", d.name_of_point(0), " to ",
                       d.name_of_point(1), ", which sign does it have?"),
          .tell = say("It counts as positive from ", d.name_of_point(0), " to ", d.name_of_point(1),
                      ", so it has the other sign.", d.so())};
}

ErrorWords ohm_upside_down(const Diagnosed& d) {
  const bool current = d.line.judgement.claimed == Claimed::current;
  return {.cause = say("Ohm's law stands the other way up for ", d.part(0)),
          .nudge = say("Which unit does this fraction, or this product, give?"),
          .point = say("Look at Ohm's law for ", d.part(0), ": what is divided by what?"),
          .tell = say("Ohm's law for ", d.part(0), " says ", current ? "I = V / R" : "V = I · R",
                      ".", d.so())};
}

ErrorWords values_of_two_parts(const Diagnosed& d) {
  return {.cause = say("a value of ", d.part(1), " is used for ", d.part(0)),
          .nudge = say("Do all the values in this line belong to the same part?"),
          .point = say("Which of the values used for ", d.part(0), " belongs to ", d.part(1), "?"),
          .tell = say("Ohm's law takes voltage, current and resistance of one part: those of ",
                      d.part(0), " alone.", d.so())};
}

}  // namespace ohmfold::views
