import type { CentreLines, Obstacle } from "@hoopstay/load";
import type { Tube } from "@hoopstay/section";
import type { Anchor } from "@hoopstay/stability";
import type { AnchorKind } from "./anchor-kind.ts";
import type { Assumption } from "./assumption.ts";
import type { LinkParts } from "./link-parts.ts";
import type { Part, Place } from "./part.ts";

export type WallName = "left" | "right" | "front" | "back";
export type Openings = Readonly<Record<WallName | "roof", number>>;

/** Something the owner can open: where, how much, and what it is. */
export interface Opening {
  readonly kind: "door" | "roll-up" | "vent";
  readonly wall: WallName | "roof";
  readonly area: number;
  /** A vent that cannot be shut is open in every state. */
  readonly always: boolean;
}

/** A state the owner described in full. */
export interface GivenState {
  readonly id: string;
  readonly words: string;
  readonly openings: Openings;
  readonly missing: readonly ("front" | "back")[];
}

export interface FittedAnchor extends Anchor {
  readonly name: string;
  readonly side: "left" | "right" | "middle";
  /** Its kind, where the ground tells what it holds; null where its pull was given. */
  readonly kind: string | null;
}

/** What drags the house. N */
export interface Tractor {
  readonly what: string;
  readonly weight: number;
  readonly onDrivenWheels: number;
}

/** A feed bin or tank: what its filling adds to the high weight, N, and where, m. */
export interface Filling extends Place {
  readonly what: string;
  readonly weight: number;
}

export interface Ballast extends Place {
  readonly what: string;
  readonly weight: number;
  readonly fixed: boolean;
}

export interface Rail {
  readonly tube: Tube;
  readonly depth: number;
  readonly width: number;
  /** Bearing length and where its ends lie, m. */
  readonly length: number;
  readonly front: number;
  readonly back: number;
  readonly noseFront: number;
  readonly noseBack: number;
}

/** The house in SI, ready to be computed with. */
export interface House {
  readonly name: string;
  readonly lines: CentreLines;
  readonly spacing: number;
  readonly leg: number;
  readonly hoopTube: Tube;
  readonly rail: Rail;
  readonly parts: readonly Part[];
  /** What the load path runs through, from cover to rail. */
  readonly links: LinkParts;
  readonly obstacles: readonly Obstacle[];
  readonly openings: readonly Opening[];
  /** Gaps that stay open in every state, by wall, m2. */
  readonly gapWidth: { readonly sides: number; readonly ends: number };
  readonly removableEnds: readonly ("front" | "back")[];
  readonly filmRemovable: boolean;
  readonly givenStates: readonly GivenState[];
  readonly onlyGivenStates: boolean;
  readonly anchorKinds: readonly AnchorKind[];
  readonly anchors: readonly FittedAnchor[];
  readonly tractor: Tractor | null;
  readonly fillings: readonly Filling[];
  readonly ballast: readonly Ballast[];
  readonly measured: {
    readonly low: number;
    readonly high: number;
    readonly at: Place | null;
  } | null;
  readonly assumptions: readonly Assumption[];
  readonly findings: readonly string[];
  /** What is likely a slip in its file. */
  readonly doubts: readonly string[];
}
