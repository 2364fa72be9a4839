// Text that a person wrote, places in it, and what we have to say about them.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace ohmfold {

/// A stretch of one line, in bytes. Lines count from 1, columns from 0 (shown from 1, in
/// characters).
struct Span {
  std::uint32_t line = 0;    ///< 0: no place, the text as a whole
  std::uint32_t column = 0;  ///< byte within the line
  std::uint32_t length = 0;  ///< bytes; 0 marks the place between two characters

  friend bool operator==(const Span&, const Span&) = default;
};

/// A named text. The name is what a person typed to get it ("bridge.circuit", "-").
struct SourceText {
  std::string name;
  std::string text;

  /// The bytes of line `number` (from 1), without its line end and without a byte order mark at the
  /// start of the text; empty past the last line. Cost: one walk over the text up to that line.
  [[nodiscard]] std::string_view line(std::uint32_t number) const;
};

enum class Severity { error, warning };

/// What is wrong, one kind for each rule of the language; a test walks this list and fails where no
/// test shows the kind. The wording of all of them is in one file, language/diagnostic.cpp.
enum class DiagnosticKind : std::uint8_t {
  // characters and lines
  not_utf8,
  nul_byte,
  stray_character,
  unclosed_text,
  line_too_long,
  // statements
  unknown_statement,
  later_statement,
  expected,
  trailing_words,
  // names
  bad_name,
  name_taken,
  unknown_part,
  unknown_point,
  wrong_kind_of_part,
  // values
  bad_number,
  number_too_large,
  division_by_zero,
  symbol_in_value,
  unknown_unit,
  wrong_unit,
  negative_resistance,
  prefix_without_unit,
  figures_out_of_range,
  // statements that do not fit each other
  given_twice,
  set_twice,
  case_taken,
  switch_not_set,
  switches_need_cases,
  same_two_points,
  no_parts,
  nothing_to_find,
  // expressions
  empty_expression,
  // files
  unreadable_file,
  file_too_large,
  // warnings
  lonely_point,
  suspicious_value,
  // symbols
  bad_symbol_name,
  unknown_symbol,
  symbol_not_positive,
  two_dimensions,
  product_of_symbols,
  too_many_symbols,
  value_not_positive,
  unused_symbol,
  // unknown values
  unknown_here,
  value_is_known,
  too_few_givens,
  too_many_unknowns,
  given_without_unknown,
  given_resistance_zero,
  given_needs_case,
  unknown_case,
  unknown_beside_symbol,
  // work files
  unknown_claim,
  circuit_line,
  combination_without_name,
  ambiguous_short_form,
  left_over_in_claim,
  several_claims,
  value_too_long,
  // at the end of a long list
  more_findings,
};

inline constexpr std::size_t kDiagnosticKinds =
    static_cast<std::size_t>(DiagnosticKind::more_findings) + 1;

/// One finding: where, what, and with what words filled in. The text is made by `message`.
struct Diagnostic {
  DiagnosticKind kind;
  Severity severity = Severity::error;
  Span where;
  std::vector<std::string> arguments;  ///< names and words, in the order that the wording uses them
  std::string remedy;         ///< what to do, where the kind alone does not say; may be empty
  std::optional<Span> other;  ///< a second place ("first named here")
};

/// All findings of one text, in the order of their places; of very many the first ones and a last
/// entry that counts the others.
using Diagnostics = std::vector<Diagnostic>;

[[nodiscard]] bool has_error(const Diagnostics& diagnostics);

/// What was found and the remedy, without place: lower case, no full stop.
[[nodiscard]] std::string message(const Diagnostic& diagnostic);

/// `file:line:column: error: …`, the line itself and a second line that marks the place.
/// At most 80 columns of the source line are shown, around the place.
[[nodiscard]] std::string render(const Diagnostic& diagnostic, const SourceText& source);

/// Either a value or the reasons why there is none.
template <class T>
struct Outcome {
  std::optional<T> value;   ///< present exactly where no finding is an error
  Diagnostics diagnostics;  ///< errors, or warnings beside a value

  explicit operator bool() const { return value.has_value(); }
};

}  // namespace ohmfold
