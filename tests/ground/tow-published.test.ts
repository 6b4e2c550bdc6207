import { publishedTests } from "./published-pull.ts";

publishedTests(
  ["statics", "asabe-d497", "farm-sled-tests"],
  ["tow pull", "traction ratios", "dragging friction"],
);
