import { type PullLog, type System, showWords } from "@hoopstay/core";
import { typed } from "../html/escape.ts";
import { list, numbers, table, words } from "../html/table.ts";
import { columnUnit } from "../value/reader.ts";

/** The pull log: each test, what it counts, what is allowed, and what one more would buy. */
export function pullLogMarkup({ kinds, next }: PullLog, system: System): string {
  const todo = list(next.map((sentence) => typed(showWords(sentence, system))));
  if (kinds.length === 0) return `<p>No pull tests are in the site file.</p>\n${todo}`;
  const pulled = kinds.filter((kind) => kind.tests.length > 0);
  const tests = pulled.map((kind) => {
    const force = columnUnit(
      "force",
      system,
      kind.tests.flatMap(({ pull, counts }) => [pull, counts ?? 0]),
    );
    return table(
      `Pull tests of ${kind.kind}`,
      `Pull tests: ${typed(kind.words)}. Pulls in ${force.symbol}.`,
      [
        words("Date"),
        words("Place"),
        words("Ground"),
        numbers("Pull"),
        words("Ended"),
        numbers("Counts"),
        words("Why"),
      ],
      kind.tests.map((test) => [
        typed(test.date),
        typed(test.place),
        typed(test.ground),
        force.cell(test.pull),
        typed(test.ended),
        test.counts === null ? "<b>left out</b>" : force.cell(test.counts),
        typed(test.why),
      ]),
    );
  });
  return [...tests, ratedTable(kinds, system), todo].join("\n");
}

function ratedTable(kinds: PullLog["kinds"], system: System): string {
  const force = columnUnit(
    "force",
    system,
    kinds.flatMap(({ rated }) =>
      rated === null ? [] : [rated.characteristic, rated.allowable, rated.atMean, rated.atLowest],
    ),
  );
  return table(
    "What the pull tests allow",
    `What the tests allow, in ${force.symbol}, and what one more test would buy.`,
    [
      words("Kind"),
      words("Worked out by"),
      numbers("Characteristic"),
      numbers("Divided by"),
      numbers("Allowed"),
      numbers("One more, at the mean"),
      numbers("One more, at the lowest"),
    ],
    kinds.map(({ words: kind, rated }) =>
      rated === null
        ? [typed(kind), "too few tests count", ...Array(5).fill("\u2013")]
        : [
            typed(kind),
            typed(rated.route),
            force.cell(rated.characteristic),
            rated.factor.toFixed(2),
            `<b>${force.cell(rated.allowable)}</b>`,
            force.cell(rated.atMean),
            force.cell(rated.atLowest),
          ],
    ),
    "plain",
  );
}
