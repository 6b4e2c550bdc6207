import { type FoundDesign, measured, Refusal, type SearchReview, type Words } from "@hoopstay/core";
import { chainReview } from "../chain/chain-review.ts";
import { QuickLinks } from "../chain/quick/quick-links.ts";
import { bendingOf } from "../compare/bending.ts";
import { steelWeight } from "../compare/steel-weight.ts";
import { mean } from "../compare/worth-telling.ts";
import type { House } from "../model/house-model.ts";
import type { Site } from "../model/site-model.ts";
import { evaluate } from "../review/evaluate.ts";
import type { HouseInput } from "../schema/house-schema.ts";
import { anchorLayouts } from "./design/anchor-layouts.ts";
import { type AnchorLayout, type Design, designAt, stepThrough } from "./design/design.ts";
import { DesignCosts } from "./design/design-cost.ts";
import { designInput } from "./design/design-input.ts";
import { PreparedShells } from "./design/prepared-shell.ts";
import { type ExactGust, exactGust } from "./exact-design.ts";
import { cloudOf } from "./found/cloud.ts";
import { designChanges, designWords, todayWords } from "./found/design-words.ts";
import { searchWords } from "./found/search-words.ts";
import { type Weighed, worthALook } from "./found/worth-a-look.ts";
import { FullWork } from "./full-work.ts";
import { type QuickDesign, quickDesign } from "./quick-design.ts";
import { type DesignRange, designsIn } from "./range/design-range.ts";
import { SearchedDesigns } from "./searched-designs.ts";
import { knownSlides } from "./stability/known-slides.ts";

/** What is searched, and from where. */
export interface SearchRequest {
  readonly input: HouseInput;
  readonly house: House;
  readonly site: Site;
  readonly range: DesignRange;
}

/** How far a search has come. */
export interface SearchProgress {
  readonly looked: number;
  readonly asked: number;
  /** How many of the best ones are worked in full so far; null while designs are looked at. */
  readonly worked: number | null;
}

/** Designs looked at between two reports of progress. */
const atOnce = 20;
/** Designs worked in full at most: each takes about as long as a check of the whole house. */
const mostWorked = 8;

/**
 * Looks through a range of designs. Each is worked by quick forms that leave checks out and so never
 * promise less than is true; the best of them are worked in full, and only those are told of.
 *
 * @yields progress; give back true to stop looking: of what was found by then only what is worth a look
 * is still worked in full
 */
export function* searchDesigns(
  request: SearchRequest,
): Generator<SearchProgress, SearchReview, boolean> {
  const asked = designsIn(request.range);
  let stopped = yield { looked: 0, asked, worked: null };
  const search = new DesignSearch(request);
  while (search.looked < asked && !stopped) {
    search.look(Math.min(atOnce, asked - search.looked));
    stopped = yield { looked: search.looked, asked, worked: null };
  }
  const full = search.fullWork();
  while (search.workNext(full, stopped)) {
    const stop = yield { looked: search.looked, asked, worked: full.count };
    stopped ||= stop;
  }
  return search.review(full);
}

class DesignSearch {
  looked = 0;
  private readonly layouts: readonly AnchorLayout[];
  private readonly shells: PreparedShells;
  private readonly links = new QuickLinks();
  private readonly costs: DesignCosts;
  private readonly notCompared: Words | null;
  private readonly step: number;
  private readonly designs: SearchedDesigns;
  private readonly today: FoundDesign;
  private readonly found = new Map<number, FoundDesign>();
  private leftOut = 0;

  constructor(private readonly request: SearchRequest) {
    const { input, house, site, range } = request;
    const evaluation = evaluate(house, site);
    const chain = chainReview(evaluation);
    this.layouts = anchorLayouts(range, house, site);
    this.shells = new PreparedShells(input, house, site, knownSlides(evaluation));
    const hoop = house.parts.find((part) => part.kind === "bar" && part.what === "hoops");
    const length = hoop?.kind === "bar" ? hoop.length : 0;
    this.costs = new DesignCosts(input, bendingOf(chain, length, house.rail.length));
    this.notCompared = this.costs.notCompared(range);
    this.step = stepThrough(range);
    this.designs = new SearchedDesigns(designsIn(range), this.notCompared === null);
    const steel = mean(steelWeight(house, evaluation.takeOff));
    this.today = {
      words: todayWords(input, house.lines.hoopCount),
      changes: [],
      steel: measured(steel, "force"),
      cost: this.notCompared ? null : this.costs.of(house, input),
      ...exactGust(evaluation, chain),
    };
  }

  look(count: number): void {
    const { range } = this.request;
    const asked = designsIn(range);
    for (let turn = 0; turn < count; turn += 1) {
      const number = (this.looked * this.step) % asked;
      this.looked += 1;
      const design = designAt(range, this.layouts, number);
      const found = this.quick(design);
      if (found) {
        const cost = this.designs.cost ? this.costOf(design, found.house) : null;
        this.designs.add(number, found, cost);
      } else this.leftOut += 1;
    }
  }

  private quick(design: Design): QuickDesign | null {
    try {
      return quickDesign(this.shells, design, this.request.site, this.links);
    } catch (error) {
      if (error instanceof Refusal) return null;
      throw error;
    }
  }

  /** What is left to do once designs are looked at. */
  fullWork(): FullWork {
    return new FullWork(this.designs, weighed(this.today));
  }

  /** Works the next design in full; false where that is the end of it. */
  workNext(full: FullWork, looksOnly: boolean): boolean {
    const next = full.count < mostWorked ? full.next(looksOnly) : undefined;
    if (next === undefined) return false;
    const found = this.inFull(next);
    this.found.set(next, found);
    full.add(next, found.gust);
    return true;
  }

  private costOf(design: Design, house: House): number | null {
    const { input, house: today } = this.request;
    return this.costs.of(house, designInput(input, today.lines.hoopCount, design));
  }

  private inFull(place: number): FoundDesign {
    const { input, house: today, site, range } = this.request;
    const design = designAt(range, this.layouts, this.designs.number[place] as number);
    const shell = this.shells.of(design);
    if (!shell) throw new Error("a design that was looked at is gone");
    const house = this.shells.house(shell, design);
    const kind = today.anchorKinds.find(({ id }) => id === range.anchors?.kind);
    const changes = designChanges(input, today.lines.hoopCount, design, kind?.id);
    return {
      words: designWords(design, kind?.words),
      changes,
      steel: measured(this.designs.steel[place] as number, "force"),
      cost: this.notCompared ? null : this.costOf(design, house),
      ...(changes.length === 0 ? this.asToday() : gustInFull(house, site)),
    };
  }

  private asToday(): ExactGust {
    const { gust, whole, link } = this.today;
    return { gust, whole, link };
  }

  review(full: FullWork): SearchReview {
    const { range } = this.request;
    const { leftOut, notCompared, today } = this;
    const asked = designsIn(range);
    const found = full.unbeaten.map((place) => this.found.get(place) as FoundDesign);
    return {
      range: {
        assumed: range.assumed,
        rows: [
          { what: "hoops", values: range.hoops.map(({ name }) => name) },
          { what: "number of hoops", values: range.counts.map(String) },
          { what: "rails", values: range.rails.map(({ name }) => name) },
          {
            what: "anchors on each rail",
            values: range.anchors?.perRail.map(String) ?? ["as fitted"],
          },
        ],
      },
      looked: this.looked,
      asked,
      worked: full.count,
      complete: this.looked === asked,
      currency: notCompared ? null : this.costs.prices.currency,
      today,
      unbeaten: found,
      worthALook: worthALook(weighed(today), found.map(weighed)),
      cloud: cloudOf(this.designs),
      findings: [
        ...range.findings,
        ...searchWords({ worked: full.count, open: full.open, leftOut }),
        ...(notCompared ? [notCompared] : []),
      ],
    };
  }
}

const weighed = ({ steel, gust }: FoundDesign): Weighed => ({ steel: steel.value, gust });

function gustInFull(house: House, site: Site): ExactGust {
  const evaluation = evaluate(house, site);
  return exactGust(evaluation, chainReview(evaluation));
}
