// Does the main job of the page in a real browser and prints what is wrong with it, a line each; nothing where all is well.
// Usage: node page.cjs CHROMIUM LINK ROOM FOLDER, with playwright-core and axe-core on NODE_PATH; downloads go to FOLDER.
"use strict";
const fs = require("node:fs");
const path = require("node:path");
const { pathToFileURL } = require("node:url");
const { audited, done, must, opened: opened_at, served, tried } = require("./driver.cjs");

const [executablePath, link, room, folder] = process.argv.slice(2);
const { origin, opened, go } = served(link);
const SCREENS = ["measure", "furnish", "options", "compare", "try", "sheets"];

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
  const undoable = await page.locator("#undo").isEnabled();
  const saved = await page.textContent("#line");
  await length.fill("15 ft 6");
  // The walls are drawn as one types, before anything is saved.
  await page.waitForSelector(".outline .gap", { state: "attached" });
  must(await page.locator("#undo").isEnabled() === undoable && await page.textContent("#line") === saved, "what is only typed is saved");
  await page.keyboard.press("Tab");
  await page.waitForSelector("#faults:not([hidden])");
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
  for (let step = 0; step < 12; step += 1) await page.keyboard.press(step % 2 === 0 ? "Shift+ArrowRight" : "Shift+ArrowDown");
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
  // From asking what a moved piece breaks to its answer, by the browser's own clock.
  return page.evaluate(() => performance.getEntriesByType("resource").filter((entry) => entry.name.endsWith("/judge"))
    .map((entry) => entry.responseEnd - entry.requestStart).sort((one, other) => one - other));
}

// Two options are pinned by keyboard and stand side by side; what is pinned holds on the other screens.
async function compares(browser, page) {
  await go(page, "options");
  const first = await page.getAttribute("#first", "data-key");
  await page.locator("#first .pin").focus();
  await page.keyboard.press("Enter");
  await page.waitForSelector('#first .pin[aria-pressed="true"]');
  must((await page.evaluate(() => document.activeElement.dataset.pin)) === first, "the keyboard loses the pin");
  await page.locator(".ways .pin").first().click();
  await page.waitForSelector(".pins a.button");
  await audited(page, "with two pinned");
  await page.locator(".pins a.button").click();
  await page.waitForSelector(".leaf figure svg");
  const at = page.url();
  must(await page.locator(".leaf figure svg").count() === 2, "not two plans stand side by side");
  const tops = await page.locator(".leaf figure").evaluateAll((figures) => figures.map((figure) => figure.getBoundingClientRect().top));
  must(tops[0] === tops[1], `the plans do not stand beside each other: ${tops}`);
  for (const colorScheme of ["light", "dark"]) {
    for (const width of [390, 1440]) {
      const other = await opened(browser, { viewport: { width, height: 844 }, colorScheme });
      await other.goto(at);
      await other.waitForSelector(".leaf figure svg");
      await audited(other, `side by side ${colorScheme} ${width}`);
      must(await sideways(other) <= 0, `side by side scrolls sideways by ${await sideways(other)} at ${width}`);
      if (process.env.ELBOWROOM_PICTURES) await other.screenshot({ path: path.join(process.env.ELBOWROOM_PICTURES, `side-by-side-${colorScheme}-${width}.png`), fullPage: true });
      await other.context().close();
    }
  }
  // The client's page is of what is pinned.
  await page.locator('nav a[href*="/sheets"]').click();
  await page.waitForSelector('a[href*="share.html"]');
  const [download] = await Promise.all([page.waitForEvent("download"), page.locator('a[href*="share.html"]').click()]);
  await download.saveAs(path.join(folder, "share.html"));
  await page.goto(at);
  await page.locator("[data-unpin]").first().click();
  await page.waitForFunction(() => document.querySelectorAll("[data-unpin]").length === 1);
  must(!page.url().includes(encodeURIComponent(first)), "the pin stays in the address");
}

// The page that a client gets: two plans, no score; one is marked, a line is written, and the text is kept and copied.
async function client(browser) {
  const address = pathToFileURL(path.join(folder, "share.html")).href;
  const own = (url) => url === address || url.startsWith("data:font/") || url.startsWith("blob:");
  for (const colorScheme of ["light", "dark"]) {
    for (const width of [390, 1440]) {
      const page = await opened_at(browser, address, own, { viewport: { width, height: 844 }, colorScheme });
      await audited(page, `the client's page ${colorScheme} ${width}`);
      must(await sideways(page) <= 0, `the client's page scrolls sideways at ${width}`);
      if (process.env.ELBOWROOM_PICTURES) await page.screenshot({ path: path.join(process.env.ELBOWROOM_PICTURES, `client-${colorScheme}-${width}.png`), fullPage: true });
      await page.context().close();
    }
  }
  const page = await opened_at(browser, address, own, { permissions: ["clipboard-read", "clipboard-write"] });
  must(await page.locator(".way svg").count() === 2, "the client's page has not two plans");
  must((await page.textContent("h1")) === room, "its heading is not the room's name");
  await page.locator(".choice").first().click();
  await page.fill("#line", "<b>We like it</b>");
  const text = await page.inputValue("#text");
  const [download] = await Promise.all([page.waitForEvent("download"), page.locator("#save").click()]);
  await download.saveAs(path.join(folder, "my-answer.txt"));
  must(fs.readFileSync(path.join(folder, "my-answer.txt"), "utf8") === text, "what is kept is another text");
  await page.locator("#copy").click();
  await page.waitForFunction(() => document.getElementById("told").textContent.startsWith("Copied"));
  await page.context().close();
  const plain = await opened_at(browser, address, own, { javaScriptEnabled: false });
  must(await plain.locator("noscript p").isVisible() && !(await plain.locator("#form").isVisible()), "without its script it does not say what to do");
  await plain.context().close();
}

// In inches the fields show inches and take them; the file keeps its own unit.
async function units(page) {
  await go(page, "furnish");
  const before = await page.inputValue('[data-at="pieces.0.width"]');
  await page.selectOption("#told-in", "in");
  await page.waitForFunction(() => document.querySelector('[data-at="pieces.0.depth"]')?.dataset.unit === "in");
  await done(page);
  must(/\d\.\.\d.* in$/.test(await page.inputValue('[data-at="pieces.0.width"]')), `shown is ${await page.inputValue('[data-at="pieces.0.width"]')}`);
  await page.locator('[data-at="pieces.0.depth"]').fill("37");
  await Promise.all([page.waitForResponse((reply) => reply.url().endsWith("/step")), page.keyboard.press("Tab")]);
  await page.waitForFunction(() => document.getElementById("saved").textContent.startsWith("Saved"));
  await done(page);
  await audited(page, "in inches");
  await go(page, "options");
  must(/\d in|, in/.test(await page.textContent("#first .facts")), "the answer is not told in inches");
  await go(page, "try");
  await page.waitForSelector("#trial-pieces input");
  must((await page.textContent("#trial-pieces label")).endsWith(", in"), "a piece does not stand in inches");
  await page.selectOption("#told-in", "");
  await page.waitForFunction(() => document.getElementById("told-in").value === "" && document.readyState === "complete");
  await go(page, "furnish");
  must(await page.inputValue('[data-at="pieces.0.width"]') === before, "the size is another in the file's own unit");
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

tried(executablePath, async (browser) => {
  const page = await opened(browser, { viewport: { width: 1440, height: 900 } });
  must(!page.url().includes("/enter/"), `the token stays in the address: ${page.url()}`);
  must((await page.context().cookies()).every((cookie) => cookie.httpOnly && cookie.sameSite === "Strict"), "the cookie is no secret");
  const heads = await page.request.get(`${origin}/room/room.yaml/options`, { headers: { origin: "http://lodewater.example" } });
  must(heads.status() === 403, `another origin is let in: ${heads.status()}`);
  await everyScreen(browser);
  const figures = { order: await wishes(page), answer: await sizes(page) };
  await measures(page);
  await compares(browser, page);
  await client(browser);
  await units(page);
  figures.judge = await trial(page);
  await downloads(page);
  // The wall and the hand are one tap each, with their counts.
  await go(page, "options");
  const wall = page.locator("#filters label").nth(1);
  const count = Number((await wall.textContent()).match(/\((\d+)\)/)[1]);
  await wall.click();
  await page.waitForFunction(() => document.querySelectorAll("#filters input:checked")[0]?.value !== "");
  must(count > 0 && await page.locator("#first").count() === 1, "the filter leaves nothing");
  if (process.env.ELBOWROOM_FIGURES) fs.writeFileSync(process.env.ELBOWROOM_FIGURES, JSON.stringify(figures));
});
