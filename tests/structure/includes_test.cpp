// Which folder may include what: the arrows between the parts of the program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "structure/sources.h"

namespace ohmfold::testing {
namespace {

using ::testing::IsEmpty;

/// Each folder of src with the folders that it may include, besides itself and include/ohmfold.
const std::map<std::string, std::set<std::string>> kArrows = {
    {"exact", {}},
    {"circuit", {"exact"}},
    {"language", {"exact", "circuit"}},
    {"rules", {"exact", "circuit"}},
    {"check", {"exact", "circuit"}},
    {"bridge", {"exact", "circuit", "rules"}},
    {"solve", {"exact", "circuit", "rules", "check", "bridge"}},
    {"coach", {"exact", "circuit", "language", "rules", "solve"}},
    {"drawing", {"exact", "circuit"}},
    {"views", {"exact", "circuit", "drawing"}},
    {"handout", {"exact", "circuit", "drawing", "views"}},
    {"cli",
     {"exact", "circuit", "language", "rules", "check", "bridge", "solve", "coach", "drawing",
      "views", "handout"}},
};

/// Libraries of others, by the first folder of their headers, and where each may be included.
const std::map<std::string, std::set<std::string>> kGuests = {
    {"cln", {"exact", "circuit", "rules", "check", "solve", "cli", "include/ohmfold/value.h"}},
    {"ginac", {"check"}},
    {"nlohmann", {"views"}},
    {"boost", {"drawing"}},
    {"CLI", {"cli"}},
    {"histedit.h", {"cli"}},
};

struct Include {
  std::string file;  ///< that includes
  std::string path;  ///< what is included
  bool quoted = false;
};

std::vector<Include> includes_of(const Source& source) {
  static const std::regex kLine(R"(^\s*#\s*include\s*(["<])([^">]+)[">])");
  std::vector<Include> found;
  for (const std::string& line : lines(source.text)) {
    std::smatch match;
    if (std::regex_search(line, match, kLine)) {
      found.push_back({source.path, match[2].str(), match[1].str() == "\""});
    }
  }
  return found;
}

/// The second name of "src/rules/series.cpp".
std::string folder_of(const std::string& file) {
  const std::size_t begin = file.find('/') + 1;
  return file.substr(begin, file.find('/', begin) - begin);
}

bool is_allowed(const Include& include) {
  const std::string target = include.path.substr(0, include.path.find('/'));
  const bool is_public = include.file.starts_with("include/");
  const std::string folder = folder_of(include.file);
  if (!include.quoted) {
    const auto guest = kGuests.find(target);
    return guest == kGuests.end() || guest->second.contains(is_public ? include.file : folder);
  }
  if (target == "ohmfold") return true;
  if (is_public) return false;
  const auto arrows = kArrows.find(folder);
  if (arrows == kArrows.end()) return false;
  return target == folder || arrows->second.contains(target);
}

TEST(Includes, FollowTheArrows) {
  std::vector<std::string> wrong;
  std::size_t seen = 0;
  for (const std::string folder : {"src", "include"}) {
    for (const Source& source : sources(folder)) {
      for (const Include& include : includes_of(source)) {
        ++seen;
        if (!is_allowed(include)) wrong.push_back(include.file + " includes " + include.path);
      }
    }
  }
  EXPECT_THAT(wrong, IsEmpty());
  EXPECT_GT(seen, 200U);
}

TEST(Includes, AgainstTheArrowsAreFound) {
  const std::vector<Include> wrong = {
      {"src/exact/value.cpp", "circuit/graph.h", true},
      {"src/check/laws.cpp", "rules/rules.h", true},
      {"src/check/laws.cpp", "solve/reduce.h", true},
      {"src/language/reader.cpp", "views/words.h", true},
      {"src/views/text.cpp", "solve/reduce.h", true},
      {"src/rules/series.cpp", "visited.h", true},
      {"src/extra/more.cpp", "circuit/graph.h", true},
      {"include/ohmfold/trace.h", "circuit/graph.h", true},
      {"include/ohmfold/trace.h", "cln/integer.h", false},
      {"src/views/text.cpp", "ginac/ginac.h", false},
      {"src/solve/solve.cpp", "nlohmann/json.hpp", false},
  };
  for (const Include& include : wrong) {
    EXPECT_FALSE(is_allowed(include)) << include.file << " includes " << include.path;
  }
}

TEST(Includes, OfTheCommandLineLibraryAreInOneFile) {
  std::set<std::string> files;
  for (const Source& source : sources("src")) {
    for (const Include& include : includes_of(source)) {
      if (include.path.starts_with("CLI/")) files.insert(source.path);
    }
  }
  EXPECT_EQ(files, std::set<std::string>{"src/cli/arguments.cpp"});
}

}  // namespace
}  // namespace ohmfold::testing
