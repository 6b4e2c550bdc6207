import * as z from "zod/mini";
import { described } from "../schema/described.ts";

/** What `--json` prints: every case and every check, in SI. Made only where it is asked for. */
export function resultSchema() {
  const nullable = (about: string) => described(z.nullable(z.number()), about);
  const number = (about: string) => described(z.number(), about);
  const speed = nullable("m/s; null where this check sets no limit");
  const ratio = nullable("demand over resistance; null where nothing resists: beyond all bounds");

  const check = z.strictObject({
    check: z.enum(["lift", "tip-right", "tip-left", "tip-front", "tip-back", "slide"]),
    weight: z.enum(["low", "high"]),
    without_arch: described(z.boolean(), "sliding: walls and ends only"),
    demand: number("N, or N m about the base line"),
    resistance: number("N, or N m about the base line"),
    ratio,
    code_speed: speed,
    working_gust: nullable("m/s, ASD only; null for LRFD and where no limit"),
  });

  const held = z.strictObject({
    hold: z.enum(["bare", "fitted"]),
    combination: z.enum(["ASD", "LRFD"]),
    checks: z.array(check),
  });

  const components = z.strictObject({
    fx: z.number(),
    fy: z.number(),
    fz: z.number(),
    mx: z.number(),
    my: z.number(),
    mz: z.number(),
    fx_without_arch: z.number(),
  });

  const windCase = z.strictObject({
    id: z.string(),
    load_case: z.int(),
    direction: z.string(),
    reading: z.nullable(z.enum(["arc", "span"])),
    coefficient_set: z.string(),
    vertical: z.enum(["across", "along"]),
    inside_coefficient: z.number(),
    twist: z.int(),
    components: described(components, "N and N m at the map speed, z up, right-handed"),
    held: described(z.array(held), "empty for cases 2 and 4: no single check feels torsion"),
    together: described(
      z.strictObject({
        hold: z.enum(["bare", "fitted"]),
        combination: z.enum(["ASD", "LRFD"]),
        factor: z.nullable(z.number()),
      }),
      "all tethers, ground pushes and friction at once, as held and in the chosen combination: largest share of this wind in balance; null: no limit",
    ),
  });

  const heldWeight = z.strictObject({
    hold: z.enum(["bare", "fitted"]),
    name: z.enum(["low", "high"]),
    weight: z.number(),
    x: z.number(),
    y: z.number(),
    z: z.number(),
  });

  return z.strictObject({
    program: z.string(),
    version: z.string(),
    digest: z.string(),
    house: z.string(),
    site: z.string(),
    holds: z.boolean(),
    combination: z.enum(["ASD", "LRFD"]),
    map_speed: z.number(),
    pressure: number("K_d q_h at the map speed, Pa"),
    factors: z.strictObject({ kz: z.number(), kzt: z.number(), kd: z.number(), ke: z.number() }),
    weights: z.array(heldWeight),
    take_off: z.array(
      z.strictObject({
        what: z.string(),
        low: z.number(),
        high: z.number(),
        x: z.number(),
        y: z.number(),
        z: z.number(),
      }),
    ),
    anchors: z.array(
      z.strictObject({
        name: z.string(),
        kind: z.nullable(z.string()),
        x: z.number(),
        y: z.number(),
        toward: z.array(z.number()),
        allowable: number("N along the tether; 0 where nothing rates it"),
        basis: z.string(),
        governs: z.nullable(z.string()),
        reason: z.nullable(z.string()),
      }),
    ),
    states: z.array(
      z.strictObject({
        id: z.string(),
        words: z.string(),
        load_set: z.string(),
        enclosure: z.string(),
        inside_coefficients: z.array(z.number()),
        governing: z.array(
          z.strictObject({
            hold: z.enum(["bare", "fitted"]),
            combination: z.enum(["ASD", "LRFD"]),
            checks: z.array(
              z.extend(check, {
                case: z.string(),
                limit_case: described(z.string(), "case of the lowest limit"),
              }),
            ),
            together: described(
              z.strictObject({
                factor: z.nullable(z.number()),
                code_speed: speed,
                working_gust: speed,
                weight: z.enum(["low", "high"]),
                case: z.string(),
              }),
              "all tethers, ground pushes and friction at once, cases 1 to 4: largest share of the design wind in balance; null: no limit",
            ),
            least_load: z.array(
              z.strictObject({
                check: z.string(),
                load: z.string(),
                demand: z.number(),
                resistance: z.number(),
                ratio,
              }),
            ),
          }),
        ),
      }),
    ),
    load_sets: z.array(
      z.strictObject({
        id: z.string(),
        weights: described(
          z.array(heldWeight),
          "what is left of the low weight where a wall or the film is missing",
        ),
        cases: z.array(windCase),
      }),
    ),
    doubts: z.array(z.string()),
    assumptions: z.array(z.strictObject({ key: z.string(), used: z.string(), why: z.string() })),
    cautions: z.array(z.string()),
    not_checked: z.array(z.string()),
  });
}

export type Result = z.output<ReturnType<typeof resultSchema>>;
