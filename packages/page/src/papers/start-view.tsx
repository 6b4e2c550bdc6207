import { useEffect } from "preact/hooks";
import { prepare } from "../session/conversation.ts";
import { usualNames } from "../session/state.ts";
import { chooseUnits, open } from "../session/steps.ts";
import { examples } from "./examples.ts";
import { OpenFiles } from "./open-files.tsx";

/** The first screen: an example in one touch, files of one's own, or an empty sheet. */
export function StartView() {
  useEffect(() => {
    const [first] = examples;
    if (first) prepare(first.texts);
  }, []);
  return (
    <section aria-labelledby="view-title" class="start">
      <h2 id="view-title">Will it stay where it is?</h2>
      <p>
        For a hoop house that stands on two rails and is dragged to new ground. Tell what it is made
        of and where it stands: here is at what gust it lifts, tips, slides or breaks, and what
        holds it.
      </p>
      <h3>Start from an example, and change it</h3>
      <p class="stack">
        {examples.map(({ title, texts, names, system }) => (
          <button
            type="button"
            class="large-button"
            key={title}
            onClick={() => {
              chooseUnits(system);
              open(texts, names);
              location.hash = "#answer";
            }}
          >
            {title}
          </button>
        ))}
      </p>
      <p class="about">The examples are invented: no real farm's.</p>
      <h3>Or open your own files</h3>
      <OpenFiles />
      <h3>Or begin with nothing</h3>
      <p>
        <button
          type="button"
          onClick={() => {
            open({ house: "", site: "" }, usualNames);
            location.hash = "#house";
          }}
        >
          Empty questions
        </button>
      </p>
      <p class="about">
        Everything stays on this device. This page sends nothing and fetches nothing.
      </p>
    </section>
  );
}
