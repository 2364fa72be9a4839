// From a circuit file to everything that is written to be handed out, which is then read again: a
// title passes through as text, whatever is in it.
#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "fuzz/targets.h"
#include "ohmfold/draw.h"
#include "ohmfold/error.h"
#include "ohmfold/handout.h"
#include "ohmfold/read.h"
#include "ohmfold/solve.h"
#include "support/svg_reader.h"

namespace ohmfold::fuzz {
namespace {

using support::Xml;
using support::XmlDialect;

constexpr std::size_t kMostParts = 25;
constexpr std::size_t kMostCases = 4;
constexpr std::size_t kMostBits = 500;

bool is_small(const Problem& problem) {
  return problem.parts.size() <= kMostParts && problem.cases.size() <= kMostCases &&
         std::ranges::all_of(problem.parts, [](const Part& part) {
           return part.value.bits() <= kMostBits && part.internal.bits() <= kMostBits;
         });
}

/// Without spaces and what steers, which a writer may set in its own way.
std::string letters_of(const std::string& text) {
  std::string letters;
  for (const char c : text) {
    if (static_cast<unsigned char>(c) > 0x20 && c != 0x7F) letters += c;
  }
  for (const char* steering : {"\xEF\xBF\xBD", "\xEF\xBF\xBE", "\xEF\xBF\xBF"}) {
    for (std::size_t at = letters.find(steering); at != std::string::npos;
         at = letters.find(steering)) {
      letters.erase(at, 3);
    }
  }
  return letters;
}

std::map<std::string, std::size_t> elements_of(const Xml& xml) {
  std::map<std::string, std::size_t> count;
  for (const support::XmlNode& node : xml.nodes) ++count[node.name];
  return count;
}

/// The title stands where it belongs, and brings no element of its own.
void check_markup(const std::string& text, const std::string& plain, XmlDialect dialect,
                  const std::string& title) {
  const Xml xml = support::read_xml(text, dialect);
  ensure(elements_of(xml) == elements_of(support::read_xml(plain, dialect)),
         "a title brings no element");
  const std::size_t at = xml.find("title");
  ensure(at != SIZE_MAX, "a page has a title");
  ensure(letters_of(xml.text_of(at)).find(letters_of(title)) != std::string::npos,
         "a title is the title of its page");
}

/// How often each character that LaTeX takes as a command stands there without a backslash, and
/// each word after one.
std::map<std::string, std::size_t> commands_of(const std::string& latex) {
  constexpr std::string_view kSpecial = "%$&#_^{}";
  std::map<std::string, std::size_t> count;
  for (std::size_t at = 0; at < latex.size(); ++at) {
    if (latex[at] != '\\') {
      if (kSpecial.find(latex[at]) != std::string_view::npos) ++count[std::string(1, latex[at])];
      continue;
    }
    std::size_t end = at + 1;
    while (end < latex.size() && std::isalpha(static_cast<unsigned char>(latex[end])) != 0) ++end;
    if (end > at + 1) ++count[latex.substr(at, end - at)];
    at = std::max(end - 1, at + 1);
  }
  return count;
}

void check_latex(const std::string& latex, const std::string& plain) {
  const auto written = commands_of(latex);
  const auto usual = commands_of(plain);
  const auto times = [](const auto& count, const std::string& key) {
    const auto found = count.find(key);
    return found == count.end() ? std::size_t{0} : found->second;
  };
  for (const char* special : {"%", "$", "&", "#", "_", "^"}) {
    ensure(times(written, special) == times(usual, special),
           std::string("a title brings no ") + special);
  }
  ensure(times(written, "{") == times(written, "}"), "braces of LaTeX come in pairs");
  for (const char* command : {"\\input", "\\include", "\\write", "\\openout", "\\immediate",
                              "\\def", "\\let", "\\csname", "\\catcode", "\\begin", "\\end"}) {
    ensure(times(written, command) == times(usual, command),
           std::string("a title brings no ") + command);
  }
}

void check_markdown(const Markdown& markdown, const Markdown& plain) {
  for (const SideFile& figure : markdown.figures) support::read_svg(figure.text);
  ensure(markdown.figures.size() == plain.figures.size(), "a title brings no figure");
  // Raw HTML needs "<"; figures within the text are the same in both.
  ensure(std::ranges::count(markdown.text, '<') == std::ranges::count(plain.text, '<') ||
             markdown.text.find("\\<") != std::string::npos,
         "a title brings no HTML");
}

void check_terminal(const std::string& text) {
  ensure(std::ranges::all_of(
             text, [](char c) { return c == '\n' || static_cast<unsigned char>(c) >= 0x20; }),
         "a drawing for a terminal holds no control character");
}

Trace plainly_named(const Trace& trace) {
  Problem problem = *trace.problem;
  problem.title = "Plain";
  Trace plain = trace;
  plain.problem = std::make_shared<const Problem>(std::move(problem));
  return plain;
}

void draw_and_check(const Trace& trace, const Trace& plain) {
  for (std::size_t i = 0; i < trace.cases.size(); ++i) {
    for (const std::size_t steps : {std::size_t{0}, trace.cases[i].main.steps.size()}) {
      const DrawOptions options{.currents = true, .potentials = true};
      const std::string svg = draw_svg(trace, i, steps, options);
      support::read_svg(svg);
      check_markup(svg, draw_svg(plain, i, steps, options), XmlDialect::xml, trace.problem->title);
      check_terminal(draw_text(trace, i, steps, options));
      check_latex(draw_tikz(trace, i, steps, options), draw_tikz(plain, i, steps, options));
    }
  }
}

}  // namespace

void handout(std::string_view bytes) {
  const SourceText source{.name = "handout", .text = std::string(bytes)};
  const Outcome<Problem> problem = read_circuit(source);
  if (!problem || !is_small(*problem.value)) return;
  const Trace trace = solve(*problem.value);
  const bool has_title = !letters_of(trace.problem->title).empty();
  const Trace plain = has_title ? plainly_named(trace) : trace;
  const std::string& title = trace.problem->title;
  draw_and_check(trace, plain);
  const std::array<Trace, 1> traces{trace};
  const std::array<Trace, 1> plains{plain};
  for (const bool workbook : {false, true}) {
    const HandoutOptions options{.redraws = Redraws::steps, .workbook = workbook};
    check_markup(render_html(traces, options), render_html(plains, options), XmlDialect::html,
                 title);
  }
  for (const bool fragment : {false, true}) {
    const HandoutOptions options{.fragment = fragment};
    check_latex(render_latex(traces, options), render_latex(plains, options));
  }
  for (const char* stem : {"", "figure"}) {
    check_markdown(render_markdown(traces, stem), render_markdown(plains, stem));
  }
}

}  // namespace ohmfold::fuzz
