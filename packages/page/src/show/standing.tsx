import { showWords } from "@hoopstay/core";
import type { ShownState } from "../engine/messages.ts";
import { answer, system } from "../session/state.ts";
import { Gust } from "./gust.tsx";
import { workingOfCheck } from "./working-of.ts";

/** The states as the house is held now, and by its own weight. */
export function statesHeld(): {
  readonly held: readonly ShownState[];
  readonly loose: readonly ShownState[];
} {
  const states = answer.value?.review.states ?? [];
  const how = states.at(-1)?.hold ?? "bare";
  return {
    held: states.filter(({ hold }) => hold === how),
    loose: how === "bare" ? [] : states.filter(({ hold }) => hold === "bare"),
  };
}

export const lowest = (states: readonly ShownState[]): ShownState | undefined =>
  states.length === 0
    ? undefined
    : states.reduce((a, b) => (b.first.workingGust < a.first.workingGust ? b : a));

/** Does it hold, and at what gust does it give way: now, shut, at its worst, and by its weight. */
export function Standing() {
  const review = answer.value?.review;
  if (!review) return null;
  const { held, loose } = statesHeld();
  const shut = held.find(({ id }) => id === "shut");
  const others = lowest(held.filter(({ id }) => id !== "shut"));
  const looseShut = loose.find(({ id }) => id === "shut") ?? loose[0];
  const boxes = [
    { title: "As it sits now", state: held.find(({ now }) => now) },
    { title: "Shut", state: shut?.now ? undefined : shut },
    { title: "Open or stripped, at its worst", state: others },
    { title: "Without anchors and ballast", state: looseShut },
  ];
  return (
    <section aria-labelledby="standing-title">
      <h2 id="standing-title">What it stands</h2>
      <p class="verdict">
        <b>{review.holds ? "\u2713 Holds" : "\u2717 Does not hold"}</b>
      </p>
      <p class="headline">{showWords(review.headline, system.value)}</p>
      <dl class="boxes">
        {boxes.map(({ title, state }) =>
          state ? (
            <div key={title}>
              <dt>{title}</dt>
              <dd>
                <Gust
                  large
                  speed={state.first.workingGust}
                  worked={workingOfCheck(state.first)}
                  about={`${title}, ${state.words}`}
                />
                <span>
                  {state.words}: begins to {state.first.words}
                </span>
              </dd>
            </div>
          ) : null,
        )}
      </dl>
      <ul>
        {review.answers.map((words) => {
          const said = showWords(words, system.value);
          return <li key={said}>{said}</li>;
        })}
      </ul>
      <p class="about">
        Gusts as a forecast gives them: the strongest three seconds, in open country, 33 ft (10 m)
        up. Act at three quarters of them.
      </p>
    </section>
  );
}
