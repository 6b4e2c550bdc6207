import { answer, complaints, isOld } from "../session/state.ts";
import { Cautions } from "./cautions.tsx";
import { First } from "./first.tsx";
import { Governing } from "./governing.tsx";
import { Hold } from "./hold.tsx";
import { Lighter } from "./lighter.tsx";
import { Move } from "./move.tsx";
import { Sides } from "./sides.tsx";
import { Standing } from "./standing.tsx";
import { States } from "./states.tsx";
import { Storm } from "./storm.tsx";
import { ToMend } from "./to-mend.tsx";

const places = [
  ["standing-title", "Gust"],
  ["first-title", "First to go"],
  ["hold-title", "Hold it"],
  ["storm-title", "Storm"],
  ["move-title", "Move"],
  ["lighter-title", "Lighter"],
  ["cautions-title", "Bear in mind"],
] as const;

/** Everything that is answered, the owner's questions first. */
export function AnswerView() {
  if (!answer.value) {
    return (
      <section aria-labelledby="no-answer">
        <h2 id="no-answer">No answer yet</h2>
        {complaints.value.length > 0 ? <ToMend /> : <p role="status">Being worked out.</p>}
      </section>
    );
  }
  return (
    <>
      {isOld.value ? <ToMend /> : null}
      <nav class="jumps" aria-label="Answers">
        {places.map(([id, title]) => (
          <button
            type="button"
            key={id}
            onClick={() => document.getElementById(id)?.scrollIntoView()}
          >
            {title}
          </button>
        ))}
      </nav>
      <div class={isOld.value ? "old" : ""}>
        <Standing />
        <States />
        <Sides />
        <Governing />
        <First />
        <Hold />
        <Storm />
        <Move />
        <Lighter />
        <Cautions />
      </div>
    </>
  );
}
