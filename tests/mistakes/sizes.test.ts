import { readInputs } from "@hoopstay/file";
import { describe, expect, test } from "vitest";
import { soundSite } from "../cli/program.ts";
import { sha256 } from "./told.ts";

/** A house of nothing but hoops on rails, so that no other entry contradicts its sizes. */
const plainHouse = (span: string, length: string, spacing: string): string => `
house: Plain
hoops:
  shape: round
  span: ${span}
  rise: ${Number.parseFloat(span) / 2} ${span.replace(/[\d. ]+/, "")}
  length: ${length}
  spacing: ${spacing}
  tube: { outside: 2.375 in, wall: 0.154 in, standard: A500 }
stubs: { tube: { outside: 1.9 in, wall: 0.120 in, standard: A500 }, length: 12 in }
rails: { tube: { size: HSS4X3X3/16 } }
film: { mass: 5.5 oz/yd2 }
`;

function doubtsOf(span: string, length: string, spacing: string): string {
  const texts: Record<string, string> = {
    house: plainHouse(span, length, spacing),
    site: soundSite,
  };
  const { house } = readInputs("house", "site", (name) => texts[name] ?? "", sha256);
  return house.doubts.filter((words) => words.includes("was entered")).join("\n");
}

describe("a digit or a unit that makes a house of another size", () => {
  test.each([
    ["a width of 180 ft was entered", "180 ft", "40 ft", "5 ft"],
    ["a width of 5 ft was entered", "5 ft", "40 ft", "5 ft"],
    ["a length of 400 ft was entered", "18 ft", "400 ft", "5 ft"],
    ["a length of 5 ft was entered", "18 ft", "5 ft", "5 ft"],
    ["a spacing of hoops of 20 ft was entered", "18 ft", "40 ft", "20 ft"],
    ["a spacing of hoops of 5 in was entered", "18 ft", "40 ft", "5 in"],
  ])("%s: doubted beside the answer", (words, span, length, spacing) => {
    const told = doubtsOf(span, length, spacing);
    expect(told.match(/was entered\. Houses that are dragged/g)).toHaveLength(1);
    expect(told).toContain(words);
  });

  test.each([
    ["6 ft", "8 ft", "2 ft"],
    ["60 ft", "200 ft", "10 ft"],
    ["18 ft", "48 ft", "12 ft"],
  ])("%s by %s, hoops at %s: not doubted", (span, length, spacing) => {
    expect(doubtsOf(span, length, spacing)).toBe("");
  });
});
