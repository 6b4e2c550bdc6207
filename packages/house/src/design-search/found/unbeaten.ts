import { gustSteps } from "./gust-step.ts";

/** What designs are judged by, by place: less steel and less cost are better, more gust is better. */
export interface Judged {
  readonly count: number;
  readonly steel: ArrayLike<number>;
  readonly gust: ArrayLike<number>;
  /** Null where cost is not compared. */
  readonly cost: ArrayLike<number> | null;
  /** Of designs that are alike in all of these, the one with fewer anchors is better. */
  readonly anchors: ArrayLike<number>;
}

/** By how much one number is more than another; nought for two without limit. */
const excess = (one: number, other: number): number => (one === other ? 0 : one - other);

/** How much better the first of two designs is in each way, the greater the better. */
function margins({ steel, gust, cost, anchors }: Judged, one: number, other: number) {
  return {
    lighter: excess(steel[other] as number, steel[one] as number),
    cheaper: cost ? excess(cost[other] as number, cost[one] as number) : 0,
    stronger: excess(gustSteps(gust[one] as number), gustSteps(gust[other] as number)),
    simpler: (anchors[other] as number) - (anchors[one] as number),
  };
}

/** Whether one design is as good as another in everything and better in something, or simpler. */
export function beats(judged: Judged, one: number, other: number): boolean {
  const { lighter, cheaper, stronger, simpler } = margins(judged, one, other);
  if (lighter < 0 || cheaper < 0 || stronger < 0) return false;
  return lighter > 0 || cheaper > 0 || stronger > 0 || simpler > 0;
}

export const allPlaces = ({ count }: Judged): number[] =>
  Array.from({ length: count }, (_, place) => place);

/** Of some places those of the designs that no other of them beats, lightest first. */
export function unbeaten(judged: Judged, among: readonly number[] = allPlaces(judged)): number[] {
  const order = among.toSorted((one, other) => {
    const { lighter, cheaper, stronger, simpler } = margins(judged, other, one);
    return lighter || cheaper || stronger || simpler;
  });
  // In this order a design can only be beaten by one before it.
  const kept: number[] = [];
  for (const place of order) {
    let beaten = false;
    for (let at = kept.length - 1; at >= 0 && !beaten; at -= 1) {
      beaten = beats(judged, kept[at] as number, place);
    }
    if (!beaten) kept.push(place);
  }
  return kept;
}
