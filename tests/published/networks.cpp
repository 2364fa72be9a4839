// Reads networks.json and writes its networks in the circuit language.
#include "published/networks.h"

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "ohmfold/decimal.h"
#include "ohmfold/read.h"

namespace ohmfold::published {
namespace {

using nlohmann::json;

std::optional<bool> optional_flag(const json& entry, const char* key) {
  if (!entry.contains(key)) return std::nullopt;
  return entry.at(key).get<bool>();
}

PublishedPart part_from(const json& entry) {
  return {entry.at("kind"), entry.at("name"), entry.at("value"), entry.at("from"), entry.at("to")};
}

PublishedAnswer answer_from(const json& entry) {
  return {entry.at("quantity"),
          entry.at("of"),
          entry.at("printed"),
          entry.at("unit"),
          number_of(entry.at("exact")),
          entry.at("agrees"),
          optional_flag(entry, "series_parallel")};
}

PublishedNetwork network_from(const json& entry) {
  PublishedNetwork network;
  network.id = entry.at("id");
  network.title = entry.at("title");
  network.source = entry.at("source");
  network.series_parallel = optional_flag(entry, "series_parallel");
  for (const json& part : entry.at("parts")) network.parts.push_back(part_from(part));
  for (const json& answer : entry.at("answers")) network.answers.push_back(answer_from(answer));
  return network;
}

std::vector<PublishedNetwork> load() {
  std::ifstream file(OHMFOLD_SOURCE_DIR "/tests/published/networks.json");
  std::vector<PublishedNetwork> all;
  for (const json& entry : json::parse(file)) all.push_back(network_from(entry));
  return all;
}

std::string two_points(const std::string& of, const char* between) {
  const std::size_t comma = of.find(',');
  return point_name(of.substr(0, comma)) + between + point_name(of.substr(comma + 1));
}

std::string statement(const PublishedPart& part) {
  const std::string ends = " from " + point_name(part.from) + " to " + point_name(part.to) + "\n";
  if (part.kind == "switch") return "switch " + part.name + ends;
  const bool drives_current = part.kind == "current source";
  const std::string unit = drives_current ? " A" : part.kind == "battery" ? " V" : " ohm";
  return (drives_current ? "source" : part.kind) + " " + part.name + " = " + part.value + unit +
         ends;
}

}  // namespace

std::size_t PublishedNetwork::count(const std::string& kind) const {
  return static_cast<std::size_t>(std::count_if(
      parts.begin(), parts.end(), [&](const PublishedPart& part) { return part.kind == kind; }));
}

const std::vector<PublishedNetwork>& networks() {
  static const std::vector<PublishedNetwork> kAll = load();
  return kAll;
}

const PublishedNetwork& network(const std::string& id) {
  const auto found =
      std::find_if(networks().begin(), networks().end(),
                   [&](const PublishedNetwork& candidate) { return candidate.id == id; });
  if (found == networks().end()) throw std::invalid_argument("no published network " + id);
  return *found;
}

Number number_of(const std::string& text) {
  const ParsedNumber parsed = parse_number(text);
  if (parsed.fault != NumberFault::none) throw std::invalid_argument("not a number: " + text);
  return parsed.number;
}

std::string point_name(const std::string& published) {
  if (published == "0") return "zero";
  switch (published.back()) {
    case '+':
      return published.substr(0, published.size() - 1) + "_plus";
    case '-':
      return published.substr(0, published.size() - 1) + "_minus";
    default:
      return published;
  }
}

std::string circuit_text(const PublishedNetwork& network) {
  std::string text;
  std::string settings;
  for (const PublishedPart& part : network.parts) {
    text += statement(part);
    if (part.kind != "switch") continue;
    settings += settings.empty() ? "case \"as printed\": " : ", ";
    settings += part.name + " " + part.value;
  }
  return text + settings + "\n";
}

std::optional<std::string> question_text(const PublishedAnswer& answer) {
  if (answer.of.rfind("all ", 0) == 0) return std::nullopt;
  if (answer.quantity == "current") return "current through " + answer.of;
  if (answer.quantity == "voltage") return "voltage across " + answer.of;
  if (answer.quantity == "power") return "power in " + answer.of;
  if (answer.quantity == "resistance")
    return "resistance between " + two_points(answer.of, " and ");
  if (answer.quantity == "potential difference") {
    return "voltage from " + two_points(answer.of, " to ");
  }
  throw std::invalid_argument("no question about " + answer.quantity);
}

const Reduction& shown(const Answer& answer, const CaseTrace& solved) {
  return answer.shown_by ? solved.further.at(*answer.shown_by) : solved.main;
}

Problem read(const std::string& text) {
  const SourceText source{"published", text};
  Outcome<Problem> outcome = read_circuit(source);
  if (outcome) return *std::move(outcome.value);
  std::string findings;
  for (const Diagnostic& diagnostic : outcome.diagnostics) findings += render(diagnostic, source);
  throw std::invalid_argument(findings);
}

}  // namespace ohmfold::published
