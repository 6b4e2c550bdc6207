import { useEffect, useRef } from "preact/hooks";
import { Complaints } from "./complaints.tsx";
import { shownWorking } from "./working-of.ts";

/** The working of a number, over the page: symbol, formula, numbers, value, source. */
export function WorkingDialog() {
  const dialog = useRef<HTMLDialogElement>(null);
  const shown = shownWorking.value;
  useEffect(() => {
    if (shown && !dialog.current?.open) dialog.current?.showModal();
    if (!shown) dialog.current?.close();
  }, [shown]);
  useEffect(() => {
    if (!shown?.chapter || typeof shown.made !== "string") return;
    const named = ["Working", "Detail"].map((of) => `[aria-label^="${of} ${shown.chapter},"]`);
    dialog.current?.querySelector(named.join())?.scrollIntoView();
  }, [shown]);
  return (
    <dialog
      ref={dialog}
      class="working"
      aria-labelledby="working-title"
      onClose={() => {
        shownWorking.value = null;
      }}
    >
      <div class="bar">
        <h2 id="working-title">Working: {shown?.title}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {shown === null ? null : shown.made === null ? (
        <p role="status">Being worked out.</p>
      ) : typeof shown.made === "string" ? (
        // Made by the report, which escapes what anybody typed.
        <div dangerouslySetInnerHTML={{ __html: shown.made }} />
      ) : (
        <Complaints complaints={shown.made} />
      )}
    </dialog>
  );
}
