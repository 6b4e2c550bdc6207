import { type Argument, constant, derived, type Formula, judged, Refusal } from "@hoopstay/core";
import { type Link, type LinkId, linkIds, workingLoadOf } from "./link.ts";

/** Allowable pull of the ground, N, and what is known of the links. */
export interface TetherChain {
  readonly ground: number;
  readonly links: Readonly<Partial<Record<LinkId, Link>>>;
}

export interface TetherCapacity {
  /** N along the tether. */
  readonly capacity: number;
  /** The weakest of what was given. */
  readonly governs: "ground" | LinkId;
  /** Links not given. They are part of the chain all the same. */
  readonly notChecked: readonly LinkId[];
  readonly formula: Formula;
  readonly inputs: readonly number[];
}

export const strengthOverAllowable = constant(
  "strength-over-allowable",
  "c_L",
  "what an anchor or link counts in LRFD over what it counts in ASD",
  1.5,
  "ratio",
  judged("phi T_n = 1.5 times the allowable pull; LRFD then limits at 0.9 of ASD, safe side"),
);

const names: Readonly<Record<"ground" | LinkId, string>> = {
  ground: "allowable pull of the ground",
  tether: "working load limit of the tether",
  eye: "working load limit of the eye",
  attachment: "working load limit of the attachment to the rail",
};

function lowestOf(parts: readonly ("ground" | LinkId)[]): Formula {
  const links: Argument[] = parts.map((part) => ({
    symbol: `T_${part}`,
    name: names[part],
    measure: "force",
  }));
  const lowest = links.length === 1 ? "T_ground" : `min(${links.map((a) => a.symbol).join(", ")})`;
  return {
    id: `capacity-along-tether-${parts.join("-")}`,
    symbol: "T_c",
    name: "capacity along the tether",
    measure: "force",
    arguments: [{ symbol: "c", name: "1 in ASD, 1.5 in LRFD", measure: "ratio" }, ...links],
    expression: `c * ${lowest}`,
    citation: derived("a chain holds as much as its weakest link"),
    evaluate: (factor, ...values) => (factor as number) * Math.min(...values),
  };
}

/**
 * Capacity along the tether: the least of the ground and the links given; in LRFD 1.5 times that.
 *
 * Left out: links that are not given; they are named in `notChecked`. Prying, wear and rust.
 *
 * @throws Refusal `not-positive` for ground without allowable pull; `key-missing` for a link given by
 *   its breaking load alone
 */
export function capacityAlongTether(
  { ground, links }: TetherChain,
  method: "ASD" | "LRFD",
): TetherCapacity {
  if (!(ground > 0 && Number.isFinite(ground))) {
    const expected = "an allowable pull of the ground above zero";
    const mend = "Rate the anchor first: by tests, by theory or by class of ground.";
    throw new Refusal([{ code: "not-positive", given: String(ground), expected, mend }]);
  }
  const loads: ["ground" | LinkId, number][] = [["ground", ground]];
  for (const id of linkIds) {
    const link = links[id];
    if (link) loads.push([id, workingLoadOf(id, link)]);
  }
  const formula = lowestOf(loads.map(([part]) => part));
  const inputs = [
    method === "LRFD" ? strengthOverAllowable.value : 1,
    ...loads.map(([, load]) => load),
  ];
  const [governs] = loads.reduce((least, one) => (one[1] < least[1] ? one : least));
  const notChecked = linkIds.filter((id) => links[id] === undefined);
  return { capacity: formula.evaluate(...inputs), governs, notChecked, formula, inputs };
}
