// Ranks with a report's own script. Usage: node ranking.cjs PAGE < wishes, a JSON list of lists; prints the results.
"use strict";
const fs = require("node:fs");
const vm = require("node:vm");

const page = fs.readFileSync(process.argv[2], "utf8");
const script = (id) => page.match(new RegExp(`<script[^>]*id="${id}"[^>]*>([\\s\\S]*?)</script>`))[1];
const data = JSON.parse(script("scores"));
const all = JSON.parse(fs.readFileSync(0, "utf8"));
const context = vm.createContext({ data, all });
vm.runInContext(`${script("ranking")}; var results = all.map((wishes) => ranking.ranked(data, wishes));`, context);
process.stdout.write(JSON.stringify(context.results));
