// Has a shop's list tried in the room and prints what is wrong, a line each: chosen by keys, dropped, faulty; what is told stays
// when the room changes.
// Usage: node shop.cjs CHROMIUM LINK LIST, with playwright-core and axe-core on NODE_PATH.
"use strict";
const fs = require("node:fs");
const path = require("node:path");
const { audited, must, served, tried } = require("./driver.cjs");

const [executablePath, link, list] = process.argv.slice(2);
const { origin, opened } = served(link);
const pictured = async (page, name) => { if (process.env.ELBOWROOM_PICTURES) await page.locator("#shop").screenshot({ path: path.join(process.env.ELBOWROOM_PICTURES, `${name}.png`) }); };
const told = (page, what) => page.waitForFunction((what) => document.getElementById("shop-state").textContent.includes(what), what, { timeout: 120000 });

async function dropped(page, name, text) {
  const carried = await page.evaluateHandle(([name, text]) => {
    const carried = new DataTransfer();
    carried.items.add(new File([text], name));
    return carried;
  }, [name, text]);
  for (const event of ["dragover", "drop"]) await page.dispatchEvent("#shop-drop", event, { dataTransfer: carried });
}

tried(executablePath, async (browser) => {
  for (const colorScheme of ["light", "dark"]) {
    for (const width of [390, 1440]) {
      const page = await opened(browser, { viewport: { width, height: 844 }, colorScheme, reducedMotion: "reduce" });
      await page.goto(`${origin}/room/room.yaml/furnish`);
      await page.waitForFunction(() => document.getElementById("state").dataset.stage === "done");
      await page.locator("#shop-list").setInputFiles(list);
      await told(page, "What fits is told below");
      must(/fit/.test(await page.textContent("#shop-told pre")), "what fits is not told");
      await audited(page, `a list ${colorScheme} ${width}`);
      await pictured(page, `list-${colorScheme}-${width}`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      must(wide <= width, `a list is ${wide} wide at ${width}`);
      await dropped(page, "faulty.csv", "kind,name,width,depth\nsofa,a,wide,90\n");
      await told(page, "by its line");
      must((await page.textContent(".list-faults")).includes("faulty.csv"), `a fault tells: ${await page.textContent("#shop-told")}`);
      await audited(page, `a faulty list ${colorScheme} ${width}`);
      await pictured(page, `list-faulty-${colorScheme}-${width}`);
      // What was told stays when the room changes, and says that it is old.
      await dropped(page, "basket.csv", fs.readFileSync(list, "utf8"));
      await told(page, "What fits is told below");
      if (width === 1440 && colorScheme === "light") {
        await page.locator('[data-at="pieces.0.name"]').fill("Our sofa");
        await page.keyboard.press("Tab");
        await told(page, "has changed");
        must(await page.locator("#shop-told pre").count() === 1, "what was told is gone");
        await page.locator("#shop-again").click();
        await told(page, "What fits is told below");
        await page.locator("#undo").click();
        await told(page, "has changed");
      }
      await page.context().close();
    }
  }
});
