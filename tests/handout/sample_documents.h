// Documents with one of everything, and with text that would do harm if it were not escaped.
#pragma once

#include <string>

#include "drawing/schematic.h"
#include "views/document.h"

namespace ohmfold::handout::test {

/// All that a markup language could take for its own, and characters that few faces have.
inline const std::string& hostile_text() {
  static const std::string kText =
      "\\input{x} $1 % & # _a_ ~ ^ { } -- --- `` '' \" <script>alert(1)</script> ]]> &amp; *b* "
      "[l](u) ![i](u) | \\\\ \u05D0\u05D1 e\u0301 \u4E2D \u202E~~s~~";
  return kText;
}

inline views::Amount amount(int p, int q, Unit unit, views::Form form = views::Form::exact) {
  return {{Number(p) / Number(q), unit}, form, 3};
}

inline views::Expression symbol(const std::string& letter, const std::string& subscript = "") {
  return {views::Symbol{letter, subscript}};
}

/// So many terms, R1 + R2 + …
inline views::Expression long_sum(int count) {
  views::Sum sum;
  for (int i = 1; i <= count; ++i) sum.terms.push_back(symbol("R" + std::to_string(i) + "0"));
  return {std::move(sum)};
}

inline views::Equation parallel_pair() {
  return {symbol("R12"),
          {{views::Relation::equal, views::in_parallel({symbol("R1"), symbol("R2")})},
           {views::Relation::equal, {amount(18, 5, Unit::ohm)}},
           {views::Relation::about, {amount(18, 5, Unit::ohm, views::Form::decimal)}}},
          views::say("R1 and R2 are in parallel")};
}

inline views::Table table(int rows) {
  views::Table table{
      {{views::say("Part"), views::Align::left}, {views::say("Current"), views::Align::right}}, {}};
  for (int i = 1; i <= rows; ++i) {
    table.rows.push_back({views::say(views::Run(views::PartName{"R" + std::to_string(i)})),
                          views::say(amount(i, 7, Unit::ampere, views::Form::decimal))});
  }
  return table;
}

/// One block of each kind.
inline views::Document whole(const std::string& title) {
  views::Document document;
  document.heading(1, views::say(title));
  document.paragraph(views::say(title));
  document.figure({views::say("The circuit: ", title), title, title + ".", {}});
  document.heading(2, views::say("Given"));
  document.table(table(3));
  document.begin_step(views::say("Combine"));
  document.entry("1", views::say("Parts ", views::Run(views::PartName{"R1"}), " and ",
                                 views::Run(views::PartName{"R2"}), " are in parallel."));
  document.working({parallel_pair()});
  document.paragraph(views::say("This holds at once."), 1);
  document.end_step();
  document.entry("", views::say("One ", title));
  document.entry("", views::say("Two"));
  return document;
}

}  // namespace ohmfold::handout::test
