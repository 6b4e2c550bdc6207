import type { LoadSet } from "../../review/evaluate.ts";
import type { ChainContext } from "../context.ts";
import type { HoopAnswer } from "../hoop/hoop-answers.ts";
import { type AlongDemand, alongDemand, pushedCases } from "./along-demand.ts";
import type { AlongPush } from "./end-pushes.ts";
import { hoopsAlong } from "./hoop-along.ts";

/** How many hoops share the push on the end walls' upper half. */
interface Sharing {
  readonly hoops: number;
  readonly words: string;
}

/** One hoop under one case, with the push along the house on it. */
export interface PushedHoop {
  readonly answer: HoopAnswer;
  readonly sets: ReadonlyMap<LoadSet, number>;
  readonly push: AlongPush;
  readonly demand: AlongDemand;
  readonly sharing: Sharing;
}

/** Every hoop, run and case with a push along the house, where no end bay is braced. */
export function pushedHoops(context: ChainContext): PushedHoop[] {
  const along = hoopsAlong(context);
  const { byPurlins, byWall } = along;
  const count = context.hoopPlaces.length;
  const sharing: Sharing = byPurlins
    ? { hoops: count, words: "all hoops share the push along the house" }
    : { hoops: 1, words: "each end hoop holds its own wall" };
  const cases = new Map(context.cases.map((one) => [one, pushedCases(context, one)] as const));
  const demands = new Map<string, AlongDemand>();
  const demandOf = (top: number, line: number): AlongDemand => {
    const key = `${top} ${line}`;
    const known = demands.get(key) ?? alongDemand(along, top, byPurlins ?? byWall, line);
    demands.set(key, known);
    return known;
  };
  return context.answers.flatMap((answer): PushedHoop[] => {
    if (answer.run.bound) return [];
    return (cases.get(answer.windCase) ?? []).flatMap(({ push, sets }): PushedHoop[] => {
      const line = Math.abs(push.line);
      const top = byPurlins
        ? Math.abs(push.front + push.back) / 2 / count
        : ownWall(answer, push, count) / 2;
      if (top === 0 && line === 0) return [];
      return [{ answer, sets, push, demand: demandOf(top, line), sharing }];
    });
  });
}

/** Wind on the wall that leans on a hoop, m2: an end hoop's own; where one stands for both, the worse. */
export function ownWall({ hoop, windCase }: HoopAnswer, push: AlongPush, count: number): number {
  const [front, back] = [Math.abs(push.front), Math.abs(push.back)];
  if (hoop === count - 1) return front;
  if (hoop !== 0) return 0;
  return windCase.stretches.length === 1 ? Math.max(front, back) : back;
}
