// What there is to say about the value of a line.
#include "ohmfold/error.h"
#include "views/error_words.h"
#include "views/reply.h"

namespace ohmfold::views {

namespace {

Words cause_lines(const JudgedLine& line) {
  if (line.judgement.caused_by.empty()) return say("the lines before");
  return line.judged.lines(line.judgement.caused_by);
}

/// "Line 2 keeps 18.0 to three figures; with the exact value this line is 6.01, not 6.02."
Words rounded_early(const JudgedLine& line) {
  const std::vector<std::size_t>& causes = line.judgement.caused_by;
  Words words;
  if (causes.size() == 1) {
    const JudgedLine cause(line.judged, causes.front());
    const Words kept = cause.stated();
    const std::optional<int> figures = cause.stated_figures();
    words = say(cause_lines(line).capitalised(), " keeps ", kept.empty() ? say("a value") : kept);
    if (figures)
      words.add(say(" to ", count_word(*figures), *figures == 1 ? " figure" : " figures"));
    words.add("; with the exact value");
  } else {
    words = say(cause_lines(line).capitalised(), " keep too few figures; with the exact values");
  }
  return say(words, " this line is ", line.right_as_stated(), ", not ", line.stated(), ".");
}

/// The number may come out in more than one way: all of them are named.
Words several_errors(const JudgedLine& line, const std::vector<Words>& causes) {
  constexpr std::size_t kMostCauses = 4;
  Words words = say(line.stated(), " comes out");
  for (std::size_t i = 0; i < causes.size() && i < kMostCauses; ++i) {
    words.add(i == 0 ? " when " : i + 1 == causes.size() ? ", or when " : ", when ");
    words.add(causes[i]);
  }
  if (causes.size() > kMostCauses) words.add(", or in another way");
  return say(words, ". Which line of working led here?");
}

/// No known error gives this number.
Words unexplained(const JudgedLine& line) {
  const Words operands = line.operands();
  if (!line.judgement.claimed && !operands.empty()) {
    return say("The value does not follow from ", operands,
               ". Work it out once more, one operation at a time.");
  }
  return say(line.stated(), " is not ", line.subject(),
             ". Which values lead there, and do they all belong to it?");
}

Words diagnosed(const JudgedLine& line) {
  std::vector<Words> causes;
  Words point;
  for (const Diagnosis& diagnosis : line.judgement.errors) {
    ErrorWords words = error_words(Diagnosed(line, diagnosis));
    if (point.empty()) point = words.point;
    if (!words.cause.empty()) causes.push_back(std::move(words.cause));
  }
  if (causes.size() > 1) return several_errors(line, causes);
  if (causes.empty()) return point;
  return say(line.stated(), " comes out when ", causes.front(), ". ", point);
}

/// What an error says where the value itself is right: a word, or the way to it.
Words remark(const JudgedLine& line) {
  for (const Diagnosis& diagnosis : line.judgement.errors) {
    return error_words(Diagnosed(line, diagnosis)).point;
  }
  return {};
}

}  // namespace

Words value_reply(const JudgedLine& line) {
  const bool has_errors = !line.judgement.errors.empty();
  switch (line.judgement.value) {
    case ValueVerdict::none:
      return has_errors ? remark(line) : Words();
    case ValueVerdict::exact:
      return has_errors ? remark(line) : say("The value is right.");
    case ValueVerdict::rounded:
      return has_errors ? remark(line) : say("The value is right to the figures given.");
    case ValueVerdict::within_rounding:
      return say("The value is right within the rounding of ", cause_lines(line), ".");
    case ValueVerdict::rounded_early:
      return rounded_early(line);
    case ValueVerdict::on_own:
      return say("The value is right on your own earlier numbers, from ", cause_lines(line), ".");
    case ValueVerdict::cut_off:
      return say("The value is cut off where it had to be rounded: look at the next digit.");
    case ValueVerdict::wrong:
      return has_errors ? diagnosed(line) : unexplained(line);
    case ValueVerdict::cannot_tell:
      if (line.judgement.hindrance != Hindrance::none) return {};
      return say("There is nothing to compare ", line.stated(), " with.");
  }
  throw InternalError("a value verdict of an unknown kind");
}

}  // namespace ohmfold::views
