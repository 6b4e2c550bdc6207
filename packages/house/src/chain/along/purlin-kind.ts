import type { Words } from "@hoopstay/core";
import { bareTubeLoad } from "@hoopstay/load";
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
import type { LinkCombination } from "../combination.ts";
import { spanMoment } from "../component/component-loads.ts";
import { leastPressureFinding } from "../component/least-pressure.ts";
import type { ChainContext } from "../context.ts";
import { ratedResistance, unrated } from "../demand.ts";
import { type LinkRow, ratioRow } from "../link.ts";
import { steelOfTube } from "../steel.ts";
import { factoredPressure, grownMoment, hasBuckled } from "../superposed.ts";
import { silent, windRow } from "../worked-row.ts";
import { bracedBays } from "./braced-bays.ts";
import { type CoverLoad, coverLoads } from "./cover-loads.ts";
import type { AlongPush } from "./end-pushes.ts";
import { lineShare, lineShareOfHoops } from "./hoop-along-formulas.ts";
import { type PurlinLine, purlinLines } from "./purlin-lines.ts";
import { PurlinLoad } from "./purlin-load.ts";
import { pressedRows } from "./purlin-pressed.ts";
import { greatestCases, inwardPush, outwardPush, rowCaseOf, wallCases } from "./wall-cases.ts";
import { workWallTop } from "./wall-work.ts";

const words = { purlin: "purlins", ridge: "ridge" } as const;

/** One kind of line: its tube over one bay, and the end wall's share on it. */
export class PurlinKind {
  readonly name: string;
  readonly strengths: MemberStrengths;
  readonly share: number;
  readonly spacing: number;
  private readonly endArea: number;
  private readonly euler: number;
  private readonly allHoops: number;
  /** Share of what the hoops catch that goes along one line to the end bays; nought unbraced. */
  private readonly hoopShare: number;
  readonly load: PurlinLoad;

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
    const braced = bracedBays(house);
    const held = braced !== null && typeof braced !== "string";
    const even = 1 / purlinLines(house, shell).length;
    this.hoopShare = held ? Math.max(this.share, even) : 0;
    this.allHoops = shell.hoopLine * shell.hoopCount;
    this.load = new PurlinLoad(context, this.name);
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

  private takesHoops({ line }: AlongPush): boolean {
    return line !== 0 && this.hoopShare > 0;
  }

  /** What an end asks of a line per unit of K_d q_h, m2, by the push on its wall. */
  private asked(wall: number, { line }: AlongPush): number {
    return (wall / 2) * this.share + ((Math.abs(line) * this.allHoops) / 4) * this.hoopShare;
  }

  /** Force along a line by an end wall, and by what hoops catch where end bays hold all of it. */
  private force(sheet: Worksheet, q: number, wall: number, push: AlongPush): number {
    const { line } = push;
    const top = workWallTop(sheet, q, wall, this.endArea, line);
    const ofWall = sheet.work(lineShare, [top, this.share]);
    if (!this.takesHoops(push)) return ofWall;
    const onHoops = sheet.work(bareTubeLoad, [q, 1, Math.abs(line)]);
    return sheet.work(lineShareOfHoops, [ofWall, onHoops, this.allHoops, this.hoopShare]);
  }

  /** Force along a line with what bends it; infinite where it buckles. */
  private bent(
    sheet: Worksheet,
    q: number,
    { method, dead }: LinkCombination,
    axial: number,
    cover: CoverLoad | undefined,
    [along, bending, pushed]: readonly [Strength, Strength, boolean],
  ): number {
    const load = this.load.work(sheet, q, dead, cover);
    let moment = sheet.work(spanMoment, [load, this.spacing]);
    if (pushed) {
      if (momentAmplifier(method, axial, this.euler) === Number.POSITIVE_INFINITY) {
        return Number.POSITIVE_INFINITY;
      }
      const level = sheet.work(loadLevel[method], []);
      const growth = sheet.work(momentAmplification, [level, axial, this.euler]);
      moment = sheet.work(grownMoment, [growth, moment]);
    }
    const strength = bending[method];
    return workInteraction([axial, along[method]], [moment, strength], [0, strength], sheet);
  }

  rows(): LinkRow[] | string {
    const { tension, compression, momentX, momentY, shearX, shearY } = this.strengths;
    for (const one of [compression, momentX, momentY, shearX, shearY]) {
      if (!one.covered) return `${one.reason}. ${one.mend}`;
    }
    if (!compression.covered || !momentX.covered || !momentY.covered) return "";
    if (!shearX.covered || !shearY.covered) return "";
    const weaker = momentX.ASD <= momentY.ASD ? momentX : momentY;
    const covers = coverLoads(this.context, this.lines);
    const cases = wallCases(this.context);
    return [
      ...(
        [
          [inwardPush, compression, "pushed"],
          [outwardPush, tension, "pulled"],
        ] as const
      ).flatMap(([wall, along, how]) =>
        greatestCases(cases, (push) => this.asked(wall(push), push)).map(({ windCase }) => {
          const { push, set } = windCase;
          const cover = covers.get(set);
          const by = this.takesHoops(push)
            ? "by the end wall and what all hoops catch"
            : "by the end wall";
          const about = {
            link: "ridge-line",
            part: `${this.name}, one bay`,
            place: "in the end bay",
            run: cover ? `${how} ${by}, the cover pressing on it` : `${how} ${by}`,
            windCase: rowCaseOf(windCase),
          } as const;
          const strengths = [along, weaker, how === "pushed"] as const;
          const ratio = (sheet: Worksheet, q: number, one: LinkCombination): number => {
            const axial = this.force(sheet, q, wall(push), push);
            return this.bent(sheet, q, one, axial, cover, strengths);
          };
          return ratioRow(
            {
              ...about,
              work: (sheet, q, one) => {
                this.strengthsOn(sheet);
                const note = { note: one.words };
                const factored = sheet.work(factoredPressure, [one.wind, q], note);
                const axial = this.force(silent, factored, wall(push), push);
                if (strengths[2] && hasBuckled(sheet, one.method, axial, this.euler)) return;
                ratio(sheet, factored, one);
              },
            },
            (q, one) => ratio(silent, one.wind * q, one),
          );
        }),
      ),
      ...pressedRows(this, covers, weaker, shearX.ASD <= shearY.ASD ? shearX : shearY),
    ];
  }

  clamps(): LinkRow[] {
    const { slip } = this.part;
    const wall = (push: AlongPush): number => Math.max(inwardPush(push), outwardPush(push));
    const cases = greatestCases(wallCases(this.context), (push) => this.asked(wall(push), push));
    return cases.map(({ windCase }) => {
      const { push } = windCase;
      return windRow(
        {
          link: "ridge-line",
          part: `clamp of the ${this.name} on an end hoop`,
          place: "at the end hoops",
          run: `half of the end wall on its hoop${this.takesHoops(push) ? ", and what all hoops catch" : ""}`,
          windCase: rowCaseOf(windCase),
          measure: "force",
        },
        (sheet, q) => this.force(sheet, q, wall(push), push),
        slip === null ? unrated : ratedResistance(slip),
      );
    });
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
