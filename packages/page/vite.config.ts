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

/** The engine as one script, compressed: the page unpacks it for each worker it starts. */
const packedEngine: Plugin = {
  name: "packed-engine",
  resolveId: (id) => (id === "virtual:engine" ? `\0${id}` : null),
  async load(id) {
    if (id !== "\0virtual:engine") return null;
    const made = await build({
      configFile: false,
      root: here,
      logLevel: "error",
      define,
      build: {
        target,
        write: false,
        lib: { entry: join(here, "src/engine/worker.ts"), formats: ["iife"], name: "engine" },
      },
    });
    const [{ output }] = Array.isArray(made) ? made : [{ output: [] }];
    const [script] = output;
    if (script?.type !== "chunk") throw new Error("no engine was made");
    note(script.modules);
    return `export default "${gzipSync(script.code, { level: 9 }).toString("base64")}"`;
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
    const inline = `<script type="module">${script.code.replaceAll("</script", "<\\/script")}</script>`;
    page.source = String(page.source)
      .replace(tag, "")
      .replace("</body>", () => `${inline}</body>`);
    delete bundle[script.fileName];
  },
};

export default defineConfig({
  root: here,
  define,
  plugins: [packedEngine, intoOneFile],
  build: {
    target,
    modulePreload: false,
    chunkSizeWarningLimit: 2000,
    rolldownOptions: { checks: { pluginTimings: false } },
  },
});
