// A network written as one expression, and a voltage: what is read from the command line.

#include <string>
#include <unordered_set>
#include <utility>

#include "language/expression_tree.h"
#include "language/findings.h"
#include "language/line_reader.h"
#include "ohmfold/read.h"

namespace ohmfold {
namespace {

constexpr PointId kFirstEnd{0};
constexpr PointId kSecondEnd{1};

/// Tokens of a text of any number of lines, the last an end token; an error for a bad character.
std::optional<Diagnostic> scan_text(const SourceText& source, std::vector<Token>& tokens) {
  Lines lines(source.text);
  std::optional<Diagnostic> first;
  while (const auto line = lines.next()) {
    const auto fault = scan_line(*line, lines.number(), Dialect::expression, tokens);
    if (!first) first = fault;
  }
  tokens.push_back(end_token(tokens, 1));
  return first;
}

/// Names that are not taken, in order: R1, R2, … for parts; C, D, F, …, Z, P1, P2, … for points (E
/// would look like the battery).
class FreshNames {
 public:
  explicit FreshNames(const std::vector<Operand>& operands) {
    for (const Operand& operand : operands) taken_.insert(operand.name.text);
  }

  std::string part() {
    std::string name;
    do {
      name = "R" + std::to_string(++parts_);
    } while (taken_.contains(name));
    return name;
  }

  /// "E", or where a part has that name "E1", "E2", …
  [[nodiscard]] std::string battery() const {
    std::string name = "E";
    for (int number = 1; taken_.contains(name); ++number) name = "E" + std::to_string(number);
    return name;
  }

  std::string point() {
    if (letter_ == 'E') ++letter_;
    if (letter_ <= 'Z') return std::string(1, letter_++);
    return "P" + std::to_string(++points_);
  }

 private:
  std::unordered_set<std::string_view> taken_;
  std::size_t parts_ = 0;
  std::size_t points_ = 0;
  char letter_ = 'C';
};

/// Puts the parts of the tree between points, from left to right, with an explicit stack.
class Layout {
 public:
  Layout(ExpressionTree& tree, Problem& problem)
      : tree_(tree), problem_(problem), names_(tree.operands) {}

  void add_battery(const Number& voltage) {
    Part battery;
    battery.name = names_.battery();
    battery.kind = PartKind::battery;
    battery.from = kSecondEnd;
    battery.to = kFirstEnd;
    battery.value = voltage;
    problem_.parts.push_back(std::move(battery));
  }

  void add_parts() {
    waiting_.push_back({tree_.root, kFirstEnd, kSecondEnd});
    while (!waiting_.empty()) {
      const Stretch stretch = waiting_.back();
      waiting_.pop_back();
      const ExpressionNode& node = tree_.nodes[stretch.node];
      if (node.join == Join::operand) {
        add_part(tree_.operands[node.first], stretch.from, stretch.to);
      } else {
        open(node, stretch.from, stretch.to);
      }
    }
  }

 private:
  struct Stretch {
    std::uint32_t node;
    PointId from, to;
  };

  /// Members go onto the stack from right to left, so that the left one comes next.
  void open(const ExpressionNode& node, PointId from, PointId to) {
    const auto inner = static_cast<std::uint32_t>(problem_.points.size());
    const bool series = node.join == Join::series;
    if (series) {
      for (std::uint32_t i = 1; i < node.count; ++i) problem_.points.push_back(names_.point());
    }
    for (std::uint32_t i = node.count; i-- > 0;) {
      const PointId left = !series || i == 0 ? from : PointId{inner + i - 1};
      const PointId right = !series || i + 1 == node.count ? to : PointId{inner + i};
      waiting_.push_back({tree_.members[node.first + i], left, right});
    }
  }

  void add_part(Operand& operand, PointId from, PointId to) {
    Part part;
    part.name = operand.name.text.empty() ? names_.part() : std::string(operand.name.text);
    part.from = from;
    part.to = to;
    part.value = std::move(operand.value);
    part.where = operand.where;
    problem_.parts.push_back(std::move(part));
  }

  ExpressionTree& tree_;
  Problem& problem_;
  FreshNames names_;
  std::vector<Stretch> waiting_;
};

}  // namespace

Outcome<Problem> read_expression(const SourceText& source, const std::optional<Number>& across) {
  if (auto fault = too_large(source)) return {std::nullopt, {std::move(*fault)}};
  std::vector<Token> tokens;
  if (auto fault = scan_text(source, tokens)) return {std::nullopt, {std::move(*fault)}};
  ExpressionTree tree = parse_expression(tokens, OperandForm::values);
  Findings findings;
  for (Diagnostic& warning : tree.warnings) findings.add(std::move(warning));
  if (tree.error) {
    findings.add(std::move(*tree.error));
    return {std::nullopt, findings.sorted()};
  }
  Problem problem;
  problem.source_name = source.name;
  problem.points = {"A", "B"};
  problem.cases.emplace_back();
  Layout layout(tree, problem);
  if (across) {
    layout.add_battery(*across);
  } else {
    problem.questions.emplace_back(ResistanceBetween{kFirstEnd, kSecondEnd});
  }
  layout.add_parts();
  return {std::move(problem), findings.sorted()};
}

Outcome<Number> read_voltage(const SourceText& source) {
  if (auto fault = too_large(source)) return {std::nullopt, {std::move(*fault)}};
  std::vector<Token> tokens;
  if (auto fault = scan_text(source, tokens)) return {std::nullopt, {std::move(*fault)}};
  LineReader line(tokens);
  std::optional<Number> voltage = line.expect_value(Unit::volt);
  if (voltage && line.expect_end()) return {std::move(voltage), line.warnings()};
  return {std::nullopt, {*line.error()}};
}

}  // namespace ohmfold
