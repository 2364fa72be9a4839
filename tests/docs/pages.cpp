// Finds the examples of the pages.
#include "docs/pages.h"

#include <algorithm>
#include <string_view>

#include "programs/program.h"

namespace ohmfold::testing {
namespace {

constexpr std::string_view kLeftOut = "[...]";

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    lines.push_back(text.substr(begin, end - begin));
    begin = end + 1;
  }
  return lines;
}

std::string trimmed(const std::string& text) {
  const std::size_t begin = text.find_first_not_of(" \n");
  if (begin == std::string::npos) return "";
  return text.substr(begin, text.find_last_not_of(" \n") + 1 - begin);
}

using Lines = std::vector<std::string>;

/// The stretches between the lines [...]: one more than there are of these.
std::vector<Lines> stretches(const std::string& shown) {
  std::vector<Lines> all(1);
  for (const std::string& line : lines_of(shown)) {
    if (line == kLeftOut) {
      all.emplace_back();
    } else {
      all.back().push_back(line);
    }
  }
  return all;
}

/// Requires at + stretch.size() <= lines.size().
bool stands_at(const Lines& lines, std::size_t at, const Lines& stretch) {
  return std::equal(stretch.begin(), stretch.end(),
                    lines.begin() + static_cast<std::ptrdiff_t>(at));
}

/// Walks over a page line by line.
class PageReader {
 public:
  explicit PageReader(const std::string& text) : text_(text) {}

  std::vector<Example> run() {
    while (at_ < text_.size()) {
      const std::string line = next();
      if (line.starts_with("<!--")) {
        read_comment(line);
      } else if (line.starts_with("```")) {
        read_block(line.substr(3));
      } else if (!trimmed(line).empty()) {
        waiting_ = {};
      }
    }
    return std::move(examples_);
  }

 private:
  std::string next() {
    const std::size_t end = std::min(text_.find('\n', at_), text_.size());
    std::string line = text_.substr(at_, end - at_);
    at_ = std::min(end + 1, text_.size());
    ++line_;
    return line;
  }

  void read_comment(std::string comment) {
    while (comment.find("-->") == std::string::npos && at_ < text_.size()) {
      comment += '\n' + next();
    }
    const std::size_t end = comment.find("-->");
    const std::string inside = trimmed(comment.substr(4, end == std::string::npos ? end : end - 4));
    const std::size_t first = std::min(inside.find_first_of(" \n:"), inside.size());
    waiting_.kind = inside.substr(0, first);
    const std::size_t rest = std::min(inside.find_first_not_of(" \n:", first), inside.size());
    waiting_.details = inside.substr(rest);
  }

  void read_block(const std::string& language) {
    Example example = std::move(waiting_);
    waiting_ = {};
    example.line = line_;
    example.language = language;
    example.begin = at_;
    while (at_ < text_.size()) {
      const std::string line = next();
      if (line == "```") break;
      example.text += line + '\n';
    }
    examples_.push_back(std::move(example));
  }

  const std::string& text_;
  std::size_t at_ = 0;
  std::size_t line_ = 0;
  Example waiting_;
  std::vector<Example> examples_;
};

}  // namespace

std::string Page::place(const Example& example) const {
  return path.filename().string() + ":" + std::to_string(example.line);
}

std::vector<Page> pages() {
  const std::filesystem::path top = OHMFOLD_SOURCE_DIR;
  std::vector<std::filesystem::path> paths;
  for (const auto& entry : std::filesystem::directory_iterator(top / "docs")) {
    if (entry.path().extension() == ".md") paths.push_back(entry.path());
  }
  std::sort(paths.begin(), paths.end());
  paths.insert(paths.begin(), {top / "README.md", top / "DEVELOPERS.md"});
  std::vector<Page> all;
  for (const std::filesystem::path& path : paths) {
    std::string text = read_file(path);
    std::vector<Example> examples = examples_in(text);
    all.push_back({path, std::move(text), std::move(examples)});
  }
  return all;
}

std::vector<Example> examples_in(const std::string& text) {
  return PageReader(text).run();
}

bool shows(const std::string& shown, const std::string& full) {
  const std::vector<Lines> wanted = stretches(shown);
  const Lines lines = lines_of(full);
  std::size_t at = 0;
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    const Lines& stretch = wanted[i];
    if (stretch.size() > lines.size() - at) return false;
    // The first stretch stands at the beginning, the last at the end, others anywhere between.
    if (i > 0) {
      const std::size_t last = lines.size() - stretch.size();
      if (i + 1 == wanted.size()) at = last;
      while (at < last && !stands_at(lines, at, stretch)) ++at;
    }
    if (!stands_at(lines, at, stretch)) return false;
    at += stretch.size();
  }
  return at == lines.size();
}

std::string shown_anew(const std::string& shown, const std::string& full) {
  const std::vector<Lines> before = stretches(shown);
  if (before.size() == 1) return full;
  const Lines lines = lines_of(full);
  std::string anew;
  auto at = lines.begin();
  for (std::size_t i = 0; i < before.size(); ++i) {
    if (i > 0) anew += std::string(kLeftOut) + '\n';
    if (before[i].empty()) continue;
    const auto first = std::find(at, lines.end(), before[i].front());
    if (first == lines.end()) return shown;
    const auto after_first = before[i].size() > 1 ? first + 1 : first;
    const auto last = std::find(after_first, lines.end(), before[i].back());
    if (last == lines.end()) return shown;
    at = last + 1;
    for (auto line = first; line != at; ++line) anew += *line + '\n';
  }
  return anew;
}

}  // namespace ohmfold::testing
