// Words about symbols: their meaning, their values, and the conditions that hang on them.
#include "views/conditions.h"

#include <algorithm>
#include <vector>

#include "ohmfold/symbolic.h"
#include "views/amounts.h"

namespace ohmfold::views {

namespace {

std::string_view units_of(Unit unit) {
  switch (unit) {
    case Unit::ohm:
      return "ohms";
    case Unit::volt:
      return "volts";
    case Unit::ampere:
      return "amperes";
    case Unit::watt:
      return "watts";
    case Unit::siemens:
      return "siemens";
  }
  return "";
}

Words equals(const SymbolMeaning& symbol, const Number& value, int figures) {
  return say(symbol.name, "\u00A0=\u00A0", Amount{{value, symbol.unit}, Form::given, figures});
}

/// "r s = 8": both sides without minus signs.
std::string equation_text(const Number& decides, std::string_view relation) {
  const auto [positive, negative] = positive_and_negative_terms(decides);
  return one_line(positive, Letters::unicode)
      .append(relation)
      .append(one_line(negative, Letters::unicode));
}

bool is_long(const Number& decides) {
  return is_too_long_to_show(decides);
}

/// Where the deciding polynomial is zero: "where r = 2 Ω", "where r² + 1 = 3 r".
Words zeros_words(const Problem& problem, const SignCondition& condition) {
  const auto meaning =
      std::find_if(problem.symbols.begin(), problem.symbols.end(),
                   [&](const SymbolMeaning& symbol) { return symbol.name == condition.symbol; });
  if (condition.signs.empty() || meaning == problem.symbols.end()) {
    if (is_long(condition.decides)) {
      return say("where an expression of ", digits_text(condition.decides), " is zero");
    }
    return say("where ", equation_text(condition.decides, " = "));
  }
  std::vector<Words> zeros;
  for (const Number& zero : condition.zeros) zeros.push_back(equals(*meaning, zero, 12));
  return say("where ", listed(zeros));
}

std::string_view sign_word(Sign sign) {
  return sign == Sign::negative ? "negative" : "positive";
}

}  // namespace

std::optional<Quantity> with_values(const Problem& problem, const Quantity& quantity) {
  if (!quantity.number.is_symbolic()) return std::nullopt;
  const auto has_value = [&](const std::string& name) {
    return std::any_of(
        problem.symbols.begin(), problem.symbols.end(),
        [&](const SymbolMeaning& symbol) { return symbol.name == name && symbol.value; });
  };
  const std::vector<std::string> names = symbols_of(quantity.number);
  if (!std::all_of(names.begin(), names.end(), has_value)) return std::nullopt;
  const std::optional<Number> number = substitute(quantity.number, given_values(problem));
  if (!number || number->is_symbolic()) return std::nullopt;
  return Quantity(*number, quantity.unit);
}

std::optional<Reading> with_values(const Problem& problem, const Reading& reading) {
  if (!reading.value || !reading.value->number.is_symbolic()) return reading;
  const std::optional<Quantity> plain = with_values(problem, *reading.value);
  if (!plain) return std::nullopt;
  return Reading(*plain);
}

Words given_symbols(const Problem& problem) {
  std::vector<Words> values;
  for (const SymbolMeaning& symbol : problem.symbols) {
    if (symbol.value) values.push_back(equals(symbol, *symbol.value, problem.figures));
  }
  return listed(values, 6);
}

Words condition_words(const Problem& problem, const SignCondition& condition) {
  Words words = say("zero exactly ", zeros_words(problem, condition));
  if (condition.signs.size() == 1) {
    // A polynomial without positive zeros has one sign, whatever the signs of its terms.
    return say(sign_word(condition.signs.front()), " whatever ", condition.symbol, " is");
  }
  if (condition.signs.size() == 2) {
    words.add(say(", ", sign_word(condition.signs[0]), " below and ", sign_word(condition.signs[1]),
                  " above"));
  } else if (condition.signs.empty() && !is_long(condition.decides)) {
    words.add(say(", and positive where ", equation_text(condition.decides, " > ")));
  }
  return words;
}

Words agreement_phrase(const Problem& problem, const SignCondition& agree) {
  if (agree.signs.size() == 1) return say("they agree for no value of ", agree.symbol);
  return say("they agree exactly ", zeros_words(problem, agree));
}

Words agreement_words(const Problem& problem, const SignCondition& agree) {
  return say(sentence(agreement_phrase(problem, agree)),
             agree.signs.size() == 1
                 ? ""
                 : " There, how they share the current is not determined. For any other value:");
}

Words beyond_budget_words(const std::string& why) {
  return say("this case cannot be solved with its symbols: ", why,
             "; give every symbol a value, or use fewer symbols");
}

Words put_in_first_words() {
  return say(
      "With symbols the answers would be too long to work with. The values of the symbols have "
      "been "
      "put in from the start.");
}

void add_symbols(const Problem& problem, Document& document) {
  if (problem.symbols.empty()) return;
  std::vector<Words> entries;
  for (const SymbolMeaning& symbol : problem.symbols) {
    Words words = say("The symbol ", symbol.name, " stands for a positive number of ",
                      units_of(symbol.unit), ".");
    if (symbol.value) {
      words.add(say(" Its value, ", equals(symbol, *symbol.value, problem.figures),
                    ", is put in at the end."));
    }
    entries.push_back(words);
  }
  const Selection selection = select(entries.size());
  for (std::size_t i = 0; i < entries.size(); ++i) {
    if (selection.shows(i)) document.paragraph(entries[i]);
  }
}

void add_conditions(const Scene& scene, const CaseTrace& trace, Document& document) {
  const auto is_answered = [&](PartId part) {
    return !scene.problem.questions.empty() &&
           std::any_of(trace.answers.begin(), trace.answers.end(), [&](const Answer& answer) {
             const auto* asked = std::get_if<CurrentThrough>(&answer.question);
             return asked != nullptr && asked->part == part && answer.condition;
           });
  };
  for (const CurrentCondition& one : trace.conditions) {
    if (is_answered(one.part)) continue;
    document.paragraph(say("The current through ", scene.words.part(one.part), " is ",
                           condition_words(scene.problem, one.condition), "."));
  }
}

}  // namespace ohmfold::views
