import type { FromSide } from "@hoopstay/core";
import { answer } from "../session/state.ts";
import { Gust } from "./gust.tsx";
import { statesHeld } from "./standing.tsx";
import { TableBox } from "./table-box.tsx";
import { workingOfCase } from "./working-of.ts";

type Check = FromSide["checks"][number];

const columns = [
  { title: "Lifts", of: (check: string) => check === "lift" },
  { title: "Tips", of: (check: string) => check.startsWith("tip") },
  { title: "Slides", of: (check: string) => check === "slide" },
] as const;

const lowestOf = (checks: readonly Check[]): Check =>
  checks.reduce((a, b) => (b.workingGust < a.workingGust ? b : a));

/** Lifting, tipping and sliding of the present state by the side the wind comes from. */
export function Sides() {
  const sides = answer.value?.sides ?? [];
  const { held } = statesHeld();
  const now = held.find((state) => state.now) ?? held[0];
  const all = sides.flatMap(({ checks }) => checks);
  if (all.length === 0 || !now) return null;
  const worst = Math.min(...all.map(({ workingGust }) => workingGust));
  return (
    <section aria-labelledby="sides-title">
      <h3 id="sides-title">From every side</h3>
      <TableBox label="Gusts by side of the wind">
        <caption>{now.words}: the gust at which it begins to lift, tip or slide</caption>
        <thead>
          <tr>
            <th scope="col">Wind</th>
            {columns.map(({ title }) => (
              <th scope="col" key={title}>
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {sides.map(({ from, checks }) => (
            <tr key={from}>
              <th scope="row">{from}</th>
              {columns.map(({ title, of }) => {
                const check = lowestOf(checks.filter((one) => of(one.check)));
                const mark = check.workingGust === worst ? "\u25c0" : "";
                return (
                  <td key={title} class="n">
                    <Gust
                      speed={check.workingGust}
                      worked={workingOfCase(check.check, check.id)}
                      about={`${title}, wind ${from}`}
                    />{" "}
                    {mark}
                    {title === "Tips" ? (
                      <small>{check.words.replace(/^tip over /, "")}</small>
                    ) : null}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </TableBox>
      <p class="about">
        Everything at once (tethers, ground and friction together) has one answer for all sides; it
        stands in the table of states where it comes first.
      </p>
    </section>
  );
}
