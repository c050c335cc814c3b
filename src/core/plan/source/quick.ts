import { FlowReader, Keys, NotPlain, PastLimit } from "./quick-flow.js";
import type { Written, WrittenEntry, WrittenScalar, WrittenSection } from "./written.js";

/** Signs that only the full YAML reader weighs: tabs, other line breaks and what cannot be seen. */
const unusual = /[^\n\x20-\x7e\xa0-\u2027\u202a-\ud7ff\ue000-\ufefe\uff00-\ufffd]/;

/**
 * Reads plans in the usual plain writing many times faster than a full YAML reader: indented sections and lists,
 * `{ }`, `[ ]`, words, quotes and comments. Whatever else YAML knows, and every mistake, is left to the full reader.
 * A test holds the two side by side on thousands of spoilt plans.
 * @returns undefined where the text is not in that writing.
 * @throws PastLimit where it goes past a limit.
 */
export function readQuick(text: string): WrittenSection | undefined {
  if (unusual.test(text)) return undefined;
  try {
    return new QuickReader(text).document();
  } catch (error) {
    if (error instanceof NotPlain) return undefined;
    throw error;
  }
}

/**
 * One value as it would stand on a line of a plan: a word, a quoted word, `{ }` or `[ ]`.
 * @returns undefined where only the full reader can say.
 */
export function readQuickValue(text: string): Written | undefined {
  if (unusual.test(text)) return undefined;
  try {
    const reader = new FlowReader(text);
    const value = /^[[{]/.test(text) ? reader.collection(-1, 0) : reader.scalar(false);
    return reader.at === text.length ? value : undefined;
  } catch (error) {
    if (error instanceof NotPlain || error instanceof PastLimit) return undefined;
    throw error;
  }
}

class QuickReader extends FlowReader {
  /** Start of the line the reader is on. */
  private lineStart = 0;

  document(): WrittenSection {
    if (this.nextContent() !== 0) throw new NotPlain();
    const root = this.section(0, 0);
    if (this.at < this.text.length) throw new NotPlain();
    return root;
  }

  /** Goes to the next line that says something. @returns its indent, or −1 at the end. */
  private nextContent(): number {
    for (;;) {
      this.lineStart = this.at;
      this.spaces();
      const sign = this.text.charAt(this.at);
      if (sign === "") return -1;
      if (sign === "#") this.toLineEnd();
      else if (sign !== "\n") {
        const indent = this.at - this.lineStart;
        if (indent === 0 && /^(?:---|\.\.\.|%)/.test(this.text.slice(this.at, this.at + 3)))
          throw new NotPlain();
        return indent;
      }
      this.at += 1;
    }
  }

  /** A block of `key: value` lines with the first key at hand. Ends at the first line indented less. */
  private section(indent: number, depth: number): WrittenSection {
    this.checkDepth(depth);
    const start = this.at;
    const entries: WrittenEntry[] = [];
    const keys = new Keys();
    this.count();
    for (;;) {
      const key = this.scalar(false);
      this.checkKey(key, keys);
      this.spaces();
      if (this.text.charAt(this.at) !== ":") throw new NotPlain();
      this.at += 1;
      entries.push(this.entryOf(key, this.blockValue(indent, depth)));
      const next = this.at >= this.text.length ? -1 : this.at - this.lineStart;
      if (next < indent) return { kind: "section", entries, start, end: start };
      if (next > indent || this.atDash()) throw new NotPlain();
    }
  }

  /** What follows a colon; leaves the reader at the next line that says something. */
  private blockValue(indent: number, depth: number): Written {
    const code = this.text.charAt(this.at);
    if (code !== " " && code !== "\n" && code !== "") throw new NotPlain();
    this.spaces();
    const sign = this.text.charAt(this.at);
    if (sign !== "\n" && sign !== "#" && sign !== "") return this.inLine(indent, depth);
    const nothing = nothingAt(this.at);
    this.toLineEnd();
    this.at += 1;
    const next = this.nextContent();
    if (next < indent || (next === indent && !this.atDash())) return nothing;
    const first = this.text.charAt(this.at);
    // `{ }` or `[ ]` on a line of its own
    if (next > indent && (first === "{" || first === "[")) return this.inLine(indent, depth);
    return this.atDash() ? this.list(next, depth + 1) : this.section(next, depth + 1);
  }

  /** A value on the line itself, with nothing but a comment behind it. */
  private inLine(indent: number, depth: number): Written {
    const sign = this.text.charAt(this.at);
    const value = sign === "{" || sign === "[" ? this.collection(indent, depth + 1) : this.scalar(false);
    this.endLine();
    if (this.nextContent() > indent) throw new NotPlain(); // the value goes on, or something is wrong
    return value;
  }

  private endLine(): void {
    const end = this.at;
    this.spaces();
    const sign = this.text.charAt(this.at);
    if (sign !== "\n" && sign !== "" && (sign !== "#" || this.at === end)) throw new NotPlain();
    this.toLineEnd();
    this.at += 1;
  }

  private atDash(): boolean {
    return this.text.charAt(this.at) === "-" && /^[ \n]?$/.test(this.text.charAt(this.at + 1));
  }

  private list(indent: number, depth: number): Written {
    this.checkDepth(depth);
    const start = this.at;
    const items: Written[] = [];
    this.count();
    for (;;) {
      this.at += 1;
      this.spaces();
      items.push(this.listItem(indent, depth));
      const next = this.at >= this.text.length ? -1 : this.at - this.lineStart;
      if (next < indent || (next === indent && !this.atDash()))
        return { kind: "list", items, start, end: start };
      if (next > indent) throw new NotPlain();
    }
  }

  private listItem(indent: number, depth: number): Written {
    const sign = this.text.charAt(this.at);
    if (sign === "\n" || sign === "#" || sign === "" || this.atDash()) throw new NotPlain();
    if (sign === "{" || sign === "[") return this.inLine(indent, depth);
    const start = this.at;
    this.scalar(false);
    this.spaces();
    const isKey = this.text.charAt(this.at) === ":";
    this.at = start;
    return isKey ? this.section(start - this.lineStart, depth + 1) : this.inLine(indent, depth);
  }
}

function nothingAt(at: number): WrittenScalar {
  return { kind: "scalar", value: null, text: "", start: at, end: at };
}
