import { asPrinted, derived, formula } from "@hoopstay/core";

const depth = ["H", "depth", "length"] as const;
const width = ["B", "width", "length"] as const;
const radius = ["R", "corner radius", "length"] as const;

/** Of the corner that a quarter circle of radius 1 cuts off: area, centroid from the sides, I. */
const cornerArea = 1 - Math.PI / 4;
const cornerCentroid = (10 - 3 * Math.PI) / (12 - 3 * Math.PI);
const cornerSecondMoment = 1 / 3 - Math.PI / 16 - 1 / (3 * (12 - 3 * Math.PI));

const corners = "rectangle less four corners, each a square less a quarter circle";

export const roundedRectangleArea = formula({
  id: "rounded-rectangle-area",
  symbol: "A_s",
  name: "area of a solid rectangle with rounded corners",
  measure: "area",
  arguments: [depth, width, radius],
  expression: `H * B - ${asPrinted(4 * cornerArea)} * R^2`,
  citation: derived(corners),
  range: "R at most half the shorter side",
  evaluate: (H, B, R) => H * B - 4 * cornerArea * R * R,
});

export const roundedRectangleSecondMoment = formula({
  id: "rounded-rectangle-second-moment",
  symbol: "I_s",
  name: "second moment of area of a solid rectangle with rounded corners",
  measure: "second-moment",
  arguments: [depth, width, radius],
  expression:
    `B * H^3 / 12 - ${asPrinted(4 * cornerArea)} * R^2 * (H / 2 - ${asPrinted(cornerCentroid)} * R)^2` +
    ` - ${asPrinted(4 * cornerSecondMoment)} * R^4`,
  citation: derived(corners),
  range: "R at most half the shorter side",
  evaluate: (H, B, R) => {
    const square = R * R;
    const arm = H / 2 - cornerCentroid * R;
    return (
      (B * H * H * H) / 12 -
      4 * (cornerArea * square * arm * arm + cornerSecondMoment * square * square)
    );
  },
});

export const roundedRectanglePlasticModulus = formula({
  id: "rounded-rectangle-plastic-modulus",
  symbol: "Z_s",
  name: "plastic modulus of a solid rectangle with rounded corners",
  measure: "section-modulus",
  arguments: [depth, width, radius],
  expression: `B * H^2 / 4 - ${asPrinted(4 * cornerArea)} * R^2 * (H / 2 - ${asPrinted(cornerCentroid)} * R)`,
  citation: derived(corners),
  range: "R at most half the shorter side",
  evaluate: (H, B, R) => (B * H * H) / 4 - 4 * cornerArea * R * R * (H / 2 - cornerCentroid * R),
});
