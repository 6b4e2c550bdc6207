import { cite, formula } from "@hoopstay/core";

/** Wind area by which the coefficients of one component fall; not the area that loads it. */
export const effectiveArea = formula({
  id: "effective-area",
  symbol: "A",
  name: "effective wind area of a component",
  measure: "area",
  arguments: [
    ["l", "span of the component", "length"],
    ["w", "width that loads it", "length"],
  ],
  expression: "l * max(w, l / 3)",
  citation: cite("asce-7-16", "26.2, effective wind area", "memory"),
  evaluate: (span, width) => span * Math.max(width, span / 3),
});
