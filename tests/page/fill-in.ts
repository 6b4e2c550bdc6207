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

const named = (page: Page, file: string, path: Path): Locator =>
  page.locator(`[data-key="${file} ${path.join(".")}"]`);

async function open(details: Locator): Promise<void> {
  if ((await details.count()) === 0) return;
  if (await details.evaluate((e) => !(e as HTMLDetailsElement).open)) {
    await details.locator("> summary").click();
  }
  await details.locator("> .inside").waitFor();
}

/** Opens what a question is folded into, outermost first; a new entry of a list is begun. */
async function unfold(page: Page, file: string, path: Path): Promise<void> {
  for (let depth = 1; depth < path.length; depth += 1) {
    const part = path.slice(0, depth);
    const place = named(page, file, part);
    if ((await place.count()) === 0 && typeof part.at(-1) === "number") {
      const list = named(page, file, part.slice(0, -1));
      await list.locator("> .inside > button.add").click();
    }
    if ((await named(page, file, part).count()) === 0)
      await openFolds(page, file, part.slice(0, -1));
    await open(place);
  }
  if ((await named(page, file, path).count()) === 0) await openFolds(page, file, path.slice(0, -1));
}

/** What few ask for is folded away beside the others. */
async function openFolds(page: Page, file: string, path: Path): Promise<void> {
  const around = path.length === 0 ? page.locator(".asks") : named(page, file, path);
  const folds = ((await around.count()) === 0 ? page.locator(".asks") : around).locator(
    "details.more:not([open]) > summary",
  );
  while ((await folds.count()) > 0) {
    await folds.first().click();
    await page.waitForTimeout(50);
  }
}

/** Puts a file in by hand: every value through the control that asks for it. */
export async function fillIn(page: Page, file: string, value: unknown, path: Path = []) {
  if (Array.isArray(value) && value.some((one) => typeof one !== "string")) {
    for (const [place, one] of value.entries()) await fillIn(page, file, one, [...path, place]);
    return;
  }
  if (typeof value === "object" && value !== null && !Array.isArray(value)) {
    for (const [key, one] of Object.entries(value)) await fillIn(page, file, one, [...path, key]);
    return;
  }
  await unfold(page, file, path);
  const field = named(page, file, path);
  const told = Array.isArray(value) ? value.map(String) : String(value);
  await answered(page, async () => {
    if (typeof told !== "string") {
      for (const one of told) await field.getByLabel(one, { exact: true }).check();
    } else if ((await field.locator("select").count()) > 0) {
      await field.locator("select").selectOption(told);
    } else await field.locator("input").fill(told);
  });
}
