import { publishedTests } from "./published-pull.ts";

publishedTests(
  [
    "en-1990",
    "en-1997-1",
    "en-1997-1-uk-na",
    "nist-handbook",
    "ill-77-870",
    "en-1537",
    "caltrans-ssp-46",
    "statics",
  ],
  [
    "factor for the 5 % fractile",
    "95 % quantile of Student's t",
    "correlation factors",
    "head movement at failure",
    "proof load",
    "proof test",
  ],
);
