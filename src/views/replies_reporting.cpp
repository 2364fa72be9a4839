// Known errors of reporting in words: how a result is written down.
#include "views/error_words.h"

namespace ohmfold::views {

ErrorWords cut_off(const Diagnosed& d) {
  return {
      .cause = say("the digits that follow are cut off"),
      .nudge = say("Look at the next digit."),
      .point = say("The value is cut off after its last digit: what is the digit that follows?"),
      .tell = say("The digit that follows is 5 or more, so the last one goes up by one.", d.so())};
}

ErrorWords preferred_value(const Diagnosed& d) {
  return {.cause = say("the nearest value on sale is taken"),
          .nudge = say("Is a computed value asked for, or one that is sold?"),
          .point = say("Resistors are sold in such values, but what does the working give?"),
          .tell = say("The computed value is asked for, not the nearest one on sale.", d.so())};
}

ErrorWords wrong_working_hit(const Diagnosed& d) {
  const std::vector<std::size_t>& before = d.line.judgement.caused_by;
  const Words lines = before.empty() ? say("the lines before") : d.line.judged.lines(before);
  return {.cause = say("two slips cancel each other"),
          .nudge = say("Does this value follow from the lines before?"),
          .point = say("The value is right, but it does not follow from ", lines, "."),
          .tell = say("The value by itself is right. With ", lines, " mended, it also follows.")};
}

}  // namespace ohmfold::views
