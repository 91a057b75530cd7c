// Opens a report in a real browser and prints what is wrong with it, a line each; nothing where all is well.
// Usage: node report.cjs PAGE CHROMIUM ROOM, with playwright-core and axe-core on NODE_PATH.
"use strict";
const { chromium } = require("playwright-core");
const { pathToFileURL } = require("node:url");
const axe = require("axe-core").source;

const [page_path, executablePath, room] = process.argv.slice(2);
const address = pathToFileURL(page_path).href;
const problems = [];
const must = (holds, what) => { if (!holds) problems.push(what); };

async function opened(browser, options) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  page.on("console", (message) => { if (["error", "warning"].includes(message.type())) problems.push(`console: ${message.text()}`); });
  page.on("pageerror", (error) => problems.push(`script: ${error.message}`));
  page.on("dialog", (dialog) => { problems.push(`dialog: ${dialog.message()}`); dialog.dismiss(); });
  page.on("request", (request) => {
    if (request.url() !== address && !request.url().startsWith("data:font/")) problems.push(`asks for ${request.url()}`);
  });
  await page.goto(address);
  return page;
}

async function audited(page, where) {
  await page.evaluate(axe);
  const found = await page.evaluate(() => axe.run({ resultTypes: ["violations"] }));
  for (const violation of found.violations) {
    problems.push(`axe, ${where}: ${violation.id}: ${violation.help}: ${violation.nodes.slice(0, 2).map((node) => node.html.slice(0, 160)).join(" | ")}`);
  }
}

(async () => {
  const flags = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];
  const browser = await chromium.launch({ executablePath, args: flags });
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

  // By keyboard alone: the first stop skips to the report, then come the sliders.
  await page.keyboard.press("Tab");
  must((await page.evaluate(() => document.activeElement.className)) === "skip", "the first stop is not the way past");
  const sliders = await page.locator("input[type=range]").count();
  must(sliders >= 5, `${sliders} sliders`);
  const before = await page.locator("#order tr").first().getAttribute("id");
  for (let slider = 0; slider < sliders; slider += 1) {
    await page.locator("input[type=range]").nth(slider).focus();
    await page.keyboard.press(slider === 0 ? "End" : "Home");
  }
  await page.waitForFunction(() => document.getElementById("told").textContent.startsWith("Now first"));
  const first = page.locator("#order tr").first();
  const told = await page.textContent("#told");
  must(told.includes(await first.locator("[data-title]").textContent()), `the status does not tell the first row: ${told}`);
  const places = await page.locator("#order [data-told=rank]").allTextContents();
  must(places.every((rank, place) => place === 0 || Number(rank) > Number(places[place - 1])), `rows are out of order: ${places}`);
  for (const tier of new Set(await page.locator("#order tr").evaluateAll((rows) => rows.map((row) => row.dataset.tier)))) {
    const scores = await page.locator(`#order [data-tier="${tier}"] [data-told=score]`).allTextContents();
    must(scores.every((score, place) => place === 0 || Number(score) <= Number(scores[place - 1])), `scores do not fall: ${scores}`);
  }
  const like = await page.locator("#order [data-like]").allTextContents();
  const others = await page.locator("#others tr[id]").count();
  const counted = like.reduce((sum, text) => sum + (text === "" ? 0 : Number(text.match(/[0-9]+/)[0])), 0);
  must(counted === others, `${counted} are said to be like the best of their families, and ${others} are listed`);
  const cards = await page.locator("#options > li").evaluateAll((items) => items.map((item) => item.querySelector("[data-rank]").textContent));
  must(cards.every((rank, place) => place === 0 || Number(rank) > Number(cards[place - 1])), `cards are out of order: ${cards}`);
  await page.locator("#reset").focus();
  await page.keyboard.press("Enter");
  must((await page.locator("#order tr").first().getAttribute("id")) === before, "the reset does not bring the order back");
  await audited(page, "after sliding");

  await page.emulateMedia({ media: "print" });
  must(!(await page.locator("#reset").isVisible()), "a button is printed");
  must((await page.pdf({ format: "A4" })).length > 20000, "it does not print");
  await browser.close();
  process.stdout.write(problems.map((problem) => `${problem}\n`).join(""));
})().catch((error) => { process.stdout.write(`${error.stack}\n`); });
