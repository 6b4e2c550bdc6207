import { type Citation, cite, FOOT } from "@hoopstay/core";

interface SpacingRow {
  readonly rule: string;
  /** Greatest distance between ties along one side, ft. */
  readonly spacing: number;
  readonly citation: Citation;
}

const louisiana = cite("la-51-912", "51:912.25, diagonal ties of used homes", "read");

/** Greatest tie spacings of manufactured-home rules, in the order and units of the sources. */
export const spacingRows: readonly SpacingRow[] = [
  {
    rule: "Illinois",
    spacing: 12,
    citation: cite("ill-77-870", "870.220(b)(3), each side", "read"),
  },
  { rule: "Louisiana zone I", spacing: 10, citation: louisiana },
  { rule: "Louisiana zone II", spacing: 8, citation: louisiana },
  { rule: "Louisiana zone III", spacing: 6.5, citation: louisiana },
];

/** Greatest spacing of anchors along a rail, and of the last one from the end, m: Illinois [read]. */
export const illinoisSpacing = { between: 12 * FOOT, fromEnd: 2 * FOOT } as const;
