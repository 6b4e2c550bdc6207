import type { Anchor, Link, LinkId } from "@hoopstay/ground";
import type { leads } from "../schema/anchor-kind.ts";

type Lead = (typeof leads)[number];

/** A block that stands by the house, tied to it. N and m. */
interface BlockSizes {
  readonly weight: number;
  readonly width: number;
  readonly tieHeight: number;
  readonly tieSetback: number;
}

/** A kind of anchor in SI; what it holds is worked out with the ground. */
export interface AnchorKind {
  readonly id: string;
  readonly words: string;
  readonly body: Anchor | { readonly kind: "block"; readonly block: BlockSizes };
  /** Shaft upright, or set in line with the tether. */
  readonly upright: boolean;
  /** Made fast to the shaft itself: it may carry a sideways pull of its own. */
  readonly direct: boolean;
  readonly links: Readonly<Partial<Record<LinkId, Link>>>;
  readonly angle: number;
  readonly lead: Lead;
  readonly knownScatter: number | null;
  /** Widest plate, m: neighbours stand five of them apart. */
  readonly breadth: number | null;
}
