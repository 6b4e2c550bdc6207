import { answer } from "../session/state.ts";
import { PaperFold } from "./paper-fold.tsx";

/** What to bear in mind, and what is not checked. */
export function Cautions() {
  const review = answer.value?.review;
  if (!review) return null;
  return (
    <section aria-labelledby="cautions-title">
      <h2 id="cautions-title">Bear in mind</h2>
      <ul>
        {review.cautions.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <h3>Not checked</h3>
      <ul>
        {review.notChecked.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <PaperFold title="Sources" paper={{ name: "cautions" }} />
    </section>
  );
}
