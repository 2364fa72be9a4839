// Runs every fuzz target on its kept inputs: seeds, and one named file for each past failure.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

#include "fuzz/targets.h"

namespace ohmfold::fuzz {
namespace {

using Target = void (*)(std::string_view);

const std::map<std::string, Target> kTargets = {{"number", number},   {"expression", expression},
                                                {"circuit", circuit}, {"pipeline", pipeline},
                                                {"work", work},       {"handout", handout}};

const std::filesystem::path kTop = OHMFOLD_SOURCE_DIR;

std::vector<std::filesystem::path> files_in(const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
    if (entry.is_regular_file()) files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

std::string bytes_of(const std::filesystem::path& path) {
  std::ostringstream bytes;
  bytes << std::ifstream(path, std::ios::binary).rdbuf();
  return bytes.str();
}

void expect_to_pass(Target target, const std::filesystem::path& file) {
  EXPECT_NO_THROW(target(bytes_of(file))) << file;
}

TEST(Corpus, OfEachTargetPasses) {
  for (const auto& [name, target] : kTargets) {
    const auto files = files_in(kTop / "tests" / "fuzz" / "corpus" / name);
    EXPECT_GE(files.size(), 5U) << name;
    for (const auto& file : files) expect_to_pass(target, file);
  }
}

TEST(Corpus, OfProblemsPassesThroughThePipeline) {
  for (const auto& file : files_in(kTop / "problems")) expect_to_pass(pipeline, file);
}

/// The beginning of a text is the likeliest wrong text of all.
TEST(Corpus, CutOffAnywherePasses) {
  for (const auto& [name, target] : kTargets) {
    for (const auto& file : files_in(kTop / "tests" / "fuzz" / "corpus" / name)) {
      const std::string bytes = bytes_of(file);
      if (bytes.size() > 400) continue;
      for (std::size_t length = 0; length < bytes.size(); ++length) {
        EXPECT_NO_THROW(target(bytes.substr(0, length))) << file << " to " << length;
      }
    }
  }
}

}  // namespace
}  // namespace ohmfold::fuzz
