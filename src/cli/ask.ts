import { createInterface, type Interface } from "node:readline/promises";
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
      if (next.done)
        throw new InputProblem(["", "the answers ended before the questions did; nothing was written"]);
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

/** A check that the answer is one of some words. */
export function oneOf(words: readonly string[]): Check {
  return (answer) => (words.includes(answer) ? undefined : `one of ${words.join(", ")}, please`);
}
