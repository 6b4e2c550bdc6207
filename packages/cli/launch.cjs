#!/usr/bin/env node
// Runs the bundled program from V8's compiled code where that fits this Node; else it compiles.
const { existsSync, readFileSync } = require("node:fs");
const { join } = require("node:path");
const process = require("node:process");
const { Script } = require("node:vm");

const scripts = {};

/** A bundle's exports, or what Node itself has. */
function load(name) {
  if (!name.startsWith("./")) return require(name);
  const filename = join(__dirname, name);
  const compiled = filename.replace(/cjs$/, "compiled");
  const source = readFileSync(filename, "latin1");
  const options = existsSync(compiled)
    ? { filename, cachedData: readFileSync(compiled) }
    : { filename };
  const script = new Script(source, options);
  scripts[name] = script;
  const bundle = { exports: {} };
  script.runInThisContext()(bundle.exports, load, bundle, filename, __dirname);
  return bundle.exports;
}

const { done } = load("./program.cjs");
module.exports = { scripts, done };

// Once the answer is out nothing is left to do; Node by itself would wait for its compiler threads.
function leave() {
  if (!(process.exitCode < 2)) return;
  process.stdout.write("", (fault) => {
    if (!fault) process.exit();
  });
}
if (require.main === module) done.then(leave);
