import { type Chapter, derived, formula, inMeasure } from "@hoopstay/core";
import {
  type CheckTerms,
  contactForce,
  demandOf,
  type HoldingTerms,
  overturning,
  type SlidingWind,
  slidingDemand,
  slidingResistance,
  tetherNeed,
  turnedWorst,
  utilization,
  worstSlideAt,
} from "@hoopstay/stability";
import { anchorSteps, weightAbout } from "./holding-steps.ts";
import { mustAgree } from "./must-agree.ts";
import { slopeMomentStep, slopeSteps } from "./slope-steps.ts";
import { tetherSteps } from "./tether-steps.ts";

const tethersAgainst = formula({
  id: "tethers-against",
  symbol: "T_h",
  name: "tethers against the slide, less what those that lead downwind pull along with it",
  measure: "force",
  arguments: [
    ["P_a", "horizontal parts of allowable pulls against the slide", "force"],
    ["lambda_l", "share that turning about the right rail asks of the left tethers", "ratio"],
    ["P_l", "horizontal parts along the slide, left tethers", "force"],
    ["lambda_r", "share that turning about the left rail asks of the right tethers", "ratio"],
    ["P_r", "horizontal parts along the slide, right tethers", "force"],
    ["P_m", "horizontal parts along the slide, tethers in the middle", "force"],
  ],
  expression: "P_a - lambda_l * P_l - lambda_r * P_r - max(lambda_l, lambda_r) * P_m",
  citation: derived(
    "a tether that leads downwind pulls the house along as hard as turning needs it",
  ),
  evaluate: (against, needLeft, left, needRight, right, middle) =>
    against - needLeft * left - needRight * right - Math.max(needLeft, needRight) * middle,
});

const atPressure = formula({
  id: "wind-at-pressure",
  symbol: "F_c",
  name: "wind at that pressure",
  measure: "force",
  arguments: [
    ["F", "wind by design", "force"],
    ["q_c", "pressure of the trial", "pressure"],
    ["q", "K_d q_h", "pressure"],
  ],
  expression: "F * q_c / q",
  citation: derived("wind goes with the pressure"),
  evaluate: (wind, trial, design) => (wind * trial) / design,
});

/** Wind of a case on the whole house, N and N m. */
interface CaseWind {
  readonly fx: number;
  readonly fy: number;
  readonly fz: number;
  readonly mx: number;
  readonly my: number;
}

/** A sliding check: what holds, and the wind of its case at the design pressure. */
export interface SlideSubject {
  readonly held: CheckTerms["holdings"][number];
  readonly wind: CaseWind;
  readonly unit: SlidingWind;
  readonly design: number;
  /** Names of the anchors. */
  readonly names: readonly string[];
}

type Line = SlideSubject["held"]["lines"][number];

const symbols = { fx: "F_x", fy: "F_y", fz: "F_z", mx: "M_x", my: "M_y" } as const;

/** The wind at another pressure, the parts that are not nought as steps. */
function windAt(chapter: Chapter, wind: CaseWind, pressure: number, design: number): CaseWind {
  const at = (part: keyof CaseWind): number => {
    if (wind[part] === 0) return 0;
    const measure = part.startsWith("m") ? ("moment" as const) : ("force" as const);
    return chapter.work(inMeasure(atPressure, measure), [wind[part], pressure, design], {
      symbol: `${symbols[part]},c`,
    });
  };
  return { fx: at("fx"), fy: at("fy"), fz: at("fz"), mx: at("mx"), my: at("my") };
}

/** What turning about one rail asks of the tethers on the other. */
function needStep(
  chapter: Chapter,
  { line, terms: rail }: Line,
  terms: HoldingTerms,
  wind: CaseWind,
  names: readonly string[],
  side: "l" | "r",
): number {
  const { nx, ny, distance } = line;
  const about = [nx, ny, wind.mx, wind.my, wind.fz, distance] as const;
  const named = { ...overturning, name: "wind moment about the other rail" };
  const turn = chapter.work(named, [...about], { symbol: `M_${side}` });
  const slope = slopeMomentStep(chapter, terms, line);
  const inputs = [terms.combination.wind, turn, slope] as const;
  const demand = chapter.work(demandOf, inputs, { symbol: `E_${side}` });
  if (rail.anchorMoment <= 0) return demand > rail.weightMoment ? 1 : 0;
  weightAbout(chapter, terms, line);
  anchorSteps(chapter, terms, line, rail.anchorMoment, names);
  return chapter.work(tetherNeed, [demand, rail.weightMoment, rail.anchorMoment], {
    symbol: `lambda_${side}`,
  });
}

/** Demand, contact, tethers and resistance of sliding at one pressure, step by step. */
export function slideTrial(
  chapter: Chapter,
  { held, wind: whole, unit, design, names }: SlideSubject,
  pressure: number,
  { mark = "", note }: { readonly mark?: string; readonly note: string },
): void {
  const { terms, sliding, lines } = held;
  const factor = terms.combination.wind;
  const wind = mark === "" ? whole : windAt(chapter, whole, pressure, design);
  const turned = turnedWorst(sliding, unit, pressure);
  const [sx, sy] = slopeSteps(chapter, terms, wind.fx, wind.fy, turned);
  const as = (symbol: string) => ({ symbol: `${symbol}${mark}` });
  const demand = chapter.work(slidingDemand, [factor, wind.fx, wind.fy, sx, sy], {
    ...as("E"),
    note,
  });
  const contact = chapter.work(contactForce, [terms.deadNormal, factor, wind.fz], as("N"));
  let tether = 0;
  if (terms.sideways && demand > 0) {
    const push = { demand, x: [wind.fx, sx], y: [wind.fy, sy] };
    const { against, left, right, middle } = tetherSteps(chapter, terms, push);
    const aslant = left + right + middle !== 0;
    const need = (at: 0 | 1): number =>
      aslant ? needStep(chapter, lines[at] as Line, terms, wind, names, at === 0 ? "l" : "r") : 0;
    const [l, r] = [need(0), need(1)];
    tether = chapter.work(tethersAgainst, [against, l, left, r, right, middle], as("T_h"));
  }
  const { friction } = terms.holding;
  const resistance = chapter.work(slidingResistance, [friction, contact, tether], as("R"));
  const computed = worstSlideAt(sliding, unit, pressure);
  const scale = Math.max(computed.demand, Math.abs(computed.resistance), 1);
  mustAgree("the push of sliding", demand, computed.demand, scale);
  mustAgree("what resists sliding", resistance, computed.resistance, scale);
  if (resistance > 0) chapter.work(utilization, [demand, resistance], mark ? as("E/R") : {});
}
