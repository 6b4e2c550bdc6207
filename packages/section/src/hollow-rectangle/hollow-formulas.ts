import { derived, formula, type Measure } from "@hoopstay/core";

const difference = <Kind extends Measure>(id: string, symbol: string, name: string, kind: Kind) =>
  formula({
    id,
    symbol,
    name,
    measure: kind,
    arguments: [
      [`${symbol}_o`, `outer shape, ${name}`, kind],
      [`${symbol}_i`, `inner shape, ${name}`, kind],
    ],
    expression: `${symbol}_o - ${symbol}_i`,
    citation: derived("hollow section: outer shape less inner shape"),
    evaluate: (outer, inner) => outer - inner,
  });

export const hollowArea = difference("hollow-area", "A", "area", "area");

export const hollowSecondMoment = difference(
  "hollow-second-moment",
  "I",
  "second moment of area",
  "second-moment",
);

export const hollowPlasticModulus = difference(
  "hollow-plastic-modulus",
  "Z",
  "plastic section modulus",
  "section-modulus",
);

export const hollowElasticModulus = formula({
  id: "hollow-elastic-modulus",
  symbol: "S",
  name: "elastic section modulus of a rectangular tube",
  measure: "section-modulus",
  arguments: [
    ["I", "second moment of area", "second-moment"],
    ["H", "depth", "length"],
  ],
  expression: "2 * I / H",
  citation: derived("second moment over the distance of the extreme fibre"),
  evaluate: (I, H) => (2 * I) / H,
});
