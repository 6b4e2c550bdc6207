import type { QuickLinks } from "../chain/quick/quick-links.ts";
import { steelWeight } from "../compare/steel-weight.ts";
import { mean } from "../compare/worth-telling.ts";
import type { House } from "../model/house-model.ts";
import type { Site } from "../model/site-model.ts";
import { gustOf, speedOf } from "../review/summaries.ts";
import { takeOff, withBallast } from "../take-off/take-off.ts";
import type { Design } from "./design/design.ts";
import type { PreparedShells } from "./design/prepared-shell.ts";

/** A design in numbers: steel at the middle of its tolerance, N; its lowest working gust, m/s, by the quick forms. */
export interface QuickDesign {
  readonly house: House;
  readonly steel: number;
  readonly gust: number;
}

const carries = ({ rail }: House, { bearing }: Site, weight: number): boolean =>
  weight <= 2 * rail.width * rail.length * bearing;

/** One design, quickly; null where it cannot be computed or the ground does not carry it. */
export function quickDesign(
  shells: PreparedShells,
  design: Design,
  site: Site,
  links: Pick<QuickLinks, "limit">,
): QuickDesign | null {
  const shell = shells.of(design);
  if (!shell) return null;
  const house = shells.house(shell, design);
  const weighed = takeOff(house);
  if (!carries(house, site, withBallast(weighed.high, house).W)) return null;
  const whole = shell.stability.lowest(weighed, design.layout.rated).limit;
  const limit = Math.min(whole, links.limit(shell.evaluation, house, weighed));
  return {
    house,
    steel: mean(steelWeight(house, weighed)),
    gust: gustOf(speedOf(shell.evaluation, limit)),
  };
}
