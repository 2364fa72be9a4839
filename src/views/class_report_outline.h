// The works of a class in a table, and what went wrong how often.
#pragma once

#include "ohmfold/class_report.h"
#include "views/document.h"

namespace ohmfold::views {

[[nodiscard]] Document class_report_outline(const ClassReport& report);

}  // namespace ohmfold::views
