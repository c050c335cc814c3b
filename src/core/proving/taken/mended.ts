import type { CompletePlan } from "../../plan/completed.js";
import type { TakenReading } from "../../plan/model/work.js";
import { readMoment } from "../../quantity/moments.js";
import type { Bench } from "../bench-network.js";
import { conditionKey, type Metered, probeKey } from "../probe.js";
import { postsOf } from "../sheet/places.js";
import { StateGroup } from "../state-group.js";
import type { Placed } from "./adapt.js";

/** What was put right after a reading was taken, on the path of what was read. */
export interface MendedSince {
  readonly at: string;
  /** That very thing was read again after it. */
  readonly readAgain: boolean;
}

export interface IdleMend {
  readonly at: string;
  readonly why: "no such place" | "no day";
}

interface Moment {
  readonly fromMin: number;
  readonly toMin: number;
}

interface DatedMend {
  readonly at: string;
  readonly rows: ReadonlySet<number>;
  readonly gear: ReadonlySet<string>;
  /** Of a battery. */
  readonly posts: readonly string[];
  readonly moment: Moment;
}

/**
 * Readings older than a mend on their path, by their row. A mend is one on record, or a joint of a cable on record as made later. Where days
 * without a time leave open which came first, the reading stands.
 */
export function mendsSince(
  bench: Bench,
  plan: CompletePlan,
  taken: readonly TakenReading[],
  placed: readonly Placed[],
): Map<number, MendedSince> {
  const mends = datedMends(bench, plan);
  const since = new Map<number, MendedSince>();
  if (mends.length === 0) return since;
  const paths = new Map<string, Path>();
  const pathOf = (probe: Metered): Path => {
    const key = `${probeKey(probe)} in ${conditionKey(probe)}`;
    const path = paths.get(key) ?? new Path(bench, probe);
    paths.set(key, path);
    return path;
  };
  taken.forEach(({ when }, row) => {
    const own = placed[row];
    const moment = momentOf(when);
    if (!own || !("reading" in own) || !moment) return;
    const { probe } = own.reading;
    const mend = mends.findLast(
      (one) =>
        moment.toMin <= one.moment.fromMin &&
        (probe.kind === "marking"
          ? one.rows.has(bench.branchOf.get(probe.at) ?? -1)
          : pathOf(probe).holds(one)),
    );
    if (!mend) return;
    const readAgain = placed.some((other, at) => {
      const later = momentOf(taken[at]?.when);
      return (
        "reading" in other &&
        probeKey(other.reading.probe) === probeKey(probe) &&
        later !== undefined &&
        later.fromMin >= mend.moment.fromMin
      );
    });
    since.set(row, { at: mend.at, readAgain });
  });
  return since;
}

/** What a reading goes through. */
class Path {
  private readonly rows: ReadonlySet<number>;
  private readonly on: ReadonlySet<string>;
  /** Points it touches with the batteries joined; none where they are apart. */
  private readonly points: ReadonlySet<string>;

  constructor(bench: Bench, probe: Metered) {
    this.rows = new Set(new StateGroup(bench, [probe], [0], []).liveRows);
    this.on = new Set(probe.on);
    const { branches, nodes } = bench.topology;
    const ends = [...this.rows].flatMap((row) => [branches[row]?.from ?? 0, branches[row]?.to ?? 0]);
    const points = [
      ...ends.map((node) => nodes[node] ?? ""),
      ...("against" in probe ? [probe.at, probe.against] : []),
    ];
    this.points = new Set(probe.kind === "ohm" ? [] : points);
  }

  holds({ rows, gear, posts }: DatedMend): boolean {
    if ([...rows].some((row) => this.rows.has(row)) || [...gear].some((name) => this.on.has(name)))
      return true;
    return posts.some((post) => this.points.has(post));
  }
}

function datedMends(bench: Bench, plan: CompletePlan): DatedMend[] {
  const { mends, asBuilt } = plan.source.work;
  return [...mends, ...asBuilt.joints].flatMap(({ at, when }): DatedMend[] => {
    const moment = momentOf(when);
    if (moment === undefined) return [];
    const placed = placeOfMend(bench, plan, at);
    return placed === undefined ? [] : [{ at, moment, ...placed }];
  });
}

/** What a mend is of; undefined: nothing of the circuit is called so. */
function placeOfMend(
  bench: Bench,
  plan: CompletePlan,
  at: string,
): Pick<DatedMend, "rows" | "gear" | "posts"> | undefined {
  const { topology } = bench;
  const rows = new Set(
    topology.branches.flatMap(({ id, of }, row) =>
      id === at || of === at || id === `${at} / fuse` || id === `${at} / switch` || id === `${at} / main`
        ? [row]
        : [],
    ),
  );
  const gear = new Set(
    plan.gear.flatMap((piece) => (piece.name === at || piece.group === at ? [piece.name] : [])),
  );
  const posts = plan.batteries.some(({ name }) => name === at) ? postsOf(bench, at) : [];
  return rows.size + gear.size + posts.length === 0 ? undefined : { rows, gear, posts };
}

/** Is there anything in the circuit that a mend of this name could be of? */
export const isMendable = (bench: Bench, plan: CompletePlan, at: string): boolean =>
  placeOfMend(bench, plan, at) !== undefined;

/** Mends on record that take nothing back: of nothing in the circuit, or without a day. */
export function idleMends(bench: Bench, plan: CompletePlan): IdleMend[] {
  return plan.source.work.mends.flatMap(({ at, when }): IdleMend[] => {
    if (placeOfMend(bench, plan, at) === undefined) return [{ at, why: "no such place" }];
    return momentOf(when) === undefined ? [{ at, why: "no day" }] : [];
  });
}

/** A minute, or the whole of a day without a time: what stands in the same one may have come after. */
function momentOf(when: string | undefined): Moment | undefined {
  const read = when === undefined ? undefined : readMoment(when);
  if (read?.ok !== true) return undefined;
  const { atMin, hasTime } = read.value;
  return { fromMin: atMin, toMin: atMin + (hasTime ? 1 : 24 * 60) };
}
