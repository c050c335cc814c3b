import type { CompletePlan } from "../plan/completed.js";
import type { Enclosure, PlanOpening, PlanWaypoint } from "../plan/model/layout.js";
import type { BoxBody, FaceName } from "./face.js";
import type { BoxLayout } from "./layout.js";
import { type Body, type Opening, type PassAnswer, passes } from "./opening.js";

/** Whether something goes through the opening it must. */
export interface Passing {
  readonly what: string;
  readonly through: string;
  /** `bare`: it goes only before its glands are fitted. */
  readonly state: "holds" | "bare" | "fails" | "unchecked";
  readonly body?: Body;
  readonly answer?: PassAnswer;
}

/** The finished box with its glands on, and without them where that is too large; undefined where it names no opening. */
export function boxPassing(
  { name, through }: Enclosure & { readonly name: string },
  body: BoxBody,
  layout: BoxLayout | undefined,
  waypoints: readonly PlanWaypoint[],
): Passing | undefined {
  if (through === undefined) return undefined;
  const opening = openingAt(through, waypoints);
  if (opening === undefined || layout === undefined) return { what: name, through, state: "unchecked" };
  const finished = outside(body, layout);
  const answer = passes(finished, opening);
  if (answer.passes) return { what: name, through, state: "holds", body: finished, answer };
  const bare = passes(outside(body), opening);
  return { what: name, through, state: bare.passes ? "bare" : "fails", body: finished, answer };
}

/** Batteries that must pass an opening to their place. */
export function batteryPassings({ batteries, source }: CompletePlan): Passing[] {
  return batteries.flatMap(({ name, sizeM, through }): Passing[] => {
    if (through === undefined) return [];
    const opening = openingAt(through, source.waypoints);
    if (opening === undefined || sizeM === undefined) return [{ what: name, through, state: "unchecked" }];
    const [lengthMm, widthMm, heightMm] = sizeM.map((each) => each * 1000);
    if (lengthMm === undefined || widthMm === undefined || heightMm === undefined) return [];
    const body = { lengthMm, widthMm, heightMm };
    const answer = passes(body, opening);
    return [{ what: name, through, state: answer.passes ? "holds" : "fails", body, answer }];
  });
}

function openingAt(name: string, waypoints: readonly PlanWaypoint[]): Opening | undefined {
  const opening = waypoints.find((point) => point.name === name)?.opening;
  return opening === undefined ? undefined : inMm(opening);
}

function inMm(opening: PlanOpening): Opening {
  switch (opening.shape) {
    case "circle":
      return { shape: "circle", diameterMm: opening.diameterM * 1000 };
    case "rectangle":
      return { shape: "rectangle", widthMm: opening.widthM * 1000, heightMm: opening.heightM * 1000 };
    case "obround":
      return { shape: "obround", lengthMm: opening.lengthM * 1000, widthMm: opening.widthM * 1000 };
    default:
      return opening satisfies never;
  }
}

/** Outside measures; glands stand out of the faces they are on. The lid is taken as thick as the wall. */
function outside({ widthMm, heightMm, depthMm, wallMm }: BoxBody, layout?: BoxLayout): Body {
  const out = (face: FaceName): number => {
    const here = (layout?.entries ?? []).filter(({ on }) => on === face).map(({ id }) => id);
    const glands = layout?.glands ?? [];
    const stands = glands.filter(({ cable }) => here.includes(cable)).map(({ fit }) => fit.standsOutMm);
    return Math.max(0, ...stands);
  };
  return {
    lengthMm: widthMm + 2 * wallMm + out("left") + out("right"),
    widthMm: heightMm + 2 * wallMm + Math.max(out("down"), out("near")) + Math.max(out("up"), out("far")),
    heightMm: depthMm + 2 * wallMm,
  };
}
