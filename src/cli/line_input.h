// Lines that a person types, or that come through a pipe.
#pragma once

#include <memory>
#include <optional>
#include <string>

namespace ohmfold {

/// Where both ends are a terminal, a line can be edited, and earlier lines come back with the arrow
/// keys (editline, with the person's own editrc(5)). Otherwise lines are read as they are, and
/// written out behind their prompts, so that what was said can be read together with the answers.
class LineInput {
 public:
  LineInput();
  ~LineInput();
  LineInput(const LineInput&) = delete;
  LineInput& operator=(const LineInput&) = delete;

  /// Shows the prompt; the next line without its end, cut where it is longer than any claim. At
  /// the end of the input there is none.
  [[nodiscard]] std::optional<std::string> read(const std::string& prompt);

 private:
  class Editor;
  std::unique_ptr<Editor> editor_;  ///< none where lines are read as they are
};

}  // namespace ohmfold
