import type { Control } from "./control.ts";

const options = [
  ["", "not told"],
  ["yes", "yes"],
  ["no", "no"],
] as const;

/** Yes, no, or not told: three different things. */
export function YesField({ id, describedBy, wrong, value, set }: Control) {
  const told =
    value === true ? "yes" : value === false ? "no" : value === undefined ? "" : String(value);
  return (
    <select
      id={id}
      aria-describedby={describedBy}
      aria-invalid={wrong}
      value={told}
      onChange={({ currentTarget }) => set(currentTarget.value || undefined)}
    >
      {options.map(([option, words]) => (
        <option key={option} value={option}>
          {words}
        </option>
      ))}
      {["", "yes", "no"].includes(told) ? null : <option value={told}>{told}</option>}
    </select>
  );
}
