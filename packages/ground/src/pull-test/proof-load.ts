import { type Citation, cite, formula } from "@hoopstay/core";

export const proofLoad = formula({
  id: "proof-load",
  symbol: "P_p",
  name: "least proof load of each anchor in use",
  measure: "force",
  arguments: [["T_d", "greatest pull of this anchor under service wind (ASD)", "force"]],
  expression: "1.25 * T_d",
  citation: cite(
    "en-1537",
    "annex E, E.2.2 (1.25 of the working load, or the design resistance)",
    "read",
  ),
  evaluate: (design) => 1.25 * design,
});

/** A rule of proof loading: loads as shares of the design load, minutes held. */
export interface ProofPractice {
  readonly name: string;
  readonly alignment: number;
  readonly steps: readonly number[];
  readonly minutesAtStep: readonly [least: number, most: number];
  readonly minutesAtTop: number;
  /** Further movement of the head, m, between these minutes at the top load that is still accepted. */
  readonly accepted: { readonly movement: number; readonly from: number; readonly to: number };
  readonly citation: Citation;
}

/** State highway practice for grouted anchors: up to 1.50 of the design load. */
export const highwayPractice: ProofPractice = {
  name: "Caltrans proof test",
  alignment: 0.1,
  steps: [0.25, 0.5, 0.75, 1.0, 1.25, 1.5],
  minutesAtStep: [1, 2],
  minutesAtTop: 10,
  accepted: { movement: 0.04 * 0.0254, from: 1, to: 10 },
  citation: cite("caltrans-ssp-46", "46-2.01D, proof test; 50 minutes more if it creeps", "read"),
};

/** What an owner is asked to do: the same steps, ended at the least proof load. */
export const lightAnchorPractice: ProofPractice = {
  name: "proof load of a light anchor",
  alignment: 0.1,
  steps: [0.25, 0.5, 0.75, 1.0, 1.25],
  minutesAtStep: [1, 2],
  minutesAtTop: 10,
  accepted: { movement: 0.001, from: 1, to: 10 },
  citation: cite(
    "judgement",
    "steps of Caltrans SSP 46, top load of EN 1537, creep limit of PTI; head movement limits apply too",
    "judgement",
  ),
};
