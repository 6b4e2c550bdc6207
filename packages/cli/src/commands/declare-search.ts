import { type Command, Option } from "commander";
import type { Outcome } from "./check.ts";
import type { SearchOptions } from "./search.ts";

const help = `
What is searched stands in the house file; without it sizes of the catalogue round today's are:
  search:
    hoops: { tubes: [Pipe2STD, HSS2.375X0.125], counts: [9, 11] }   # or spacing: [4 ft, 5 ft]
    rails: { tubes: [HSS4X3X3/16, HSS4X3X1/4] }
    anchors: { kind: screw, per_rail: [4, 6, 8] }                   # a kind of anchor_kinds
Every design keeps the rest of today's house. Cost counts where the house file has prices.
--seconds is time to look: today's house is worked first, and what is worth a look of what was found
by then is still worked in full after it, so that the answer comes later than that.
Ctrl-C stops, and keeps what was found; a second one ends the program.

Exit codes: 0 searched, 2 input refused, 3 outside scope, 70 our own fault, 130 stopped by Ctrl-C.

Example:
  hoopstay search fixtures/houses/harrow-brook.yaml fixtures/sites/hill-top.yaml --report search.html
`;

/** Declares the command that looks through a range of designs; loaded when it is called. */
export function declareSearch(program: Command, settle: (outcome: Outcome) => void): void {
  program
    .command("search")
    .description("designs that no other beats on cost, weight and gust, and three worth a look")
    .argument("<house>", "house file (YAML or JSON)")
    .argument("<site>", "site file (YAML or JSON)")
    .option(
      "--seconds <number>",
      "time to look, from the start of the command; without it, every design",
    )
    .option("--report <file>", "also write the page with the plot and all designs, one HTML file")
    .option("--json", "print the record as JSON (SI; null: no limit) instead of the text")
    .addOption(new Option("--units <system>", "units shown").choices(["us", "si"]).default("us"))
    .addHelpText("after", help)
    .action(async (house: string, site: string, options: SearchOptions) => {
      settle(await (await import("./more.ts")).search(house, site, options));
    });
}
