import { existsSync } from "node:fs";
import process from "node:process";
import { type Browser, chromium } from "playwright-core";

const executablePath = process.env.CHROMIUM ?? "/usr/bin/chromium";

/** The gates install the browser; a machine with Node and npm alone has none to test with. */
export const withBrowser = process.env.CI !== undefined || existsSync(executablePath);

export const launch = (): Promise<Browser> =>
  chromium.launch({
    executablePath,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "--disable-quic",
    ],
  });
