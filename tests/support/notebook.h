// A person's work as lines whose values follow from one another, so that it can be written exactly,
// rounded at each line, or with one value changed.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "ohmfold/decimal.h"
#include "ohmfold/work.h"

namespace ohmfold::support {

/// How the value of a line follows from those of others.
enum class Way { same, sum, reciprocal_sum, product, quotient, difference };

struct NoteLine {
  std::string claim;  ///< "R12 = R1 + R2", "current through E"; empty: worked out and not written
  std::string key;    ///< what it gives a value of: "R R12", "I E"
  Unit unit = Unit::ohm;
  Way way = Way::same;
  std::vector<std::string> from;  ///< keys
  bool negative = false;          ///< the value is written with a minus
};

/// What a person starts from, and their lines. Values are sizes.
struct Notebook {
  std::map<std::string, Number> given;
  std::vector<NoteLine> lines;
};

/// A work as text, and what its lines say.
struct WrittenWork {
  struct Line {
    std::size_t note = 0;  ///< index into Notebook::lines
    Number exact;          ///< from exact values all the way
    Number worked;         ///< from what is printed in the lines before
    Number printed;        ///< `worked` as it is written
    std::string digits;
  };
  std::string text;
  std::vector<Line> lines;  ///< by claim
};

inline Number follow(Way way, const std::vector<Number>& from) {
  Number value = from.front();
  switch (way) {
    case Way::same:
      break;
    case Way::sum:
      for (std::size_t i = 1; i < from.size(); ++i) value += from[i];
      break;
    case Way::product:
      for (std::size_t i = 1; i < from.size(); ++i) value = value * from[i];
      break;
    case Way::difference:
      for (std::size_t i = 1; i < from.size(); ++i) value -= from[i];
      break;
    case Way::quotient:
      value = value / from.at(1);
      break;
    case Way::reciprocal_sum:
      value = Number(0);
      for (const Number& one : from) value += 1 / one;
      value = 1 / value;
      break;
  }
  return value;
}

/// The exact values of all lines, by key.
inline std::map<std::string, Number> exact_values(const Notebook& book) {
  std::map<std::string, Number> exact = book.given;
  for (const NoteLine& note : book.lines) {
    std::vector<Number> from;
    for (const std::string& key : note.from) from.push_back(exact.at(key));
    exact[note.key] = follow(note.way, from);
  }
  return exact;
}

/// One value that is not what it should be.
struct Slip {
  std::size_t note = 0;
  Number value;
};

/// Writes the work; later lines use what the lines before print. `figures` 0: exact values.
inline WrittenWork write_work(const Notebook& book, int figures = 0,
                              const std::optional<Slip>& slip = std::nullopt) {
  std::map<std::string, Number> exact = book.given;
  std::map<std::string, Number> own = book.given;
  WrittenWork work;
  for (std::size_t i = 0; i < book.lines.size(); ++i) {
    const NoteLine& note = book.lines[i];
    std::vector<Number> exact_from;
    std::vector<Number> own_from;
    for (const std::string& key : note.from) {
      exact_from.push_back(exact.at(key));
      own_from.push_back(own.at(key));
    }
    WrittenWork::Line line;
    line.note = i;
    line.exact = follow(note.way, exact_from);
    line.worked = follow(note.way, own_from);
    line.printed = slip && slip->note == i ? slip->value : line.worked;
    exact[note.key] = line.exact;
    if (!note.claim.empty()) {
      line.digits =
          figures == 0 ? line.printed.to_string() : round_to_figures(line.printed, figures);
      line.printed = figures == 0 ? line.printed : parse_number(line.digits).number;
      work.text += note.claim + " = " + (note.negative ? "-" : "") + line.digits + " " +
                   std::string(symbol(note.unit, Letters::ascii)) + "\n";
    }
    own[note.key] = line.printed;
    if (!note.claim.empty()) work.lines.push_back(std::move(line));
  }
  return work;
}

}  // namespace ohmfold::support
