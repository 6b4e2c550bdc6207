import { type Command, Option } from "commander";
import type { Outcome } from "./check.ts";
import type { FirstOptions } from "./first.ts";

const help = `
Looks at every link from the cover's edge to the ground, in every state and direction of the wind.
Whether the whole house lifts, tips or slides: hoopstay check.

Example:
  hoopstay first fixtures/houses/harrow-brook.yaml fixtures/sites/hill-top.yaml --report first.html

Exit codes: 0 every link that was checked holds, 1 a link gives way; others as hoopstay --help.
`;

/** Declares the command about the load path; its files are loaded when it is called. */
export function declareFirst(program: Command, settle: (outcome: Outcome) => void): void {
  program
    .command("first")
    .description("what gives way first, from the cover's edge to the ground, and at what gust")
    .argument("<house>", "house file (YAML or JSON)")
    .argument("<site>", "site file (YAML or JSON)")
    .option("--report <file>", "also write the whole report with the load path and its working")
    .option(
      "--json",
      "print the record as JSON (SI) instead of the text; null: no limit, of a ratio: beyond any strength",
    )
    .addOption(new Option("--units <system>", "units shown").choices(["us", "si"]).default("us"))
    .addHelpText("after", help)
    .action(async (house: string, site: string, options: FirstOptions) => {
      settle(await (await import("./more.ts")).first(house, site, options));
    });
}
