import { derived, formula } from "@hoopstay/core";

const zoneArguments = [
  ["p", "pressure toward the surface", "pressure"],
  ["l", "length of the zone along the house", "length"],
] as const;

const closedForm = derived("uniform normal pressure on a curve: only its end points count");

/** Downwind force of a uniform normal pressure on a curve from A to B. */
export const zoneDrag = formula({
  id: "zone-drag",
  symbol: "F_h",
  name: "downwind force of the zone",
  measure: "force",
  arguments: [
    ...zoneArguments,
    ["z_A", "height where the zone begins", "length"],
    ["z_B", "height where the zone ends", "length"],
  ],
  expression: "p * l * (z_B - z_A)",
  citation: closedForm,
  evaluate: (p, l, zA, zB) => p * l * (zB - zA),
});

/** Upward force of a uniform normal pressure on a curve from A to B. */
export const zoneUplift = formula({
  id: "zone-uplift",
  symbol: "F_v",
  name: "upward force of the zone",
  measure: "force",
  arguments: [
    ...zoneArguments,
    ["x_A", "place across where the zone begins", "length"],
    ["x_B", "place across where the zone ends", "length"],
  ],
  expression: "-p * l * (x_B - x_A)",
  citation: closedForm,
  evaluate: (p, l, xA, xB) => -p * l * (xB - xA),
});

/** Moment about the origin of the horizontal part, positive where it tips the house downwind. */
export const zoneDragMoment = formula({
  id: "zone-drag-moment",
  symbol: "M_h",
  name: "tipping moment about the middle of the house, horizontal part",
  measure: "moment",
  arguments: [
    ...zoneArguments,
    ["z_A", "height where the zone begins", "length"],
    ["z_B", "height where the zone ends", "length"],
  ],
  expression: "p * l * (z_B^2 - z_A^2) / 2",
  citation: closedForm,
  evaluate: (p, l, zA, zB) => (p * l * (zB * zB - zA * zA)) / 2,
});

/** Moment about the origin of the vertical part, positive where it tips the house downwind. */
export const zoneUpliftMoment = formula({
  id: "zone-uplift-moment",
  symbol: "M_v",
  name: "tipping moment about the middle of the house, vertical part",
  measure: "moment",
  arguments: [
    ...zoneArguments,
    ["x_A", "place across where the zone begins", "length"],
    ["x_B", "place across where the zone ends", "length"],
  ],
  expression: "p * l * (x_B^2 - x_A^2) / 2",
  citation: closedForm,
  evaluate: (p, l, xA, xB) => (p * l * (xB * xB - xA * xA)) / 2,
});
