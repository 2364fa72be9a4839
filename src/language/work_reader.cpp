// Reads a work file line by line.

#include <string>
#include <utility>

#include "language/claims.h"
#include "language/draft.h"
#include "ohmfold/read.h"
#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

std::optional<Statement> read_case_claim(LineReader& line) {
  line.take();
  if (line.peek().kind != TokenKind::text) {
    line.fail_expected("the label of a case in quotes", "such as case \"S open\"");
    return std::nullopt;
  }
  const Token label = line.take();
  line.take_sign(":");
  if (line.at_end()) return CaseClaim{written_name(label)};
  line.fail(DiagnosticKind::left_over_in_claim, line.peek().where, {described(line.peek())},
            "the circuit file says what a case sets");
  return std::nullopt;
}

std::optional<Statement> read_claim_of(LineReader& line, const WorkNames& names) {
  const Token& first = line.peek();
  const Token& second = line.peek_second();
  if (first.is_word("case") && !is_short(line)) return read_case_claim(line);
  if (is_short(line)) return read_short_claim(line, names);
  if (begins_with_quantity(line)) return read_quantity_claim(line, names);
  const bool listed = second.is_sign(",") || second.is_word("and") || names.is_part(first.text);
  if (begins_statement(first) && !listed) {
    line.fail(DiagnosticKind::circuit_line, first.where, {std::string(first.text)});
    return std::nullopt;
  }
  return read_list_claim(line, names);
}

/// What is said of statements in words that fit a claim.
Diagnostic in_terms_of_claims(Diagnostic finding) {
  if (finding.kind == DiagnosticKind::trailing_words) {
    finding.kind = DiagnosticKind::left_over_in_claim;
  }
  if (finding.kind == DiagnosticKind::nul_byte) finding.remedy = "a work file is plain text";
  return finding;
}

/// The claim on one line; nothing where there is none, or after an error.
std::optional<Claim> read_line(std::string_view text, std::uint32_t number, const WorkNames& names,
                               Findings& findings) {
  std::vector<Token> tokens;
  std::optional<Diagnostic> fault = scan_line(text, number, Dialect::work, tokens);
  if (fault) {
    findings.add(in_terms_of_claims(std::move(*fault)));
    return std::nullopt;
  }
  if (tokens.empty()) return std::nullopt;
  tokens.push_back(end_token(tokens, number));
  LineReader line(tokens);
  std::optional<Statement> statement = read_claim_of(line, names);
  for (const Diagnostic& warning : line.warnings()) findings.add(warning);
  if (line.error()) findings.add(in_terms_of_claims(*line.error()));
  if (line.error() || !statement) return std::nullopt;
  Span where = tokens.front().where;
  where.length = tokens.back().where.column - where.column;
  return Claim{where, std::string(text.substr(where.column, where.length)), std::move(*statement)};
}

/// What values with symbols may cost in one text: far more than solutions need, a second at most.
constexpr std::uint64_t kMostWork = 20'000'000;

/// All claims of a text, after those that `names` knows of.
std::vector<Claim> read_lines(std::string_view text, WorkNames& names, Findings& findings) {
  std::vector<Claim> claims;
  const WorkLimit limit(kMostWork);
  Lines lines(text);
  while (const auto line = lines.next()) {
    std::optional<Claim> claim = read_line(*line, lines.number(), names, findings);
    if (!claim) continue;
    names.add(*claim);
    claims.push_back(std::move(*claim));
  }
  return claims;
}

}  // namespace

Outcome<Work> read_work(const SourceText& source, const Problem& problem) {
  if (auto fault = too_large(source)) return {std::nullopt, {std::move(*fault)}};
  WorkNames names(problem);
  Findings findings;
  Work work{source.name, read_lines(source.text, names, findings)};
  Outcome<Work> outcome{std::nullopt, findings.sorted()};
  if (!findings.has_error()) outcome.value = std::move(work);
  return outcome;
}

Outcome<Claim> read_claim(const SourceText& line, const Problem& problem, const Work& before) {
  if (auto fault = too_large(line)) return {std::nullopt, {std::move(*fault)}};
  WorkNames names(problem);
  for (const Claim& claim : before.claims) names.add(claim);
  Findings findings;
  std::vector<Claim> claims = read_lines(line.text, names, findings);
  if (claims.size() > 1) {
    findings.add({.kind = DiagnosticKind::several_claims,
                  .severity = Severity::error,
                  .where = claims[1].where,
                  .arguments = {},
                  .remedy = {},
                  .other = {}});
  }
  Outcome<Claim> outcome{std::nullopt, findings.sorted()};
  if (!findings.has_error() && !claims.empty()) outcome.value = std::move(claims.front());
  return outcome;
}

}  // namespace ohmfold
