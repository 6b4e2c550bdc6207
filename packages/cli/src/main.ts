import process from "node:process";
import { exitCodeOf, Refusal } from "@hoopstay/core";
import type { SchemaName } from "@hoopstay/house";
import { Command, CommanderError, Option } from "commander";
import { type CheckOptions, check, type Outcome } from "./commands/check.ts";
import { declareCompare } from "./commands/declare-compare.ts";
import { declareEvidence } from "./commands/declare-evidence.ts";
import { declareFirst } from "./commands/declare-first.ts";
import { declareHeld } from "./commands/declare-held.ts";
import { declarePage } from "./commands/declare-page.ts";
import { declareRecheck } from "./commands/declare-recheck.ts";
import { declareSearch } from "./commands/declare-search.ts";
import { showComplaints } from "./show/complaints.ts";

declare const __VERSION__: string;

const example = `
Example:
  hoopstay check fixtures/houses/harrow-brook.yaml fixtures/sites/hill-top.yaml --report hill.html

Exit codes: 0 holds, 1 something fails, 2 input refused, 3 outside scope, 70 our own fault.
Not a sealed design: consult a licensed engineer; local code first.`;

const program = new Command("hoopstay")
  .description("Does this movable hoop house lift, tip or slide here, at what gust, and why?")
  .version(__VERSION__)
  .exitOverride()
  .configureOutput({ writeErr: () => undefined })
  .addHelpText("after", example);

function settle({ text, code }: Outcome): void {
  process.stdout.write(text);
  process.exitCode = code;
}

program
  .command("check")
  .description("check a house at a site")
  .argument("<house>", "house file (YAML or JSON)")
  .argument("<site>", "site file (YAML or JSON)")
  .option("--report <file>", "also write the report, one self-contained HTML file")
  .option("--json", "print every case and every check as JSON (SI) instead of the answer")
  .option("--case <name>", "also work this load case in full in the report")
  .addOption(new Option("--units <system>", "units shown").choices(["us", "si"]).default("us"))
  .addHelpText("after", example)
  .action(async (house: string, site: string, options: CheckOptions) => {
    settle(await check(house, site, options));
  });

declareHeld(program, settle);
declareFirst(program, settle);
declareCompare(program, settle);
declareSearch(program, settle);
declareRecheck(program, settle);
declareEvidence(program, settle);
declarePage(program, settle);

program
  .command("schema")
  .description("print a JSON Schema, for an editor that completes and checks the files")
  .argument("<name>", "house, site or result")
  .action(async (name: string) => {
    if (!["house", "site", "result"].includes(name)) {
      throw new Refusal([commandComplaint(`schema ${name}`, "house, site or result")]);
    }
    const { jsonSchema } = await import("./commands/schema.ts");
    process.stdout.write(`${JSON.stringify(jsonSchema(name as SchemaName), null, 2)}\n`);
  });

const commandComplaint = (given: string, expected: string, mend = "See: hoopstay check --help") =>
  ({ code: "command-unknown", given, expected, mend }) as const;

/** What the command line's reader says, in the order of every other complaint. */
function commandRefusal({ code, message }: CommanderError) {
  const given = process.argv.slice(2).join(" ") || "no command";
  const known = program.commands.map((command) => command.name());
  if (code === "commander.help") {
    return commandComplaint(given, `one of the commands ${known.join(", ")}`);
  }
  const [what = "", near] = message.replace(/^error: /, "").split("\n");
  return commandComplaint(
    given,
    `a command line without this: ${what}`,
    near?.replace(/^\(|\)$/g, "") ??
      `See: hoopstay ${known.find((name) => name === process.argv[2]) ?? "check"} --help`,
  );
}

function fail(error: unknown): void {
  if (error instanceof Refusal) {
    process.stderr.write(showComplaints(error.complaints));
    process.exitCode = exitCodeOf(error.complaints.map(({ code }) => code));
    return;
  }
  if (error instanceof CommanderError) {
    if (error.exitCode === 0) return;
    process.stderr.write(showComplaints([commandRefusal(error)]));
    process.exitCode = 2;
    return;
  }
  const message = error instanceof Error ? error.message : String(error);
  process.stderr.write(
    `hoopstay failed through a fault of its own: ${message}\nNo answer is given. Please report it with both files.\n`,
  );
  process.exitCode = 70;
}

// Whoever reads the answer may stop early, as `head` does.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

/** Settles once the command has run; the exit code is then set. */
export const done: Promise<void> = program.parseAsync(process.argv).then(() => undefined, fail);
