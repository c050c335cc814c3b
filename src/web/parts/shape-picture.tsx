import { cubicSpline, splineAt } from "../../core/hull/form/spline.js";
import { type StartingKind, startingForms } from "../../core/reference/starting-forms.js";

const [widthPx, beamPx, depthPx, gapPx] = [120, 34, 20, 8];

/** Points drawn from one station to the next. */
const between = 4;

/** A batten through the figures of all stations. */
function drawn(shares: readonly number[]): number[] {
  const batten = cubicSpline(
    shares.map((_, at) => at),
    shares,
  );
  const count = (shares.length - 1) * between + 1;
  return Array.from({ length: count }, (_, at) => splineAt(batten, at / between).value);
}

/** A shape one may start a survey from, in a few lines: profile over plan. For the eye only. */
export function ShapePicture({ of }: { of: StartingKind }) {
  const { lines } = startingForms.kinds[of];
  const [keel, sheer] = [lines[0].heights, lines[lines.length - 1]];
  const halves: readonly number[] = sheer && "halfBreadths" in sheer ? sheer.halfBreadths : [];
  const tops: readonly number[] = sheer?.heights ?? [];
  const top = Math.max(...tops);
  const middle = top * depthPx + gapPx + beamPx / 2;
  const line = (shares: readonly number[], y: (share: number) => number) =>
    drawn(shares).map((share, at, all) => `${(widthPx * at) / (all.length - 1)} ${y(share)}`);
  const up = (height: number) => (top - height) * depthPx;
  const bottom = line(keel, up);
  const edge = line(tops, up);
  const side = (sign: number) => line(halves, (half) => middle + (sign * half * beamPx) / 2);
  return (
    <svg
      className="shape-picture"
      viewBox={`-2 -2 ${widthPx + 4} ${middle + beamPx / 2 + 4}`}
      aria-hidden="true"
      focusable="false"
    >
      <path d={`M${[...bottom, ...[...edge].reverse()].join("L")}Z`} />
      <path d={`M${[...side(-1), ...side(1).reverse()].join("L")}Z`} />
      <path className="hair" d={`M0 ${middle}H${widthPx}`} />
    </svg>
  );
}
