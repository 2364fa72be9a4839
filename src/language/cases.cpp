// The statement `case`, and the cases that a file without it has.

#include <array>
#include <unordered_map>
#include <utility>

#include "language/draft.h"
#include "language/nearest.h"
#include "language/symbols.h"
#include "language/values.h"

namespace ohmfold {
namespace {

struct SettingWord {
  std::string_view word;
  SettingKind kind;
};
constexpr std::array<SettingWord, 4> kSettingWords{{{"open", SettingKind::open},
                                                    {"closed", SettingKind::closed},
                                                    {"removed", SettingKind::removed},
                                                    {"shorted", SettingKind::shorted}}};

/// Most switches that an error names.
constexpr std::size_t kMostNamed = 5;

/// All tokens up to the next comma that does not stand between digits, and an end token.
std::vector<Token> take_value(LineReader& line) {
  std::vector<Token> tokens;
  while (!line.at_end()) {
    const bool between_items =
        line.peek().is_sign(",") && (tokens.empty() || !line.peek().touches(line.peek_second()) ||
                                     line.peek_second().text.find_first_of("0123456789") != 0);
    if (between_items) break;
    tokens.push_back(line.take());
  }
  tokens.push_back(end_token(tokens, line.peek().where.line));
  return tokens;
}

bool expect_setting(LineReader& line, DraftCase& draft) {
  const std::optional<Token> part = line.expect_name("a part");
  if (!part) return false;
  DraftSetting setting{*part, SettingKind::value, {}};
  if (line.take_sign("=")) {
    if (line.peek().kind != TokenKind::word) {
      line.fail_expected("a value");
      return false;
    }
    setting.value = take_value(line);
    draft.settings.push_back(std::move(setting));
    return true;
  }
  for (const SettingWord& entry : kSettingWords) {
    if (!line.take_word(entry.word)) continue;
    setting.kind = entry.kind;
    draft.settings.push_back(std::move(setting));
    return true;
  }
  line.fail_expected("open, closed, removed, shorted or '='");
  return false;
}

void report_wrong_kind(Draft& draft, const DraftSetting& setting, const Part& part,
                       const std::string& why, const std::string& remedy) {
  draft.report(DiagnosticKind::wrong_kind_of_part, Severity::error, setting.part.where,
               {"'" + part.name + "'", std::string(keyword(part.kind)), why}, remedy);
}

/// Can this kind of part be set so?
bool check_kind(Draft& draft, const DraftSetting& setting, const Part& part) {
  const bool is_switch = part.kind == PartKind::knife_switch;
  switch (setting.kind) {
    case SettingKind::open:
    case SettingKind::closed:
      if (is_switch) return true;
      report_wrong_kind(draft, setting, part, "only a switch can be open or closed",
                        "a part can be removed or shorted");
      return false;
    case SettingKind::removed:
    case SettingKind::shorted:
      if (!is_switch) return true;
      report_wrong_kind(draft, setting, part, "it cannot be removed or shorted",
                        "say open or closed");
      return false;
    case SettingKind::value:
      if (part.unknown) {
        report_wrong_kind(draft, setting, part, "its value is unknown",
                          "a case can remove or short it");
        return false;
      }
      if (part.kind == PartKind::resistor || part.kind == PartKind::lamp || is_source(part.kind)) {
        return true;
      }
      report_wrong_kind(draft, setting, part, "it has no value", "");
      return false;
  }
  return false;
}

/// The value of the setting in the unit of its part, or nothing and an error.
std::optional<Number> value_of(Draft& draft, const DraftSetting& setting, const Part& part) {
  LineReader line(setting.value);
  std::optional<Number> value = expect_value(line, draft, unit_of_value(part.kind));
  if (value) line.expect_end();
  for (const Diagnostic& warning : line.warnings()) draft.findings.add(warning);
  if (!line.error()) return value;
  draft.findings.add(*line.error());
  return std::nullopt;
}

std::optional<Setting> settled(Draft& draft, const DraftSetting& setting) {
  const std::optional<PartId> id = find_part(draft, setting.part);
  if (!id) return std::nullopt;
  const Part& part = draft.problem.part(*id);
  if (!check_kind(draft, setting, part)) return std::nullopt;
  Setting result{*id, setting.kind, {}};
  if (setting.kind == SettingKind::value) {
    std::optional<Number> value = value_of(draft, setting, part);
    if (!value) return std::nullopt;
    result.value = std::move(*value);
  }
  return result;
}

/// Settles the cases one after the other.
class CaseSettler {
 public:
  explicit CaseSettler(Draft& draft) : draft_(draft), set_in_(draft.problem.parts.size(), kNever) {
    for (std::size_t i = 0; i < draft.problem.parts.size(); ++i) {
      if (draft.problem.parts[i].kind == PartKind::knife_switch) switches_.push_back(i);
    }
  }

  void settle_all() {
    for (std::size_t i = 0; i < draft_.cases.size(); ++i) settle(i);
    if (draft_.cases.empty()) add_usual_cases();
  }

 private:
  static constexpr std::size_t kNever = SIZE_MAX;

  void settle(std::size_t index) {
    const DraftCase& written = draft_.cases[index];
    const auto [entry, is_new] = labels_.try_emplace(written.label.text, written.label.where);
    if (!is_new) {
      draft_.report(DiagnosticKind::case_taken, Severity::error, written.label.where,
                    {std::string(written.label.text)}, {}, entry->second);
    }
    Case result{std::string(written.label.text), {}};
    bool complete = true;
    for (const DraftSetting& setting : written.settings) {
      std::optional<Setting> one = settled(draft_, setting);
      complete = complete && one;
      if (one && mark_set(index, setting, one->part)) result.settings.push_back(std::move(*one));
    }
    if (complete) check_switches(index, written);
    draft_.problem.cases.push_back(std::move(result));
  }

  bool mark_set(std::size_t index, const DraftSetting& setting, PartId part) {
    if (std::exchange(set_in_[part.index], index) != index) return true;
    draft_.report(DiagnosticKind::set_twice, Severity::error, setting.part.where,
                  {std::string(setting.part.text)}, "keep one of the two");
    return false;
  }

  /// Every switch needs a setting. Stops when enough are missing, so that many cases beside many
  /// switches stay cheap.
  void check_switches(std::size_t index, const DraftCase& written) {
    std::vector<std::string_view> missing;
    for (const std::size_t part : switches_) {
      if (set_in_[part] == index) continue;
      missing.emplace_back(draft_.problem.parts[part].name);
      if (missing.size() > kMostNamed) break;
    }
    if (missing.empty()) return;
    if (missing.size() > kMostNamed) missing.back() = "others";
    draft_.report(
        DiagnosticKind::switch_not_set, Severity::error, written.label.where,
        {(missing.size() == 1 ? "switch " : "the switches ") + listed(missing, missing.size())},
        "add open or closed for every switch");
  }

  /// No switch: one case. One switch: both its states. Several: the file has to say.
  void add_usual_cases() {
    std::vector<Case>& cases = draft_.problem.cases;
    if (switches_.empty()) {
      cases.push_back({});
      return;
    }
    const Part& first = draft_.problem.parts[switches_.front()];
    if (switches_.size() == 1) {
      const PartId part{static_cast<std::uint32_t>(switches_.front())};
      cases.push_back({first.name + " open", {{part, SettingKind::open, {}}}});
      cases.push_back({first.name + " closed", {{part, SettingKind::closed, {}}}});
      return;
    }
    if (draft_.findings.has_error()) return;  // the cases may be on a line with an error
    const std::string& second = draft_.problem.parts[switches_[1]].name;
    std::vector<std::string_view> names;
    for (const std::size_t part : switches_) names.emplace_back(draft_.problem.parts[part].name);
    draft_.report(
        DiagnosticKind::switches_need_cases, Severity::error, first.where,
        {listed(names, kMostNamed)},
        "add a line such as: case \"first\": " + first.name + " open, " + second + " closed");
  }

  Draft& draft_;
  std::vector<std::size_t> switches_;
  std::vector<std::size_t> set_in_;  ///< by part: the last case that sets it
  std::unordered_map<std::string_view, Span> labels_;
};

}  // namespace

void read_case(LineReader& line, Draft& draft) {
  const std::optional<Token> label = line.expect_text();
  if (!label || !line.expect_sign(":")) return;
  DraftCase result{*label, {}};
  while (!line.at_end()) {
    if (!expect_setting(line, result)) return;
    if (line.at_end()) break;
    if (!line.expect_sign(",")) return;
    if (line.at_end()) return line.fail_expected("the name of a part");
  }
  draft.cases.push_back(std::move(result));
}

void settle_cases(Draft& draft) {
  CaseSettler(draft).settle_all();
}

}  // namespace ohmfold
