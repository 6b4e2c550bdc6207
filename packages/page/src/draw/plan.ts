import type { Drawings } from "@hoopstay/core";

/** Places on a plan, front on top, narrow enough for a phone. */
export interface Plan {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly x: (across: number) => number;
  readonly y: (along: number) => number;
}

/** The scale at which a house and what stands around it fit. */
export function planOf(
  { span, railFront, railBack, noseFront, noseBack }: Drawings,
  around: readonly { readonly x: number; readonly y: number }[],
): Plan {
  const width = 400;
  const widest = Math.max(span, ...around.map(({ x }) => 2 * Math.abs(x)));
  const front = Math.max(railFront + noseFront, ...around.map(({ y }) => y));
  const back = Math.max(railBack + noseBack, ...around.map(({ y }) => -y));
  const scale = Math.min(200 / widest, 330 / (front + back));
  const top = 30;
  return {
    width,
    height: top + (front + back) * scale + 44,
    scale,
    x: (across) => width / 2 + across * scale,
    y: (along) => top + (front - along) * scale,
  };
}
