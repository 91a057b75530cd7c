// Tries pieces elsewhere in a real browser and prints what is wrong, a line each.
// Usage: node try.cjs CHROMIUM LINK, with playwright-core and axe-core on NODE_PATH.
"use strict";
const path = require("node:path");
const { audited, must, served, tried } = require("./driver.cjs");

const [executablePath, link] = process.argv.slice(2);
const { origin, opened } = served(link);
const put = async (page) => {
  await page.goto(`${origin}/room/room.yaml/try`);
  await page.waitForSelector("#trial-plan .piece", { timeout: 120000 });
};
const across = async (page, piece) => Number(await page.inputValue(`#x-${piece}`));
// Once nothing is asked for any more.
const asked = new Map();
function watched(page) {
  const open = new Set();
  asked.set(page, open);
  page.on("request", (request) => open.add(request));
  for (const ended of ["requestfinished", "requestfailed"]) page.on(ended, (request) => open.delete(request));
}
async function still(page) {
  for (let quiet = 0; quiet < 5; quiet = asked.get(page).size === 0 ? quiet + 1 : 0) await page.waitForTimeout(60);
}

// However long an answer takes, no move is lost.
async function no_move_is_lost(page) {
  await page.route("**/judge", async (route) => {
    await new Promise((resolve) => { setTimeout(resolve, 60); });
    await route.continue().catch(() => {});
  });
  await put(page);
  await still(page);
  const was = await across(page, 0);
  await page.focus("#piece-0");
  for (let press = 0; press < 30; press += 1) await page.keyboard.press("ArrowLeft");
  await still(page);
  must(Math.abs(was - await across(page, 0) - 30) < 0.11, `30 steps of 1 cm moved it ${was - await across(page, 0)} cm`);
  const box = await page.locator("#piece-2 polygon").first().boundingBox();
  const scale = await page.evaluate(() => document.querySelector("#trial-plan svg").getScreenCTM().a);
  const begun = await across(page, 2);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let by = 1; by <= 40; by += 1) { await page.mouse.move(x + 2 * by, y); await page.waitForTimeout(8); }
  await page.mouse.up();
  await still(page);
  const [dragged, meant] = [await across(page, 2) - begun, 80 / scale / 10];
  must(Math.abs(dragged - meant) < 1.5, `a drag of ${meant} cm moved it ${dragged} cm`);
  // The drag is one move, and is taken back as one; the file's own steps are left alone.
  await page.focus("#piece-2");
  await page.keyboard.press("Control+z");
  await still(page);
  must(Math.abs(await across(page, 2) - begun) < 0.11, "a drag is not taken back as one move");
  must(Math.abs(was - await across(page, 0) - 30) < 0.11, "the move before it is gone too");
  await page.keyboard.press("Control+Shift+z");
  await still(page);
  must(Math.abs(await across(page, 2) - begun - dragged) < 0.11, "it is not moved again");
  await page.unroute("**/judge");
}

// What lies under is drawn under; every piece can be got hold of.
async function nothing_is_hidden(page) {
  await put(page);
  const hidden = await page.evaluate(() => [...document.querySelectorAll("#trial-plan .piece")].filter((piece) => {
    const box = piece.querySelector("polygon").getBoundingClientRect();
    const there = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2)?.closest(".piece");
    return there === null || (there !== piece && there.compareDocumentPosition(piece) & Node.DOCUMENT_POSITION_FOLLOWING);
  }).map((piece) => piece.getAttribute("aria-label")));
  must(hidden.length === 0, `hidden: ${hidden}`);
  const order = await page.locator("#trial-plan .piece").evaluateAll((pieces) => pieces.map((piece) => piece.getAttribute("aria-label")));
  must(order[0].includes("rug"), `first is drawn ${order[0]}`);
}

// Figures in any unit; what is none is told at the field, and nothing moves.
async function figures(page) {
  await put(page);
  const field = page.locator("#x-0");
  const was = await across(page, 0);
  for (const wrong of ["abc", "1,5", "1e5"]) {
    await field.fill(wrong);
    await page.keyboard.press("Tab");
    await page.waitForSelector("#x-0[aria-invalid=true] + .fault");
    must(await page.locator("#amiss").isHidden(), `${wrong} is told far from its field`);
  }
  await audited(page, "with a figure that is none");
  await field.fill("");
  await page.keyboard.press("Tab");
  await page.waitForFunction(() => !document.getElementById("x-0").hasAttribute("aria-invalid"));
  must(await across(page, 0) === was, `an empty field puts it at ${await across(page, 0)}`);
  await field.fill("4 ft");
  await page.keyboard.press("Tab");
  await page.waitForFunction(() => document.getElementById("x-0").value === "121.9");
  // Sizes by figures and by keys, turning by a button.
  await page.locator("#width-0").fill("2.2 m");
  await page.keyboard.press("Tab");
  await page.waitForFunction(() => document.getElementById("width-0").value === "220");
  await page.focus("#piece-0");
  await page.keyboard.press("w");
  await page.waitForFunction(() => document.getElementById("width-0").value === "221");
  await page.keyboard.press("Shift+S");
  const facing = Number(await page.inputValue("#facing-0"));
  await page.locator("#turn-90-0").click();
  await page.waitForFunction((facing) => document.getElementById("facing-0").value === String((facing + 90) % 360), facing);
  await still(page);
  must(await page.evaluate(() => document.activeElement.id) === "turn-90-0", "the keyboard loses the button");
}

async function looks(browser) {
  for (const colorScheme of ["light", "dark"]) {
    for (const width of [390, 1440]) {
      const page = await opened(browser, { viewport: { width, height: 844 }, colorScheme });
      watched(page);
      await put(page);
      await still(page);
      await audited(page, `try, ${colorScheme} ${width}`);
      must(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `it scrolls sideways at ${width}`);
      const least = await page.evaluate(() => Math.min(...[...document.querySelectorAll("#trial-plan text")].map((text) => Number.parseFloat(getComputedStyle(text).fontSize) * text.ownerSVGElement.getScreenCTM().a)));
      must(least >= 11, `letters are ${least} px at ${width}`);
      if (process.env.ELBOWROOM_PICTURES) await page.screenshot({ path: path.join(process.env.ELBOWROOM_PICTURES, `trying-${colorScheme}-${width}.png`) });
      await page.context().close();
    }
  }
}

// What is settled is told by the buttons and kept in the file; the file's own button takes it back.
async function kept(page) {
  await put(page);
  await page.locator("#trial-settle").click();
  await page.waitForFunction(() => document.getElementById("trial-note").textContent.startsWith("Settled"));
  must(await page.evaluate(() => document.activeElement.id) === "trial-settle", "the keyboard loses the button");
  await page.locator("#trial-keep").click();
  await page.waitForFunction(() => document.getElementById("trial-note")?.textContent.startsWith("Kept"), null, { timeout: 120000 });
  must(await page.locator("#trial-plan .piece").count() > 2, "what was kept is not shown");
  await page.locator("#undo").click();
  await page.waitForFunction(() => document.getElementById("undo").disabled);
}

tried(executablePath, async (browser) => {
  const page = await opened(browser, { viewport: { width: 1440, height: 900 } });
  watched(page);
  await no_move_is_lost(page);
  await nothing_is_hidden(page);
  await figures(page);
  await kept(page);
  await looks(browser);
});
