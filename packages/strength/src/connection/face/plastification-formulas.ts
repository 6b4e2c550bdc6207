import { type Citation, cite, formula, type Measure } from "@hoopstay/core";

const yieldStrength = ["F_y", "yield strength of the rail", "pressure"] as const;
const wall = ["t", "design wall of the rail", "length"] as const;
const width = ["B", "width of the rail's face", "length"] as const;
const branch = ["B_b", "side of the stub, round or equivalent square", "length"] as const;

/** The three yield-line forms; the two standards write them alike and put different sides in. */
function yieldLineForms(id: string, stress: "Q_f" | "k_n", citations: readonly Citation[]) {
  const left = [stress, "what the rail's own stress leaves", "ratio"] as const;
  const given = [yieldStrength, wall, width, branch, left] as const;
  const form = (
    part: string,
    symbol: string,
    name: string,
    measure: Measure,
    expression: string,
    evaluate: (Fy: number, t: number, B: number, Bb: number, Q: number) => number,
    citation: Citation | undefined,
  ) =>
    formula({
      id: `${id}-${part}`,
      symbol,
      name,
      measure,
      arguments: given,
      expression: expression.replaceAll("Q", stress),
      citation: citation ?? cite("en-1993-1-8", "table 7.14", "memory"),
      range: "B_b under B",
      evaluate,
    });
  return {
    axial: form(
      "axial",
      "P_n",
      "plastification of the face, force along the stub",
      "force",
      "F_y * t^2 * (2 * B_b / (B - B_b) + 4 / sqrt(1 - B_b / B)) * Q",
      (Fy, t, B, Bb, Q) => Fy * t * t * ((2 * Bb) / (B - Bb) + 4 / Math.sqrt(1 - Bb / B)) * Q,
      citations[0],
    ),
    inPlane: form(
      "in-plane",
      "M_ip",
      "plastification of the face, moment along the rail",
      "moment",
      "F_y * t^2 * B_b * (B / (2 * B_b) + 2 / sqrt(1 - B_b / B) + B_b / (B - B_b)) * Q",
      (Fy, t, B, Bb, Q) =>
        Fy * t * t * Bb * (B / (2 * Bb) + 2 / Math.sqrt(1 - Bb / B) + Bb / (B - Bb)) * Q,
      citations[1],
    ),
    outOfPlane: form(
      "out-of-plane",
      "M_op",
      "plastification of the face, moment across the rail",
      "moment",
      "F_y * t^2 * (0.5 * B_b * (B + B_b) / (B - B_b)" +
        " + sqrt(2 * B * B_b * (B + B_b) / (B - B_b))) * Q",
      (Fy, t, B, Bb, Q) => {
        const spread = (B + Bb) / (B - Bb);
        return Fy * t * t * (0.5 * Bb * spread + Math.sqrt(2 * B * Bb * spread)) * Q;
      },
      citations[2],
    ),
  };
}

/**
 * American forms: branch side pi D/4. With beta = B_b/B and eta the same, P_n = F_y t^2
 * [2 eta/(1 - beta) + 4/sqrt(1 - beta)] Q_f.
 */
export const aiscFace = yieldLineForms("face", "Q_f", [
  cite("aisc-360-10", "table K2.2, force normal to the face, chord plastification", "second-hand"),
  cite("aisc-360-10", "table K3.2, in-plane moment, chord plastification", "memory"),
  cite("aisc-360-10", "table K3.2, out-of-plane moment, chord plastification", "memory"),
]);

/**
 * European forms for a square branch of side d_1, of which a round one has pi/4. The rule is printed
 * for the axial force; for moments it is carried over, and can only lower the result [judgement].
 */
export const enSquareFace = yieldLineForms("en-face", "k_n", [
  cite("en-1993-1-8", "table 7.11, T joint, chord face failure", "second-hand"),
  cite("en-1993-1-8", "table 7.14, in-plane moment, chord face failure", "memory"),
  cite("en-1993-1-8", "table 7.14, out-of-plane moment, chord face failure", "memory"),
]);

const roundShare = (measure: "force" | "moment") =>
  formula({
    id: `en-round-${measure}`,
    symbol: measure === "force" ? "N_1" : "M_1",
    name: "strength with a round branch, European form",
    measure,
    arguments: [["R_sq", "strength with a square branch of side d_1", measure]],
    expression: "3.141592653589793 / 4 * R_sq",
    citation: cite("en-1993-1-8", "table 7.11, circular braces: pi/4, d_1 for b_1", "second-hand"),
    evaluate: (square) => (Math.PI / 4) * square,
  });

export const enRound = { force: roundShare("force"), moment: roundShare("moment") } as const;
