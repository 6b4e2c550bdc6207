import type { ChainContext } from "../context.ts";
import { factorsOf } from "../hoop/foot-forces.ts";
import { hoopWords } from "../hoop/hoop-answers.ts";
import { type LinkRow, ratioRow } from "../link.ts";
import { whileTied } from "../links/ties.ts";
import { silent } from "../worked-row.ts";
import { alongDemand, pushedCases } from "./along-demand.ts";
import {
  bentAtMost,
  bentHoopStrength,
  bentWork,
  type OutOfPlaneLoad,
  worstBent,
} from "./bent-hoops.ts";
import { workBetween, worstBetween } from "./between-lines.ts";
import type { AlongPush } from "./end-pushes.ts";
import { hoopsAlong } from "./hoop-along.ts";
import { ownWall } from "./pushed-hoops.ts";

/**
 * End hoops under their half of a bay's roof, with their end wall leaning on them: bent out of plane
 * between purlins, or from foot to foot without any; where no end bay is braced, with their part of
 * the push along the house.
 */
export function endHoopRows(context: ChainContext, braced: boolean): LinkRow[] {
  const strength = bentHoopStrength(context);
  if (!strength) return [];
  const { answers, hoopPlaces, evaluation } = context;
  const { endArea } = evaluation.shell;
  const along = hoopsAlong(context);
  const count = hoopPlaces.length;
  const between = worstBetween(context, along.lines.length);
  const perSize = between ? workBetween(silent, 1, 1, endArea, 0, between) : 0;
  const loadOf = (push: AlongPush, wall: number): OutOfPlaneLoad => {
    const none = { local: 0, workLocal: null };
    const line = Math.abs(push.line);
    if (!between) {
      return { demand: alongDemand(along, wall / 2, along.byWall, line), hoops: 1, ...none };
    }
    const shared = Math.abs(push.front + push.back) / 2 / count;
    const { byPurlins, byWall } = along;
    return {
      demand: braced ? null : alongDemand(along, shared, byPurlins ?? byWall, line),
      hoops: count,
      local: wall * perSize,
      workLocal: (sheet, q) => workBetween(sheet, q, wall, endArea, line, between),
    };
  };
  return answers.flatMap((answer): LinkRow[] => {
    const { run, windCase } = answer;
    if (run.bound) return [];
    const { railed } = run;
    return pushedCases(context, windCase).flatMap(({ push, sets }): LinkRow[] => {
      const wall = ownWall(answer, push, count);
      if (wall === 0) return [];
      const load = loadOf(push, wall);
      const row = ratioRow(
        {
          link: "end-wall",
          part: "end hoop bent by its end wall",
          place: hoopWords(answer, count, railed),
          run: `${between ? "between its purlins" : "from foot to foot"}; ${run.words}`,
          windCase: { ...windCase, sets },
          work: bentWork(context, answer, strength, load),
          atMost: bentAtMost(context, answer, strength, load),
        },
        (q, combination) => {
          const factors = factorsOf(context, answer, q, combination);
          return worstBent(answer, strength, factors, combination.method, load).ratio;
        },
      );
      return [whileTied(context, answer, row)];
    });
  });
}
