// Known errors of the way back in words: voltages and powers.
#include "views/error_words.h"

namespace ohmfold::views {

ErrorWords source_on_one_part(const Diagnosed& d) {
  return {.cause = say("the whole voltage of ", d.part(1), " is put on ", d.part(0)),
          .nudge = say("Is this part joined straight to both terminals of the source?"),
          .point = say("Look at the two ends of ", d.part(0), ": is each joined straight to ",
                       d.described(1), "?"),
          .tell = say("Other parts lie between ", d.part(0), " and ", d.described(1),
                      ", and they take up some of its voltage.", d.so())};
}

ErrorWords voltage_shared_equally(const Diagnosed& d) {
  return {
      .cause = say("the voltage is shared out equally between ", d.part(0), " and ", d.others()),
      .nudge = say("Are the resistances equal?"),
      .point = say("Compare ", d.part(0), " with ", d.others(),
                   ": which needs more voltage for the same current?"),
      .tell = say("In series the voltage is shared as the resistances are: V = I · R for ",
                  d.part(0), ".", d.so())};
}

ErrorWords voltage_split_in_parallel(const Diagnosed& d) {
  return {
      .cause = say("the voltage is divided between ", d.part(0), " and ", d.others()),
      .nudge = say("What do parts in parallel have in common?"),
      .point = say("Look at ", d.part(0), " and ", d.others(), ": which two points do they join?"),
      .tell = say(d.part(0), " and ", d.others(),
                  " join the same two points, so each of them has the whole voltage.", d.so())
                  .capitalised()};
}

ErrorWords divider_upside_down(const Diagnosed& d) {
  return {
      .cause = say(d.part(0), " gets the share of ", d.others()),
      .nudge = say("Which gets more of the voltage: the larger resistance, or the smaller one?"),
      .point = say("Compare ", d.part(0), " with ", d.others(),
                   ": which should have the larger share of the voltage?"),
      .tell = say("The share of ", d.part(0),
                  " is its own resistance over the sum of all in the path.", d.so())};
}

ErrorWords divider_without_load(const Diagnosed& d) {
  return {.cause = say(d.others(), ", also joined at ", d.point(0), ", ",
                       d.several_from(1) ? "are" : "is", " left out of the voltage divider"),
          .nudge = say("Is anything else joined to the middle of the voltage divider?"),
          .point = say("Look at ", d.point(0), ": what is joined there besides ", d.part(0), "?"),
          .tell = say(
              "At ", d.point(0), ", ", d.others(), " ", d.several_from(1) ? "are" : "is",
              " joined as well. Combine what is in parallel there first, then divide the voltage.",
              d.so())};
}

ErrorWords divider_from_source(const Diagnosed& d) {
  return {
      .cause = say("the whole voltage of ", d.part(1), " is divided for ", d.part(0)),
      .nudge = say("Which voltage lies across this path?"),
      .point = say("Look at the two ends of the path through ", d.part(0),
                   ": does it have the whole voltage of ", d.described(1), "?"),
      .tell = say("The path through ", d.part(0), " is not joined straight to both terminals of ",
                  d.described(1), ": divide the voltage across that path.", d.so())};
}

ErrorWords wrong_order_of_points(const Diagnosed& d) {
  return {.cause = say("the potential at ", d.name_of_point(0), " is subtracted from that at ",
                       d.name_of_point(1)),
          .nudge = say("Which of the two points is named first?"),
          .point = say("Look at the order of ", d.name_of_point(0), " and ", d.name_of_point(1),
                       ": which potential is subtracted from which?"),
          .tell = say("The voltage from ", d.name_of_point(0), " to ", d.name_of_point(1),
                      " is the potential at ", d.name_of_point(0), " less that at ",
                      d.name_of_point(1), ".", d.so())};
}

ErrorWords wrong_drop_subtracted(const Diagnosed& d) {
  return {.cause = say("the voltage across ", d.part(1), " is subtracted to get that across ",
                       d.part(0)),
          .nudge = say("Do all the parts in this line lie on one closed loop?"),
          .point = say("Walk round one closed loop through ", d.part(0), ": does it pass ",
                       d.part(1), ", and how often?"),
          .tell = say("Round one loop through ", d.part(0), ", each voltage counts once: that of ",
                      d.part(1), " is not to be subtracted here.", d.so())};
}

ErrorWords drops_of_parallel_added(const Diagnosed& d) {
  return {
      .cause = say("the voltages across ", d.part(0), " and ", d.others(), " are added"),
      .nudge = say("Between the same two points, do voltages add up, or are they equal?"),
      .point = say("Look at ", d.part(0), " and ", d.others(), ": which two points do they join?"),
      .tell = say(d.part(0), " and ", d.others(),
                  " join the same two points, so they have one and the same voltage.", d.so())
                  .capitalised()};
}

ErrorWords potential_for_voltage(const Diagnosed& d) {
  return {
      .cause = say("the potential at ", d.point(0), " is given for the voltage across ", d.part(0)),
      .nudge = say("A voltage lies between two points: which two?"),
      .point =
          say("Look at the two ends of ", d.part(0), ": what is the potential at each of them?"),
      .tell = say("The voltage across ", d.part(0),
                  " is the difference of the potentials at its two ends.", d.so())};
}

ErrorWords power_formula(const Diagnosed& d) {
  return {.cause = say("a square or a factor of the power formula for ", d.part(0),
                       " is lost or out of place"),
          .nudge = say("Which product of units gives a watt?"),
          .point = say("Look at the power formula for ", d.part(0),
                       ": which quantity is squared, and which divides?"),
          .tell = say("For ", d.part(0), ", P = V · I, which is also I² · R and V² / R.", d.so())};
}

ErrorWords power_of_the_whole(const Diagnosed& d) {
  return {.cause = say("the current or the voltage of ", d.part(1), " is used for the power in ",
                       d.part(0)),
          .nudge = say("Whose current is it, and whose voltage?"),
          .point = say("Look at ", d.part(0), ": does it have the whole current of ", d.part(1),
                       ", or its whole voltage?"),
          .tell = say("For the power in ", d.part(0),
                      ", take its own current and its own voltage, not those of ", d.part(1), ".",
                      d.so())};
}

ErrorWords lost_volts_for_terminal(const Diagnosed& d) {
  return {
      .cause = say("the voltage lost inside ", d.described(0),
                   " is taken for that at its terminals, or the reverse"),
      .nudge = say(
          "Which voltage is asked for: the one inside the battery, or the one at its terminals?"),
      .point =
          say("Look at ", d.described(0),
              ": which voltage lies across its internal resistance, and which at its terminals?"),
      .tell = say("At the terminals of ", d.part(0),
                  " there is E − I · r, and I · r is lost inside.", d.so())};
}

}  // namespace ohmfold::views
