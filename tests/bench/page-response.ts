import { join, resolve } from "node:path";
import process from "node:process";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { launch, withBrowser } from "../browser/chromium.ts";
import { startFromExample, workedOut } from "../page/started.ts";
import { tell } from "./told.ts";

// The page in Chromium: from a keystroke to lift, tip and slide redrawn, and with the quick look at the
// hoop; from file:// to the first answer. Beside it a keystroke of the same texts that goes to a worker
// which does twenty million multiply-adds, and comes back to change one word of a bare page.

/** Changes made before any is timed: a browser compiles what runs often. */
const warming = 40;
const timed = 100;

interface Change {
  readonly stability: number;
  readonly hoop: number;
}

const share = (times: readonly number[], part: number): number =>
  [...times].sort((one, other) => one - other)[Math.floor(part * (times.length - 1))] as number;

/** Types a width, over and over; runs in the page. */
async function typeWidths(input: HTMLInputElement, count: number): Promise<Change[]> {
  const main = document.querySelector("main") as HTMLElement;
  const found: Change[] = [];
  for (let change = 0; change < count; change += 1) {
    const [turn, looked] = [main.dataset.turn, main.dataset.looked];
    const start = performance.now();
    let stability = 0;
    await new Promise<void>((done) => {
      const watch = new MutationObserver(() => {
        if (stability === 0 && main.dataset.turn !== turn) stability = performance.now() - start;
        if (main.dataset.looked === looked) return;
        watch.disconnect();
        done();
      });
      watch.observe(main, { attributes: true });
      input.value = `${18 + (change % 40) / 100} ft`;
      input.dispatchEvent(new Event("input", { bubbles: true }));
    });
    found.push({ stability, hoop: performance.now() - start });
    await new Promise((rest) => setTimeout(rest, 60));
  }
  return found;
}

/** The same keystroke with bare arithmetic behind it; runs in a bare page. */
async function typeForArithmetic(count: number): Promise<number[]> {
  const echo = `onmessage = ({ data }) => {
    let sum = 0;
    for (let k = 0; k < 2e7; k += 1) sum += k * 1e-3;
    postMessage(data + sum);
  }`;
  const worker = new Worker(URL.createObjectURL(new Blob([echo], { type: "text/javascript" })));
  const main = document.createElement("main");
  document.body.append(main);
  const found: number[] = [];
  for (let change = 0; change < count; change += 1) {
    const start = performance.now();
    await new Promise<void>((done) => {
      const watch = new MutationObserver(() => {
        watch.disconnect();
        done();
      });
      watch.observe(main, { childList: true });
      worker.onmessage = ({ data }) => {
        main.textContent = String(data.length);
      };
      worker.postMessage("name: a house\n".repeat(700));
    });
    found.push(performance.now() - start);
    await new Promise((rest) => setTimeout(rest, 60));
  }
  return found;
}

async function measured(page: Page): Promise<void> {
  await page.goto(pathToFileURL(pageFile).href);
  await startFromExample(page);
  await workedOut(page);
  const visits: number[] = [];
  for (let visit = 0; visit < 7; visit += 1) {
    const start = performance.now();
    await page.reload();
    await page.locator(".boxes").waitFor();
    visits.push(performance.now() - start);
    await workedOut(page);
  }
  const first = share(visits, 0.5);
  await page.locator(".tabs").getByRole("link", { name: "House", exact: true }).click();
  const field = page.getByLabel("How wide is it, foot to foot?");
  const changes = (await field.evaluate(typeWidths, warming + timed)).slice(warming);
  const [stability, hoop] = [changes.map((one) => one.stability), changes.map((one) => one.hoop)];
  await page.goto("about:blank");
  const bare = (await page.evaluate(typeForArithmetic, warming + timed)).slice(warming);
  const words = (times: readonly number[]): string =>
    `median ${share(times, 0.5).toFixed(1)} ms, 95th percentile ${share(times, 0.95).toFixed(1)} ms`;
  console.log(
    `page, a keystroke to lift, tip and slide redrawn: ${words(stability)}
  and with the quick look at the hoop: ${words(hoop)}
  a keystroke with bare arithmetic: ${words(bare)}
  from file:// to the first answer of a later visit, median: ${first.toFixed(0)} ms`,
  );
  const floor = share(bare, 0.5);
  const told = { better: "less", room: 2 } as const;
  tell({
    name: "page-response",
    words: "keystroke to lift, tip and slide redrawn, over one with bare arithmetic, medians",
    ratio: share(stability, 0.5) / floor,
    ...told,
  });
  tell({
    name: "page-first-answer",
    words: "file:// to the first answer, over a keystroke with bare arithmetic",
    ratio: first / floor,
    ...told,
  });
}

const pageFile = join(resolve(process.argv[2] ?? "fixtures"), "../packages/cli/dist/page.html");

async function run(): Promise<void> {
  const browser = await launch();
  try {
    const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
    await measured(await context.newPage());
  } finally {
    await browser.close();
  }
}

if (withBrowser) void run();
else console.log("page: no Chromium here, not measured");
