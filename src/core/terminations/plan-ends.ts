import type { RunCable } from "../circuit/conductor/run-cable.js";
import type { CompleteGear, CompletePlan } from "../plan/completed.js";
import type { ConductorSize, JointKind, Surroundings } from "../plan/model/common.js";

/** One end of one conductor, and where it is. */
export interface PlacedEnd {
  /** `lamp trunk / helm / lamps / out / end`. */
  readonly id: string;
  readonly conductor: string;
  readonly run: string;
  readonly end: "start" | "end";
  readonly leg: "out" | "return";
  readonly circuits: readonly string[];
  readonly place: string;
  readonly kind: JointKind;
  readonly size: ConductorSize;
  readonly outsideMm: number;
  readonly colour?: string;
  readonly make: "stranded" | "solid";
  readonly surroundings: Surroundings;
  readonly studM?: number;
  readonly tabM?: number;
}

/** Every conductor end of the runs. */
export function placedEnds(plan: CompletePlan, cables: readonly RunCable[]): PlacedEnd[] {
  const places = new Places(plan);
  return cables.flatMap(({ run, conductors }) =>
    conductors.flatMap((conductor) =>
      (["start", "end"] as const).map((end): PlacedEnd => {
        const place = (end === "start" ? run.from : run.to).place;
        const { id, leg, circuits, size, outsideMm, colour } = conductor;
        return {
          id: `${id} / ${end}`,
          conductor: id,
          run: run.name,
          end,
          leg,
          circuits,
          place,
          kind: end === "start" ? run.jointAtStart : run.jointAtEnd,
          size,
          outsideMm,
          ...(colour === undefined ? {} : { colour }),
          make: run.conductor,
          ...places.at(place, run.group),
        };
      }),
    ),
  );
}

interface AtPlace {
  readonly surroundings: Surroundings;
  readonly studM?: number;
  readonly tabM?: number;
}

/** What is around the ends of runs, and what they are screwed or pushed on. */
class Places {
  private readonly around = new Map<string, AtPlace>();
  private readonly gear: ReadonlyMap<string, CompleteGear>;
  private readonly written: ReadonlyMap<string, Surroundings | undefined>;

  constructor(plan: CompletePlan) {
    const studded = [...plan.batteries, ...plan.panels, ...plan.boxes, ...plan.converters];
    for (const { name, surroundings, studM } of studded)
      this.around.set(name, studM === undefined ? { surroundings } : { surroundings, studM });
    // Nothing says where a charger hangs: as anywhere on an open boat, it may be splashed.
    for (const { name, studM } of plan.source.chargers)
      this.around.set(name, { surroundings: "splash", ...(studM === undefined ? {} : { studM }) });
    this.gear = new Map(plan.gear.map((piece) => [piece.name, piece]));
    this.written = new Map(plan.source.runs.map(({ name, surroundings }) => [name, surroundings]));
  }

  /** A pump stands in the bilge, but its joint is where its run says, if the run says so. */
  at(place: string, run: string): AtPlace {
    const piece = this.gear.get(place);
    if (piece === undefined) return this.around.get(place) ?? { surroundings: "splash" };
    const { studM, tabM } = piece;
    return {
      surroundings: this.written.get(run) ?? piece.surroundings,
      ...(studM === undefined ? {} : { studM }),
      ...(tabM === undefined ? {} : { tabM }),
    };
  }
}
