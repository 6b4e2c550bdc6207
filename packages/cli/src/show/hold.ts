import {
  type HoldReview,
  type KindReview,
  type LayoutReview,
  type System,
  showGustLimit,
  showWords,
} from "@hoopstay/core";
import { certificateLines } from "./certificate.ts";
import { forceColumn, ratioText } from "./force.ts";
import { bullet, bullets, column, leadOf, notSealed, rightColumn, wrap } from "./lines.ts";
import { towLines } from "./tow.ts";
import { visible } from "./visible.ts";

const mostKinds = 8;
const mostSaid = 3;

/** What holds the house here, on two screens at most; the answer first. */
export function showHold(
  hold: HoldReview,
  names: readonly [house: string, site: string],
  system: System,
  certificate: boolean,
): string {
  const { ground, fitted, kinds, ballast, tow, pulls } = hold;
  const tests = pulls.kinds.reduce((sum, kind) => sum + kind.tests.length, 0);
  const proof = fitted?.joint.certificate;
  const lines = [
    leadOf(hold.holds ? "HOLDS" : "DOES NOT HOLD", names.map(visible)),
    wrap(showWords(hold.headline, system), "  "),
    wrap(`Ground: ${showWords(ground.words, system)}`, "  "),
    ...(fitted === null ? ["  As fitted: nothing."] : fittedLines(fitted, system)),
    ...(kinds.length === 0 ? [] : kindLines(kinds, system)),
    ...ballastLines(ballast, system),
    ...(tow === null ? [] : towLines(tow, system)),
    ...(ground.findOut.length === 0
      ? []
      : ["  To find out first:", ...bullets(ground.findOut.slice(0, mostSaid), system)]),
    tests === 0
      ? "  Pull tests: none. See: hoopstay pulls --help"
      : `  Pull tests: ${tests}. All of them: hoopstay pulls`,
    ...(certificate
      ? [
          ...(fitted && proof
            ? certificateLines(fitted.joint, proof, system)
            : ["  No proof: nothing is in balance."]),
        ]
      : []),
    notSealed,
  ];
  return `${lines.join("\n")}\n`;
}

/** The ballast that would do; where none does, the first that was tried. */
function ballastLines(ballast: HoldReview["ballast"], system: System): string[] {
  const holding = ballast.filter(({ holds }) => holds);
  const shown = holding.length > 0 ? holding.slice(0, mostSaid) : ballast.slice(0, 1);
  return shown.map((one) => {
    const pieces = one.pieces.map(({ what, perRail }) => `${perRail} x ${what} on each side`);
    const said = [showWords(one.words, system), ...pieces, showWords(one.where, system)];
    return wrap(
      `Ballast against lifting and tipping${one.holds ? "" : " (not enough)"}: ${said.join("; ")}`,
      "  ",
    );
  });
}

/** The layout that is set: the worst anchors, and all at once. */
function fittedLines(
  { anchors, held, joint, remarks, oneMissing }: LayoutReview,
  system: System,
): string[] {
  const force = forceColumn(
    system,
    anchors.flatMap(({ pull, allowable }) => [pull, allowable]),
  );
  const worst = anchors.toSorted((one, other) => other.ratio - one.ratio);
  const overloaded = worst.filter(({ ratio }) => ratio > 1).length;
  const shown = worst.slice(0, mostSaid).map((one) => {
    const pull = `${force.cell(one.pull)} of ${force.cell(one.allowable)} ${force.symbol} allowed`;
    return bullet(
      `${one.name}: ${pull} (${ratioText(one.ratio)}), ${one.state}, wind ${one.direction}`,
    );
  });
  return [
    ...(held
      ? [
          wrap(
            `As fitted: ${anchors.length} anchors, ${overloaded} of them pulled beyond what is allowed. The worst:`,
            "  ",
          ),
          ...shown,
        ]
      : [
          `  As fitted: ${anchors.length} anchors. A rail is not held, so none has a pull of its own.`,
        ]),
    wrap(
      `All at once: tethers, ground and friction together stand a gust of ${showGustLimit(joint.gust, system)} (${joint.state}, wind ${joint.direction}).`,
      "  ",
    ),
    ...(oneMissing === null
      ? []
      : [
          wrap(
            `With ${oneMissing.name} missing, the worst of the others: ${ratioText(oneMissing.ratio)}.`,
            "  ",
          ),
        ]),
    ...bullets(remarks.slice(0, mostSaid), system),
  ];
}

/** Fewest anchors on each side, kind by kind. */
function kindLines(kinds: readonly KindReview[], system: System): string[] {
  const force = forceColumn(
    system,
    kinds.map(({ allowable }) => allowable ?? 0),
  );
  const heading = `  ${column("Fewest on each side", 38)}${rightColumn("allowed", 9)}${column("in every state", 14)}kept shut`;
  const rows = kinds.slice(0, mostKinds).map((kind) => {
    const { words, allowable, reason, every, shut } = kind;
    if (allowable === null) return bullet(`${words}: not rated. ${reason ?? ""}`, "");
    const pull = rightColumn(`${force.cell(allowable)} ${force.symbol}`, 9);
    const row = `  ${column(words, 38)}${pull}${column(fewest(every), 14)}${fewest(shut)}`;
    return [row, ...kind.findings.map((finding) => bullet(finding))].join("\n");
  });
  const rest = kinds.length - mostKinds;
  const partly = kinds.some(({ every, shut }) => [every, shut].some((one) => one && !one.holds));
  if (partly) rows.push(wrap("* hold it down, but not against sliding or not all at once", "  "));
  return [heading, ...rows, ...(rest > 0 ? [`  and ${rest} kinds more: see the report`] : [])];
}

const fewest = (layout: LayoutReview | null): string => {
  if (layout === null) return "none holds";
  return layout.holds ? String(layout.perRail) : `${layout.perRail} *`;
};
