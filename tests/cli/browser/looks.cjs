// Looks at the screens on a phone and on a desk, and prints what is wrong, a line each: letters that do not read, what one changes
// out of sight of what comes of it, names that run out of the screen.
// Usage: node looks.cjs CHROMIUM LINK, with playwright-core and axe-core on NODE_PATH.
"use strict";
const { audited, must, pictured, served, tried } = require("./driver.cjs");

const [executablePath, link] = process.argv.slice(2);
const { opened, go } = served(link);

// The least letter of what is seen within, px.
const least = (page, within) => page.evaluate((within) => {
  const seen = [...document.querySelectorAll(`${within} svg text`)].filter((text) => text.getClientRects().length > 0 && text.textContent.trim() !== "");
  const size = (text) => Number.parseFloat(getComputedStyle(text).fontSize) * Math.hypot(text.getScreenCTM().a, text.getScreenCTM().b);
  return Math.min(...seen.map(size));
}, within);
const seen = (page, selector) => page.locator(selector).first().evaluate((element) => {
  const box = element.getBoundingClientRect();
  return box.height > 0 && box.bottom > 40 && box.top < innerHeight - 40;
});

tried(executablePath, async (browser) => {
  for (const width of [390, 1000, 1440]) {
    const page = await opened(browser, { viewport: { width, height: 844 }, hasTouch: width === 390 });
    for (const [screen, within] of [["options", "#first .plan"], ["measure", ".drawing-beside"], ["furnish", "#first .plan"]]) {
      await go(page, screen);
      const letters = await least(page, within);
      must(letters >= 10.9, `${screen}: letters of ${letters} px at ${width}`);
    }
    await go(page, "options");
    await page.locator(".ways .plan").first().scrollIntoViewIfNeeded();
    await page.waitForSelector(".ways .plan svg");
    const small = await least(page, ".ways .plan");
    must(small >= 10.9, `small plans: letters of ${small} px at ${width}`);
    for (const screen of ["measure", "furnish", "options", "compare", "try", "sheets"]) {
      await go(page, screen);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      must(wide <= width, `${screen} is ${wide} wide at ${width}`);
    }
    await page.context().close();
  }
  // In the hand: what one changes, and what comes of it, in sight together.
  const page = await opened(browser, { viewport: { width: 390, height: 844 }, hasTouch: true });
  await go(page, "options");
  await page.locator("#wishes input").last().scrollIntoViewIfNeeded();
  must(await seen(page, "#first .plan"), "the plan is out of sight of the wishes");
  await pictured(page, "wishes-390");
  await go(page, "furnish");
  await page.locator('[data-at="pieces.1.width"]').scrollIntoViewIfNeeded();
  must(await seen(page, "#first .plan"), "the plan is out of sight of a size");
  await go(page, "measure");
  await page.locator('[data-at="walls.0.name"]').scrollIntoViewIfNeeded();
  must(await seen(page, ".drawing-beside .outline"), "the walls are out of sight of a length");
  await go(page, "try");
  await page.waitForSelector("#trial-plan .piece");
  await page.locator("#trial-pieces input").last().scrollIntoViewIfNeeded();
  must(await seen(page, "#trial-plan svg"), "the plan is out of sight of its figures");
  await page.context().close();
  // The plan seen nearer, moved by keys, and with all that is worked out.
  const desk = await opened(browser, { viewport: { width: 1440, height: 900 } });
  await go(desk, "options");
  const view = () => desk.evaluate(() => [...document.querySelectorAll("#first .plan svg")].find((svg) => svg.getClientRects().length > 0).getAttribute("viewBox"));
  const whole = await view();
  await desk.getByRole("button", { name: "Nearer" }).focus();
  await desk.keyboard.press("Enter");
  await desk.waitForFunction(() => document.querySelector("#first .plan svg.closer") !== null);
  const nearer = await view();
  must(nearer !== whole, "the plan is not seen nearer");
  await desk.keyboard.press("ArrowRight");
  must(await view() !== nearer, "it is not moved by keys");
  await desk.getByRole("button", { name: "All of it" }).click();
  const figures = (box) => box.split(" ").map(Number).join();
  // A busy machine answers the click a little later.
  for (let tries = 0; tries < 50 && figures(await view()) !== figures(whole); tries += 1) await desk.waitForTimeout(100);
  must(figures(await view()) === figures(whole), `all of it is ${await view()}, not ${whole}`);
  for (const show of ["ways", "sights", "zones"]) await desk.locator(`#show-${show}`).check();
  await desk.waitForSelector("#first .plan svg .zones", { state: "attached" });
  await audited(desk, "with all that is worked out");
  await pictured(desk, "in-full");
  for (const show of ["ways", "sights", "zones"]) await desk.locator(`#show-${show}`).uncheck();
  await desk.waitForSelector("#first .plan .at-desk");
});
