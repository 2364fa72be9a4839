// Known errors of structure in words: what may be combined, and how.
#include "views/error_words.h"

namespace ohmfold::views {

namespace {

/// How the two parts are joined: the other way than the line says.
std::string_view joined_word(const Diagnosed& d) {
  const auto* combine = std::get_if<CombineClaim>(&d.line.claim.says);
  const bool says_series = combine != nullptr && !combine->combinations.empty() &&
                           combine->combinations.back().how == Joining::series;
  return says_series ? "in parallel" : "in series";
}

}  // namespace

ErrorWords series_at_a_junction(const Diagnosed& d) {
  return {.cause = say(d.part(0), " and ", d.part(1), " are taken as in series"),
          .nudge = say("Must all the current that leaves ", d.part(0), " go on through ", d.part(1),
                       "?"),
          .point = say("Look at ", d.point(0), ", between ", d.part(0), " and ", d.part(1),
                       ": what else is joined there?"),
          .tell = say("At ", d.point(0), ", ", d.described(2),
                      " is joined too, so the current can divide there: ", d.part(0), " and ",
                      d.part(1), " are not in series.")};
}

ErrorWords parallel_ends_apart(const Diagnosed& d) {
  return {
      .cause = say(d.part(0), " and ", d.part(1), " are taken as in parallel"),
      .nudge = say("Follow both ends of ", d.part(0), " and of ", d.part(1),
                   ": which points do they reach?"),
      .point = say(d.part(0), " has one end at ", d.point(0), ": where are the two ends of ",
                   d.part(1), "?")
                   .capitalised(),
      .tell = say(d.part(0), " ends at ", d.point(0), ", but ", d.part(1), " ends at ", d.point(1),
                  ", so the voltages across them need not be equal: they are not in parallel.")
                  .capitalised()};
}

ErrorWords parallel_from_a_fork(const Diagnosed& d) {
  return {.cause = say(d.part(0), " and ", d.part(1), " are taken as in parallel"),
          .nudge = say("One end is shared. What about the other end of each part?"),
          .point = say("Compare the far ends: ", d.part(0), " runs on from ", d.point(0), " to ",
                       d.point(1), ". Where does ", d.part(1), " run to?"),
          .tell = say(d.part(0), " and ", d.part(1), " share ", d.point(0), ", but one ends at ",
                      d.point(1), " and the other at ", d.point(2),
                      ", so they are not in parallel. Parts in parallel share both points.")
                      .capitalised()};
}

ErrorWords series_of_parallel(const Diagnosed& d) {
  return {.cause = say(d.part(0), " and ", d.part(1), " are taken as in series"),
          .nudge = say("Does the current run through one part and then through the other, or does "
                       "it divide between them?"),
          .point = say("Follow both ends of ", d.part(0), " and of ", d.part(1),
                       ": which points do they join?"),
          .tell = say(d.part(0), " and ", d.part(1), " both join the points ", d.name_of_point(0),
                      " and ", d.name_of_point(1), ", so they are in parallel.", d.so())
                      .capitalised()};
}

ErrorWords bridge_part_combined(const Diagnosed& d) {
  return {.cause = say(d.part(0), " is combined with another part"),
          .nudge =
              say("Does this part share both its points, or all its current, with one other part?"),
          .point = say("Look at the ends of ", d.part(0), ", the points ", d.name_of_point(0),
                       " and ", d.name_of_point(1), ": how many parts meet at each?"),
          .tell = say("Three parts or more meet at each end of ", d.part(0),
                      ", so it is in series with none, and none joins the same two points. Equal "
                      "potentials, delta and star, or node equations lead on.")};
}

ErrorWords used_already(const Diagnosed& d) {
  return {
      .cause = say(d.part(0), " counts twice"),
      .nudge = say("Is each of these parts still there by itself?"),
      .point = say(d.part(0), " is inside ", d.part(1),
                   " already. What stands in its place in the circuit now?")
                   .capitalised(),
      .tell = say(d.part(1), " stands for ", d.part(0), " and for what it was combined with, so ",
                  d.part(0), " is no longer there by itself. Use ", d.part(1), " in its place.")
                  .capitalised()};
}

ErrorWords wrong_word(const Diagnosed& d) {
  return {.cause = say("they are joined in the other way"),
          .nudge = say("Do the number of this line and its way of joining fit each other?"),
          .point = say("The number fits, but not the way of joining: do ", d.part(0), " and ",
                       d.part(1), " share both points, or one current?"),
          .tell = say("The number is right, and so is the rule behind it: ", d.part(0), " and ",
                      d.part(1), " are ", joined_word(d), ".")};
}

ErrorWords pair_overlooked(const Diagnosed& d) {
  const Words pair = say(d.part(0), " and ", d.part(1));
  const bool parallel = d.has_point(1);
  const Words where =
      parallel ? say("points ", d.name_of_point(0), " and ", d.name_of_point(1)) : d.point(0);
  return {
      .cause = say(pair, " are overlooked"),
      .nudge = say("One pair is left: which two parts share both points, or all their current?"),
      .point = say("Look at ", where, ": which parts are joined there?"),
      .tell = parallel ? say(pair, " both join the ", where, ", so they are in parallel.")
                       : say(pair, " carry one current, since nothing else is joined at ", where,
                             ": they are in series.")};
}

ErrorWords not_balanced(const Diagnosed& d) {
  return {.cause = say(d.part(0), " is left out as if the bridge were balanced"),
          .nudge = say("How do the potentials at the two ends of this part compare?"),
          .point = say("Look at the parts on both sides of ", d.part(0),
                       ": do they divide the voltage in the same ratio?"),
          .tell = say("The potentials at the two ends of ", d.part(0),
                      " differ, so a current runs through it.", d.so())};
}

ErrorWords wrong_sides_at_corner(const Diagnosed& d) {
  return {
      .cause = say("an arm is made from two sides that do not both end at its corner"),
      .nudge = say("Which two sides of the delta meet at this corner?"),
      .point = say("Look at the corner where ", d.part(0), " and ", d.part(1),
                   " meet: which arm of the star ends there?"),
      .tell =
          say(d.part(0), " and ", d.part(1),
              " meet at this corner, so its arm is their product over the sum of the three sides.",
              d.so())
              .capitalised()};
}

ErrorWords star_rule_reversed(const Diagnosed& d) {
  const bool to_star = d.line.judgement.rule != RuleName::star_delta;
  const Words rule =
      to_star
          ? say("From the delta ", d.all(),
                ", each arm of the star is the product of the two sides at its corner over the "
                "sum of all three.")
          : say("From the star ", d.all(),
                ", each side of the delta is the sum of the products of each two arms, over the "
                "arm that it does not touch.");
  return {.cause = say("the rule for the way back is used, from ",
                       to_star ? "star to delta" : "delta to star"),
          .nudge = say("Are the arms of a star larger or smaller than the sides of its delta?"),
          .point = say("Look at the rule used for ", d.all(),
                       ": does it lead from delta to star, or "
                       "from star to delta?"),
          .tell = say(rule, d.so())};
}

}  // namespace ohmfold::views
