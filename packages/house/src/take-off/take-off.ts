import { weightPerLength } from "@hoopstay/section";
import type { Weight } from "@hoopstay/stability";
import type { House } from "../model/house-model.ts";
import type { Belongs, Part } from "../model/part.ts";

/** One line of the take-off: weights in N, centre in m. */
export interface TakeOffItem {
  readonly what: string;
  readonly count: number;
  /** Length or area of each, m or m2; absent for a lump. */
  readonly amount: number | null;
  readonly unit: "length" | "area" | null;
  readonly unitLow: number | null;
  readonly unitHigh: number | null;
  readonly low: number;
  readonly high: number;
  readonly belongs: Belongs | null;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface TakeOff {
  readonly items: readonly TakeOffItem[];
  readonly low: Weight;
  readonly high: Weight;
  /** Where a measured weight stands in for the items. */
  readonly measured: boolean;
}

function itemOf(part: Exclude<Part, { kind: "share" }>): TakeOffItem {
  const { what, x, y, z } = part;
  if (part.kind === "lump") {
    const none = { amount: null, unit: null, unitLow: null, unitHigh: null };
    const belongs = part.belongs ?? null;
    return { what, count: 1, ...none, low: part.low, high: part.high, belongs, x, y, z };
  }
  const bar = part.kind === "bar";
  const { low, high } = bar ? weightPerLength(part.tube) : part;
  const amount = bar ? part.length : part.amount;
  const whole = part.count * amount;
  return {
    what,
    count: part.count,
    amount,
    unit: bar ? "length" : part.unit,
    unitLow: low,
    unitHigh: high,
    low: whole * low,
    high: whole * high,
    belongs: bar ? null : (part.belongs ?? null),
    x,
    y,
    z,
  };
}

function centreOf(items: readonly TakeOffItem[], name: "low" | "high"): Weight {
  let [W, x, y, z] = [0, 0, 0, 0];
  for (const item of items) {
    const weight = item[name];
    W += weight;
    x += weight * item.x;
    y += weight * item.y;
    z += weight * item.z;
  }
  return { name, W, x: x / W, y: y / W, z: z / W };
}

/**
 * Weight and centre of every item, low and high, N and m. A measured weight replaces the sum and,
 * where its centre was given, the centre; otherwise the centre stays the take-off's.
 */
export function takeOff(house: House): TakeOff {
  const items: TakeOffItem[] = [];
  for (const part of house.parts) {
    if (part.kind !== "share") {
      items.push(itemOf(part));
      continue;
    }
    const steel = items.slice();
    const [low, high] = [centreOf(steel, "low"), centreOf(steel, "high")];
    items.push({
      what: part.what,
      count: 1,
      amount: null,
      unit: null,
      unitLow: null,
      unitHigh: null,
      low: part.low * low.W,
      high: part.high * high.W,
      belongs: null,
      x: high.x,
      y: high.y,
      z: high.z,
    });
  }
  const { measured } = house;
  const [low, high] = [centreOf(items, "low"), centreOf(items, "high")];
  if (!measured) return { items, low, high, measured: false };
  const place = (weight: Weight, W: number): Weight => {
    if (!measured.at) return { ...weight, W };
    const { x, y, z } = measured.at;
    return { name: weight.name, W, x, y, z: Number.isNaN(z) ? weight.z : z };
  };
  return {
    items,
    low: place(low, measured.low),
    high: place(high, measured.high),
    measured: true,
  };
}

/** A weight with the fixed ballast of the house added where it sits. */
export function withBallast(weight: Weight, house: House): Weight {
  let { W, x, y, z } = weight;
  for (const block of house.ballast) {
    if (!block.fixed) continue;
    const sum = W + block.weight;
    x = (W * x + block.weight * block.x) / sum;
    y = (W * y + block.weight * block.y) / sum;
    z = (W * z + block.weight * block.z) / sum;
    W = sum;
  }
  return { name: weight.name, W, x, y, z };
}

/**
 * The weights of a state. What belongs to a missing end wall or to stripped film holds nothing down:
 * it leaves the low weight and stays in the high one. A measured weight is whole in every state.
 */
export function weightsOf(takenOff: TakeOff, gone: readonly Belongs[]): [Weight, Weight] {
  const { items, low, high, measured } = takenOff;
  if (measured || gone.length === 0) return [low, high];
  const left = items.filter(({ belongs }) => belongs === null || !gone.includes(belongs));
  return [centreOf(left, "low"), high];
}
