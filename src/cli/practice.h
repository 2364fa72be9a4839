// A session of practice, apart from any terminal and any file: a line in, text out.
//
// A right claim joins the work. A claim that is not right is told and stays beside the work, to be
// said anew; only "keep" puts it in, for whoever wants to go on with it. So the work stays clean
// unless the person decides otherwise.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "cli/attempts.h"
#include "ohmfold/coach.h"
#include "ohmfold/render.h"
#include "ohmfold/source.h"

namespace ohmfold {

struct Situation;

/// So many claims a work may have in a session: after each, all of them are judged.
inline constexpr std::size_t kMostClaimsInPractice = 1000;

class Practice {
 public:
  /// What there is to say about a line, whether the work has changed, and whether that was all.
  struct Reply {
    std::string text = {};
    bool changed = false;
    bool over = false;
  };

  /// Goes on with the work that `file` holds, which may be empty. Where it cannot be read there are
  /// findings. `exercise` must outlive the session.
  [[nodiscard]] static Outcome<Practice> begin(const Exercise& exercise, const SourceText& file,
                                               const TextOptions& options);

  /// The problem, the work so far, the circuit as it stands, and what to do.
  [[nodiscard]] std::string greeting() const;
  /// "> ", behind the name of the case where there are several.
  [[nodiscard]] std::string prompt() const;
  /// A claim or a word of command.
  [[nodiscard]] Reply take(std::string_view typed);
  /// What was sure, what was not, and what is still open.
  [[nodiscard]] std::string summary() const;
  /// The work as it is to be kept: the text of the file with all its comments, and the claims
  /// since.
  [[nodiscard]] const std::string& text() const { return written_.file.text; }

 private:
  /// A work with all that follows from it.
  struct Written {
    SourceText file;
    Work work;
    WorkJudgement judged;
  };

  Practice(const Exercise& exercise, Written written, const TextOptions& options)
      : exercise_(&exercise), options_(options), written_(std::move(written)) {}

  [[nodiscard]] Situation situation() const;
  static Outcome<Written> read(const Exercise& exercise, SourceText file);

  Reply claim(const std::string& line);
  Reply judge(const std::string& line);
  Reply keep();
  Reply undo();
  Reply hint();
  Reply why();
  [[nodiscard]] Reply show() const;
  [[nodiscard]] Reply help() const;
  [[nodiscard]] Reply list_cases() const;

  void accept(Written written, Attempt::End end);
  void forget_rejected();
  [[nodiscard]] std::string offer_end();
  [[nodiscard]] HintLevel next_level();
  [[nodiscard]] std::string hint_text(const Written& about, const Hint& hint);
  [[nodiscard]] std::string mending_text(const Written& about);
  [[nodiscard]] std::string last_reply(const Written& about) const;
  [[nodiscard]] std::optional<Topic> last_topic(const Written& about) const;
  [[nodiscard]] std::size_t current_case() const;
  [[nodiscard]] bool nothing_is_open() const;

  const Exercise* exercise_;
  TextOptions options_;
  Written written_;
  std::optional<Written> rejected_;     ///< the work with the claim that was not right at its end
  std::optional<HintLevel> last_hint_;  ///< since the work or the rejected claim changed
  bool end_offered_ = false;
  Attempts attempts_;
};

}  // namespace ohmfold
