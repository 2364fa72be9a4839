// Statements that put a part between two points.

#include <utility>

#include "language/draft.h"
#include "language/symbols.h"

namespace ohmfold {
namespace {

std::string word(const Token& token) {
  return std::string(token.text);
}

/// The point of that name, new where it is not known yet.
PointId point_named(Draft& draft, const Token& name) {
  const auto [number, is_new] = draft.points.add(name.text);
  if (is_new) {
    draft.problem.points.emplace_back(name.text);
    draft.uses.push_back({});
  }
  return PointId{number};
}

void count_end(Draft& draft, PointId point, PartId part, const Token& name) {
  PointUse& use = draft.uses[point.index];
  if (use.ends++ == 0) {
    use.part = part;
    use.where = name.where;
  }
}

/// "R10" is a letter code, but where a part has that name it was hardly meant as one.
void warn_of_part_as_value(LineReader& line, const Draft& draft, const Token& value) {
  if (!draft.parts.contains(value.text)) return;
  line.warn(DiagnosticKind::suspicious_value, value.where,
            {word(value), "the letter code of a resistance, not as the part"},
            "write the value as a number");
}

bool expect_values(LineReader& line, Draft& draft, Part& part) {
  const Unit unit = unit_of_value(part.kind);
  if (!line.expect_sign("=")) return false;
  const Token first = line.peek();
  if (line.take_word("unknown")) {
    part.unknown = true;
    part.value = Number::symbol(part.name);
  } else {
    std::optional<Number> value = expect_value(line, draft, unit);
    if (!value) return false;
    warn_of_part_as_value(line, draft, first);
    part.value = std::move(*value);
  }
  if (part.kind != PartKind::battery || !line.take_word("internal")) return true;
  std::optional<Number> internal = expect_value(line, draft, Unit::ohm);
  if (!internal) return false;
  part.internal = std::move(*internal);
  return true;
}

/// Its name, or one that no name can be for a wire without.
bool expect_part_name(LineReader& line, Draft& draft, Part& part, std::string_view& key) {
  if (part.kind == PartKind::wire && line.peek().is_word("from")) {
    part.where = line.peek().where;
    part.name = "wire " + std::to_string(++draft.unnamed_wires);
    return true;
  }
  const std::optional<Token> name = line.expect_name(std::string("a ").append(keyword(part.kind)));
  if (!name) return false;
  part.name = word(*name);
  part.where = name->where;
  key = name->text;
  if (const auto symbol = draft.symbols.find(name->text)) {
    line.fail(DiagnosticKind::name_taken, name->where, {part.name},
              "a part and a symbol need names of their own", draft.symbol_drafts[*symbol].where);
    return false;
  }
  const std::optional<std::uint32_t> known = draft.parts.find(name->text);
  if (!known) return true;
  line.fail(DiagnosticKind::name_taken, name->where, {part.name}, {},
            draft.problem.part(PartId{*known}).where);
  return false;
}

/// A part with both ends on one point carries nothing; a battery so would be a contradiction, and a
/// source would drive its current round itself.
bool check_ends(LineReader& line, const Part& part, const Token& from, const Token& to) {
  if (from.text != to.text) return true;
  if (is_source(part.kind)) {
    line.fail(DiagnosticKind::same_two_points, to.where, {with_kind(part), word(to)},
              "its terminals need two points");
    return false;
  }
  line.warn(DiagnosticKind::same_two_points, to.where, {with_kind(part), word(to)},
            "it carries nothing");
  return true;
}

bool has_value(PartKind kind) {
  return is_source(kind) || kind == PartKind::resistor || kind == PartKind::lamp;
}

}  // namespace

template <PartKind kKind>
void read_part(LineReader& line, Draft& draft) {
  Part part;
  part.kind = kKind;
  std::string_view key;  // refers to the source, unlike part.name, which will move
  if (!expect_part_name(line, draft, part, key)) return;
  if (has_value(kKind) && !expect_values(line, draft, part)) return;
  if (!line.expect_word("from")) return;
  const std::optional<Token> from = line.expect_name("a point");
  if (!from || !line.expect_word("to")) return;
  const std::optional<Token> to = line.expect_name("a point");
  if (!to || !line.expect_end() || !check_ends(line, part, *from, *to)) return;

  const auto id = PartId{static_cast<std::uint32_t>(draft.problem.parts.size())};
  part.from = point_named(draft, *from);
  part.to = point_named(draft, *to);
  count_end(draft, part.from, id, *from);
  count_end(draft, part.to, id, *to);
  if (key.empty()) {
    draft.parts.add_nameless();
  } else {
    draft.parts.add(key);
  }
  draft.problem.parts.push_back(std::move(part));
}

template void read_part<PartKind::battery>(LineReader&, Draft&);
template void read_part<PartKind::resistor>(LineReader&, Draft&);
template void read_part<PartKind::lamp>(LineReader&, Draft&);
template void read_part<PartKind::wire>(LineReader&, Draft&);
template void read_part<PartKind::knife_switch>(LineReader&, Draft&);
template void read_part<PartKind::ammeter>(LineReader&, Draft&);
template void read_part<PartKind::voltmeter>(LineReader&, Draft&);
template void read_part<PartKind::current_source>(LineReader&, Draft&);

std::string with_kind(const Part& part) {
  const std::string kind(keyword(part.kind));
  return part.name.starts_with(kind + " ") ? part.name : kind + " " + part.name;
}

}  // namespace ohmfold
