import { holding } from "../session/state.ts";

/** The pull it takes to move the house, against what the tractor has. */
export function Move() {
  const known = holding.value;
  return (
    <section aria-labelledby="move-title">
      <h2 id="move-title">Move it</h2>
      {known ? (
        // Made by the report, which escapes what anybody typed.
        <div class="sheet-part" dangerouslySetInnerHTML={{ __html: known.tow }} />
      ) : (
        <p role="status">Being worked out.</p>
      )}
      <p>
        The move card (what to ask of the place, in which order the anchors go in, when to unhook)
        is under <a href="#papers">Papers</a>.
      </p>
    </section>
  );
}
