import type { Question } from "@hoopstay/core";
import { useEffect, useState } from "preact/hooks";
import { Drawing } from "../draw/drawing.tsx";
import { questions } from "../session/state.ts";
import { glance } from "./glance.ts";
import { Asked, Parts } from "./group.tsx";
import { complaintsUnder, valueAt } from "./lookup.ts";
import type { Section } from "./sections.ts";
import { stillNeeded } from "./still-needed.ts";

/** All sections of a file, one of them open: the drawing beside it follows what is typed. */
export function QuestionsView({
  sections,
  title,
}: {
  readonly sections: readonly Section[];
  readonly title: string;
}) {
  return (
    <section aria-labelledby="view-title">
      <h2 id="view-title">{title}</h2>
      {sections.map((section, place) => (
        <SectionView key={section.id} section={section} first={place < 2} />
      ))}
    </section>
  );
}

function SectionView({ section, first }: { readonly section: Section; readonly first: boolean }) {
  const { id, file, title, says, keys, drawing } = section;
  const [open, setOpen] = useState(first);
  const needed = stillNeeded(file, keys).length;
  const wrong = keys
    .flatMap((key) => complaintsUnder(file, key))
    .filter(({ code }) => code !== "key-missing").length;
  useEffect(() => {
    const goTo = (): void => {
      if (location.hash === `#ask-${id}`) setOpen(true);
    };
    addEventListener("hashchange", goTo);
    return () => removeEventListener("hashchange", goTo);
  }, [id]);
  return (
    <details
      class="section"
      id={`ask-${id}`}
      open={open}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>
        <h3>{title}</h3>
        {wrong > 0 ? (
          <span class="mark">
            {" "}
            {"\u2717"} {wrong} to mend
          </span>
        ) : needed > 0 ? (
          <span class="mark"> {needed} needed</span>
        ) : (
          <span class="glance"> {open ? "" : sectionGlance(section)}</span>
        )}
      </summary>
      {open ? (
        <div class={`asking${drawing ? " drawn" : ""}`}>
          {drawing ? <Drawing name={drawing} /> : null}
          <div>
            {says ? <p>{says}</p> : null}
            {keys.map((key) => (
              <Top key={key} section={section} keyName={key} />
            ))}
          </div>
        </div>
      ) : null}
    </details>
  );
}

const sectionGlance = ({ file, keys }: Section): string => {
  const told = keys.flatMap((key) => {
    const value = valueAt(file, [key]);
    return value === undefined ? [] : [glance(value)];
  });
  return told.length === 0 ? "nothing told" : (told[0] ?? "");
};

/** A key at the top of a file: the group that a section is about stands open. */
function Top({ section, keyName }: { readonly section: Section; readonly keyName: string }) {
  const { file, keys } = section;
  const root = questions.value?.[file];
  const question =
    root?.kind === "group" ? root.parts.find(({ key }: Question) => key === keyName) : undefined;
  if (!question) return null;
  if (question.kind === "group" && (keys.length === 1 || !question.optional)) {
    return <Parts question={question} file={file} path={[keyName]} />;
  }
  return <Asked question={question} file={file} path={[keyName]} />;
}
