import type { System } from "@hoopstay/core";
import type { FileName, Texts } from "../engine/messages.ts";

/** What is kept on this device between visits. Nothing of it is sent anywhere. */
export interface Kept {
  readonly texts: Texts;
  readonly names: Readonly<Record<FileName, string>>;
  readonly system: System;
  readonly forecast: string;
}

const place = "hoopstay work";

const isText = (value: unknown): value is string => typeof value === "string";

/** The work of the last visit; null where there is none that can be read. */
export function kept(): Kept | null {
  try {
    const { texts, names, system, forecast } = JSON.parse(localStorage.getItem(place) ?? "null");
    if (![texts.house, texts.site, names.house, names.site, forecast].every(isText)) return null;
    return { texts, names, system: system === "si" ? "si" : "us", forecast };
  } catch {
    return null;
  }
}

/** Keeps the work; false where this browser does not let it. */
export function keep(work: Kept): boolean {
  try {
    localStorage.setItem(place, JSON.stringify(work));
    return true;
  } catch {
    return false;
  }
}

export function forget(): void {
  try {
    localStorage.removeItem(place);
  } catch {
    // Nothing was kept where nothing can be.
  }
}
