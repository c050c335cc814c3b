// Every module of the house as it stands in text: what it takes from where, and what it gives.
import { readdirSync, readFileSync } from "node:fs";
import { join, posix, relative, sep } from "node:path";
import { parseSync } from "vite";
import { top } from "../ensure.js";

const folders = ["src", "tests", "bench", "scripts"];

function* sources(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sources(path);
    else if (/\.(tsx?|js)$/.test(entry.name) && !entry.name.endsWith(".d.ts")) yield path;
  }
}

/** What a relative import names, from the top: `src/core/x.ts`; what is no module is told as it is written. */
function target(from, specifier, names) {
  const path = posix.join(posix.dirname(from), specifier);
  return (
    [path.replace(/\.js$/, ".ts"), path.replace(/\.js$/, ".tsx"), path].find((name) => names.has(name)) ??
    path
  );
}

/**
 * @returns {Map<string, { text: string, takes: { from: string, names: string[] | "any" }[], gives: { name: string, isType: boolean }[] }>}
 * By path from the top. `any`: imported as a whole, so that what is taken is told by the names that stand in the text.
 */
export function readModules() {
  const texts = new Map(
    folders.flatMap((folder) =>
      [...sources(join(top, folder))].map((path) => [
        relative(top, path).split(sep).join("/"),
        readFileSync(path, "utf8"),
      ]),
    ),
  );
  return new Map([...texts].map(([path, text]) => [path, moduleOf(path, text, texts)]));
}

function moduleOf(path, text, names) {
  const { staticImports, staticExports, dynamicImports } = parseSync(path, text).module;
  const takes = [];
  const take = (specifier, entries) => {
    if (specifier.startsWith(".")) takes.push({ from: target(path, specifier, names), names: entries });
  };
  const named = ({ importName }) => (importName.kind === "Default" ? "default" : importName.name);
  const isWhole = ({ importName }) => importName.kind !== "Name" && importName.kind !== "Default";
  for (const { moduleRequest, entries } of staticImports)
    take(moduleRequest.value, entries.some(isWhole) ? "any" : entries.map(named));
  const exported = staticExports.flatMap(({ entries }) => entries);
  for (const entry of exported)
    if (entry.moduleRequest) take(entry.moduleRequest.value, isWhole(entry) ? "any" : [named(entry)]);
  for (const { moduleRequest } of dynamicImports) {
    const [, specifier] = /^["'](.*)["']$/.exec(text.slice(moduleRequest.start, moduleRequest.end)) ?? [];
    if (specifier !== undefined) take(specifier, "any");
  }
  // a worker is named by its address
  for (const [, specifier] of text.matchAll(/new URL\(\s*"(\.[^"]+)"/g))
    if (names.has(target(path, specifier, names))) take(specifier, "any");
  return {
    text,
    takes,
    gives: exported.map(({ exportName, isType }) => ({
      name: exportName.kind === "Default" ? "default" : exportName.name,
      isType,
    })),
  };
}
