// Does the text of each PDF have the answers of its problem? They come from the list of answers
// that was worked out without this program: pdf_answers PROBLEMS TEXTS, with a .txt for each
// .circuit.
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <vector>

#include "ohmfold/decimal.h"
#include "ohmfold/read.h"
#include "programs/problem_answers.h"

namespace ohmfold {
namespace {

std::string contents(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

void replace_all(std::string& text, const std::string& what, const std::string& by) {
  for (std::size_t at = text.find(what); at != std::string::npos;
       at = text.find(what, at + by.size())) {
    text.replace(at, what.size(), by);
  }
}

/// Without spaces of any width, which faces and tools set in their own way, and with one form of
/// each sign.
std::string squeezed(std::string text) {
  for (const char* space : {" ", "\n", "\f", "\t", "\u00A0", "\u2009", "\u202F"}) {
    replace_all(text, space, "");
  }
  replace_all(text, "\u2212", "-");
  replace_all(text, "\u2126", "Ω");
  replace_all(text, "\u03BC", "µ");
  return text;
}

std::vector<Unit> units_of(const std::string& question) {
  if (question.starts_with("power")) return {Unit::watt};
  if (question.starts_with("current")) return {Unit::ampere};
  if (question.starts_with("voltage") || question.starts_with("potential")) return {Unit::volt};
  if (question.starts_with("resistance")) return {Unit::ohm};
  return {Unit::ohm, Unit::volt, Unit::ampere};
}

/// "6.00mA" is written "6 mA" where that is exact.
std::string without_zeros(const std::string& rounded) {
  const std::size_t end = rounded.find_first_not_of("-0123456789.");
  std::string number = rounded.substr(0, end);
  if (number.find('.') != std::string::npos) {
    number.erase(number.find_last_not_of('0') + 1);
    if (number.back() == '.') number.pop_back();
  }
  return number + rounded.substr(end);
}

/// Stands the value in the text, not as the end of a longer number?
bool has_value(const std::string& text, const std::string& value) {
  for (std::size_t at = text.find(value); at != std::string::npos; at = text.find(value, at + 1)) {
    const char before = at == 0 ? ' ' : text[at - 1];
    const bool goes_on = (before >= '0' && before <= '9') || before == '.' || before == '/';
    if (!goes_on) return true;
  }
  return false;
}

bool has_answer(const std::string& text, const ProblemAnswer& answer, int figures) {
  const ParsedNumber parsed = parse_number(answer.exact);
  if (parsed.fault != NumberFault::none) return true;  // with symbols: set with bars
  for (const Unit unit : units_of(answer.question)) {
    const std::string rounded =
        squeezed(rounded_text({parsed.number, unit}, figures, Letters::unicode));
    if (has_value(text, rounded) || has_value(text, without_zeros(rounded))) return true;
    const auto decimal = terminating_decimal(parsed.number, figures);
    if (decimal && has_value(text, *decimal + std::string(symbol(unit, Letters::unicode)))) {
      return true;
    }
  }
  return false;
}

int check(const std::filesystem::path& problems, const std::filesystem::path& texts) {
  int found = 0;
  int missing = 0;
  for (const ProblemAnswers& problem : problem_answers()) {
    const auto read = read_circuit({problem.file, contents(problems / problem.file)});
    if (!read.value) return 1;
    const std::string name = std::filesystem::path(problem.file).stem().string() + ".txt";
    const std::string text = squeezed(contents(texts / name));
    for (const ProblemAnswer& answer : problem.answers) {
      if (has_answer(text, answer, read.value->figures)) {
        ++found;
        continue;
      }
      ++missing;
      std::cout << problem.file << ": " << answer.question << " = " << answer.exact
                << " is not in the PDF\n";
    }
  }
  std::cout << found << " answers found\n";
  return found > 0 && missing == 0 ? 0 : 1;
}

}  // namespace
}  // namespace ohmfold

int main(int count, char** arguments) {
  if (count != 3) return 2;
  return ohmfold::check(arguments[1], arguments[2]);
}
