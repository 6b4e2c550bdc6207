import { type Citation, cite, constant } from "@hoopstay/core";
import { KSI } from "../connection/common/customary.ts";

const modulusOf = (words: string, value: number, citation: Citation) =>
  constant(
    "steel-modulus",
    "E",
    `modulus of elasticity of steel, ${words}`,
    value,
    "pressure",
    citation,
  );

const shearModulusOf = (words: string, value: number, citation: Citation) =>
  constant(
    "steel-shear-modulus",
    "G",
    `shear modulus of steel, ${words}`,
    value,
    "pressure",
    citation,
  );

const american = cite("aisc-360-22", "symbols: E = 29,000 ksi, G = 11,200 ksi", "second-hand");
const european = cite("en-1993-1-1", "3.2.6", "memory");

/** Elastic constants by the family of the standard behind the steel, Pa. */
export const elasticConstants = {
  american: {
    modulus: modulusOf("29,000 ksi", 29_000 * KSI, american),
    shearModulus: shearModulusOf("11,200 ksi", 11_200 * KSI, american),
  },
  european: {
    modulus: modulusOf("210 GPa", 210e9, european),
    shearModulus: shearModulusOf("81 GPa", 81e9, european),
  },
} as const;
