import type { Step } from "../edits/step.js";
import type { FormatStep } from "../versions/format-step.js";
import type { Opened } from "./opened.js";
import type { Written } from "./written.js";

/** The full YAML reader and writer (`full-yaml.ts`): heavy, and wanted only where a text leaves the plain writing the quick reader knows. */
export interface FullYaml {
  /** @throws PastLimit where the text goes past a limit. */
  readonly open: (text: string) => Opened;
  /** A value as it would stand in a plan. @returns undefined where nothing usable is written. */
  readonly valueOf: (text: string) => Written | undefined;
  /** Is the text one whole value on its line, with nothing behind it? */
  readonly isValue: (text: string) => boolean;
  /** The text with the steps made; it may be laid out anew. @returns undefined where a step leads nowhere. */
  readonly rewrite: (text: string, steps: readonly Step[]) => string | undefined;
  /** The text brought from format to format. */
  readonly migrate: (text: string, steps: readonly FormatStep[]) => string;
}

/** Thrown where the full reader is wanted and has not been brought: a page brings it after its first paint, all else at the start. */
export class FullYamlMissing extends Error {
  constructor() {
    super("the full YAML reader has not been brought");
  }
}

let brought: FullYaml | undefined;

export function bringFullYaml(full: FullYaml): void {
  brought = full;
}

/** @throws FullYamlMissing */
export function theFullYaml(): FullYaml {
  if (brought === undefined) throw new FullYamlMissing();
  return brought;
}
