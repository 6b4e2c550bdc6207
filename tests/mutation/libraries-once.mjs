import { createRequire } from "node:module";

const requireFrom = createRequire(import.meta.url);

/** Examples tried of each law: fewer than in the tests, so that no figure here is too good. */
const few = 20;

let most = few;

/** Gives the laws that count their examples as many as they ask for. */
export function allExamples(wanted) {
  most = wanted ? Number.POSITIVE_INFINITY : few;
}

/** Libraries as the tests need them for thousands of mutants: what does not change is made once. */
const once = {
  "fast-check"(real) {
    const assert = (law, settings = {}) => {
      const numRuns = Math.min(settings.numRuns ?? 100, most);
      // A law that has failed needs no smaller counter-example here.
      real.assert(law, { ...settings, numRuns, endOnFailure: true });
    };
    return { ...real, assert };
  },
  yaml(real) {
    const known = new Map();
    return {
      ...real,
      parseDocument: (text) => remembered(known, text, () => real.parseDocument(text)),
    };
  },
  mathjs(real) {
    const known = new Map();
    const create = (parts) =>
      remembered(known, Object.keys(parts).join(), () => real.create(parts));
    return { ...real, create };
  },
};

function remembered(known, key, make) {
  if (!known.has(key)) known.set(key, make());
  return known.get(key);
}

const loaded = new Map();

/** A library by its path. */
export function library(path) {
  return remembered(loaded, path, () => {
    const real = requireFrom(path);
    const name = Object.keys(once).find((one) => path.includes(`/node_modules/${one}/`));
    return name ? once[name](real) : real;
  });
}
