import { wallRules } from "../reference/boxes.js";
import {
  type EntryRoom,
  fromLidMm,
  fromWallMm,
  gapMm,
  minWebMm,
  type Placed,
  type Wall,
} from "./entry-rules.js";
import type { Face } from "./face.js";

/** What is wrong with a hole where it is; figure and limit in mm. */
export interface EntryFault {
  readonly fault:
    | "off-the-face"
    | "closed-face"
    | "near-corner"
    | "near-base"
    | "near-lid"
    | "on-boss"
    | "thin-web"
    | "nuts-touch"
    | "no-spanner-room"
    | "upward-face";
  readonly at: string;
  readonly with?: string;
  readonly figureMm?: number;
  readonly limitMm?: number;
  /** The wall cracks rather than yields there. */
  readonly crackRisk: boolean;
}

/** A tenth of a hundredth of a millimetre: what rounding of coordinates may eat. */
const hair = 1e-6;

/**
 * Checks entries where they are: the law every arrangement obeys, and what the owner's own holes are held against.
 * @param faces Drillable faces; an entry on any other is a fault.
 */
export function checkEntries(
  faces: readonly Face[],
  placed: readonly Placed[],
  wall: Wall,
  room: EntryRoom,
): EntryFault[] {
  const brittle = wallRules.rows.find((row) => row.material === wall.material)?.brittle ?? false;
  const faults: EntryFault[] = [];
  const tell = (
    fault: EntryFault["fault"],
    at: string,
    figureMm: number,
    limitMm: number,
    other?: string,
  ): void => {
    const cracks = fault === "thin-web" || fault === "near-corner" || fault === "near-base";
    faults.push({
      fault,
      at,
      figureMm,
      limitMm,
      crackRisk: brittle && cracks,
      ...(other === undefined ? {} : { with: other }),
    });
  };
  for (const entry of placed) {
    const face = faces.find((one) => one.name === entry.on);
    if (face === undefined) {
      faults.push({ fault: "closed-face", at: entry.id, crackRisk: false });
      continue;
    }
    if (face.attitude === "up") faults.push({ fault: "upward-face", at: entry.id, crackRisk: false });
    const { x, y, holeMm } = entry;
    const r = holeMm / 2;
    if (x - r < -hair || y - r < -hair || x + r > face.lengthMm + hair || y + r > face.depthMm + hair) {
      faults.push({ fault: "off-the-face", at: entry.id, crackRisk: false });
      continue;
    }
    const edge = fromWallMm(entry, wall);
    const nearest = Math.min(x, face.lengthMm - x);
    if (nearest < edge - hair) tell("near-corner", entry.id, nearest, edge);
    if (y < edge - hair) tell("near-base", entry.id, y, edge);
    const lid = face.depthMm - face.lidLipMm - y;
    if (lid < fromLidMm(entry) - hair) tell("near-lid", entry.id, lid, fromLidMm(entry));
    for (const boss of face.keepOuts) {
      const gap = gapMm(x, y, boss);
      if (gap < edge - hair) tell("on-boss", entry.id, gap, edge);
    }
  }
  placed.forEach((a, i) => {
    for (const b of placed.slice(i + 1)) {
      if (a.on !== b.on) continue;
      const apart = Math.hypot(a.x - b.x, a.y - b.y);
      const web = apart - (a.holeMm + b.holeMm) / 2;
      const minWeb = minWebMm(wall, Math.max(a.holeMm, b.holeMm));
      if (web < minWeb - hair) tell("thin-web", a.id, web, minWeb, b.id);
      const touch = (a.acrossMm + b.acrossMm) / 2;
      const turn = Math.max(a.acrossMm, b.acrossMm) + room.spannerRoomMm;
      if (apart < touch - hair) tell("nuts-touch", a.id, apart, touch, b.id);
      else if ((a.spanner || b.spanner) && apart < turn - hair)
        tell("no-spanner-room", a.id, apart, turn, b.id);
    }
  });
  return faults;
}
