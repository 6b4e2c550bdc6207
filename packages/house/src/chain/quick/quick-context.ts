import { HoopStations } from "@hoopstay/frame";
import { hoopLineLoad, hoopTributaries } from "@hoopstay/load";
import { hoopPlaces } from "../../rail-pull/rail-shapes.ts";
import type { Evaluation } from "../../review/evaluate.ts";
import type { ChainCase } from "../chain-case.ts";
import type { ChainContext } from "../context.ts";
import { hoopAnswers } from "../hoop/hoop-answers.ts";
import { hoopDead } from "../hoop/hoop-dead.ts";
import { type FramedHoop, framedHoop } from "../hoop/hoop-frame.ts";
import { hoopsOnFeet } from "../hoop/hoop-on-feet.ts";
import { type HoopOutline, hoopOutline } from "../hoop/hoop-outline.ts";
import { feetOnRails } from "../hoop/hoop-runs.ts";
import { type HoopPlace, hoopPlacesToCheck } from "../hoop/hoop-stations.ts";

/** Rails that do not bend and that nothing ties down: what they add to other links is left out. */
const unbentRails: ChainContext["rails"] = {
  places: { left: [], right: [] },
  vertical: {
    places: { left: [], right: [] },
    anchors: { left: [], right: [] },
    exactly: () => null,
    nearly: () => null,
  },
  in: () => ({ exactly: () => null, nearly: () => null }),
};

/** What the hoops of houses have in common that differ in walls and anchors only. */
export interface QuickOutline {
  readonly outline: HoopOutline;
  readonly places: readonly HoopPlace[];
  readonly hoopPlaces: readonly number[];
  readonly cases: readonly ChainCase[];
  /** Line load of a coefficient of one on each hoop, m. */
  readonly lineLoads: readonly number[];
}

export function quickOutline(
  { house, shell }: Evaluation,
  cases: readonly ChainCase[],
): QuickOutline {
  const outline = hoopOutline(house, shell);
  const { lines } = house;
  const along = hoopPlaces(lines);
  return {
    outline,
    places: hoopPlacesToCheck(house, outline),
    hoopPlaces: along,
    cases,
    lineLoads: hoopTributaries(shell, along).map(({ from, to }) =>
      hoopLineLoad.evaluate(1, to - from, lines.span, lines.hoopDiameter),
    ),
  };
}

/** A hoop's frame with the places where it is looked at. */
export interface QuickFrame {
  readonly framed: FramedHoop;
  readonly stations: HoopStations;
}

export function quickFrame({ house }: Evaluation, { outline, places }: QuickOutline): QuickFrame {
  const framed = framedHoop(house, outline, { tied: false, hinged: true });
  const stations = new HoopStations(
    framed.frame,
    places.map(({ s }) => s),
  );
  return { framed, stations };
}

/**
 * The load path of a house with one run only, that of hoops which each stand for themselves without
 * ties, under some of its cases, on rails that do not bend: every row made of it is a row of the
 * whole load path, or asks less than that row does.
 */
export function quickContext(
  evaluation: Evaluation,
  { outline, places, hoopPlaces: along, cases, lineLoads }: QuickOutline,
  { framed, stations }: QuickFrame,
): ChainContext {
  const { house, takeOff } = evaluation;
  const { words, support } = feetOnRails(house);
  const about = { words, bound: false, tied: false };
  const run = hoopsOnFeet(about, framed, stations, support, lineLoads);
  const runs = { outline, places, runs: [run], railed: [] };
  return {
    evaluation,
    hoopPlaces: along,
    cases,
    runs,
    dead: hoopDead(house, takeOff, outline.line.length),
    answers: hoopAnswers(runs, cases, along.length),
    rails: unbentRails,
  };
}
