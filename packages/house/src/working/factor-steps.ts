import { type Chapter, type Citation, judged, type Measure, taken } from "@hoopstay/core";
import { combinationCitations, combinations } from "@hoopstay/stability";
import type { Site } from "../model/site-model.ts";

const entered = judged("as entered in the site file");

/** What the checks take from the ground and from their combination, each with its source. */
export function factorSteps(chapter: Chapter, site: Site): void {
  const { combination: id, slope } = site;
  const show = (
    symbol: string,
    name: string,
    value: number,
    citation: Citation,
    measure: Measure = "ratio",
    origin = "as its source has it",
  ) => chapter.work(taken(origin, `given-${symbol}`, symbol, name, value, measure, citation), []);
  show("mu", "low friction on this ground", site.friction, site.frictionCitation);
  show("q_allow", "bearing of this ground", site.bearing, site.bearingCitation, "pressure");
  const factors = combinations.find((one) => one.id === id);
  if (factors) {
    show("gamma_D", `${id} factor on weight that holds`, factors.dead, combinationCitations[id]);
    show("gamma_W", `${id} factor on wind`, factors.wind, combinationCitations[id]);
    show("gamma_T", `${id} factor on pulls`, factors.anchor, combinationCitations.anchor);
    const slides = `${id} factor on weight that slides`;
    if (slope) show("gamma_S", slides, factors.slope, combinationCitations.slope);
  }
  if (!slope) return;
  show("s", "slope of the ground", slope.angle, entered, "angle", "entered");
  slope.downhill?.forEach((part, at) => {
    const [axis, toward] = at === 0 ? ["x", "right"] : ["y", "front"];
    show(`d_${axis}`, `downhill to the ${toward}`, part, entered, "ratio", "by compass points");
  });
}
