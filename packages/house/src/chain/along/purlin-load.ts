import { derived, formula } from "@hoopstay/core";
import type { Worksheet } from "@hoopstay/strength";
import { workPressure } from "../component/component-groups.ts";
import { pressedWidth } from "../component/component-loads.ts";
import type { ChainContext } from "../context.ts";
import { found } from "../superposed.ts";
import type { CoverLoad } from "./cover-loads.ts";

const pressedWithWeight = formula({
  id: "pressed-with-weight",
  symbol: "w",
  name: "load per length of a purlin: cover that presses on it, and weight",
  measure: "force-per-length",
  arguments: [
    ["w_c", "load by the cover", "force-per-length"],
    ["gamma_D", "weight factor of the combination", "ratio"],
    ["g", "weight of the line and of the film on it", "force-per-length"],
  ],
  expression: "w_c + gamma_D * g",
  citation: derived("as if both acted the same way: safe side on a slope"),
  evaluate: (cover, factor, weight) => cover + factor * weight,
});

/** Weight of a line as the take-off has it, the high estimate, N per metre or N/m2. */
function unitWeight({ evaluation }: ChainContext, what: string, unit: "length" | "area"): number {
  return evaluation.takeOff.items
    .filter((item) => item.what === what && item.unit === unit)
    .reduce((sum, { unitHigh }) => sum + (unitHigh ?? 0), 0);
}

/** What bends lines of one kind between hoops: the cover where it presses on them, and weight. */
export class PurlinLoad {
  private readonly own: number;
  private readonly film: number;

  constructor(context: ChainContext, name: string) {
    this.own = unitWeight(context, name, "length");
    this.film = unitWeight(context, "film", "area");
  }

  /** Load per length, N/m, on a sheet, at a factored K_d q_h and a weight factor. */
  work(sheet: Worksheet, q: number, dead: number, cover: CoverLoad | undefined): number {
    const pressed = cover
      ? sheet.work(pressedWidth, [workPressure(sheet, q, cover.pressure), cover.width])
      : 0;
    const weight = this.own + (cover ? this.film * cover.width : 0);
    const by = "take-off, high estimate";
    const name = "weight of the line and of the film on it";
    const g = sheet.work(found("g", name, weight, "force-per-length", by), []);
    return sheet.work(pressedWithWeight, [pressed, dead, g]);
  }
}
