import { archComponent, effectiveArea } from "@hoopstay/load";
import { type LumberStrength, lumberStrength, type Worksheet } from "@hoopstay/strength";
import type { Board } from "../../model/link-parts.ts";
import type { ChainContext } from "../context.ts";
import { ratedResistance, unrated } from "../demand.ts";
import type { LinkRow } from "../link.ts";
import { windRatioRow, windRow } from "../worked-row.ts";
import {
  componentCases,
  type NetComponent,
  netComponent,
  workPressure,
} from "./component-groups.ts";
import {
  boardWidthForForce,
  boardWidthForMoment,
  pressedWidth,
  pullAndSuction,
  pullOnLength,
  spanMoment,
  spanReaction,
  twoWayBending,
} from "./component-loads.ts";
import { workTension } from "./film-tension.ts";

export interface OneBoard {
  readonly words: string;
  readonly board: Board;
  /** Sides from which film comes: one for a base board, two for a hip board. */
  readonly sides: 1 | 2;
  /** Its place, share of the developed arch from its own springing. */
  readonly archShare: number;
}

/** What a board carries in one group of load sets. */
interface BoardLoads {
  readonly film: NetComponent;
  /** On its face: outward with the film lifted off, inward with the film lying. */
  readonly faceOutward: NetComponent;
  readonly faceInward: NetComponent;
}

const lifted = "film lifted off its hoops";
const lying = "film lying on its hoops";

/** Rows and demands of one board, hoop to hoop. */
export class BoardOnHoops {
  readonly loads: readonly BoardLoads[];
  private readonly spacing: number;
  private readonly radius: number;

  constructor(
    readonly of: OneBoard,
    { evaluation }: ChainContext,
    films: readonly NetComponent[],
  ) {
    const { house, shell } = evaluation;
    this.spacing = house.spacing;
    this.radius = shell.arc.radius;
    const width = boardWidthForForce.evaluate(of.board.width, this.spacing, of.sides);
    const area = effectiveArea.evaluate(this.spacing, width);
    this.loads = films.map((film) => {
      const outside = archComponent(film.group.table, of.archShare, true, area);
      if (!outside) throw new Error("a covered arch has components");
      const one = (way: "inward" | "outward") =>
        netComponent(film.group, outside, way, `face of the ${of.words} near an end`);
      return { film, faceOutward: one("outward"), faceInward: one("inward") };
    });
  }

  pull(sheet: Worksheet, q: number, { film }: BoardLoads): number {
    return workTension(sheet, q, film, this.radius);
  }

  /** Load per length on the board's own face with the film lifted off, outward. */
  private suction(sheet: Worksheet, q: number, { faceOutward }: BoardLoads): number {
    const outward = workPressure(sheet, q, faceOutward);
    return sheet.work(pressedWidth, [Math.min(0, outward), this.of.board.width]);
  }

  /** Load per length on the face with the film lying on hoops and board, pressed inward. */
  pressed(
    sheet: Worksheet,
    q: number,
    { faceInward }: BoardLoads,
    by: typeof boardWidthForForce | typeof boardWidthForMoment,
  ): number {
    const { board, sides } = this.of;
    const width = sheet.work(by, [board.width, this.spacing, sides]);
    return sheet.work(pressedWidth, [workPressure(sheet, q, faceInward), width]);
  }

  moment(sheet: Worksheet, load: number, symbol: string): number {
    return sheet.work(spanMoment, [load, this.spacing], { symbol });
  }

  about(part: string, run: string, windCase: LinkRow["windCase"]) {
    return { link: "boards", part, place: "near the ends of the house", run, windCase } as const;
  }

  fixing(allowable: number | null): LinkRow[] {
    const resistance = allowable === null ? unrated : ratedResistance(allowable);
    const part = `fixing of the ${this.of.words} to a hoop`;
    const measure = "force" as const;
    return this.loads.flatMap((one) => [
      ...componentCases(one.film).map((windCase) =>
        windRow(
          { ...this.about(part, lifted, windCase), measure },
          (sheet, q) => {
            const both = [this.pull(sheet, q, one), this.suction(sheet, q, one)] as const;
            const load = sheet.work(pullAndSuction, both);
            return sheet.work(pullOnLength, [load, this.spacing]);
          },
          resistance,
        ),
      ),
      ...componentCases(one.faceInward).map((windCase) =>
        windRow(
          { ...this.about(part, lying, windCase), measure },
          (sheet, q) => {
            const load = this.pressed(sheet, q, one, boardWidthForForce);
            return sheet.work(pullOnLength, [load, this.spacing]);
          },
          resistance,
        ),
      ),
    ]);
  }

  /** Moment on edge by the film's pull, where nothing tells what the board can take. */
  onEdge(): LinkRow[] {
    const part = `bending of the ${this.of.words}`;
    return this.loads.flatMap((one) =>
      componentCases(one.film).map((windCase) =>
        windRow(
          { ...this.about(part, lifted, windCase), measure: "moment" },
          (sheet, q) => this.moment(sheet, this.pull(sheet, q, one), "M_e"),
          unrated,
        ),
      ),
    );
  }

  bending(edge: LumberStrength, face: LumberStrength): LinkRow[] {
    const { words, board } = this.of;
    const part = `bending of the ${words}`;
    const onEdge = (sheet: Worksheet) => boardStrength(board, "edge", sheet);
    const onFace = (sheet: Worksheet) => boardStrength(board, "face", sheet);
    return this.loads.flatMap((one) => [
      ...componentCases(one.film).flatMap((windCase) => [
        windRatioRow(
          this.about(part, lifted, windCase),
          (sheet, q, method) => {
            const edgeMoment = this.moment(sheet, this.pull(sheet, q, one), "M_e");
            const faceMoment = this.moment(sheet, this.suction(sheet, q, one), "M_f");
            const strengths = [edge.moment[method], face.moment[method]] as const;
            return sheet.work(twoWayBending, [edgeMoment, strengths[0], faceMoment, strengths[1]]);
          },
          (sheet) => {
            onEdge(sheet);
            onFace(sheet);
          },
        ),
        windRow(
          { ...this.about(`shear of the ${words}`, lifted, windCase), measure: "force" },
          (sheet, q) => sheet.work(spanReaction, [this.pull(sheet, q, one), this.spacing]),
          edge.shear,
          onEdge,
        ),
      ]),
      ...componentCases(one.faceInward).flatMap((windCase) => [
        windRow(
          { ...this.about(part, lying, windCase), measure: "moment" },
          (sheet, q) => this.moment(sheet, this.pressed(sheet, q, one, boardWidthForMoment), "M_f"),
          face.moment,
          onFace,
        ),
        windRow(
          { ...this.about(`shear of the ${words}`, lying, windCase), measure: "force" },
          (sheet, q) => {
            const load = this.pressed(sheet, q, one, boardWidthForForce);
            return sheet.work(spanReaction, [load, this.spacing]);
          },
          face.shear,
          onFace,
        ),
      ]),
    ]);
  }

  /** Moment on the face for a net pressure of one. */
  get perPressure(): number {
    const { board, sides } = this.of;
    const width = boardWidthForMoment.evaluate(board.width, this.spacing, sides);
    return spanMoment.evaluate(width, this.spacing);
  }
}

/** Grade unknown: the weaker one; outdoors: wet. */
export const boardStrength = (
  { wood, thickness, width }: Board,
  loaded: "edge" | "face",
  sheet?: Worksheet,
) => lumberStrength({ wood, grade: "stud", thickness, width, loaded, wet: true }, sheet);
