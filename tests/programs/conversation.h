// The real program at a terminal of its own: what a person types, and what they see.
#pragma once

#include <sys/types.h>

#include <string>

#include "programs/program.h"

namespace ohmfold::testing {

class Conversation {
 public:
  /// Starts `ohmfold` with the arguments, folder and environment of `run`.
  explicit Conversation(const Launch& run);
  ~Conversation();
  Conversation(const Conversation&) = delete;
  Conversation& operator=(const Conversation&) = delete;

  /// Types the keys as they are: "\r" ends a line, "\033[A" is the arrow up. Waits until the
  /// program takes single keys: before, the terminal itself would act on some of them.
  void type(const std::string& keys);

  /// Waits until `text` is on the screen, behind what earlier calls waited for; false where nothing
  /// more comes for so long, or the program has ended.
  [[nodiscard]] bool shows(const std::string& text, int milliseconds = 60'000);

  /// Everything that came so far.
  [[nodiscard]] const std::string& screen() const { return screen_; }

  /// SIGKILL; gone when this returns.
  void kill();

  /// Waits for the end; the exit code, -1 where it was a signal.
  [[nodiscard]] int ended();

 private:
  [[nodiscard]] bool takes_keys() const;
  bool receive(int milliseconds);

  pid_t child_ = -1;
  int terminal_ = -1;
  std::string screen_;
  std::size_t seen_ = 0;
};

}  // namespace ohmfold::testing
