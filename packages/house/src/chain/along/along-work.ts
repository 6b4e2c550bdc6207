import { derived, formula } from "@hoopstay/core";
import { bareTubeLoad } from "@hoopstay/load";
import type { Worksheet } from "@hoopstay/strength";
import type { AlongDemand } from "./along-demand.ts";
import { pushOfOneHoop } from "./hoop-along-formulas.ts";
import { workWallTop } from "./wall-work.ts";

const bentHoop = derived(
  "hoop held at both feet, bent out of its plane and twisted; the moment at the crown by least work",
);

const alongForce = formula({
  id: "along-force",
  symbol: "V_y",
  name: "push along the house on one foot",
  measure: "force",
  arguments: [
    ["P_h", "push on one hoop", "force"],
    ["n_P", "force by a push of one", "ratio"],
    ["w_y", "wind on a metre of hoop", "force-per-length"],
    ["n_w", "force by one per metre", "length"],
  ],
  expression: "P_h * n_P + w_y * n_w",
  citation: bentHoop,
  evaluate: (push, byPush, line, byLine) => push * byPush + line * byLine,
});

const alongMoment = formula({
  id: "along-moment",
  symbol: "M_y",
  name: "moment by the push along the house",
  measure: "moment",
  arguments: [
    ["P_h", "push on one hoop", "force"],
    ["m_P", "moment by a push of one", "length"],
    ["w_y", "wind on a metre of hoop", "force-per-length"],
    ["m_w", "moment by one per metre", "area"],
  ],
  expression: "P_h * m_P + w_y * m_w",
  citation: bentHoop,
  evaluate: (push, byPush, line, byLine) => push * byPush + line * byLine,
});

const resultantArguments = (measure: "force" | "moment") =>
  [
    ["a", "across the house", measure],
    ["b", "along the house", measure],
  ] as const;

export const forceResultant = formula({
  id: "both-ways-force",
  symbol: "V_r",
  name: "force, across and along together",
  measure: "force",
  arguments: resultantArguments("force"),
  expression: "sqrt(a^2 + b^2)",
  citation: derived("at right angles to each other; a round tube takes their resultant"),
  evaluate: (across, along) => Math.hypot(across, along),
});

export const momentResultant = formula({
  id: "both-ways-moment",
  symbol: "M_r",
  name: "moment, across and along together",
  measure: "moment",
  arguments: resultantArguments("moment"),
  expression: "sqrt(a^2 + b^2)",
  citation: derived("at right angles to each other; a round tube takes their resultant"),
  evaluate: (across, along) => Math.hypot(across, along),
});

/** Forces of a push along the house, read part by part on a sheet. */
export class AlongSheet {
  private readonly push: number;
  private readonly line: number;

  /**
   * @param q factored K_d q_h, Pa
   * @param hoops that share the push; one where the end hoop stands alone
   */
  constructor(
    private readonly sheet: Worksheet,
    q: number,
    private readonly demand: AlongDemand,
    hoops: number,
    endArea: number,
  ) {
    const all = 2 * hoops * demand.top;
    const top = workWallTop(sheet, q, all, endArea, demand.line);
    this.push = sheet.work(pushOfOneHoop, [top, hoops]);
    this.line = sheet.work(bareTubeLoad, [q, 1, demand.line], { symbol: "w_y" });
  }

  get shear(): number {
    const { byTop, even } = this.demand;
    return this.sheet.work(alongForce, [this.push, byTop.foot.shear, this.line, even.foot.shear]);
  }

  private moment(symbol: string, note: string, byPush: number, byLine: number): number {
    const inputs = [this.push, byPush, this.line, byLine] as const;
    return this.sheet.work(alongMoment, inputs, { symbol, note });
  }

  get tipping(): number {
    const { byTop, even } = this.demand;
    return this.moment("M_y", "at the rail", byTop.foot.tipping, even.foot.tipping);
  }

  get torque(): number {
    const { byTop, even } = this.demand;
    return this.moment("T_y", "about the stub", byTop.foot.torque, even.foot.torque);
  }

  get atBolts(): number {
    const { byTop, even } = this.demand;
    return this.moment("M_y", "at the middle of the bolts", byTop.atBolts, even.atBolts);
  }

  bending(place: number, note: string): number {
    const { byTop, even } = this.demand;
    const by = [byTop.bending[place] as number, even.bending[place] as number] as const;
    return this.moment("M_y", note, ...by);
  }

  torsion(place: number, note: string): number {
    const { byTop, even } = this.demand;
    const by = [byTop.torsion[place] as number, even.torsion[place] as number] as const;
    return this.moment("T_y", note, ...by);
  }
}
