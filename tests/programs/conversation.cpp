// The real program at a terminal of its own: what a person types, and what they see.
#include "programs/conversation.h"

#include <poll.h>
#include <pty.h>
#include <signal.h>
#include <sys/wait.h>
#include <termios.h>
#include <unistd.h>

#include <cstdlib>
#include <stdexcept>
#include <vector>

namespace ohmfold::testing {
namespace {

constexpr unsigned kMostSeconds = 300;

[[noreturn]] void become(const Launch& run) {
  if (::chdir(run.folder.c_str()) != 0) ::_exit(126);
  ::setenv("TERM", "xterm", 1);
  ::setenv("HOME", run.folder.c_str(), 1);  // nobody's own key bindings
  for (const auto& [name, value] : run.environment) ::setenv(name.c_str(), value.c_str(), 1);
  ::alarm(kMostSeconds);
  std::vector<std::string> words = run.arguments;
  words.insert(words.begin(), OHMFOLD_PROGRAM);
  std::vector<char*> pointers;
  for (std::string& word : words) pointers.push_back(word.data());
  pointers.push_back(nullptr);
  ::execv(pointers.front(), pointers.data());
  ::_exit(127);
}

}  // namespace

Conversation::Conversation(const Launch& run) {
  const winsize size{24, 100, 0, 0};
  child_ = ::forkpty(&terminal_, nullptr, nullptr, &size);
  if (child_ < 0) throw std::runtime_error("no terminal");
  if (child_ == 0) become(run);
}

Conversation::~Conversation() {
  if (child_ > 0) kill();
  ::close(terminal_);
}

bool Conversation::takes_keys() const {
  termios settings{};
  return ::tcgetattr(terminal_, &settings) == 0 && (settings.c_lflag & ICANON) == 0;
}

void Conversation::type(const std::string& keys) {
  constexpr int kMostTries = 20'000;
  for (int i = 0; i < kMostTries && !takes_keys(); ++i) ::usleep(1'000);
  if (::write(terminal_, keys.data(), keys.size()) != static_cast<ssize_t>(keys.size())) {
    throw std::runtime_error("nobody reads what is typed");
  }
}

bool Conversation::shows(const std::string& text, int milliseconds) {
  while (true) {
    const std::size_t at = screen_.find(text, seen_);
    if (at != std::string::npos) {
      seen_ = at + text.size();
      return true;
    }
    if (!receive(milliseconds)) return false;
  }
}

bool Conversation::receive(int milliseconds) {
  pollfd waiting{terminal_, POLLIN, 0};
  if (::poll(&waiting, 1, milliseconds) != 1) return false;
  char piece[4096];
  const ssize_t got = ::read(terminal_, piece, sizeof piece);
  if (got <= 0) return false;
  screen_.append(piece, static_cast<std::size_t>(got));
  return true;
}

void Conversation::kill() {
  ::kill(child_, SIGKILL);
  (void)ended();
}

int Conversation::ended() {
  while (receive(60'000)) {
  }
  int status = 0;
  ::waitpid(child_, &status, 0);
  child_ = -1;
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace ohmfold::testing
