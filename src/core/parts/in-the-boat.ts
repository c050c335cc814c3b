import type { CompletePlan } from "../plan/completed.js";
import { datedEarlier } from "../plan/earlier.js";
import type { RoutesFigures } from "../route/plan-routes.js";
import type { TerminationsFigures } from "../terminations/plan-terminations.js";
import type { Need } from "./parts-list.js";
import type { NeedsInput } from "./plan-needs.js";
import type { WireKind } from "./wire-kinds.js";

/** What finished projects have built into the boat, by the record: it is not cut or bought again. */
export interface InTheBoat {
  readonly any: boolean;
  readonly runs: ReadonlySet<string>;
  /** Boxes and panels that were drilled. */
  readonly boxes: ReadonlySet<string>;
  /** Cables and conductors that have their entry, by box; spare entries too. */
  readonly entries: ReadonlySet<string>;
  /** What has its fuse or breaker: a way, a battery, a run. */
  readonly fused: ReadonlySet<string>;
}

const entryKey = (box: string, cable: string): string => JSON.stringify([box, cable]);

/** Of the project in hand nothing counts yet: its wire is cut from what is listed. */
export function inTheBoat({ source }: CompletePlan): InTheBoat {
  const { asBuilt, projects } = source.work;
  const earlier = datedEarlier(source.work);
  const entries = asBuilt.entries.filter(earlier);
  return {
    any: projects.length > 0,
    runs: new Set(asBuilt.lengths.filter(earlier).map(({ run }) => run)),
    boxes: new Set(entries.map(({ box }) => box)),
    entries: new Set(entries.map(({ box, run }) => entryKey(box, run))),
    fused: new Set(
      asBuilt.ratings.filter(earlier).map(({ device }) => device.replace(/ \/ (fuse|main)$/, "")),
    ),
  };
}

/** Wire that is still to be cut. */
export function kindsToCut(kinds: readonly WireKind[], { runs }: InTheBoat): WireKind[] {
  return kinds.flatMap((kind) => {
    const pieces = kind.pieces.filter(({ run }) => !runs.has(run));
    return pieces.length === 0 ? [] : [{ ...kind, pieces }];
  });
}

/** The figures with only what is still to be made in them. */
export function leftToMake(input: NeedsInput, boat: InTheBoat): NeedsInput {
  if (!boat.any) return input;
  return {
    ...input,
    terminations: endsLeft(input.terminations, boat),
    routes: routesLeft(input.routes, boat),
    boxes: input.boxes.map((one) =>
      one.layout === undefined
        ? one
        : {
            ...one,
            layout: {
              ...one.layout,
              glands: one.layout.glands.filter(({ cable }) => !boat.entries.has(entryKey(one.box, cable))),
              entries: one.layout.entries.filter(({ id }) => !boat.entries.has(entryKey(one.box, id))),
            },
          },
    ),
  };
}

function endsLeft({ ends, joints }: TerminationsFigures, { runs }: InTheBoat): TerminationsFigures {
  const left = ends.filter(({ at }) => !runs.has(at.run));
  const open = new Set(left.flatMap(({ joint }) => joint ?? []));
  return { ends: left, joints: joints.filter(({ id }) => open.has(id)) };
}

function routesLeft(routes: RoutesFigures, { runs }: InTheBoat): RoutesFigures {
  const isNew = (list: readonly string[]) => list.some((run) => !runs.has(run));
  const legs = routes.legs.filter((leg) => isNew(leg.runs));
  return {
    ...routes,
    legs,
    points: routes.points.filter((point) => isNew(point.runs)),
    supports: legs.reduce((sum, leg) => sum + (leg.supports?.atM.length ?? 0), 0),
  };
}

/** Needs without what is built in already. */
export function needsLeft(needs: readonly Need[], plan: CompletePlan, boat: InTheBoat): Need[] {
  if (!boat.any) return [...needs];
  const ends = plan.runs.flatMap((run) =>
    [run.from.place, run.to.place].map((place) => ({ place, run: run.name })),
  );
  const standing = (name: string): boolean => {
    const here = ends.filter(({ place }) => place === name);
    return here.length > 0 && here.every(({ run }) => boat.runs.has(run));
  };
  return needs.flatMap((need): Need[] => {
    const { kind, for: of } = need;
    const panel = of.split(" / ")[0] ?? of;
    switch (kind) {
      case "fuse":
      case "fuse holder":
        return boat.fused.has(of) ? [] : [need];
      case "switch":
        return boat.fused.has(of) || (of === panel && (boat.boxes.has(of) || boat.fused.has(of)))
          ? []
          : [need];
      case "box":
      case "bus":
        return boat.boxes.has(of) ? [] : [need];
      case "other":
        return boat.boxes.has(of) || passedBefore(plan, of, boat) ? [] : [need];
      case "gear": {
        const pieces = plan.gear.filter(({ group }) => group === of).map(({ name }) => name);
        const left = (pieces.length === 0 ? [of] : pieces).filter((name) => !standing(name)).length;
        return left === 0 ? [] : [{ ...need, count: Math.min(need.count, left) }];
      }
      default:
        return need.count === 0 ? [] : [need];
    }
  });
}

/** A grommet of a waypoint that a cable in the boat passes. */
function passedBefore({ runs, ways }: CompletePlan, waypoint: string, boat: InTheBoat): boolean {
  return runs.some(({ name }) => {
    const way = ways.get(name);
    return boat.runs.has(name) && way?.ok === true && way.route.points.includes(waypoint);
  });
}
