import { taken } from "@hoopstay/core";
import { requireLength } from "../common/require.ts";
import { connectionFactors, limitState } from "../common/resistance-factors.ts";
import { type ConnectionNote, type LimitState, type NotCovered, note } from "../common/strength.ts";
import { unprinted, type Worksheet } from "../common/worksheet.ts";
import {
  boltArea,
  boltShearFormula,
  boltTensionFormula,
  longGripFactor,
  reducedBoltStress,
  shearStressThreadsExcluded,
  shearStressThreadsIncluded,
  threadedTensileStress,
} from "./bolt-formulas.ts";
import { type BoltGrade, boltGradeRows, isSizeOf, worthOfRow } from "./bolt-grades.ts";

export interface Bolt {
  /** null where it is unknown: the weakest of the table. */
  readonly grade: BoltGrade | null;
  /** Of the unthreaded shank, m. */
  readonly diameter: number;
  /** `unknown` counts as in the shear plane, and so does any of an unknown grade. */
  readonly threads: "in the shear plane" | "excluded" | "unknown";
  /** Material between head and nut, m. */
  readonly grip: number;
  /** Two where the bolt passes right through an outer and an inner tube. */
  readonly planes: 1 | 2;
}

/** What a bolt can take, and the stresses it comes from (Pa, m2). */
export interface BoltStrength {
  readonly covered: true;
  readonly grade: BoltGrade;
  readonly area: number;
  readonly planes: 1 | 2;
  readonly tensileStress: number;
  readonly shearStress: number;
  /** N, all shear planes. */
  readonly shear: LimitState;
  /** N. */
  readonly tension: LimitState;
  readonly assumed: readonly ConnectionNote[];
}

/**
 * Strength of a bolt in shear and in tension by AISC 360-22, J3. SAE and ISO bolts count as threaded
 * parts of their tensile strength [judgement: they are not listed fasteners].
 *
 * Left out: bending of the bolt in a loose sleeve, prying, slip, reversing load.
 *
 * @param bolt m
 * @returns `covered: false` for a diameter its grade is not made in, or an A307 grip too long
 * @throws Refusal `not-positive`, `out-of-range`
 */
export function boltStrength(bolt: Bolt, sheet: Worksheet = unprinted): BoltStrength | NotCovered {
  requireLength(bolt.diameter, "a bolt diameter");
  requireLength(bolt.grip, "a grip");
  const assumed: ConnectionNote[] = [];
  const grade = bolt.grade ?? weakest(bolt);
  const threads = bolt.grade === null || bolt.threads === "unknown" ? inPlane : bolt.threads;
  if (bolt.grade === null) {
    const words = `bolt grade unknown: counted as ${grade}, the weakest of the table; safe side`;
    assumed.push(note("bolt-grade", words));
  }
  if (threads !== bolt.threads) {
    assumed.push(note("bolt-threads", "threads taken to lie in the shear plane; safe side"));
  }
  if (!isSizeOf(grade, bolt.diameter)) {
    const reason = `a bolt of grade ${grade} is not listed in this diameter`;
    return { covered: false, id: "bolt-size", reason, mend: "Check the grade and the diameter." };
  }
  if (grade === "A307" && !(longGripFactor.evaluate(bolt.grip, bolt.diameter) > 0)) {
    const reason = "the grip is too long for an A307 bolt: its reduction leaves nothing";
    return { covered: false, id: "bolt-grip", reason, mend: "Use a stronger grade." };
  }
  const [tensileStress, shearStress] = stresses(grade, { ...bolt, threads }, sheet);
  const area = sheet.work(boltArea, [bolt.diameter]);
  const { bolt: factors } = connectionFactors;
  const { planes } = bolt;
  const sheared = sheet.work(boltShearFormula, [planes, shearStress, area]);
  const pulled = sheet.work(boltTensionFormula, [tensileStress, area]);
  return {
    covered: true,
    grade,
    area,
    planes,
    tensileStress,
    shearStress,
    shear: limitState(sheet, ["bolt-shear", "shear of the bolt"], "force", sheared, factors),
    tension: limitState(sheet, ["bolt-tension", "tension of the bolt"], "force", pulled, factors),
    assumed,
  };
}

const inPlane = "in the shear plane";

/**
 * A307 over a long grip may be weaker than 4.6, which is otherwise the weakest of the table. With
 * threads in the shear plane the one is so in shear and in tension alike; with threads excluded the
 * one would be weaker in shear, the other in tension.
 */
function weakest(bolt: Bolt): BoltGrade {
  const shearOf = (grade: BoltGrade) =>
    stresses(grade, { ...bolt, threads: inPlane }, unprinted)[1];
  return isSizeOf("A307", bolt.diameter) && shearOf("A307") < shearOf("ISO 4.6")
    ? "A307"
    : "ISO 4.6";
}

function stresses(
  grade: BoltGrade,
  { diameter, grip, threads }: Bolt,
  sheet: Worksheet,
): readonly [tension: number, shear: number] {
  const row = boltGradeRows[grade];
  const worth = worthOfRow(row);
  const given = (symbol: string, name: string, value: number) =>
    sheet.work(
      taken(
        "read from its source",
        `bolt-${symbol}`,
        symbol,
        `${name}, ${grade}`,
        value * worth,
        "pressure",
        row.strength,
      ),
      [],
    );
  const excluded = threads === "excluded";
  if (row.printed === undefined) {
    const tensile = given("F_u", "tensile strength of the bolt", row.tensile ?? Number.NaN);
    const shear = excluded ? shearStressThreadsExcluded : shearStressThreadsIncluded;
    return [sheet.work(threadedTensileStress, [tensile]), sheet.work(shear, [tensile])];
  }
  const { fnt, included } = row.printed;
  const shear = excluded ? row.printed.excluded : included;
  const table = [
    given("F_nt", "nominal tensile stress", fnt),
    given("F_nv", "nominal shear stress", shear),
  ] as const;
  if (grade !== "A307") return table;
  const kept = sheet.work(longGripFactor, [grip, diameter]);
  const keep = (stress: number, symbol: string) =>
    sheet.work(reducedBoltStress, [kept, stress], { symbol });
  return [keep(table[0], "F_nt"), keep(table[1], "F_nv")];
}
