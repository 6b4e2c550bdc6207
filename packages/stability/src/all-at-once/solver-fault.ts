/** The solver gave up, or its answer does not balance: a fault of the program, never a result. */
export class SolverFault extends Error {
  constructor(
    readonly code: "solver-gave-up" | "solver-unbalanced" | "solver-disagrees",
    detail: string,
  ) {
    super(`${code}: ${detail}`);
    this.name = "SolverFault";
  }
}

/** What is found, or the solver's fault where it is one; any other error is passed on. */
export function orFault<Found>(find: () => Found): Found | SolverFault {
  try {
    return find();
  } catch (thrown) {
    if (!(thrown instanceof SolverFault)) throw thrown;
    return thrown;
  }
}
