import {
  type ChainContext,
  chainContext,
  evaluate,
  type House,
  type LinkRow,
  linkCombinations,
} from "@hoopstay/house";
import type { LinkRows } from "../../packages/house/src/chain/link.ts";
import { boardsLink } from "../../packages/house/src/chain/links/boards.ts";
import { coverLink } from "../../packages/house/src/chain/links/cover.ts";
import { endWallLink } from "../../packages/house/src/chain/links/end-wall.ts";
import { ridgeLineLink } from "../../packages/house/src/chain/links/ridge-line.ts";
import { fitted, site } from "./fitted-house.ts";

const makers = {
  cover: coverLink,
  boards: boardsLink,
  "ridge-line": ridgeLineLink,
  "end-wall": endWallLink,
} as const;

export const fittedContext: ChainContext = chainContext(evaluate(fitted, site));
export const { evaluation } = fittedContext;

/** One link of the example with other parts in its load path; wind and weight stay as they are. */
export function linkOf({ links }: House, link: keyof typeof makers): LinkRows {
  const house = { ...evaluation.house, links };
  return makers[link]({ ...fittedContext, evaluation: { ...evaluation, house } });
}

export const [light] = linkCombinations;

/** K_d q_h at the design wind of the example, Pa. */
export const design = evaluation.pressure;

/** The greatest demand of a part, not factored, for a K_d q_h of one. */
export function demandOf(rows: readonly LinkRow[], part: string, run?: string): number {
  const some = rows.filter((row) => row.part === part && (run === undefined || row.run === run));
  if (some.length === 0 || !light) throw new Error(`no row for ${part}`);
  return Math.max(...some.map((row) => row.asked(1, light).demand / light.wind));
}

/** The greatest ratio of a part at the design wind. */
export function ratioOf(rows: readonly LinkRow[], part: string): number {
  const some = rows.filter((row) => row.part === part);
  if (some.length === 0 || !light) throw new Error(`no row for ${part}`);
  return Math.max(...some.map((row) => row.ratio(design, light)));
}
