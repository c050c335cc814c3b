import { composed } from "../../quantity/look-alike.js";
import { limits } from "./limits.js";
import type { Written, WrittenEntry, WrittenScalar } from "./written.js";

/** Thrown inside the quick reader where a text leaves the plain writing it knows; caught where it began. */
export class NotPlain extends Error {}

const lineFeed = 10;
const space = 32;
const hash = 35;
const comma = 44;
const colon = 58;
const openList = 91;
const closeList = 93;
const openSection = 123;
const closeSection = 125;
/** Signs that a plain word may not start with; `-` is looked at apart. */
const indicators = "?:,[]{}#&*!|>'\"%@`";
const numberSigns = /^[-+.~nNtTfF\d]/;
const maxKeyLength = 1000;

/** Thrown where a text goes past a limit, however it is written. */
export class PastLimit extends Error {
  constructor(
    readonly code: "too many values" | "too deep",
    readonly at: number,
  ) {
    super(code);
  }
}

/** The keys of one section so far. Most sections are small, and a short list is lighter than a set. */
export class Keys {
  private readonly first: string[] = [];
  private rest: Set<string> | undefined;

  /** @returns false where the key is there already. */
  add(key: string): boolean {
    if (this.first.includes(key) || this.rest?.has(key) === true) return false;
    if (this.first.length < 16) this.first.push(key);
    else {
      this.rest ??= new Set();
      this.rest.add(key);
    }
    return true;
  }
}

/** Reads words, quoted words and what stands in `{ }` and `[ ]`. */
export class FlowReader {
  at = 0;
  private values = 0;
  /** Are letters and their marks apart somewhere? No part of a text in form C is in another. */
  private readonly apart: boolean;

  constructor(readonly text: string) {
    this.apart = composed(text) !== text;
  }

  /** A value in `{ }` or `[ ]`; `indent` is that of the block around it, which every further line must pass. */
  collection(indent: number, depth: number): Written {
    this.checkDepth(depth);
    const start = this.at;
    const isList = this.code() === openList;
    const close = isList ? closeList : closeSection;
    const items: Written[] = [];
    const entries: WrittenEntry[] = [];
    const keys = new Keys();
    this.at += 1;
    this.count();
    for (;;) {
      this.gap(indent);
      if (this.code() === close) break;
      if (isList) items.push(this.item(indent, depth));
      else entries.push(this.entry(indent, depth, keys));
      this.gap(indent);
      if (this.code() === comma) this.at += 1;
      else if (this.code() !== close) throw new NotPlain();
    }
    this.at += 1;
    return isList
      ? { kind: "list", items, start, end: this.at }
      : { kind: "section", entries, start, end: this.at };
  }

  private item(indent: number, depth: number): Written {
    const value = this.value(indent, depth);
    if (this.code() === colon) throw new NotPlain(); // `[a: b]` is a section in a list
    return value;
  }

  private entry(indent: number, depth: number, keys: Keys): WrittenEntry {
    const key = this.scalar(true);
    this.checkKey(key, keys);
    this.spaces();
    if (this.code() !== colon)
      return this.entryOf(key, { kind: "scalar", value: null, text: "", start: key.end, end: key.end });
    const next = this.text.charCodeAt(this.at + 1);
    if (next !== space && next !== lineFeed) throw new NotPlain();
    this.at += 1;
    this.gap(indent);
    const code = this.code();
    if (code === comma || code === closeSection) throw new NotPlain(); // nothing after the colon: left to the library
    return this.entryOf(key, this.value(indent, depth));
  }

  entryOf(key: WrittenScalar, value: Written): WrittenEntry {
    return { key: key.text, keyStart: key.start, keyEnd: key.end, value };
  }

  checkKey(key: WrittenScalar, keys: Keys): void {
    const { text } = key;
    if (text === "" || text === "<<" || text.length > maxKeyLength || !keys.add(text)) throw new NotPlain();
  }

  private value(indent: number, depth: number): Written {
    const code = this.code();
    return code === openList || code === openSection ? this.collection(indent, depth + 1) : this.scalar(true);
  }

  /** A quoted word, or a plain one up to where it ends on its line. */
  scalar(inFlow: boolean): WrittenScalar {
    this.count();
    const sign = this.text.charAt(this.at);
    if (sign === '"' || sign === "'") return this.quoted(sign);
    if (sign === "" || indicators.includes(sign)) throw new NotPlain();
    const start = this.at;
    let end = start;
    for (let at = start; ; at++) {
      const code = this.text.charCodeAt(at);
      if (Number.isNaN(code) || code === lineFeed) break;
      if (code === colon && this.endsKey(at + 1, inFlow)) break;
      if (code === hash && at > end) break; // a comment: there is a blank before it
      if (inFlow && isFlowSign(code)) break;
      if (code !== space) end = at + 1;
    }
    const text = this.text.slice(start, end);
    if (text.startsWith("-") && (text.length === 1 || text.charAt(1) === " ")) throw new NotPlain();
    this.at = end;
    const said = this.apart ? composed(text) : text;
    return { kind: "scalar", value: plainValue(said), text: said, start, end };
  }

  private endsKey(next: number, inFlow: boolean): boolean {
    const code = this.text.charCodeAt(next);
    if (Number.isNaN(code) || code === space || code === lineFeed) return true;
    if (inFlow && isFlowSign(code)) throw new NotPlain();
    return false;
  }

  private quoted(sign: string): WrittenScalar {
    const start = this.at;
    const end = this.text.indexOf(sign, start + 1);
    const text = this.text.slice(start + 1, Math.max(end, start + 1));
    if (end === -1 || text.includes("\n") || text.includes("\\") || this.text.charAt(end + 1) === sign)
      throw new NotPlain();
    this.at = end + 1;
    const said = this.apart ? composed(text) : text;
    return { kind: "scalar", value: said, text: said, start, end: this.at };
  }

  /** Blanks, comments and line breaks between the parts of a collection. */
  private gap(indent: number): void {
    for (;;) {
      this.spaces();
      const code = this.code();
      if (code === hash) {
        if (this.text.charCodeAt(this.at - 1) !== space) throw new NotPlain();
        this.toLineEnd();
      } else if (code === lineFeed) {
        this.at += 1;
        const lineStart = this.at;
        this.spaces();
        const blank = this.code() === lineFeed;
        if (!blank && this.at - lineStart <= indent) throw new NotPlain();
      } else return;
    }
  }

  spaces(): void {
    while (this.code() === space) this.at += 1;
  }

  toLineEnd(): void {
    const end = this.text.indexOf("\n", this.at);
    this.at = end === -1 ? this.text.length : end;
  }

  code(): number {
    return this.text.charCodeAt(this.at);
  }

  checkDepth(depth: number): void {
    if (depth >= limits.maxDepth) throw new PastLimit("too deep", this.at);
  }

  count(): void {
    this.values += 1;
    if (this.values > limits.maxValues) throw new PastLimit("too many values", this.at);
  }
}

function isFlowSign(code: number): boolean {
  return (
    code === comma || code === openList || code === closeList || code === openSection || code === closeSection
  );
}

/** A plain word by the core schema of YAML 1.2. */
function plainValue(text: string): WrittenScalar["value"] {
  if (!numberSigns.test(text)) return text;
  if (/^(?:~|null|Null|NULL)$/.test(text)) return null;
  if (/^(?:true|True|TRUE)$/.test(text)) return true;
  if (/^(?:false|False|FALSE)$/.test(text)) return false;
  if (/^[-+]?(?:\.\d+|\d+(?:\.\d*)?)(?:[eE][-+]?\d+)?$/.test(text)) return Number(text);
  if (/^(?:0[ox]|[-+]?\.inf|\.nan)/i.test(text)) throw new NotPlain();
  return text;
}
