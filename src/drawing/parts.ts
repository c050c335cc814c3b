import { group } from "./make.js";
import type { Part, Shape } from "./shapes.js";

/** Says of which part of the page the words of some shapes are, where that is not said of them yet. */
export function partOf(shapes: readonly Shape[], part: Part): Shape[] {
  return shapes.map((shape) => {
    if (shape.kind === "text")
      return shape.part === undefined && shape.role === undefined ? { ...shape, part } : shape;
    return shape.kind === "group" && shape.label === undefined
      ? { ...shape, shapes: partOf(shape.shapes, part) }
      : shape;
  });
}

/** The same of all their words, whatever was said of them before: a paragraph in a cell is the cell's. */
export function partOfAll(shapes: readonly Shape[], part: Part): Shape[] {
  return shapes.map((shape) => {
    if (shape.kind === "text") return { ...shape, part };
    return shape.kind === "group" && shape.label === undefined
      ? { ...shape, shapes: partOfAll(shape.shapes, part) }
      : shape;
  });
}

/** Most words of a drawing that are told, and the longest that is. */
const mostLabels = 80;
const mostSigns = 90;

/** A drawing as one thing, told by what it is and by the words written in it, in their order. */
export function figure(
  what: string,
  shapes: readonly Shape[],
  say: (what: string, words: string, more: number) => string,
): Shape[] {
  if (shapes.length === 0) return [];
  const words = [...new Set(wordsOf(shapes))];
  const told = words.slice(0, mostLabels).map((one) => one.slice(0, mostSigns));
  return [group(0, 0, shapes, say(what, told.join("; "), words.length - told.length))];
}

function wordsOf(shapes: readonly Shape[]): string[] {
  return shapes.flatMap((shape) =>
    shape.kind === "text"
      ? [shape.text.trim()].filter((one) => one !== "")
      : shape.kind === "group"
        ? wordsOf(shape.shapes)
        : [],
  );
}
