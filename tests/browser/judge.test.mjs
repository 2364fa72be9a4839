// What the workbook says to a value that is typed.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";

const source = readFileSync(
  join(process.env.OHMFOLD_SOURCE, "src/handout/workbook_judge.js"), "utf8");
const judgeValue = new Function(`${source}; return judgeValue;`)();

// typed, exact value, its unit, figures wanted, key of the remark
const rows = [
  // Equal, however it is written.
  ["8/3", "8/3", "ohm", 3, "exact"],
  ["16/6", "8/3", "ohm", 3, "exact"],
  ["2 2/3", "8/3", "ohm", 3, "exact"],
  ["1 7/8 A", "15/8", "A", 3, "exact"],
  ["-1 7/8", "-15/8", "A", 3, "exact"],
  ["\u22123/4", "-3/4", "A", 3, "exact"],
  ["3\u20444", "3/4", "A", 3, "exact"],
  ["4.7k", "4700", "ohm", 3, "exact"],
  ["4k7", "4700", "ohm", 3, "exact"],
  ["4K7", "4700", "ohm", 3, "exact"],
  ["R47", "47/100", "ohm", 3, "exact"],
  ["470R", "470", "ohm", 3, "exact"],
  ["4,7 kΩ", "4700", "ohm", 3, "exact"],
  ["4.7 kilohms", "4700", "ohm", 3, "exact"],
  ["0.0047 Mohm", "4700", "ohm", 3, "exact"],
  ["4.7e3", "4700", "ohm", 3, "exact"],
  ["4.7 × 10^3", "4700", "ohm", 3, "exact"],
  ["686 mA", "343/500", "A", 3, "exact"],
  ["5 µA", "1/200000", "A", 3, "exact"],
  ["5 μA", "1/200000", "A", 3, "exact"],
  ["R12 = 8/3 Ω", "8/3", "ohm", 3, "exact"],
  ["R12 = 8/3 ≈ 2.67", "8/3", "ohm", 3, "rounded"],
  ["0", "0", "A", 3, "exact"],
  ["0.00", "0", "A", 3, "exact"],
  ["  12  ", "12", "V", 3, "exact"],
  // Rounded right.
  ["2.67", "8/3", "ohm", 3, "rounded"],
  ["2.6667", "8/3", "ohm", 3, "rounded"],
  ["2,67 ohm", "8/3", "ohm", 3, "rounded"],
  ["2670 mohm", "8/3", "ohm", 3, "rounded"],
  ["-2.67", "-8/3", "A", 3, "rounded"],
  ["12300", "12345", "ohm", 3, "rounded"],
  ["12.3k", "12345", "ohm", 3, "rounded"],
  // Both ends of half a unit belong to it.
  ["1.24", "247/200", "A", 3, "rounded"],
  ["1.23", "247/200", "A", 3, "rounded"],
  // Too few figures, cut off, close.
  ["2.7", "8/3", "ohm", 3, "short"],
  ["3", "8/3", "ohm", 3, "short"],
  ["12000", "12345", "ohm", 3, "short"],
  ["2.66", "8/3", "ohm", 3, "cut"],
  ["-2.66", "-8/3", "A", 3, "cut"],
  ["2.65", "8/3", "ohm", 3, "close"],
  ["2.68", "8/3", "ohm", 3, "close"],
  ["2.6654", "8/3", "ohm", 3, "close"],
  // Slips.
  ["-8/3", "8/3", "ohm", 3, "sign"],
  ["2.67", "-8/3", "A", 3, "sign"],
  ["2670", "8/3", "ohm", 3, "prefix"],
  ["2.67 kohm", "8/3", "ohm", 3, "prefix"],
  ["4.7", "4700", "ohm", 3, "prefix"],
  ["5 M", "1/200", "A", 3, "prefix"],
  ["5", "1/200000", "A", 3, "prefix"],
  ["3/8", "8/3", "ohm", 3, "reciprocal"],
  ["0.375", "8/3", "ohm", 3, "reciprocal"],
  ["3 V", "3", "A", 3, "unit"],
  ["4k7", "4700", "V", 3, "unit"],
  // Neither.
  ["5", "12", "V", 3, "other"],
  ["0", "1/3", "ohm", 3, "other"],
  ["0.0", "1/1000", "A", 3, "other"],
  ["2", "8/3", "ohm", 3, "other"],
  ["2.5", "8/3", "ohm", 3, "other"],
  ["7/3", "8/3", "ohm", 3, "other"],
  // No value.
  ["", "1", "ohm", 3, "empty"],
  ["   ", "1", "ohm", 3, "empty"],
  ["much", "1", "ohm", 3, "unreadable"],
  ["1/0", "1", "ohm", 3, "unreadable"],
  ["1.2.3", "1", "ohm", 3, "unreadable"],
  ["1,234.5", "1", "ohm", 3, "unreadable"],
  ["3 apples", "3", "ohm", 3, "unreadable"],
  ["1e999", "1", "ohm", 3, "unreadable"],
  ["--3", "3", "ohm", 3, "unreadable"],
  [".", "3", "ohm", 3, "unreadable"],
  ["=", "3", "ohm", 3, "unreadable"],
  ["<b>", "3", "ohm", 3, "unreadable"],
];

for (const [typed, exact, unit, wanted, key] of rows) {
  test(`"${typed}" for ${exact} ${unit} to ${wanted} figures: ${key}`, () => {
    const found = judgeValue(typed, exact, unit, wanted);
    assert.equal(found.key, key);
    assert.equal(found.right, key === "exact" || key === "rounded");
  });
}

test("values longer than a machine word are compared exactly", () => {
  const exact = "100000000000000000000000000000000001/3";
  assert.equal(judgeValue(exact, exact, "ohm", 3).key, "exact");
  assert.equal(judgeValue(exact.replace("001/3", "002/3"), exact, "ohm", 3).key, "other");
});

test("a remark on figures says how many", () => {
  assert.equal(judgeValue("2.667", "8/3", "ohm", 3).figures, 4);
  assert.equal(judgeValue("2.7", "8/3", "ohm", 3).figures, 3);
});
