import { type Command, Option } from "commander";
import type { PageOptions } from "./card.ts";
import type { Outcome } from "./check.ts";
import type { HeldOptions } from "./held.ts";
import type { HoldOptions } from "./hold.ts";
import type { LadderOptions } from "./ladder.ts";

type Run<Options> = (house: string, site: string, options: Options) => Promise<Outcome>;

const files = "fixtures/houses/harrow-brook.yaml fixtures/sites/hill-top.yaml";

/**
 * Declares the commands about holding the house. Their files are loaded when they are called, so
 * that a check starts without them.
 */
export function declareHeld(program: Command, settle: (outcome: Outcome) => void): void {
  const declare = <Options extends HeldOptions>(
    name: string,
    description: string,
    example: string,
    run: Run<Options>,
  ): Command =>
    program
      .command(name)
      .description(description)
      .argument("<house>", "house file (YAML or JSON)")
      .argument("<site>", "site file (YAML or JSON)")
      .option("--json", "print the record as JSON (SI; null: no limit) instead of the text")
      .addOption(new Option("--units <system>", "units shown").choices(["us", "si"]).default("us"))
      .addHelpText("after", `\nExample:\n  hoopstay ${name} ${files}${example}\n`)
      .action(async (house: string, site: string, options: Options) => {
        settle(await run(house, site, options));
      });

  declare<HoldOptions>(
    "hold",
    "what holds it here: ground, anchors as fitted, the fewest of each kind, ballast, pull to move",
    "",
    async (...given) => (await import("./more.ts")).hold(...given),
  )
    .option("--certificate", "also print forces in balance that anyone can add up")
    .option("--report <file>", "also write the whole report with all of this in it");

  declare<PageOptions>(
    "card",
    "move card: one page for the person on the ground",
    " --to move-card.html",
    async (...given) => (await import("./more.ts")).card(...given),
  ).option("--to <file>", "write the card, one self-contained HTML page");

  declare<LadderOptions>(
    "ladder",
    "storm ladder: what to do at which forecast gust",
    ' --gust "45 mph"',
    async (...given) => (await import("./more.ts")).ladder(...given),
  )
    .option("--gust <speed>", 'gust of the forecast with its unit, such as "45 mph"; never a mean')
    .option("--to <file>", "also write the ladder, one self-contained HTML page");

  declare<HeldOptions>(
    "pulls",
    "pull log: what each test counts, what is allowed, what to pull next",
    "",
    async (...given) => (await import("./more.ts")).pulls(...given),
  );
}
