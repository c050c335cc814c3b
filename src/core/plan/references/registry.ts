import { entryOf, type WrittenSection } from "../source/written.js";

export type PlaceKind = "battery" | "charger" | "converter" | "panel" | "box" | "gear" | "run" | "waypoint";

/** Sections whose names share one list, since findings and tables name things by them alone. */
const sections: readonly (readonly [string, PlaceKind])[] = [
  ["batteries", "battery"],
  ["chargers", "charger"],
  ["converters", "converter"],
  ["panels", "panel"],
  ["boxes", "box"],
  ["gear", "gear"],
  ["runs", "run"],
  ["waypoints", "waypoint"],
];

export interface Place {
  readonly kind: PlaceKind;
  readonly section: string;
  readonly keyStart: number;
  /** How many alike; 1 unless a count is written. */
  readonly count: number;
  /** For a panel: its ways. */
  readonly ways: ReadonlySet<string>;
}

/** All names of a plan, taken from the file itself, so that a thing with a mistake in it is still known by name. */
export class Registry {
  readonly places = new Map<string, Place>();
  /** Names written a second time, with the first use. */
  readonly repeats: {
    readonly name: string;
    readonly kind: PlaceKind;
    readonly section: string;
    readonly at: number;
    readonly first: Place;
  }[] = [];
  /** Way name → panels that have one. */
  readonly panelsByWay = new Map<string, string[]>();

  constructor(root: WrittenSection) {
    for (const [section, kind] of sections) {
      const node = entryOf(root, section)?.value;
      if (node?.kind !== "section") continue;
      for (const { key, keyStart, value } of node.entries) {
        const first = this.places.get(key);
        if (first !== undefined) {
          this.repeats.push({ name: key, kind, section, at: keyStart, first });
          continue;
        }
        const inner = value.kind === "section" ? value : undefined;
        const ways = kind === "panel" && inner !== undefined ? waysOf(inner) : none;
        const count = kind === "gear" && inner !== undefined ? countOf(inner) : 1;
        this.places.set(key, { kind, section, keyStart, count, ways });
        for (const way of ways) {
          const panels = this.panelsByWay.get(way);
          if (panels === undefined) this.panelsByWay.set(way, [key]);
          else panels.push(key);
        }
      }
    }
  }

  /** The place of that name; `lamp 2` is one of gear `lamp` with a count of 2 or more. Runs and waypoints are no places. */
  place(name: string): Place | undefined {
    const found = this.places.get(name) ?? this.pieceOf(name)?.place;
    return found?.kind === "run" || found?.kind === "waypoint" ? undefined : found;
  }

  /** Is there something of these kinds by that name? A name used twice counts as both. */
  is(name: string, ...kinds: PlaceKind[]): boolean {
    const place = this.places.get(name) ?? this.pieceOf(name)?.place;
    if (place !== undefined && kinds.includes(place.kind)) return true;
    return this.repeats.some((repeat) => repeat.name === name && kinds.includes(repeat.kind));
  }

  /** `lamp 2` → the gear `lamp`, where its count reaches so far. */
  pieceOf(name: string): { readonly group: string; readonly place: Place } | undefined {
    const match = /^(.+) ([1-9]\d*)$/.exec(name);
    const group = match?.[1] ?? "";
    const place = this.places.get(group);
    return place?.kind === "gear" && place.count > 1 && Number(match?.[2]) <= place.count
      ? { group, place }
      : undefined;
  }

  namesOf(kinds: readonly PlaceKind[]): string[] {
    return [...this.places].filter(([, place]) => kinds.includes(place.kind)).map(([name]) => name);
  }
}

const none: ReadonlySet<string> = new Set();

function waysOf(panel: WrittenSection): ReadonlySet<string> {
  const ways = entryOf(panel, "ways")?.value;
  return ways?.kind === "section" ? new Set(ways.entries.map((entry) => entry.key)) : none;
}

function countOf(gear: WrittenSection): number {
  const count = entryOf(gear, "count")?.value;
  return count?.kind === "scalar" && typeof count.value === "number" && count.value >= 1 ? count.value : 1;
}
