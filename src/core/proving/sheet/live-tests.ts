import type { CompleteGear, CompletePlan } from "../../plan/completed.js";
import { gearRoleFacts } from "../../reference/gear-roles.js";
import { readingLimits } from "../../reference/meters.js";
import type { Bench } from "../bench-network.js";
import type { ProvingInput } from "../input.js";
import { chargerRuns, farthest, guardsOf, polesOf, postsOf, statesOf, supplyPoles } from "./places.js";
import type { SheetSection, SheetTest } from "./types.js";

/** What is proven at each battery once it is connected, everything off. */
export function batterySections(bench: Bench, { plan, protection }: ProvingInput): SheetSection[] {
  return plan.batteries.map(({ name }): SheetSection => {
    const id = `battery / ${name}`;
    const [at, against] = postsOf(bench, name);
    const panels = panelsOf(plan, name);
    const tests: SheetTest[] = [
      {
        id: `${id} / resting voltage`,
        test: "resting voltage",
        at: name,
        probe: { kind: "voltage", at, against, on: [] },
        setting: at === "" ? "20 V" : settingFor(plan, name),
        stop: "battery not as charged",
      },
      ...protection
        .filter(({ id: device }) => device === `${name} / main`)
        .map(({ id: device, ratingA }) => ratingTest(id, device, ratingA)),
      ...chargerFuses(plan, protection, name).map(
        ({ id: device, ratingA }): SheetTest => ({
          id: `${id} / rating / ${device}`,
          test: "rating",
          at: device,
          ratingA,
          stop: "not that rating",
        }),
      ),
      ...panels.flatMap((panel): SheetTest[] => {
        const plus = `${panel} +`;
        const minus = `${panel} -`;
        if (!bench.nodeOf.has(plus) || !bench.nodeOf.has(minus)) return [];
        return [
          {
            id: `${id} / live point / ${panel}`,
            test: "live point",
            at: panel,
            probe: { kind: "voltage", at: plus, against: minus, on: [] },
            setting: settingFor(plan, name),
            stop: "wrong way round",
          },
        ];
      }),
    ];
    return { id, kind: "battery", at: name, gear: [], tests };
  });
}

/** What is proven way by way: fuse, switch, voltage without and with load, current, drop of each leg, pumps in water. */
export function waySections(bench: Bench, input: ProvingInput): SheetSection[] {
  const { plan } = input;
  const circuits = [...new Set(plan.gear.flatMap(({ name }) => plan.circuitOf.get(name) ?? []))];
  return circuits.flatMap((circuit): SheetSection[] => {
    const gear = plan.gear.filter(
      ({ name }) => plan.circuitOf.get(name) === circuit && bench.gearOf.has(name),
    );
    if (gear.length === 0) return [];
    const id = `way / ${circuit}`;
    const devices = new Map(
      gear.flatMap(({ name }) => guardsOf(input, name)).map((device) => [device.id, device]),
    );
    const fuse = [...devices.values()].map(({ id: device, ratingA }) => ratingTest(id, device, ratingA));
    const tests = [
      ...fuse,
      ...switchTests(bench, plan, circuit, gear, id),
      ...statesOf(gear, plan.oneAtATime).flatMap((on) => stateTests(bench, input, circuit, gear, on, id)),
      ...gear
        .filter(({ floatSwitch }) => floatSwitch)
        .map(
          ({ name }): SheetTest => ({
            id: `${id} / float switch / ${name}`,
            test: "float switch",
            at: name,
            stop: "does not start",
          }),
        ),
    ];
    return [{ id, kind: "way", at: circuit, gear: gear.map(({ name }) => name), tests }];
  });
}

/** Fuses of the leads between a battery and its chargers: the battery can burn these too. Read by eye, they are no part of the circuit solved. */
function chargerFuses(
  plan: CompletePlan,
  protection: ProvingInput["protection"],
  battery: string,
): ProvingInput["protection"] {
  const leads = new Set(
    plan.chargers
      .filter(({ charges }) => charges === battery)
      .flatMap(({ name }) => chargerRuns(plan, name).map((run) => run.name)),
  );
  return protection.filter(({ id, of }) => leads.has(of) && id === `${of} / fuse`);
}

function ratingTest(id: string, device: string, ratingA: number): SheetTest {
  return {
    id: `${id} / rating / ${device}`,
    test: "rating",
    at: device,
    probe: { kind: "marking", at: device, on: [] },
    ratingA,
    stop: "not that rating",
  };
}

/** The switch off: nothing arrives. On, with gear that has a switch of its own still off: the whole voltage arrives, the right way round. */
function switchTests(
  bench: Bench,
  plan: CompletePlan,
  circuit: string,
  gear: readonly CompleteGear[],
  id: string,
): SheetTest[] {
  const [first] = gear;
  if (!first) return [];
  const [at, against] = polesOf(bench, first.name);
  const probe = { kind: "voltage", at, against, on: [] } as const;
  const setting = settingFor(plan, plan.circuits.get(circuit)?.battery ?? "");
  const about = { at: first.name, probe, setting };
  const switched = bench.branchOf.has(`${circuit} / switch`);
  const quiet = gear.every(hasOwnSwitch);
  return [
    ...(switched
      ? [
          {
            ...about,
            id: `${id} / switched off`,
            test: "switched off",
            mostV: readingLimits.mostWhenOffV,
            stop: "still live",
          } as const,
        ]
      : []),
    ...(quiet
      ? [
          {
            ...about,
            id: `${id} / unloaded voltage`,
            test: "unloaded voltage",
            stop: "wrong way round",
          } as const,
        ]
      : []),
  ];
}

function hasOwnSwitch({ role, floatSwitch }: CompleteGear): boolean {
  return floatSwitch || gearRoleFacts.rows[role].ownSwitch;
}

function stateTests(
  bench: Bench,
  input: ProvingInput,
  circuit: string,
  gear: readonly CompleteGear[],
  on: readonly string[],
  id: string,
): SheetTest[] {
  const { plan, paths } = input;
  const { battery = "" } = plan.circuits.get(circuit) ?? {};
  const [postPlus, postMinus] = supplyPoles(bench, plan.circuits.get(circuit)?.supply ?? "");
  const setting = settingFor(plan, battery);
  const fuse = guardsOf(input, on[0] ?? "").at(-1);
  const meteredAt = bench.branchOf.has(fuse?.id ?? "") ? fuse?.id : `${on[0]} / lead / out`;
  const key = on.length === gear.length ? "" : ` / ${on.join(", ")}`;
  const current: SheetTest[] =
    meteredAt !== undefined && bench.branchOf.has(meteredAt)
      ? [
          {
            id: `${id} / current${key}`,
            test: "current",
            at: circuit,
            probe: { kind: "current", at: meteredAt, on },
            stop: "outside the band",
          },
        ]
      : [];
  const pieces = farthest(
    bench,
    gear.filter(({ name }) => on.includes(name)),
    paths,
  );
  const voltages = pieces.flatMap((piece): SheetTest[] => {
    const [plus, minus] = polesOf(bench, piece.name);
    const pump = gearRoleFacts.rows[piece.role].movesWater;
    const about = { at: piece.name, stop: "outside the band" } as const;
    return [
      {
        ...about,
        id: `${id} / loaded voltage / ${piece.name}${key}`,
        test: pump ? "pump running" : "loaded voltage",
        stop: pump ? "runs hot or dry" : "outside the band",
        probe: { kind: "voltage", at: plus, against: minus, on },
        setting,
      },
      {
        ...about,
        id: `${id} / drop out / ${piece.name}${key}`,
        test: "drop out",
        probe: { kind: "voltage", at: postPlus, against: plus, on },
      },
      {
        ...about,
        id: `${id} / drop back / ${piece.name}${key}`,
        test: "drop back",
        probe: { kind: "voltage", at: minus, against: postMinus, on },
      },
    ];
  });
  return [...current, ...voltages];
}

function panelsOf(plan: CompletePlan, battery: string): string[] {
  return plan.panels
    .map(({ name }) => name)
    .filter((name) => plan.circuits.get(plan.circuitOf.get(name) ?? "")?.supply === battery);
}

/** Range that holds a charging battery of this voltage. */
function settingFor(plan: CompletePlan, battery: string): string {
  const nominalV = plan.batteries.find(({ name }) => name === battery)?.nominalV ?? 12;
  return nominalV > 14 ? "200 V" : "20 V";
}
