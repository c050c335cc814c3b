import type { CornerFigures } from "../../core/circuit/results.js";
import type { Figures } from "../../core/figures-types.js";
import type { CompleteRun } from "../../core/plan/completed.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { runCutM } from "../../core/route/cut-length.js";
import type { DrawnWords } from "../../words/drawn/english.js";
import { amps, decimals, lengthWords, marked, volts } from "../../words/numbers.js";

/** The words of the diagram, looked up once. */
export interface DiagramLabels {
  readonly run: (run: CompleteRun) => { readonly currentA: string; readonly make: string };
  readonly gear: (name: string) => string;
  readonly battery: (name: string) => string;
  /** Rating of a device by its id, `5 A`; undefined where there is no such device. */
  readonly rating: (id: string) => string | undefined;
}

export function diagramLabels(figures: Figures, shows: Shows, { diagram: words }: DrawnWords): DiagramLabels {
  const corner = (name: string) => figures.corners.find((one) => one.name === name);
  const nominal = corner("nominal");
  const currents = new Map<string, number>();
  for (const { of, currentA } of nominal?.branches ?? [])
    currents.set(of, Math.max(currents.get(of) ?? 0, Math.abs(currentA)));
  for (const [of, currentA] of inTurn(figures, nominal))
    if ((currents.get(of) ?? 0) < 1e-9) currents.set(of, currentA);
  const sizes = new Map(
    figures.sizes.choices.map((choice) => [choice.id, choice.size.key.replaceAll(" ", "\u00a0")]),
  );
  const usual = new Map(nominal?.gear.map((gear) => [gear.id, gear]));
  const worst = new Map(corner("worst drop")?.gear.map((gear) => [gear.id, gear]));
  const batteries = new Map(nominal?.batteries.map((battery) => [battery.id, battery]));
  const ratings = new Map(
    figures.protection.map(({ id, spare, ratingA }) => [id, spare ? words.noFuse : marked(ratingA, "A")]),
  );
  const plans = new Map(figures.plan.batteries.map((battery) => [battery.name, battery]));
  return {
    run: (run) => {
      const size = sizes.get(run.group) ?? sizes.get(run.name) ?? run.size?.key ?? words.sizeOpen;
      const fuse = ratings.get(`${run.name} / fuse`);
      const parts = [
        size,
        words.cut(lengthWords(runCutM(run, shows), shows)),
        ...(fuse === undefined ? [] : [fuse]),
      ];
      return {
        currentA: currents.has(run.name) ? amps(currents.get(run.name)) : "",
        make: parts.join(" · "),
      };
    },
    gear: (name) => {
      const at = usual.get(name);
      const low = worst.get(name);
      if (at === undefined || !at.on)
        return low?.on === true ? words.worst(volts(low.voltageV)) : words.notOn;
      return `${amps(at.currentA)} · ${decimals(at.voltageV, 2)}${low?.on === true ? `, ${words.worst(decimals(low.voltageV, 2))}` : ""}\u00a0V`;
    },
    battery: (name) => {
      const plan = plans.get(name);
      const kind = plan === undefined ? "" : `${marked(plan.nominalV, "V")} ${marked(plan.capacityAh, "Ah")}`;
      const now = batteries.get(name);
      return now === undefined ? kind : `${kind} · ${volts(now.terminalV)}`;
    },
    rating: (id) => ratings.get(id),
  };
}

/** What a run carries while gear that waits for its turn has it, by run [A]. */
function inTurn({ paths }: Figures, nominal: CornerFigures | undefined): Map<string, number> {
  const runOf = new Map(nominal?.branches.map(({ id, of }) => [id, of]));
  const waiting = new Map(
    nominal?.gear.flatMap((gear) => (gear.inTurn ? [[gear.id, gear.currentA] as const] : [])),
  );
  const carried = new Map<string, number>();
  for (const { gear, out } of paths) {
    const currentA = waiting.get(gear);
    if (currentA === undefined) continue;
    for (const { branch } of out) {
      const of = runOf.get(branch) ?? "";
      carried.set(of, Math.max(carried.get(of) ?? 0, currentA));
    }
  }
  return carried;
}
