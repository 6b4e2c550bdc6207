let pressed = false;
let waiting: (() => void)[] = [];

const release = (): void => {
  pressed = false;
  const acts = waiting;
  waiting = [];
  // After the click that ends the press.
  setTimeout(() => {
    for (const act of acts) act();
  });
};

addEventListener("pointerdown", () => {
  pressed = true;
});
addEventListener("pointerup", release);
addEventListener("pointercancel", release);

/** Does something once no button is held down: what is being pressed must not move away under it. */
export function whenNothingIsPressed(act: () => void): void {
  if (pressed) waiting.push(act);
  else act();
}
