import { broken, harmless, harmlessPainted, terminal } from "./terminal.js";

/**
 * Writes lines to standard output; of what a terminal takes as orders no more than our own colours pass. A reader that went away
 * (`| head`) is no error. On a terminal no line is longer than it is wide.
 */
export function print(lines: readonly string[]): void {
  const safe = lines.map(harmlessPainted).join("\n");
  const shown = process.stdout.isTTY
    ? safe
        .split("\n")
        .flatMap((line) => broken(line, terminal().width))
        .join("\n")
    : safe;
  process.stdout.write(`${shown}\n`);
}

/** Writes a text that is a file's, byte for byte; on a terminal, where nothing takes it as a file, without what could give orders to it. */
export function printFile(text: string): void {
  const shown = process.stdout.isTTY ? text.split(/\r?\n/).map(harmless).join("\n") : text;
  process.stdout.write(shown);
}

/** Data as JSON. What terminals take as orders is escaped, which reads as the same data. */
export function printJson(value: unknown): void {
  const json = JSON.stringify(value, withoutInfinities, 2);
  process.stdout.write(`${json.replace(/[\u007f-\u009f\p{Cf}]/gu, escaped)}\n`);
}

function escaped(sign: string): string {
  const units = sign.split("").map((unit) => unit.charCodeAt(0).toString(16).padStart(4, "0"));
  return units.map((unit) => `\\u${unit}`).join("");
}

/** JSON has no Infinity; a figure that is none is left out. */
function withoutInfinities(_key: string, value: unknown): unknown {
  return typeof value === "number" && !Number.isFinite(value) ? undefined : value;
}
