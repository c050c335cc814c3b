import { isAlias, isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap } from "yaml";
import { composed } from "../../quantity/look-alike.js";
import { limits } from "./limits.js";
import { type ProblemLog, pathOf, shortened, type Trail } from "./problem-log.js";
import type { Written, WrittenEntry } from "./written.js";

/**
 * Turns the YAML library's tree into ours: aliases resolved, and whatever a plan has no use for told as a problem
 * (tags, merge keys, keys that are no words, keys written twice).
 * @returns undefined where nothing usable is left.
 */
export function convert(node: Node, log: ProblemLog): Written | undefined {
  return new Conversion(log).of(node, undefined, 0);
}

class Conversion {
  private readonly anchors = new Map<string, Written | "open">();
  private aliases = 0;
  /** Values so far, and what each anchored one holds, itself included. */
  private values = 0;
  private readonly sizes = new Map<Written, number>();

  constructor(private readonly log: ProblemLog) {}

  of(node: unknown, trail: Trail | undefined, fallbackAt: number): Written | undefined {
    if (this.log.full || this.values > limits.maxValues) return undefined;
    const before = this.values;
    this.take(1, fallbackAt);
    if (isAlias(node)) return this.alias(node.source, node.range?.[0] ?? fallbackAt, trail);
    if (!isScalar(node) && !isMap(node) && !isSeq(node))
      return { kind: "scalar", value: null, text: "", start: fallbackAt, end: fallbackAt };
    const start = node.range?.[0] ?? fallbackAt;
    const end = node.range?.[1] ?? start;
    if (node.tag !== undefined)
      this.log.tell(start, pathOf(trail), { code: "tag", found: shortened(node.tag) });
    if (isScalar(node)) {
      const text = composed(node.source ?? "");
      const value = plainValue(node.value);
      const scalar: Written = { kind: "scalar", value, text, start, end };
      if (node.anchor !== undefined) this.anchors.set(node.anchor, scalar);
      return scalar;
    }
    const collectionEnd = node.flow === true ? end : start;
    if (node.anchor !== undefined) this.anchors.set(node.anchor, "open");
    const written: Written = isMap(node)
      ? { kind: "section", entries: this.entries(node, trail), start, end: collectionEnd }
      : {
          kind: "list",
          items: node.items.flatMap((item, step) => this.of(item, { step, outer: trail }, start) ?? []),
          start,
          end: collectionEnd,
        };
    if (node.anchor !== undefined) this.anchors.set(node.anchor, written);
    if (node.anchor !== undefined) this.sizes.set(written, this.values - before);
    return written;
  }

  private take(count: number, at: number): void {
    const over = this.values > limits.maxValues;
    this.values += count;
    if (!over && this.values > limits.maxValues) this.log.tell(at, [], { code: "too many values" });
  }

  private alias(name: string, at: number, trail: Trail | undefined): Written | undefined {
    this.aliases += 1;
    if (this.aliases > limits.maxAliases) {
      this.log.tell(at, pathOf(trail), { code: "too many aliases" });
      return undefined;
    }
    const meant = this.anchors.get(name);
    if (meant !== undefined && meant !== "open") {
      meant.shared = true;
      this.take((this.sizes.get(meant) ?? 1) - 1, at);
      return meant;
    }
    this.log.tell(at, pathOf(trail), {
      code: meant === "open" ? "alias in itself" : "unknown alias",
      found: shortened(name),
    });
    return undefined;
  }

  private entries(map: YAMLMap, outer: Trail | undefined): WrittenEntry[] {
    const starts = new Map<string, number>();
    const entries: WrittenEntry[] = [];
    for (const pair of map.items) {
      const key = this.key(pair, outer, map.range?.[0] ?? 0);
      if (key === undefined) continue;
      const trail = { step: key.text, outer };
      const first = starts.get(key.text);
      if (first !== undefined) {
        const firstLine = this.log.lineOf(first);
        this.log.tell(key.start, pathOf(trail), {
          code: "duplicate key",
          found: shortened(key.text),
          firstLine,
        });
        continue;
      }
      starts.set(key.text, key.start);
      const value = this.of(pair.value, trail, key.end);
      if (value !== undefined) entries.push({ key: key.text, keyStart: key.start, keyEnd: key.end, value });
    }
    return entries;
  }

  private key(
    pair: Pair,
    outer: Trail | undefined,
    fallbackAt: number,
  ): { text: string; start: number; end: number } | undefined {
    const { key } = pair;
    if (!isScalar(key)) {
      const at = isMap(key) || isSeq(key) || isAlias(key) ? (key.range?.[0] ?? fallbackAt) : fallbackAt;
      this.log.tell(at, pathOf(outer), { code: "key not a word" });
      return undefined;
    }
    const start = key.range?.[0] ?? fallbackAt;
    const text = composed(key.source ?? String(key.value ?? ""));
    if (text === "<<" || text === "") {
      this.log.tell(start, pathOf(outer), { code: text === "" ? "key not a word" : "merge key" });
      return undefined;
    }
    if (key.tag !== undefined)
      this.log.tell(start, pathOf(outer), { code: "tag", found: shortened(key.tag) });
    return { text, start, end: key.range?.[1] ?? start };
  }
}

function plainValue(value: unknown): string | number | bigint | boolean | null {
  if (typeof value === "string") return composed(value);
  const plain = ["number", "bigint", "boolean"].includes(typeof value);
  return plain ? (value as number | bigint | boolean) : null;
}
