import type { Command } from "commander";
import type { Outcome } from "./check.ts";

const help = `
Every report of check, hold and first carries both files word for word. They are read from the page,
the report is made again by this version, and every line is compared.
It says that the numbers follow from these inputs; not that the house and the place are as told.

Example:
  hoopstay recheck reports/harrow-brook-hill-top.html

Exit codes: 0 the same numbers, 1 something differs, 2 no such report, 3 outside scope today.
`;

/** Declares the command that makes a report again from what it carries; loaded when it is called. */
export function declareRecheck(program: Command, settle: (outcome: Outcome) => void): void {
  program
    .command("recheck")
    .description("does a report still say what this version computes from the inputs in it?")
    .argument("<report>", "report of check, hold or first (HTML)")
    .addHelpText("after", help)
    .action(async (report: string) => {
      settle(await (await import("./more.ts")).recheck(report));
    });
}
