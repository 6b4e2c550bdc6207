import {
  type ChainReview,
  firstToGo,
  type LinkSummary,
  showGustLimit,
  showRatio,
  showWords,
  windFrom,
} from "@hoopstay/core";
import { answer, chain, chainIsNew, linksAtMost, system, turn } from "../session/state.ts";
import { PaperFold } from "./paper-fold.tsx";
import { openWorking } from "./working-of.ts";

/** What goes first: every link from the cover's edge to the ground, weakest first. */
export function First() {
  const known = chain.value?.chain;
  return (
    <section aria-labelledby="first-title">
      <h2 id="first-title">What goes first in its frame</h2>
      {chainIsNew.value ? null : <QuickLook known={known !== undefined} />}
      {known ? <Links chain={known} old={!chainIsNew.value} /> : null}
    </section>
  );
}

/** Until the whole path is worked out: what it cannot tell more than. */
function QuickLook({ known }: { readonly known: boolean }) {
  const quick = linksAtMost.value;
  const most = quick?.turn === turn.value ? quick.gust : Number.POSITIVE_INFINITY;
  return (
    <p role="status">
      {Number.isFinite(most) ? (
        <>
          Some link gives way at <b>{showGustLimit(most, system.value)} or less</b>: a quick look at
          hoops, bolts, stubs, welds, rail, boards and purlins.{" "}
        </>
      ) : null}
      The whole load path is being worked out
      {known ? "; below is that of before the change" : ""}.
    </p>
  );
}

function Links({ chain: known, old }: { readonly chain: ChainReview; readonly old: boolean }) {
  const first = firstToGo(known);
  return (
    <div class={old ? "old" : ""}>
      <p class="headline">{showWords(known.answer, system.value)}</p>
      {known.notChecked.length > 0 ? (
        <p>
          <b>{known.notChecked.length} parts of the load path are not checked</b>, because nothing
          is entered for them: they may go before any of these.
        </p>
      ) : null}
      <ol class="links">
        {known.links.map((link, place) => (
          <Link key={link.id} link={link} place={place} first={link.id === first} />
        ))}
      </ol>
      <PaperFold title="The whole load path" paper={{ name: "chain-sheet" }} />
    </div>
  );
}

function Link({
  link: { words, worst },
  place,
  first,
}: {
  readonly link: LinkSummary;
  readonly place: number;
  readonly first: boolean;
}) {
  const { check, state } = worst;
  const combination = answer.value?.review.combination ?? "ASD";
  const gust = showGustLimit(check.workingGust, system.value);
  return (
    <li>
      <b>{words}</b>
      {first ? <span class="tag"> {"\u25c0"} first to go</span> : null}{" "}
      <button
        type="button"
        class="number"
        aria-label={`${words}: ${gust}. Show the working`}
        onClick={() => openWorking({ of: "links", chapter: `S${place + 1}` }, words)}
      >
        {gust}
      </button>
      <small>
        {check.part}; {check.place}; {state}, wind {windFrom(check.governs.direction)}; ratio{" "}
        {showRatio(check.ratio[combination])}
      </small>
    </li>
  );
}
