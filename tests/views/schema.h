// JSON held against a schema, where the library for that is installed.
#pragma once

#include <nlohmann/json.hpp>

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
#endif

}  // namespace ohmfold::test
