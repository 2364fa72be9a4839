// Writes answers, with care for what can go wrong on the way to a disk.
#include "cli/output.h"

#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <system_error>
#include <vector>

#include "cli/complain.h"

namespace ohmfold {
namespace {

/// The number of the system's error, 0 where all went well.
using ErrorNumber = int;

ErrorNumber write_all(int file, const std::string& text) {
  std::size_t done = 0;
  while (done < text.size()) {
    const ssize_t count = ::write(file, text.data() + done, text.size() - done);
    if (count >= 0) {
      done += static_cast<std::size_t>(count);
    } else if (errno != EINTR) {
      return errno;
    }
  }
  return 0;
}

/// What the file system says about a name, links followed; nothing where it says nothing.
std::optional<struct stat> look_up(const std::string& name) {
  struct stat found {};
  if (::stat(name.c_str(), &found) != 0) return std::nullopt;
  return found;
}

bool is_same(const struct stat& first, const struct stat& second) {
  return first.st_dev == second.st_dev && first.st_ino == second.st_ino;
}

/// "/dev/stdout" and its like.
bool is_standard_output(const struct stat& target) {
  struct stat ours {};
  return ::fstat(STDOUT_FILENO, &ours) == 0 && is_same(ours, target);
}

ErrorNumber write_directly(const std::string& text, const std::string& name) {
  std::FILE* file = std::fopen(name.c_str(), "w");
  if (file == nullptr) return errno;
  const ErrorNumber error = write_all(::fileno(file), text);
  return std::fclose(file) != 0 && error == 0 ? errno : error;
}

/// The permissions that a new file would get, which mkstemp does not give.
mode_t usual_mode() {
  const mode_t mask = ::umask(0);
  ::umask(mask);
  return static_cast<mode_t>(0666) & ~mask;
}

/// A file that is written but not yet at its place.
struct Aside {
  std::string at, target;
};

/// Beside its place, through a link, so that the link stays one. `mode`: the permissions that the
/// file shall have.
ErrorNumber put_aside(const std::string& text, const std::string& name, mode_t mode, Aside& aside) {
  std::error_code no_link;
  const std::filesystem::path through = std::filesystem::weakly_canonical(name, no_link);
  aside.target = no_link ? name : through.string();
  aside.at = aside.target + ".XXXXXX";
  const int file = ::mkstemp(aside.at.data());
  if (file < 0) return errno;
  ErrorNumber error = write_all(file, text);
  if (error == 0 && ::fchmod(file, mode) != 0) error = errno;
  if (error == 0 && ::fsync(file) != 0) error = errno;
  if (::close(file) != 0 && error == 0) error = errno;
  if (error != 0) ::unlink(aside.at.c_str());
  return error;
}

ErrorNumber put_in_place(const Aside& aside) {
  if (::rename(aside.at.c_str(), aside.target.c_str()) == 0) return 0;
  const ErrorNumber error = errno;
  ::unlink(aside.at.c_str());
  return error;
}

ErrorNumber write_aside(const std::string& text, const std::string& name, mode_t mode) {
  Aside aside;
  const ErrorNumber error = put_aside(text, name, mode, aside);
  return error != 0 ? error : put_in_place(aside);
}

/// The permissions of an ordinary file that is there and may be written, or those of a new one.
ErrorNumber find_mode(const std::string& name, mode_t& mode) {
  const std::optional<struct stat> there = look_up(name);
  mode = there ? there->st_mode & static_cast<mode_t>(0777) : usual_mode();
  if (!there) return 0;
  if (S_ISDIR(there->st_mode)) return EISDIR;
  return ::access(name.c_str(), W_OK) == 0 ? 0 : errno;  // renaming would not ask
}

ErrorNumber write_file(const std::string& text, const std::string& name) {
  const std::optional<struct stat> there = look_up(name);
  if (there && is_standard_output(*there)) return write_all(STDOUT_FILENO, text);
  if (there && !S_ISDIR(there->st_mode) && !S_ISREG(there->st_mode)) {
    return write_directly(text, name);
  }
  mode_t mode = 0;
  const ErrorNumber error = find_mode(name, mode);
  return error != 0 ? error : write_aside(text, name, mode);
}

ExitCode tell_unwritten(const std::string& name, ErrorNumber error) {
  complain("cannot write to " + name + ": " + std::strerror(error));
  return ExitCode::wrong_input;
}

}  // namespace

ExitCode deliver(const std::string& text, const std::string& name) {
  const ErrorNumber error = name.empty() ? write_all(STDOUT_FILENO, text) : write_file(text, name);
  if (error == 0 || error == EPIPE) return ExitCode::solved;
  return tell_unwritten(name.empty() ? "standard output" : name, error);
}

ExitCode deliver_all(const std::vector<OutputFile>& files) {
  std::vector<Aside> asides;
  for (const OutputFile& file : files) {
    mode_t mode = 0;
    ErrorNumber error = find_mode(file.name, mode);
    if (error == 0) error = put_aside(file.text, file.name, mode, asides.emplace_back());
    if (error == 0) continue;
    for (const Aside& aside : asides) ::unlink(aside.at.c_str());
    return tell_unwritten(file.name, error);
  }
  ExitCode code = ExitCode::solved;
  for (std::size_t i = 0; i < files.size(); ++i) {
    const ErrorNumber error = put_in_place(asides[i]);
    if (error != 0) code = tell_unwritten(files[i].name, error);
  }
  return code;
}

bool is_ordinary(const std::string& name) {
  const std::optional<struct stat> there = look_up(name);
  return !there || S_ISREG(there->st_mode);
}

bool same_file(const std::string& first, const std::string& second) {
  const std::optional<struct stat> a = look_up(first);
  const std::optional<struct stat> b = look_up(second);
  return a && b && S_ISREG(a->st_mode) && is_same(*a, *b);
}

bool would_overwrite(const std::string& output, const std::string& input) {
  if (!same_file(input, output)) return false;
  complain("the answer would overwrite " + input);
  return true;
}

}  // namespace ohmfold
