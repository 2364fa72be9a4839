// The works of a class as comma-separated values, by RFC 4180.
#include <initializer_list>
#include <string>
#include <string_view>

#include "ohmfold/render.h"

namespace ohmfold {

namespace {

constexpr std::string_view kLineEnd = "\r\n";  // RFC 4180, section 2, rule 1

/// What spreadsheets take for the start of a formula, which they would carry out. A leading
/// apostrophe keeps them from it (common practice, no source).
bool looks_like_a_formula(std::string_view text) {
  return !text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos;
}

/// A cell that holds the text, in quotes where it must be (RFC 4180, section 2, rules 5 to 7).
std::string cell(std::string_view text) {
  const std::string_view guard = looks_like_a_formula(text) ? "'" : "";
  if (text.find_first_of("\",\r\n") == std::string_view::npos) {
    return std::string(guard).append(text);
  }
  std::string quoted = std::string("\"").append(guard);
  for (const char c : text) quoted.append(c == '"' ? 2 : 1, c);
  return quoted + '"';
}

std::string line(std::initializer_list<std::string> cells) {
  std::string text;
  for (const std::string& one : cells) text.append(text.empty() ? "" : ",").append(cell(one));
  return text.append(kLineEnd);
}

/// "not-inverted; miscopied 2"
std::string errors_text(const MarkedWork& work) {
  std::string text;
  for (const ErrorCount& error : work.errors) {
    if (!text.empty()) text += "; ";
    text += word_of(error.error);
    if (error.count > 1) text += ' ' + std::to_string(error.count);
  }
  return text;
}

std::string row_of(const MarkedWork& work) {
  if (!work.is_judged()) {
    return line(
        {work.name, "", "", "", "", "", "", "", "", "", "", "", "", "", "", "", work.why_not});
  }
  const auto text = [](auto number) { return std::to_string(number); };
  const auto yes = [](bool lost) { return std::string(lost ? "1" : "0"); };
  const Marks& marks = work.marks;
  const VerdictCounts& count = work.verdicts;
  return line({work.name, text(marks.earned()), text(marks.most()), text(marks.method),
               text(marks.most_method), text(marks.accuracy), text(marks.most_accuracy),
               yes(marks.unit_lost), yes(marks.figures_lost), text(count.right),
               text(count.follows), text(count.rounded_early), text(count.not_right),
               text(count.cannot_tell), work.first_mistake ? text(*work.first_mistake) : "",
               errors_text(work), ""});
}

}  // namespace

std::string render_class_report_csv(const ClassReport& report) {
  std::string text =
      line({"file", "marks", "most", "method", "most_method", "accuracy", "most_accuracy",
            "unit_lost", "figures_lost", "right", "follows", "rounded_early", "not_right",
            "cannot_tell", "first_mistake", "errors", "why_not"});
  for (const MarkedWork& work : report.works) text += row_of(work);
  return text;
}

}  // namespace ohmfold
