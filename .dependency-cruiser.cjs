// What each package may import: workspace packages, and third-party libraries by name.
const layers = {
  core: [[], "mathjs"],
  load: [["core"]],
  section: [["core"]],
  ground: [["core"]],
  frame: [["core", "section"]],
  strength: [["core", "section"]],
  stability: [["core"], "yalps"],
  house: [["core", "load", "section", "ground", "frame", "strength", "stability"], "zod"],
  evidence: [
    ["core", "load", "section", "ground", "frame", "strength", "stability", "house"],
    "yaml",
  ],
  report: [["core"], "d3-array"],
  file: [["core", "house"], "yaml"],
  cli: [["file", "house", "report", "evidence", "core"], "commander|diff"],
  page: [["file", "house", "report", "core"], "preact|@preact/signals|@noble/hashes|vite"],
};

/** Besides: the examples that the page starts from, and the engine packed into it. */
const ofPage = "|^fixtures/(houses|sites)/|^virtual:engine$";

const rules = Object.entries(layers).flatMap(([name, [packages, libraries]]) => {
  const from = { path: `^packages/${name}/src/` };
  const inside = `^packages/(${[name, ...packages].join("|")})/src/`;
  const library = libraries ? `|node_modules/(@types/)?(${libraries})/` : "";
  return [
    {
      name: `${name}-layer`,
      severity: "error",
      from,
      to: {
        pathNot: `${inside}${library}${name === "page" ? ofPage : ""}`,
        dependencyTypesNot: ["core"],
      },
    },
  ];
});

module.exports = {
  forbidden: [
    ...rules,
    {
      name: "only-the-command-knows-node",
      severity: "error",
      from: { path: "^packages/", pathNot: "^packages/(cli/|page/[^/]+$)" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "package-without-layer",
      severity: "error",
      from: { path: "^packages/", pathNot: `^packages/(${Object.keys(layers).join("|")})/` },
      to: {},
    },
    { name: "no-circle", severity: "error", from: {}, to: { circular: true } },
    {
      name: "resolvable",
      severity: "error",
      from: {},
      to: { couldNotResolve: true, pathNot: "^virtual:" },
    },
  ],
  options: {
    exclude: { path: "(^|/)(dist|coverage)/" },
    doNotFollow: { path: "node_modules" },
    tsConfig: { fileName: "tsconfig.base.json" },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "types", "default"],
    },
  },
};
