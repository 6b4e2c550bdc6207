/** A worker that becomes an engine, and what stops it, should anything. */
export interface Begun {
  readonly worker: Worker;
  readonly failed: Promise<string>;
}

declare global {
  /** Begins an engine; the worker of the first stands ready before the page's own script is read. */
  var beginEngine: () => Begun;
}
