import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const projectTop = join(import.meta.dirname, "..", "..", "..");

/** The document shown in docs/plan-format.md. */
export function docExample(top = projectTop): string {
  const docs = readFileSync(join(top, "docs", "plan-format.md"), "utf8");
  const text = /```yaml\n([\s\S]*?)```/.exec(docs)?.[1];
  if (text === undefined) throw new Error("docs/plan-format.md shows no plan");
  return text;
}

/** The example plans by file name, as far as there are any. */
export function examplePlans(top = projectTop): { name: string; text: string }[] {
  return ["examples", "examples/wrong"].flatMap((folder) => {
    const path = join(top, folder);
    if (!existsSync(path)) return [];
    return readdirSync(path)
      .filter((name) => name.endsWith(".yaml"))
      .sort()
      .map((name) => ({ name: `${folder}/${name}`, text: readFileSync(join(path, name), "utf8") }));
  });
}

export function projectFile(...path: string[]): string {
  return readFileSync(join(projectTop, ...path), "utf8");
}

/** A small sound plan to spoil in tests; each section on lines of its own. */
export const smallPlan = `skiffloom: 1
name: Reed Bunting   # invented
rules: us

batteries:
  house: {chemistry: agm, capacity: 50 Ah, main: {device: bolted fuse, rating: 40 A}}

panels:
  helm:
    ways:
      lamps: {switch: {rating: 10 A}, fuse: 5 A}   # forward
      bilge:
        switch: none
        fuse: {rating: 3 A, device: breaker}

boxes:
  fore box: {joins: tee}

gear:
  # six of them, three a side
  lamp: {count: 2, draws: 0.9 W, works: 9 V to 16 V}
  pump:
    role: bilge pump
    draws: 2.8 A at 12 V   # on the label

runs:
  feed line: {from: house, to: helm, length: 6 ft, size: 8 AWG}
  trunk: {from: helm / lamps, to: fore box, length: 9 ft 4 in}
  lamp leads: {from: fore box, to: lamp, lengths: [2 ft, 18 in]}
  pump line:
    from: helm / bilge
    to: pump
    length: 7 ft

one at a time:
  - [lamp, pump]

outings:
  dusk:
    lasts: 3 h
    on:
      - {what: helm / lamps}
      - {what: pump, runs: 2 min each hour}
`;
