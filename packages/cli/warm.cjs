// Run by the build: the main job once, then V8's compiled code of all that ran is kept.
const { rmSync, writeFileSync } = require("node:fs");
const { join } = require("node:path");
const process = require("node:process");

const dist = join(__dirname, "dist");
const report = join(dist, "warm.html");
const [house, site] = process.argv.slice(2);
process.argv = [process.execPath, "hoopstay", "check", house, site, "--report", report];
const { scripts, done } = require(join(dist, "hoopstay.js"));
done.then(() => {
  rmSync(report, { force: true });
  for (const [name, script] of Object.entries(scripts)) {
    writeFileSync(join(dist, name.replace(/cjs$/, "compiled")), script.createCachedData());
  }
  process.exitCode = 0;
});
