import { Chapter, measured, Refusal, type Step, showMeasured } from "@hoopstay/core";
import {
  type AnchorForm,
  type Capacity,
  capacityAlongTether,
  deepestOf,
  groupedPull,
  groupFactor,
  pullOfBlock,
  rateByTests,
  type TestRating,
  theoryCapacity,
} from "@hoopstay/ground";
import { asd } from "@hoopstay/stability";
import type { AnchorKind } from "../model/anchor-kind.ts";
import type { Site } from "../model/site-model.ts";
import { testsAlong } from "./test-direction.ts";

type RatingBasis = "pull tests" | "theory" | "presumptive" | "table" | "block";

/** What an anchor of a kind may count for along its tether on this ground. N */
export interface Rating {
  readonly kind: AnchorKind;
  readonly angle: number;
  /** Distance to the nearest other anchor, m, where it is near enough to count. */
  readonly spacing: number | null;
  readonly basis: RatingBasis;
  /** Allowable pull, ASD; null where nothing may be counted, with the reason. */
  readonly allowable: number | null;
  readonly reason: string | null;
  /** The part of the chain that gives it. */
  readonly governs: string | null;
  /** Resistance from tests before the safety factor; null without tests. */
  readonly tested: number | null;
  readonly tests: TestRating;
  readonly notChecked: readonly string[];
  readonly findings: readonly string[];
  readonly steps: readonly Step[];
}

const forms: Readonly<Record<Exclude<AnchorKind["body"]["kind"], "block">, AnchorForm>> = {
  screw: "plate",
  "driven plate": "plate",
  stake: "stake",
  "picket set": "stake",
  deadman: "deadman",
};

interface GroundHold {
  readonly basis: RatingBasis;
  readonly allowable: number | null;
  readonly reason: string | null;
  readonly governs: string;
  readonly tested: number | null;
  readonly findings: readonly string[];
  readonly steps: readonly Step[];
}

/**
 * Rates a kind of anchor here: by pull tests of it on this ground where there are any, else by
 * theory, class or table; then the weakest link of tether, eye and rail attachment. A label rating
 * is never asked for.
 *
 * @param angle tether above the ground, rad
 * @param spacing distance to the nearest other anchor, m; left out where it stands alone
 */
export function rateKind(kind: AnchorKind, site: Site, angle: number, spacing?: number): Rating {
  const form = kind.body.kind === "block" ? null : forms[kind.body.kind];
  const { along, aside } = testsAlong(site.pulls, angle);
  const tests: TestRating =
    form === null
      ? { rated: false, leftOut: [] }
      : rateByTests(along, {
          place: site.name,
          anchorKind: kind.id,
          form,
          groundMayGetWet: site.wet || waterReaches(kind, site),
          everyAnchorProofLoaded: site.everyAnchorProved,
          ...(kind.knownScatter === null ? {} : { knownScatter: kind.knownScatter }),
        });
  const ground = tests.rated
    ? testedHold(tests, kind, spacing)
    : untestedHold(
        kind,
        site,
        angle,
        spacing,
        aside.some(({ anchorKind }) => anchorKind === kind.id),
      );
  return withLinks({ kind, angle, spacing: spacing ?? null, tests }, ground);
}

/** Whether the water table stands above the anchor's deepest point: it is wet whatever was felt. */
function waterReaches({ body }: AnchorKind, { soil }: Site): boolean {
  const { waterTable } = soil.state;
  return body.kind !== "block" && waterTable !== undefined && waterTable <= deepestOf(body);
}

function testedHold(
  tests: TestRating & { readonly rated: true },
  { breadth }: AnchorKind,
  spacing: number | undefined,
): GroundHold {
  const chapter = new Chapter("tested", "Pull tests");
  chapter.steps.push(...tests.trail);
  const near = spacing !== undefined && breadth !== null;
  const allowable = near
    ? chapter.work(groupedPull, [chapter.work(groupFactor, [spacing, breadth]), tests.allowable])
    : tests.allowable;
  const many = tests.counted.length;
  return {
    basis: "pull tests",
    allowable,
    reason: null,
    governs: `ground, ${many} pull ${many === 1 ? "test" : "tests"}`,
    tested: tests.characteristic,
    findings: [],
    steps: chapter.steps,
  };
}

function untestedHold(
  kind: AnchorKind,
  site: Site,
  angle: number,
  spacing: number | undefined,
  testedAside: boolean,
): GroundHold {
  if (kind.body.kind === "block") return blockHold(kind.body.block, site, angle);
  const capacity = rated(() =>
    theoryCapacity(
      kind.body as Exclude<AnchorKind["body"], { kind: "block" }>,
      site.soil,
      { fromShaft: kind.upright ? Math.PI / 2 - angle : 0, aboveGround: angle },
      {
        // Tests along the tether give the number themselves; others do not better the theory.
        testedHere: false,
        ...(spacing === undefined ? {} : { spacing }),
        ...(site.frostDepth === null ? {} : { frostDepth: site.frostDepth }),
      },
    ),
  );
  const aside = testedAside
    ? ["Pull tests at another angle than the tether's are not counted."]
    : [];
  const none = { tested: null, steps: [] };
  if (!capacity.rated) {
    const reason = `${capacity.reason} ${mendOf[capacity.needs]}`;
    const basis = site.soil.basis;
    return { ...none, basis, allowable: null, reason, governs: "ground", findings: aside };
  }
  const { basis, allowable, governing, findings, trail } = capacity;
  return {
    basis,
    allowable,
    reason: null,
    governs: `ground: ${governing}`,
    tested: null,
    findings: [...findings, ...aside],
    steps: trail,
  };
}

const mendOf: Readonly<Record<(Capacity & { rated: false })["needs"], string>> = {
  "pull test":
    "Set one here, pull it along the tether's line with a scale, and enter it in pull_tests.",
  "pull test in this direction":
    "Pull one here along the tether's line with a scale, and enter it in pull_tests.",
  engineer: "Ask a licensed engineer.",
  "another shape": "Take a thicker or a shorter one.",
};

/** A capacity, or why the theory refuses: an anchor outside it counts nothing. */
function rated(work: () => Capacity): Capacity {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const words = error.complaints.map(({ expected, given, mend }) => {
      return `Needed: ${expected}${given === undefined ? "" : `, not ${given}`}. ${mend}`;
    });
    return { rated: false, needs: "pull test", reason: words.join(" ") };
  }
}

function blockHold(
  block: { weight: number; width: number; tieHeight: number; tieSetback: number },
  site: Site,
  angle: number,
): GroundHold {
  const none = { basis: "block", tested: null, findings: [] } as const;
  if (site.friction === 0) {
    const reason = "On ice or mud a block that is pulled sideways holds nothing.";
    return { ...none, allowable: null, reason, governs: "block", steps: [] };
  }
  // On a slope the block is pulled downhill, the worst way: its own weight pulls along. Weight is
  // counted at 0.6 in ASD even when it was weighed.
  const downhill = { slope: site.slope?.angle ?? 0, factor: asd.slope };
  const tied = { ...block, angle, friction: site.friction };
  const { pull, governs, trail } = pullOfBlock(tied, asd.dead, downhill);
  if (pull <= 0) {
    const reason = "On this slope a block slides by itself, or nearly: it holds nothing.";
    return { ...none, allowable: null, reason, governs: "block", steps: [] };
  }
  return { ...none, allowable: pull, reason: null, governs: `block: ${governs}`, steps: trail };
}

function withLinks(
  { kind, angle, spacing, tests }: Pick<Rating, "kind" | "angle" | "spacing" | "tests">,
  ground: GroundHold,
): Rating {
  const { basis, tested, findings } = ground;
  const shared = { kind, angle, spacing, basis, tests, tested, findings };
  if (ground.allowable === null) {
    const { reason, steps } = ground;
    return { ...shared, allowable: null, reason, governs: null, notChecked: [], steps };
  }
  const chapter = new Chapter("chain", "Chain");
  chapter.steps.push(...ground.steps);
  const chain = capacityAlongTether({ ground: ground.allowable, links: kind.links }, "ASD");
  const allowable = chapter.work(chain.formula, chain.inputs);
  return {
    ...shared,
    allowable,
    reason: null,
    governs: chain.governs === "ground" ? ground.governs : chain.governs,
    notChecked: chain.notChecked,
    steps: chapter.steps,
  };
}

/** How a rating is told: where the number comes from. */
export function basisWords({ basis, tests }: Rating, site: Site): string {
  if (basis === "pull tests" && tests.rated) {
    const count = tests.counted.length;
    return `${count} pull ${count === 1 ? "test" : "tests"} here`;
  }
  if (basis === "presumptive") {
    return site.soilClass === null ? "ground not known" : `presumed, class ${site.soilClass}`;
  }
  if (basis === "theory") return `theory, values by ${site.engineer ?? "an engineer"}`;
  return basis === "table"
    ? "military table"
    : `block, friction ${showMeasured(measured(site.friction, "ratio"), "si")}`;
}
