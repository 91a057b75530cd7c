// Looks at the rooms of a folder, duplicates one and renames another, and prints what is wrong, a line each.
// Usage: node folder.cjs CHROMIUM LINK, with playwright-core and axe-core on NODE_PATH.
"use strict";
const path = require("node:path");
const { audited, must, problems, served, tried } = require("./driver.cjs");

const [executablePath, link] = process.argv.slice(2);
const { opened } = served(link);
const files = (page) => page.locator(".rooms > li > .soft").allTextContents();

tried(executablePath, async (browser) => {
  for (const colorScheme of ["light", "dark"]) {
    for (const width of [390, 1440]) {
      const page = await opened(browser, { viewport: { width, height: 844 }, colorScheme });
      await page.locator(".rooms summary").first().click();
      await audited(page, `rooms ${colorScheme} ${width}`);
      must(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `the rooms scroll sideways at ${width}`);
      if (process.env.ELBOWROOM_PICTURES) await page.screenshot({ path: path.join(process.env.ELBOWROOM_PICTURES, `rooms-${colorScheme}-${width}.png`), fullPage: true });
      await page.context().close();
    }
  }
  const page = await opened(browser, { viewport: { width: 390, height: 844 } });
  must((await files(page)).join() === "one.yaml,two.yml", `the rooms are ${await files(page)}`);
  // A name that is there already is told, and nothing is written.
  const second = page.locator(".rooms > li").nth(1);
  await second.locator("summary").focus();
  await page.keyboard.press("Enter");
  await second.locator("[data-to='/rename'] [name=name]").fill("../secret");
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.getElementById("amiss").textContent.includes("letters"));
  // The browser tells of what was refused, as it should here.
  const refused = problems.findIndex((problem) => problem.includes("422") && problem.endsWith("/rename"));
  must(refused >= 0, "a name that leads out of the folder is not refused");
  if (refused >= 0) problems.splice(refused, 1);
  await second.locator("[data-to='/rename'] [name=name]").fill("Quay 4");
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.body.textContent.includes("Quay 4.yml"));
  const one = page.locator(".rooms > li").filter({ has: page.getByText("one.yaml", { exact: true }) });
  await one.locator("summary").click();
  await one.getByRole("button", { name: "Duplicate", exact: true }).click();
  await page.waitForURL(/one%2C%20copy\.yaml\/options/);
  await page.locator(".back").click();
  await page.waitForSelector(".rooms");
  must((await files(page)).length === 3, `the rooms are ${await files(page)}`);
  // All of them are ranked at a key: how far that is is told, then each has its first option.
  await page.getByRole("button", { name: "Rank all rooms" }).focus();
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.querySelectorAll(".rooms img").length === 3, null, { timeout: 120000 });
  await page.locator(".rooms img").last().scrollIntoViewIfNeeded();
  await page.waitForFunction(() => [...document.querySelectorAll(".rooms img")].every((plan) => plan.complete && plan.naturalWidth > 0));
  must((await page.textContent(".rooms")).includes("first of"), "what comes first is not told");
  for (const colorScheme of ["light", "dark"]) {
    for (const width of [390, 1440]) {
      const other = await opened(browser, { viewport: { width, height: 844 }, colorScheme });
      await other.waitForSelector(".rooms img");
      await audited(other, `ranked rooms ${colorScheme} ${width}`);
      if (process.env.ELBOWROOM_PICTURES) await other.screenshot({ path: path.join(process.env.ELBOWROOM_PICTURES, `ranked-${colorScheme}-${width}.png`), fullPage: true });
      await other.context().close();
    }
  }
});
