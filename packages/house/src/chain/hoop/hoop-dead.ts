import type { House } from "../../model/house-model.ts";
import type { TakeOff } from "../../take-off/take-off.ts";

/** Items of the take-off that hang on the hoops above the stubs. */
const onHoops = [
  "hoops",
  "ridge",
  "purlins",
  "collar ties",
  "truss bars",
  "knee braces",
  "hip boards",
  "film",
];

/** Weight of one hoop and what hangs on it, N per metre of hoop; film may be off. */
export interface HoopDead {
  readonly low: number;
  readonly lowWithoutFilm: number;
  readonly high: number;
}

/** All that hangs on the hoops, shared evenly by them and spread along each. */
export function hoopDead({ lines }: House, { items }: TakeOff, length: number): HoopDead {
  const hung = items.filter(({ what }) => onHoops.includes(what));
  const per = lines.hoopCount * length;
  const sum = (weight: (item: (typeof hung)[number]) => number) =>
    hung.reduce((total, item) => total + weight(item), 0) / per;
  return {
    low: sum(({ low }) => low),
    lowWithoutFilm: sum(({ low, belongs }) => (belongs === "film" ? 0 : low)),
    high: sum(({ high }) => high),
  };
}
