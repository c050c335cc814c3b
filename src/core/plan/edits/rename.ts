import { isName } from "../schema/combine.js";
import type { Path } from "../source/problem.js";
import type { Written } from "../source/written.js";
import { located } from "./field.js";
import type { Locator } from "./locate.js";
import { boxRenameSteps } from "./rename-boxes.js";
import { hullRenameSteps } from "./rename-hull.js";
import { partRenameSteps } from "./rename-parts.js";
import { workRenameSteps } from "./rename-work.js";
import type { Step, Steps } from "./step.js";
import { keyText } from "./value.js";

/** A thing gets another name, and so wherever the plan speaks of it. For a way, `at` is `panel / way` and `to` the way's name alone. */
export function renameSteps(locator: Locator, at: string, to: string): Steps {
  const location = located(locator, at);
  if ("code" in location) return location;
  const old = location.path.at(-1);
  if (location.path.length < 2 || typeof old !== "string") return { code: "wrong kind of thing" };
  if (!isName(to)) return { code: "bad value" };
  const ownName = ["face", "reference", "outing", "corner", "line"].includes(location.kind);
  const among = location.kind === "way" ? 1 : location.kind === "line" ? 2 : 0;
  const taken = location.kind === "way" || ownName ? `${location.path[among]} / ${to}` : to;
  if (locator.find(taken)?.path.at(-1) === to) return { code: "name taken" };
  const renamed =
    location.kind === "way" ? wayRenamer(locator, String(location.path[1]), old, to) : placeRenamer(old, to);
  const steps: Step[] = hullRenameSteps(locator, location.kind, (text) => renamed(text, undefined));
  if (!ownName && !["run", "leg", "catalogue box"].includes(location.kind))
    for (const { path, text, run } of mentions(locator)) {
      const now = renamed(text, run);
      if (now !== text) steps.push({ do: "set", path, to: keyText(now) });
    }
  steps.push(...boxRenameSteps(locator, location.kind, (text) => renamed(text, undefined)));
  steps.push(...workRenameSteps(locator, recordRenamer(location.kind, old, to)));
  steps.push(...partRenameSteps(locator, location.kind, old, to));
  return [...steps, { do: "rename", path: location.path, to }];
}

/** In records only names of things one builds with are followed. A way's own name is too common a word there: `helm / lamps`. */
function recordRenamer(kind: string, old: string, to: string): (text: string) => string {
  const followed = [
    "battery",
    "charger",
    "converter",
    "panel",
    "box",
    "gear",
    "run",
    "face",
    "waypoint",
    "leg",
  ];
  if (!followed.includes(kind)) return (text) => text;
  const renamed = placeRenamer(old, to);
  return (text) => renamed(text, undefined);
}

type Renamer = (text: string, run: Ends | undefined) => string;
interface Ends {
  readonly from: string;
  readonly to: string;
}

function placeRenamer(old: string, to: string): Renamer {
  return (text) => {
    const [place = "", ...rest] = text.split(" / ");
    const number = /^(.+)( [1-9]\d*)$/.exec(place);
    const now = place === old ? to : number?.[1] === old ? `${to}${number[2]}` : place;
    return [now, ...rest].join(" / ");
  };
}

/** A way is named `panel / way`, or alone where that is clear: one panel has it, or the run starts or ends at the panel. */
function wayRenamer(locator: Locator, panel: string, old: string, to: string): Renamer {
  const only = locator.registry.panelsByWay.get(old)?.length === 1;
  return (text, run) => {
    if (text === `${panel} / ${old}`) return `${panel} / ${to}`;
    const beside = run !== undefined && [run.from, run.to].includes(panel);
    if (text === old && (only || beside)) return to;
    const parts = text.split(" / ");
    const box = locator.registry.places.get(parts[0] ?? "")?.kind === "box";
    if (box && parts.length === 3 && parts[1] === panel && parts[2] === old)
      return `${parts[0]} / ${panel} / ${to}`;
    return box && parts.length === 2 && parts[1] === old && only ? `${parts[0]} / ${to}` : text;
  };
}

interface Mention {
  readonly path: Path;
  readonly text: string;
  readonly run?: Ends;
}

/** Every place of the plan where a name of something else stands. */
function* mentions(locator: Locator): Generator<Mention> {
  yield* inEach(locator, "batteries", ["parallel with", "through"]);
  yield* inEach(locator, "panels", ["through"]);
  yield* inEach(locator, "boxes", ["through"]);
  yield* inEach(locator, "legs", ["from", "to"]);
  yield* inEach(locator, "chargers", ["charges"]);
  yield* inEach(locator, "runs", ["from", "to", "carries", "along"]);
  yield* inEach(locator, "corners", ["on"]);
  yield* texts(locator.node(["one at a time"]), ["one at a time"]);
  const outings = locator.node(["outings"]);
  if (outings?.kind !== "section") return;
  for (const { key, value } of outings.entries) {
    const on =
      value.kind === "section" ? value.entries.find((entry) => entry.key === "on")?.value : undefined;
    if (on?.kind !== "list") continue;
    for (const index of on.items.keys()) {
      const path = ["outings", key, "on", index, "what"];
      yield* texts(locator.node(path), path);
    }
  }
}

function* inEach(locator: Locator, section: string, keys: readonly string[]): Generator<Mention> {
  const node = locator.node([section]);
  if (node?.kind !== "section") return;
  for (const { key: name, value } of node.entries) {
    if (value.kind !== "section") continue;
    const place = (end: string) => {
      const found = value.entries.find((entry) => entry.key === end)?.value;
      return found?.kind === "scalar" ? (found.text.split(" / ")[0] ?? "") : "";
    };
    const run = section === "runs" ? { from: place("from"), to: place("to") } : undefined;
    for (const { key, value: named } of value.entries)
      if (keys.includes(key))
        for (const mention of texts(named, [section, name, key]))
          yield run !== undefined && key === "carries" ? { ...mention, run } : mention;
  }
}

function* texts(node: Written | undefined, path: Path): Generator<Mention> {
  if (node?.kind === "scalar") yield { path, text: node.text };
  if (node?.kind === "list")
    for (const [index, item] of node.items.entries()) yield* texts(item, [...path, index]);
}
