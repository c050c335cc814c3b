import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/**
 * Operating points of many decks from one run of ngspice (Debian package `ngspice`), read from its binary raw files at full
 * precision.
 * @returns for each deck the voltages by node name, lower case.
 * @throws Error where ngspice is missing, or found no operating point of a deck.
 */
export function runNgspice(decks: readonly string[]): Map<string, number>[] {
  return runNgspiceAltered(decks.map((deck) => ({ deck, alter: [[]] }))).map(([point], i) => {
    if (!point) throw new Error(`ngspice found no operating point of deck ${i}`);
    return point;
  });
}

/** A deck, and for each operating point wanted of it the commands that come before. */
export interface AlteredDeck {
  readonly deck: string;
  readonly alter: readonly (readonly string[])[];
}

/**
 * Several operating points of each deck, read once: `alter` commands set it up for each.
 * @returns undefined in the place of a point that ngspice did not find.
 */
export function runNgspiceAltered(decks: readonly AlteredDeck[]): (Map<string, number> | undefined)[][] {
  const folder = mkdtempSync(join(tmpdir(), "solver-witness-"));
  try {
    const commands = decks.flatMap(({ deck, alter }, i) => {
      writeFileSync(join(folder, `${i}.cir`), deck);
      const points = alter.flatMap((before, k) => [
        ...before,
        "op",
        `write ${folder}/${i}-${k}.raw`,
        "destroy all",
      ]);
      return [`source ${folder}/${i}.cir`, ...points, "remcirc"];
    });
    const script = ["* all decks", ".control", "set filetype=binary", ...commands, "quit", ".endc", ".end"];
    writeFileSync(join(folder, "all.cir"), `${script.join("\n")}\n`);
    const run = spawnSync("ngspice", ["-b", join(folder, "all.cir")], {
      encoding: "utf8",
      maxBuffer: 1 << 28,
    });
    if (run.error !== undefined)
      throw new Error(`ngspice could not be run (Debian package ngspice): ${run.error.message}`);
    return decks.map(({ alter }, i) =>
      alter.map((_, k) => {
        const file = join(folder, `${i}-${k}.raw`);
        return existsSync(file) ? readRaw(readFileSync(file)) : undefined;
      }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A binary raw file: a text header that names the variables, then one double a variable. */
function readRaw(bytes: Buffer): Map<string, number> {
  const mark = Buffer.from("Binary:\n");
  const headerEnd = bytes.indexOf(mark);
  if (headerEnd === -1) throw new Error("no binary part");
  const header = bytes.subarray(0, headerEnd).toString("latin1");
  const names = header
    .slice(header.indexOf("Variables:\n") + "Variables:\n".length)
    .trimEnd()
    .split("\n")
    .map((line) => line.trim().split(/\s+/)[1] ?? "");
  const voltages = new Map<string, number>();
  names.forEach((name, i) => {
    const inner = /^v\((.*)\)$/.exec(name)?.[1] ?? name;
    voltages.set(inner, bytes.readDoubleLE(headerEnd + mark.length + 8 * i));
  });
  return voltages;
}
