// Run by the build: the main job once, then V8's compiled code of all that ran is kept.
const { writeFileSync } = require("node:fs");
const { join } = require("node:path");
const process = require("node:process");

process.argv = [process.execPath, "hoopstay", "check", ...process.argv.slice(2)];
const dist = join(__dirname, "dist");
const { script, done } = require(join(dist, "hoopstay.js"));
done.then(() => {
  writeFileSync(join(dist, "program.compiled"), script.createCachedData());
  process.exitCode = 0;
});
