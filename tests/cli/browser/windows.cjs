// Two windows on one room, pins and filters that hold, prices for a client, and where the keyboard goes; prints what is wrong.
// Usage: node windows.cjs CHROMIUM LINK ROOM, with playwright-core and axe-core on NODE_PATH; ROOM is the file, in a folder with
// basket.csv.
"use strict";
const fs = require("node:fs");
const { audited, done, must, problems, served, tried } = require("./driver.cjs");

const [executablePath, link, file] = process.argv.slice(2);
const { origin, opened } = served(link);
const room = `${origin}/room/room.yaml`;
const go = async (page, screen) => { await page.goto(`${room}/${screen}`); await done(page); };
const focused = (page) => page.evaluate(() => `${document.activeElement.tagName} ${document.activeElement.id}`);
const inView = (page, selector) => page.locator(selector).evaluate((element) => {
  const box = element.getBoundingClientRect();
  return box.top >= 0 && box.bottom <= innerHeight;
});

async function crossed(browser) {
  const one = await opened(browser, { viewport: { width: 390, height: 844 } });
  const other = await one.context().newPage();
  // It does not look by itself what the first one did.
  await other.route("**/news", (route) => route.abort());
  await go(one, "measure");
  await go(other, "measure");
  const type = async (page, at, text) => {
    await page.locator(`[data-at="${at}"]`).fill(text);
    await Promise.all([page.waitForResponse((reply) => reply.url().endsWith("/step")), page.keyboard.press("Tab")]);
  };
  // Different places: both are kept.
  await type(one, "walls.0.name", "street side");
  await type(other, "ceiling", "262");
  await other.waitForFunction(() => !document.getElementById("amiss").hidden);
  must(fs.readFileSync(file, "utf8").includes("street side") && fs.readFileSync(file, "utf8").includes("262"), "one of two changes is lost");
  await done(other);
  // A window that lies open shows what the other did.
  await one.bringToFront();
  await one.waitForFunction(() => document.querySelector('[data-at="ceiling"]').value === "262", null, { timeout: 10000 });
  // The same place: both are told where they are seen, and whoever typed chooses. It had not looked yet.
  await one.context().route("**/news", (route) => route.abort());
  await done(one);
  await type(one, "ceiling", "271");
  await done(one);
  await other.bringToFront();
  await other.locator('[data-at="ceiling"]').scrollIntoViewIfNeeded();
  await type(other, "ceiling", "268");
  await other.waitForFunction(() => document.getElementById("amiss").textContent.includes("271"));
  must(await inView(other, "#amiss"), "what is amiss is out of sight");
  must((await other.textContent("#saved")).includes("not saved"), `the page says: ${await other.textContent("#saved")}`);
  must(fs.readFileSync(file, "utf8").includes("271"), "it is written over");
  await audited(other, "with a change that crosses another");
  await Promise.all([other.waitForResponse((reply) => reply.url().endsWith("/step")), other.locator("#amiss button").first().click()]);
  await other.waitForFunction(() => document.getElementById("amiss").hidden);
  await done(other);
  must(fs.readFileSync(file, "utf8").includes("268"), "what was typed is lost");
  // The browser tells of what was refused, as it should here; and of what this trial broke off.
  for (let place = problems.length - 1; place >= 0; place -= 1) if (/409|\/news/.test(problems[place])) problems.splice(place, 1);
  await one.context().close();
}

// The keyboard goes to what came, and beside what went.
async function keyboard(browser) {
  const page = await opened(browser, { viewport: { width: 1440, height: 900 } });
  await go(page, "measure");
  const press = async (selector) => {
    await page.locator(selector).first().focus();
    await Promise.all([page.waitForResponse((reply) => reply.url().includes("/part/")), page.keyboard.press("Enter")]);
    await page.waitForTimeout(150);
  };
  // What is new waits for its figures, and is then where the keyboard goes.
  const before = fs.readFileSync(file, "utf8");
  await page.locator("#add-socket").focus();
  await page.keyboard.press("Enter");
  must((await focused(page)).endsWith("new-socket-at"), `something new: ${await focused(page)}`);
  await audited(page, "with something new on a wall");
  await page.keyboard.type("50");
  must(fs.readFileSync(file, "utf8") === before, "what is not measured yet is saved");
  await Promise.all([page.waitForResponse((reply) => reply.url().includes("/part/")), page.keyboard.press("Enter")]);
  await page.waitForTimeout(150);
  must(/walls\.0\.holds\.\d+\./.test(await focused(page)), `after something on a wall: ${await focused(page)}`);
  must(/socket, at: 50/.test(fs.readFileSync(file, "utf8")), "the figure that was typed is not in the file");
  await press('[data-remove^="walls.0.holds."]');
  must(!(await focused(page)).startsWith("BODY"), "after it went the keyboard is nowhere");
  await press("[data-add-to=walls]");
  must((await focused(page)).endsWith("h-wall"), `after a wall: ${await focused(page)}`);
  must((await page.textContent("#line")).includes("still to be measured"), `told is ${await page.textContent("#line")}`);
  await press("#undo");
  await page.locator("#another-diagonal-length").fill("640");
  await press("#fields form[data-add=diagonals] button");
  must((await focused(page)).includes("diagonals.0"), `after a diagonal: ${await focused(page)}`);
  await press("#undo");
  await go(page, "furnish");
  await press(".add button[type=submit]");
  must(/pieces\.\d+\./.test(await focused(page)), `after a piece: ${await focused(page)}`);
  await press("[data-remove^=pieces]");
  must(/pieces\.\d+\./.test(await focused(page)), `after a piece went: ${await focused(page)}`);
  // Undo to its end hands on to redo.
  while (await page.locator("#undo").isEnabled()) await press("#undo");
  must((await focused(page)).endsWith("redo"), `undone to its end: ${await focused(page)}`);
  await page.context().close();
}

// What is chosen holds on the way to every screen and when the page is loaded again.
async function chosen(browser) {
  const page = await opened(browser, { viewport: { width: 1440, height: 900 } });
  await go(page, "options");
  const before = await page.textContent("#line");
  await page.locator("#filters label").nth(1).click();
  await page.waitForFunction((before) => document.getElementById("line").textContent !== before, before);
  must(/shown; first/.test(await page.textContent("#line")), `the filter tells ${await page.textContent("#line")}`);
  const wall = await page.inputValue("#filters input:checked");
  await page.reload();
  await done(page);
  must(await page.inputValue("#filters input:checked") === wall, "the filter is lost when the page is loaded again");
  await page.locator("#filters input").first().check({ force: true });
  await page.waitForFunction(() => document.querySelector("#filters input:checked").value === "");
  await page.locator("#first .pin").click();
  await page.locator(".ways .pin").first().click();
  await page.waitForSelector(".pins a.button");
  for (const way of [".ways h3 a", "#first .links a >> nth=0", "#first .links a >> nth=-1"]) {
    const href = await page.locator(way).first().getAttribute("href");
    must((href.match(/pin=/g) ?? []).length === 2, `${way} leads to ${href}`);
  }
  must(/pin=.*pin=/.test(page.url()), "the pins stand in no address");
  // A client's page of what is pinned, with prices.
  await page.locator('nav a[href*="/sheets"]').click();
  await page.waitForSelector("#sheet-prices");
  must(await page.evaluate(() => new Set([...document.querySelectorAll("[id]")].map((it) => it.id)).size === document.querySelectorAll("[id]").length), "an id stands twice");
  await page.selectOption("#sheet-prices", "basket.csv");
  const href = await page.getAttribute("#for-client", "href");
  must(href.includes("share.html") && href.includes("list=basket.csv"), `the client's page is ${href}`);
  const plan = await page.getAttribute('a[data-sheet$="plan.pdf"]', "href");
  must(!plan.includes("list="), `the plan is ${plan}`);
  must((await (await page.request.get(new URL(href, origin).href)).text()).includes("price from"), "the client's page has no price");
  await page.context().close();
}

tried(executablePath, async (browser) => {
  await chosen(browser);
  await keyboard(browser);
  await crossed(browser);
});
