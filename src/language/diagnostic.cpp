// The wording of every finding.

#include <algorithm>
#include <array>

#include "language/utf8.h"
#include "ohmfold/error.h"
#include "ohmfold/source.h"

namespace ohmfold {
namespace {

/// {0}, {1}, … stand for the arguments. The remedy is used where the finding brings none.
struct Wording {
  DiagnosticKind kind;
  std::string_view finding;
  std::string_view remedy;
};

using enum DiagnosticKind;

constexpr std::array<Wording, kDiagnosticKinds> kWordings{{
    {not_utf8, "this byte is not UTF-8 text", "save the file as UTF-8"},
    {nul_byte, "a NUL byte stands here", "a circuit is plain text"},
    {stray_character, "the character {0} has no place in a text", "remove it"},
    {unclosed_text, "this text has no closing quote", "a text ends with \" on the same line"},
    {line_too_long, "this line has more than {0} bytes", ""},
    {unknown_statement, "'{0}' is not a statement", ""},
    {later_statement, "{0} is not part of this version", ""},
    {expected, "expected {0}, found {1}", ""},
    {trailing_words, "{0} is left over at the end of the statement", "a line holds one statement"},
    {bad_name, "'{0}' is not a name", "a name is a letter followed by letters, digits or _"},
    {name_taken, "the name '{0}' is already taken", "every part needs a name of its own"},
    {unknown_part, "there is no part '{0}'", ""},
    {unknown_point, "there is no point '{0}'", ""},
    {wrong_kind_of_part, "{0} is a {1}: {2}", ""},
    {bad_number, "'{0}' is not a number", "numbers look like 12, 4.7, 15/8 or 1.2e3"},
    {number_too_large, "this number has too many digits or too large an exponent",
     "up to {0} digits and exponents up to {1} are read"},
    {division_by_zero, "'{0}' divides by zero", ""},
    {symbol_in_value, "'{0}' is neither a number nor a declared symbol", ""},
    {unknown_unit, "'{0}' is not a unit", "units are ohm, V, A, W and S, with p n u m k M G"},
    {wrong_unit, "'{0}' is no unit of {1}", "the unit here is {2}"},
    {negative_resistance, "a resistance cannot be negative", ""},
    {prefix_without_unit, "'{0}' is a prefix without a unit", "write {0}{1}"},
    {figures_out_of_range, "there are no {0} significant figures to round to",
     "write a whole number from {1} to {2}"},
    {given_twice, "{0} is given a second time", "once is enough"},
    {set_twice, "'{0}' is set twice in one case", ""},
    {case_taken, "there is already a case \"{0}\"", "every case needs a label of its own"},
    {switch_not_set, "this case does not set {0}", ""},
    {switches_need_cases, "the switches {0} can stand in several ways, and no case says how", ""},
    {same_two_points, "both ends of {0} are at '{1}'", ""},
    {no_parts, "there are no parts in this circuit",
     "a part is a line such as: resistor R1 = 4 ohm from A to B"},
    {nothing_to_find, "there is neither a battery nor a question, so nothing flows",
     "add a battery, or a line such as: find resistance between A and B"},
    {empty_expression, "expected a value or '(', found {0}", ""},
    {unreadable_file, "it cannot be read: {0}", ""},
    {file_too_large, "it is larger than {0}", ""},
    {lonely_point, "only {0} touches point '{1}'", "no current can flow there"},
    {suspicious_value, "'{0}' is read as {1}", ""},
    {bad_symbol_name, "'{0}' cannot be a symbol: it reads as {1}", "choose another name"},
    {unknown_symbol, "there is no symbol '{0}'", ""},
    {symbol_not_positive, "the value of '{0}' is not positive",
     "a symbol stands for a positive number"},
    {two_dimensions, "'{0}' is a {1} here and a {2} elsewhere",
     "declare a symbol for each of the two"},
    {product_of_symbols,
     "a value is a sum of multiples such as 2 r, without products, powers or quotients of symbols",
     ""},
    {too_many_symbols, "this value has more than {0} symbols", ""},
    {value_not_positive, "this value is not positive for every positive {0}", ""},
    {unused_symbol, "no value uses the symbol '{0}'", ""},
    {unknown_here, "'unknown' cannot stand here", "write a number and a unit"},
    {value_is_known, "the value of '{0}' is known", "ask for its current, voltage or power"},
    {too_few_givens, "{0}, and the file gives {1}",
     "add a line such as: given current through {2} = 2 A"},
    {too_many_unknowns, "this is unknown number {0}", "values are found for up to {1} unknowns"},
    {given_without_unknown, "something is given, and no value is unknown",
     "write unknown in place of the value that is to be found"},
    {given_resistance_zero, "a given resistance cannot be zero", ""},
    {given_needs_case, "this given names no case, and another one does",
     "say for each in which case it holds"},
    {unknown_case, "there is no case \"{0}\"", ""},
    {unknown_beside_symbol, "the value of '{0}' is unknown while symbol '{1}' has no value",
     "give the symbol a value"},
    {unknown_claim, "no claim begins with {0}",
     "claims look like R12 = R1 + R2 = 6 ohm or current through E = 2 A"},
    {circuit_line, "'{0}' begins a line of a circuit file",
     "a work file holds claims such as R12 = R1 + R2 = 6 ohm"},
    {combination_without_name, "this combination has no name",
     "write a name and '=' in front of it, as in R12 = R1 + R2"},
    {ambiguous_short_form, "'{0}' can mean {1}", "write in words which of them, such as {2}"},
    {left_over_in_claim, "{0} is left over at the end of the claim", "a line holds one claim"},
    {several_claims, "a second claim stands here", "one claim is read at a time"},
    {value_too_long, "this value is too long to work with", "write it shorter"},
    {more_findings, "and {0} more", ""},
}};

constexpr bool stands_in_order() {
  for (std::size_t i = 0; i < kWordings.size(); ++i) {
    if (kWordings.at(i).kind != static_cast<DiagnosticKind>(i)) return false;
  }
  return true;
}
static_assert(stands_in_order(), "one wording for each kind, in the order of the list");

/// A word of the file, made fit to be shown: a number of a thousand digits is cut.
std::string argument(std::string_view word) {
  constexpr std::size_t kLongest = 120;
  if (word.size() <= kLongest) return shown(word);
  std::size_t end = 0;
  while (end < kLongest) end += character_at(word, end).length;
  return shown(word.substr(0, end)).append("...");
}

/// The template with its arguments put in.
std::string filled(std::string_view text, const std::vector<std::string>& arguments) {
  std::string result;
  while (!text.empty()) {
    const std::size_t brace = text.find('{');
    result.append(text.substr(0, brace));
    if (brace == std::string_view::npos) break;
    const auto index = static_cast<std::size_t>(text.at(brace + 1) - '0');
    ensure(index < arguments.size(), "a finding has too few arguments");
    result.append(argument(arguments[index]));
    text.remove_prefix(brace + 3);
  }
  return result;
}

}  // namespace

std::string message(const Diagnostic& diagnostic) {
  const Wording& wording = kWordings.at(static_cast<std::size_t>(diagnostic.kind));
  std::string text = filled(wording.finding, diagnostic.arguments);
  const std::string remedy = diagnostic.remedy.empty()
                                 ? filled(wording.remedy, diagnostic.arguments)
                                 : shown(diagnostic.remedy);
  return remedy.empty() ? text : text.append("; ").append(remedy);
}

}  // namespace ohmfold
