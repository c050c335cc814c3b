import { type ArrangeAnswer, arrange } from "./arrange.js";
import { roomBehindMm } from "./bend.js";
import { checkEntries, type EntryFault } from "./check-entries.js";
import { type Content, type Floor, type PlacedContent, packContents } from "./contents.js";
import { type Entry, type EntryRoom, type Placed, usualRoom } from "./entry-rules.js";
import { type BoxBody, type Face, facesOf } from "./face.js";
import { type Cable, chooseGland, type GlandChoice, type GlandProblem, type GlandWish } from "./gland.js";

/** A cable into the box, with the thickest conductor inside its sheath, which has to bend behind the gland. */
export interface BoxCable extends Cable {
  readonly conductorMm: number;
  readonly face?: Face["name"];
}

export interface BoxRequest {
  readonly cables: readonly BoxCable[];
  /** Switches, plugs, vents, drains: entries that are no glands. */
  readonly otherEntries: readonly Entry[];
  readonly contents: readonly Content[];
  /** Glands more than needed, closed with a plug; of the commonest size. */
  readonly spareEntries: number;
  readonly glands: Omit<GlandWish, "wallMm">;
  readonly room?: EntryRoom;
  /** Places the owner has chosen, by `entryKey`; the other entries find theirs. */
  readonly places?: readonly EntryAt[];
  /** Holes that are there already, where they are: the owner's own box. Cables then take these, none is added. */
  readonly holes?: readonly OwnHole[];
}

/** A place on a face [mm], along it and up from the base. */
export interface EntryAt {
  readonly id: string;
  readonly on: Face["name"];
  readonly x: number;
  readonly y: number;
}

export interface OwnHole extends EntryAt {
  readonly holeMm: number;
}

/** An entry's name as a key of the plan, which may not hold the sign that parts a place from its port. */
export const entryKey = (id: string): string => id.replaceAll(" / ", ", ");

export type BoxProblem =
  | GlandProblem
  | {
      readonly problem: "entry-too-large" | "too-many-entries";
      readonly without: readonly string[];
      readonly room: number;
      readonly proof: "proven" | "not found";
    }
  | {
      readonly problem: "too-tall" | "no-room-for-contents";
      readonly content: string;
      readonly figureMm?: number;
      readonly limitMm?: number;
      readonly proof: "proven" | "not found";
    }
  | {
      readonly problem: "no-room-to-bend";
      readonly face: Face["name"];
      readonly figureMm: number;
      readonly limitMm: number;
    }
  | {
      readonly problem: "no-hole-for-cable";
      readonly cable: string;
      readonly holeMm: number;
      readonly holesMm: readonly number[];
    };

export interface BoxLayout {
  readonly glands: readonly GlandChoice[];
  readonly faces: readonly Face[];
  readonly entries: readonly Placed[];
  readonly contents: readonly PlacedContent[];
  /** The part of the base left for contents. */
  readonly floor: Floor;
  /** Faults of holes that were there already; a layout of our own has none but `upward-face`, where no other face had room. */
  readonly faults: readonly EntryFault[];
}

export type BoxAnswer =
  | { readonly ok: true; readonly layout: BoxLayout }
  | { readonly ok: false; readonly problems: readonly BoxProblem[] };

/** Lays out one box: glands, holes on the faces, contents on the base, room to bend behind each entry. */
export function layOutBox(box: BoxBody, request: BoxRequest): BoxAnswer {
  if (!(Number.isInteger(request.spareEntries) && request.spareEntries >= 0)) {
    throw new RangeError(`spare entries must be a whole number ≥ 0, got ${request.spareEntries}`);
  }
  const faces = facesOf(box);
  const room = request.room ?? usualRoom;
  const answers = request.cables.map((cable) =>
    chooseGland(cable, { ...request.glands, wallMm: box.wallMm }),
  );
  const glands = answers.flatMap((answer) => (answer.ok ? [answer.gland] : []));
  const unfit = answers.flatMap((answer) => (answer.ok ? [] : [answer.problem]));
  if (unfit.length > 0) return { ok: false, problems: unfit };
  if (request.holes !== undefined) return inOwnHoles(box, request, faces, glands, request.holes);

  const entries = [...glandEntries(request, glands), ...request.otherEntries];
  const places = new Map(request.places?.map((place) => [place.id, place]));
  const byHand = entries.flatMap((entry) => asPlaced(entry, places) ?? []);
  let first: BoxAnswer | undefined;
  // Contents may want the room that bends behind the best face take: then the entries move to other faces.
  for (const order of [faces, faces.filter((face) => face.attitude === "side"), faces.toReversed()]) {
    if (order.length === 0) continue;
    // the others lie as if none had been moved by hand: one that is moved moves no other
    const arranged: ArrangeAnswer =
      byHand.length === entries.length ? { ok: true, placed: byHand } : arrange(order, entries, box, room);
    if (arranged.ok) {
      const placed = arranged.placed.map((entry) => asPlaced(entry, places) ?? entry);
      const answer = withContents(
        box,
        request,
        faces,
        glands,
        placed,
        checkEntries(faces, placed, box, room),
      );
      if (answer.ok) return answer;
      first ??= answer;
    } else {
      first ??= { ok: false, problems: [arranged] };
    }
  }
  return (
    first ?? {
      ok: false,
      problems: [
        { problem: "too-many-entries", without: entries.map((one) => one.id), room: 0, proof: "proven" },
      ],
    }
  );
}

function asPlaced(entry: Entry, places: ReadonlyMap<string, EntryAt>): Placed | undefined {
  const at = places.get(entryKey(entry.id));
  return at && { ...entry, on: at.on, x: at.x, y: at.y };
}

function glandEntries(request: BoxRequest, glands: readonly GlandChoice[]): Entry[] {
  const entries = glands.map((gland, k): Entry => {
    const face = request.cables[k]?.face;
    return { ...asEntry(gland, gland.cable), ...(face === undefined ? {} : { face }) };
  });
  const commonest = glands.toSorted(
    (a, b) =>
      glands.filter((one) => one.fit.size === b.fit.size).length -
      glands.filter((one) => one.fit.size === a.fit.size).length,
  )[0];
  if (commonest === undefined) return entries;
  for (let k = 1; k <= request.spareEntries; k += 1) entries.push(asEntry(commonest, `spare ${k}`));
  return entries;
}

const asEntry = (gland: GlandChoice, id: string): Entry => ({
  id,
  holeMm: gland.fit.holeMm,
  acrossMm: gland.nutCornersMm,
  spanner: true,
});

/** Each cable takes the hole of its name, else the tightest free one, where its gland goes through; nothing is drilled. */
function inOwnHoles(
  box: BoxBody,
  request: BoxRequest,
  faces: readonly Face[],
  glands: readonly GlandChoice[],
  holes: readonly OwnHole[],
): BoxAnswer {
  const free = [...holes].sort((a, b) => a.holeMm - b.holeMm);
  const placed: Placed[] = [];
  const problems: BoxProblem[] = [];
  for (const gland of glands.toSorted((a, b) => b.fit.holeMm - a.fit.holeMm)) {
    // A hole much wider than its gland lets the nut sink in: up to a millimetre is the usual clearance.
    const takes = (hole: OwnHole) =>
      hole.holeMm >= gland.fit.threadOuterMm && hole.holeMm <= gland.fit.holeMm + 1;
    const named = free.findIndex((hole) => hole.id === entryKey(gland.cable) && takes(hole));
    const at = named >= 0 ? named : free.findIndex(takes);
    const [hole] = at < 0 ? [] : free.splice(at, 1);
    if (hole === undefined) {
      problems.push({
        problem: "no-hole-for-cable",
        cable: gland.cable,
        holeMm: gland.fit.holeMm,
        holesMm: free.map((one) => one.holeMm),
      });
    } else {
      placed.push({
        ...asEntry(gland, gland.cable),
        holeMm: hole.holeMm,
        on: hole.on,
        x: hole.x,
        y: hole.y,
        own: hole.id,
      });
    }
  }
  if (problems.length > 0) return { ok: false, problems };
  // What stays open is a hole all the same: it weakens the wall.
  const open = free.map((hole): Placed => ({ ...hole, acrossMm: hole.holeMm, spanner: false }));
  const faults = checkEntries(faces, [...placed, ...open], box, request.room ?? usualRoom);
  return withContents(box, request, faces, glands, placed, faults);
}

function withContents(
  box: BoxBody,
  request: BoxRequest,
  faces: readonly Face[],
  glands: readonly GlandChoice[],
  entries: readonly Placed[],
  faults: readonly EntryFault[],
): BoxAnswer {
  const behind = (name: Face["name"]): number => {
    const rooms = entries
      .filter((entry) => entry.on === name)
      .map((entry) => {
        const k = glands.findIndex((gland) => gland.cable === entry.id);
        const [gland, cable] = [glands[k], request.cables[k]];
        return gland === undefined || cable === undefined
          ? 0
          : roomBehindMm(gland.insideMm, cable.conductorMm);
      });
    return Math.max(0, ...rooms);
  };
  const boss = box.bossMm ?? 0;
  const floor: Floor = {
    x0: behind("left"),
    x1: box.widthMm - behind("right"),
    y0: Math.max(behind("down"), behind("near")),
    y1: box.heightMm - Math.max(behind("up"), behind("far")),
    depthMm: box.depthMm,
    keepOuts:
      boss === 0
        ? []
        : [0, box.widthMm - boss].flatMap((x) =>
            [0, box.heightMm - boss].map((y) => ({ x, y, widthMm: boss, heightMm: boss })),
          ),
  };
  for (const face of faces) {
    const figureMm = face.name === "left" || face.name === "right" ? box.widthMm : box.heightMm;
    const limitMm = behind(face.name);
    if (limitMm > figureMm)
      return { ok: false, problems: [{ problem: "no-room-to-bend", face: face.name, figureMm, limitMm }] };
  }
  const packed = packContents(floor, request.contents);
  if (!packed.ok) return { ok: false, problems: [packed] };
  return { ok: true, layout: { glands, faces, entries, contents: packed.placed, floor, faults } };
}
