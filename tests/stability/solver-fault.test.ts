import { SolverFault } from "@hoopstay/stability";
import { describe, expect, test } from "vitest";
import { orFault } from "../../packages/stability/src/all-at-once/solver-fault.ts";

describe("what is found, or why the solver found nothing", () => {
  const fault = new SolverFault("solver-gave-up", "no answer");
  const thrower = (thrown: unknown) => () => {
    throw thrown;
  };

  test("a find is handed on; a fault of the solver is told, not thrown", () => {
    expect(orFault(() => 7)).toBe(7);
    expect(orFault(thrower(fault))).toBe(fault);
  });

  test("an error that is not the solver's is no answer", () => {
    expect(() => orFault(thrower(new RangeError("elsewhere")))).toThrow(RangeError);
  });
});
