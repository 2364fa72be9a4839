// Accessibility, by rules, in light and dark; reflow; no requests.
import assert from "node:assert/strict";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { address, launch, names, open } from "./pages.mjs";

const axe = createRequire(import.meta.url).resolve("axe-core/axe.min.js");
const samples = names.filter((name) => /^(sample|hostile|booklet-workbook|37)/.test(name));
let browser;
before(async () => { browser = await launch(); });
after(() => browser.close());

const violations = async (page) => {
  await page.addScriptTag({ path: axe });
  const report = await page.evaluate(() => globalThis.axe.run(document, {
    runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  }));
  return report.violations.map((one) =>
    `${one.id}: ${one.nodes.map((node) => node.target.join(" ")).slice(0, 3).join(", ")}`);
};

for (const name of samples) {
  for (const colorScheme of ["light", "dark"]) {
    test(`${name} keeps the rules in ${colorScheme}`, async () => {
      const { context, page, requests, complaints } =
        await open(browser, name, { colorScheme, bypassCSP: true });
      assert.deepEqual(await violations(page), []);
      const all = page.getByRole("button", { name: "Show all" });
      if (await all.count() > 0) {
        await all.click();
        for (const field of await page.getByRole("textbox").all()) {
          await field.fill("7.77");
          await field.press("Enter");
        }
        assert.deepEqual(await violations(page), []);
      }
      assert.deepEqual(requests.filter((url) => !url.startsWith("file:")), []);
      assert.deepEqual(complaints, []);
      await context.close();
    });
  }
}

test("a fault is seen", async () => {
  const { context, page } = await open(browser, "sample-workbook.html", { bypassCSP: true });
  await page.evaluate(() => document.querySelector("label").remove());
  assert.notDeepEqual(await violations(page), []);
  await context.close();
});

test("no page is wider than a narrow window", async () => {
  const context = await browser.newContext({ viewport: { width: 320, height: 800 } });
  const page = await context.newPage();
  const wide = [];
  for (const name of names) {
    await page.goto(address(name));
    await page.evaluate(() => {
      for (const cover of document.querySelectorAll("details")) cover.open = true;
    });
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    if (width > 320) wide.push(`${name}: ${width}`);
  }
  assert.deepEqual(wide, []);
  await context.close();
});

test("what a pointer aims at is 24 pixels high or more", async () => {
  const { context, page } = await open(browser, "sample-workbook.html");
  const low = await page.evaluate(() =>
    [...document.querySelectorAll("nav a, button, summary, input")]
      .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 24)
      .map((one) => one.outerHTML));
  assert.deepEqual(low, []);
  await context.close();
});
