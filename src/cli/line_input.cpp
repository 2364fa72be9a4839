// Lines that a person types, or that come through a pipe.
#include "cli/line_input.h"

#include <histedit.h>
#include <unistd.h>

#include <clocale>
#include <cstdio>

namespace ohmfold {
namespace {

/// Longer than any line that makes sense; what is beyond is dropped.
constexpr std::size_t kMostColumns = 65'536;
constexpr int kRemembered = 1000;

std::optional<std::string> plain_line() {
  std::string line;
  int c = std::getc(stdin);
  if (c == EOF) return std::nullopt;
  for (; c != EOF && c != '\n'; c = std::getc(stdin)) {
    if (line.size() < kMostColumns) line += static_cast<char>(c);
  }
  return line;
}

struct EndEditing {
  void operator()(EditLine* editing) const { el_end(editing); }
};
struct EndHistory {
  void operator()(History* history) const { history_end(history); }
};

}  // namespace

/// The editline library, for the terminal that we run in.
class LineInput::Editor {
 public:
  Editor() : history_(history_init()), editing_(el_init("ohmfold", stdin, stdout, stderr)) {
    if (!editing_ || !history_) return;
    HistEvent event{};
    history(history_.get(), &event, H_SETSIZE, kRemembered);
    history(history_.get(), &event, H_SETUNIQUE, 1);
    el_set(editing_.get(), EL_CLIENTDATA, this);
    el_set(editing_.get(), EL_PROMPT, &Editor::prompt);
    el_set(editing_.get(), EL_EDITOR, "emacs");
    el_set(editing_.get(), EL_SIGNAL, 1);
    el_set(editing_.get(), EL_HIST, history, history_.get());
    el_source(editing_.get(), nullptr);
  }

  /// Is there a terminal that can be edited on?
  [[nodiscard]] bool works() const { return editing_ && history_; }

  std::optional<std::string> read(const std::string& prompt) {
    prompt_ = prompt;
    int count = 0;
    const char* typed = el_gets(editing_.get(), &count);
    if (typed == nullptr || count <= 0) return std::nullopt;
    std::string line(typed, static_cast<std::size_t>(count));
    if (line.ends_with('\n')) line.pop_back();
    if (line.size() > kMostColumns) line.resize(kMostColumns);
    if (line.find_first_not_of(' ') != std::string::npos) {
      HistEvent event{};
      history(history_.get(), &event, H_ENTER, line.c_str());
    }
    return line;
  }

 private:
  static char* prompt(EditLine* editing) {
    Editor* self = nullptr;
    el_get(editing, EL_CLIENTDATA, &self);
    return self->prompt_.data();
  }

  std::string prompt_;
  std::unique_ptr<History, EndHistory> history_;
  std::unique_ptr<EditLine, EndEditing> editing_;
};

LineInput::LineInput() {
  if (isatty(STDIN_FILENO) != 1 || isatty(STDOUT_FILENO) != 1) return;
  std::setlocale(LC_CTYPE, "");  // editline counts columns by it
  editor_ = std::make_unique<Editor>();
  if (!editor_->works()) editor_.reset();
}

LineInput::~LineInput() = default;

std::optional<std::string> LineInput::read(const std::string& prompt) {
  std::optional<std::string> line;
  if (editor_) {
    line = editor_->read(prompt);
  } else {
    std::fputs(prompt.c_str(), stdout);
    std::fflush(stdout);
    line = plain_line();
    if (line && isatty(STDIN_FILENO) != 1) std::printf("%s\n", line->c_str());
  }
  if (!line) std::fputs("\n", stdout);
  return line;
}

}  // namespace ohmfold
