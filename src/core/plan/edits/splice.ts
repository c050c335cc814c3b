import type { PlanDocument } from "../source/open.js";
import type { Path } from "../source/problem.js";
import type { Written, WrittenEntry, WrittenList, WrittenSection } from "../source/written.js";
import type { Step } from "./step.js";
import { keyText } from "./value.js";

/** Characters from `start` to `end` give way to `text`. */
interface Replacement {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Makes the steps by changing only the characters concerned. @returns undefined where one of them cannot be made so. */
export function spliceSteps(document: PlanDocument, steps: readonly Step[]): string | undefined {
  const replacements: Replacement[] = [];
  for (const step of steps) {
    const made = new Splicer(document).step(step);
    if (made === undefined) return undefined;
    replacements.push(...made);
  }
  let text = document.text;
  let before = Number.POSITIVE_INFINITY;
  const ordered = replacements.map((replacement, order) => ({ ...replacement, order }));
  for (const { start, end, text: put } of ordered.sort((a, b) => b.start - a.start || b.order - a.order)) {
    if (end > before) return undefined;
    text = text.slice(0, start) + put + text.slice(end);
    before = start;
  }
  return text;
}

class Splicer {
  private readonly text: string;
  private readonly lineEnd: string;

  constructor(private readonly document: PlanDocument) {
    this.text = document.text;
    this.lineEnd = document.text.includes("\r\n") ? "\r\n" : "\n";
  }

  step(step: Step): Replacement[] | undefined {
    const last = step.path.at(-1);
    const parent = this.nodeAt(step.path.slice(0, -1));
    if (last === undefined || parent === undefined) return undefined;
    if (typeof last === "number") {
      if (parent.kind === "list" && last === parent.items.length && step.do === "set")
        return this.append(parent, step.to);
      if (step.do === "remove")
        return parent.kind === "list" ? this.removeItem(step.path, parent, last) : undefined;
      const item = parent.kind === "list" ? parent.items[last] : undefined;
      if (step.do !== "set" || item === undefined || this.isBlock(item)) return undefined;
      return [{ start: item.start, end: item.end, text: step.to }];
    }
    if (parent.kind !== "section")
      return step.do === "set" ? this.fillEmpty(step.path, parent, last, step.to) : undefined;
    const index = parent.entries.findIndex((entry) => entry.key === last);
    const entry = parent.entries[index];
    if (step.do === "set")
      return entry === undefined ? this.insert(parent, last, step.to) : this.set(entry, step.to);
    if (entry === undefined) return undefined;
    if (step.do === "rename") return [{ start: entry.keyStart, end: entry.keyEnd, text: keyText(step.to) }];
    if (parent.entries.length === 1 && step.path.length > 1 && this.isBlock(parent))
      return this.step({ do: "set", path: step.path.slice(0, -1), to: "{}" });
    return this.remove(parent, index);
  }

  private nodeAt(path: Path): Written | undefined {
    let node: Written | undefined = this.document.root;
    for (const step of path) {
      if (node?.kind === "list" && typeof step === "number") node = node.items[step];
      else if (node?.kind === "section") node = node.entries.find((entry) => entry.key === step)?.value;
      else return undefined;
    }
    return node;
  }

  private isBlock(node: Written): boolean {
    return node.kind !== "scalar" && !/[{[]/.test(this.text.charAt(node.start));
  }

  /** `spare:` or `spare: {}` or nothing yet becomes a section of one key. */
  private fillEmpty(path: Path, parent: Written, key: string, to: string): Replacement[] | undefined {
    if (parent.kind !== "scalar" || parent.text !== "") return undefined;
    return this.step({ do: "set", path: path.slice(0, -1), to: `{${keyText(key)}: ${to}}` });
  }

  private set({ keyEnd, value }: WrittenEntry, to: string): Replacement[] | undefined {
    const nothing = value.kind === "scalar" && value.start === value.end;
    if (!nothing && !this.isBlock(value)) return [{ start: value.start, end: value.end, text: to }];
    const colon = this.text.slice(keyEnd, value.start).indexOf(":");
    const after = keyEnd + colon + 1;
    if (nothing)
      return colon === -1
        ? [{ start: keyEnd, end: keyEnd, text: `: ${to}` }]
        : [{ start: after, end: after, text: ` ${to}` }];
    if (colon === -1) return undefined;
    return [
      { start: after, end: after, text: ` ${to}` },
      { start: this.contentEnd(after), end: this.contentEnd(this.lastEnd(value)), text: "" },
    ];
  }

  private insert(section: WrittenSection, key: string, to: string): Replacement[] | undefined {
    const entry = `${keyText(key)}: ${to}`;
    const last = section.entries.at(-1);
    if (!this.isBlock(section)) {
      const at = last === undefined ? section.start + 1 : this.entryEnd(last);
      return [{ start: at, end: at, text: last === undefined ? entry : `, ${entry}` }];
    }
    if (last === undefined) return undefined;
    const at = this.contentEnd(this.entryEnd(last));
    const lineStart = this.text.lastIndexOf("\n", last.keyStart - 1) + 1;
    const indent = " ".repeat(last.keyStart - lineStart);
    return [{ start: at, end: at, text: this.lineEnd + indent + entry }];
  }

  /** A new item at the end of a list, in the way the others are written. */
  private append(list: WrittenList, to: string): Replacement[] | undefined {
    const last = list.items.at(-1);
    if (!this.isBlock(list)) {
      const at = last === undefined ? list.start + 1 : this.lastEnd(last);
      return [{ start: at, end: at, text: last === undefined ? to : `, ${to}` }];
    }
    if (last === undefined) return undefined;
    const lineStart = this.text.lastIndexOf("\n", last.start - 1) + 1;
    const dash = /^ *- +/.exec(this.text.slice(lineStart, last.start))?.[0];
    if (dash === undefined) return undefined;
    const at = this.contentEnd(this.lastEnd(last));
    return [{ start: at, end: at, text: this.lineEnd + dash + to }];
  }

  /** An item of a list goes with the line it stands on. */
  private removeItem(path: Path, list: WrittenList, index: number): Replacement[] | undefined {
    const item = list.items[index];
    const next = list.items[index + 1];
    const before = list.items[index - 1];
    if (item === undefined) return undefined;
    if (list.items.length === 1) return this.step({ do: "set", path: path.slice(0, -1), to: "[]" });
    if (!this.isBlock(list)) {
      if (next !== undefined) return [{ start: item.start, end: next.start, text: "" }];
      const start = before === undefined ? item.start : this.lastEnd(before);
      return [{ start, end: this.lastEnd(item), text: "" }];
    }
    const lineStart = this.text.lastIndexOf("\n", item.start - 1) + 1;
    if (!/^ *- +$/.test(this.text.slice(lineStart, item.start))) return undefined;
    return [{ start: lineStart, end: this.lineEndAfter(this.lastEnd(item)), text: "" }];
  }

  private remove(section: WrittenSection, index: number): Replacement[] | undefined {
    const entry = section.entries[index];
    const next = section.entries[index + 1];
    const before = section.entries[index - 1];
    if (entry === undefined) return undefined;
    if (!this.isBlock(section)) {
      if (next !== undefined) return [{ start: entry.keyStart, end: next.keyStart, text: "" }];
      const start = before === undefined ? entry.keyStart : this.entryEnd(before);
      return [{ start, end: this.entryEnd(entry), text: "" }];
    }
    const lineStart = this.text.lastIndexOf("\n", entry.keyStart - 1) + 1;
    const lead = this.text.slice(lineStart, entry.keyStart);
    if (/\S/.test(lead))
      return next === undefined ? undefined : [{ start: entry.keyStart, end: next.keyStart, text: "" }];
    const end = this.lineEndAfter(this.entryEnd(entry));
    return [{ start: lineStart, end, text: "" }];
  }

  private entryEnd({ keyEnd, value }: WrittenEntry): number {
    const end = this.lastEnd(value);
    if (end > keyEnd) return end;
    const colon = /^\s*:/.exec(this.text.slice(keyEnd, keyEnd + 80))?.[0].length ?? 0;
    return keyEnd + colon;
  }

  /** Last character of the value itself: a block's range also holds the comments and blank lines behind it. */
  private lastEnd(value: Written): number {
    if (this.isBlock(value)) {
      const last =
        value.kind === "section"
          ? value.entries.at(-1)?.value
          : value.kind === "list"
            ? value.items.at(-1)
            : undefined;
      if (last !== undefined) return Math.max(this.lastEnd(last), value.start);
    }
    return value.start + this.text.slice(value.start, value.end).trimEnd().length;
  }

  /** End of the line, before its line break. */
  private contentEnd(at: number): number {
    const end = this.text.indexOf("\n", at);
    if (end === -1) return this.text.length;
    return this.text.charAt(end - 1) === "\r" && end > at ? end - 1 : end;
  }

  private lineEndAfter(at: number): number {
    const end = this.text.indexOf("\n", at);
    return end === -1 ? this.text.length : end + 1;
  }
}
