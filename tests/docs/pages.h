// The project's pages and the examples in them, as data.
//
// An example is a fenced block; a comment before it says what it is:
//   <!-- file: problems/x.circuit -->  that file, word for word
//   <!-- write: x.circuit -->          put into that file for the commands that follow
//   <!-- run -->                       a command; `run 3` says that it ends with code 3
//   <!-- output -->                    what the last command writes, errors first; a line [...]
//                                      stands for lines that are left out
//   <!-- circuit -->                   statements of a circuit file; what else the comment holds is
//                                      put before them
//   <!-- work … -->                    claims about the circuit that the comment holds
//   <!-- values -->                    lines "form  value in ohm"
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <vector>

namespace ohmfold::testing {

struct Example {
  std::string kind;       ///< the first word of the comment; "" for a block without one
  std::string details;    ///< what else the comment holds, without spaces at its ends
  std::string text;       ///< of the block, with its last line end
  std::size_t line = 0;   ///< of the fence that opens the block, from 1
  std::size_t begin = 0;  ///< byte of the page where the text begins
  std::string language;   ///< after the opening fence
};

struct Page {
  std::filesystem::path path;
  std::string text;
  std::vector<Example> examples;

  /// "README.md:12", for messages.
  [[nodiscard]] std::string place(const Example& example) const;
};

/// README.md, DEVELOPERS.md and all of docs/*.md, in order.
[[nodiscard]] std::vector<Page> pages();

/// Requires the text of a page. A fence that is not closed ends with the page.
[[nodiscard]] std::vector<Example> examples_in(const std::string& text);

/// Does `shown`, in which a line [...] stands for any number of lines, show `full`?
[[nodiscard]] bool shows(const std::string& shown, const std::string& full);

/// `shown` made new from `full`: of each stretch between the lines [...] the first and the last
/// line are looked for. `shown` itself where one of them is no longer there.
[[nodiscard]] std::string shown_anew(const std::string& shown, const std::string& full);

}  // namespace ohmfold::testing
