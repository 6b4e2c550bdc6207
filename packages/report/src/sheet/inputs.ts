import type { InputRow } from "@hoopstay/core";
import { typed } from "../html/escape.ts";
import { table, words } from "../html/table.ts";
import { valueMarkup } from "../value/reader.ts";
import type { Matter } from "./sheet.ts";

/** What was typed, beside what the program made of it; what was not typed is marked. */
export function inputs({ review, system }: Matter): string {
  const rows = (file: InputRow["file"]) =>
    review.inputs
      .filter((row) => row.file === file)
      .map(({ key, typed: given, used, assumed, why }) => [
        `<code>${typed(key)}</code>`,
        assumed ? '<b class="assumed">\u25c7 assumed</b>' : typed(given),
        valueMarkup(used, system),
        typed(why),
      ]);
  const columns = [words("Entry"), words("As typed"), words("As used"), words("Why")];
  const assumed = review.inputs.filter((row) => row.assumed).length;
  return `<p>${assumed} of ${review.inputs.length} values were not given and are marked
<b class="assumed">\u25c7 assumed</b>: check these first. Both files stand in this page word for word, unseen:
<code>hoopstay recheck</code> makes the report again from them and says what differs.</p>
${table("House file", "House file", columns, rows("house"))}
${table("Site file", "Site file", columns, rows("site"))}`;
}
