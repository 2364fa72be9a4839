// The words of a page's own parts, and the remarks of a workbook on a value that is typed.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ohmfold::views {

namespace page {
inline constexpr std::string_view kSkip = "Skip to the text";
inline constexpr std::string_view kContents = "Contents";
inline constexpr std::string_view kProgress = "Progress";
inline constexpr std::string_view kTable = "Table";
inline constexpr std::string_view kFormula = "Formula";
inline constexpr std::string_view kShowStep = "Show this step";
inline constexpr std::string_view kShowPart = "Show this part";
inline constexpr std::string_view kCheck = "Check";
inline constexpr std::string_view kShowAll = "Show all";
inline constexpr std::string_view kStartAgain = "Start again";
}  // namespace page

/// What a workbook says. The key is what the script of the page returns (workbook_judge.js).
struct WorkbookRemark {
  std::string key;
  /// {figures} stands for a count such as "three figures", {unit} for the unit asked for,
  /// {shown} and {all} for counts of steps.
  std::string words;
};

/// All of them, keys unique. None tells a value.
[[nodiscard]] std::vector<WorkbookRemark> workbook_remarks();

}  // namespace ohmfold::views
