import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";

/** A drawing with its title and, for those who do not see it, what it shows. */
export function Figure({
  title,
  says,
  width,
  height,
  children,
}: {
  readonly title: string;
  readonly says: string;
  readonly width: number;
  readonly height: number;
  readonly children: ComponentChildren;
}) {
  const id = useId();
  return (
    <figure class="drawn-figure">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-labelledby={`${id}-t`}
        aria-describedby={`${id}-d`}
      >
        <title id={`${id}-t`}>{title}</title>
        <desc id={`${id}-d`}>{says}</desc>
        {children}
      </svg>
      <figcaption>{title}</figcaption>
    </figure>
  );
}

/** A dimension line with its words: level where both ends are at one height, else upright. */
export function Dimension({
  from,
  to,
  words,
}: {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly words: string;
}) {
  const level = from[1] === to[1];
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const tick = ([a, b]: readonly [number, number]) => `M${a - 4},${b + 4}L${a + 4},${b - 4}`;
  return (
    <>
      <path class="dim" d={`M${from}L${to}${tick(from)}${tick(to)}`} />
      <text class={level ? "m h" : "h"} x={level ? x : x + 6} y={level ? y - 5 : y + 4}>
        {words}
      </text>
    </>
  );
}

export const points = (all: readonly (readonly [number, number])[]): string =>
  all.map(([x, y]) => `${round(x)},${round(y)}`).join(" ");

const round = (value: number): number => Math.round(value * 10) / 10;
