// Writes schema/skiffloom-plan.schema.json and the key tables of docs/plan-format.md from the description in src/core/plan/schema/.
// `node scripts/schema.js --check` writes nothing and fails where they are out of step.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { ensureModules, top } from "./ensure.js";

ensureModules();
const { build } = await import("esbuild");
const bundle = join(top, "dist", "schema", "make.mjs");
await build({
  absWorkingDir: top,
  stdin: {
    contents: `export { planJsonSchema } from "./src/core/plan/schema/publish.ts";
export { planKeyTables } from "./src/words/plan-keys.ts";`,
    resolveDir: top,
  },
  outfile: bundle,
  bundle: true,
  format: "esm",
  platform: "node",
  logLevel: "warning",
});
const { planJsonSchema, planKeyTables } = await import(pathToFileURL(bundle).href);

const docs = readFileSync(join(top, "docs", "plan-format.md"), "utf8");
const tables = /(<!-- keys, written by scripts\/schema.js -->\n)[\s\S]*(<!-- end of keys -->)/;
if (!tables.test(docs))
  throw new Error("docs/plan-format.md has lost the marks between which the key tables stand");
const wanted = [
  [join("schema", "skiffloom-plan.schema.json"), `${JSON.stringify(planJsonSchema(), null, 2)}\n`],
  [
    join("docs", "plan-format.md"),
    docs.replace(tables, (_all, open, close) => `${open}\n${planKeyTables()}\n${close}`),
  ],
];
mkdirSync(join(top, "schema"), { recursive: true });
for (const [name, text] of wanted) {
  const path = join(top, name);
  if (!process.argv.includes("--check")) writeFileSync(path, text);
  else if (readFileSync(path, "utf8") !== text) {
    console.error(`${name} is out of step; run node scripts/schema.js`);
    process.exitCode = 1;
  }
}
