// Opens a report in a real browser and prints what is wrong with it, a line each; nothing where all is well.
// Usage: node report.cjs PAGE CHROMIUM ROOM, with playwright-core and axe-core on NODE_PATH.
"use strict";
const { pathToFileURL } = require("node:url");
const { audited, must, opened: opened_at, tried } = require("./driver.cjs");

const [page_path, executablePath, room] = process.argv.slice(2);
const address = pathToFileURL(page_path).href;

const own = (url) => url === address || url.startsWith("data:font/");
const opened = (browser, options) => opened_at(browser, address, own, options);

tried(executablePath, async (browser) => {
  for (const colorScheme of ["light", "dark"]) {
    for (const width of [320, 1280]) {
      const page = await opened(browser, { viewport: { width, height: 800 }, colorScheme });
      await audited(page, `${colorScheme} ${width}`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      must(wide <= width, `the page is ${wide} wide at ${width}`);
      await page.context().close();
    }
  }

  const page = await opened(browser, { viewport: { width: 1280, height: 800 }, reducedMotion: "reduce" });
  must((await page.textContent("h1")) === room, `the heading is not the room's name: ${await page.textContent("h1")}`);
  must((await page.locator("main script, svg script").count()) === 0, "a script stands in the content");
  must(await page.evaluate(() => getComputedStyle(document.documentElement).scrollBehavior === "auto"), "it moves where no motion is wanted");
  must(await page.evaluate(() => document.fonts.ready.then(() => [...document.fonts].some((font) => font.status === "loaded"))), "the plans' letters are not loaded");

  // The first screen holds the answer: its plan, wall, hand, sizes and a reason.
  for (const [width, height] of [[1280, 700], [390, 1000]]) {
    const first = await opened(browser, { viewport: { width, height } });
    const parts = ["svg", "[data-title]", "[data-fact=wall]", "[data-fact=hand]", "[data-fact=sizes]", "[data-fact=why]"];
    for (const part of parts) {
      const box = await first.locator(`#answer ${part}`).first().boundingBox();
      const within = box !== null && box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height;
      must(within, `${part} of the answer is not on the first screen of ${width} x ${height}: ${JSON.stringify(box)}`);
    }
    must(await first.evaluate(() => document.documentElement.scrollWidth) <= width, `it scrolls sideways at ${width}`);
    await first.context().close();
  }

  // A plan opens large by its button, and closes by Escape.
  await page.locator("#answer .open").click();
  must(await page.locator("dialog svg").isVisible(), "the plan does not open large");
  await audited(page, "with a plan open");
  await page.keyboard.press("Escape");
  must(!(await page.locator("dialog").isVisible()), "Escape does not close the plan");
  await page.evaluate(() => { document.activeElement.blur(); window.getSelection().removeAllRanges(); });
  await page.reload();

  // By keyboard alone: the first stop skips to the report, then come the sliders.
  await page.keyboard.press("Tab");
  must((await page.evaluate(() => document.activeElement.className)) === "skip", "the first stop is not the way past");
  await page.locator("#wishes summary").focus();
  await page.keyboard.press("Enter");
  const filed = await page.textContent("#answer [data-title]");
  const sliders = await page.locator("input[type=range]").count();
  must(sliders >= 5, `${sliders} sliders`);
  const before = await page.locator("#order tr").first().getAttribute("id");
  // One wish at its most and all others at none, each in turn, until another option comes first.
  for (let most = 0; most < sliders; most += 1) {
    for (let slider = 0; slider < sliders; slider += 1) {
      await page.locator("input[type=range]").nth(slider).focus();
      await page.keyboard.press(slider === most ? "End" : "Home");
    }
    await page.waitForTimeout(400);
    if ((await page.textContent("#answer [data-title]")) !== filed) break;
  }
  await page.waitForFunction(() => document.getElementById("told").textContent.startsWith("Now first"));
  const first = page.locator("#order tr").first();
  const told = await page.textContent("#told");
  must(told.includes(await first.locator("[data-title]").textContent()), `the status does not tell the first row: ${told}`);
  const [now, was] = [await page.textContent("#answer [data-title]"), await page.textContent("#was")];
  must(now === await first.locator("[data-title]").textContent(), `the answer is not the first row: ${now}`);
  must(now !== filed, "no other option comes first");
  must(was.includes(filed) && await page.locator("#was").isVisible(), `it does not say what was first: ${was}`);
  must((await page.getAttribute("#answer svg", "aria-label")).includes(now), "the plan of the answer is another's");
  const places = await page.locator("#order [data-told=rank]").allTextContents();
  must(places.every((rank, place) => place === 0 || Number(rank) > Number(places[place - 1])), `rows are out of order: ${places}`);
  for (const tier of new Set(await page.locator("#order tr").evaluateAll((rows) => rows.map((row) => row.dataset.tier)))) {
    const scores = await page.locator(`#order [data-tier="${tier}"] [data-told=score]`).allTextContents();
    must(scores.every((score, place) => place === 0 || Number(score) <= Number(scores[place - 1])), `scores do not fall: ${scores}`);
  }
  const like = await page.locator("#order [data-like], #order-more [data-like]").allTextContents();
  const others = await page.locator("#others tr[id]").count();
  const counted = like.reduce((sum, text) => sum + (text === "" ? 0 : Number(text.match(/[0-9]+/)[0])), 0);
  must(counted === others, `${counted} are said to be like the best of their families, and ${others} are listed`);
  const cards = await page.locator("#options > li").evaluateAll((items) => items.map((item) => item.querySelector("[data-rank]").textContent));
  must(cards.every((rank, place) => place === 0 || Number(rank) > Number(cards[place - 1])), `cards are out of order: ${cards}`);
  await page.locator("#reset").focus();
  await page.keyboard.press("Enter");
  must((await page.locator("#order tr").first().getAttribute("id")) === before, "the reset does not bring the order back");
  must((await page.textContent("#answer [data-title]")) === filed && !(await page.locator("#was").isVisible()), "the reset does not bring the answer back");
  await audited(page, "after sliding");

  await page.emulateMedia({ media: "print" });
  must(!(await page.locator("#reset").isVisible()), "a button is printed");
  must((await page.pdf({ format: "A4" })).length > 20000, "it does not print");
});
