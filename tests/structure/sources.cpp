// Finds and reads the project's sources.
#include "structure/sources.h"

#include <algorithm>
#include <fstream>
#include <sstream>

namespace ohmfold::testing {

std::filesystem::path top_folder() {
  return OHMFOLD_SOURCE_DIR;
}

std::vector<Source> sources(const std::string& folder) {
  std::vector<Source> found;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(top_folder() / folder)) {
    const std::string ending = entry.path().extension().string();
    if (ending != ".cpp" && ending != ".h") continue;
    std::ostringstream text;
    text << std::ifstream(entry.path()).rdbuf();
    found.push_back({entry.path().lexically_relative(top_folder()).generic_string(), text.str()});
  }
  std::sort(found.begin(), found.end(),
            [](const Source& a, const Source& b) { return a.path < b.path; });
  return found;
}

std::vector<std::string> lines(const std::string& text) {
  std::vector<std::string> all;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) all.push_back(line);
  return all;
}

std::string code_only(const std::string& text) {
  enum class Where { code, line_comment, comment, quote };
  Where where = Where::code;
  char closing = 0;
  std::string code;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const std::string_view rest = std::string_view(text).substr(i);
    const char letter = text[i];
    const bool was_code = where == Where::code;
    if (was_code && rest.starts_with("//")) {
      where = Where::line_comment;
    } else if (was_code && rest.starts_with("/*")) {
      where = Where::comment;
    } else if (was_code && letter == '"') {
      where = Where::quote;
      closing = letter;
    } else if (was_code && rest.starts_with("'\"'")) {
      code += "   ";
      i += 2;
      continue;
    } else if (where == Where::line_comment && letter == '\n') {
      where = Where::code;
    } else if (where == Where::comment && rest.starts_with("*/")) {
      where = Where::code;
      code += "  ";
      ++i;
      continue;
    } else if (where == Where::quote && letter == '\\') {
      code += "  ";
      ++i;
      continue;
    } else if (where == Where::quote && letter == closing) {
      where = Where::code;
      code += ' ';
      continue;
    }
    code += letter == '\n' || where == Where::code ? letter : ' ';
  }
  return code;
}

}  // namespace ohmfold::testing
