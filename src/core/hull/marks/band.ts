import type { Mark } from "./mark.js";

/**
 * How far the check reading of a mark may be from its figure when the mark was set out as one can: three standard deviations of the check
 * and of the place it is read at [m]. Undefined where there is no check.
 */
export function checkBandM({ check, covariance, possible }: Mark): number | undefined {
  const ray = possible.find(({ from }) => from === check?.from)?.ray;
  if (check === undefined || covariance === undefined || ray === undefined) return undefined;
  const { aa, au, uu } = covariance;
  const place = aa * ray.along ** 2 + 2 * au * ray.along * ray.up + uu * ray.up ** 2;
  return 3 * Math.sqrt(ray.sigmaM ** 2 + place);
}
