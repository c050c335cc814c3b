import { lineAt } from "../../../../core/hull/form/line.js";
import type { Point } from "../../../../core/hull/vector.js";
import type { DrawnForm } from "./drawn-form.js";

/** The three ways the boat is looked at: from starboard, from above, and from aft looking forward. */
export const viewNames = ["profile", "plan", "section"] as const;
export type ViewName = (typeof viewNames)[number];

/** A place on the sheet: right and down [mm of the boat]. */
export type Spot2 = readonly [right: number, down: number];

type Axis = 0 | 1 | 2;

/** Which axis of the boat runs right and which up in a view [mm per m]. Bow to the right; port up in the plan; starboard to the right in the section. */
const axes: Readonly<
  Record<ViewName, { readonly right: readonly [Axis, number]; readonly up: readonly [Axis, number] }>
> = {
  profile: { right: [0, 1000], up: [2, 1000] },
  plan: { right: [0, 1000], up: [1, 1000] },
  section: { right: [1, -1000], up: [2, 1000] },
};

/** The axes of the boat that a view shows: 0 forward, 1 to port, 2 up. */
export function axesOf(view: ViewName): readonly [right: Axis, up: Axis] {
  return [axes[view].right[0], axes[view].up[0]];
}

/** A point of the boat in a view, from the view's own origin [mm]. */
export function project(view: ViewName, point: Point): Spot2 {
  const { right, up } = axes[view];
  return [point[right[0]] * right[1], -point[up[0]] * up[1]];
}

/** The point moved by so much on the sheet [mm]; what the view does not show stays. */
export function movedInView(view: ViewName, point: Point, [right, down]: Spot2): Point {
  const axis = axes[view];
  const moved: [number, number, number] = [...point];
  moved[axis.right[0]] += right / axis.right[1];
  moved[axis.up[0]] -= down / axis.up[1];
  return moved;
}

/** Where the views lie on the sheet, and how large it is [mm]. */
export interface Paper {
  readonly origins: Readonly<Record<ViewName, Spot2>>;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Between the views. */
  readonly gapMm: number;
  /** The section stands beside the profile, not below the plan. */
  readonly beside: boolean;
  readonly reach: Reach;
}

/** Extremes of the hull [m]: along, half the beam, lowest and highest. */
export interface Reach {
  readonly fromM: number;
  readonly toM: number;
  readonly halfM: number;
  readonly lowM: number;
  readonly highM: number;
}

function reachOf({ form }: DrawnForm): Reach {
  let [halfM, lowM, highM] = [0, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const line of form.lines)
    for (let i = 0; i <= 40; i++) {
      const [, y, z] = lineAt(line, line.fromM + ((line.toM - line.fromM) * i) / 40);
      halfM = Math.max(halfM, Math.abs(y));
      lowM = Math.min(lowM, z);
      highM = Math.max(highM, z);
    }
  return { fromM: form.fromM, toM: form.toM, halfM, lowM, highM };
}

/** Profile over plan; the section beside the profile where there is room for it, else below the plan. */
export function paperOf(drawn: DrawnForm, beside: boolean): Paper {
  const reach = reachOf(drawn);
  const { fromM, toM, halfM, lowM, highM } = reach;
  const lengthMm = (toM - fromM) * 1000;
  const [beamMm, depthMm] = [halfM * 2000, (highM - lowM) * 1000];
  // on a small sheet words take more of it: room for the stations under the profile, and for the title of the next view
  const margin = lengthMm * (beside ? 0.05 : 0.06);
  const gap = lengthMm * (beside ? 0.1 : 0.19);
  const left = margin - fromM * 1000;
  const profileDown = margin * (beside ? 1.4 : 1.9) + highM * 1000;
  const planDown = margin * (beside ? 1.4 : 1.9) + depthMm + gap + beamMm / 2;
  const planEnd = planDown + beamMm / 2;
  const origins = { profile: [left, profileDown], plan: [left, planDown] } as const;
  if (beside)
    return {
      origins: { ...origins, section: [margin + lengthMm + gap + beamMm / 2, profileDown] },
      widthMm: lengthMm + gap + beamMm + 2 * margin,
      heightMm: planEnd + margin,
      gapMm: gap,
      beside,
      reach,
    };
  return {
    origins: { ...origins, section: [margin + lengthMm / 2, planEnd + gap + highM * 1000] },
    widthMm: lengthMm + 2 * margin,
    heightMm: planEnd + gap + depthMm + margin,
    gapMm: gap,
    beside,
    reach,
  };
}

/** A point of the boat on the sheet [mm]. */
export function onPaper(paper: Paper, view: ViewName, point: Point): Spot2 {
  const [right, down] = project(view, point);
  const origin = paper.origins[view];
  return [origin[0] + right, origin[1] + down];
}

/** Middle and half size of a view's part of the sheet [mm]. */
export function boxOf(
  { origins, reach }: Paper,
  view: ViewName,
): { readonly middle: Spot2; readonly half: Spot2 } {
  const [x, y] = origins[view];
  const upMm = ((reach.highM + reach.lowM) / 2) * 1000;
  const alongMm = ((reach.toM + reach.fromM) / 2) * 1000;
  const [long, wide, tall] = [
    (reach.toM - reach.fromM) * 500,
    reach.halfM * 1000,
    (reach.highM - reach.lowM) * 500,
  ];
  if (view === "profile") return { middle: [x + alongMm, y - upMm], half: [long, tall] };
  if (view === "plan") return { middle: [x + alongMm, y], half: [long, wide] };
  return { middle: [x, y - upMm], half: [wide, tall] };
}

/** The view whose part of the sheet a spot lies in, or is nearest to. */
export function viewAt(paper: Paper, [right, down]: Spot2): ViewName {
  let best: ViewName = "plan";
  let least = Number.POSITIVE_INFINITY;
  for (const view of viewNames) {
    const { middle, half } = boxOf(paper, view);
    const off = Math.max(Math.abs(right - middle[0]) - half[0], Math.abs(down - middle[1]) - half[1], 0);
    if (off < least) [best, least] = [view, off];
  }
  return best;
}
