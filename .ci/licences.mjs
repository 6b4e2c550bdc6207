import { existsSync, lstatSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, dirname } from "node:path";
import process from "node:process";

// Every package that ships and every one installed, with its licence; --write renews the list.
process.chdir(dirname(import.meta.dirname));
const list = "packages/cli/LICENCES.md";

/** Packages in the command and the page. It may only fall: lower it when one is gone. */
const shippedCeiling = 16;

const permitted = ["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "Apache-2.0"];
/** Besides, for what only develops and never ships. */
const permittedTools = [...permitted, "BlueOak-1.0.0", "CC-BY-4.0", "CC0-1.0", "MPL-2.0"];

const json = (file) => JSON.parse(readFileSync(file, "utf8"));
const isPermitted = (licence, allowed) =>
  String(licence)
    .replace(/[()]/g, "")
    .split(" OR ")
    .some((one) => one.split(" AND ").every((part) => allowed.includes(part)));

/** Names and versions in the lockfile; those for one kind of machine only carry their system. */
function locked() {
  const [, packages = ""] = readFileSync("pnpm-lock.yaml", "utf8").split(/^packages:$/m);
  const [listed = ""] = packages.split(/^snapshots:$/m);
  return listed
    .split(/\n\n/)
    .map((entry) => ({ entry, key: /^ {2}'?((?:@[^/]+\/)?[^@']+)@([^':]+)'?:$/m.exec(entry) }))
    .filter(({ key }) => key)
    .map(({ entry, key }) => ({
      name: key[1],
      version: key[2],
      oneMachine: /^ {4}(os|cpu): /m.test(entry),
    }));
}

/** Licences of what is installed, by name and version. */
function installed() {
  const store = "node_modules/.pnpm";
  const found = new Map();
  const entries = (folder) => readdirSync(folder).map((name) => `${folder}/${name}`);
  const packages = entries(store)
    .filter((folder) => existsSync(`${folder}/node_modules`))
    .flatMap((folder) => entries(`${folder}/node_modules`))
    .flatMap((folder) => (basename(folder).startsWith("@") ? entries(folder) : [folder]));
  for (const folder of packages) {
    if (lstatSync(folder).isSymbolicLink()) continue;
    const { name, version, license } = json(`${folder}/package.json`);
    found.set(`${name} ${version}`, license);
  }
  return found;
}

const licences = installed();
const licenceOf = ({ name, version }) => licences.get(`${name} ${version}`);
const shipped = json("packages/cli/dist/shipped.json");
const all = locked();
const everywhere = (one) => !one.oneMachine && licenceOf(one) !== undefined;
const rows = all.filter(everywhere).map((one) => ({ ...one, licence: licenceOf(one) }));
const prebuilt = all.filter((one) => !everywhere(one));
const ships = new Set(shipped.map(({ name, version }) => `${name} ${version}`));

const table = (entries) =>
  ["| package | version | licence |", "|---|---|---|", ...entries].join("\n");
const text = `# Packages and their licences

Made by \`node .ci/licences.mjs --write\`. The texts of the licences of what ships are in the built
command's \`licences.txt\` and at the end of the offline page.

## In the built command and the offline page: ${shipped.length}

${table(shipped.map(({ name, version, license }) => `| ${name} | ${version} | ${license} |`))}

## Only to build and to test: ${rows.length - shipped.length}

${table(rows.filter(({ name, version }) => !ships.has(`${name} ${version}`)).map(({ name, version, licence }) => `| ${name} | ${version} | ${licence} |`))}

Besides, ${prebuilt.length} prebuilt parts of these and what those ask for, each for one kind of machine; only the
ones for the machine at hand are installed.
`;

const faults = [
  ...shipped
    .filter(({ license }) => !isPermitted(license, permitted))
    .map(({ name, license }) => `${name} ships under ${license}, which is not permitted`),
  ...rows
    .filter(({ licence }) => !isPermitted(licence, permittedTools))
    .map(({ name, version, licence }) => `${name} ${version}: licence ${licence}, not permitted`),
  ...prebuilt
    .map((one) => ({ ...one, licence: licenceOf(one) }))
    .filter(({ licence }) => licence && !isPermitted(licence, permittedTools))
    .map(({ name, licence }) => `${name}: licence ${licence}, not permitted`),
];
if (shipped.length !== shippedCeiling) {
  const way = shipped.length > shippedCeiling ? "it may only fall" : "lower the ceiling";
  faults.push(`${shipped.length} packages ship, the ceiling is ${shippedCeiling}: ${way}`);
}
if (process.argv.includes("--write")) writeFileSync(list, text);
else if (!existsSync(list) || readFileSync(list, "utf8") !== text)
  faults.push(`${list} is stale: node .ci/licences.mjs --write`);

for (const fault of faults) console.log(fault);
console.log(
  `${shipped.length} packages ship (ceiling ${shippedCeiling}), ${rows.length + prebuilt.length} in the lockfile`,
);
process.exit(faults.length === 0 ? 0 : 1);
