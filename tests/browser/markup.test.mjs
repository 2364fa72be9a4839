// Every page is valid HTML.
import assert from "node:assert/strict";
import { test } from "node:test";
import { HtmlValidate } from "html-validate";
import { names, path } from "./pages.mjs";

const rules = {
  extends: ["html-validate:recommended", "html-validate:document"],
  rules: {
    // The pages are well-formed XML, too.
    "void-style": ["error", { style: "selfclose" }],
    "attribute-boolean-style": "off",
    "attribute-empty-style": "off",
    "no-self-closing": "off",
    "doctype-style": ["error", { style: "uppercase" }],
    // Titles are the authors' own, of any length.
    "long-title": "off",
    // One file: its style and script stand within it, and its policy allows nothing else.
    "require-sri": "off",
    "no-inline-style": "error",
    // Names of a file may be followed by nothing or by spaces.
    "no-trailing-whitespace": "off",
  },
};

test("every page is valid HTML", async () => {
  const validate = new HtmlValidate(rules);
  const found = [];
  for (const name of names) {
    const report = await validate.validateFile(path(name));
    for (const result of report.results) {
      for (const { ruleId, message, line, selector } of result.messages) {
        found.push(`${name}:${line} ${ruleId}: ${message} (${selector})`);
      }
    }
  }
  assert.deepEqual(found.slice(0, 20), []);
  assert.ok(names.length > 3);
});

test("the validator sees faults", async () => {
  const validate = new HtmlValidate(rules);
  const report = await validate.validateString("<p><div></p><input id='a'><i id='a'></i>");
  assert.ok(report.errorCount > 3);
});
