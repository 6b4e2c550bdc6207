import { Chapter, type Step } from "@hoopstay/core";
import {
  breakOut,
  draggingFrictionHigh,
  draggingFrictionLow,
  startingFriction,
} from "./dragging-friction.ts";
import { refuseJob, type TowJob, type TowLoad, type Tractor } from "./tow-job.ts";
import { breakOutPull, drawbarPull, shareOfLeftSkid, skidPull, towPull } from "./tow-pull.ts";
import { pullRatioHigh, pullRatioLow } from "./traction-ratio.ts";

/** go: it starts on the worst of both; no: it cannot run on the best of both; else doubtful. */
export type TowVerdict = "go" | "doubtful" | "no";

interface Range {
  readonly low: number;
  readonly high: number;
}

/** Pulls of one load, N. */
export interface TowPulls {
  readonly id: string;
  readonly running: Range;
  readonly starting: Range;
  /** Starting pull at the high weight after freezing or sinking. Information. */
  readonly brokenOut: Range;
  /** Greatest starting pull on each skid: what its bridle and nose must take. */
  readonly skids: { readonly left: number; readonly right: number };
  /** Null where nothing is known of what drags it. */
  readonly verdict: TowVerdict | null;
}

export interface TowReview {
  readonly loads: readonly TowPulls[];
  /** Pull the tractor has left, N; below zero where it cannot climb. Null without a tractor. */
  readonly available: Range | null;
  /** Downhill the house may run by itself. */
  readonly runsByItself: boolean;
  readonly trail: readonly Step[];
}

/** What is not in a tow review; goes with every one. */
export const towNotComputed =
  "Not computed: a slope to the side, on which the house drifts and may tip; ploughing of the skid noses; ruts, stones and stumps.";

/**
 * Pull needed to drag the house uphill, against what the tractor has. Each load is reviewed for
 * itself. Downhill the house runs by itself where the slope is steeper than the angle of the lower
 * of the dragging and the holding friction.
 *
 * Left out: `towNotComputed`.
 *
 * Source: design notes section 7, farm sled tests, ASABE D497.
 *
 * @throws Refusal as `refuseJob`
 */
export function reviewTow(job: TowJob): TowReview {
  refuseJob(job);
  const chapter = new Chapter("tow", "Pull");
  const { slope, tractor, holdingFriction } = job;
  const frictions = [draggingFrictionLow, draggingFrictionHigh, startingFriction];
  const ratios = tractor ? [pullRatioLow, pullRatioHigh] : [];
  for (const one of [...frictions, ...ratios]) chapter.work(one, []);
  const available = tractor && pullOf(tractor, slope, chapter);
  const loads = job.loads.map((load) => pullsOf(load, job, available, chapter));
  const least = Math.min(draggingFrictionLow.value, holdingFriction);
  const runsByItself = slope > 0 && slope >= Math.atan(least);
  return { loads, available, runsByItself, trail: chapter.steps };
}

function pullOf(tractor: Tractor, slope: number, chapter: Chapter): Range {
  const left = (ratio: number, symbol: string): number =>
    chapter.work(drawbarPull, [ratio, tractor.onDrivenWheels, tractor.weight, slope], { symbol });
  return { low: left(pullRatioLow.value, "P_a low"), high: left(pullRatioHigh.value, "P_a high") };
}

function pullsOf(load: TowLoad, job: TowJob, available: Range | null, chapter: Chapter): TowPulls {
  const { id, low, high, fromLeft } = load;
  const pull = (weight: number, friction: number, symbol: string): number =>
    chapter.work(towPull, [weight, friction, job.slope], { symbol, note: id });
  const running = {
    low: pull(low, draggingFrictionLow.value, "P_run low"),
    high: pull(high, draggingFrictionHigh.value, "P_run high"),
  };
  const starting = {
    low: pull(low, startingFriction.value, "P_start low"),
    high: pull(high, startingFriction.value, "P_start high"),
  };
  const out = (times: number): number =>
    chapter.work(breakOutPull, [times, starting.high], { note: id });
  const brokenOut = { low: out(breakOut.least), high: out(breakOut.most) };
  const share = chapter.work(shareOfLeftSkid, [fromLeft, job.railSpacing], { note: id });
  const skid = (part: number, symbol: string): number =>
    chapter.work(skidPull, [part, starting.high], { symbol, note: id });
  const skids = { left: skid(share, "P_s left"), right: skid(1 - share, "P_s right") };
  return {
    id,
    running,
    starting,
    brokenOut,
    skids,
    verdict: available && verdictOf(running, starting, available),
  };
}

function verdictOf(running: Range, starting: Range, available: Range): TowVerdict {
  if (starting.high <= available.low) return "go";
  return running.low > available.high ? "no" : "doubtful";
}
