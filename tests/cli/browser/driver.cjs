// What every trial in a browser needs: the browser, a page that tells of whatever goes wrong in it, the auditor.
// A trial gathers what is wrong as lines and prints them; nothing where all is well.
"use strict";
const path = require("node:path");
const { chromium } = require("playwright-core");
const axe = require("axe-core").source;

const FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];
const problems = [];
const must = (holds, what) => { if (!holds) problems.push(what); };

// Opens an address; `own` says which requests are the page's own to make.
async function opened(browser, address, own, options = {}) {
  const context = await browser.newContext({ acceptDownloads: true, ...options });
  const page = await context.newPage();
  const tell = (what) => problems.push(`${address.replace(/[0-9a-f]{64}/, "TOKEN")}: ${what}`);
  page.on("console", (message) => { if (["error", "warning"].includes(message.type())) tell(`console: ${message.text()} ${message.location().url}`); });
  page.on("pageerror", (error) => tell(`script: ${error.message}`));
  page.on("dialog", (dialog) => { tell(`dialog: ${dialog.message()}`); dialog.dismiss(); });
  page.on("request", (request) => { if (!own(request.url())) tell(`asks for ${request.url()}`); });
  await page.goto(address);
  return page;
}

// The room is solved, and what is shown is its answer.
const done = (page) => page.waitForFunction(() => document.getElementById("state").dataset.stage === "done" && document.querySelector(".answers")?.getAttribute("aria-busy") !== "true", null, { timeout: 120000 });

// A picture of what is seen, where a folder for them is named.
const pictured = async (page, name) => { if (process.env.ELBOWROOM_PICTURES) await page.screenshot({ path: path.join(process.env.ELBOWROOM_PICTURES, `${name}.png`) }); };

// The page behind a link: opened with a new browser's eyes, and a screen of its room once that is solved.
function served(link) {
  const origin = new URL(link).origin;
  return {
    origin,
    opened: (browser, options) => opened(browser, link, (url) => url.startsWith(`${origin}/`), options),
    go: async (page, screen) => { await page.goto(`${origin}/room/room.yaml/${screen}`); await done(page); },
  };
}

// A page's own policy may forbid scripts that it did not bring: the auditor comes in by the debugger.
async function audited(page, where) {
  const session = await page.context().newCDPSession(page);
  await session.send("Runtime.evaluate", { expression: axe });
  const { result } = await session.send("Runtime.evaluate", {
    expression: "axe.run({ resultTypes: ['violations'] }).then((found) => JSON.stringify(found.violations))",
    awaitPromise: true, returnByValue: true,
  });
  await session.detach();
  for (const violation of JSON.parse(result.value)) {
    problems.push(`axe, ${where}: ${violation.id}: ${violation.help}: ${violation.nodes.slice(0, 2).map((node) => node.html.slice(0, 160)).join(" | ")}`);
  }
}

// Runs a trial in a browser and prints what is wrong.
async function tried(executablePath, trial) {
  const told = () => problems.map((problem) => `${problem}\n`).join("");
  try {
    const browser = await chromium.launch({ executablePath, args: FLAGS });
    await trial(browser);
    await browser.close();
    process.stdout.write(told());
  } catch (error) {
    // The browser that is still open would keep this alive.
    process.stdout.write(`${told()}${error.stack}\n`, () => process.exit(1));
  }
}

module.exports = { audited, done, must, opened, pictured, problems, served, tried };
