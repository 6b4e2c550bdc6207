import { pipeOfNominal } from "@hoopstay/section";
import { describe, expect, test } from "vitest";

const inch = 0.0254;
const meant = (outside: number, wall: number): string | undefined =>
  pipeOfNominal(outside * inch, wall * inch)?.name;

/** Nominal sizes and walls: ASME B36.10M, from memory. */
describe("a tube with a pipe's wall and its nominal size for an outside", () => {
  test.each([
    [2, 0.154, "Pipe2STD"],
    [2, 0.218, "Pipe2XS"],
    [1.25, 0.14, "Pipe1-1/4STD"],
    [1.5, 0.145, "Pipe1-1/2STD"],
    [1, 0.133, "Pipe1STD"],
  ])("%s in by %s in is meant for %s", (outside, wall, name) => {
    expect(meant(outside, wall)).toBe(name);
  });

  test("within two per cent of both, and no further", () => {
    expect(meant(2.03, 0.154)).toBe("Pipe2STD");
    expect(meant(1.97, 0.1565)).toBe("Pipe2STD");
    expect(meant(2.05, 0.154)).toBeUndefined();
    expect(meant(1.95, 0.154)).toBeUndefined();
    expect(meant(2, 0.158)).toBeUndefined();
  });

  test("not where the outside is the pipe's own, or the wall another", () => {
    expect(meant(2.375, 0.154)).toBeUndefined();
    expect(meant(2, 0.065)).toBeUndefined();
    expect(meant(2, 0.436)).toBeUndefined();
  });
});
