import { type Command, Option } from "commander";
import type { Outcome } from "./check.ts";
import type { CompareOptions } from "./compare.ts";

const help = `
A variant is a house like today's with some keys of its file changed. They stand under variants in
the house file; or type them, one --with for each, several keys of one after a semicolon:
  hoopstay compare house.yaml site.yaml --with "rails.tube.size=HSS3X3X1/8" --with "hoops.count=7; purlins.count=6"
null takes a key, or an entry of a list, out of the file: --with "collar_ties=null".
Cost and cut list use prices of the house file: what is not priced there is not counted.

Example:
  hoopstay compare fixtures/houses/harrow-brook.yaml fixtures/sites/hill-top.yaml --report side.html
`;

const another = (one: string, before: readonly string[] = []): string[] => [...before, one];

/** Declares the command that sets variants beside today's house; loaded when it is called. */
export function declareCompare(program: Command, settle: (outcome: Outcome) => void): void {
  program
    .command("compare")
    .description("today's house beside up to six variants: weight, cost, sticks, what goes first")
    .argument("<house>", "house file (YAML or JSON)")
    .argument("<site>", "site file (YAML or JSON)")
    .option(
      "--with <changes>",
      'a variant in place of those in the file, such as "hoops.tube.gauge=16"',
      another,
    )
    .option("--report <file>", "also write the page with drawings and cut lists, one HTML file")
    .option("--json", "print the record as JSON (SI; null: no limit) instead of the text")
    .addOption(new Option("--units <system>", "units shown").choices(["us", "si"]).default("us"))
    .addHelpText("after", help)
    .action(async (house: string, site: string, options: CompareOptions) => {
      settle(await (await import("./more.ts")).compare(house, site, options));
    });
}
