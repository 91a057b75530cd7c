// Does the main job of the page in a real browser and prints what is wrong with it, a line each; nothing where all is well.
// Usage: node page.cjs CHROMIUM LINK ROOM FOLDER, with playwright-core and axe-core on NODE_PATH; downloads go to FOLDER.
"use strict";
const { chromium } = require("playwright-core");
const fs = require("node:fs");
const path = require("node:path");
const axe = require("axe-core").source;

const [executablePath, link, room, folder] = process.argv.slice(2);
const origin = new URL(link).origin;
const problems = [];
const must = (holds, what) => { if (!holds) problems.push(what); };
const SCREENS = ["measure", "furnish", "options", "try", "sheets"];

async function opened(browser, options) {
  const context = await browser.newContext({ acceptDownloads: true, ...options });
  const page = await context.newPage();
  page.on("console", (message) => { if (["error", "warning"].includes(message.type())) problems.push(`console: ${message.text()} ${message.location().url}`); });
  page.on("pageerror", (error) => problems.push(`script: ${error.message}`));
  page.on("dialog", (dialog) => { problems.push(`dialog: ${dialog.message()}`); dialog.dismiss(); });
  page.on("request", (request) => { if (!request.url().startsWith(`${origin}/`)) problems.push(`asks for ${request.url()}`); });
  await page.goto(link);
  return page;
}

async function audited(page, where) {
  // The page's own policy forbids scripts that it did not send: the auditor comes in by the debugger.
  const session = await page.context().newCDPSession(page);
  await session.send("Runtime.evaluate", { expression: axe });
  const { result } = await session.send("Runtime.evaluate", {
    expression: "axe.run({ resultTypes: ['violations'] }).then((found) => JSON.stringify(found.violations))",
    awaitPromise: true, returnByValue: true,
  });
  for (const violation of JSON.parse(result.value)) {
    problems.push(`axe, ${where}: ${violation.id}: ${violation.help}: ${violation.nodes.slice(0, 2).map((node) => node.html.slice(0, 160)).join(" | ")}`);
  }
}

const done = (page) => page.waitForFunction(() => document.getElementById("state").dataset.stage === "done" && document.querySelector(".answers")?.getAttribute("aria-busy") !== "true", null, { timeout: 120000 });
const go = async (page, screen) => { await page.goto(`${origin}/room/room.yaml/${screen}`); await done(page); };
const sideways = (page) => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

async function everyScreen(browser) {
  for (const colorScheme of ["light", "dark"]) {
    for (const width of [390, 1440]) {
      const page = await opened(browser, { viewport: { width, height: 844 }, colorScheme, reducedMotion: "reduce", hasTouch: width === 390 });
      for (const screen of SCREENS) {
        await go(page, screen);
        if (screen === "try") await page.waitForSelector("#trial-plan .piece");
        await audited(page, `${screen} ${colorScheme} ${width}`);
        must(await sideways(page) <= 0, `${screen} scrolls sideways by ${await sideways(page)} at ${width}`);
        must((await page.textContent("h1")) === room, `the heading of ${screen} is not the room's name`);
        if (process.env.ELBOWROOM_PICTURES) await page.screenshot({ path: path.join(process.env.ELBOWROOM_PICTURES, `${screen}-${colorScheme}-${width}.png`), fullPage: screen !== "furnish" });
      }
      await page.context().close();
    }
  }
}

// A wish puts another option first, by keyboard alone; what was first stays until then.
async function wishes(page) {
  await go(page, "options");
  const filed = await page.textContent("#first [data-title]");
  const order = () => page.locator("#first, .ways .way").evaluateAll((ways) => ways.map((way) => way.dataset.key).join(" "));
  const before = await order();
  const sliders = page.locator("#wishes input[type=range]");
  let took = null;
  for (let most = 0; most < await sliders.count() && took === null; most += 1) {
    for (const key of ["Home", "End"]) {
      await sliders.nth(most).focus();
      const began = await page.evaluate(() => performance.now());
      await page.keyboard.press(key);
      const other = await page.waitForFunction((before) => {
        const ways = [...document.querySelectorAll("#first, .ways .way")].map((way) => way.dataset.key).join(" ");
        return ways !== before ? performance.now() : false;
      }, before, { timeout: 700, polling: "raf" }).catch(() => null);
      if (other !== null) { took = (await other.jsonValue()) - began; break; }
    }
  }
  must(took !== null, "no wish changes the order");
  await done(page);
  const told = await page.textContent("#line");
  if ((await page.textContent("#first [data-title]")) !== filed) must(told.includes("Now first"), `the change is not told: ${told}`);
  return took;
}

// A size that is typed brings a new answer; the old one is greyed until then.
async function sizes(page) {
  await go(page, "furnish");
  const width = page.locator('[data-at="pieces.0.width"]');
  must(await width.inputValue() === "210..280", "the field does not show what the file says");
  const of = await page.getAttribute(".answers", "data-of");
  await page.evaluate(() => {
    window.greyed = false;
    new MutationObserver(() => { if (document.querySelector(".answers[aria-busy=true]")) window.greyed = true; })
      .observe(document.getElementById("main"), { subtree: true, attributes: true, childList: true });
  });
  await width.fill("210..265");
  const began = await page.evaluate(() => performance.now());
  await page.keyboard.press("Tab");
  await page.waitForFunction((of) => document.querySelector(".answers").dataset.of !== of && document.querySelector(".answers svg"), of, { polling: "raf", timeout: 120000 });
  const took = await page.evaluate((began) => performance.now() - began, began);
  must(await page.evaluate(() => window.greyed), "the old answer is not greyed meanwhile");
  must((await page.evaluate(() => document.activeElement.dataset.at)) === "pieces.0.return", "the keyboard loses its place");
  // What is no size is told at the field, and undone.
  await width.fill("wide");
  await page.keyboard.press("Tab");
  await page.waitForSelector('[data-at="pieces.0.width"][aria-invalid=true] + .fault');
  must((await page.textContent("#faults")).length > 0, "the fault is not listed");
  await audited(page, "with a fault");
  await page.locator("#undo").click();
  await done(page);
  must(await width.inputValue() === "210..265", "undo does not bring the size back");
  return took;
}

// A wall that is too long leaves a gap, which is drawn and told; undo and redo without end.
async function measures(page) {
  await go(page, "measure");
  await page.locator('[data-wall="1"]').first().click();
  await page.waitForFunction(() => document.querySelector("[data-wall-of]").dataset.wallOf === "1");
  const length = page.locator('[data-at="walls.1.length"]');
  await length.fill("15 ft 6");
  await page.keyboard.press("Tab");
  await page.waitForSelector(".outline .gap", { state: "attached" });
  must((await page.textContent("#faults")).includes("do"), "the gap is not told");
  await audited(page, "with a gap");
  await page.locator("#undo").click();
  await done(page);
  must(await page.locator(".outline .gap").count() === 0, "the gap stays");
  await page.locator('[data-wall="3"]').first().click();
  const swing = (which) => page.locator(".doors input[type=radio]").nth(which);
  await swing(3).check();
  await page.waitForSelector("#redo[disabled]");
  await done(page);
  must(await swing(3).isChecked(), "the drawn door is not taken");
  await page.locator("#undo").click();
  await page.waitForFunction(() => document.querySelectorAll(".doors input[type=radio]")[1].checked);
  await done(page);
}

// A piece is moved by keys, breaks a rule with its figure, and is put back.
async function trial(page) {
  await go(page, "options");
  await page.locator("#first .links a").first().click();
  await page.waitForSelector("#trial-plan .piece");
  const sofa = page.locator("#trial-plan .piece").first();
  must(await page.locator("#trial-plan .broken").count() === 0, "the option breaks a rule before anything is moved");
  await sofa.focus();
  let began = 0;
  for (let step = 0; step < 12; step += 1) await page.keyboard.press(step % 2 === 0 ? "Shift+ArrowRight" : "Shift+ArrowDown");
  began = await page.evaluate(() => performance.now());
  await page.waitForSelector("#trial-plan .broken");
  must(/[0-9]/.test(await page.textContent("#trial-told")), "what is broken has no figure");
  must((await page.evaluate(() => document.activeElement.id)).startsWith("piece-"), "the keyboard loses the piece");
  await audited(page, "with a rule broken");
  await page.locator("#trial-back").click();
  await page.waitForFunction(() => document.querySelectorAll("#trial-plan .broken").length === 0);
  // By typed figures, and by pointer.
  const across = page.locator("#trial-pieces input").first();
  await across.fill(String(Number(await across.inputValue()) + 900));
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  await page.waitForSelector("#trial-plan .moved");
  await page.locator("#trial-back").click();
  await page.waitForFunction(() => document.querySelectorAll("#trial-plan .moved").length === 0);
  // What was typed may have scrolled the plan away; of a corner sofa the main run is a rectangle.
  const run = sofa.locator("polygon").first();
  await run.scrollIntoViewIfNeeded();
  const box = await run.boundingBox();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 4);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + 60, box.y + box.height / 4 + 22, { steps: 5 });
  await page.mouse.up();
  await page.waitForSelector("#trial-plan .moved");
  return began;
}

async function downloads(page) {
  await go(page, "options");
  const key = await page.getAttribute("#first", "data-key");
  fs.writeFileSync(path.join(folder, "key"), key);
  await page.locator("#first .links a").nth(1).click();
  await page.waitForSelector("a[data-sheet]");
  for (const file of ["plan.svg", "plan.pdf"]) {
    const [download] = await Promise.all([page.waitForEvent("download"), page.locator(`a[data-sheet$="${file}"]`).click()]);
    await download.saveAs(path.join(folder, file));
  }
}

(async () => {
  const flags = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];
  const browser = await chromium.launch({ executablePath, args: flags });
  const page = await opened(browser, { viewport: { width: 1440, height: 900 } });
  must(!page.url().includes("/enter/"), `the token stays in the address: ${page.url()}`);
  must((await page.context().cookies()).every((cookie) => cookie.httpOnly && cookie.sameSite === "Strict"), "the cookie is no secret");
  const heads = await page.request.get(`${origin}/room/room.yaml/options`, { headers: { origin: "http://lodewater.example" } });
  must(heads.status() === 403, `another origin is let in: ${heads.status()}`);
  await everyScreen(browser);
  const figures = { order: await wishes(page), answer: await sizes(page) };
  await measures(page);
  await trial(page);
  await downloads(page);
  // The wall and the hand are one tap each, with their counts.
  await go(page, "options");
  const wall = page.locator("#filters label").nth(1);
  const count = Number((await wall.textContent()).match(/\((\d+)\)/)[1]);
  await wall.click();
  await page.waitForFunction(() => document.querySelectorAll("#filters input:checked")[0]?.value !== "");
  must(count > 0 && await page.locator("#first").count() === 1, "the filter leaves nothing");
  if (process.env.ELBOWROOM_FIGURES) fs.writeFileSync(process.env.ELBOWROOM_FIGURES, JSON.stringify(figures));
  await browser.close();
  for (const problem of problems) console.log(problem);
})().catch((error) => {
  for (const problem of problems) console.log(problem);
  console.log(error.stack);
  // The browser that is still open would keep this alive.
  process.exit(1);
});
