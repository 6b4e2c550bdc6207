/** A worker that becomes an engine, and what stops it, should anything. */
export interface Begun {
  readonly worker: Worker;
  readonly failed: Promise<string>;
}

/** What is said where no engine can be begun. */
export const notBegun = ({ message }: Error): string =>
  `this browser cannot start the engine (${message})`;

declare global {
  /** Begins an engine; the worker of the first stands ready before the page's own script is read. */
  var beginEngine: () => Begun;
}
