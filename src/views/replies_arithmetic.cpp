// Known errors of arithmetic in words: one combination and its numbers.
#include "views/error_words.h"

namespace ohmfold::views {

namespace {

/// The rule for combining the parts of the line.
Words combining_rule(const Diagnosed& d) {
  if (d.is_series()) return say("In series the resistances of ", d.all(), " are added.");
  return say("In parallel the reciprocals of ", d.all(), " are added, and the sum is turned over.");
}

}  // namespace

ErrorWords not_inverted(const Diagnosed& d) {
  return {.cause = say("the reciprocals of ", d.all(), " are added and the sum is not turned over"),
          .nudge = say("Is this number R, or 1/R?"),
          .point = say("Look at the last step for ", d.all(),
                       ": what is the unit of the sum of their reciprocals?"),
          .tell = say("The sum of the reciprocals of ", d.all(), " is 1/R: turn it over to get R.",
                      d.so())};
}

ErrorWords product_without_sum(const Diagnosed& d) {
  return {.cause = say(d.all(), " are multiplied and not divided by their sum"),
          .nudge = say("Which unit does ohm times ohm give?"),
          .point = say("Look at the product of ", d.all(), ": what is it to be divided by?"),
          .tell = say("Divide the product of ", d.all(), " by their sum.", d.so())};
}

ErrorWords sum_over_product(const Diagnosed& d) {
  return {
      .cause = say("the sum of ", d.all(), " is divided by their product"),
      .nudge = say("Which way up does the fraction stand?"),
      .point =
          say("Look at the fraction for ", d.all(), ": which unit does sum over product give?"),
      .tell = say("The product of ", d.all(), " stands above the line, their sum below.", d.so())};
}

ErrorWords average(const Diagnosed& d) {
  return {.cause = say("the average of ", d.all(), " is taken"),
          .nudge = say("Can several paths together resist more than the easiest of them alone?"),
          .point = say("Compare the result with ", d.least(),
                       ": can parts in parallel make more than that?"),
          .tell = say("In parallel the reciprocals of ", d.all(),
                      " are added, and the sum is turned over: less than the smallest of them.",
                      d.so())};
}

ErrorWords added_in_parallel(const Diagnosed& d) {
  return {.cause = say(d.all(), " are added"),
          .nudge = say("Do more paths make it easier or harder for the current?"),
          .point = say("Compare the result with ", d.least(),
                       ": should parts in parallel make more than that, or less?"),
          .tell = say("In parallel the reciprocals of ", d.all(),
                      " are added, and the sum is turned over.", d.so())};
}

ErrorWords reciprocals_in_series(const Diagnosed& d) {
  return {.cause = say("the rule for parallel parts is used for ", d.all()),
          .nudge = say("One part after the other: is that more resistance or less?"),
          .point = say("Compare the result with ", d.greatest(),
                       ": should parts in series make more than that, or less?"),
          .tell = say("In series the resistances of ", d.all(), " are added.", d.so())};
}

ErrorWords product_over_sum_of_all(const Diagnosed& d) {
  return {.cause = say("the product of ", d.all(), " is divided by their sum"),
          .nudge = say("For how many parts does product over sum hold?"),
          .point = say("Count the values that are multiplied for ", d.all(),
                       ": which unit does their product have?"),
          .tell = say("Product over sum holds for two parts. For ", d.all(),
                      ", add the reciprocals and turn the sum over.", d.so())};
}

ErrorWords reciprocal_of_sum(const Diagnosed& d) {
  return {.cause = say(d.all(), " are added before they are turned over"),
          .nudge = say("What is turned over first: each value, or their sum?"),
          .point = say("Look at the order of the steps for ", d.all(),
                       ": which comes first, adding or turning over?"),
          .tell = say("Turn over each of ", d.all(), ", add, and turn the sum over.", d.so())};
}

ErrorWords difference(const Diagnosed& d) {
  return {.cause = say("the difference of ", d.all(), " is taken"),
          .nudge = say("Does a rule for combining parts ask for a difference?"),
          .point = say("Look at the rule for ", d.all(), ": where does it subtract?"),
          .tell = say(combining_rule(d), d.so())};
}

ErrorWords divided_by_count(const Diagnosed& d) {
  return {.cause = say(d.part(0), " is divided by the number of parts"),
          .nudge = say("When may one value be divided by the number of parts?"),
          .point = say("Compare the values of ", d.all(), ": are they equal?"),
          .tell = say("Dividing by the number works for equal parts alone. For ", d.all(),
                      ", add the reciprocals and turn the sum over.", d.so())};
}

ErrorWords operand_left_out(const Diagnosed& d) {
  return {.cause = say(d.all(), " ", d.several_from(0) ? "are" : "is", " left out"),
          .nudge = say("Are all the parts of the line in this number?"),
          .point = say("Look for ", d.all(), " in the working: where ",
                       d.several_from(0) ? "do they" : "does it", " come in?"),
          .tell = say(d.all(), " belong", d.several_from(0) ? "" : "s",
                      " in this number, like every part that the line names.", d.so())
                      .capitalised()};
}

ErrorWords brackets_missing(const Diagnosed& d) {
  return {.cause = say("the sum that divides has no brackets round it"),
          .nudge = say("Estimate the result: does this number come near?"),
          .point =
              say("Look at how ", d.all(), " go into the calculator: where do the brackets stand?"),
          .tell = say("Put the whole sum below the fraction line in brackets when ", d.all(),
                      " go into the calculator.", d.so())};
}

ErrorWords numerators_added(const Diagnosed& d) {
  return {.cause = say("half the product of ", d.all(), " is taken"),
          .nudge = say("What stands above the line when two reciprocals get a common denominator?"),
          .point = say("Write the reciprocals of ", d.all(),
                       " over their product: what stands above the line then?"),
          .tell = say("Above the product of ", d.all(),
                      " stands their sum, and the whole is then turned over.", d.so())};
}

ErrorWords prefix_slip(const Diagnosed& d) {
  return {.cause = say("a prefix such as kilo or milli is lost or added"),
          .nudge = say("Are all the values in the same unit?"),
          .point = say("Look at the prefixes of ", d.all(),
                       " and at that of the result: are they the same?"),
          .tell = say("Bring ", d.all(), " to the same unit before calculating.", d.so())};
}

ErrorWords decimal_point_slip(const Diagnosed& d) {
  return {.cause = say("the decimal point moves"),
          .nudge = say("Estimate the result: is this number of that size?"),
          .point = say("Look at the decimal points: with ", d.all(),
                       ", how large should the result be?"),
          .tell = say("The digits are right for ", d.all(),
                      ", and only the decimal point belongs elsewhere.", d.so())};
}

ErrorWords miscopied(const Diagnosed& d) {
  const std::optional<Quantity> value = d.line.words.resistance(d.part_id(0));
  const Words truth =
      value ? say(d.part(0), " is ", d.line.words.value(*value), ", not ", d.number(0), ".")
            : say("The value of ", d.part(0), " is not ", d.number(0), ".");
  return {.cause = say(d.part(0), " is taken as ", d.number(0)),
          .nudge = say("Compare each value that goes in with the one that is given."),
          .point = say("Look at ", d.part(0), ": which value does it have?"),
          .tell = say(truth, d.so())};
}

ErrorWords impossible_size(const Diagnosed& d) {
  const bool combines = !d.line.judgement.operands.empty();
  const Words bound = d.number(0);
  const Words compared = combines
                             ? say(d.all(), d.is_series() ? " in series make more than that."
                                                          : " in parallel make less than that.")
                             : say("should the result with ", d.all(), " be above it, or below?");
  const Words side = say("However ", d.all(), " are joined, the result cannot pass ", bound, ".");
  return {.cause = Words(),
          .nudge = say("Should the result be larger or smaller than what it is made from?"),
          .point = say("Compare the number with ", bound, ": ", compared),
          .tell = say(combines ? combining_rule(d) : side, d.so())};
}

}  // namespace ohmfold::views
