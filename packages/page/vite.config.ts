import { readFileSync } from "node:fs";
import { defineConfig, type Plugin } from "vite";

const { version } = JSON.parse(
  readFileSync(new URL("../cli/package.json", import.meta.url), "utf8"),
);

/** Puts script and style into the page itself: one file, which needs no other. */
const intoOneFile: Plugin = {
  name: "into-one-file",
  enforce: "post",
  generateBundle(_, bundle) {
    const page = bundle["index.html"];
    if (page?.type !== "asset") throw new Error("no page was made");
    let html = String(page.source);
    for (const [name, part] of Object.entries(bundle)) {
      if (part === page) continue;
      const text = part.type === "chunk" ? part.code : String(part.source);
      const tag =
        part.type === "chunk"
          ? new RegExp(`<script[^>]*src="[^"]*${name}"[^>]*></script>`)
          : new RegExp(`<link[^>]*href="[^"]*${name}"[^>]*>`);
      if (!tag.test(html)) throw new Error(`${name} is not part of the page`);
      const inline =
        part.type === "chunk"
          ? `<script type="module">${text.replaceAll("</script", "<\\/script")}</script>`
          : `<style>${text}</style>`;
      html = html
        .replace(tag, () => "")
        .replace(part.type === "chunk" ? "</body>" : "</head>", (end) => `${inline}${end}`);
      delete bundle[name];
    }
    page.source = html;
  },
};

export default defineConfig({
  root: import.meta.dirname,
  define: { __VERSION__: JSON.stringify(version) },
  plugins: [intoOneFile],
  worker: { format: "iife", rolldownOptions: { checks: { pluginTimings: false } } },
  build: {
    target: "es2022",
    modulePreload: false,
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
    rolldownOptions: { checks: { pluginTimings: false } },
  },
});
