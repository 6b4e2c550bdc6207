import type { Citation, Formula } from "@hoopstay/core";

export type Exposure = "B" | "C" | "D";

export interface ExposureConstants {
  readonly alpha: number;
  /** Gradient height as printed, ft. */
  readonly gradientFeet: number;
}

type Numbers<Count extends number, Held extends number[] = []> = Held["length"] extends Count
  ? Readonly<Held>
  : Numbers<Count, [...Held, number]>;

/**
 * What an edition of the standard decides. A further edition is a further folder that fills this
 * in; nothing else asks which edition is at work.
 */
export interface Edition {
  readonly id: "7-16" | "7-22";
  readonly title: string;
  readonly source: "asce-7-16" | "asce-7-22";
  readonly exposures: Readonly<Record<Exposure, ExposureConstants>>;
  readonly exposureCitation: Citation;
  /** K_z from z, z_g (m) and alpha. */
  readonly exposureCoefficient: Formula<Numbers<3>>;
  /** Velocity pressure as the edition prints it, from K_z, K_zt, K_d, K_e, V. */
  readonly velocityPressure: Formula<Numbers<5>>;
  /** Pressure toward a surface from q_h, K_d, G C_p, GC_pi. */
  readonly pressure: Formula<Numbers<4>>;
}
