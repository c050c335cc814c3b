import { type EdgeSide, type EdgeWay, edgeSide, edgeWay } from "../hull/faces/edge-names.js";
import type { Face } from "../hull/faces/face.js";
import type { HullFigures, Placed, SideFigures } from "../hull/figures.js";
import type { Mark } from "../hull/marks/mark.js";
import { spotOfPlace } from "../hull/plan-faces.js";
import { placedAt } from "../hull/plan-placing.js";
import { straightM } from "../hull/vector.js";
import type { Place } from "../plan/model/placing.js";
import type { BuiltHole } from "../plan/model/work.js";
import type { MarkedHole, OffBy, WorkFacts } from "./work-input.js";

/** What form, marks and holes tell the order of work. */
export function factsOfHull(hull: HullFigures): WorkFacts {
  const sides = hull.faces.flatMap((face) => face.sides.map((side) => ({ face: face.name, side })));
  const marks = new Map(
    sides.flatMap(({ side }) => side.marks.map(({ mark }) => [mark.name, mark] as const)),
  );
  const facesOf = new Map(
    sides.flatMap(({ side }) => side.marks.map(({ mark }) => [mark.name, side.face] as const)),
  );
  const places = new Map(
    sides.flatMap(({ side }) => side.placed.map((one) => [one.piece.name, placeOf(one)] as const)),
  );
  const holes = hull.holes.map((hole): [string, MarkedHole] => {
    const mark = marks.get(hole.name);
    const at = places.get(hole.name);
    const { behind } = hole;
    return [
      hole.name,
      {
        there: hole.there,
        face: hole.face,
        side: hole.side,
        ...(at === undefined ? {} : { at }),
        ...(hole.cut === undefined ? {} : { cutMm: hole.cut.holeMm }),
        ...(hole.tool === undefined
          ? {}
          : { tool: hole.tool.tool, pilotMm: hole.tool.pilotMm, mind: hole.tool.mind }),
        ...(hole.sealing === undefined ? {} : { cureHours: hole.sealing.cureHours }),
        ...(behind.words === undefined ? {} : { behind: behind.words }),
        ...(mark === undefined || mark.method === "none"
          ? {}
          : {
              mark: {
                what: "mark",
                of: hole.name,
                method: mark.method,
                graduationM: hull.plan.marks.graduationM,
                readings: mark.readings.map(({ from, roundedM }) => ({ from, m: Math.abs(roundedM) })),
                ...alongEdge(mark, facesOf.get(mark.name)),
                ...(mark.check === undefined
                  ? {}
                  : { check: { from: mark.check.from, m: mark.check.roundedM } }),
              },
            }),
      },
    ];
  });
  return {
    holes: new Map(holes),
    markOrder: sides.flatMap(({ side }) => side.marks.map(({ mark }) => mark.name)),
    pulls: hull.pulling.order.map(({ name, through }) => ({ run: name, through })),
    offBy: (built) => offBy(sides, built),
  };
}

/** The edge the first reading of a mark lies along, and which way. */
function alongEdge(
  { edge, readings }: Mark,
  face: Face | undefined,
): { readonly edge?: EdgeSide; readonly way?: EdgeWay } {
  if (edge === undefined || face === undefined) return {};
  const side = edgeSide(edge, face);
  const way = edgeWay(edge, readings[0]?.roundedM ?? 0, face);
  return { ...(side === undefined ? {} : { edge: side }), ...(way === undefined ? {} : { way }) };
}

/** The owner's way to say it: of one in a row so far along the row's edge from its aft or left end. */
function placeOf({ piece: { where }, alongM, offM }: Placed): Place {
  if (where.kind === "one") return where.place;
  const { edge } = where.row;
  return { alongM, offM, ...(edge === undefined ? {} : { edge }) };
}

/** How far the plan's place is from the one built, on the surface of its own face; undefined: one of them is not to be found there. */
function offBy(
  sides: readonly { readonly face: string; readonly side: SideFigures }[],
  built: BuiltHole,
): OffBy | undefined {
  const found = sides.find(({ face, side }) => face === built.on && side.side === built.side)?.side;
  const wanted = found?.placed.find(({ piece }) => piece.name === built.hole);
  if (found === undefined || wanted === undefined) return undefined;
  const from = (name: string) => found.references.find((one) => one.name === name)?.spot;
  const spot = spotOfPlace(found.face, built.at, from);
  if (spot === undefined) return undefined;
  const is = placedAt(found.face, wanted, wanted.edge, spot);
  return {
    byM: straightM(is.at, wanted.at),
    alongM: wanted.alongM - is.alongM,
    offM: wanted.offM - is.offM,
  };
}
