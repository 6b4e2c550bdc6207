import type { Words } from "@hoopstay/core";
import type { CombinationId } from "@hoopstay/stability";
import {
  eulerLoad,
  loadLevel,
  type MemberStrengths,
  memberSection,
  memberStrengths,
  momentAmplification,
  momentAmplifier,
  type Strength,
  type Worksheet,
  workInteraction,
} from "@hoopstay/strength";
import { workPressure } from "../component/component-groups.ts";
import { pressedWidth, spanMoment } from "../component/component-loads.ts";
import { leastPressureFinding } from "../component/least-pressure.ts";
import type { ChainContext } from "../context.ts";
import { ratedResistance, unrated } from "../demand.ts";
import type { LinkRow } from "../link.ts";
import { steelOfTube } from "../steel.ts";
import { grownMoment } from "../superposed.ts";
import { windRatioRow, windRow } from "../worked-row.ts";
import { type CoverLoad, coverLoads } from "./cover-loads.ts";
import { lineShare } from "./hoop-along-formulas.ts";
import type { PurlinLine } from "./purlin-lines.ts";
import { greatestCases, inwardPush, outwardPush, rowCaseOf, wallCases } from "./wall-cases.ts";
import { workWallTop } from "./wall-work.ts";

const words = { purlin: "purlins", ridge: "ridge" } as const;

/** One kind of line: its tube over one bay, and the end wall's share on it. */
export class PurlinKind {
  readonly name: string;
  readonly strengths: MemberStrengths;
  readonly share: number;
  private readonly spacing: number;
  private readonly endArea: number;
  private readonly euler: number;

  constructor(
    private readonly context: ChainContext,
    what: PurlinLine["what"],
    readonly lines: readonly PurlinLine[],
    readonly part: PurlinLine["part"],
  ) {
    const { house, shell } = context.evaluation;
    this.name = words[what];
    this.spacing = house.spacing;
    this.endArea = shell.endArea;
    this.share = Math.max(...lines.map(({ wallShare }) => wallShare));
    this.strengths = this.strengthsOn();
    const { secondMomentX, secondMomentY } = memberSection(part.tube);
    const least = Math.min(secondMomentX, secondMomentY);
    this.euler = eulerLoad.evaluate(steelOfTube(part).modulus, least, this.spacing);
  }

  strengthsOn(sheet?: Worksheet): MemberStrengths {
    const { spacing } = this;
    const lengths = {
      bucklingX: spacing,
      bucklingY: spacing,
      lateral: spacing,
      shear: spacing / 2,
      torsion: spacing,
    };
    return memberStrengths(
      memberSection(this.part.tube),
      steelOfTube(this.part),
      lengths,
      null,
      sheet,
    );
  }

  force(sheet: Worksheet, q: number, size: number): number {
    return sheet.work(lineShare, [workWallTop(sheet, q, size, this.endArea), this.share]);
  }

  /** Bending by the cover with force along the line. */
  bent(
    sheet: Worksheet,
    q: number,
    method: CombinationId,
    size: number,
    cover: CoverLoad | undefined,
    along: Strength,
    bending: Strength,
  ): number {
    const axial = this.force(sheet, q, size);
    let moment = 0;
    if (cover) {
      const pressed = [workPressure(sheet, q, cover.pressure), cover.width] as const;
      moment = sheet.work(spanMoment, [sheet.work(pressedWidth, pressed), this.spacing]);
      if (along !== this.strengths.tension) {
        if (momentAmplifier(method, axial, this.euler) === Number.POSITIVE_INFINITY) {
          return Number.POSITIVE_INFINITY;
        }
        const level = sheet.work(loadLevel[method], []);
        const growth = sheet.work(momentAmplification, [level, axial, this.euler]);
        moment = sheet.work(grownMoment, [growth, moment]);
      }
    }
    const strength = bending[method];
    return workInteraction([axial, along[method]], [moment, strength], [0, strength], sheet);
  }

  rows(): LinkRow[] | string {
    const { tension, compression, momentX, momentY } = this.strengths;
    for (const one of [compression, momentX, momentY]) {
      if (!one.covered) return `${one.reason}. ${one.mend}`;
    }
    if (!compression.covered || !momentX.covered || !momentY.covered) return "";
    const weaker = momentX.ASD <= momentY.ASD ? momentX : momentY;
    const covers = coverLoads(this.context, this.lines);
    const cases = wallCases(this.context);
    return (
      [
        [inwardPush, compression, "pushed by the end wall"],
        [outwardPush, tension, "pulled by the end wall"],
      ] as const
    ).flatMap(([push, along, run]) =>
      greatestCases(cases, push).map(({ windCase, size }) => {
        const cover = covers.get(windCase.set);
        return windRatioRow(
          {
            link: "ridge-line",
            part: `${this.name}, one bay`,
            place: "in the end bay",
            run: cover ? `${run}, the cover pressing on it` : run,
            windCase: rowCaseOf(windCase),
          },
          (sheet, q, method) => this.bent(sheet, q, method, size, cover, along, weaker),
          (sheet) => this.strengthsOn(sheet),
        );
      }),
    );
  }

  clamps(): LinkRow[] {
    const { slip } = this.part;
    const most = (push: Parameters<typeof inwardPush>[0]): number =>
      Math.max(inwardPush(push), outwardPush(push));
    return greatestCases(wallCases(this.context), most).map(({ windCase, size }) =>
      windRow(
        {
          link: "ridge-line",
          part: `clamp of the ${this.name} on an end hoop`,
          place: "at the end hoops",
          run: "half of the end wall on its hoop",
          windCase: rowCaseOf(windCase),
          measure: "force",
        },
        (sheet, q) => this.force(sheet, q, size),
        slip === null ? unrated : ratedResistance(slip),
      ),
    );
  }

  leastPressure(): Words[] {
    const { momentX, momentY } = this.strengths;
    if (!this.part.underCover || !momentX.covered || !momentY.covered) return [];
    const { shell, site } = this.context.evaluation;
    const width = Math.max(...this.lines.map((one) => one.width)) * shell.arc.length;
    const perPressure = spanMoment.evaluate(width, this.spacing);
    const strength = momentX.ASD <= momentY.ASD ? momentX : momentY;
    return leastPressureFinding(`The ${this.name}`, perPressure, strength, site.combination);
  }
}
