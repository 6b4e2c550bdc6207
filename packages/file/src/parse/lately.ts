const most = 4;

/** The last few things made of texts: a file that is changed value by value is read again and again. */
export class Lately<Made> {
  readonly #known = new Map<string, Made>();

  of(text: string, make: (text: string) => Made): Made {
    const made = this.#known.get(text) ?? make(text);
    this.#known.delete(text);
    this.#known.set(text, made);
    const [oldest = ""] = this.#known.keys();
    if (this.#known.size > most) this.#known.delete(oldest);
    return made;
  }
}
