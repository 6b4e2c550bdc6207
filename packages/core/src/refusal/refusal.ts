import type { RefusalCode } from "./codes.ts";

/** One complaint about an input: where it is, what was given, what is expected, how to mend it. */
export interface Complaint {
  readonly code: RefusalCode;
  readonly file?: string;
  readonly line?: number;
  readonly key?: string;
  readonly given?: string;
  readonly expected: string;
  readonly mend: string;
}

/** All complaints about the inputs at once. Thrown at the door; nothing has been written. */
export class Refusal extends Error {
  constructor(readonly complaints: readonly Complaint[]) {
    super(complaints.map((complaint) => `${complaint.code}: ${complaint.expected}`).join("\n"));
    this.name = "Refusal";
  }

  /** By name: the command is built in several bundles, each with a class of its own. */
  static override [Symbol.hasInstance](error: unknown): boolean {
    return Error[Symbol.hasInstance](error) && (error as Error).name === "Refusal";
  }
}
