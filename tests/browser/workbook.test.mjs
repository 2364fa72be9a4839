// The workbook as a reader uses it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { address, launch, open } from "./pages.mjs";

const kName = "sample-workbook.html";
let browser;
before(async () => { browser = await launch(); });
after(() => browser.close());

const parts = (page) => ({
  field: page.getByLabel("What is R12?"),
  check: page.getByRole("button", { name: "Check" }),
  remark: page.locator("output.remark"),
  first: page.getByText("R1 and R2 are in parallel."),
  second: page.getByText("Only R12 is left."),
  cover: page.locator("summary"),
  progress: page.locator("#shown"),
});

const answer = async (page, text) => {
  const { field, check, remark } = parts(page);
  await field.fill(text);
  await check.click();
  return (await remark.textContent()).trim();
};

test("steps are covered, and the second waits for the first", async () => {
  const { context, page, complaints } = await open(browser, kName);
  const { first, cover, progress } = parts(page);
  assert.equal(await first.isVisible(), false);
  assert.equal(await page.getByRole("heading", { name: /Step 1/ }).isVisible(), true);
  assert.equal(await page.getByRole("heading", { name: /Step 2/ }).isVisible(), false);
  assert.equal(await progress.textContent(), "0 of 3 shown.");
  await cover.first().click();
  assert.equal(await first.isVisible(), true);
  assert.equal(await page.getByRole("heading", { name: /Step 2/ }).isVisible(), true);
  assert.equal(await progress.textContent(), "1 of 3 shown.");
  assert.deepEqual(complaints, []);
  await context.close();
});

test("a right value shows the step, exact or rounded", async () => {
  for (const [typed, words] of [["8/3", "✓ Right."], ["2,67 ohm", "✓ Right to three figures."]]) {
    const { context, page } = await open(browser, kName);
    assert.equal(await answer(page, typed), words);
    assert.equal(await parts(page).first.isVisible(), true);
    // The reader stays where they are, and the next step is there to go on to.
    assert.equal(await parts(page).check.evaluate((one) => one === document.activeElement), true);
    await context.close();
  }
});

test("another value shows nothing and tells nothing", async () => {
  const { context, page } = await open(browser, kName);
  const remarks = [
    ["12", "· Not this value yet. Work it out once more, or show the step."],
    ["2.7", "≈ Right as far as it goes: give at least three figures."],
    ["2.66", "≈ The value is cut off where it had to be rounded: look at the next digit."],
    ["2.65", "≈ Close, but not within rounding: keep more figures in between."],
    ["8/3 A", "· The value is asked for in Ω: which quantity has the unit that is typed?"],
    ["", "· Type a value first, or show the step."],
  ];
  for (const [typed, words] of remarks) assert.equal(await answer(page, typed), words);
  assert.equal(await parts(page).first.isVisible(), false);
  await context.close();
});

test("the remark is announced", async () => {
  const { context, page } = await open(browser, kName);
  await answer(page, "8/3");
  assert.equal(await page.getByRole("status").filter({ hasText: "Right." }).count(), 1);
  await context.close();
});

test("the keyboard alone does everything", async () => {
  const { context, page } = await open(browser, kName);
  const { field, first, second } = parts(page);
  const reach = async (what) => {
    for (let i = 0; i < 40; ++i) {
      await page.keyboard.press("Tab");
      if (await what.evaluate((one) => one === document.activeElement)) return;
    }
    assert.fail("not reached by Tab");
  };
  await page.keyboard.press("Tab");
  assert.equal(await page.evaluate(() => document.activeElement.className), "skip");
  await page.keyboard.press("Enter");
  await reach(field);
  await page.keyboard.type("2.67");
  await page.keyboard.press("Enter");
  assert.equal(await first.isVisible(), true);
  await reach(page.locator("#p1-step-2 summary"));
  const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineWidth);
  assert.equal(outline, "3px");
  await page.keyboard.press("Enter");
  assert.equal(await second.isVisible(), true);
  await context.close();
});

test("a reload remembers, and starting again forgets", async () => {
  const { context, page } = await open(browser, kName);
  await answer(page, "8/3");
  await page.reload();
  const { field, first, remark } = parts(page);
  assert.equal(await field.inputValue(), "8/3");
  assert.equal((await remark.textContent()).trim(), "✓ Right.");
  assert.equal(await first.isVisible(), true);
  page.once("dialog", (dialog) => dialog.dismiss());
  await page.getByRole("button", { name: "Start again" }).click();
  assert.equal(await first.isVisible(), true);
  page.once("dialog", (dialog) => dialog.accept());
  await page.getByRole("button", { name: "Start again" }).click();
  assert.equal(await first.isVisible(), false);
  await page.reload();
  assert.equal(await field.inputValue(), "");
  assert.equal(await first.isVisible(), false);
  await context.close();
});

test("showing all shows all", async () => {
  const { context, page } = await open(browser, kName);
  await page.getByRole("button", { name: "Show all" }).click();
  const { first, second, progress } = parts(page);
  assert.equal(await first.isVisible() && await second.isVisible(), true);
  assert.equal(await progress.textContent(), "3 of 3 shown.");
  await context.close();
});

test("another document has another memory", async () => {
  const { context, page } = await open(browser, kName);
  await answer(page, "8/3");
  await page.goto(address("hostile-workbook.html"));
  assert.equal(await page.locator("details[open]").count(), 0);
  await context.close();
});

test("a browser that keeps nothing does not stop it", async () => {
  const context = await browser.newContext();
  await context.addInitScript(() => {
    Object.defineProperty(window, "localStorage", { get() { throw new Error("refused"); } });
  });
  const page = await context.newPage();
  await page.goto(address(kName));
  assert.equal(await answer(page, "8/3"), "✓ Right.");
  await context.close();
});

test("without scripts every step opens by its summary", async () => {
  const { context, page } = await open(browser, kName, { javaScriptEnabled: false });
  const { field, first, second, cover } = parts(page);
  assert.equal(await field.isVisible(), false);
  assert.equal(await page.locator("#progress").isVisible(), false);
  assert.equal(await cover.count(), 3);
  for (const one of await cover.all()) await one.click();
  assert.equal(await first.isVisible() && await second.isVisible(), true);
  await context.close();
});

test("text of a circuit runs nothing", async () => {
  const { context, page, complaints } = await open(browser, "hostile-workbook.html");
  assert.deepEqual(complaints, []);
  assert.match(await page.locator("h1").textContent(), /<script>alert\(1\)<\/script>/);
  await context.close();
});
