import { measured, type PullLog, type Words } from "@hoopstay/core";
import type { AnchorKind } from "../model/anchor-kind.ts";
import type { LoggedPull } from "../model/site-ground.ts";
import type { Site } from "../model/site-model.ts";
import { rateKind } from "./rating.ts";

type KindLog = PullLog["kinds"][number];
type TestRow = KindLog["tests"][number];

function rowOf(test: LoggedPull, counts: number | null, why: string): TestRow {
  const { date, place, pull, ended, ground } = test;
  return { date, place, pull, ended, ground, counts, why };
}

function reductionWords(cyclic: number, wetter: number, failed: boolean): string {
  const parts = [];
  if (cyclic < 1) parts.push(`times ${cyclic}: single pull, wind is repeated`);
  if (wetter < 1) parts.push(`times ${wetter}: ground may be wetter`);
  if (!failed) parts.push("stopped: a lower bound");
  return parts.join("; ") || "counts in full";
}

function kindLog(kind: AnchorKind, site: Site): KindLog {
  const { tests } = rateKind(kind, site, kind.angle);
  const counted = tests.rated ? tests.counted : [];
  const mine = site.pulls.filter(({ anchorKind }) => anchorKind === kind.id);
  const rows = mine.map((test): TestRow => {
    const found = counted.find((one) => one.test === test);
    if (found) {
      const { cyclic, wetter, failed } = found;
      return rowOf(test, cyclic * wetter * test.pull, reductionWords(cyclic, wetter, failed));
    }
    const left = tests.leftOut.find((one) => one.test === test);
    return rowOf(test, null, left ? `left out: ${left.why}` : "left out: another direction");
  });
  const rated = tests.rated
    ? {
        route: tests.route,
        characteristic: tests.characteristic,
        factor: tests.safetyFactor,
        allowable: tests.allowable,
        ...tests.oneMore,
      }
    : null;
  return { kind: kind.id, words: kind.words, tests: rows, rated };
}

function nextSteps(kinds: readonly KindLog[], strays: readonly LoggedPull[]): Words[] {
  const steps: Words[] = [];
  for (const { words, rated, tests } of kinds) {
    if (!rated) {
      steps.push([
        `${words}: no test counts here yet. Pull three, to failure, in the wettest state this ground has.`,
      ]);
      continue;
    }
    const counted = tests.filter(({ counts }) => counts !== null).length;
    const gain = rated.atMean - rated.allowable;
    if (gain > 0) {
      const more: Words = [
        `${words}: one more test at the mean would allow `,
        measured(rated.atMean, "force"),
        " in place of ",
        measured(rated.allowable, "force"),
        "; at the lowest so far ",
        measured(rated.atLowest, "force"),
        ".",
      ];
      steps.push(more);
    } else {
      steps.push([`${words}: one more average test would not raise it; ${counted} count now.`]);
    }
  }
  for (const { anchorKind, date } of strays) {
    steps.push([`The test of ${date} names ${anchorKind}, which is no anchor kind of this house.`]);
  }
  return steps;
}

/** The pull log kind by kind: what each test counts, what is allowed, what one more would buy. */
export function pullLog(kinds: readonly AnchorKind[], site: Site): PullLog {
  const logs = kinds.filter(({ body }) => body.kind !== "block").map((kind) => kindLog(kind, site));
  const ids = kinds.map(({ id }) => id);
  const strays = site.pulls.filter(({ anchorKind }) => !ids.includes(anchorKind));
  return { kinds: logs, next: nextSteps(logs, strays) };
}
