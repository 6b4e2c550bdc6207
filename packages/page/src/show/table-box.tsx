import type { ComponentChildren } from "preact";

/** A table in a box of its own, which scrolls where the screen is narrow. */
export function TableBox({
  label,
  children,
}: {
  readonly label: string;
  readonly children: ComponentChildren;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard
    <section class="box" tabIndex={0} aria-label={label}>
      <table class="plain">{children}</table>
    </section>
  );
}
