import type { FaceTemplate } from "../core/box/template.js";
import type { FacePlan } from "../core/plan/model/hull.js";
import type { Side } from "../core/plan/model/placing.js";
import { templateWords } from "./template-words.js";
import { namesText } from "./work-words.js";

const scaleWords = (scale: number): string => (scale === 1 ? "true scale" : `1 : ${scale}`);

/** A face of a box: each hole by its number, what it is for and how large. */
export function faceDrawn({ box, face, holes }: FaceTemplate, scale: number): string {
  const each = holes.map(({ id, holeMm }, index) => `${index + 1} ${id}, ${templateWords.hole(holeMm)}`);
  return `${templateWords.title(box, face)}, ${scaleWords(scale)}. ${each.join("; ")}.`;
}

/** A box with its lid off. */
export function insideDrawn(box: string, contents: readonly string[], scale: number): string {
  return `${box} with its lid off, ${scaleWords(scale)}: ${contents.join(", ")}.`;
}

/** From where a face is looked at. */
export function seenWords(plan: FacePlan, inside: boolean, bowRight: boolean | undefined): string {
  if (bowRight === undefined)
    return `as one looks at it, ${plan.shape.kind === "flat" ? `from ${plan.shape.looks}` : ""}`;
  return `seen from ${inside ? "inside" : "outside"}; the bow is to the ${bowRight ? "right" : "left"}`;
}

export const notByDrawing = "Set out by the readings, not by this drawing.";

/** The marks of some gear on one side of a face: the letters of the points they are measured from. */
export function marksDrawn(of: {
  readonly face: FacePlan;
  readonly name: string;
  readonly side: Side;
  readonly scale: number;
  readonly inside: boolean;
  readonly bowRight?: boolean;
  readonly letters: ReadonlyMap<string, string>;
  readonly marks: readonly string[];
}): string {
  const where = of.face.pair ? `${of.name}, ${of.side}` : of.name;
  const letters = [...of.letters].map(([name, letter]) => `${letter} ${name}`);
  const seen = seenWords(of.face, of.inside, of.bowRight);
  return `${where}, ${scaleWords(of.scale)}, ${seen}. ${namesText(of.marks)}; ${letters.join("; ")}. ${notByDrawing}`;
}

export const circuitDrawn = (run: string): string =>
  `The circuit of ${run} on one line, from the battery outward: one line stands for out and return.`;
