import { holeDistances, type Material } from "../../reference/drilling.js";

/** Least distances of a hole by its material [m]; undefined where no rule is known. */
export interface LeastDistances {
  /** From the hole's centre to the edge. */
  readonly edgeM: number;
  /** From centre to centre of two holes of these diameters. */
  readonly spacingM: (otherDiameterM: number) => number;
}

/**
 * Least distances for a hole of a diameter in a material. Between unlike holes the mean diameter counts.
 * @throws RangeError if the diameter is not above zero.
 */
export function leastDistances(material: Material, diameterM: number): LeastDistances | undefined {
  if (!(diameterM > 0)) throw new RangeError(`diameter must be > 0 m, got ${diameterM}`);
  if (!(material in holeDistances)) return undefined;
  const rule = holeDistances[material as keyof typeof holeDistances];
  return {
    edgeM: rule.edge * diameterM + (rule.edgeFrom === "rim" ? diameterM / 2 : 0),
    spacingM: (other) => (rule.spacing * (diameterM + other)) / 2,
  };
}
