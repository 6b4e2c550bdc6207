import { Refusal } from "@hoopstay/core";
import type { BentRail } from "./bent-rail.ts";
import { type Contact, contact } from "./contact.ts";
import { followPath } from "./contact-path.ts";
import { effort } from "./margins.ts";
import type { Rail, RailOutcome, RailSupport, SupportPart } from "./rail.ts";
import { checkPlaces, checkRail } from "./rail-input.ts";
import { type RailNodes, railNodes } from "./rail-nodes.ts";
import { settleAtOnce } from "./settle.ts";
import { giving, holding, startSet } from "./support-set.ts";
import { supportTable } from "./support-table.ts";
import { checkedOutcome } from "./verify.ts";

const parts: readonly SupportPart[] = ["idle", "holding", "giving"];

/**
 * A rail with its supports and the places where it may be loaded, prepared once and solved for many
 * load cases. Each solve starts from the set of supports that the one before ended with; the result
 * does not depend on it beyond rounding. All arrays are reused: copy what must outlive the next
 * solve. After an outcome other than held they are full of NaN.
 *
 * @throws Refusal for a rail, a support or a place outside what can be computed
 */
export class RailSolver {
  /** Force of each support on the rail, N, up positive: an anchor's tension is its negative. */
  readonly reactions: Float64Array;
  /** Deflection at each support, m, up positive. */
  readonly deflections: Float64Array;
  /** Shape, moments and shears. */
  readonly bent: BentRail;
  private readonly nodes: RailNodes;
  private readonly contact: Contact;

  constructor(
    readonly rail: Rail,
    readonly places: readonly number[],
    readonly supports: readonly RailSupport[],
  ) {
    checkRail(rail, supports);
    checkPlaces(rail, places);
    this.nodes = railNodes(rail, places, supports);
    const table = supportTable(supports, this.nodes.ofSupport);
    this.contact = contact(this.nodes.x, rail.stiffness, table);
    this.bent = this.contact.bent;
    this.reactions = new Float64Array(supports.length);
    this.deflections = new Float64Array(supports.length);
  }

  /**
   * Solves one load case.
   *
   * @param uniform load over the whole length, N/m, up positive
   * @param forces force at each place, N, up positive
   * @param couples couple at each place, N m, counter-clockwise positive
   * @throws Refusal where a load is not a finite number
   */
  solve(uniform: number, forces: ArrayLike<number>, couples?: ArrayLike<number>): RailOutcome {
    this.load(uniform, forces, couples);
    const settled = settleAtOnce(this.contact);
    let outcome: RailOutcome = settled ? "held" : followPath(this.contact);
    if (outcome === "held") {
      this.share();
      outcome = checkedOutcome(this.contact, this.reactions);
    }
    if (outcome !== "held") this.forget();
    return outcome;
  }

  /** What each support does in the case solved last. */
  parts(): SupportPart[] {
    return Array.from(this.contact.set, (part) => parts[part] as SupportPart);
  }

  private load(
    uniform: number,
    forces: ArrayLike<number>,
    couples: ArrayLike<number> | undefined,
  ): void {
    const { space } = this.contact;
    const { ofPlace } = this.nodes;
    space.force.fill(0);
    space.couple.fill(0);
    space.uniform = uniform;
    let size = Math.abs(uniform) * this.rail.length;
    for (let i = 0; i < ofPlace.length; i += 1) {
      const node = ofPlace[i] as number;
      const force = forces[i] as number;
      const couple = couples === undefined ? 0 : (couples[i] as number);
      space.force[node] = (space.force[node] as number) + force;
      space.couple[node] = (space.couple[node] as number) + couple;
      size += Math.abs(force) + Math.abs(couple) / this.rail.length;
    }
    if (!Number.isFinite(size)) throw notFinite(size);
    this.contact.size = size;
  }

  /** Gives each support its force. Rounding below zero, above the cap and -0 are cut off. */
  private share(): void {
    const { table, set, bent } = this.contact;
    for (let i = 0; i < table.count; i += 1) {
      const [side, cap] = [table.side[i] as number, table.cap[i] as number];
      const deflection = bent.deflection[table.node[i] as number] as number;
      this.deflections[i] = deflection;
      if (side === 0) {
        this.reactions[i] =
          table.flexibility[i] === 0
            ? (bent.reaction[table.node[i] as number] as number)
            : -(table.stiffness[i] as number) * deflection;
      } else if (set[i] === holding) {
        const force = effort(this.contact, i, bent, 0);
        this.reactions[i] = side * Math.max(0, Math.min(force, cap)) + 0;
      } else {
        this.reactions[i] = set[i] === giving ? side * cap : 0;
      }
    }
  }

  private forget(): void {
    startSet(this.contact.table, this.contact.set);
    const { bent, reactions, deflections } = this;
    const { deflection, slope, moment, shear, reaction } = bent;
    for (const column of [deflection, slope, moment, shear, reaction, reactions, deflections]) {
      column.fill(Number.NaN);
    }
  }
}

const notFinite = (given: number): Refusal =>
  new Refusal([
    {
      code: "not-a-number",
      key: "loads",
      given: String(given),
      expected: "finite loads, one at each place",
      mend: "check the loads",
    },
  ]);
