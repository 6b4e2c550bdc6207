import { join } from "node:path";
import type { System } from "@hoopstay/core";
import { evaluate, makeReview } from "@hoopstay/house";
import { check, type Outcome } from "../../packages/cli/src/commands/check.ts";
import { card, compare, first, hold, ladder, pulls } from "../../packages/cli/src/commands/more.ts";
import { loadInputs } from "../../packages/cli/src/read/load-inputs.ts";
import { notANumber } from "./not-a-number.ts";

type Made = Outcome | Promise<Outcome>;
type Run = (house: string, site: string, units: System, page: string) => Made;

/** Page that a command is asked to write, beside the two files. */
export const pageIn = (folder: string): string => join(folder, "page.html");

/** The main job. */
export const answer: Run = (house, site, units) => check(house, site, { units });
export const withReport: Run = (house, site, units, report) =>
  check(house, site, { units, report });

/** The records themselves: written as JSON, what is no number becomes null. */
const records: Run = (house, site) => {
  const { house: built, site: place, rows: inputs, digest, date, files } = loadInputs(house, site);
  const evaluation = evaluate(built, place);
  const meta = { version: "0", digest, date, files, inputs };
  const review = makeReview(evaluation, meta, { full: true });
  const written = evaluation.states.map(({ set }) => set.governing.map(({ checks }) => checks));
  const found = notANumber({ review, written });
  if (found !== undefined) throw new Error(`no number at ${found}`);
  return { text: "", code: 0 };
};

/** What else the program makes of two files; a share of the inputs goes through one of them. */
export const others: Readonly<Record<string, Run>> = {
  records,
  "check --json": (house, site, units) => check(house, site, { units, json: true }),
  "check --report": withReport,
  first: (house, site, units) => first(house, site, { units }),
  "first --report": (house, site, units, report) => first(house, site, { units, report }),
  "first --json": (house, site, units) => first(house, site, { units, json: true }),
  hold: (house, site, units) => hold(house, site, { units, certificate: true }),
  "hold --report": (house, site, units, report) => hold(house, site, { units, report }),
  "hold --json": (house, site, units) => hold(house, site, { units, json: true }),
  "card --to": (house, site, units, to) => card(house, site, { units, to }),
  "ladder --to": (house, site, units, to) => ladder(house, site, { units, to, gust: "45 mph" }),
  pulls: (house, site, units) => pulls(house, site, { units }),
  "compare --report": (house, site, units, report) => compare(house, site, { units, report }),
};
