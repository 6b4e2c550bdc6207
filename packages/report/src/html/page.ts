import { holdStyle } from "../style/hold.ts";
import { printStyle } from "../style/print.ts";
import { screenStyle } from "../style/screen.ts";
import { typed } from "./escape.ts";
import { head, warning } from "./head.ts";

/** A self-contained page: no script, nothing fetched. */
export function page(house: string, site: string, footer: string, sheets: string): string {
  return `${head(`Wind check: ${house}, ${site}`, `${screenStyle}${holdStyle}${printStyle(warning, footer)}`)}
<body>
<a class="skip" href="#answer">Skip to the answer</a>
<header>
<p class="warning" role="note"><b>${warning}</b></p>
<h1>Wind check: ${typed(house)}</h1>
</header>
<main>
${sheets}
</main>
</body>
</html>
`;
}
