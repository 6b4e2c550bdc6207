import { type Chapter, judged, type Measure, taken } from "@hoopstay/core";
import { classValues } from "./class-values.ts";
import type { Clay, Sand, Soil } from "./soil.ts";

const entered = judged("an engineer's, as entered in the site file");

/** The values of the ground that a theory starts from: those of its class, or an engineer's. */
export function soilSteps(values: Sand | Clay, soil: Soil, chapter: Chapter): void {
  const [origin, of, citation] =
    soil.basis === "theory"
      ? ["as entered", "", entered]
      : ["read from the table", `, class ${soil.soilClass}`, classValues.citation];
  const show = (symbol: string, name: string, value: number, measure: Measure) =>
    chapter.work(
      taken(origin, `soil-${symbol}`, symbol, `${name}${of}`, value, measure, citation),
      [],
    );
  if (values.likeness === "sand") show("phi", "friction angle", values.frictionAngle, "angle");
  else show("c_g", "undrained strength", values.shearStrength, "pressure");
  show("gamma", "weight of the soil, per metre of depth", values.unitWeight, "unit-weight");
}
