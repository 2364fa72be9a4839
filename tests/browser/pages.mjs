// The pages under test, and a browser to open them with.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

export const folder = process.env.OHMFOLD_PAGES;
export const names = readdirSync(folder).filter((name) => name.endsWith(".html")).sort();
export const path = (name) => join(folder, name);
export const address = (name) => pathToFileURL(path(name)).href;

export const launch = () => chromium.launch({
  executablePath: process.env.OHMFOLD_CHROMIUM,
  headless: true,
  args: ["--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});

/// A page that has been opened, with all that it asked for and every complaint of its scripts.
export const open = async (browser, name, options = {}) => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
  const page = await context.newPage();
  const requests = [];
  const complaints = [];
  page.on("request", (request) => requests.push(request.url()));
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => complaints.push(message.text()));
  await page.goto(address(name));
  return { context, page, requests, complaints };
};
