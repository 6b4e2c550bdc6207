import process from "node:process";
import { Refusal } from "@hoopstay/core";
import type { Command } from "commander";
import type { Outcome } from "./check.ts";

/** The same every time: a browser keeps the work by the page's address. */
const usualPort = 8046;

function portOf(typed: string): number {
  const port = Number(typed);
  if (/^\d+$/.test(typed) && port <= 65_535) return port;
  throw new Refusal([
    {
      code: "port-unusable",
      key: "--port",
      given: typed,
      expected: "a whole number from 0 to 65535",
      mend: "Leave it out, or name a free port: --port 8047",
    },
  ]);
}

/** Declares the two ways to the offline page: into a file, or served to this machine. */
export function declarePage(program: Command, settle: (outcome: Outcome) => void): void {
  program
    .command("page")
    .description("write the offline page: the same answers in a browser, on a phone too")
    .option("--to <file>", "where to write it, one self-contained HTML file")
    .addHelpText("after", "\nExample:\n  hoopstay page --to hoopstay.html\n")
    .action(async ({ to }: { to?: string }) => {
      if (to === undefined) {
        throw new Refusal([
          {
            code: "command-unknown",
            given: "page without a place to write it to",
            expected: "hoopstay page --to <file>",
            mend: "Name the file: --to hoopstay.html",
          },
        ]);
      }
      settle((await import("./more.ts")).page(to));
    });
  program
    .command("serve")
    .description("serve the offline page to this machine alone, until Ctrl-C")
    .option("--port <number>", "port of this machine; 0 for any that is free", portOf, usualPort)
    .addHelpText("after", "\nExample:\n  hoopstay serve\n")
    .action(async ({ port }: { port: number }) => {
      const say = (text: string): void => {
        process.stdout.write(text);
      };
      settle(await (await import("./more.ts")).serve(port, say));
    });
}
