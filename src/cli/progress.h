// How far a long run has come, for whoever watches it.
#pragma once

#include <cstddef>
#include <string>

namespace ohmfold {

/// One line on standard error, written anew now and then and taken away at the end; nothing at all
/// where standard error is no terminal.
class Progress {
 public:
  /// `all` things of a kind: "works".
  Progress(std::string kind, std::size_t all);
  ~Progress();
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;

  /// One more is done.
  void advance();

 private:
  void show(const std::string& line);

  std::string kind_;
  std::size_t all_;
  std::size_t done_ = 0;
  std::size_t shown_columns_ = 0;
  bool watched_;
};

}  // namespace ohmfold
