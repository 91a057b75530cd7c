// Touches what an option is made of and prints what is wrong, a line each: sizes, ways and reasons by keys and by touch, marked on
// the plan and told; what the plan shows.
// Usage: node touched.cjs CHROMIUM LINK, with playwright-core and axe-core on NODE_PATH.
"use strict";
const { audited, must, pictured, served, tried } = require("./driver.cjs");

const [executablePath, link] = process.argv.slice(2);
const { opened, go } = served(link);
const marked = (page, is) => page.waitForFunction((is) => (document.querySelector("#first .plan svg .marked") !== null) === is, is);
const told = (page) => page.textContent("#touched");

async function byKeys(page) {
  await go(page, "options");
  const size = page.locator("#first .touch").first();
  await size.focus();
  await page.keyboard.press("Enter");
  await marked(page, true);
  must(/What holds the size of/.test(await told(page)), `a size tells: ${await told(page)}`);
  must(await size.getAttribute("aria-pressed") === "true", "what is touched is not told as pressed");
  must(await page.evaluate(() => document.activeElement.dataset.touch?.startsWith("size-")), "the keyboard loses its place");
  // The marks come off by a key too, and who took them off goes on where they touched.
  await page.locator("#touched button").focus();
  await page.keyboard.press("Enter");
  await marked(page, false);
  must((await told(page)) === "" && await page.evaluate(() => document.activeElement.dataset.touch?.startsWith("size-")), "the keyboard is lost with the marks");
  await page.locator("#closer summary").focus();
  await page.keyboard.press("Enter");
  await page.waitForSelector('#closer [data-touch^="way-"]');
  await page.locator('#closer [data-touch^="way-"]').first().focus();
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.querySelector("#touched .told")?.dataset.of.startsWith("way-"));
  must(/narrowest/.test(await told(page)), `a way tells: ${await told(page)}`);
  await page.locator('#closer [data-touch^="reason-"]').first().focus();
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.querySelector("#touched .told")?.dataset.of.startsWith("reason-"));
  must(/of 100/.test(await told(page)), `a reason tells: ${await told(page)}`);
  // A wish that is moved leaves what was touched and what is shown as they were, where the option is the same.
  await page.locator("#show-ways").focus();
  await page.keyboard.press("Space");
  await page.waitForSelector("#first .plan svg .ways", { state: "attached" });
  must(await page.evaluate(() => document.activeElement.id) === "show-ways", "the keyboard loses what it chose");
  await page.locator("#show-ways").focus();
  await page.keyboard.press("Space");
  await page.waitForFunction(() => document.querySelector("#first .plan svg .ways") === null);
}

async function byTouch(browser, colorScheme, width) {
  const page = await opened(browser, { viewport: { width, height: 844 }, colorScheme, hasTouch: true, reducedMotion: "reduce" });
  await go(page, "options");
  await page.waitForFunction(() => [...document.querySelectorAll("#first .plan svg")].some((svg) => svg.getClientRects().length > 0));
  const at = await page.evaluate(() => {
    const svg = [...document.querySelectorAll("#first .plan svg")].find((svg) => svg.getClientRects().length > 0);
    const name = [...svg.querySelectorAll("text")].find((text) => /\d.*×/.test(text.textContent)).getBoundingClientRect();
    return [name.left + name.width / 2, name.top + name.height / 2];
  });
  await page.touchscreen.tap(...at);
  await marked(page, true);
  must(/What holds the size of/.test(await told(page)), `a piece that is touched tells: ${await told(page)}`);
  await audited(page, `a size touched ${colorScheme} ${width}`);
  await pictured(page, `touched-size-${colorScheme}-${width}`);
  await page.locator("#closer summary").tap();
  await page.locator('#closer [data-touch^="way-"]').nth(1).tap();
  await page.waitForFunction(() => document.querySelector("#touched .told")?.dataset.of.startsWith("way-"));
  await pictured(page, `touched-way-${colorScheme}-${width}`);
  await page.locator('#closer [data-touch^="reason-"]').first().tap();
  await page.waitForFunction(() => document.querySelector("#touched .told")?.dataset.of.startsWith("reason-"));
  await audited(page, `a reason touched ${colorScheme} ${width}`);
  await pictured(page, `touched-reason-${colorScheme}-${width}`);
  for (const show of ["ways", "sights", "zones", "largest"]) await page.locator(`#show-${show}`).check();
  await page.waitForSelector("#first .plan svg .largest", { state: "attached" });
  await audited(page, `all shown ${colorScheme} ${width}`);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  must(wide <= width, `what is touched is ${wide} wide at ${width}`);
  await page.locator("#touched button").tap();
  await marked(page, false);
  await page.locator("#first .plan").scrollIntoViewIfNeeded();
  await pictured(page, `all-shown-${colorScheme}-${width}`);
  await page.context().close();
}

tried(executablePath, async (browser) => {
  await byKeys(await opened(browser, { viewport: { width: 1440, height: 900 } }));
  for (const colorScheme of ["light", "dark"]) for (const width of [390, 1440]) await byTouch(browser, colorScheme, width);
});
