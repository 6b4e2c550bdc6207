import { chainStyle } from "../style/chain.ts";
import { holdStyle } from "../style/hold.ts";
import { printStyle } from "../style/print.ts";
import { screenStyle } from "../style/screen.ts";
import { typed } from "./escape.ts";
import { head, warning } from "./head.ts";

/** A self-contained page about a house at a site: no script, nothing fetched. */
export function page(
  what: string,
  { house, site }: { readonly house: string; readonly site: string },
  footer: string,
  sheets: string,
): string {
  return pageOf(`${what}: ${house}, ${site}`, `${what}: ${typed(house)}`, footer, sheets);
}

/** The same about anything: a title in words, a heading in markup, and a look of its own on top. */
export function pageOf(
  title: string,
  heading: string,
  footer: string,
  sheets: string,
  style = "",
): string {
  return `${head(title, `${screenStyle}${holdStyle}${chainStyle}${style}${printStyle(warning, footer)}`)}
<body>
<a class="skip" href="#answer">Skip to the answer</a>
<header>
<p class="warning" role="note"><b>${warning}</b></p>
<h1>${heading}</h1>
</header>
<main>
${sheets}
</main>
</body>
</html>
`;
}
