import type { Path } from "../read/complaints.ts";

/** A variant as it was asked for: keys of the house file with what would stand there. */
export interface AskedVariant {
  readonly name: string;
  readonly change: Readonly<Record<string, unknown>>;
  /** Where its changes stand, for complaints. */
  readonly at: Path;
}
