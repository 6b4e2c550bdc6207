/**
 * What a section offers a check, SI. Axis x is the one across: bending about it works the depth,
 * the width of a flat and the first leg of an angle.
 */
export interface SectionProperties {
  /** A, m2, from the design wall. */
  readonly area: number;
  /** I_x and I_y, m4, about the centroid. */
  readonly secondMomentX: number;
  readonly secondMomentY: number;
  /** S_x and S_y (European W_el), m3, at the farther fibre. */
  readonly elasticModulusX: number;
  readonly elasticModulusY: number;
  /** Z_x and Z_y (European W_pl), m3. */
  readonly plasticModulusX: number;
  readonly plasticModulusY: number;
  /** r_x and r_y, m. */
  readonly radiusX: number;
  readonly radiusY: number;
  /** Least radius of gyration, m; of an angle about its inclined axis z. */
  readonly leastRadius: number;
  /** J (European I_t), m4. */
  readonly torsionConstant: number;
  /** C (European C_t), m3: torque over the largest shear stress. */
  readonly torsionModulus: number;
  /** Outer surface per metre, m, nominal. */
  readonly outsidePerimeter: number;
  /** Wall or thickness the properties are computed from, m; half the diameter of a solid bar. */
  readonly designWall: number;
  /** Nominal mass per length, kg/m, without zinc. */
  readonly massPerLength: number;
  /** False for tube outside the listed standards. */
  readonly listed: boolean;
}

/** What depends on the nominal size and the convention, and not on the design wall. */
export type NominalProperties = Pick<
  SectionProperties,
  "outsidePerimeter" | "massPerLength" | "listed"
>;
