import { printStyle } from "../style/print.ts";
import { screenStyle } from "../style/screen.ts";
import { flat, typed } from "./escape.ts";

/** The sentence nobody may miss. */
const warning = "Consult a licensed engineer. Not a sealed design; local code first.";

/** A self-contained page: no script, nothing fetched. */
export function page(house: string, site: string, footer: string, sheets: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Wind check: ${flat(house)}, ${flat(site)}</title>
<style>${screenStyle}${printStyle(warning, footer)}</style>
</head>
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
