import { type Chapter, cite, taken } from "@hoopstay/core";
import { requireWholeCount } from "./whole-count.ts";

/**
 * The 95 % quantile of Student's t, one-sided, from the finite series for whole degrees of freedom.
 *
 * Left out: other probabilities.
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (memory),
 * tested against the published table.
 *
 * @param freedom degrees of freedom, a whole number from 1
 * @throws Refusal `out-of-range`
 * @returns the value that t stays below with probability 0.95; above 1.645
 * @example quantile95(3) // 2.353
 */
export function quantile95(freedom: number): number {
  requireWholeCount(freedom, "degrees of freedom");
  // Between -t and t lies 0.90 where 0.95 lies below t. The series is in theta = atan(t / sqrt(n)).
  let low = 0;
  let high = Math.PI / 2;
  for (let middle = high / 2; low < middle && middle < high; middle = (low + high) / 2) {
    if (probabilityWithin(middle, freedom) < 0.9) low = middle;
    else high = middle;
  }
  return Math.sqrt(freedom) * Math.tan(high);
}

/** Probability that |t| stays below sqrt(freedom) tan(theta). */
function probabilityWithin(theta: number, freedom: number): number {
  const cosine = Math.cos(theta);
  const even = freedom % 2 === 0;
  let term = even ? 1 : cosine;
  let sum = freedom === 1 ? 0 : term;
  for (let power = even ? 2 : 3; power <= freedom - 2; power += 2) {
    term *= ((power - 1) / power) * cosine ** 2;
    sum += term;
  }
  const series = Math.sin(theta) * sum;
  return even ? series : (2 / Math.PI) * (theta + series);
}

/** The quantile as a step. */
export function quantileStep(freedom: number, chapter: Chapter): number {
  const name = `95 % quantile of Student's t, ${freedom} degrees of freedom`;
  const citation = cite("nist-handbook", "1.3.6.7.2, critical values of Student's t", "memory");
  const value = quantile95(freedom);
  const series = "by its series, checked against the table";
  return chapter.work(taken(series, "student-t", "t_95", name, value, "ratio", citation), []);
}
