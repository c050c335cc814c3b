import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize, relative } from "node:path";
import { describe, expect, test } from "vitest";
import { readPlan } from "../../src/core/plan/read.js";
import { projectFile } from "../core/plan/doc-example.js";

const top = join(import.meta.dirname, "..", "..");
const ownFolders = [
  "assets",
  "bench",
  "bin",
  "changes",
  "docs",
  "examples",
  "schema",
  "scripts",
  "src",
  "tests",
];

/** Files and folders of the project, from its top. */
const paths = ownFolders
  .flatMap((folder) => [
    folder,
    ...readdirSync(join(top, folder), { withFileTypes: true, recursive: true }).map((entry) =>
      relative(top, join(entry.parentPath, entry.name)),
    ),
  ])
  .concat(readdirSync(top))
  .map((path) => `/${path}`);

const pages = paths.filter((path) => path.endsWith(".md") && !/^\/(docs\/rules|CHANGELOG)/.test(path));
/** Files that the how-tos make up. */
const madeUp = /lamp-upside-down|some-name|NAME\.mended|tap-drills/;

/** A page shortens paths: `sizes/choose.ts` is any file that ends so. Imports end in `.js`. */
const isThere = (path: string) => {
  const ending = `/${path.replace(/\/$/, "")}`;
  return paths.some((one) => one.endsWith(ending) || one.endsWith(ending.replace(/\.js$/, ".ts")));
};

describe.each(pages)("%s", (page) => {
  const text = readFileSync(join(top, page), "utf8").replace(/```[\s\S]*?```/g, "");
  test("names only files and folders that there are", () => {
    const named = [...text.matchAll(/`([\w@./-]+(?:\.(?:tsx?|js|md|yaml|json|css)|\/))`/g)].map(
      ([, path = ""]) => path,
    );
    expect(named.filter((path) => !madeUp.test(path) && !isThere(path))).toEqual([]);
  });
  test("links only to what there is", () => {
    const links = [...text.matchAll(/\]\((?!https?:)([^)#]+)/g)].map(([, to = ""]) => to);
    expect(links.filter((to) => !paths.includes(normalize(join(dirname(page), to))))).toEqual([]);
  });
});

test("docs/dependencies.md has each dependency with the version and licence that are installed", () => {
  const { dependencies, devDependencies }: Readonly<Record<string, object>> = JSON.parse(
    projectFile("package.json"),
  );
  const rows = projectFile("docs", "dependencies.md").split("\n");
  for (const name of Object.keys({ ...dependencies, ...devDependencies })) {
    const { version, license }: { version: string; license: string } = JSON.parse(
      projectFile("node_modules", ...name.split("/"), "package.json"),
    );
    const row = rows.find((line) => line.startsWith("|") && line.includes(`\`${name}\``)) ?? "";
    expect(row, name).toContain(version);
    expect(row, name).toContain(license.replace(" OR ", " or "));
  }
});

test("docs/plan-format.md: the sections shown apart from the large example are read", () => {
  const [, sections = ""] = [
    ...projectFile("docs", "plan-format.md").matchAll(/```yaml\n([\s\S]*?)```/g),
  ].map(([, text]) => text);
  // what they hang on: a battery, a panel, the lamp and the runs before and behind the one shown
  const before = `skiffloom: 1
name: Reed Bunting, invented
rules: us
batteries: {house: {chemistry: agm, capacity: 50 Ah}}
panels: {helm: {ways: {lamps: {fuse: 5 A}}}}
gear: {lamp: {draws: 1 W}}
`;
  const runs = `runs:
  feed: {from: house, to: helm, length: 4 ft}
  lamp lead: {from: fore box, to: lamp, length: 1 ft}
`;
  expect(sections).toMatch(/^boxes:.*^prices:/ms);
  expect(readPlan(before + sections.replace("runs:\n", runs))).toMatchObject({ ok: true });
});
