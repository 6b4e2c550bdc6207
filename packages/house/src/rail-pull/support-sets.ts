import { type Factors, factorise, solve } from "./dense.ts";
import type { LaidLoad } from "./rail-loads.ts";
import type { RailCompliance } from "./rail-on-ground.ts";
import type { StationForces } from "./rail-shapes.ts";

/** Parts of supports in a set. */
export const idle = 0;
export const holding = 1;
export const giving = 2;

/** Loads after which a set is worth knowing column by column. */
const oftenEnough = 6;

/** One set of supports at work, and how the rail lies on it: linear in the load. */
export class SupportSet {
  private readonly known: (Float64Array | undefined)[] = [];
  private times = 0;

  /** @param given deflections the ground makes where it gives, before the set's supports change */
  constructor(
    readonly parts: Uint8Array,
    private readonly system: SupportSystem,
    private readonly differs: readonly number[],
    private readonly factors: Factors,
    private readonly given: Float64Array | null,
  ) {}

  /** Deflection at every support under a load, m. */
  lay({ parts, roof, roofPart, dead }: LaidLoad, lies: Float64Array): void {
    this.times += 1;
    const often = this.times > oftenEnough;
    const { system } = this;
    const column = (at: number): Float64Array => (often ? this.under(at) : system.column(at));
    const [even, turning, front, back] = parts;
    const [a, b, c, d] = [column(0), column(1), column(2), column(3)];
    const own = column(dead);
    const zones = roof >= 0 ? column(roof) : own;
    const zoned = roof >= 0 ? roofPart : 0;
    for (let i = 0; i < lies.length; i += 1) {
      lies[i] =
        even * (a[i] as number) +
        turning * (b[i] as number) +
        front * (c[i] as number) +
        back * (d[i] as number) +
        zoned * (zones[i] as number) +
        (own[i] as number);
    }
    if (often) {
      if (this.given) add(lies, this.under(givenAt), 1);
      return;
    }
    if (this.given) add(lies, this.given, 1);
    correct(lies, system.compliance, this.differs, this.factors);
  }

  /** Deflections under one of a column, m; of what the ground gives at `givenAt`. */
  private under(column: number): Float64Array {
    let found = this.known[column + 1];
    if (!found) {
      const before = column === givenAt ? this.given : this.system.column(column);
      found = (before as Float64Array).slice();
      correct(found, this.system.compliance, this.differs, this.factors);
      this.known[column + 1] = found;
    }
    return found;
  }
}

const givenAt = -1;

/** The rail with all anchors at work and no ground. */
interface SupportSystem {
  readonly compliance: readonly Float64Array[];
  readonly column: (at: number) => Float64Array;
}

/**
 * The sets of supports of one anchored rail, and what the rail does on each: linear in the load, so
 * a load case is a sum of few columns. Each set differs from the one where all anchors hold and no
 * ground does by few supports, and is found from that by solving for those alone.
 */
export class SupportSets {
  readonly stiffness: Float64Array;
  readonly cap: Float64Array;
  readonly ground: number;
  readonly size: number;
  private readonly sets: Shelf = new Map();
  private readonly system: SupportSystem | null;

  /** @param anchorStiffness against a lift of the rail, N/m */
  constructor(
    from: RailCompliance,
    loads: readonly StationForces[],
    anchorStiffness: readonly number[],
  ) {
    const { on, size, columns } = from;
    this.size = size;
    this.ground = on.stations.length;
    this.stiffness = Float64Array.from([
      ...on.ground.map(({ stiffness }) => stiffness as number),
      ...anchorStiffness,
    ]);
    this.cap = Float64Array.from(on.ground, ({ cap }) => cap as number);
    const all = Array.from({ length: size }, (_, i) => i);
    const changes = this.stiffness.map((k, i) => (i < this.ground ? k : -k));
    const factors = anchorStiffness.length < 2 ? null : changed(columns, all, changes);
    this.system = factors
      ? systemOf(
          columns.map((column) => {
            const after = column.slice();
            correct(after, columns, all, factors);
            return after;
          }),
          loads,
        )
      : null;
  }

  /** The set with the given parts, or null where it does not hold the rail. */
  of(parts: Uint8Array): SupportSet | null {
    if (!this.system) return null;
    let shelf = this.sets;
    let at = 0;
    for (; at + chunk < this.size; at += chunk) {
      const key = keyOf(parts, at, at + chunk);
      let next = shelf.get(key);
      if (!(next instanceof Map)) {
        next = new Map();
        shelf.set(key, next);
      }
      shelf = next;
    }
    const key = keyOf(parts, at, this.size);
    let found = shelf.get(key);
    if (found === undefined || found instanceof Map) {
      found = this.make(parts.slice(), this.system);
      shelf.set(key, found);
    }
    return found;
  }

  private make(parts: Uint8Array, system: SupportSystem): SupportSet | null {
    const differs: number[] = [];
    const changes: number[] = [];
    let given: Float64Array | null = null;
    for (let i = 0; i < this.size; i += 1) {
      const part = parts[i] as number;
      if (i < this.ground ? part === holding : part === idle) {
        differs.push(i);
        changes.push((i < this.ground ? -1 : 1) * (this.stiffness[i] as number));
      }
      if (part !== giving) continue;
      given ??= new Float64Array(this.size);
      add(given, system.compliance[i] as Float64Array, this.cap[i] as number);
    }
    const factors = changed(system.compliance, differs, changes);
    return factors && new SupportSet(parts, system, differs, factors, given);
  }
}

/** Sets by their parts, as numbers of base three, so many supports at a time. */
type Shelf = Map<number, Shelf | SupportSet | null>;
const chunk = 32;

function keyOf(parts: Uint8Array, from: number, to: number): number {
  let key = 0;
  for (let i = from; i < to; i += 1) key = 3 * key + (parts[i] as number);
  return key;
}

function systemOf(
  compliance: readonly Float64Array[],
  loads: readonly StationForces[],
): SupportSystem {
  const known: (Float64Array | undefined)[] = [];
  return {
    compliance,
    column: (at) => {
      let found = known[at];
      if (!found) {
        found = new Float64Array(compliance.length);
        const forces = loads[at] as StationForces;
        for (let station = 0; station < forces.length; station += 1) {
          add(found, compliance[station] as Float64Array, forces[station] as number);
        }
        known[at] = found;
      }
      return found;
    },
  };
}

function add(to: Float64Array, column: Float64Array, times: number): void {
  for (let i = 0; i < to.length; i += 1) to[i] = (to[i] as number) + times * (column[i] as number);
}

/**
 * For supports that change by a stiffness: force e of each on top of the system before is
 * `changes` times its deflection, and the deflections are those before plus those of e.
 */
function changed(
  compliance: readonly Float64Array[],
  differs: readonly number[],
  changes: ArrayLike<number>,
): Factors | null {
  const size = differs.length;
  const rows = new Float64Array(size * size);
  for (let column = 0; column < size; column += 1) {
    const under = compliance[differs[column] as number] as Float64Array;
    for (let row = 0; row < size; row += 1) {
      rows[row * size + column] = -(under[differs[row] as number] as number);
    }
    rows[column * size + column] =
      (rows[column * size + column] as number) + 1 / (changes[column] as number);
  }
  return factorise(rows, size);
}

const noForces = new Float64Array(0);
let before = noForces;
let forces = noForces;

/** Deflections of the system become those of the changed one, in place. */
function correct(
  lies: Float64Array,
  compliance: readonly Float64Array[],
  differs: readonly number[],
  factors: Factors,
): void {
  const size = differs.length;
  if (before.length < size) {
    before = new Float64Array(2 * size);
    forces = new Float64Array(2 * size);
  }
  for (let at = 0; at < size; at += 1) before[at] = lies[differs[at] as number] as number;
  solve(factors, before, forces);
  for (let at = 0; at < size; at += 1) {
    add(lies, compliance[differs[at] as number] as Float64Array, forces[at] as number);
  }
}
