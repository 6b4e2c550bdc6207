import type { PublishedCase, PublishedFile } from "./published-case.ts";
import { worthOf } from "./units.ts";

/** What a published case gives, numbers turned from the printed unit to SI. */
export class Given {
  constructor(
    private readonly file: Pick<PublishedFile, "units">,
    private readonly one: Pick<PublishedCase, "title" | "given">,
  ) {}

  has(key: string): boolean {
    return key in this.one.given;
  }

  /** As it stands in the file. */
  plain(key: string): unknown {
    return this.one.given[key];
  }

  text(key: string): string {
    return this.has(key) ? String(this.plain(key)) : this.missing(key);
  }

  number(key: string): number {
    const value = this.plain(key);
    return typeof value === "number" ? value * this.worth(key) : this.missing(key);
  }

  numberOr(key: string, without: number): number {
    return this.has(key) ? this.number(key) : without;
  }

  numbers(key: string): number[] {
    const value = this.plain(key);
    if (!Array.isArray(value)) return this.missing(key);
    return value.map((one) => Number(one) * this.worth(key));
  }

  /** All of it, numbers and lists of numbers with a unit in SI. */
  all(): Record<string, unknown> {
    const si = (key: string, value: unknown): unknown => {
      if (!(key in this.file.units)) return value;
      return Array.isArray(value) ? this.numbers(key) : this.number(key);
    };
    return Object.fromEntries(
      Object.entries(this.one.given).map(([key, value]) => [key, si(key, value)]),
    );
  }

  private worth(key: string): number {
    return worthOf(this.file.units[key] ?? "1");
  }

  private missing(key: string): never {
    throw new Error(`${this.one.title}: ${key} is not given as expected`);
  }
}

/** What a case gives in words, with the units it is given in. */
export function givenWords(
  { units }: Pick<PublishedFile, "units">,
  { given }: Pick<PublishedCase, "given">,
): string {
  const plain = (value: unknown): string => {
    if (Array.isArray(value)) return value.map(plain).join("; ");
    if (typeof value !== "object" || value === null) return String(value);
    return Object.entries(value)
      .map(([key, one]) => `${key}: ${plain(one)}`)
      .join("; ");
  };
  const unitOf = (key: string): string => {
    const unit = units[key];
    return unit === undefined || unit === "1" ? "" : ` ${unit}`;
  };
  return Object.entries(given)
    .map(([key, value]) => `${key} ${plain(value)}${unitOf(key)}`)
    .join(", ");
}

/** How a quantity is computed from what a case gives: the column asked for, in SI. */
export type Compute = (given: Given, column: string) => number | undefined;

/** Ways to compute, by quantity of a published file. */
export type Computations = Readonly<Record<string, Compute>>;

/** A computation whose columns are each computed for themselves. */
export const columns =
  (each: Readonly<Record<string, (given: Given) => number | undefined>>): Compute =>
  (given, column) =>
    each[column]?.(given);
