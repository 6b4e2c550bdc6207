import { Gust } from "./gust.tsx";
import { statesHeld } from "./standing.tsx";
import { TableBox } from "./table-box.tsx";
import { workingOfCheck } from "./working-of.ts";

/** Every state the house can be left in. */
export function States() {
  const { held } = statesHeld();
  return (
    <TableBox label="Every state it can be left in">
      <caption>Every state it can be left in, as it is held now</caption>
      <thead>
        <tr>
          <th scope="col">State</th>
          <th scope="col">Holds?</th>
          <th scope="col">First to give way</th>
          <th scope="col">Gust</th>
        </tr>
      </thead>
      <tbody>
        {held.map((state) => (
          <tr key={state.id}>
            <th scope="row">
              {state.words}
              {state.now ? <span class="tag"> {"\u25b6"} now</span> : null}
            </th>
            <td>{state.holds ? "\u2713 holds" : <b>{"\u2717"} no</b>}</td>
            <td>{state.first.words}</td>
            <td class="n">
              <Gust
                speed={state.first.workingGust}
                worked={workingOfCheck(state.first)}
                about={state.words}
              />
            </td>
          </tr>
        ))}
      </tbody>
    </TableBox>
  );
}
