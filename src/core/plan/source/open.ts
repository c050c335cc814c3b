import { Composer, type CST, type Document, isCollection, isDocument, type ParsedNode, Parser } from "yaml";
import { convert } from "./convert.js";
import { limits } from "./limits.js";
import { Lines } from "./lines.js";
import type { ReadProblem } from "./problem.js";
import { ProblemLog, shortened, type Told } from "./problem-log.js";
import type { WrittenSection } from "./written.js";

/** A plan file that is sound YAML: its text, and its tree with the places of all that is in it. */
export interface PlanDocument {
  readonly text: string;
  readonly root: WrittenSection;
  readonly lines: Lines;
}

export type Opened =
  | { readonly ok: true; readonly document: PlanDocument; readonly log: ProblemLog }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

/** `uniqueKeys` is off because the library compares every key with every other; `convert` looks for repeats itself. */
export const yamlOptions = {
  version: "1.2",
  schema: "core",
  uniqueKeys: false,
  merge: false,
  logLevel: "silent",
} as const;

/** Opens the text as YAML 1.2 within the limits. Never throws. */
export function openDocument(text: string): Opened {
  if (text.length > limits.maxBytes) return refused(text.slice(0, 1), 0, { code: "too large" });
  try {
    return open(text);
  } catch (error) {
    // The YAML reader is not written for hostile input; whatever it throws is a fault of the text.
    const detail = error instanceof Error ? error.message : String(error);
    const tooDeep = error instanceof RangeError;
    return refused(
      text,
      0,
      tooDeep ? { code: "too deep" } : { code: "yaml", yaml: { code: "THROWN", detail } },
    );
  }
}

function open(text: string): Opened {
  const tokens: CST.Token[] = [];
  const tooMuch = watchTokens(text, tokens);
  if (tooMuch !== undefined) return refused(text, tooMuch.at, { code: tooMuch.code });
  const documents: Document.Parsed[] = [];
  for (const each of new Composer<ParsedNode>(yamlOptions).compose(tokens, true, text.length))
    if (isDocument(each)) documents.push(each);
  const [yaml, second] = documents;
  if (yaml === undefined) return refused(text, 0, { code: "empty" });
  const lines = new Lines(text);
  const log = new ProblemLog(lines);
  for (const error of yaml.errors)
    log.tell(error.pos[0], [], {
      code: "yaml",
      yaml: { code: error.code, detail: firstLine(error.message) },
    });
  if (log.problems.length > 0) return { ok: false, problems: log.problems };
  if (second !== undefined) return refused(text, second.range[0], { code: "several documents" });
  const contents = yaml.contents;
  if (contents === null || (!isCollection(contents) && contents.source === ""))
    return refused(text, 0, { code: "empty" });
  const root = convert(contents, log);
  if (root === undefined || root.kind !== "section") {
    if (log.problems.length === 0)
      log.tell(root?.start ?? 0, [], {
        code: "wrong form",
        found: root?.kind === "scalar" ? shortened(root.text) : "list",
        expected: { kind: "form", form: "section" },
      });
    return { ok: false, problems: log.problems };
  }
  return { ok: true, document: { text, root, lines }, log };
}

/** Collects the parser's tokens; stops where the text nests deeper, or holds more, than a plan may. */
function watchTokens(
  text: string,
  tokens: CST.Token[],
): { code: "too deep" | "too many values"; at: number } | undefined {
  for (const token of new Parser().parse(text)) tokens.push(token);
  let count = 0;
  const open: { token: CST.Token; depth: number }[] = tokens.map((token) => ({ token, depth: 0 }));
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const { token, depth } = next;
    count += 1;
    if (depth > limits.maxDepth) return { code: "too deep", at: token.offset };
    if (count > limits.maxValues) return { code: "too many values", at: token.offset };
    if (token.type === "document") {
      if (token.value !== undefined) open.push({ token: token.value, depth: depth + 1 });
    } else if ("items" in token) {
      for (const item of token.items) {
        if (item.key) open.push({ token: item.key, depth: depth + 1 });
        if (item.value) open.push({ token: item.value, depth: depth + 1 });
      }
    }
  }
  return undefined;
}

function refused(text: string, at: number, problem: Told): Opened {
  const where = new Lines(text).at(at);
  return { ok: false, problems: [{ ...problem, ...where, path: [] }] };
}

function firstLine(message: string): string {
  return message.split("\n", 1)[0]?.replace(/ at line \d+, column \d+:?$/, "") ?? "";
}
