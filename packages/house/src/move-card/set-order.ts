import type { AnchorRow } from "@hoopstay/core";
import type { Slope } from "@hoopstay/stability";

interface SetOrder {
  readonly anchors: readonly AnchorRow[];
  readonly why: string;
}

interface Corner {
  readonly row: AnchorRow;
  readonly side: "left" | "right";
  readonly end: "front" | "back";
}

function cornersOf(rows: readonly AnchorRow[]): Corner[] {
  return (["left", "right"] as const).flatMap((side): Corner[] => {
    const mine = rows.filter((row) => row.side === side).sort((a, b) => b.along - a.along);
    const [front, back] = [mine[0], mine.at(-1)];
    if (!front || !back) return [];
    const one: Corner = { row: front, side, end: "front" };
    return front === back ? [one] : [one, { row: back, side, end: "back" }];
  });
}

/** How much of an anchor's allowable pull holds the house up the slope, N. */
function againstSlope(row: AnchorRow, downhill: readonly [number, number]): number {
  const length = Math.hypot(...row.toward);
  if (length === 0) return 0;
  const along = (row.toward[0] * downhill[0] + row.toward[1] * downhill[1]) / length;
  return Math.max(0, -along * Math.cos(row.angle) * row.allowable);
}

const greatest = (corners: readonly Corner[], of: (row: AnchorRow) => number): Corner =>
  corners.reduce((most, one) => (of(one.row) > of(most.row) ? one : most));

/** Corners that stay after the first: the one diagonally across, then the rest. */
function acrossFirst(first: Corner, corners: readonly Corner[]): Corner[] {
  const distance = ({ side, end }: Corner): number =>
    (side === first.side ? 0 : 2) + (end === first.end ? 0 : 1);
  return corners.filter((one) => one !== first).sort((a, b) => distance(b) - distance(a));
}

/**
 * The order in which anchors are set. Judgement: nobody knows from which side the wind will come, so
 * the corners come first, diagonal by diagonal: the first two hold one side and one end each,
 * whichever is to windward. The rest follow from the ends to the middle, left and right in turn.
 */
export function setOrder(rows: readonly AnchorRow[], slope: Slope | null): SetOrder {
  const corners = cornersOf(rows);
  if (corners.length === 0) {
    return { anchors: rows, why: "In the order of the house file: none of them is on a rail." };
  }
  const downhill = slope?.downhill ?? null;
  const held = (row: AnchorRow): number => (downhill ? againstSlope(row, downhill) : 0);
  const uphill = greatest(corners, held);
  const onSlope = held(uphill.row) > 0;
  const first = onSlope ? uphill : greatest(corners, ({ pull }) => pull);
  const ends = [first, ...acrossFirst(first, corners)].map(({ row }) => row);
  const rest = rows
    .filter((row) => !ends.includes(row))
    .sort((a, b) => Math.abs(b.along) - Math.abs(a.along));
  const start = onSlope
    ? "The first is the corner that holds most against running downhill."
    : "The first is the corner with the greatest pull.";
  return {
    anchors: [...ends, ...rest],
    why: `Corners first, a corner and then the one diagonally across from it: the side the wind will come from is not known, and two such corners hold one on each side and each end. ${start} The others follow from the ends to the middle.`,
  };
}
