// The project's own sources, as texts to check.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace ohmfold::testing {

struct Source {
  std::string path;  ///< from the top of the project: "src/rules/series.cpp"
  std::string text;
};

/// All C++ files below `folder` ("src", "include"), sorted by path.
[[nodiscard]] std::vector<Source> sources(const std::string& folder);

[[nodiscard]] std::vector<std::string> lines(const std::string& text);

/// The text with comments and the insides of quotes blanked out, line by line in the same places.
[[nodiscard]] std::string code_only(const std::string& text);

[[nodiscard]] std::filesystem::path top_folder();

}  // namespace ohmfold::testing
