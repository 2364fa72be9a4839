// Style and scripts of a page, taken from page.css, workbook_judge.js and workbook.js at build
// time.
#pragma once

#include <string_view>

namespace ohmfold::handout {

extern const std::string_view kPageStyle;
extern const std::string_view kWorkbookStyle;
extern const std::string_view kPrintStyle;  ///< stands behind all others
extern const std::string_view kWorkbookJudge;
extern const std::string_view kWorkbookScript;

}  // namespace ohmfold::handout
