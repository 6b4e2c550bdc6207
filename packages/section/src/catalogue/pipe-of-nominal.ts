import { pipe } from "./pipe.ts";
import type { CatalogueSize } from "./size.ts";
import { tradeInches } from "./trade-inches.ts";

const near = (value: number, other: number): boolean => Math.abs(value / other - 1) < 0.02;

/**
 * The pipe that a round tube is likely meant to be: its outside, m, is that pipe's nominal size and its
 * wall, m, that pipe's wall. A pipe is larger outside than its name.
 */
export function pipeOfNominal(outside: number, wall: number): CatalogueSize | undefined {
  return pipe.find(({ name, shape }) => {
    const [, nominal = ""] = /^Pipe(.+?)(?:STD|XS)$/.exec(name) ?? [];
    const own = shape.kind === "round" ? shape.wall : 0;
    return near(outside, tradeInches(nominal)) && near(wall, own);
  });
}
