// The problem as a circuit file states it. Immutable after reading; knows nothing of solving.
//
// Sign conventions, for the whole program: the current of a part is positive from its first point
// to its second, its voltage is the potential of the first less that of the second. A battery is
// written from its negative to its positive terminal: its current is positive out of the positive
// terminal, its voltage is that between its terminals, plus less minus. The power of a part is what
// it takes up, that of a battery or a source of current what it delivers.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "ohmfold/ids.h"
#include "ohmfold/source.h"
#include "ohmfold/symbolic.h"
#include "ohmfold/value.h"

namespace ohmfold {

enum class PartKind : std::uint8_t {
  battery,
  resistor,
  lamp,
  wire,
  knife_switch,
  ammeter,
  voltmeter,
  current_source
};

/// "resistor", "switch", …: the keyword of the circuit language.
[[nodiscard]] std::string_view keyword(PartKind kind);

/// Something that drives a current.
[[nodiscard]] constexpr bool is_source(PartKind kind) {
  return kind == PartKind::battery || kind == PartKind::current_source;
}

/// What the value of such a part is counted in; ohm for parts without a value.
[[nodiscard]] Unit unit_of_value(PartKind kind);

struct Part {
  std::string
      name;  ///< unique; a wire without a name in the file gets one that no name can be ("wire 3")
  PartKind kind = PartKind::resistor;
  PointId from, to;      ///< for a battery: negative, positive terminal
  Number value;          ///< ohm for resistor and lamp, volt for battery, ampere for a source of
                         ///< current, otherwise 0; of an unknown part the symbol of its name
  Number internal;       ///< ohm, battery only; 0: ideal
  Span where;            ///< its name in the file
  bool unknown = false;  ///< its value is to be found from what is given (Problem::givens)
};

/// What a case does to one part.
enum class SettingKind : std::uint8_t { open, closed, removed, shorted, value };

struct Setting {
  PartId part;
  SettingKind kind = SettingKind::open;
  Number value;        ///< with SettingKind::value: in the unit of the part's own value
  bool found = false;  ///< the value of an unknown, put in by solving: no file says it
};

/// One way that the circuit is set. Every switch has a setting in every case.
struct Case {
  std::string label;  ///< "" where the file has neither case nor switch
  std::vector<Setting> settings;
  /// Where an unknown can have several values: which of them this case has, from 1; otherwise 0.
  std::size_t solution = 0;
};

// What `find` can ask.
// clang-format off
struct CurrentThrough { PartId part; };
struct VoltageAcross { PartId part; };
struct VoltageBetween { PointId from, to; };
struct PotentialAt { PointId point; };
struct PowerIn { PartId part; };
struct ResistanceBetween { PointId from, to; };
struct ResistanceSeenBy { PartId battery; };  ///< or a source of current
struct TheveninBetween { PointId from, to; };
struct ValueOf { PartId part; };  // of an unknown part
// clang-format on

using Question = std::variant<CurrentThrough, VoltageAcross, VoltageBetween, PotentialAt, PowerIn,
                              ResistanceBetween, ResistanceSeenBy, TheveninBetween, ValueOf>;

/// What the file says is known of the circuit at work, so that an unknown can be found.
struct Given {
  Question question;
  Number value;                 ///< in the plain unit of the question
  std::optional<Case> held_in;  ///< the case in which it holds; none: in each case by itself
  Span where;
};

/// The most parts whose values can be unknown.
inline constexpr std::size_t kMostUnknowns = 8;

/// A symbol of the file. It stands for a positive number of ohms, volts or amperes: with `r` in
/// ohm, the value `2 r` is 2 r ohm.
struct SymbolMeaning {
  std::string name;             ///< unique; no part has it
  Unit unit = Unit::ohm;        ///< of its value or, without one, of its first use
  std::optional<Number> value;  ///< positive, in the plain unit; put in after the symbolic answer
  Span where;                   ///< its name in the file
};

/// A hint to a drawing, in grid steps.
struct PlaceHint {
  PointId point;
  Number x, y;
};

struct Problem {
  std::string source_name;          ///< name of the text it was read from
  std::string title;                ///< may be empty
  std::vector<std::string> texts;   ///< a paragraph each
  std::vector<std::string> points;  ///< names, by PointId
  std::vector<Part> parts;          ///< by PartId
  std::vector<SymbolMeaning> symbols;
  std::vector<Case> cases;          ///< never empty after reading
  std::vector<Question> questions;  ///< empty: everything is asked for
  std::vector<Given> givens;        ///< empty exactly where no part is unknown
  std::optional<PointId> ground;    ///< where the file says so
  int figures = 3;
  std::vector<PlaceHint> places;

  [[nodiscard]] const Part& part(PartId id) const { return parts.at(id.index); }
  [[nodiscard]] const std::string& point(PointId id) const { return points.at(id.index); }
};

/// Is there a value with a symbol of the file, in a part or in a case?
[[nodiscard]] bool has_symbolic_values(const Problem& problem);

/// The values that the file gives for its symbols.
[[nodiscard]] std::vector<SymbolValue> given_values(const Problem& problem);

/// The same problem with the values given for its symbols put in from the start. The symbols stay
/// on record. Requires a problem as it was read.
[[nodiscard]] Problem with_values_put_in(Problem problem);

/// The question in the words of the circuit language: "current through E", "voltage from A to B".
[[nodiscard]] std::string to_string(const Question& question, const Problem& problem);

/// The unit of what the question asks for.
[[nodiscard]] Unit unit_of(const Question& question, const Problem& problem);

/// The parts whose values are unknown, in file order.
[[nodiscard]] std::vector<PartId> unknowns_of(const Problem& problem);

}  // namespace ohmfold
