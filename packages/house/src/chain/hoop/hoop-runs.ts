import { type FeetSupport, fixedFeet, HoopStations } from "@hoopstay/frame";
import { hoopLineLoad, hoopTributaries } from "@hoopstay/load";
import type { House } from "../../model/house-model.ts";
import type { Evaluation } from "../../review/evaluate.ts";
import { framedHoop, hasTies } from "./hoop-frame.ts";
import { hoopsOnFeet } from "./hoop-on-feet.ts";
import { type HoopOutline, hoopOutline } from "./hoop-outline.ts";
import type { HoopRun } from "./hoop-run.ts";
import { type HoopPlace, hoopPlacesToCheck } from "./hoop-stations.ts";
import { hoopsOnRails, type RailedRun } from "./hoops-on-rails.ts";

/** The hoops of a house by every way of computing them. */
export interface HoopRuns {
  readonly outline: HoopOutline;
  readonly places: readonly HoopPlace[];
  readonly runs: readonly HoopRun[];
  /** Runs of all hoops together on their rails; none without cross members. */
  readonly railed: readonly RailedRun[];
}

/** The right foot's rail may move outward; both stubs stand upright. */
const oneFootFree: FeetSupport = [
  Number.POSITIVE_INFINITY,
  Number.POSITIVE_INFINITY,
  Number.POSITIVE_INFINITY,
  0,
  Number.POSITIVE_INFINITY,
  Number.POSITIVE_INFINITY,
];

/** How the feet of a hoop stand that is computed by itself. */
export const feetOnRails = ({ links }: House): { words: string; support: FeetSupport } =>
  links.crossMembers !== null
    ? { words: "feet pinned at the bolts", support: fixedFeet }
    : { words: "one foot free to spread, no cross members", support: oneFootFree };

/** @param hoopPlaces places of the hoops along the house, back to front, m */
export function hoopRuns(
  { house, shell }: Pick<Evaluation, "house" | "shell">,
  hoopPlaces: readonly number[],
): HoopRuns {
  const outline = hoopOutline(house, shell);
  const places = hoopPlacesToCheck(house, outline);
  const { span, hoopDiameter } = house.lines;
  const lineLoads = hoopTributaries(shell, hoopPlaces).map(({ from, to }) =>
    hoopLineLoad.evaluate(1, to - from, span, hoopDiameter),
  );
  const cross = house.links.crossMembers !== null;
  const { words: feet, support } = feetOnRails(house);
  const runs: HoopRun[] = [];
  const railed: RailedRun[] = [];
  for (const tied of hasTies(house) ? [false, true] : [false]) {
    const ties = hasTies(house) ? (tied ? ", with ties" : ", without ties") : "";
    const about = (words: string) => ({ words: `${words}${ties}`, bound: false, tied });
    const hinged = framedHoop(house, outline, { tied, hinged: true });
    const stationsOf = ({ frame }: typeof hinged) =>
      new HoopStations(
        frame,
        places.map(({ s }) => s),
      );
    runs.push(hoopsOnFeet(about(feet), hinged, stationsOf(hinged), support, lineLoads));
    const through = framedHoop(house, outline, { tied, hinged: false });
    const stations = stationsOf(through);
    if (cross) {
      const run = hoopsOnRails(
        about("all hoops on the bending rails"),
        house,
        through,
        stations,
        hoopPlaces,
        lineLoads,
      );
      runs.push(run);
      railed.push(run);
    }
    const bound = { ...about("feet fixed"), bound: true };
    runs.push(hoopsOnFeet(bound, through, stations, fixedFeet, lineLoads));
  }
  return { outline, places, runs, railed };
}
