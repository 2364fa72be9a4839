// Pages on paper.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { launch, names, open, path } from "./pages.mjs";

let browser;
before(async () => { browser = await launch(); });
after(() => browser.close());

const print = async (name, prepare = async () => {}) => {
  const { context, page } = await open(browser, name, { colorScheme: "dark" });
  await prepare(page);
  const headings = await page.locator("h1, h2, h3, h4, h5, h6").allInnerTexts();
  const file = path(name.replace(".html", ".pdf"));
  await page.pdf({ path: file, format: "A4", printBackground: true, preferCSSPageSize: true });
  await context.close();
  const text = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
  const sheets = text.split("\f").slice(0, -1)
    .map((sheet) => sheet.split("\n").map((line) => line.trim()).filter((line) => line !== ""));
  return { file, sheets, headings };
};

test("no heading is the last line of a sheet", async () => {
  for (const name of names.filter((one) => /^(booklet|37|16).*\.html$/.test(one))) {
    if (name.includes("workbook")) continue;
    const { sheets, headings } = await print(name);
    assert.ok(sheets.length > 1, name);
    for (const sheet of sheets) {
      const last = sheet.at(-1).replace(/\s+/g, " ");
      assert.ok(!headings.some((heading) => heading.replace(/\s+/g, " ") === last),
        `${name}: "${last}" is stranded`);
    }
  }
});

test("paper is white, also where the screen is dark", async () => {
  const { file } = await print("sample.html");
  execFileSync("pdftoppm", ["-r", "20", "-gray", "-singlefile", file, file.replace(".pdf", "")]);
  const image = readFileSync(file.replace(".pdf", ".pgm"));
  assert.equal(image.at(-1), 255);
});

test("a workbook is printed as it is shown", async () => {
  const covered = (await print("sample-workbook.html")).sheets.flat().join("\n");
  assert.match(covered, /What is R12\?/);
  assert.doesNotMatch(covered, /in parallel|Show all|Check/);
  const shown = (await print("sample-workbook.html", (page) =>
    page.getByRole("button", { name: "Show all" }).click())).sheets.flat().join("\n");
  assert.match(shown, /in parallel/);
  assert.match(shown, /Only R12 is left/);
});

test("a page has no contents and no links to skip on paper", async () => {
  const text = (await print("sample.html")).sheets.flat().join("\n");
  assert.doesNotMatch(text, /Contents|Skip to/);
});
