// The trace as JSON, version 1 of "ohmfold-trace" (docs/trace.md).
#include "ohmfold/render.h"
#include "views/conditions.h"
#include "views/json_items.h"
#include "views/json_unknown.h"
#include "views/json_values.h"

namespace ohmfold {

namespace views {
namespace {

/// Writes the outer structure by hand and each entry of a list on a line of its own, so that a
/// large trace never stands in memory as one tree.
class TraceWriter {
 public:
  TraceWriter(const Problem& problem, int figures) : problem_(problem), figures_(figures) {}

  std::string write(const Trace& trace) {
    text_ = "{\n  \"format\": \"ohmfold-trace\",\n  \"version\": 1,\n  \"title\": " +
            dumped(problem_.title);
    if (!problem_.symbols.empty()) text_ += ",\n  \"symbols\": " + dumped(symbols());
    if (trace.values_put_in_first) text_ += ",\n  \"values_put_in_first\": true";
    text_ += ",\n  \"cases\": [";
    for (std::size_t i = 0; i < trace.cases.size(); ++i) {
      text_ += i == 0 ? "\n    {" : ",\n    {";
      is_first_ = true;
      write_case(trace.cases[i]);
      text_ += "\n    }";
    }
    text_ += trace.cases.empty() ? "]\n}\n" : "\n  ]\n}\n";
    return std::move(text_);
  }

 private:
  [[nodiscard]] Json symbols() const {
    Json list = Json::array();
    for (const SymbolMeaning& symbol : problem_.symbols) {
      Json one;
      one["name"] = symbol.name;
      one["unit"] = ohmfold::symbol(symbol.unit, Letters::ascii);
      if (symbol.value) {
        one["value"] = json_value(problem_, Quantity(*symbol.value, symbol.unit), figures_);
      }
      list.push_back(std::move(one));
    }
    return list;
  }

  void write_case(const CaseTrace& trace) {
    const JsonItems items(problem_, trace, figures_);
    put("name", trace.name);
    put("kind", kind_word(trace.kind));
    if (trace.beyond_budget) {
      put("beyond_budget", plain_text(beyond_budget_words(*trace.beyond_budget)));
    }
    if (trace.contradiction) put("contradiction", items.contradiction(*trace.contradiction));
    put("complete", trace.complete);
    if (trace.unknown) put("unknown", json_unknown(problem_, *trace.unknown, figures_));
    const StepLog& steps = trace.main.steps;
    list("steps", steps.size(), [&](std::size_t i) { return items.step(steps[i]); });
    put("bridge", nullptr);
    put("equivalent", items.equivalent());
    list("returns", trace.returns, [&](const Return& item) { return items.returned(item); });
    list("branches", trace.branches, [&](const BranchResult& item) { return items.branch(item); });
    list("nodes", trace.nodes, [&](const NodeResult& item) { return items.node(item); });
    list("answers", trace.answers, [&](const Answer& item) { return items.answer(item); });
    if (!trace.conditions.empty()) {
      list("conditions", trace.conditions,
           [&](const CurrentCondition& item) { return items.condition(item); });
    }
    list("checks", trace.checks, [&](const Check& item) { return items.check(item); });
    list("cautions", trace.cautions, [&](const Caution& item) { return items.caution(item); });
  }

  static std::string dumped(const Json& json) {
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
  }

  void key(const char* name) {
    text_ += is_first_ ? "\n      \"" : ",\n      \"";
    is_first_ = false;
    text_ += name;
    text_ += "\": ";
  }

  void put(const char* name, const Json& value) {
    key(name);
    text_ += dumped(value);
  }

  template <class Item>
  void list(const char* name, std::size_t count, Item item) {
    key(name);
    text_ += '[';
    for (std::size_t i = 0; i < count; ++i) {
      text_ += i == 0 ? "\n        " : ",\n        ";
      text_ += dumped(item(i));
    }
    text_ += count == 0 ? "]" : "\n      ]";
  }

  template <class Entry, class Item>
  void list(const char* name, const std::vector<Entry>& entries, Item item) {
    list(name, entries.size(), [&](std::size_t i) { return item(entries[i]); });
  }

  const Problem& problem_;
  int figures_;
  std::string text_;
  bool is_first_ = true;
};

}  // namespace
}  // namespace views

std::string render_json(const Trace& trace, int figures) {
  const Problem& problem = *trace.problem;
  return views::TraceWriter(problem, figures > 0 ? figures : problem.figures).write(trace);
}

}  // namespace ohmfold
