import { appendFileSync } from "node:fs";
import process from "node:process";

/** A speed beside a floor measured in the same run, so that it means the same on any machine. */
export interface Told {
  readonly name: string;
  /** What over what. */
  readonly words: string;
  readonly ratio: number;
  readonly better: "more" | "less";
  /** How many times worse than the committed ratio a busy machine may make it. */
  readonly room: number;
}

/** Prints a ratio, and hands it to whoever runs the benchmarks. */
export function tell(told: Told): void {
  console.log(`  ratio ${told.ratio.toFixed(2)}: ${told.words} (${told.better} is better)`);
  const file = process.argv[3];
  if (file !== undefined) appendFileSync(file, `${JSON.stringify(told)}\n`);
}
