import type { Face } from "../faces/face.js";
import { straightM } from "../vector.js";
import { edgeReferences } from "./along-square.js";
import { longAxisM } from "./ellipse.js";
import { type Hole, type Mark, markFor, type SetOutFrom, type Wanted } from "./mark.js";
import { demandTape, type ReferencePoint, readingSigmaM, type Tape } from "./tape.js";

/** All marks of one face, in the order in which to set them out. */
export interface MarkSheet {
  /** Each uses only references and marks that come before it. */
  readonly marks: readonly Mark[];
}

/** A mark already set is used as a reference only when that makes the new one better by this much. */
const worthIt = 0.9;
/** Set marks looked at as references for the next one: the nearest. */
const neighbours = 3;

/**
 * Marks for all holes of a face. Surest first; later ones may lean on a mark already set, with the error that it carries, where
 * that is still better than the references alone.
 * @param references Points one can put a finger on, with their spread.
 * @throws RangeError if the tape's figures are not above zero, or a hole's name comes twice.
 */
export function markSheet(
  face: Face,
  holes: readonly Hole[],
  references: readonly ReferencePoint[],
  tape: Tape,
  wanted: Wanted = "best",
): MarkSheet {
  demandTape(tape);
  const twice = holes.find((hole, i) => holes.findIndex((other) => other.name === hole.name) !== i);
  if (twice) throw new RangeError(`each hole needs its own name, got ${twice.name} twice`);
  const from: SetOutFrom = { references, onEdges: edgeReferences(face, references), tape, wanted };
  const alone = holes.map((hole) => markFor(face, hole, from));
  const order = alone.toSorted(
    (a, b) =>
      (a.ellipse?.majorM ?? Number.POSITIVE_INFINITY) - (b.ellipse?.majorM ?? Number.POSITIVE_INFINITY),
  );
  const done: Mark[] = [];
  for (const mark of order)
    done.push(wanted === "along then square" ? mark : leaning(face, mark, done, from));
  return { marks: done };
}

/** The mark with the help of marks already set, if that is worth it. Each hands on its long axis, the worst it may be off in any direction. */
function leaning(face: Face, mark: Mark, done: readonly Mark[], from: SetOutFrom): Mark {
  const aloneM = mark.ellipse?.majorM ?? Number.POSITIVE_INFINITY;
  const bestM = readingSigmaM(from.tape, 0);
  // two tapes cross at best with one reading's spread: no help can make much of what is near that already
  if (worthIt * aloneM < 1.2 * bestM) return mark;
  const near = done
    .filter((other) => other.covariance !== undefined && straightM(other.at, mark.at) > 0.02)
    .toSorted((a, b) => straightM(a.at, mark.at) - straightM(b.at, mark.at))
    .slice(0, neighbours)
    .flatMap((other): ReferencePoint[] =>
      other.covariance
        ? [{ name: other.name, at: other.at, spot: other.spot, sigmaM: longAxisM(other.covariance) }]
        : [],
    );
  const useful = near.filter((other) => Math.hypot(other.sigmaM, bestM) < worthIt * aloneM);
  if (useful.length === 0) return mark;
  const helped = markFor(face, mark, { ...from, references: [...from.references, ...useful] }, mark.possible);
  return (helped.ellipse?.majorM ?? Number.POSITIVE_INFINITY) < worthIt * aloneM ? helped : mark;
}
