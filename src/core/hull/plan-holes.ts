import type { FacePlan } from "../plan/model/hull.js";
import type { Side } from "../plan/model/placing.js";
import { cutting, type Material } from "../reference/drilling.js";
import { sealantBed } from "../reference/sealants.js";
import type { Face } from "./faces/face.js";
import type { HoleFigures, Placed, SealingFigures } from "./figures.js";
import { fixtureHole } from "./holes/fixture.js";
import { bondProblem, cureHours, ringMl } from "./holes/sealing.js";
import { backingProblem, toolFor } from "./holes/tool.js";
import { type Clearance, clearances, type Fitting, type Zone } from "./placing/clearances.js";
import { spaceName } from "./plan-faces.js";
import type { HullProblem } from "./problem.js";
import { type Opening, type Reach, reaches } from "./pulling/reach.js";
import { straightM } from "./vector.js";

/** One side of a face as its holes see it. */
export interface HoleGround {
  readonly plan: FacePlan;
  readonly side: Side;
  readonly face: Face;
  readonly material?: Material;
  readonly zones: readonly Zone[];
  readonly openings: readonly Opening[];
}

/** How near everything is to everything. A thing without a known hole counts by its flange; one with neither can't be judged. */
export function clearancesOn(ground: HoleGround, placed: readonly Placed[]): Clearance[] {
  const { face, material, zones, plan } = ground;
  if (material === undefined) return [];
  const fittings = placed.flatMap(({ piece, spot, hole }): Fitting[] => {
    const { flangeM, behindM } = hole;
    const holeM = cutOf(piece.name, hole)?.holeMm ?? (flangeM === undefined ? undefined : flangeM * 1000);
    if (holeM === undefined) return [];
    return [
      {
        name: piece.name,
        spot,
        holeM: holeM / 1000,
        ...(flangeM === undefined ? {} : { flangeM }),
        ...(behindM === undefined ? {} : { behindM }),
        ...(plan.roomM === undefined ? {} : { roomM: plan.roomM }),
      },
    ];
  });
  return clearances(face, material, fittings, zones);
}

function cutOf(name: string, hole: Placed["hole"]) {
  const { sizeM, bodyM, measuredM } = hole;
  if (sizeM === undefined) return undefined;
  const catalogue = {
    holeMm: sizeM * 1000,
    ...(bodyM === undefined ? {} : { bodyMm: bodyM * 1000 }),
  };
  return fixtureHole(
    name,
    catalogue,
    measuredM.map((one) => one * 1000),
  );
}

/** Everything about one hole but how it floats. */
export function holeOf(ground: HoleGround, placed: Placed, clearance: Clearance | undefined): HoleFigures {
  const { plan, side, material, openings } = ground;
  const { piece, hole, group, at, toMark } = placed;
  const { name } = piece;
  const sheetMm = plan.thicknessM === undefined ? undefined : plan.thicknessM * 1000;
  const cut = cutOf(name, hole);
  const tool =
    material !== undefined && sheetMm !== undefined && cut !== undefined
      ? toolFor(material, sheetMm, cut.holeMm)
      : undefined;
  // where there is no face there is no back to reach
  const offFace = clearance?.problems.some(({ problem }) => problem === "off the face") === true;
  const reach = offFace ? undefined : reachOf(ground, placed, openings);
  const sealing = sealingOf(placed, cut?.holeMm);
  const zone = clearance?.nearestZone;
  return {
    name,
    group,
    face: plan.name,
    side,
    at,
    plan: hole,
    there: !toMark,
    ...(material === undefined ? {} : { material }),
    ...(plan.thicknessM === undefined ? {} : { thicknessM: plan.thicknessM }),
    ...(cut === undefined ? {} : { cut }),
    ...(tool === undefined ? {} : { tool: hole.tool === undefined ? tool : { ...tool, tool: hole.tool } }),
    ...(sealing === undefined ? {} : { sealing }),
    behind: {
      ...(plan.roomM === undefined ? {} : { roomM: plan.roomM }),
      ...(plan.behind === undefined ? {} : { words: plan.behind }),
      ...(zone === undefined ? {} : { zone }),
    },
    ...(clearance === undefined ? {} : { clearance }),
    ...(reach === undefined ? {} : { reach }),
    problems: [
      ...(toMark ? (cut?.problems ?? []) : []),
      // a hole that is there is a neighbour to the others, and no longer a question itself: unless it is where there is no face
      ...(clearance?.problems ?? []).filter(({ problem }) => toMark || problem === "off the face"),
      ...(toMark && material !== undefined ? materialProblems(placed, material, sheetMm) : []),
      ...(reach?.problems ?? []),
    ],
  };
}

/** What sheet and material ask of a hole that is still to be cut. */
function materialProblems({ piece, hole }: Placed, material: Material, sheetMm?: number): HullProblem[] {
  const problems: HullProblem[] = [];
  const { name } = piece;
  if (hole.water === "sealed" && hole.seal !== "gasket") problems.push(...bondProblem(name, material));
  if (sheetMm === undefined || hole.sizeM === undefined) return problems;
  const { maxSheetMm } = cutting.stepDrill;
  if (hole.tool === "step drill" && !(sheetMm <= maxSheetMm))
    problems.push({
      problem: "sheet too thick for a step drill",
      at: name,
      figure: sheetMm,
      limit: maxSheetMm,
      unit: "mm",
    });
  if (hole.backed !== true) problems.push(...backingProblem(name, material, sheetMm));
  return problems;
}

/** Reaching matters where the back is closed: where a face has openings. */
function reachOf(
  { plan, side }: HoleGround,
  { piece, at, toMark }: Placed,
  openings: readonly Opening[],
): Reach | undefined {
  if (openings.length === 0 || !toMark) return undefined;
  const nearest = openings.toSorted((a, b) => straightM(a.at, at) - straightM(b.at, at))[0];
  const space = nearest?.space ?? spaceName(plan, side);
  const [reach] = reaches(openings, [
    { name: piece.name, at, space, ...(plan.roomM === undefined ? {} : { roomM: plan.roomM }) },
  ]);
  return reach;
}

/** Sealant in the bed under its flange, and how long it cures from the rim in. */
function sealingOf({ hole }: Placed, holeMm: number | undefined): SealingFigures | undefined {
  const flangeMm = (hole.flangeM ?? 0) * 1000;
  if (hole.water !== "sealed" || hole.seal === "gasket" || holeMm === undefined || !(flangeMm > holeMm))
    return undefined;
  return { ml: ringMl(flangeMm, holeMm, sealantBed.depthMm), cureHours: cureHours((flangeMm - holeMm) / 4) };
}
