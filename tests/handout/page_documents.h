// Documents for the tests of pages: one with every kind of block, and one full of what markup and
// scripts could trip over.
#pragma once

#include <string>
#include <utility>

#include "views/document.h"

namespace ohmfold::test {

/// One resistor from (20, 20) to (20, 80).
inline drawing::Schematic one_resistor() {
  drawing::Schematic schematic;
  schematic.width = 40;
  schematic.height = 100;
  drawing::DrawnPart part;
  part.kind = drawing::SymbolKind::resistor;
  part.path = {{20, 20}, {20, 80}};
  part.middle = {20, 50};
  part.direction = {0, 1};
  schematic.parts.push_back(std::move(part));
  return schematic;
}

inline views::Equation sum_of_two(const std::string& name, int first, int second) {
  const auto ohm = [](int number) {
    return views::Expression{views::Amount{{Number(number), Unit::ohm}, views::Form::exact, 3}};
  };
  views::Equation line;
  line.left = {views::Symbol{name, ""}};
  line.links.push_back({views::Relation::equal, views::sum({ohm(first), ohm(second)})});
  line.links.push_back({views::Relation::equal, ohm(first + second)});
  line.note = views::say("same current");
  return line;
}

/// Two steps, the first with a field for 8/3 ohm, the second without any.
inline void add_steps(views::Document& document) {
  using views::say;
  document.begin_step(
      say("Step 1: combine ", views::PartName{"R1"}, " and R2"),
      {{say("What is ", views::PartName{"R12"}, "?"), {Number(8) / Number(3), Unit::ohm}}});
  document.entry("1", say("R1 and R2 are in parallel."));
  document.paragraph(say("Both ends meet at T and at G."), 1);
  document.working({sum_of_two("R12", 4, 8)});
  document.figure({say("Redraw 1"), "Redraw 1", "R12 from T to G.", one_resistor()});
  document.end_step();
  document.begin_step(say("Step 2: look at what is left"));
  document.paragraph(say("Only R12 is left."));
  document.end_step();
}

inline views::Document every_block(const std::string& title = "Two lamps") {
  using views::say;
  views::Document document;
  document.heading(1, say(title));
  document.paragraph(say("Find the current through ", views::PartName{"R1"}, "."));
  document.heading(2, say("Given"));
  document.entry("", say("Battery ", views::PartName{"E"}, " has no internal resistance."));
  document.entry("", say("Currents count from a part's first point."));
  document.figure({say("The circuit"), "The circuit", "A battery and two lamps.", one_resistor()});
  document.heading(2, say("Solution"));
  document.heading(3, say("Reducing the circuit"));
  add_steps(document);
  document.heading(3, say("All parts"));
  document.begin_step(say("All parts"));
  document.table(
      {{{say("part"), views::Align::left}, {say("current"), views::Align::right}},
       {{say(views::PartName{"R1"}), say("3 A")}, {say(views::PartName{"R2"}), say("6 A")}}});
  document.end_step();
  return document;
}

inline constexpr const char* kHostile =
    "<script>alert(1)</script> ]]> -- &amp; & \"double\" 'single' \u202E\u05D0\u05D1 e\u0301 \x01 "
    "</style>{}";

/// Every text of every block is kHostile.
inline views::Document hostile_document() {
  using views::say;
  const views::Words words = say(kHostile, views::PartName{kHostile}, views::PointName{kHostile},
                                 views::Symbol{kHostile, kHostile});
  views::Document document;
  document.heading(1, words);
  document.paragraph(words);
  document.entry(kHostile, words);
  document.entry("", words);
  views::Equation line;
  line.left = {views::Symbol{kHostile, kHostile}};
  line.links.push_back({views::Relation::about, {views::Symbol{kHostile, ""}}});
  line.note = words;
  document.working({line});
  document.table({{{words, views::Align::left}}, {{words}}});
  document.figure({words, kHostile, kHostile, one_resistor()});
  document.begin_step(words, {{words, {Number(3), Unit::ampere}}});
  document.paragraph(words);
  document.end_step();
  return document;
}

}  // namespace ohmfold::test
