import type { Path } from "../source/problem.js";
import type { Written } from "../source/written.js";
import type { Locator } from "./locate.js";
import type { Step } from "./step.js";
import { keyText } from "./value.js";

const hullSections = ["gear", "references", "faces"];

/** Steps that carry a new name into the sections about the hull. `kind`: of the thing that gets it. */
export function hullRenameSteps(locator: Locator, kind: string, renamed: (text: string) => string): Step[] {
  const mentioned = mentions[kind] ?? (() => false);
  const sections = kind === "line" ? [...hullSections, "craft", "as built"] : hullSections;
  const texts = sections.flatMap((section) =>
    [...scalars(locator.node([section]), [section])].flatMap(({ path, text }): Step[] => {
      const now = mentioned(path) ? renamed(text) : text;
      return now === text ? [] : [{ do: "set", path, to: keyText(now) }];
    }),
  );
  return kind === "face" ? texts : [...texts, ...readingSteps(locator, kind, renamed)];
}

/** Readings are named by mark, then by what was measured from: a reference point or another mark. */
function readingSteps(locator: Locator, kind: string, renamed: (text: string) => string): Step[] {
  const node = locator.node(["checked"]);
  if (node?.kind !== "section" || !["reference", "gear"].includes(kind)) return [];
  const references = locator.node(["references"]);
  const isReference = (name: string) =>
    references?.kind === "section" && references.entries.some(({ key }) => key === name);
  const steps: Step[] = [];
  for (const { key: mark, value } of node.entries) {
    if (value.kind === "section")
      for (const { key: from } of value.entries)
        if (isReference(from) === (kind === "reference") && renamed(from) !== from)
          steps.push({ do: "rename", path: ["checked", mark, from], to: renamed(from) });
    // after its own readings: their paths go through its old name
    if (kind === "gear" && renamed(mark) !== mark)
      steps.push({ do: "rename", path: ["checked", mark], to: renamed(mark) });
  }
  return steps;
}

function namesFace(path: Path): boolean {
  if (path[0] === "gear") return path[2] === "on" && path.length === 3;
  return path[0] === "references" && (path[2] === "straight to" || path[2] === "face");
}

function namesReference(path: Path): boolean {
  const last = path.at(-1);
  if (path[0] === "gear")
    return (path[2] === "at" && last === "from") || (path[2] === "row" && last === "counted from");
  if (path[0] === "references") return path[2] === "measured" && last === "from";
  return (path[2] === "openings" || path[2] === "holes") && path[4] === "at" && last === "from";
}

/** Lines of the form: in its own readings, as edges of strips, and where something is counted along or off them. */
function namesLine(path: Path): boolean {
  const [section, , key, inner] = path;
  const last = path.at(-1);
  if (section === "craft")
    return (
      path[1] === "form" && (key === "checks" || key === "measured") && (last === "line" || last === "to")
    );
  const edge = last === "below" || last === "above";
  if (section === "as built") return path[3] === "at" && edge;
  if (section === "gear") return (key === "at" || key === "row") && edge;
  if (section === "references") return (key === "on" && path.length === 3) || edge;
  return (key === "strip" && path.length === 4) || (inner !== undefined && path[4] === "at" && edge);
}

const mentions: Readonly<Record<string, (path: Path) => boolean>> = {
  face: namesFace,
  reference: namesReference,
  line: namesLine,
};

function* scalars(node: Written | undefined, path: Path): Generator<{ path: Path; text: string }> {
  if (node?.kind === "scalar") yield { path, text: node.text };
  if (node?.kind === "list")
    for (const [index, item] of node.items.entries()) yield* scalars(item, [...path, index]);
  if (node?.kind === "section")
    for (const { key, value } of node.entries) yield* scalars(value, [...path, key]);
}
