import { Chapter, type Step, sources } from "@hoopstay/core";
import { evaluateAgain } from "@hoopstay/core/second-evaluation";
import {
  archEffectiveLength,
  bendingStrength,
  eulerLoad,
  flangeHolesStrength,
  holedRoundStrength,
  interactionEnvelope,
  lumberStrength,
  type MemberStrength,
  memberSection,
  memberStrengths,
  momentAmplification,
  panelBendingStrength,
  torsionInteraction,
  workInteraction,
} from "@hoopstay/strength";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  anyLengths,
  anySection,
  anySteel,
  between,
  flatBar,
  roundSection,
  seed,
} from "./member-arbitrary.ts";
import { box, everyLength, grade50, round } from "./member-examples.ts";

/** Ids of the formulas seen, each step of which gave its value twice. */
const seen = new Set<string>();

function agree(steps: readonly Step[]): void {
  for (const step of steps) {
    const { second, agrees } = evaluateAgain(step);
    const words = `${step.formula.id}: ${step.formula.expression}, ${step.value} and ${second}`;
    expect(agrees, words).toBe(true);
    expect(step.formula.arguments).toHaveLength(step.inputs.length);
    expect(step.formula.citation.source in sources).toBe(true);
    seen.add(step.formula.id);
  }
}

const sheet = () => new Chapter("member", "a member");

const holds = <Values extends [unknown, ...unknown[]]>(law: fc.IProperty<Values>) =>
  fc.assert(law, { seed, numRuns: 400 });

const ways = [
  "tension",
  "compression",
  "momentX",
  "momentY",
  "shearX",
  "shearY",
  "torsion",
] as const;

describe("the working of a member", () => {
  test("every step gives its value twice, and the working computes what is computed unprinted", () => {
    holds(
      fc.property(anySection, anySteel, anyLengths, (section, steel, lengths) => {
        const chapter = sheet();
        const net = { area: 0.7 * section.area, shearLag: 0.9 };
        const printed = memberStrengths(section, steel, lengths, net, chapter);
        expect(printed).toEqual(memberStrengths(section, steel, lengths, net));
        agree(chapter.steps);
        const notesOf = (value: number) =>
          chapter.steps.filter((step) => step.value === value).map(({ note }) => note);
        for (const way of ways) {
          const strength: MemberStrength = printed[way];
          if (!strength.covered) continue;
          expect(notesOf(strength.ASD), way).toContain(strength.name);
          // Another limit state may have the lower design strength.
          expect(notesOf(strength.LRFD), way).toContainEqual(expect.stringMatching(/\w/));
        }
      }),
    );
  });

  test("webs that buckle in shear, sides that buckle in torsion", () => {
    for (const ratio of [70, 85, 100, 150]) {
      const chapter = sheet();
      const tube = box(0.3, 0.1, 0.3 / (ratio + 3));
      memberStrengths(tube, grade50, everyLength(1), null, chapter);
      agree(chapter.steps);
    }
  });

  test("the web of a rectangular tube is told apart from its flange", () => {
    const chapter = sheet();
    bendingStrength(box(0.1, 0.05, 0.003), "x", grade50, 1, chapter);
    const ratios = chapter.steps.filter(({ formula }) => formula.id === "flat-over-wall");
    expect(ratios.map(({ symbol, inputs }) => [symbol, inputs[0]])).toEqual([
      ["h/t", 0.1],
      ["b/t", 0.05],
    ]);
  });

  test("bars on edge that turn out", () => {
    holds(
      fc.property(flatBar, anySteel, anyLengths, (bar, steel, lengths) => {
        const chapter = sheet();
        memberStrengths(memberSection(bar), steel, lengths, null, chapter);
        agree(chapter.steps);
      }),
    );
  });

  test("holes", () => {
    holds(
      fc.property(roundSection, anySteel, between(0.1, 0.8), (section, steel, share) => {
        const room = section.outside - 2 * section.designWall - 0.0254 / 16;
        fc.pre(room > 1e-3);
        for (const place of ["extreme fibres", "neutral axis"] as const) {
          const chapter = sheet();
          holedRoundStrength(section, steel, share * room, place, chapter);
          agree(chapter.steps);
        }
      }),
    );
    const chapter = sheet();
    flangeHolesStrength(
      box(0.1, 0.1, 0.006),
      "x",
      grade50,
      { diameter: 0.04, count: 1 },
      1,
      chapter,
    );
    agree(chapter.steps);
  });

  test("forces together, second order, arch", () => {
    const share = between(0.001, 1.5);
    holds(
      fc.property(share, share, share, share, share, (p, x, y, v, t) => {
        const chapter = sheet();
        workInteraction([p, 1], [x, 1], [y, 1], chapter);
        chapter.work(interactionEnvelope, [p, x, y]);
        chapter.work(torsionInteraction, [p, x, y, v, t]);
        chapter.work(momentAmplification, [1.6, p, 2.5]);
        chapter.work(eulerLoad, [2e11, 1e-7 * x, y]);
        chapter.work(archEffectiveLength, [p, x]);
        agree(chapter.steps);
      }),
    );
  });

  test("wood", () => {
    for (const loaded of ["edge", "face"] as const) {
      for (const wet of [true, false]) {
        const chapter = sheet();
        const board = { thickness: 0.038, width: 0.14, loaded, wet };
        lumberStrength({ ...board, wood: "hem-fir", grade: "No. 2" }, chapter);
        panelBendingStrength({ rating: "32/16", alongStrength: wet, wet }, chapter);
        agree(chapter.steps);
      }
    }
  });

  test("round tube of every slenderness", () => {
    for (const ratio of [10, 60, 100, 200, 250]) {
      const chapter = sheet();
      const tube = round(0.1, 0.1 / ratio);
      memberStrengths(tube, grade50, everyLength(1), null, chapter);
      agree(chapter.steps);
    }
  });

  test("all formulas of members and wood have been seen", () => {
    expect([...seen].sort()).toEqual([
      "arch-effective-length",
      "bar-slenderness",
      "board-modulus",
      "board-moment",
      "board-shear",
      "buckling-force",
      "diameter-over-wall",
      "effective-flange",
      "effective-flat",
      "effective-modulus",
      "effective-net-area",
      "elastic-bar-turning",
      "elastic-buckling-stress",
      "elastic-length",
      "elastic-local-stress",
      "elastic-torsion-stress",
      "elastic-web-factor",
      "euler-load",
      "fibre-beside-hole",
      "first-yield-moment",
      "flange-compact",
      "flange-noncompact",
      "flange-rupture",
      "flat-over-wall",
      "gross-yield",
      "hole-width",
      "holed-area",
      "holed-elastic-modulus",
      "holed-extreme-modulus",
      "holed-moment",
      "holed-neutral-modulus",
      "holed-rupture",
      "holed-second-moment",
      "inelastic-bar-turning",
      "inelastic-buckling-limit",
      "inelastic-buckling-stress",
      "inelastic-torsion-stress",
      "inelastic-turning",
      "inelastic-web-factor",
      "interaction-envelope",
      "interaction-large-axial",
      "interaction-small-axial",
      "interaction-with-torsion",
      "lumber-bending-stress",
      "lumber-shear-stress",
      "member-compression-allowable",
      "member-compression-design",
      "member-flexure-allowable",
      "member-flexure-design",
      "member-rupture-allowable",
      "member-rupture-design",
      "member-shear-allowable",
      "member-shear-design",
      "member-slenderness",
      "member-torsion-allowable",
      "member-torsion-design",
      "member-yield-allowable",
      "member-yield-design",
      "moment-amplification",
      "net-area",
      "net-rupture",
      "noncompact-flange-moment",
      "noncompact-round-moment",
      "noncompact-web-moment",
      "panel-moment",
      "plastic-length",
      "plastic-moment",
      "rectangular-effective-area",
      "round-compact",
      "round-effective-area",
      "round-in-compression",
      "round-noncompact",
      "round-shear",
      "round-shear-stress",
      "round-torsion-stress",
      "slender-buckling-stress",
      "slender-flange-moment",
      "slender-round-moment",
      "slender-round-stress",
      "solid-plastic-moment",
      "strip-area",
      "strip-crosswise",
      "strip-lengthwise",
      "torsion-moment",
      "wall-in-compression",
      "web-compact",
      "web-noncompact",
      "web-shear",
      "web-shear-area",
      "yield-torsion-stress",
    ]);
  });
});
