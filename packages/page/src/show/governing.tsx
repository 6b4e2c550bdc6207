import { governingCases, showMeasured, showRatio, speedLimit } from "@hoopstay/core";
import { Folded } from "../ask/folded.tsx";
import { answer, system } from "../session/state.ts";
import { TableBox } from "./table-box.tsx";
import { openWorking, workingOfCheck } from "./working-of.ts";

/** The worst of all states for every check, as the reviewer reads it. */
export function Governing() {
  const review = answer.value?.review;
  if (!review) return null;
  const { governing, combination } = review;
  return (
    <Folded title={`For the reviewer (${combination})`}>
      {() => (
        <TableBox label="Governing checks">
          <caption>
            The worst of all states for each check. Compare code speeds with map speeds only, never
            with a gust.
          </caption>
          <thead>
            <tr>
              <th scope="col">Check</th>
              <th scope="col">Ratio</th>
              <th scope="col">Code speed</th>
              <th scope="col">Case</th>
            </tr>
          </thead>
          <tbody>
            {governing.map((check) => (
              <tr key={check.check}>
                <th scope="row">{check.words}</th>
                <td class="n">
                  <button
                    type="button"
                    class="number"
                    aria-label={`${check.words}: ratio ${showRatio(check.ratio[combination])}. Show the working`}
                    onClick={() => openWorking(workingOfCheck(check), check.words)}
                  >
                    {showRatio(check.ratio[combination])}
                  </button>
                </td>
                <td class="n">
                  {showMeasured(speedLimit(check.codeSpeed[combination]), system.value)}
                </td>
                <td>{governingCases(check, combination)}</td>
              </tr>
            ))}
          </tbody>
        </TableBox>
      )}
    </Folded>
  );
}
