import type { CompleteRun } from "../../plan/completed.js";
import type { ConductorSize } from "../../plan/model/common.js";
import type { Chosen } from "../parts.js";
import { outGroup, returnGroup } from "../topology/build.js";
import { cableDiameterMm, conductorDiameterMm } from "./make.js";

/** One conductor of a run, by the circuit it carries and the leg it is. */
export interface RunConductor {
  /** `lamp trunk / helm / lamps / out`, as the circuit's branches are called. */
  readonly id: string;
  readonly leg: "out" | "return";
  readonly circuits: readonly string[];
  readonly size: ConductorSize;
  readonly outsideMm: number;
  readonly colour?: string;
}

/** What is pulled in one piece: a sheathed cable, or a single conductor. */
export interface CablePiece {
  /** The run's name; of a single conductor the name and its leg. */
  readonly id: string;
  readonly size: ConductorSize;
  readonly cores: number;
  readonly sheathed: boolean;
  readonly diameterMm: number;
  readonly flatMm?: number;
  /** Thickest conductor inside. */
  readonly conductorMm: number;
  /** Way from end to end, without slack. */
  readonly lengthM: number;
  readonly colours: readonly string[];
}

export interface RunCable {
  readonly run: CompleteRun;
  readonly conductors: readonly RunConductor[];
  readonly pieces: readonly CablePiece[];
}

/** Every run's conductors and what they come in; runs of which no size is known are left out. */
export function runCables(runs: readonly CompleteRun[], { sizes }: Pick<Chosen, "sizes">): RunCable[] {
  return runs.flatMap((run): RunCable[] => {
    const out = sizes.get(outGroup(run)) ?? run.size;
    const back = sizes.get(returnGroup(run)) ?? run.returnSize ?? out;
    if (out === undefined && back === undefined) return [];
    const conductors = conductorsOf(run, out ?? back, back ?? out);
    return [{ run, conductors, pieces: piecesOf(run, conductors) }];
  });
}

function conductorsOf(
  run: CompleteRun,
  out: ConductorSize | undefined,
  back: ConductorSize | undefined,
): RunConductor[] {
  const circuits = run.carries.length > 0 ? run.carries : [""];
  const named = (parts: readonly string[]) => parts.filter((part) => part !== "").join(" / ");
  const conductor = (
    leg: "out" | "return",
    carried: readonly string[],
    id: string,
    size: ConductorSize | undefined,
  ): RunConductor[] => {
    if (size === undefined) return [];
    const colour = leg === "out" ? run.colours?.out : run.colours?.return;
    const outsideMm = conductorDiameterMm(size);
    return [{ id, leg, circuits: carried, size, outsideMm, ...(colour === undefined ? {} : { colour }) }];
  };
  const outs =
    run.legs === "return"
      ? []
      : circuits.flatMap((one) => conductor("out", [one], named([run.name, one, "out"]), out));
  if (run.legs === "out" || run.return === "hull") return outs;
  if (run.return === "shared" || circuits.length === 1)
    return [...outs, ...conductor("return", circuits, named([run.name, "return"]), back)];
  return [
    ...outs,
    ...circuits.flatMap((one) => conductor("return", [one], named([run.name, one, "return"]), back)),
  ];
}

function piecesOf(run: CompleteRun, conductors: readonly RunConductor[]): CablePiece[] {
  if (!run.sheathed) return conductors.map((one) => singleOf(run, one));
  const out = conductors.filter(({ leg }) => leg === "out");
  const back = conductors.filter(({ leg }) => leg === "return");
  const alike = new Set(conductors.map(({ size }) => size.key)).size === 1;
  if (alike) return [sheathedOf(run, run.name, conductors)];
  return [sheathedOf(run, run.name, out), sheathedOf(run, `${run.name} / return`, back)];
}

function singleOf(run: CompleteRun, { id, leg, size, outsideMm, colour }: RunConductor): CablePiece {
  const diameterMm = run.outsideM === undefined ? outsideMm : run.outsideM * 1000;
  return {
    id,
    size,
    cores: 1,
    sheathed: false,
    diameterMm,
    conductorMm: diameterMm,
    lengthM: leg === "out" ? run.lengthM : run.returnLengthM,
    colours: colour === undefined ? [] : [colour],
  };
}

function sheathedOf(run: CompleteRun, id: string, conductors: readonly RunConductor[]): CablePiece {
  const [first] = conductors;
  if (first === undefined) throw new RangeError(`a cable needs a conductor, ${id} has none`);
  const { size, outsideMm } = first;
  const diameterMm =
    run.outsideM === undefined ? cableDiameterMm(size, conductors.length) : run.outsideM * 1000;
  return {
    id,
    size,
    cores: conductors.length,
    sheathed: true,
    diameterMm,
    ...(run.flatM === undefined ? {} : { flatMm: Math.min(run.flatM * 1000, diameterMm) }),
    conductorMm: Math.min(outsideMm, diameterMm),
    lengthM: Math.max(...conductors.map(({ leg }) => (leg === "out" ? run.lengthM : run.returnLengthM))),
    colours: [...new Set(conductors.flatMap(({ colour }) => colour ?? []))],
  };
}
