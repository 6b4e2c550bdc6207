import type { House } from "../../model/house-model.ts";
import type { SteelTube } from "../../model/steel-tube.ts";
import type { Evaluation } from "../../review/evaluate.ts";
import type { TakeOff } from "../../take-off/take-off.ts";
import type { PushedHoop } from "../along/pushed-hoops.ts";
import type { ChainContext } from "../context.ts";
import { strongestPressure } from "../limit.ts";
import {
  type QuickFrame,
  type QuickOutline,
  quickContext,
  quickFrame,
  quickOutline,
} from "./quick-context.ts";
import { quickLimit } from "./quick-limit.ts";
import {
  bayRows,
  faceRows,
  footingRows,
  hoopRows,
  pushedAlong,
  pushedLikewise,
  weldKey,
} from "./quick-rows.ts";
import { quickCases, tellingCases } from "./telling-cases.ts";

/** Hoops of one tube in houses that the wind cannot tell apart. */
interface HoopsOfTube {
  readonly context: ChainContext;
  readonly pushed: readonly PushedHoop[];
  readonly limit: number;
  /** Limits with what holds the feet on each rail, and with each weld. */
  readonly onRail: Map<string, number>;
  readonly onWeld: Map<string, number>;
}

function keptIn(kept: Map<string, number>, key: string, make: () => number): number {
  let found = kept.get(key);
  if (found === undefined) {
    found = make();
    kept.set(key, found);
  }
  return found;
}

const keyOf = (piece: SteelTube): string => JSON.stringify(piece);

interface Shell {
  readonly outline: QuickOutline;
  readonly pushed: readonly PushedHoop[];
  readonly limit: number;
  readonly hoops: Map<string, HoopsOfTube>;
}

/**
 * The load path of many houses that differ in tubes and in the number of hoops, quickly: hoops by one
 * frame without ties, bolts, stubs, welds, the rail's face, boards and purlins, by the rows of the
 * whole load path, under the cases that tell. Left out: ties, splices, cross members and anchors, the
 * rails and what their bending adds, all hoops together on the rails, and all other cases. What is left
 * out can only lower the limit.
 */
export class QuickLinks {
  private readonly shells = new WeakMap<Evaluation, Shell>();
  private readonly frames = new Map<string, QuickFrame>();
  /** Places of the cases that tell, by the first house that was looked at. */
  private telling: readonly number[] | undefined;

  /**
   * The lowest K_d q_h at which a link gives way, Pa, by ASD.
   *
   * @param shell a house that the wind cannot tell from this one, evaluated
   */
  limit(shell: Evaluation, house: House, weighed: TakeOff): number {
    const evaluation = { ...shell, house, takeOff: weighed };
    const known = this.shellOf(shell, evaluation);
    const hoops = this.hoopsOf(known, evaluation);
    const context = { ...hoops.context, evaluation };
    return keptIn(hoops.onRail, keyOf(house.links.rail), () => {
      const footing = keptIn(hoops.onWeld, weldKey(house), () =>
        quickLimit(footingRows(context, hoops.pushed), hoops.limit),
      );
      return quickLimit(faceRows(context), footing);
    });
  }

  private shellOf(shell: Evaluation, evaluation: Evaluation): Shell {
    let known = this.shells.get(shell);
    if (!known) {
      known = this.made(evaluation);
      this.shells.set(shell, known);
    }
    return known;
  }

  private made(evaluation: Evaluation): Shell {
    const most = strongestPressure(evaluation);
    const all = quickOutline(evaluation, quickCases(evaluation));
    this.telling ??= this.tellingOf(this.contextOf(evaluation, all), most);
    const cases = this.telling.flatMap((place) => all.cases[place] ?? []);
    const outline = { ...all, cases };
    const context = this.contextOf(evaluation, outline);
    const limit = quickLimit(bayRows(context), most);
    return { outline, pushed: pushedAlong(context), limit, hoops: new Map() };
  }

  private hoopsOf({ outline, pushed, limit, hoops }: Shell, evaluation: Evaluation): HoopsOfTube {
    const tube = keyOf(evaluation.house.links.hoop);
    let known = hoops.get(tube);
    if (!known) {
      const context = this.contextOf(evaluation, outline);
      known = {
        context,
        pushed: pushedLikewise(pushed, context),
        limit: quickLimit(hoopRows(context), limit),
        onRail: new Map(),
        onWeld: new Map(),
      };
      hoops.set(tube, known);
    }
    return known;
  }

  private tellingOf(context: ChainContext, most: number): number[] {
    const rows = [...hoopRows(context), ...footingRows(context, pushedAlong(context))];
    return tellingCases(rows, context.cases, most);
  }

  private contextOf(evaluation: Evaluation, outline: QuickOutline): ChainContext {
    return quickContext(evaluation, outline, this.frameOf(evaluation, outline));
  }

  /** Frames of one tube and outline serve any number of hoops. */
  private frameOf(evaluation: Evaluation, all: QuickOutline): QuickFrame {
    const { leg, arch, hinge, bounds } = all.outline;
    const key = [keyOf(evaluation.house.links.hoop), leg, arch, hinge, ...bounds].join(" ");
    let frame = this.frames.get(key);
    if (!frame) {
      frame = quickFrame(evaluation, all);
      this.frames.set(key, frame);
    }
    return frame;
  }
}
