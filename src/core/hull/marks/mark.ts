import { settingOut } from "../../reference/setting-out.js";
import { type Face, frameAt, isOn, movedOn } from "../faces/face.js";
import type { Spot } from "../faces/patch.js";
import type { HullProblem } from "../problem.js";
import { cross, lengthOf, minus, type Point, straightM, unit } from "../vector.js";
import { type AlongSquare, alongSquares, type EdgeReference } from "./along-square.js";
import { bestCheck, bestPair, type Check, type Pair, type Reason } from "./choose.js";
import { type Covariance, type Ellipse, ellipseOf, longAxisM } from "./ellipse.js";
import { landing, toGraduation } from "./graduation.js";
import { type Reading, type ReferencePoint, reading, readingSigmaM, type Tape } from "./tape.js";

/** A hole to be marked. */
export interface Hole {
  readonly name: string;
  readonly spot: Spot;
}

/** A tape reading as it is set out. */
export interface SetReading {
  readonly from: string;
  readonly lies: Reading["lies"];
  readonly exactM: number;
  /** As read on the owner's tape. */
  readonly roundedM: number;
}

/** Everything needed to set out one mark. */
export interface Mark {
  readonly name: string;
  readonly spot: Spot;
  readonly at: Point;
  readonly method: "two tapes" | "along then square" | "none";
  /** Two for two tapes; for along-then-square the length along the edge, then the length square to it. */
  readonly readings: readonly SetReading[];
  readonly edge?: string;
  readonly crossingDeg?: number;
  readonly check?: SetReading & { readonly findsM: number };
  readonly covariance?: Covariance;
  readonly ellipse?: Ellipse;
  /** What rounding to the graduation moves the mark by: along, up [m]. */
  readonly rounding?: readonly [alongM: number, upM: number];
  readonly reasons: readonly Reason[];
  readonly problems: readonly HullProblem[];
  /** All readings that could be taken, for checking afterwards. */
  readonly possible: readonly Reading[];
}

/** How the owner wants marks set out. */
export type Wanted = "best" | "two tapes" | "along then square";

/** A square off an edge must be this much better than two tapes to be preferred: it needs a second tool. */
const preferTapes = 0.5;

/** What is known of a face before its holes are looked at. */
export interface SetOutFrom {
  readonly references: readonly ReferencePoint[];
  readonly onEdges: readonly EdgeReference[];
  readonly tape: Tape;
  readonly wanted: Wanted;
}

/**
 * Chooses how to set out one hole, and says why, or why not.
 * @param known Readings already taken to this hole, so that they need not be worked out again.
 */
export function markFor(face: Face, hole: Hole, from: SetOutFrom, known: readonly Reading[] = []): Mark {
  const { references, tape, wanted } = from;
  const frame = frameAt(face, hole.spot);
  const tried = references.map(
    (reference) =>
      known.find((one) => one.from === reference.name) ??
      reading(face, reference, hole.spot, tape, hole.name, frame),
  );
  const possible = tried.filter((one): one is Reading => !("problem" in one));
  const failed = tried.filter((one): one is HullProblem => "problem" in one);
  const base = { name: hole.name, spot: hole.spot, at: frame.point, possible };
  if (!isOn(face, hole.spot)) return none(base, [{ problem: "off the face", at: hole.name }], []);
  const { pair, reasons } =
    wanted === "along then square" ? { pair: undefined, reasons: [] } : bestPair(possible);
  // no square can be surer than one reading; where that is not enough to be preferred it need not be looked at
  const worth = wanted !== "two tapes" && !(pair && preferTapes * pair.majorM <= readingSigmaM(tape, 0));
  const squares = worth ? alongSquares(face, from.onEdges, hole.spot, frame, tape) : [];
  const square = squares.toSorted((a, b) => longAxisM(a.covariance) - longAxisM(b.covariance))[0];
  if (square && (!pair || longAxisM(square.covariance) < preferTapes * pair.majorM))
    return squareMark(base, square, possible, tape, reasons);
  if (!pair) return none(base, whyNone(hole.name, possible, failed, reasons), reasons);
  const check = bestCheck(pair, possible);
  const problems: HullProblem[] = [];
  if (!check)
    problems.push({
      problem: "no check reading",
      at: hole.name,
      figure: possible.length,
      limit: 3,
      unit: "",
    });
  if (mirrorIsPossible(face, hole, pair, references))
    problems.push({
      problem: "references in a line",
      at: hole.name,
      with: references.map(({ name }) => name),
    });
  return tapeMark(base, pair, check, tape, reasons, problems);
}

type Base = Pick<Mark, "name" | "spot" | "at" | "possible">;

function tapeMark(
  base: Base,
  pair: Pair,
  check: Check | undefined,
  tape: Tape,
  reasons: readonly Reason[],
  problems: readonly HullProblem[],
): Mark {
  const readings = pair.readings.map((one) => set(one, one.exactM, tape));
  const [a, b] = [readings[0], readings[1]];
  const move = landing(
    [pair.readings[0].ray, pair.readings[1].ray],
    [a ? a.roundedM - a.exactM : 0, b ? b.roundedM - b.exactM : 0],
  ) ?? [0, 0];
  return {
    ...base,
    method: "two tapes",
    readings,
    crossingDeg: pair.crossingDeg,
    ...(check ? { check: { ...checkAfter(check, move, tape), findsM: check.findsM } } : {}),
    covariance: pair.covariance,
    ellipse: ellipseOf(pair.covariance),
    rounding: move,
    reasons,
    problems,
  };
}

function squareMark(
  base: Base,
  square: AlongSquare,
  possible: readonly Reading[],
  tape: Tape,
  reasons: readonly Reason[],
): Mark {
  const readings = [square.alongM, square.squareM].map((exactM) => ({
    from: square.from,
    lies: "on the surface" as const,
    exactM,
    roundedM: toGraduation(exactM, tape.graduationM),
  }));
  const [a, b] = readings;
  const changes = [a ? a.roundedM - a.exactM : 0, b ? b.roundedM - b.exactM : 0] as const;
  const [ahead, off] = square.moves;
  const check = possible.find((one) => one.from !== square.from);
  return {
    ...base,
    method: "along then square",
    readings,
    edge: square.edge,
    ...(check
      ? {
          check: {
            ...set(check, check.exactM, tape),
            findsM: 3 * Math.hypot(check.ray.sigmaM, longAxisM(square.covariance)),
          },
        }
      : {}),
    covariance: square.covariance,
    ellipse: ellipseOf(square.covariance),
    rounding: [changes[0] * ahead[0] + changes[1] * off[0], changes[0] * ahead[1] + changes[1] * off[1]],
    reasons,
    problems: check
      ? []
      : [{ problem: "no check reading", at: base.name, figure: possible.length, limit: 2, unit: "" }],
  };
}

/** The check is read at the mark as rounded readings set it, not at the ideal one. */
function checkAfter(check: Check, [alongM, upM]: readonly [number, number], tape: Tape): SetReading {
  const { ray, exactM } = check.reading;
  return set(check.reading, exactM + ray.along * alongM + ray.up * upM, tape);
}

function set(one: Reading, exactM: number, tape: Tape): SetReading {
  return { from: one.from, lies: one.lies, exactM, roundedM: toGraduation(exactM, tape.graduationM) };
}

function none(base: Base, problems: readonly HullProblem[], reasons: readonly Reason[]): Mark {
  return { ...base, method: "none", readings: [], reasons, problems };
}

function whyNone(
  name: string,
  possible: readonly Reading[],
  failed: readonly HullProblem[],
  reasons: readonly Reason[],
): HullProblem[] {
  if (possible.length < 2)
    return [
      { problem: "no reference point", at: name, figure: possible.length, limit: 2, unit: "" },
      ...failed,
    ];
  const flat = reasons.find((one) => one.reason === "refused: flat crossing");
  const figure = flat ? Math.min(flat.crossingDeg, 180 - flat.crossingDeg) : 0;
  return [
    {
      problem: "poor crossing",
      at: name,
      figure,
      limit: settingOut.crossing.minDeg,
      unit: "°",
      ...(flat ? { with: flat.with } : {}),
    },
    ...failed,
  ];
}

/** With all references in one line each set of readings has a mirror image; it matters when that lies on the face too. */
function mirrorIsPossible(
  face: Face,
  hole: Hole,
  pair: Pair,
  references: readonly ReferencePoint[],
): boolean {
  const usable = references.filter(({ name }) => pair.readings.some((one) => one.from === name));
  const [a, b] = usable;
  if (!a || !b || references.length < 3) return false;
  const line = minus(b.at, a.at);
  if (!(lengthOf(line) > 0)) return false;
  const off = (point: Point) => lengthOf(cross(minus(point, a.at), unit(line)));
  const span = Math.max(...references.map((one) => straightM(one.at, a.at)));
  if (references.some((one) => off(one.at) > 0.02 * span)) return false;
  const frame = frameAt(face, hole.spot);
  const [r, s] = [pair.readings[0].ray, pair.readings[1].ray];
  // out of the base line, across the half angle of the rays
  const [x, y] = [r.along + s.along, r.up + s.up];
  const size = Math.hypot(x, y);
  if (!(size > 1e-6)) return false;
  const across = off(frame.point);
  return isOn(face, movedOn(face, hole.spot, (-2 * across * x) / size, (-2 * across * y) / size));
}
