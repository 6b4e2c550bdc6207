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
