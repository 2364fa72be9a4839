// What is known of a circuit file while it is read: the problem so far, and the names that can be
// looked up only when the whole file is known.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_set>
#include <vector>

#include "language/findings.h"
#include "language/line_reader.h"
#include "language/name_table.h"
#include "ohmfold/problem.h"

namespace ohmfold {

/// Where a point came into being, and how many ends of parts are there.
struct PointUse {
  std::uint32_t ends = 0;
  PartId part;
  Span where;
};

/// What `find` asks, before the names are looked up.
enum class Asked : std::uint8_t {
  current_through,
  voltage_across,
  voltage_between,
  potential_at,
  power_in,
  resistance_between,
  resistance_seen_by,
  thevenin_between,
  value_of
};

/// Does it name points rather than parts?
[[nodiscard]] bool asks_of_points(Asked asked);

struct DraftQuestion {
  Asked asked{};
  Token first, second;
};

/// What `given` says: a question and its answer.
struct DraftGiven {
  DraftQuestion question;
  Number value;
  std::optional<Token> held_in;  ///< the label of a case
  Span where;
};

/// An item of a case. The value is read when the part is known, since its kind decides the unit.
struct DraftSetting {
  Token part;
  SettingKind kind{};
  std::vector<Token> value;
};

struct DraftCase {
  Token label;
  std::vector<DraftSetting> settings;
};

/// What is known of a symbol so far.
struct DraftSymbol {
  Span where;            ///< its name, where it is declared first
  bool is_read = false;  ///< the statement that declares it has been read
  std::optional<Number> value;
  std::optional<Unit> unit;
  Span unit_where;  ///< what fixed the unit: its value or its first use
  bool is_used = false;
};

struct DraftPlace {
  Token point;
  Number x, y;
};

/// Names and words refer to the bytes of the source.
struct Draft {
  Problem problem;
  Findings findings;

  NameTable parts;                         ///< numbers are PartIds
  NameTable points;                        ///< numbers are PointIds
  NameTable symbols;                       ///< all that the file declares, known from the start
  std::vector<PointUse> uses;              ///< by PointId
  std::vector<DraftSymbol> symbol_drafts;  ///< by number in `symbols`

  std::vector<DraftQuestion> questions;
  std::vector<DraftGiven> givens;
  std::vector<DraftCase> cases;
  std::vector<DraftPlace> places;
  std::optional<Token> ground;
  std::optional<Span> title, figures;  ///< where they were given
  std::size_t unnamed_wires = 0;

  /// Words on lines with an error that may have been meant to name parts or points: that they are
  /// unknown is a consequence, and not said again.
  std::unordered_set<std::string_view> broken;

  void report(DiagnosticKind kind, Severity severity, const Span& where,
              std::vector<std::string> arguments, std::string remedy = {},
              std::optional<Span> other = {});
};

// Statements. Each reads one line after its keyword and adds to the draft only what is right.

template <PartKind kKind>
void read_part(LineReader& line, Draft& draft);
void read_title(LineReader& line, Draft& draft);
void read_text(LineReader& line, Draft& draft);
void read_ground(LineReader& line, Draft& draft);
void read_figures(LineReader& line, Draft& draft);
void read_place(LineReader& line, Draft& draft);
void read_question(LineReader& line, Draft& draft);
void read_given(LineReader& line, Draft& draft);
void read_case(LineReader& line, Draft& draft);
void read_symbol(LineReader& line, Draft& draft);

/// The first word of a statement.
[[nodiscard]] bool begins_statement(const Token& word);

// When the whole file is known.

/// The part or point of that name, or nothing and an error.
std::optional<PartId> find_part(Draft& draft, const Token& name);
std::optional<PointId> find_point(Draft& draft, const Token& name);

/// "switch S", "wire 3": the part with its kind.
[[nodiscard]] std::string with_kind(const Part& part);

/// The words of a question after `find` or `given`, or nothing and an error.
std::optional<DraftQuestion> expect_question(LineReader& line, bool given);
/// The question with its names looked up, or nothing and an error.
std::optional<Question> settled_question(Draft& draft, const DraftQuestion& question);

void settle_questions(Draft& draft);
void settle_cases(Draft& draft);
void settle_givens(Draft& draft);
void settle_points(Draft& draft);
void settle_symbols(Draft& draft);
void settle_whole(Draft& draft);

}  // namespace ohmfold
