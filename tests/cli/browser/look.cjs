// Comes by the link that only looks, and prints what is wrong, a line each: options, comparison and sheets can be had, and
// nothing that changes the file.
// Usage: node look.cjs CHROMIUM LINK, with playwright-core and axe-core on NODE_PATH.
"use strict";
const path = require("node:path");
const { audited, must, served, tried } = require("./driver.cjs");

const [executablePath, link] = process.argv.slice(2);
const { opened } = served(link);
const ranked = (page) => page.waitForSelector("#first svg", { state: "attached", timeout: 120000 });

tried(executablePath, async (browser) => {
  for (const colorScheme of ["light", "dark"]) {
    for (const width of [390, 1440]) {
      const page = await opened(browser, { viewport: { width, height: 844 }, colorScheme });
      await ranked(page);
      await audited(page, `looked at, ${colorScheme} ${width}`);
      must(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `it scrolls sideways at ${width}`);
      if (process.env.ELBOWROOM_PICTURES) await page.screenshot({ path: path.join(process.env.ELBOWROOM_PICTURES, `look-${colorScheme}-${width}.png`) });
      await page.context().close();
    }
  }
  const page = await opened(browser, { viewport: { width: 390, height: 844 } });
  await ranked(page);
  must(await page.locator("form, input[type=text], input[type=range], [data-step], [data-do]").count() === 0, "there is something to change with");
  const screens = (await page.locator("nav[aria-label=Steps] a").allTextContents()).join();
  must(screens === "Options,Compare,Sheets", `the screens are ${screens}`);
  await page.locator("#filters label").nth(1).click();
  await page.waitForFunction(() => document.querySelector("#filters input:checked").value !== "");
  await page.locator(".pin").first().click();
  await page.waitForSelector(".pins");
  await page.locator('nav a[href*="/sheets"]').click();
  const [download] = await Promise.all([page.waitForEvent("download"), page.locator('a[data-sheet$="plan.svg"]').click()]);
  must(download.suggestedFilename() === "room-plan.svg", download.suggestedFilename());
});
