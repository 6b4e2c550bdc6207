import {
  firstToGo,
  type KindReview,
  type LayoutReview,
  show,
  showGustLimit,
  showWords,
} from "@hoopstay/core";
import { useState } from "preact/hooks";
import { chain, holding, holdingIsNew, system } from "../session/state.ts";
import { Gust } from "./gust.tsx";
import { PaperFold } from "./paper-fold.tsx";
import { TableBox } from "./table-box.tsx";

/** What holds it here: the fewest anchors on each side, and a plan of them to scale. */
export function Hold() {
  const known = holding.value;
  const [chosen, choose] = useState(0);
  if (!known) {
    return (
      <section aria-labelledby="hold-title">
        <h2 id="hold-title">Hold it down</h2>
        <p role="status">Being worked out.</p>
      </section>
    );
  }
  const { hold, layouts } = known;
  const layout = layouts[chosen] ?? layouts[0];
  return (
    <section aria-labelledby="hold-title">
      <h2 id="hold-title">Hold it down</h2>
      {holdingIsNew.value ? null : (
        <p role="status" class="about">
          Being worked out anew; below is that of before the change.
        </p>
      )}
      <div class={holdingIsNew.value ? "" : "old"}>
        <p class="headline">{showWords(hold.headline, system.value)}</p>
        <p>Ground: {showWords(hold.ground.words, system.value)}</p>
        {hold.kinds.length > 0 ? (
          <>
            <Kinds kinds={hold.kinds} />
            <FrameFirst />
          </>
        ) : (
          <p>
            No kinds of anchor are told: add those you could set, and the fewest are looked for.
          </p>
        )}
        {layouts.length > 1 ? (
          <label class="choose">
            Plan of{" "}
            <select
              value={String(chosen)}
              onChange={({ currentTarget }) => choose(Number(currentTarget.value))}
            >
              {layouts.map(({ title }, place) => (
                <option key={title} value={String(place)}>
                  {title}
                </option>
              ))}
            </select>
          </label>
        ) : null}
        {/* Drawn by the report, which escapes what anybody typed. */}
        {layout ? <div dangerouslySetInnerHTML={{ __html: layout.html }} /> : null}
        {hold.ground.findOut.length > 0 ? (
          <>
            <p>To find out first:</p>
            <ul>
              {hold.ground.findOut.map((words) => {
                const said = showWords(words, system.value);
                return <li key={said}>{said}</li>;
              })}
            </ul>
          </>
        ) : null}
        <PaperFold
          title="All about holding it: every anchor, ballast, pull log"
          paper={{ name: "hold-sheet" }}
        />
      </div>
    </section>
  );
}

function Kinds({ kinds }: { readonly kinds: readonly KindReview[] }) {
  return (
    <TableBox label="Fewest anchors on each side">
      <caption>
        Fewest anchors on each side, and the gust at which anchors, ground and weight together give
        way
      </caption>
      <thead>
        <tr>
          <th scope="col">Kind</th>
          <th scope="col">Allowed pull</th>
          <th scope="col">In every state</th>
          <th scope="col">Kept shut</th>
        </tr>
      </thead>
      <tbody>
        {kinds.map((kind) => (
          <tr key={kind.id}>
            <th scope="row">{kind.words}</th>
            <td class="n">
              {kind.allowable === null ? "not rated" : show(kind.allowable, "force", system.value)}
            </td>
            <td>
              <Fewest kind={kind} layout={kind.every} />
            </td>
            <td>
              <Fewest kind={kind} layout={kind.shut} />
            </td>
          </tr>
        ))}
      </tbody>
    </TableBox>
  );
}

function Fewest({
  kind,
  layout,
}: {
  readonly kind: KindReview;
  readonly layout: LayoutReview | null;
}) {
  if (layout === null) {
    if (kind.allowable === null) return <small>{kind.reason ?? "not rated"}</small>;
    return <small>none holds{kind.short ? `: ${showWords(kind.short, system.value)}` : ""}</small>;
  }
  const gust = (
    <Gust
      speed={layout.joint.gust}
      worked={{ of: "anchors", chapter: null }}
      about={`${kind.words}, ${layout.perRail} on each side`}
    />
  );
  if (layout.holds) {
    return (
      <>
        <b>{layout.perRail}</b> to {gust}
      </>
    );
  }
  return (
    <>
      <b>none</b>
      <small>
        {" "}
        {layout.perRail} hold it down, but all at once only to {gust}
      </small>
    </>
  );
}

/** Anchors hold no more than the frame above them. */
function FrameFirst() {
  const links = chain.value?.chain;
  const first = links?.links.find(({ id }) => id === firstToGo(links));
  return (
    <p>
      <b>This is about anchors and ground alone.</b>{" "}
      {first
        ? `The frame may go before: ${first.words} at a gust of ${showGustLimit(first.worst.check.workingGust, system.value)} (${first.worst.state}).`
        : "The frame may go before: see what goes first."}
    </p>
  );
}
