import { type Face, frameAt, movedOn, wayOn } from "../faces/face.js";
import type { Spot } from "../faces/patch.js";
import { dot, minus, plus, straightM, times } from "../vector.js";
import type { ReferencePoint, Tape } from "./tape.js";

/** A reading taken on the boat after marking. */
export interface Measured {
  readonly mark: string;
  /** A reference point, or another mark. */
  readonly from: string;
  readonly readM: number;
}

/** A mark to be checked: where it should be, and from which two points it was set out. */
export interface PlannedMark {
  readonly name: string;
  readonly spot: Spot;
  readonly setFrom?: readonly [string, string];
}

/** Marks, reference points and the tape on one face. */
export interface Network {
  readonly face: Face;
  readonly marks: readonly PlannedMark[];
  readonly references: readonly ReferencePoint[];
  readonly lies: Tape["lies"];
  readonly sigmaM: number;
}

/** How far each mark (along, up) and each reference point (along, up of the face; or x, y, z off it) is from its planned place [m]. */
export type Offsets = ReadonlyMap<string, readonly number[]>;

/** A tape between two things of the network: its length, and how it answers to moving each end. */
export interface Tie {
  readonly lengthM: number;
  readonly byMark: readonly number[];
  readonly byFrom: readonly number[];
}

/** Number of ways a thing can be off: two on the face, three off it. */
export function freedomsOf(network: Network, name: string): number {
  if (network.marks.some((mark) => mark.name === name)) return 2;
  const reference = network.references.find((one) => one.name === name);
  if (reference === undefined)
    throw new RangeError(`${name} is neither a mark nor a reference point of this face`);
  return reference.spot ? 2 : 3;
}

/**
 * The tape from a thing to a mark, with both at given offsets.
 * @throws RangeError if a name is unknown.
 */
export function tieOf(network: Network, markName: string, fromName: string, offsets: Offsets): Tie {
  const { face } = network;
  const mark = spotOf(network, markName, offsets);
  if (mark === undefined) throw new RangeError(`${markName} is not a mark on this face`);
  freedomsOf(network, fromName);
  const from = spotOf(network, fromName, offsets);
  const frame = frameAt(face, mark);
  if (from !== undefined && network.lies === "on the surface") {
    const way = wayOn(face, from, mark);
    const start = frameAt(face, from);
    return {
      lengthM: way.lengthM,
      byMark: [dot(way.endDirection, frame.along), dot(way.endDirection, frame.up)],
      byFrom: [-dot(way.startDirection, start.along), -dot(way.startDirection, start.up)],
    };
  }
  const reference = network.references.find((one) => one.name === fromName);
  const off = offsets.get(fromName) ?? [0, 0, 0];
  const start = from ? frameAt(face, from) : undefined;
  const at =
    start?.point ?? (reference ? plus(reference.at, [off[0] ?? 0, off[1] ?? 0, off[2] ?? 0]) : frame.point);
  const lengthM = straightM(at, frame.point);
  const direction = times(minus(frame.point, at), 1 / (lengthM || 1));
  return {
    lengthM,
    byMark: [dot(direction, frame.along), dot(direction, frame.up)],
    byFrom: start ? [-dot(direction, start.along), -dot(direction, start.up)] : times(direction, -1),
  };
}

function spotOf(network: Network, name: string, offsets: Offsets): Spot | undefined {
  const planned =
    network.marks.find((mark) => mark.name === name)?.spot ??
    network.references.find((one) => one.name === name)?.spot;
  const off = offsets.get(name);
  return planned && off ? movedOn(network.face, planned, off[0] ?? 0, off[1] ?? 0) : planned;
}
