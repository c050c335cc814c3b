import type { CompleteMarks } from "../plan/completed.js";
import type { MarkReading } from "../plan/model/hull.js";
import { settingOut } from "../reference/setting-out.js";
import type { Face } from "./faces/face.js";
import type { Placed, SideMark } from "./figures.js";
import { edgeReferences } from "./marks/along-square.js";
import { type Mark, markFor, type SetOutFrom, type SetReading } from "./marks/mark.js";
import type { Measured } from "./marks/network.js";
import { markSheet } from "./marks/sheet.js";
import { type ReferencePoint, readingSigmaM, type Tape } from "./marks/tape.js";
import { type TwinMark, twinMarks } from "./marks/twins.js";
import { type Checked, checkMarks } from "./marks/verdict.js";
import type { HullProblem } from "./problem.js";
import { straightM } from "./vector.js";

/** The owner's tape, as the figures of the marks want it. */
export function tapeOf({ spreadM, graduationM, longestM, lies, side }: CompleteMarks): Tape {
  return { sigmaM: spreadM, graduationM, longestM, lies, side };
}

/** Marks of what stands on one side of a face, surest first. */
export function marksOf(
  face: Face,
  placed: readonly Placed[],
  references: readonly ReferencePoint[],
  marks: CompleteMarks,
): SideMark[] {
  const holes = placed.filter(({ toMark }) => toMark).map(({ piece, spot }) => ({ name: piece.name, spot }));
  return markSheet(face, holes, references, tapeOf(marks), marks.method).marks.map((mark) => ({ mark }));
}

/**
 * Marks of the second side: those with a twin take the first side's numbers wherever the boat's measured asymmetry allows, or
 * numbers of their own; the others are worked out there.
 */
export function twinSideMarks(
  twin: Face,
  placed: readonly Placed[],
  first: { readonly marks: readonly SideMark[]; readonly references: readonly ReferencePoint[] },
  references: readonly ReferencePoint[],
  marks: CompleteMarks,
): SideMark[] {
  const here = new Map(placed.flatMap((one) => (one.piece.twin ? [[one.piece.twin, one] as const] : [])));
  const shared = first.marks.map(({ mark }) => mark).filter(({ name }) => here.has(name));
  const compared = isMirrored(first.references, references)
    ? shared.map(sameNumbers)
    : twinMarks(shared, twin, references, tapeOf(marks), marks.toleranceM);
  const names = new Map([...here].map(([of, { piece }]) => [of, piece.name]));
  const from: SetOutFrom = {
    references,
    onEdges: edgeReferences(twin, references),
    tape: tapeOf(marks),
    wanted: marks.method,
  };
  const known = new Set([...references.map(({ name }) => name), ...names.values()]);
  const twins = shared.flatMap((mark, index): SideMark[] => {
    const [one, twinMark] = [here.get(mark.name), compared[index]];
    if (one === undefined || twinMark === undefined) return [];
    const own = mirroredMark(mark, one, twinMark, names);
    // numbers that cannot be taken there, or from a mark that has no twin: set out from its own side alone
    const usable = own?.readings.every((reading) => known.has(reading.from)) ? own : undefined;
    return [
      {
        mark: usable ?? markFor(twin, { name: one.piece.name, spot: one.spot }, from),
        twin: { ...twinMark, shared: twinMark.shared && usable !== undefined, of: mark.name },
      },
    ];
  });
  const rest = placed.filter(({ piece }) => !twins.some(({ mark }) => mark.name === piece.name));
  return [...twins, ...marksOf(twin, rest, references, marks)];
}

function isMirrored(first: readonly ReferencePoint[], second: readonly ReferencePoint[]): boolean {
  return (
    first.length === second.length &&
    first.every(({ name, at }) => {
      const there = second.find((other) => other.name === name);
      return there !== undefined && straightM([at[0], -at[1], at[2]], there.at) < 1e-6;
    })
  );
}

function sameNumbers({ name, method, readings: set, check }: Mark): TwinMark {
  return {
    name,
    shared: method !== "none",
    shiftM: 0,
    limitM: Number.POSITIVE_INFINITY,
    ownM: method === "two tapes" ? set.map(({ roundedM }) => roundedM) : [],
    ...(check ? { ownCheckM: check.roundedM } : {}),
  };
}

/** The first side's mark as it is set out on the second; undefined where a reading cannot be taken there. */
function mirroredMark(
  mark: Mark,
  one: Placed,
  twin: TwinMark,
  names: ReadonlyMap<string, string>,
): Mark | undefined {
  if (!twin.shared && twin.ownM.length === 0 && mark.method !== "none") return undefined;
  const renamed = (reading: SetReading, ownM: number | undefined): SetReading => ({
    ...reading,
    from: names.get(reading.from) ?? reading.from,
    ...(twin.shared || ownM === undefined ? {} : { exactM: ownM, roundedM: ownM }),
  });
  const { check, problems, ...rest } = mark;
  return {
    ...rest,
    name: one.piece.name,
    at: one.at,
    readings: mark.readings.map((reading, index) => renamed(reading, twin.ownM[index])),
    ...(check ? { check: { ...renamed(check, twin.ownCheckM), findsM: check.findsM } } : {}),
    problems: problems.map((problem) => ({ ...problem, at: one.piece.name })),
  };
}

/**
 * What the readings say of the marks of one side; undefined where none was taken.
 * @param mirrored It is the second side of a pair, whose reference points are known as mirror images.
 */
export function checkedOf(
  face: Face,
  marks: readonly SideMark[],
  references: readonly ReferencePoint[],
  readings: readonly MarkReading[],
  wanted: CompleteMarks,
  mirrored: boolean,
): { checked?: Checked; problems: HullProblem[] } {
  const own = new Set(marks.map(({ mark }) => mark.name));
  const known = new Set([...own, ...references.map(({ name }) => name)]);
  const here = readings.filter(({ mark }) => own.has(mark));
  const problems = here
    .filter(({ from, mark }) => !known.has(from) || from === mark)
    .map(
      ({ from, mark, readM }): HullProblem => ({
        problem: "reading off the face",
        at: mark,
        with: [from],
        figure: readM,
        unit: "m",
      }),
    );
  const usable: Measured[] = here.filter(
    ({ from, mark, readM }) => known.has(from) && from !== mark && readM > 0,
  );
  if (usable.length === 0) return { problems };
  const checked = checkMarks(
    {
      face,
      marks: marks.map(({ mark }) => {
        const [a, b] = mark.readings;
        return {
          name: mark.name,
          spot: mark.spot,
          ...(mark.method === "two tapes" && a && b ? { setFrom: [a.from, b.from] as const } : {}),
        };
      }),
      references,
      lies: wanted.lies,
      sigmaM: readingSigmaM(tapeOf(wanted), 0),
    },
    usable,
    wanted.toleranceM,
    // the plan was measured on the first side; on the other a point stands where the mirror image is, as far as the boat is symmetrical
    (name) => {
      const own = references.find((one) => one.name === name)?.sigmaM ?? 0;
      return mirrored ? Math.hypot(own, settingOut.hand.symmetrySigmaM) : own;
    },
  );
  return { checked, problems };
}
