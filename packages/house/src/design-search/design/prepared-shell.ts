import { measuredLikewise } from "../../compare/measured-likewise.ts";
import type { House } from "../../model/house-model.ts";
import { readHouseModel } from "../../model/read-house.ts";
import type { Site } from "../../model/site-model.ts";
import type { PathComplaint } from "../../read/complaints.ts";
import { type Evaluation, evaluate } from "../../review/evaluate.ts";
import type { HouseInput } from "../../schema/house-schema.ts";
import { type KnownSlide, ShellStability } from "../stability/shell-stability.ts";
import type { Design } from "./design.ts";
import { designInput } from "./design-input.ts";
import { shellKey, swappedTubes } from "./swapped-tubes.ts";

/** Houses that the wind cannot tell apart: one of them, its wind, and what that asks of any of them. */
export interface PreparedShell {
  readonly house: House;
  readonly evaluation: Evaluation;
  readonly stability: ShellStability;
}

/** Shells kept at once; more come with very wide ranges only. */
const mostKept = 4000;

/** Shells of a search, prepared when the first design of each is looked at. */
export class PreparedShells {
  private readonly kept = new Map<string, PreparedShell | null>();

  constructor(
    private readonly input: HouseInput,
    private readonly today: House,
    private readonly site: Site,
    private readonly slides: readonly KnownSlide[],
  ) {}

  /** The shell of a design; null where such a house cannot be computed. */
  of(design: Omit<Design, "layout">): PreparedShell | null {
    const key = shellKey(design.hoop, design.count, design.rail);
    const known = this.kept.get(key);
    if (known !== undefined) return known;
    if (this.kept.size >= mostKept) this.kept.clear();
    const made = this.prepared(design);
    this.kept.set(key, made);
    return made;
  }

  private prepared(design: Omit<Design, "layout">): PreparedShell | null {
    const complaints: PathComplaint[] = [];
    const input = designInput(this.input, this.today.lines.hoopCount, design);
    const house = readHouseModel(input, complaints);
    if (!house || complaints.length > 0) return null;
    // The wind is what is wanted: anchors and ballast would only be worked for nothing.
    const evaluation = evaluate({ ...house, anchors: [] }, this.site);
    const stability = new ShellStability(
      evaluation,
      house,
      this.site,
      evaluation.pressure,
      this.slides,
    );
    return { house, evaluation, stability };
  }

  /** The house of a design with its anchors. */
  house({ house }: PreparedShell, { hoop, rail, layout }: Design): House {
    const swapped = { ...swappedTubes(house, hoop, rail), anchors: layout.anchors };
    return measuredLikewise(this.today, swapped);
  }
}
