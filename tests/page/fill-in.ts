import type { Locator, Page } from "playwright-core";

type Path = readonly (string | number)[];

/** Waits until the page has answered a change that `act` makes. */
async function answered(page: Page, act: () => Promise<unknown>): Promise<void> {
  const turn = () => page.locator("main").getAttribute("data-turn");
  const before = await turn();
  await act();
  await page.waitForFunction(
    (old) => document.querySelector("main")?.getAttribute("data-turn") !== old,
    before,
  );
}

const keyed = (page: Page, kind: "details" | ".field", file: string, path: Path): Locator =>
  page.locator(`${kind}[data-key="${file} ${path.join(".")}"]`);

async function open(details: Locator): Promise<void> {
  if (await details.evaluate((e) => !(e as HTMLDetailsElement).open)) {
    await details.locator("> summary").click();
  }
  await details.locator("> .inside").waitFor();
}

/** What few ask for is folded away beside the others. */
async function openFolds(page: Page, file: string, path: Path): Promise<void> {
  const fold = keyed(page, "details", file, path);
  const around = (await fold.count()) > 0 ? fold : page.locator(".asks");
  const shut = around.locator("details.more:not([open])");
  while ((await shut.count()) > 0) {
    const one = await shut.first().elementHandle();
    await shut.first().locator("> summary").click();
    await page.waitForFunction((e) => e?.querySelector(".inside"), one);
  }
}

/** Opens what a question is folded into, outermost first; a new entry of a list is begun. */
async function unfold(page: Page, file: string, path: Path): Promise<void> {
  for (let depth = 1; depth <= path.length; depth += 1) {
    const part = path.slice(0, depth);
    const fold = keyed(page, "details", file, part);
    const shown = fold.or(keyed(page, ".field", file, part));
    if ((await shown.count()) === 0 && typeof part.at(-1) === "number") {
      const list = keyed(page, "details", file, part.slice(0, -1));
      await list.locator("> .inside > button.add").click();
      await fold.waitFor();
    }
    if ((await shown.count()) === 0) await openFolds(page, file, part.slice(0, -1));
    if ((await fold.count()) > 0) await open(fold);
  }
}

/** Puts a file in by hand: every value through the control that asks for it. */
export async function fillIn(page: Page, file: string, value: unknown, path: Path = []) {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) {
    for (const [key, one] of Object.entries(value)) await fillIn(page, file, one, [...path, key]);
    return;
  }
  await unfold(page, file, path);
  if (Array.isArray(value) && (await keyed(page, "details", file, path).count()) > 0) {
    for (const [place, one] of value.entries()) await fillIn(page, file, one, [...path, place]);
    return;
  }
  const field = keyed(page, ".field", file, path);
  await answered(page, async () => {
    if (Array.isArray(value)) {
      for (const one of value) await field.getByLabel(String(one), { exact: true }).check();
    } else if ((await field.locator("select").count()) > 0) {
      await field.locator("select").selectOption(String(value));
    } else await field.locator("input").fill(String(value));
  });
}
