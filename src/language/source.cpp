// Texts, and findings shown at their place: the line and a mark under it.

#include "ohmfold/source.h"

#include <algorithm>

#include "language/scanner.h"
#include "language/utf8.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostColumns = 80;

/// Bytes at which the characters of a line begin, as far as they are needed to show its place.
struct Ruler {
  std::vector<std::size_t> starts;  ///< one more than characters: the last is where they end
  std::size_t first = 0;            ///< the first marked character
  std::size_t marked = 1;           ///< how many
};

Ruler measured(std::string_view line, const Span& span) {
  const std::size_t begin = std::min<std::size_t>(span.column, line.size());
  const std::size_t end = std::min<std::size_t>(begin + span.length, line.size());
  Ruler ruler;
  std::size_t last = 0;
  std::size_t at = 0;
  for (; at < line.size(); at += character_at(line, at).length) {
    const std::size_t column = ruler.starts.size();
    if (at <= begin) ruler.first = column;
    if (at < end) last = column + 1;
    if (at > begin && column > ruler.first + kMostColumns) break;
    ruler.starts.push_back(at);
  }
  if (begin >= line.size()) ruler.first = ruler.starts.size();
  ruler.starts.push_back(at);
  ruler.marked = std::max<std::size_t>(last > ruler.first ? last - ruler.first : 1, 1);
  return ruler;
}

/// The line and the mark under it, at most kMostColumns wide; cut ends are shown as dots.
std::string excerpt(std::string_view line, const Ruler& ruler) {
  constexpr std::string_view kCut = "...";
  const std::size_t characters = ruler.starts.size() - 1;
  std::size_t begin = 0;
  std::size_t end = characters;
  std::string before;
  std::string after;
  if (characters > kMostColumns) {
    constexpr std::size_t kBefore = kMostColumns / 2;
    begin = ruler.first > kBefore ? ruler.first - kBefore : 0;
    end = std::min(begin + kMostColumns, characters);
    if (begin > 0) before = kCut;
    if (ruler.starts[end] < line.size()) after = kCut;
  }
  const std::size_t from = begin + before.size();
  const std::size_t to = end - after.size();
  const std::size_t width = std::min(ruler.marked, std::max(to, ruler.first + 1) - ruler.first);
  const std::string_view visible =
      line.substr(ruler.starts[from], ruler.starts[to] - ruler.starts[from]);
  return std::string("    ")
      .append(before)
      .append(shown(visible))
      .append(after)
      .append("\n    ")
      .append(ruler.first - begin, ' ')
      .append("^")
      .append(width - 1, '~');
}

std::string placed(const SourceText& source, const Span& where, std::string_view what) {
  std::string text = shown(source.name);
  if (where.line == 0) return text.append(": ").append(what);
  const std::string_view line = source.line(where.line);
  const Ruler ruler = measured(line, where);
  return text.append(":")
      .append(std::to_string(where.line))
      .append(":")
      .append(std::to_string(ruler.first + 1))
      .append(": ")
      .append(what)
      .append("\n")
      .append(excerpt(line, ruler));
}

}  // namespace

std::string_view SourceText::line(std::uint32_t number) const {
  Lines lines(text);
  while (const auto line = lines.next()) {
    if (lines.number() == number) return *line;
  }
  return {};
}

bool has_error(const Diagnostics& diagnostics) {
  return std::any_of(diagnostics.begin(), diagnostics.end(), [](const Diagnostic& diagnostic) {
    return diagnostic.severity == Severity::error;
  });
}

std::string render(const Diagnostic& diagnostic, const SourceText& source) {
  const std::string severity = diagnostic.severity == Severity::error ? "error: " : "warning: ";
  std::string text = placed(source, diagnostic.where, severity + message(diagnostic));
  if (diagnostic.other) {
    text.append("\n").append(placed(source, *diagnostic.other, "note: first here"));
  }
  return text;
}

}  // namespace ohmfold
