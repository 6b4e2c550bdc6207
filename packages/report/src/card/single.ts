import { typed } from "../html/escape.ts";
import { head, warning } from "../html/head.ts";
import { shortDigest } from "../sheet/sheet.ts";
import { cardStyle } from "../style/card.ts";
import { holdStyle } from "../style/hold.ts";
import { screenStyle } from "../style/screen.ts";

/** What tells a printed page from one of other inputs. */
export interface Stamp {
  readonly date: string | null;
  readonly digest: string;
  readonly version: string;
}

/** A page of its own beside the report: banner, what it is of, content, and its stamp. */
export function single(
  what: string,
  { house, site }: { readonly house: string; readonly site: string },
  { date, digest, version }: Stamp,
  body: string,
  kind: string,
): string {
  return `${head(`${what}: ${house}, ${site}`, `${screenStyle}${holdStyle}${cardStyle}`)}
<body class="${kind}">
<header>
<p class="warning" role="note"><b>${warning}</b></p>
<h1>${what}: ${typed(house)} <span>at ${typed(site)}</span></h1>
</header>
<main>
${body}
</main>
<footer>${date === null ? "no date in the site file" : typed(date)} \u00b7 inputs ${typed(
    shortDigest(digest),
  )} \u00b7 hoopstay ${typed(version)} \u00b7 good for this house at this place only</footer>
</body>
</html>
`;
}
