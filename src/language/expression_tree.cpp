// From the tokens of an expression to its form, with an explicit stack of open brackets.

#include "language/expression_tree.h"

#include <string>
#include <unordered_map>
#include <utility>

#include "language/line_reader.h"

namespace ohmfold {
namespace {

/// What stands between a bracket and here: finished terms of the sum, and the members of the
/// parallel group that is being read.
struct Level {
  Token bracket;
  std::vector<std::uint32_t> terms, group;
};

class ExpressionParser {
 public:
  ExpressionParser(std::span<const Token> tokens, OperandForm form)
      : line_(tokens), form_(form), levels_(1) {}

  ExpressionTree run() {
    while (read_operand() && read_operators()) {
    }
    if (!line_.error()) tree_.root = closed(levels_.back());
    tree_.error = line_.error();
    if (tree_.error && tree_.error->kind == DiagnosticKind::symbol_in_value) {
      tree_.error->remedy = "a part and its value are written R1:4";
    }
    tree_.warnings = line_.warnings();
    return std::move(tree_);
  }

 private:
  /// Opening brackets and the operand after them.
  bool read_operand() {
    while (line_.peek().is_sign("(")) {
      levels_.push_back({line_.take(), {}, {}});
    }
    Operand operand;
    const bool read = form_ == OperandForm::names ? read_known(operand) : read_valued(operand);
    if (!read) return false;
    const auto index = static_cast<std::uint32_t>(tree_.operands.size());
    tree_.operands.push_back(std::move(operand));
    levels_.back().group.push_back(add({Join::operand, index, 0}));
    return true;
  }

  /// The name of a part that is known elsewhere.
  bool read_known(Operand& operand) {
    const Token word = line_.peek();
    if (word.kind == TokenKind::word && !is_name(word.text)) {
      line_.fail(DiagnosticKind::bad_name, word.where, {std::string(word.text)},
                 "a combination names its parts, such as R1 + R2");
      return false;
    }
    const std::optional<Token> name = line_.expect_name("a part");
    if (!name) return false;
    operand.name = *name;
    operand.where = name->where;
    return true;
  }

  bool read_valued(Operand& operand) {
    if (line_.peek().kind != TokenKind::word) {
      line_.fail(DiagnosticKind::empty_expression, line_.peek().where, {described(line_.peek())},
                 line_.peek().kind == TokenKind::end ? "an expression looks like 4 + 6 || 3" : "");
      return false;
    }
    if (!read_name(operand)) return false;
    const Token first = line_.peek();
    std::optional<Number> value = line_.expect_value(Unit::ohm);
    if (!value) return false;
    if (operand.name.text.empty() && is_name(first.text)) warn_of_code(first, *value);
    operand.value = std::move(*value);
    return true;
  }

  /// "R1:", where the next word is followed by a colon.
  bool read_name(Operand& operand) {
    operand.where = line_.peek().where;
    if (!line_.peek_second().is_sign(":")) return true;
    const std::optional<Token> name = line_.expect_name("a part");
    if (!name || !line_.expect_sign(":")) return false;
    operand.name = *name;
    const auto [entry, is_new] = names_.try_emplace(name->text, name->where);
    if (!is_new) {
      line_.fail(DiagnosticKind::name_taken, name->where, {std::string(name->text)}, {},
                 entry->second);
    }
    return is_new;
  }

  /// "R12" is a letter code, but in an expression it may have been meant as a name.
  void warn_of_code(const Token& word, const Number& value) {
    const std::string code(word.text);
    line_.warn(DiagnosticKind::suspicious_value, word.where,
               {code, "the letter code for " + value.to_string() + " ohm"},
               "a part and its value are written " + code + ":4");
  }

  /// Closing brackets and the operator after them; false at the end or after an error.
  bool read_operators() {
    while (line_.peek().is_sign(")")) {
      if (levels_.size() == 1) {
        line_.fail_expected("'+', '||' or the end", "there is no '(' that it closes");
        return false;
      }
      line_.take();
      const std::uint32_t node = closed(levels_.back());
      levels_.pop_back();
      levels_.back().group.push_back(node);
    }
    if (line_.at_end()) return check_brackets();
    if (line_.take_sign("+")) {
      close_group(levels_.back());
      return true;
    }
    if (line_.take_sign("||") || line_.take_sign("|") || line_.take_sign("\xE2\x88\xA5")) {
      return true;
    }
    line_.fail_expected("'+', '||' or a bracket");
    return false;
  }

  bool check_brackets() {
    if (levels_.size() > 1) line_.fail_expected("')'");
    return false;
  }

  void close_group(Level& level) {
    level.terms.push_back(joined(Join::parallel, level.group));
    level.group.clear();
  }

  std::uint32_t closed(Level& level) {
    close_group(level);
    return joined(Join::series, level.terms);
  }

  /// One node for all of them, which is the only one itself where there is one.
  std::uint32_t joined(Join join, const std::vector<std::uint32_t>& members) {
    if (members.size() == 1) return members.front();
    const auto first = static_cast<std::uint32_t>(tree_.members.size());
    tree_.members.insert(tree_.members.end(), members.begin(), members.end());
    return add({join, first, static_cast<std::uint32_t>(members.size())});
  }

  std::uint32_t add(const ExpressionNode& node) {
    tree_.nodes.push_back(node);
    return static_cast<std::uint32_t>(tree_.nodes.size() - 1);
  }

  LineReader line_;
  OperandForm form_;
  ExpressionTree tree_;
  std::vector<Level> levels_;
  std::unordered_map<std::string_view, Span> names_;
};

}  // namespace

ExpressionTree parse_expression(std::span<const Token> tokens, OperandForm form) {
  return ExpressionParser(tokens, form).run();
}

}  // namespace ohmfold
