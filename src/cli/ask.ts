import { createInterface, type Interface } from "node:readline/promises";
import type { TerminalWords } from "../words/terminal/english.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

/** Checks an answer: undefined when it is fine, else what would be. */
export type Check = (answer: string) => string | undefined;

/** Asks at the terminal, or takes lines piped in. Ends cleanly when the input does. */
export class Asker {
  private readonly reader: Interface;
  private readonly lines: AsyncIterator<string>;

  constructor() {
    this.reader = createInterface({ input: process.stdin, output: process.stderr, terminal: false });
    this.lines = this.reader[Symbol.asyncIterator]();
  }

  /**
   * One question; asked again until the answer is fine. An empty answer takes `usual`.
   * @throws InputProblem if the input ends first.
   */
  async ask(question: string, usual: string, check: Check = () => undefined): Promise<string> {
    for (;;) {
      process.stderr.write(`${question}${usual === "" ? "" : ` [${usual}]`}: `);
      const next = await this.lines.next();
      if (next.done) throw new InputProblem(({ common }) => ["", common.asking.ended]);
      const answer = next.value.trim() === "" ? usual : next.value.trim();
      const fault = check(answer);
      if (fault === undefined) return answer;
      process.stderr.write(`  ${harmless(fault)}\n`);
    }
  }

  close(): void {
    this.reader.close();
  }
}

/** A word of the plan's format, and what it is called in the reader's language. */
export interface Choice<Key extends string> {
  readonly key: Key;
  readonly said: string;
}

/** What an answer chooses, by either name and without regard to capitals and accents; undefined: none of them. */
export function chosen<Key extends string>(choices: readonly Choice<Key>[], answer: string): Key | undefined {
  const asked = bare(answer);
  return choices.find(({ key, said }) => bare(key) === asked || bare(said) === asked)?.key;
}

const bare = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{Mn}+/gu, "")
    .toLowerCase();

/** A check that the answer is one of some words. */
export function oneOf(choices: readonly Choice<string>[], { common }: TerminalWords): Check {
  return (answer) =>
    chosen(choices, answer) === undefined
      ? common.asking.oneOf(choices.map(({ said }) => said).join(", "))
      : undefined;
}
