import { type CutList, measured, type Words } from "@hoopstay/core";
import { type CutPlan, cutPlan } from "../cutting/cut-plan.ts";
import { cutProblem, type Piece } from "../cutting/cut-problem.ts";
import { longestFirst } from "../cutting/longest-first.ts";
import { type PieceChoice, pieceChoices } from "./group-pieces.ts";
import type { HouseBending, TubeGroup } from "./house-pieces.ts";
import { type PriceList, sticksOf } from "./price-list.ts";

/** The piece choices of all members, one of each: the fewest sticks, then the least bending. */
function chosenOf(
  group: TubeGroup,
  stock: number,
  sawCut: number,
  bending: HouseBending,
): PieceChoice[] {
  const choices = group.members.map((members) => pieceChoices(members, stock, bending));
  const chosen = choices.map(([first]) => first as PieceChoice);
  choices.forEach((ways, place) => {
    if (ways.length < 2) return;
    const sticksWith = (way: PieceChoice): number => {
      const all = chosen.flatMap(({ pieces }, at) => (at === place ? way.pieces : pieces));
      return longestFirst(cutProblem(all, stock, sawCut).problem).length;
    };
    const counted = ways.map((way) => ({ way, sticks: sticksWith(way) }));
    const best = counted.reduce((a, b) =>
      b.sticks < a.sticks || (b.sticks === a.sticks && b.way.share < a.way.share - 1e-9) ? b : a,
    );
    chosen[place] = best.way;
  });
  return chosen;
}

interface Cutting {
  readonly stock: number;
  readonly price: number | null;
  readonly plan: CutPlan;
  readonly findings: readonly Words[];
}

const bought = ({ stock, plan }: Cutting): number => stock * plan.sticks.length;

/** The cheaper of two; where one has no price, the one that has it; where none has, the shorter. */
function better(one: Cutting, other: Cutting): Cutting {
  if (one.price !== null || other.price !== null) {
    return (other.price ?? Number.POSITIVE_INFINITY) < (one.price ?? Number.POSITIVE_INFINITY)
      ? other
      : one;
  }
  return bought(other) < bought(one) ? other : one;
}

/** Sticks to buy of one tube and what is cut from each: one stock length, the cheapest of those told. */
export function cutListOf(group: TubeGroup, prices: PriceList, bending: HouseBending): CutList {
  const { tube } = group;
  const cuttings = sticksOf(prices, tube).map(({ length: stock, price, assumed }): Cutting => {
    const chosen = chosenOf(group, stock, prices.sawCut, bending);
    const pieces: Piece[] = chosen.flatMap((one) => one.pieces);
    const plan = cutPlan(pieces, stock, prices.sawCut);
    const said: Words[] = assumed
      ? [["Sticks of ", measured(stock, "length"), " are assumed: enter prices.stock."]]
      : [];
    return {
      stock,
      price: price === null ? null : price * plan.sticks.length,
      plan,
      findings: [...said, ...chosen.flatMap(({ findings }) => findings)],
    };
  });
  const best = cuttings.reduce(better);
  const { stock, price, plan, findings } = best;
  const { sticks, least } = plan;
  const waste = sticks.reduce((sum, stick) => sum + stick.waste, 0);
  const fewest = sticks.length <= least;
  return {
    tube: tube.name,
    stock,
    sticks,
    waste: waste / bought(best),
    price,
    fewest,
    findings: fewest
      ? findings
      : [...findings, [`Not proved the fewest: no plan has fewer than ${least} sticks.`]],
  };
}
