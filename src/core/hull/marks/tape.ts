import { type Face, type Frame, frameAt, placeOn, wayOn } from "../faces/face.js";
import type { Spot } from "../faces/patch.js";
import type { HullProblem } from "../problem.js";
import { dot, minus, type Point, plus, straightM, times } from "../vector.js";
import type { Ray } from "./ellipse.js";

/** A point one can put a finger on. */
export interface ReferencePoint {
  readonly name: string;
  readonly at: Point;
  /** Where it lies on the face, if it does: only then can a tape lie on the surface all the way. */
  readonly spot?: Spot;
  /** Spread of where it is (one standard deviation) [m]. */
  readonly sigmaM: number;
}

/** The owner's tape and how it is used. */
export interface Tape {
  /** Spread of one reading (one standard deviation) [m]. */
  readonly sigmaM: number;
  /** Finest division it is read to [m]: 1/16 in or 1 mm. */
  readonly graduationM: number;
  readonly longestM: number;
  readonly lies: "on the surface" | "straight";
  /** Which side of the face is worked from; a straight tape cannot pass through a bulge. */
  readonly side: "inside" | "outside";
}

/** One tape from a reference to a hole. */
export interface Reading {
  readonly from: string;
  readonly lies: Tape["lies"];
  readonly exactM: number;
  /** How the reading answers to a move of the hole, in the hole's (along, up), and its whole spread. */
  readonly ray: Ray;
  /** Direction in which the tape leaves the reference, in the boat's frame. */
  readonly leaves: Point;
}

/** A bulge smaller than this lets a straight tape pass [m]. */
const passM = 5e-4;

/**
 * @throws RangeError if the tape's spread, graduation or length is not above zero.
 */
export function demandTape(tape: Tape): void {
  for (const [what, value] of Object.entries({
    spread: tape.sigmaM,
    graduation: tape.graduationM,
    length: tape.longestM,
  }))
    if (!(value > 0)) throw new RangeError(`${what} of the tape must be > 0 m, got ${value}`);
}

/** Spread of one reading: the tape's own, the graduation's even spread, the reference's. */
export function readingSigmaM(tape: Tape, referenceSigmaM: number): number {
  return Math.hypot(tape.sigmaM, tape.graduationM / Math.sqrt(12), referenceSigmaM);
}

/** The reading from a reference to a spot of the face, or why there is none. */
export function reading(
  face: Face,
  reference: ReferencePoint,
  spot: Spot,
  tape: Tape,
  hole: string,
  frame: Frame = frameAt(face, spot),
): Reading | HullProblem {
  const sigmaM = readingSigmaM(tape, reference.sigmaM);
  const about = { at: hole, with: [reference.name], unit: "m" } as const;
  // a reference off the face cannot be reached along it: that tape is pulled straight
  const onSurface = tape.lies === "on the surface" && reference.spot !== undefined;
  const chordM = straightM(reference.at, frame.point);
  if (!(chordM <= tape.longestM))
    return { ...about, problem: "unreachable by tape", figure: chordM, limit: tape.longestM };
  if (!(chordM > 1e-4)) return { ...about, problem: "unreachable by tape", figure: chordM, limit: 0 };
  if (onSurface && reference.spot) {
    const way = wayOn(face, reference.spot, spot);
    if (way.lengthM > tape.longestM)
      return { ...about, problem: "unreachable by tape", figure: way.lengthM, limit: tape.longestM };
    if (way.leavesFace) return { ...about, problem: "tape leaves the face" };
    return {
      from: reference.name,
      lies: "on the surface",
      exactM: way.lengthM,
      ray: { along: dot(way.endDirection, frame.along), up: dot(way.endDirection, frame.up), sigmaM },
      leaves: way.startDirection,
    };
  }
  const bulgeM = bulge(face, reference, spot, tape.side);
  if (bulgeM > passM) return { ...about, problem: "straight tape blocked", figure: bulgeM, limit: passM };
  const direction = times(minus(frame.point, reference.at), 1 / chordM);
  return {
    from: reference.name,
    lies: "straight",
    exactM: chordM,
    ray: { along: dot(direction, frame.along), up: dot(direction, frame.up), sigmaM },
    leaves: direction,
  };
}

/** How far the face stands up into a straight tape, between a reference on it and a spot [m]. */
function bulge(face: Face, reference: ReferencePoint, spot: Spot, side: Tape["side"]): number {
  if (face.kind === "flat" || reference.spot === undefined) return 0;
  const start = placeOn(face, reference.spot);
  const end = placeOn(face, spot);
  let most = 0;
  for (const share of [0.25, 0.5, 0.75]) {
    const middle: Spot = [
      reference.spot[0] + share * (spot[0] - reference.spot[0]),
      reference.spot[1] + share * (spot[1] - reference.spot[1]),
    ];
    const { point, normal } = frameAt(face, middle);
    // the inner side looks towards the centreline
    const inward = normal[1] * point[1] < 0 ? 1 : -1;
    const out = dot(minus(point, plus(start, times(minus(end, start), share))), normal) * inward;
    most = Math.max(most, side === "inside" ? out : -out);
  }
  return most;
}
