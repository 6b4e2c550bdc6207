/** A value the owner did not give, and on which side it errs. */
export interface Assumption {
  readonly key: string;
  readonly used: string;
  readonly why: string;
}

/** Collects assumptions while a file is turned into a model. */
export class Assumptions {
  readonly list: Assumption[] = [];

  /** The given value, or the assumed one with a line about it. */
  take<Value>(
    given: Value | undefined,
    assumed: Value,
    key: string,
    used: string,
    why: string,
  ): Value {
    if (given !== undefined) return given;
    this.list.push({ key, used, why });
    return assumed;
  }
}
