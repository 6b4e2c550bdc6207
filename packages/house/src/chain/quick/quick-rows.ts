import { faceLimits, faceRatio } from "@hoopstay/strength";
import type { House } from "../../model/house-model.ts";
import { bracedBays } from "../along/braced-bays.ts";
import { alongFootRows } from "../along/foot-rows.ts";
import { purlinLines } from "../along/purlin-lines.ts";
import { purlinRows } from "../along/purlin-rows.ts";
import { type PushedHoop, pushedHoops } from "../along/pushed-hoops.ts";
import { mainForm } from "../chain-case.ts";
import type { ChainContext } from "../context.ts";
import { footAtRail } from "../hoop/foot-forces.ts";
import { type FootPart, footRows } from "../hoop/foot-rows.ts";
import type { LinkRow } from "../link.ts";
import { boardsLink } from "../links/boards.ts";
import { boltsLink } from "../links/bolts.ts";
import { stubOnFace } from "../links/face.ts";
import { hoopLink } from "../links/hoop.ts";
import { stubLink } from "../links/stub.ts";
import { footWeld, weldLink } from "../links/weld.ts";

/** Boards, ridge and purlins: from hoop to hoop, whatever tube those are of. */
export function bayRows(context: ChainContext): LinkRow[] {
  const { house, shell } = context.evaluation;
  const lines = purlinLines(house, shell);
  const along = (["ridge", "purlin"] as const).flatMap((kind) => {
    const own = lines.filter(({ what }) => what === kind);
    return purlinRows(context, kind, own).rows;
  });
  return [...boardsLink(context).rows, ...along];
}

/** The hoop, its bolts and its stubs, whatever rail they stand on. */
export const hoopRows = (context: ChainContext): LinkRow[] =>
  [hoopLink, boltsLink, stubLink].flatMap((link) => link(context).rows);

/** Hoops that wind along the house pushes where no end bay is braced; none where one is. */
export function pushedAlong(context: ChainContext): PushedHoop[] {
  const braced = bracedBays(context.evaluation.house);
  if (braced !== null && typeof braced !== "string") return [];
  const answers = context.answers.filter(({ windCase }) => windCase.direction === "+y");
  return answers.length > 0 ? pushedHoops({ ...context, answers }) : [];
}

/**
 * The same for hoops of another round tube: how a push is shared hangs on the tube's bending and twist
 * together, and they keep their ratio whatever its size.
 */
export const pushedLikewise = (
  pushed: readonly PushedHoop[],
  { answers }: ChainContext,
): PushedHoop[] =>
  pushed.flatMap((one) => {
    const { windCase, hoop } = one.answer;
    const answer = answers.find((other) => other.windCase === windCase && other.hoop === hoop);
    return answer ? [{ ...one, answer }] : [];
  });

/** What the weld of the stubs can take: rails alike in it hold the feet alike. */
export function weldKey(house: House): string {
  const weld = footWeld(house);
  return weld ? `${weld.ASD} ${weld.LRFD}` : "no weld";
}

/** The feet and what welds them to the rail. */
export const footingRows = (context: ChainContext, pushed: readonly PushedHoop[]): LinkRow[] => [
  ...weldLink(context).rows,
  ...alongFootRows(context, pushed),
];

/** The rail's top wall where nothing bends the rail and no open end is near: stronger than any. */
export function faceRows(context: ChainContext): LinkRow[] {
  const input = stubOnFace(context.evaluation.house, null);
  const limits = input && faceLimits(input);
  if (!limits?.covered) return [];
  const part: FootPart = {
    part: "the face bends in under the stub",
    measure: "ratio",
    demand: ({ uplift, couple }, method) => faceRatio(limits, method, uplift, 0, couple, 0, 0),
    resistance: { ASD: 1, LRFD: 1 },
    work: () => undefined,
  };
  const answers = context.answers.filter(({ windCase }) => mainForm(windCase));
  return footRows({ ...context, answers }, "face", footAtRail, [part]);
}
