import type { FaceTemplate } from "../core/box/template.js";
import type { FacePlan } from "../core/plan/model/hull.js";
import type { Side } from "../core/plan/model/placing.js";
import type { DrawnWords } from "./drawn/english.js";
import { holeSize } from "./template-words.js";
import { namesText } from "./work-words.js";

const scaleWords = (scale: number, { step }: DrawnWords): string =>
  scale === 1 ? step.trueScale : `1 : ${scale}`;

/** A face of a box: each hole by its number, what it is for and how large. */
export function faceDrawn({ box, face, holes }: FaceTemplate, scale: number, words: DrawnWords): string {
  const { template, entry } = words;
  const each = holes.map(({ id, holeMm }, index) => `${index + 1} ${entry(id)}, ${holeSize(holeMm)}`);
  return `${template.title(box, face)}, ${scaleWords(scale, words)}. ${each.join("; ")}.`;
}

/** A box with its lid off. */
export const insideDrawn = (
  box: string,
  contents: readonly string[],
  scale: number,
  words: DrawnWords,
): string => words.step.lidOff(box, scaleWords(scale, words), contents.join(", "));

/** From where a face is looked at. */
export function seenWords(
  { shape }: FacePlan,
  inside: boolean,
  bowRight: boolean | undefined,
  { step }: DrawnWords,
): string {
  if (bowRight === undefined) return step.looks(shape.kind === "flat" ? shape.looks : undefined);
  return step.seen(inside, bowRight);
}

/** The marks of some gear on one side of a face: the letters of the points they are measured from. */
export function marksDrawn(
  of: {
    readonly face: FacePlan;
    readonly name: string;
    readonly side: Side;
    readonly scale: number;
    readonly inside: boolean;
    /** Only a part of the side is drawn, and the whole small above it. */
    readonly part: boolean;
    readonly bowRight?: boolean;
    readonly letters: ReadonlyMap<string, string>;
    readonly marks: readonly string[];
  },
  words: DrawnWords,
): string {
  const where = of.face.pair ? `${of.name}, ${words.step.sides[of.side]}` : of.name;
  const letters = [...of.letters].map(([name, letter]) => `${letter} ${words.sided(name)}`);
  const seen = seenWords(of.face, of.inside, of.bowRight, words);
  return `${where}, ${scaleWords(of.scale, words)}, ${seen}. ${of.part ? `${words.step.part} ` : ""}${namesText(of.marks, words)}; ${letters.join("; ")}. ${words.step.notByDrawing}`;
}
