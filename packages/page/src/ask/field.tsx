import type { Question } from "@hoopstay/core";
import { useId } from "preact/hooks";
import { change } from "../session/conversation.ts";
import type { Control, Place } from "./control.ts";
import { CountField } from "./count-field.tsx";
import { assumedAt, complaintsAt, keyOf, valueAt } from "./lookup.ts";
import { QuantityField } from "./quantity-field.tsx";
import { SeveralField } from "./several-field.tsx";
import { choiceWords, helpFor, questionFor } from "./wording.ts";
import { WordsField } from "./words-field.tsx";
import { YesField } from "./yes-field.tsx";

/** One question with its control, what is assumed where it is left out, and what is wrong with it. */
export function Field({ question, file, path }: Place & { readonly question: Question }) {
  const id = useId();
  const key = keyOf(path);
  const value = valueAt(file, path);
  const wrong = complaintsAt(file, key);
  const missing = wrong.length > 0 && wrong.every(({ code }) => code === "key-missing");
  const assumed = value === undefined ? assumedAt(file, key) : null;
  const about = helpFor(key, question.kind === "choice" ? "" : question.about);
  const notes = [
    ...(wrong.length > 0 ? [`${id}-wrong`] : []),
    ...(assumed ? [`${id}-assumed`] : []),
    ...(about ? [`${id}-about`] : []),
  ];
  const control: Control = {
    file,
    path,
    id,
    describedBy: notes.length > 0 ? notes.join(" ") : undefined,
    wrong: wrong.length > 0 && !missing,
    value,
    placeholder: question.optional ? "" : "needed",
    set: (to) => change({ file, path, value: to }),
  };
  return (
    <div
      data-key={`${file} ${key}`}
      class={`field${missing ? " missing" : wrong.length > 0 ? " wrong" : ""}`}
    >
      <label for={id}>
        {questionFor(key)}
        {!question.optional && value === undefined ? <span class="needed"> needed</span> : null}
      </label>
      {about ? (
        <p class="about" id={`${id}-about`}>
          {about}
        </p>
      ) : null}
      {controlFor(question, control, key)}
      {assumed ? (
        <p class="assumes" id={`${id}-assumed`}>
          <b>Assumed: {assumed.used}.</b> {assumed.why}
        </p>
      ) : null}
      {wrong.length > 0 ? (
        <p class="wrong-words" id={`${id}-wrong`}>
          {missing
            ? "Still to be filled in."
            : wrong.map(({ expected, mend }) => `Expected: ${expected}. ${mend}`).join(" ")}
        </p>
      ) : null}
    </div>
  );
}

function controlFor(question: Question, control: Control, key: string) {
  switch (question.kind) {
    case "quantity":
      return <QuantityField {...control} question={question} />;
    case "count":
      return <CountField {...control} least={question.least} most={question.most} />;
    case "yes":
      return <YesField {...control} />;
    case "choice":
      return <ChoiceField {...control} keyName={key} options={question.options} />;
    case "several":
      return <SeveralField {...control} options={question.options} />;
    case "words":
      return <WordsField {...control} keyName={key} examples={question.examples} />;
    default:
      return <p class="about">Kept as it stands in the file.</p>;
  }
}

/** One of a closed list; not told is a choice too. */
function ChoiceField({
  id,
  describedBy,
  wrong,
  value,
  set,
  keyName,
  options,
}: Control & { readonly keyName: string; readonly options: readonly string[] }) {
  const known = value === undefined || options.includes(String(value));
  return (
    <select
      id={id}
      aria-describedby={describedBy}
      aria-invalid={wrong}
      value={value === undefined ? "" : String(value)}
      onChange={({ currentTarget }) => set(currentTarget.value || undefined)}
    >
      <option value="">not told</option>
      {known ? null : <option value={String(value)}>{String(value)}</option>}
      {options.map((option) => (
        <option key={option} value={option}>
          {choiceWords(keyName, option)}
        </option>
      ))}
    </select>
  );
}
