import { arcPointAt, type Shell } from "@hoopstay/load";
import type { House } from "../../model/house-model.ts";
import type { Purlins } from "../../model/link-parts.ts";

/** One line of purlin or ridge from end to end of the house. */
export interface PurlinLine {
  readonly what: "purlin" | "ridge";
  readonly part: Purlins;
  /** Share of the developed arch from the left springing. */
  readonly archShare: number;
  /** Cover that lies on it: half way to each neighbour or springing, share of the developed arch. */
  readonly width: number;
  /** Share of an end wall's area that leans on it. */
  readonly wallShare: number;
}

/**
 * The lines that run along the house. Their places are not entered: ridge at the crown, purlins
 * evenly spaced along the hoop; an odd purlin beside a ridge counts as the ridge's neighbour at the
 * crown and carries nothing.
 */
export function purlinLines({ links }: House, shell: Shell): PurlinLine[] {
  const { ridge, purlins } = links;
  const count = purlins?.lines ?? 0;
  const perSide = Math.floor(count / 2);
  const crown: "ridge" | "purlin" | null = ridge ? "ridge" : count % 2 === 1 ? "purlin" : null;
  const total = 2 * perSide + (crown ? 1 : 0);
  const shares = Array.from({ length: total }, (_, line) => (line + 1) / (total + 1));
  const walls = wallShares(shell, shares);
  return shares.flatMap((archShare, line): PurlinLine[] => {
    const what = crown === "ridge" && line === perSide ? "ridge" : "purlin";
    const part = what === "ridge" ? ridge : purlins;
    if (!part) return [];
    const width = 1 / (total + 1);
    return [{ what, part, archShare, width, wallShare: walls[line] as number }];
  });
}

/** Shares of an end wall's area by line, half way across to the neighbours; the last go to the edge. */
function wallShares(shell: Shell, shares: readonly number[]): number[] {
  const across = shares.map((share) => {
    const { x } = arcPointAt(shell.arc, 2 * Math.min(share, 1 - share));
    return share < 0.5 ? -x : x;
  });
  const upTo = (line: number): number => {
    const [left, right] = [across[line - 1], across[line]];
    if (left === undefined) return -1 / 2;
    return right === undefined ? 1 / 2 : shareFromMiddle(shell, (left + right) / 2);
  };
  return across.map((_, line) => upTo(line + 1) - upTo(line));
}

/** Share of an end wall's area between its middle and a place across, signed as the place. */
function shareFromMiddle({ arc, springing, endArea }: Shell, x: number): number {
  const { c, e, radius } = arc;
  const underArc = (u: number): number =>
    (u * Math.sqrt(radius * radius - u * u) + radius * radius * Math.asin(u / radius)) / 2;
  const far = Math.abs(x);
  const area = far * (springing + e) + underArc(far + c) - underArc(c);
  return (Math.sign(x) * area) / endArea;
}
