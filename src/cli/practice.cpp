// A session of practice: claims and words of command, one line at a time.
#include "cli/practice.h"

#include <algorithm>
#include <array>
#include <utility>
#include <variant>

#include "cli/practice_words.h"
#include "language/nearest.h"
#include "ohmfold/error.h"
#include "ohmfold/read.h"

namespace ohmfold {
namespace {

/// After so many wrong claims about the same, a hint is offered.
constexpr std::size_t kTriesBeforeAnOffer = 2;

constexpr std::array<std::string_view, 8> kCommands = {"hint", "show", "undo", "why",
                                                       "keep", "case", "help", "quit"};

std::string trimmed(std::string_view line) {
  constexpr std::string_view kSpaces = " \t\r\n";
  const std::size_t first = line.find_first_not_of(kSpaces);
  if (first == std::string_view::npos) return {};
  return std::string(line.substr(first, line.find_last_not_of(kSpaces) - first + 1));
}

/// `text` with one more line at its end.
SourceText with_line(SourceText file, const std::string& line) {
  if (!file.text.empty() && !file.text.ends_with('\n')) file.text += '\n';
  file.text += line + '\n';
  return file;
}

/// `file` without the line of that number.
SourceText without_line(SourceText file, std::uint32_t number) {
  std::size_t begin = 0;
  for (std::uint32_t line = 1; line < number; ++line) begin = file.text.find('\n', begin) + 1;
  const std::size_t end = file.text.find('\n', begin);
  file.text.erase(begin, end == std::string::npos ? end : end + 1 - begin);
  return file;
}

}  // namespace

Outcome<Practice> Practice::begin(const Exercise& exercise, const SourceText& file,
                                  const TextOptions& options) {
  Outcome<Written> written = read(exercise, file);
  if (!written) return {.value = std::nullopt, .diagnostics = std::move(written.diagnostics)};
  return {.value = Practice(exercise, std::move(*written.value), options),
          .diagnostics = std::move(written.diagnostics)};
}

Outcome<Practice::Written> Practice::read(const Exercise& exercise, SourceText file) {
  Outcome<Work> work = read_work(file, *exercise.problem);
  if (!work) return {.value = std::nullopt, .diagnostics = std::move(work.diagnostics)};
  WorkJudgement judged = judge_work(exercise, *work.value);
  return {.value = Written{std::move(file), std::move(*work.value), std::move(judged)},
          .diagnostics = std::move(work.diagnostics)};
}

Situation Practice::situation() const {
  return {*exercise_, written_.work, written_.judged, current_case(), options_};
}

std::string Practice::greeting() const {
  return greeting_words(situation(), nothing_is_open());
}

std::string Practice::prompt() const {
  const std::string& name = exercise_->trace.cases.at(current_case()).name;
  return exercise_->trace.cases.size() > 1 ? name + "> " : "> ";
}

std::string Practice::summary() const {
  return summary_words(situation(), attempts_.all());
}

Practice::Reply Practice::take(std::string_view typed) {
  const std::string line = trimmed(typed);
  if (line.empty()) return {};
  if (line == "hint") return hint();
  if (line == "show") return show();
  if (line == "undo") return undo();
  if (line == "why") return why();
  if (line == "keep") return keep();
  if (line == "case") return list_cases();
  if (line == "help") return help();
  if (line == "quit") return {.over = true};
  return claim(line);
}

Practice::Reply Practice::claim(const std::string& line) {
  const Outcome<Claim> claim =
      read_claim({.name = "claim", .text = line}, *exercise_->problem, written_.work);
  const std::string findings = findings_words(claim.diagnostics, options_);
  if (has_error(claim.diagnostics)) {
    const bool is_one_word = line.find(' ') == std::string::npos;
    const std::string_view meant = is_one_word ? nearest(line, kCommands) : std::string_view();
    if (!meant.empty()) return {"Did you mean '" + std::string(meant) + "'?\n"};
    return {findings};
  }
  if (written_.work.claims.size() >= kMostClaimsInPractice) {
    return {"This work has " + std::to_string(kMostClaimsInPractice) +
            " claims; no more can be added here.\n"};
  }
  if (!claim.value) {
    written_.file = with_line(written_.file, line);  // a comment is kept
    return {.changed = true};
  }
  Reply reply = judge(line);
  reply.text = findings + reply.text;
  return reply;
}

Practice::Reply Practice::judge(const std::string& line) {
  Outcome<Written> read_anew = read(*exercise_, with_line(written_.file, line));
  ensure(read_anew.value.has_value(), "a claim that can be read alone can be read in its work");
  Written& tried = *read_anew.value;
  const std::string reply = last_reply(tried);
  forget_rejected();
  if (tried.judged.lines.back().holds()) {
    accept(std::move(tried), Attempt::End::right);
    return {.text = reply + offer_end(), .changed = true};
  }
  const std::optional<Topic> topic = last_topic(tried);
  const bool is_mistake = verdict_of(tried.judged.lines.back()) == LineVerdict::not_right;
  const bool offers = topic && is_mistake && attempts_.add_wrong(*topic) == kTriesBeforeAnOffer;
  rejected_ = std::move(tried);
  return {reply + (offers ? "A hint is there for the asking: hint.\n" : "")};
}

Practice::Reply Practice::keep() {
  if (!rejected_) return {"There is nothing to keep: what was right is in the work already.\n"};
  Written kept = std::move(*rejected_);
  accept(std::move(kept), Attempt::End::kept);
  return {.text = "Kept: " + written_.work.claims.back().text + '\n', .changed = true};
}

Practice::Reply Practice::undo() {
  if (rejected_) {
    const std::string forgotten = rejected_->work.claims.back().text;
    forget_rejected();
    return {"Forgotten: " + forgotten + '\n'};
  }
  if (written_.work.claims.empty()) return {"There is nothing to take back.\n"};
  const Claim last = written_.work.claims.back();
  if (const std::optional<Topic> topic = last_topic(written_)) attempts_.reopen(*topic);
  Outcome<Written> before = read(*exercise_, without_line(written_.file, last.where.line));
  ensure(before.value.has_value(), "a work can be read without its last claim");
  written_ = std::move(*before.value);
  last_hint_.reset();
  end_offered_ = false;
  return {.text = "Taken back: " + last.text + '\n', .changed = true};
}

Practice::Reply Practice::hint() {
  if (rejected_ && verdict_of(rejected_->judged.lines.back()) == LineVerdict::not_right) {
    return {mending_text(*rejected_)};
  }
  attempts_.add_hint();
  return {hint_text(written_, next_hint(*exercise_, written_.work, written_.judged))};
}

Practice::Reply Practice::why() {
  const Written& about = rejected_ ? *rejected_ : written_;
  if (about.work.claims.empty()) return {"Nothing has been claimed yet.\n"};
  const std::string reply = last_reply(about);
  if (verdict_of(about.judged.lines.back()) != LineVerdict::not_right) return {reply};
  return {reply + mending_text(about)};
}

Practice::Reply Practice::show() const {
  return {standing_words(situation())};
}

Practice::Reply Practice::help() const {
  return {help_words(exercise_->trace.cases.size() > 1)};
}

Practice::Reply Practice::list_cases() const {
  return {case_words(*exercise_)};
}

void Practice::accept(Written written, Attempt::End end) {
  written_ = std::move(written);
  forget_rejected();
  if (const std::optional<Topic> topic = last_topic(written_)) attempts_.settle(*topic, end);
}

void Practice::forget_rejected() {
  rejected_.reset();
  last_hint_.reset();
}

std::string Practice::offer_end() {
  if (end_offered_ || !nothing_is_open()) return {};
  end_offered_ = true;
  return "Everything that is asked for is answered. Go on if you like, or: quit.\n";
}

/// One level more than the last one about the same state.
HintLevel Practice::next_level() {
  if (!last_hint_) {
    last_hint_ = HintLevel::nudge;
  } else {
    last_hint_ = *last_hint_ == HintLevel::nudge ? HintLevel::point : HintLevel::tell;
  }
  return *last_hint_;
}

std::string Practice::hint_text(const Written& about, const Hint& hint) {
  return whole_lines(
      render_hint(*exercise_, about.work, about.judged, hint, next_level(), options_));
}

std::string Practice::mending_text(const Written& about) {
  if (const std::optional<Topic> topic = last_topic(about)) attempts_.add_hint(*topic);
  return hint_text(about, mend_last(about.judged));
}

std::string Practice::last_reply(const Written& about) const {
  return whole_lines(
      render_reply(*exercise_, about.work, about.judged, about.judged.lines.size() - 1, options_));
}

std::optional<Topic> Practice::last_topic(const Written& about) const {
  return topics_of(*exercise_, about.work, about.judged).back();
}

std::size_t Practice::current_case() const {
  return written_.judged.lines.empty() ? 0 : written_.judged.lines.back().case_index;
}

bool Practice::nothing_is_open() const {
  return std::ranges::all_of(written_.judged.cases, [](const CaseStanding& standing) {
    return standing.open.empty() && standing.attempted.empty();
  });
}

}  // namespace ohmfold
