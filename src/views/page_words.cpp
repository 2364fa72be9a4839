// The words of a page's own parts, and the remarks of a workbook.
#include "views/page_words.h"

#include "views/words.h"

namespace ohmfold::views {

std::vector<WorkbookRemark> workbook_remarks() {
  constexpr int kMostInWords = 9;
  std::vector<WorkbookRemark> remarks = {
      {"exact", "Right."},
      {"rounded", "Right to {figures}."},
      {"short", "Right as far as it goes: give at least {figures}."},
      {"cut", "The value is cut off where it had to be rounded: look at the next digit."},
      {"close", "Close, but not within rounding: keep more figures in between."},
      {"prefix", "The digits are right: look at the prefix of the unit, or at a factor of 1000."},
      {"sign", "The size is right: look at the sign."},
      {"reciprocal", "Is this the value, or 1 divided by it?"},
      {"unit", "The value is asked for in {unit}: which quantity has the unit that is typed?"},
      {"other", "Not this value yet. Work it out once more, or show the step."},
      {"unreadable", "This does not read as a number. Write it like 8/3, 1 7/8, 2.67 or 4.7k."},
      {"empty", "Type a value first, or show the step."},
      {"shown", "{shown} of {all} shown."},
      {"forget", "Cover all steps and forget the values typed?"},
      {"figures-n", "{figures} figures"},
  };
  for (int count = 1; count <= kMostInWords; ++count) {
    remarks.push_back({"figures-" + std::to_string(count),
                       count_word(count) + (count == 1 ? " figure" : " figures")});
  }
  return remarks;
}

}  // namespace ohmfold::views
