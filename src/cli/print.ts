/** Writes lines to standard output. A reader that went away (`| head`) is no error. */
export function print(lines: readonly string[]): void {
  process.stdout.write(`${lines.join("\n")}\n`);
}

export function printJson(value: unknown): void {
  process.stdout.write(`${JSON.stringify(value, withoutInfinities, 2)}\n`);
}

/** JSON has no Infinity; a figure that is none is left out. */
function withoutInfinities(_key: string, value: unknown): unknown {
  return typeof value === "number" && !Number.isFinite(value) ? undefined : value;
}
