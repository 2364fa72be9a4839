// The problems of problems/, solved.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "ohmfold/coach.h"
#include "ohmfold/read.h"
#include "ohmfold/rule.h"

namespace ohmfold::test {

struct ProblemFile {
  std::string name;
  Exercise exercise;
};

/// All of them, in the order of their names.
inline const std::vector<ProblemFile>& problem_files() {
  static const std::vector<ProblemFile> kFiles = [] {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(OHMFOLD_SOURCE_DIR) + "/problems")) {
      if (entry.path().extension() == ".circuit") paths.push_back(entry.path());
    }
    std::sort(paths.begin(), paths.end());
    std::vector<ProblemFile> files;
    for (const std::filesystem::path& path : paths) {
      std::ostringstream text;
      text << std::ifstream(path).rdbuf();
      const Outcome<Problem> problem = read_circuit({path.filename(), text.str()});
      if (!problem) {
        ADD_FAILURE() << path << " cannot be read";
        continue;
      }
      files.push_back({path.filename(), prepare(*problem.value)});
    }
    return files;
  }();
  return kFiles;
}

/// The network after the steps that leave out what carries nothing and join what ideal wires join.
inline Network cleaned(const Reduction& reduction) {
  std::size_t count = 0;
  while (count < reduction.steps.size() &&
         rule(reduction.steps[count].rule).tier == Tier::clean_up) {
    ++count;
  }
  return replay(reduction, count);
}

/// A wire without a name in the file cannot be spoken of.
inline bool can_be_named(const std::string& name) {
  return name.find(' ') == std::string::npos;
}

}  // namespace ohmfold::test
