import { fixtureTolerance } from "../../reference/drilling.js";
import type { HullProblem } from "../problem.js";

/** What to cut for a fitting that was measured before cutting. */
export interface FixtureHole {
  readonly holeMm: number;
  /** Largest and smallest diameter measured; a body out of round takes the largest. */
  readonly measuredMm?: { readonly least: number; readonly most: number };
  readonly problems: readonly HullProblem[];
}

/**
 * The hole by the catalogue, corrected by what the caliper says: the clearance of the catalogue's hole over its own body stays.
 * @param catalogue Body and hole by the catalogue [mm]; `holeMm` alone where the body is not given.
 * @param measuredMm Diameters measured on the fitting, across several directions [mm].
 * @throws RangeError if a diameter is not above zero.
 */
export function fixtureHole(
  name: string,
  catalogue: { readonly holeMm: number; readonly bodyMm?: number },
  measuredMm: readonly number[],
): FixtureHole {
  for (const value of [catalogue.holeMm, catalogue.bodyMm ?? catalogue.holeMm, ...measuredMm])
    if (!(value > 0)) throw new RangeError(`diameters must be > 0 mm, got ${value}`);
  if (measuredMm.length === 0) return { holeMm: catalogue.holeMm, problems: [] };
  const [least, most] = [Math.min(...measuredMm), Math.max(...measuredMm)];
  const body = catalogue.bodyMm ?? catalogue.holeMm;
  const differs = Math.abs(most - body) > fixtureTolerance.mm || most > catalogue.holeMm;
  // without the body's size only a body that does not go in is a reason to cut otherwise
  const known = catalogue.bodyMm !== undefined;
  const clearance = known ? catalogue.holeMm - body : 0;
  const holeMm = differs && (known || most > catalogue.holeMm) ? most + clearance : catalogue.holeMm;
  const problems: HullProblem[] =
    differs && (known || most > catalogue.holeMm)
      ? [
          {
            problem: "fixture differs from catalogue",
            at: name,
            figure: most,
            limit: body,
            unit: "mm",
            right: holeMm,
          },
        ]
      : [];
  return { holeMm, measuredMm: { least, most }, problems };
}
