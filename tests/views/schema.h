// JSON held against a schema, where the library for that is installed.
#pragma once

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <utility>
#include <vector>

#include "samples.h"

#if __has_include(<valijson/validator.hpp>)
#define OHMFOLD_HAS_VALIJSON 1
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>
#endif

namespace ohmfold::test {

#ifdef OHMFOLD_HAS_VALIJSON
/// What the schema in this file has against the text; nothing where it keeps to it.
inline std::string schema_objection(const char* file, const std::string& text) {
  const nlohmann::json schema_text =
      nlohmann::json::parse(contents(std::filesystem::path(OHMFOLD_SOURCE_DIR) / file));
  valijson::Schema schema;
  valijson::SchemaParser parser(valijson::SchemaParser::kDraft7);
  parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(schema_text), schema);
  const nlohmann::json document = nlohmann::json::parse(text);
  valijson::Validator validator;
  valijson::ValidationResults results;
  if (validator.validate(schema, valijson::adapters::NlohmannJsonAdapter(document), &results)) {
    return "";
  }
  std::string all = "refused";
  for (valijson::ValidationResults::Error error; results.popError(error);) {
    all += "\n";
    for (const std::string& step : error.context) all += step;
    all += ": " + error.description;
  }
  return all;
}

/// Each of these changes makes a text, which the schema allows, one that it does not allow.
inline void expect_refusals(const char* file, const std::string& good,
                            const std::vector<std::pair<std::string, std::string>>& changes) {
  ASSERT_EQ(schema_objection(file, good), "");
  for (const auto& [from, to] : changes) {
    std::string bad = good;
    ASSERT_NE(bad.find(from), std::string::npos) << from;
    bad.replace(bad.find(from), from.size(), to);
    EXPECT_NE(schema_objection(file, bad), "") << to;
  }
}
#endif

}  // namespace ohmfold::test
