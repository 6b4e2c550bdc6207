import { type Question, readQuantity, type System } from "@hoopstay/core";
import { useRef } from "preact/hooks";
import { system } from "../session/state.ts";
import type { Control } from "./control.ts";
import { exampleFor } from "./example-for.ts";
import { useTypedText } from "./typed-text.ts";

type Quantity = Extract<Question, { kind: "quantity" }>;

/** Units within reach of a thumb; any other that is read may be typed. */
const near: Readonly<Record<Quantity["dimension"], Readonly<Record<System, readonly string[]>>>> = {
  length: { us: ["ft", "in"], si: ["m", "mm"] },
  area: { us: ["ft2", "in2"], si: ["m2"] },
  volume: { us: ["gal"], si: ["l"] },
  speed: { us: ["mph"], si: ["m/s", "km/h"] },
  force: { us: ["lb"], si: ["kg", "kN"] },
  moment: { us: ["lb-ft", "lb-in"], si: ["N-m"] },
  "force-per-length": { us: ["lb/ft"], si: ["N/m"] },
  pressure: { us: ["psf", "ksi"], si: ["kPa", "MPa"] },
  "mass-per-area": { us: ["lb/ft2", "oz/yd2"], si: ["g/m2", "kg/m2"] },
  density: { us: ["pcf"], si: ["kg/m3"] },
  "unit-weight": { us: ["pcf"], si: ["kN/m3"] },
  angle: { us: ["deg", "%"], si: ["deg", "%"] },
  fraction: { us: ["%"], si: ["%"] },
};

/** Waits for a pause before it tells of a text that cannot be read yet. */
const pause = 900;

/** A number with its unit, kept as it was typed. */
export function QuantityField({
  id,
  path,
  describedBy,
  wrong,
  value,
  placeholder,
  set,
  question,
}: Control & { readonly question: Quantity }) {
  const { dimension } = question;
  const example = exampleFor(path.join("."), question.example, system.value);
  const { text, type, rest } = useTypedText(value);
  const later = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const box = useRef<HTMLInputElement>(null);
  const put = (next: string): void => {
    clearTimeout(later.current);
    set(next.trim() === "" ? undefined : next.trim());
  };
  const typed = (next: string): void => {
    type(next);
    clearTimeout(later.current);
    if (next.trim() === "" || readQuantity(next, dimension).ok) put(next);
    else later.current = setTimeout(() => put(next), pause);
  };
  const withUnit = (unit: string): void => {
    const bare = text.trim().replace(/\s*[a-z%°'"/²³-]+[\w/²³-]*$/i, "");
    typed(`${/^.*(?:ft|')\s*[\d./ -]+$/i.test(text.trim()) ? text.trim() : bare} ${unit}`.trim());
    box.current?.focus();
  };
  return (
    <div class="quantity">
      <input
        ref={box}
        id={id}
        type="text"
        inputMode="text"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        maxLength={60}
        aria-describedby={describedBy}
        aria-invalid={wrong}
        placeholder={
          placeholder === "" ? `such as ${example}` : `${placeholder}, such as ${example}`
        }
        value={text}
        onInput={({ currentTarget }) => typed(currentTarget.value)}
        onBlur={() => {
          rest();
          const stands = value === undefined ? "" : String(value);
          if (text.trim() !== stands) put(text);
        }}
      />
      <span class="units">
        {near[dimension][system.value].map((unit) => (
          <button type="button" key={unit} tabIndex={-1} onClick={() => withUnit(unit)}>
            {unit}
          </button>
        ))}
      </span>
    </div>
  );
}
