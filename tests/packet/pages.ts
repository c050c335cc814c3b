import { readFileSync } from "node:fs";
import { workOut } from "../../src/core/figures.js";
import type { Figures } from "../../src/core/figures-types.js";
import type { Plan } from "../../src/core/plan/model/plan.js";
import { readPlan } from "../../src/core/plan/read.js";
import { type Bounds, boundsOf } from "../../src/drawing/bounds.js";
import type { Shape, Sheet, Text } from "../../src/drawing/shapes.js";

/** A plan of the repository, by its path from the root. */
export function planAt(path: string): Plan {
  const read = readPlan(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(`${path}: ${JSON.stringify(read.problems[0])}`);
  return read.plan;
}

export const figuresAt = (path: string): Figures => workOut(planAt(path)).figures;

/** Keys of the model whose words are names of the owner's. */
const nameKeys = new Set([
  "name",
  "place",
  "port",
  "carries",
  "charges",
  "parallelWith",
  "what",
  "on",
  "oneAtATime",
  // the hull's: faces, lines, points and what stands there
  "face",
  "line",
  "lower",
  "upper",
  "from",
  "to",
  "straightTo",
  "mark",
  "behind",
  "space",
]);

/** The same plan with names changed wherever they stand. */
export function renamed(plan: Plan, names: ReadonlyMap<string, string>): Plan {
  const change = (value: unknown, isName: boolean): unknown => {
    if (typeof value === "string") {
      const parts = value.split(" / ").map((part) => names.get(part) ?? part);
      return isName ? parts.join(" / ") : value;
    }
    if (Array.isArray(value)) return value.map((inner) => change(inner, isName));
    if (value === null || typeof value !== "object") return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [key, change(inner, nameKeys.has(key))]),
    );
  };
  return change(plan, false) as Plan;
}

/** Every text of a sheet as it stands on it, groups resolved. */
export function textsOf(sheet: Sheet): { text: Text; bounds: Bounds }[] {
  const found: { text: Text; bounds: Bounds }[] = [];
  const visit = (shape: Shape, dx: number, dy: number) => {
    if (shape.kind === "group") for (const inner of shape.shapes) visit(inner, dx + shape.dx, dy + shape.dy);
    else if (shape.kind === "text") {
      const text = { ...shape, x: shape.x + dx, y: shape.y + dy };
      found.push({ text, bounds: boundsOf(text) });
    }
  };
  for (const shape of sheet.shapes) visit(shape, 0, 0);
  return found;
}

/** Pairs of texts whose ink meets: the height of small letters, without what reaches above and below. */
export function overlaps(sheet: Sheet): string[] {
  const texts = textsOf(sheet)
    .filter(({ text }) => text.text.trim() !== "" && text.turnDeg === 0)
    .map(({ text, bounds }) => ({
      words: text.text,
      left: bounds.minX,
      right: bounds.maxX,
      bottom: text.y - 0.12 * text.sizeMm,
      top: text.y + 0.66 * text.sizeMm,
    }));
  const met: string[] = [];
  for (const [index, one] of texts.entries())
    for (const other of texts.slice(index + 1))
      if (
        one.left < other.right - 0.05 &&
        other.left < one.right - 0.05 &&
        one.bottom < other.top &&
        other.bottom < one.top
      )
        met.push(`“${one.words}” meets “${other.words}”`);
  return met;
}
