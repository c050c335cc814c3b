import { nearestOf } from "../../quantity/nearest.js";
import { Registry } from "../references/registry.js";
import type { PlanDocument } from "../source/open.js";
import type { Path } from "../source/problem.js";
import { entryOf, type Written } from "../source/written.js";

/** Where a thing stands in the plan, and what it is. */
export interface Location {
  readonly path: Path;
  readonly kind: string;
}

const lone = [
  "shows",
  "craft",
  "ambient",
  "conductors",
  "marks",
  "checked",
  "float",
  "stock",
  "bought",
  "prices",
  "free hours",
  "work done",
  "work notes",
  "readings",
  "mends",
  "as built",
];
/** Sections whose names may also be names of places: there `faces / helm` is the face. */
const ownNames = [
  ["outings", "outing"],
  ["corners", "corner"],
  ["faces", "face"],
  ["references", "reference"],
] as const;

/** Finds things by the names that findings and people use for them. */
export class Locator {
  readonly registry: Registry;

  constructor(private readonly document: PlanDocument) {
    this.registry = new Registry(document.root);
  }

  /** `house`, `helm / lamps`, `lamp leads 2` (one of `lamp leads`), an outing, corner, face or reference point, `lines / chine` of the form, a section (`conductors`), or `plan`. */
  find(at: string): Location | undefined {
    if (at === "plan") return { path: [], kind: "plan" };
    const [panel = "", way] = at.split(" / ", 2);
    if (way !== undefined) {
      const named = ownNames.find(([section]) => section === panel);
      if (named !== undefined && this.node([panel, way]) !== undefined)
        return { path: [panel, way], kind: named[1] };
      const line = ["craft", "form", "lines", way];
      if (panel === "lines" && this.node(line) !== undefined) return { path: line, kind: "line" };
      const place = this.registry.places.get(panel);
      return place?.kind === "panel" && place.ways.has(way)
        ? { path: ["panels", panel, "ways", way], kind: "way" }
        : undefined;
    }
    const place = this.registry.places.get(at);
    if (place !== undefined) return { path: [place.section, at], kind: place.kind };
    for (const [section, kind] of [
      ...ownNames,
      ["legs", "leg"],
      ["box catalogue", "catalogue box"],
      ["projects", "project"],
    ] as const) {
      const node = entryOf(this.document.root, section)?.value;
      if (node?.kind === "section" && entryOf(node, at) !== undefined) return { path: [section, at], kind };
    }
    if (lone.includes(at)) return { path: [at], kind: at };
    return this.one(at);
  }

  /** A single piece of gear or a single cable of a group is edited with its group. */
  private one(at: string): Location | undefined {
    const group = /^(.+) [1-9]\d*$/.exec(at)?.[1] ?? "";
    const place = this.registry.places.get(group);
    return place?.kind === "gear" || place?.kind === "run"
      ? { path: [place.section, group], kind: place.kind }
      : undefined;
  }

  node(path: Path): Written | undefined {
    let node: Written | undefined = this.document.root;
    for (const step of path) {
      if (node?.kind === "list" && typeof step === "number") node = node.items[step];
      else if (node?.kind === "section" && typeof step === "string") node = entryOf(node, step)?.value;
      else return undefined;
    }
    return node;
  }

  nearest(at: string): string | undefined {
    const ways = [...this.registry.panelsByWay].flatMap(([way, panels]) =>
      panels.map((panel) => `${panel} / ${way}`),
    );
    return nearestOf(at, [...this.registry.places.keys(), ...ways, ...lone]);
  }
}
