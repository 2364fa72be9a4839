// What to say of arguments that make no sense.
#include "cli/wrong_arguments.h"

#include <algorithm>
#include <string_view>

#include "cli/option_words.h"
#include "language/nearest.h"

namespace ohmfold {
namespace {

/// An option of solve and the formats that have a use for it.
struct Fit {
  std::string_view option;
  std::vector<Format> formats;
};

const std::vector<Fit>& fits() {
  static const std::vector<Fit> all = {
      {"--workbook", {Format::html}},
      {"--fragment", {Format::latex}},
      {"--inline", {Format::markdown}},
      {"--figures-in-text", {Format::text}},
      {"--answer-key", {Format::html, Format::latex, Format::markdown}},
      {"--content", {Format::text, Format::html, Format::latex, Format::markdown}},
      {"--redraws", {Format::text, Format::html, Format::latex, Format::markdown}},
      {"--symbols", {Format::text, Format::html, Format::latex, Format::markdown}},
      {"--notation", {Format::text, Format::html, Format::latex, Format::markdown}},
      {"--width", {Format::text, Format::json}},
      {"--ascii", {Format::text, Format::json}}};
  return all;
}

std::string word_of(Format format) {
  for (const auto& [word, value] : format_words()) {
    if (value == format) return word;
  }
  return {};
}

/// "text", "html or latex", "text, html or latex"
std::string alternatives(const std::vector<Format>& formats) {
  std::string words = word_of(formats.front());
  for (std::size_t i = 1; i < formats.size(); ++i) {
    words += (i + 1 == formats.size() ? " or " : ", ") + word_of(formats[i]);
  }
  return words;
}

bool contains(const std::vector<std::string>& given, std::string_view option) {
  return std::ranges::find(given, option) != given.end();
}

}  // namespace

bool is_option(const std::string& word) {
  return word.size() > 1 && word.front() == '-';
}

std::string no_such_option(const std::string& word, const std::vector<std::string>& options) {
  const std::vector<std::string_view> known(options.begin(), options.end());
  return "there is no option '" + word + "'; " + suggestion(word, known, "options");
}

std::string no_such_command(const std::vector<std::string>& words,
                            const std::vector<std::string>& commands,
                            const std::vector<std::string>& options) {
  const std::vector<std::string_view> known(commands.begin(), commands.end());
  if (words.empty()) return "a command is needed; the commands are " + listed(known, known.size());
  const std::string& word = words.front();
  if (is_option(word)) return no_such_option(word, options);
  const std::string finding = "there is no command '" + word + "'; ";
  if (word.ends_with(".circuit")) return finding + "did you mean 'solve " + word + "'?";
  if (word.ends_with(".work")) return finding + "did you mean 'check PROBLEM " + word + "'?";
  return finding + suggestion(word, known, "commands");
}

std::string misfit(const SolveCommand& command, const std::vector<std::string>& given) {
  const Format format = command.output.format;
  for (const Fit& fit : fits()) {
    if (contains(given, fit.option) &&
        std::ranges::find(fit.formats, format) == fit.formats.end()) {
      return std::string(fit.option) + " has no use here; it goes with --as " +
             alternatives(fit.formats);
    }
  }
  for (const char* option : {"--redraws", "--symbols"}) {
    if (contains(given, option) && format == Format::text && !command.figures_in_text) {
      return std::string(option) + " is about figures; in text they need --figures-in-text";
    }
  }
  const Content content = command.handout.content;
  if (command.handout.workbook && content != Content::solution) {
    return "--workbook covers the steps of a solution; it goes with --content solution";
  }
  if (command.handout.answer_key && content == Content::answers) {
    return "--answer-key has no use here; --content answers gives all answers already";
  }
  return {};
}

std::string misfit(const DrawCommand& command, const std::vector<std::string>& given) {
  if (contains(given, "--ascii") && command.format != DrawingFormat::text) {
    return "--ascii has no use here; it goes with --as text";
  }
  return {};
}

}  // namespace ohmfold
