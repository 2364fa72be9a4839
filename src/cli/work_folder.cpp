// The work files that a command line names: files, and folders that hold them.
#include "cli/work_folder.h"

#include <algorithm>
#include <filesystem>
#include <system_error>

#include "cli/complain.h"
#include "language/utf8.h"

namespace ohmfold {
namespace {

namespace fs = std::filesystem;

/// Names of all *.work entries but folders, sorted; nothing where the folder cannot be read.
std::optional<std::vector<std::string>> names_in(const std::string& folder,
                                                 std::error_code& error) {
  std::vector<std::string> names;
  fs::directory_iterator entry(folder, error);
  for (; !error && entry != fs::directory_iterator(); entry.increment(error)) {
    std::error_code unknown;
    if (entry->path().extension() != ".work" || entry->is_directory(unknown)) continue;
    names.push_back(entry->path().filename().string());
  }
  if (error) return std::nullopt;
  std::ranges::sort(names);
  return names;
}

}  // namespace

std::optional<std::vector<NamedFile>> work_files(const std::vector<std::string>& named) {
  std::vector<NamedFile> files;
  bool complete = true;
  for (const std::string& one : named) {
    std::error_code unknown;
    if (!fs::is_directory(one, unknown)) {
      files.push_back({one, shown(one)});
      continue;
    }
    std::error_code error;
    const std::optional<std::vector<std::string>> names = names_in(one, error);
    if (!names) complain("cannot read the folder " + shown(one) + ": " + error.message());
    if (names && names->empty()) complain("no file in " + shown(one) + " ends in .work");
    complete = complete && names && !names->empty();
    if (!names) continue;
    for (const std::string& name : *names) {
      const std::string path = (fs::path(one) / name).string();
      files.push_back({path, shown(named.size() == 1 ? name : path)});
    }
  }
  if (!complete) return std::nullopt;
  return files;
}

}  // namespace ohmfold
