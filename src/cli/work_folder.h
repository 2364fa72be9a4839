// The work files that a command line names: files, and folders that hold them.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace ohmfold {

struct NamedFile {
  std::string path;
  std::string name;  ///< to be shown: within the folder where only one is named, else the path
};

/// Each file as it stands, and of each folder its *.work files in the order of their names, not
/// those of folders within it. A folder that cannot be read or has none is told on standard error;
/// then there is nothing.
[[nodiscard]] std::optional<std::vector<NamedFile>> work_files(
    const std::vector<std::string>& named);

}  // namespace ohmfold
