import { Composer, type CST, type Document, isDocument, Lexer, type ParsedNode, Parser } from "yaml";
import { limits } from "./limits.js";
import type { Told } from "./problem-log.js";
import { PastLimit } from "./quick-flow.js";

/** `uniqueKeys` is off because the library compares every key with every other; `convert` looks for repeats itself. */
export const yamlOptions = {
  version: "1.2",
  schema: "core",
  uniqueKeys: false,
  merge: false,
  logLevel: "silent",
} as const;

/**
 * The first document of a text by the YAML library, and the second if there is one.
 * That library is not written for hostile input: whatever it throws is a fault of the text.
 * @throws PastLimit where the text goes past a limit.
 */
export function composeYaml(
  text: string,
): { readonly documents: Document.Parsed[] } | { readonly problem: Told } {
  try {
    const documents: Document.Parsed[] = [];
    const composer = new Composer<ParsedNode>(yamlOptions);
    for (const each of composer.compose(tokensOf(text), true, text.length))
      if (isDocument(each) && documents.push(each) > 1) break;
    return { documents };
  } catch (error) {
    if (error instanceof PastLimit) throw error;
    if (error instanceof RangeError) return { problem: { code: "too deep" } };
    const detail = error instanceof Error ? error.message : String(error);
    return { problem: { code: "yaml", yaml: { code: "THROWN", detail } } };
  }
}

export function yamlMistakes(document: Document.Parsed): (Told & { readonly at: number })[] {
  return document.errors.map(({ pos, code, message }) => ({
    at: pos[0],
    code: "yaml",
    yaml: { code, detail: firstLine(message) },
  }));
}

/** The tokens of the whole text. @throws PastLimit as soon as it nests deeper, or holds more, than a plan may. */
function tokensOf(text: string): CST.Token[] {
  const parser = new Parser();
  const tokens: CST.Token[] = [];
  let signs = 0;
  for (const sign of new Lexer().lex(text)) {
    signs += 1;
    if (signs > limits.maxSigns) throw new PastLimit("too many values", parser.offset);
    for (const token of parser.next(sign)) tokens.push(token);
    // the document itself, and the word at hand, are no levels
    if (parser.stack.length > limits.maxDepth + 2) throw new PastLimit("too deep", parser.offset);
  }
  for (const token of parser.end()) tokens.push(token);
  return tokens;
}

function firstLine(message: string): string {
  return message.split("\n", 1)[0]?.replace(/ at line \d+, column \d+:?$/, "") ?? "";
}
