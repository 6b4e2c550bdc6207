import { publishedTests } from "./published-pull.ts";

publishedTests(
  ["statics", "common-practice"],
  ["weight over sliding pull", "weight of a piece", "submerged factor"],
);
