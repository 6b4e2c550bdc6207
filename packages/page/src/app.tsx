import { showGustLimit } from "@hoopstay/core";
import { useEffect, useRef, useState } from "preact/hooks";
import { QuestionsView } from "./ask/questions-view.tsx";
import { houseSections, placeSections } from "./ask/sections.ts";
import { PapersView } from "./papers/papers-view.tsx";
import { StartView } from "./papers/start-view.tsx";
import { canRedo, canUndo } from "./session/history.ts";
import {
  answer,
  chain,
  complaints,
  fault,
  holding,
  isOld,
  linksAtMost,
  notice,
  questions,
  reading,
  system,
  texts,
} from "./session/state.ts";
import { chooseUnits, redo, undo } from "./session/steps.ts";
import { AnswerView } from "./show/answer-view.tsx";
import { lowest, statesHeld } from "./show/standing.tsx";
import { WorkingDialog } from "./show/working-dialog.tsx";
import { isWide } from "./wide.ts";

const views = [
  ["house", "House"],
  ["place", "Place"],
  ["answer", "Answer"],
  ["papers", "Papers"],
] as const;
type View = (typeof views)[number][0];

/** The view that an address of the page names; a section stands in the view of its file. */
function viewOf(hash: string): View {
  const asked = hash.replace(/^#(ask-)?/, "");
  if (placeSections.some(({ id }) => hash === `#ask-${id}`)) return "place";
  if (houseSections.some(({ id }) => hash === `#ask-${id}`)) return "house";
  return views.find(([id]) => id === asked)?.[0] ?? "answer";
}

/** The whole page: the warning and the answer stay in sight, whatever is asked. */
export function App() {
  const [view, setView] = useState<View>(viewOf(location.hash));
  useEffect(() => {
    const follow = (): void => {
      setView(viewOf(location.hash));
      const { hash } = location;
      if (hash.startsWith("#ask-")) {
        requestAnimationFrame(() => document.getElementById(hash.slice(1))?.scrollIntoView());
      } else scrollTo(0, 0);
    };
    addEventListener("hashchange", follow);
    return () => removeEventListener("hashchange", follow);
  }, []);
  const begun = texts.value !== null;
  const top = useRef<HTMLElement>(null);
  useEffect(() => {
    const header = top.current;
    if (!header) return;
    const tell = (): void => {
      for (const name of ["--top", "--head"]) {
        document.documentElement.style.setProperty(name, `${header.offsetHeight}px`);
      }
    };
    const watch = new ResizeObserver(tell);
    watch.observe(header);
    return () => watch.disconnect();
  }, []);
  return (
    <>
      <header class="top" ref={top}>
        <h1 class="unseen">hoopstay: will a movable hoop house stay where it is?</h1>
        <p class="warning" role="note">
          <b>Not a sealed design. Consult a licensed engineer; local code first.</b>
        </p>
        {begun ? <Strip /> : null}
      </header>
      <p role="status" class="notice">
        {notice.value}
      </p>
      {fault.value ? (
        <p class="fault" role="alert">
          A fault of this page's own: {fault.value}. Nothing shown may be relied on until it is
          loaded anew. Your work is kept.
        </p>
      ) : null}
      <main
        class={begun ? `view-${view}` : "view-start"}
        data-turn={reading.value?.turn}
        data-looked={linksAtMost.value?.turn}
        data-held={holding.value?.turn}
        data-linked={chain.value?.turn}
      >
        {begun ? <Views view={view} /> : <StartView />}
      </main>
      {begun ? (
        <nav class="tabs" aria-label="Views">
          {views.map(([id, title]) => (
            <a key={id} href={`#${id}`} aria-current={view === id ? "page" : undefined}>
              {title}
            </a>
          ))}
        </nav>
      ) : null}
      <WorkingDialog />
    </>
  );
}

function Views({ view }: { readonly view: View }) {
  if (view === "papers") return <PapersView />;
  const asks = isWide.value || view !== "answer";
  const answers = isWide.value || view === "answer";
  return (
    <>
      {asks && questions.value !== null ? (
        <div class="asks">
          {view === "place" ? (
            <QuestionsView key="place" title="Where it stands" sections={placeSections} />
          ) : (
            <QuestionsView key="house" title="The house" sections={houseSections} />
          )}
        </div>
      ) : null}
      {answers ? (
        <div class="answers">
          <AnswerView />
        </div>
      ) : null}
    </>
  );
}

/** The answer in one line, the units, and the last step taken back. */
function Strip() {
  const review = answer.value?.review;
  const { held } = statesHeld();
  const now = held.find((state) => state.now) ?? held[0];
  const worst = lowest(held);
  return (
    <div class="strip">
      <p aria-live="polite">
        {isOld.value ? (
          <>
            <b>{review ? "\u2717 Old numbers:" : "No answer yet:"}</b>{" "}
            <a href="#answer">{complaints.value.length} to mend or fill in</a> first.
          </>
        ) : review && now && worst ? (
          <>
            <b>{review.holds ? "\u2713 Holds" : "\u2717 Does not hold"}</b>
            {": "}
            {now.words} to {showGustLimit(now.first.workingGust, system.value)},{" "}
            {worst === now
              ? "its worst"
              : `worst ${worst.words} to ${showGustLimit(worst.first.workingGust, system.value)}`}
          </>
        ) : (
          "No answer yet."
        )}
      </p>
      <div class="tools">
        <button type="button" disabled={!canUndo.value} onClick={undo}>
          {"\u21b6"}
          <span class="unseen">Undo</span>
        </button>
        <button type="button" disabled={!canRedo.value} onClick={redo}>
          {"\u21b7"}
          <span class="unseen">Redo</span>
        </button>
        <button type="button" onClick={() => chooseUnits(system.value === "us" ? "si" : "us")}>
          {system.value === "us" ? "ft" : "m"}
          <span class="unseen">: change the units shown</span>
        </button>
      </div>
    </div>
  );
}
