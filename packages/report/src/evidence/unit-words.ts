import type { EvidenceRow } from "@hoopstay/core";
import { text } from "../html/escape.ts";

/** A row's unit behind its number; nothing for a ratio. */
export const unitWords = ({ unit }: Pick<EvidenceRow, "unit">): string =>
  unit === "1"
    ? ""
    : ` ${text(unit.replace(/(?<=[a-z])([234])$/, (power) => powers[power] ?? power))}`;

const powers: Readonly<Record<string, string>> = { "2": "\u00b2", "3": "\u00b3", "4": "\u2074" };
