/** State of the ground on the day of a test. Unknown ground is taken as dry. */
export type TestGround = "wet" | "dry" | "frozen" | "unknown";

/** One anchor pulled in the ground, as the owner writes it down. */
export interface PullTest {
  readonly place: string;
  /** Day of the test, as typed. */
  readonly date: string;
  /** Which kind of anchor was pulled; tests of another kind say nothing about this one. */
  readonly anchorKind: string;
  /** Largest pull reached, or the pull at which the head had moved too far, N. */
  readonly pull: number;
  /** Whether the anchor gave way, or the owner stopped before it did. */
  readonly ended: "failed" | "stopped";
  /** How far the head moved at that pull, m. */
  readonly movement?: { readonly up?: number; readonly sideways?: number };
  readonly ground: TestGround;
  /** How many times the pull was repeated without the movement growing. */
  readonly repeats: number;
}

/** How an anchor holds; decides what water takes from a test made in dry ground. */
export type AnchorForm = "plate" | "stake" | "deadman";

/** The anchors that the tests are to speak for. */
export interface AnchorsInUse {
  readonly place: string;
  readonly anchorKind: string;
  readonly form: AnchorForm;
  /** Whether the ground may be wetter in a storm than on a dry test day. */
  readonly groundMayGetWet: boolean;
  readonly everyAnchorProofLoaded: boolean;
  /** Coefficient of variation known from before, where it is; never taken below what the tests show. */
  readonly knownScatter?: number;
}
