import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { type Complaint, Refusal } from "@hoopstay/core";
import { pullsSideways } from "@hoopstay/stability";
import { loadInputs } from "../../packages/cli/src/read/load-inputs.ts";
import { showComplaints } from "../../packages/cli/src/show/complaints.ts";
import { answer, others, pageIn, withReport } from "./commands.ts";
import type { FuzzedInput } from "./fuzzed-input.ts";
import { notANumber } from "./not-a-number.ts";

/** What became of one input. */
export interface Tried {
  /** Codes it was refused with; none where it was answered. */
  readonly codes: readonly string[];
  /** Command beside the answer that it went through. */
  readonly beside: string;
  /** CPU time of the answer, s. */
  readonly seconds: number;
  readonly besideSeconds: number;
  /** Whether a long answer was one that searches: slanted tethers on a slope. */
  readonly searched: boolean;
  readonly fault: string | null;
}

/**
 * What the answer may take, s of CPU time; and where slanted tethers stand on a slope, whose sliding is
 * a search; and what any other command may take.
 */
const mostOfAnswer = 1;
const mostOfSearch = 10;
const mostBeside = 120;

/** How many of the inputs go through another command too: some of them search. */
const shareBeside = 0.01;

const cpu = (): number => process.cpuUsage().user / 1e6;
const names = Object.keys(others);

/** Words that no output may have, but where an input has them: a refusal says what was given. */
const empty = [
  { word: /\bNaN\b/, given: /nan/i },
  { word: /\bInfinity\b/, given: /inf|\de\+?\d{3}|\d{300}/i },
  { word: /\bundefined\b/, given: /undefined/ },
  { word: /\[object Object\]/, given: /object Object/ },
];

const emptyWord = (output: string, input: string): string | undefined =>
  empty.find(({ word, given }) => word.test(output) && !given.test(input))?.word.source;

function searchesSlide(house: string, site: string): boolean {
  const { house: built, site: place } = loadInputs(house, site);
  return place.slope !== null && built.anchors.some(pullsSideways);
}

// A number that is none would be written as null.
const stringify = JSON.stringify;
let inJson: string | undefined;
JSON.stringify = ((value: unknown, ...form: []) => {
  inJson ??= notANumber(value);
  return stringify(value, ...form);
}) as typeof JSON.stringify;

function complaintFault(
  complaints: readonly Complaint[],
  listed: ReadonlySet<string>,
): string | null {
  if (complaints.length === 0) return "a refusal without a complaint";
  for (const { code, expected, mend } of complaints) {
    if (!listed.has(code)) return `a code that SAFETY.md does not list: ${code}`;
    if (!expected || !mend) return `a complaint that does not say what to do: ${code}`;
  }
  return null;
}

/** Lays the input into the folder and runs the program's own commands on it. */
export async function tryInput(
  { house, site, random }: FuzzedInput,
  folder: string,
  listed: ReadonlySet<string>,
): Promise<Tried> {
  const [houseFile, siteFile] = [join(folder, "house.yaml"), join(folder, "site.yaml")];
  const page = pageIn(folder);
  writeFileSync(houseFile, house);
  writeFileSync(siteFile, site);
  const input = `${Buffer.from(house).toString()}\n${Buffer.from(site).toString()}`;
  const units = random.pick(["us", "si"] as const);
  let beside = random.chance(shareBeside) ? random.pick(names) : "";
  const tried = {
    codes: [] as string[],
    seconds: 0,
    besideSeconds: 0,
    searched: false,
    fault: null as string | null,
  };
  inJson = undefined;

  const run = async (command: typeof answer): Promise<void> => {
    let output: string;
    try {
      const { text, code } = await command(houseFile, siteFile, units, page);
      output = text;
      if (existsSync(page)) output += readFileSync(page, "utf8");
      if (code !== 0 && code !== 1) tried.fault = `exit code ${code}`;
    } catch (error) {
      if (!(error instanceof Refusal)) {
        tried.fault = `not a refusal: ${error instanceof Error ? error.stack : String(error)}`;
        return;
      }
      const { complaints } = error;
      for (const { code } of complaints) tried.codes.push(code);
      tried.fault ??= complaintFault(complaints, listed);
      output = showComplaints(complaints);
      const left = readdirSync(folder).filter((name) => !name.endsWith(".yaml"));
      if (left.length > 0) tried.fault = `refused, and yet written: ${left}`;
    }
    const word = emptyWord(output, input);
    if (word) tried.fault ??= `${word} in the output`;
    if (inJson !== undefined) tried.fault ??= `no number in JSON at ${inJson}`;
    rmSync(page, { force: true });
  };

  const start = cpu();
  await run(beside === "check --report" ? withReport : answer);
  tried.seconds = cpu() - start;
  const refused = tried.codes.length > 0;
  if (tried.fault || beside === "check --report" || (refused && beside === "records")) beside = "";
  if (beside) {
    const besideStart = cpu();
    const before = new Set(tried.codes);
    tried.codes.length = 0;
    await run(others[beside] as typeof answer);
    tried.besideSeconds = cpu() - besideStart;
    const lost = [...before].filter((code) => !tried.codes.includes(code));
    if (lost.length > 0) tried.fault ??= `${beside} does not refuse what check refuses: ${lost}`;
    if (tried.fault) tried.fault = `${beside}: ${tried.fault}`;
  }
  if (tried.seconds > mostOfAnswer) {
    tried.searched = !refused && searchesSlide(houseFile, siteFile);
    const most = tried.searched ? mostOfSearch : mostOfAnswer;
    if (tried.seconds > most) tried.fault ??= `the answer took ${tried.seconds} s`;
  }
  if (tried.besideSeconds > mostBeside) tried.fault ??= `${beside} took ${tried.besideSeconds} s`;
  // Compare refuses variants besides; the input itself was answered.
  const codes = refused ? tried.codes : [];
  return { ...tried, codes: [...new Set(codes)], beside };
}
