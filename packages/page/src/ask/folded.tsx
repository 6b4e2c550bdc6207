import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

/** Something folded away; what is in it is made only when it is opened. */
export function Folded({
  title,
  says = "",
  wrong = 0,
  start = false,
  kind = "more",
  name,
  children,
}: {
  readonly title: string;
  readonly says?: string;
  readonly wrong?: number;
  readonly start?: boolean;
  readonly kind?: string;
  readonly name?: string;
  readonly children: () => ComponentChildren;
}) {
  const [open, setOpen] = useState(start || wrong > 0);
  return (
    <details
      class={kind}
      data-key={name}
      open={open}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>
        <b>{title}</b>
        {says ? <span class="glance"> {says}</span> : null}
        {wrong > 0 ? (
          <span class="mark">
            {" "}
            {"\u2717"} {wrong} to mend
          </span>
        ) : null}
      </summary>
      {open ? <div class="inside">{children()}</div> : null}
    </details>
  );
}
