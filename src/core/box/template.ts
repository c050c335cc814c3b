import { drillSizes } from "../reference/boxes.js";
import type { Placed } from "./entry-rules.js";
import type { BoxBody, Face } from "./face.js";

/** A hole on a template; x and y from the lower left corner of the face's outside, y towards the lid [mm]. */
export interface TemplateHole {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly holeMm: number;
  readonly pilotMm: number;
  /** Nut or flange around it, to see what it will cover. */
  readonly acrossMm: number;
}

/** One face at true scale, seen from outside as it lies on the face when taped on. */
export interface FaceTemplate {
  readonly box: string;
  readonly face: Face["name"];
  readonly widthMm: number;
  readonly heightMm: number;
  /** Which edge of the outline the lid is at: always the upper one, the base the lower. */
  readonly lidEdge: "upper";
  readonly lidLipMm: number;
  readonly wallMm: number;
  readonly holes: readonly TemplateHole[];
  /** Check marks for the printer. */
  readonly barMm: number;
  readonly squareMm: number;
}

/**
 * Templates of every face that is drilled. The outline is the outside of the box: inside measure and a wall at each end;
 * towards the base a wall too, towards the lid the edge of the body.
 */
export function faceTemplates(
  name: string,
  box: BoxBody,
  faces: readonly Face[],
  placed: readonly Placed[],
): FaceTemplate[] {
  return faces.flatMap((face): FaceTemplate[] => {
    const entries = placed.filter((entry) => entry.on === face.name);
    if (entries.length === 0) return [];
    return [
      {
        box: name,
        face: face.name,
        widthMm: face.lengthMm + 2 * box.wallMm,
        heightMm: face.depthMm + box.wallMm,
        lidEdge: "upper",
        lidLipMm: face.lidLipMm,
        wallMm: box.wallMm,
        holes: entries
          .toSorted((a, b) => a.x - b.x || a.y - b.y)
          .map((entry) => ({
            id: entry.id,
            x: entry.x + box.wallMm,
            y: entry.y + box.wallMm,
            holeMm: entry.holeMm,
            pilotMm: Math.min(drillSizes.pilotMm, entry.holeMm),
            acrossMm: entry.acrossMm,
          })),
        barMm: 100,
        squareMm: 50,
      },
    ];
  });
}
