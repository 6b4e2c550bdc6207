import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build, defineConfig, type Plugin } from "vite";

const here = import.meta.dirname;
const { version } = JSON.parse(readFileSync(join(here, "../cli/package.json"), "utf8"));
const define = { __VERSION__: JSON.stringify(version) };
const target = "es2022";

/** Files of which something is in the page, for their licences. */
const inside = new Set<string>();
const note = (modules: Readonly<Record<string, { readonly renderedLength: number }>>): void => {
  for (const [file, { renderedLength }] of Object.entries(modules))
    if (renderedLength > 0) inside.add(file);
};

/**
 * Errors of mathjs have an error as prototype. Where one is made, Chromium finds out its line, and for that
 * reads the whole engine twice more: 0.2 s of every start. An object that inherits does as well.
 */
const plainPrototypes: Plugin = {
  name: "plain-prototypes",
  transform(code, id) {
    if (!/mathjs.*\/error\/\w+Error\.js$/.test(id)) return null;
    const plain = code.replace(/= new (\w*Error)\(\);/, "= Object.create($1.prototype);");
    if (plain === code) throw new Error(`no prototype found in ${id}`);
    return { code: plain, map: null };
  },
};

const within = (script: string): string => script.replaceAll("</script", "<\\/script");

/** A script apart from the page's own, of everything it needs. */
async function scriptOf(entry: string): Promise<string> {
  const made = await build({
    configFile: false,
    root: here,
    logLevel: "error",
    define,
    plugins: [plainPrototypes],
    build: {
      target,
      write: false,
      lib: { entry: join(here, entry), formats: ["iife"], name: "hoopstay" },
    },
  });
  const [{ output }] = Array.isArray(made) ? made : [{ output: [] }];
  const [script] = output;
  if (script?.type !== "chunk") throw new Error(`nothing was made of ${entry}`);
  note(script.modules);
  return script.code;
}

const asText = (id: string, text: string): string =>
  `<script type="text/plain" id="${id}">${within(text)}</script>`;

/** The engine, compressed, and what begins it while the rest is read. */
const engineFirst: Plugin = {
  name: "engine-first",
  async transformIndexHtml(page) {
    const engine = await scriptOf("src/engine/worker.ts");
    const parts = [
      asText("become-engine", await scriptOf("src/engine/become-engine.ts")),
      `<script>${within(await scriptOf("src/engine/begin-engine.ts"))}</script>`,
      asText("engine", gzipSync(engine, { level: 9 }).toString("base64")),
      '<div id="app">',
    ];
    return page.replace('<div id="app">', () => parts.join("\n"));
  },
};

/** Puts script and style into the page itself: one file, which needs no other. */
const intoOneFile: Plugin = {
  name: "into-one-file",
  enforce: "post",
  generateBundle(_, bundle) {
    const page = bundle["index.html"];
    const scripts = Object.values(bundle).filter((part) => part.type === "chunk");
    const [script, ...others] = scripts;
    if (page?.type !== "asset" || !script || others.length > 0) {
      throw new Error("expected one page with one script");
    }
    note(script.modules);
    const source = JSON.stringify([...inside].sort());
    this.emitFile({ type: "asset", fileName: "modules.json", source });
    const tag = /<script[^>]*src="[^"]*"[^>]*><\/script>/;
    const inline = `<script type="module">${within(script.code)}</script>`;
    page.source = String(page.source)
      .replace(tag, "")
      .replace("</body>", () => `${inline}</body>`);
    delete bundle[script.fileName];
  },
};

export default defineConfig({
  root: here,
  define,
  plugins: [engineFirst, intoOneFile],
  build: {
    target,
    modulePreload: false,
    chunkSizeWarningLimit: 2000,
    rolldownOptions: { checks: { pluginTimings: false } },
  },
});
