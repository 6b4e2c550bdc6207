#!/usr/bin/env node
// Runs the bundled program from V8's compiled code where that fits this Node; else it compiles.
const { existsSync, readFileSync } = require("node:fs");
const { join } = require("node:path");
const { Script } = require("node:vm");

const filename = join(__dirname, "program.cjs");
const compiled = join(__dirname, "program.compiled");
const source = `(function (exports, require, module, __filename, __dirname) {${readFileSync(filename, "utf8")}\n})`;
const options = existsSync(compiled)
  ? { filename, cachedData: readFileSync(compiled) }
  : { filename };
const script = new Script(source, options);
const program = { exports: {} };
script.runInThisContext()(program.exports, require, program, filename, __dirname);
module.exports = { script, done: program.exports.done };
