import { useMemo } from "react";
import type { Figures } from "../../../core/figures-types.js";
import type { Level } from "../../../core/findings/finding.js";
import { levels } from "../../../core/findings/finding.js";
import type { GearRole } from "../../../core/plan/model/gear.js";
import { type AtSpot, SpotFigures } from "../../../drawing/circuit-map/at-spot.js";
import { type CircuitMap, layOutCircuits, type MapShape } from "../../../drawing/circuit-map/lay-out.js";
import {
  type Traced,
  type TracedSpot,
  tracedSpots,
  traceSelected,
} from "../../../drawing/circuit-map/traced.js";
import { plantTrees } from "../../../drawing/one-line/tree.js";

export interface MapPicture {
  readonly map: CircuitMap;
  /** In the order of the spots. */
  readonly at: readonly AtSpot[];
  readonly roles: readonly GearRole[];
  readonly levels: readonly (Level | undefined)[];
  readonly traced: readonly TracedSpot[];
  readonly trace: Traced | undefined;
}

/** Everything the map shows, each part worked out again only when what it follows from has changed. */
export function useMapPicture(
  figures: Figures,
  cornerName: string,
  shape: MapShape,
  roomMm: number,
  selected: string | undefined,
): MapPicture {
  const { plan, corners, findings, paths } = figures;
  const map = useMemo(() => layOutCircuits(plantTrees(plan), shape, roomMm), [plan, shape, roomMm]);
  const standing = useMemo(() => {
    const corner = corners.find(({ name }) => name === cornerName) ?? corners[0];
    if (!corner) return undefined;
    const known = new SpotFigures(figures, corner);
    const ofBranch = new Map(corner.branches.map(({ id, of }) => [id, of]));
    return { known, ofBranch };
  }, [figures, corners, cornerName]);
  const gravest = useMemo(() => {
    const worst = new Map<string, Level>();
    for (const level of levels.toReversed())
      for (const finding of findings) if (finding.level === level) worst.set(finding.at, level);
    return worst;
  }, [findings]);
  const roles = useMemo(() => new Map(plan.gear.map(({ name, role }) => [name, role])), [plan]);
  const trace = useMemo(
    () =>
      selected === undefined || !standing
        ? undefined
        : traceSelected({ plan, paths }, selected, standing.ofBranch),
    [plan, paths, selected, standing],
  );
  return useMemo(() => {
    const nothing: AtSpot = { devices: [] };
    return {
      map,
      at: map.spots.map(({ node }) => standing?.known.at(node) ?? nothing),
      roles: map.spots.map(({ node }) => roles.get(node.name) ?? "other"),
      levels: map.spots.map(({ node }) => gravest.get(node.name)),
      traced:
        trace && standing
          ? tracedSpots(map.spots, ({ node }) => standing.known.branches(node), trace)
          : map.spots.map(() => ({ out: false, back: false })),
      trace,
    };
  }, [map, standing, roles, gravest, trace]);
}
