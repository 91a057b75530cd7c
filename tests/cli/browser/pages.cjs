// Opens pages in a real browser, light and dark, on a desk and on a phone, and prints what is wrong with them, a line each.
// Usage: node pages.cjs CHROMIUM PAGE..., with playwright-core and axe-core on NODE_PATH. A page called index.html is one of
// a batch: its rooms are found and ordered too.
"use strict";
const { pathToFileURL } = require("node:url");
const path = require("node:path");
const { audited, must, opened: opened_at, tried } = require("./driver.cjs");

const [executablePath, ...paths] = process.argv.slice(2);

async function opened(browser, file, options) {
  const [address, folder] = [pathToFileURL(file).href, `${pathToFileURL(path.dirname(file)).href}/`];
  const own = (url) => url === address || url.startsWith("data:font/") || url.startsWith(`${folder}plans/`);
  return opened_at(browser, address, own, options);
}

// How light a colour is, 0 to 1 (WCAG 2.2, relative luminance).
const light = (colour) => {
  const [red, green, blue] = colour.match(/[0-9.]+/g).map((share) => {
    const part = Number(share) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

// Widths by daylight, and the dark tones at one of them: neither depends on the other.
const LOOKS = { light: [320, 390, 1280], dark: [390] };

async function looked_at(browser, file) {
  for (const [colorScheme, widths] of Object.entries(LOOKS)) {
    for (const width of widths) {
      const page = await opened(browser, file, { viewport: { width, height: 800 }, colorScheme });
      const where = `${path.basename(file)}, ${colorScheme}, ${width}`;
      await audited(page, where);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      must(wide <= width, `${where}: the page is ${wide} wide`);
      const scrolled = await page.evaluate(() => [...document.querySelectorAll(".wide")].filter((it) => it.scrollWidth > it.clientWidth + 1).length);
      must(scrolled === 0 || width < 390 || path.basename(file) !== "card.html", `${where}: ${scrolled} tables scroll sideways`);
      // Drawings take the page's tones: dark paper in the dark.
      const papers = await page.evaluate(() => [...document.querySelectorAll("svg > rect")].map((rect) => getComputedStyle(rect).fill));
      must(papers.every((paper) => (light(paper) < 0.2) === (colorScheme === "dark")), `${where}: drawings lie on ${papers[0]}`);
      await page.context().close();
    }
  }
  const page = await opened(browser, file, { colorScheme: "dark" });
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  const papers = await page.evaluate(() => [...document.querySelectorAll("svg > rect")].map((rect) => getComputedStyle(rect).fill));
  must(papers.every((paper) => light(paper) > 0.9), `${file}: drawings are printed on ${papers[0]}`);
  must((await page.pdf({ preferCSSPageSize: true })).length > 5000, `${file} does not print`);
  await page.context().close();
}

async function found_and_ordered(browser, file) {
  const page = await opened(browser, file, {});
  const names = () => page.locator("#rooms > li:visible h2").allTextContents();
  const all = await names();
  must(all.length > 2, `${all.length} rooms`);
  await page.selectOption("[name=by]", "name");
  must(JSON.stringify(await names()) === JSON.stringify([...all].sort((one, other) => one.localeCompare(other, "en"))), `by name: ${await names()}`);
  await page.selectOption("[name=by]", "area");
  const areas = (await page.locator("#rooms > li").evaluateAll((rooms) => rooms.map((room) => Number(room.dataset.area))));
  must(areas.every((area, place) => place === 0 || area <= areas[place - 1]), `by area: ${areas}`);
  await page.selectOption("[name=by]", "");
  must(JSON.stringify(await names()) === JSON.stringify(all), "the order given does not come back");
  await page.fill("[name=find]", all[1].toUpperCase());
  must((await names()).includes(all[1]) && (await names()).length < all.length, `found: ${await names()}`);
  must((await page.textContent("output")).startsWith(`${(await names()).length} of ${all.length}`), await page.textContent("output"));
  await page.fill("[name=find]", "no room is called so");
  must((await names()).length === 0, "what is nowhere is found");
  await page.fill("[name=find]", "");
  await page.selectOption("[name=fate]", "without");
  const without = await names();
  must(without.length > 0 && without.length < all.length, `without an option: ${without}`);
  await audited(page, "the index, narrowed down");
  await page.context().close();
  // Without its script all rooms stand there, and nothing that needs it.
  const plain = await opened(browser, file, { javaScriptEnabled: false });
  must(await plain.locator("#rooms > li").count() === all.length && !(await plain.locator("#tools").isVisible()), "it does not stand without its script");
  const drawn = await plain.locator("img").first().getAttribute("src");
  must(drawn.startsWith("plans/"), drawn);
  await plain.context().close();
}

tried(executablePath, async (browser) => {
  for (const file of paths) {
    await looked_at(browser, file);
    if (path.basename(file) === "index.html") await found_and_ordered(browser, file);
  }
});
