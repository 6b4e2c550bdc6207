import type { Command } from "commander";
import type { Outcome } from "./check.ts";
import type { EvidenceOptions } from "./evidence.ts";

const help = `
Every value of a code, standard, manual or textbook that the program is checked against, computed
again now, with source, place, and how the source is known. Takes about half a minute.

Example:
  hoopstay evidence --to evidence.html

Exit codes: 0 all agree, or disagree as is known and explained; 1 one differs; others as hoopstay --help.
`;

/** Declares the command about published values; its files are loaded when it is called. */
export function declareEvidence(program: Command, settle: (outcome: Outcome) => void): void {
  program
    .command("evidence")
    .description(
      "every published value the program is checked against, beside what it computes now",
    )
    .option("--to <file>", "also write the verification sheet, one self-contained HTML file")
    .option("--json", "print the record as JSON instead of the text")
    .addHelpText("after", help)
    .action(async (options: EvidenceOptions) => {
      settle(await (await import("./evidence.ts")).evidence(options));
    });
}
