import type { RunCable } from "../circuit/conductor/run-cable.js";
import type { CompletePlan } from "../plan/completed.js";
import type { Surroundings } from "../plan/model/common.js";
import type { BoxForm, BoxHole, Enclosure, EntryPlace, WaterCode } from "../plan/model/layout.js";
import type { Money } from "../quantity/money.js";
import { usualBox } from "../reference/assumed.js";
import { usualFitting } from "../reference/boxes.js";
import { type BoxChoice, type CatalogueBox, chooseBox } from "./choose-box.js";
import type { Content } from "./contents.js";
import { type DrillStep, drillOrder } from "./drill-order.js";
import type { Entry } from "./entry-rules.js";
import type { BoxBody } from "./face.js";
import {
  type BoxCable,
  type BoxLayout,
  type BoxProblem,
  type BoxRequest,
  type EntryAt,
  layOutBox,
  type OwnHole,
} from "./layout.js";
import { boxPassing, type Passing } from "./plan-passing.js";
import { type FaceTemplate, faceTemplates } from "./template.js";

/** One box, or the casing of a panel, with everything worked out for it. */
export interface BoxFigures {
  readonly box: string;
  readonly kind: "box" | "panel";
  readonly surroundings: Surroundings;
  /** `own`: its inside is given. `drilled`: its holes too. `catalogue`: chosen from what the owner would buy. `none`: not told. */
  readonly from: "own" | "drilled" | "catalogue" | "none";
  /** As it is, or as chosen; undefined where none is told or none takes it all. */
  readonly body?: BoxBody;
  readonly bought?: { readonly name: string; readonly price?: Money };
  readonly water?: WaterCode;
  /** Measures that decide where a hole may be and that the plan does not tell. */
  readonly unmeasured: readonly ("inside" | "boss" | "lid lip")[];
  readonly cables: readonly BoxCable[];
  readonly spareEntries: number;
  /** Does the plan say where some of its entries shall lie? */
  readonly byHand: boolean;
  readonly layout?: BoxLayout;
  /** Why it does not do; of a catalogue, why its largest does not. */
  readonly problems: readonly BoxProblem[];
  readonly choice?: BoxChoice;
  readonly templates: readonly FaceTemplate[];
  readonly drilling: readonly DrillStep[];
  readonly passing?: Passing;
}

/** Lays out every box of the plan, and every panel whose casing is told. */
export function planBoxes(plan: CompletePlan, cables: readonly RunCable[]): BoxFigures[] {
  const cased = plan.panels.filter(({ insideM }) => insideM !== undefined);
  return [
    ...plan.boxes.map((box) => boxFigures("box", box, plan, cables)),
    ...cased.map((panel) => boxFigures("panel", panel, plan, cables)),
  ];
}

type Cased = Enclosure & { readonly name: string; readonly surroundings: Surroundings };

function boxFigures(
  kind: BoxFigures["kind"],
  box: Cased,
  plan: CompletePlan,
  cables: readonly RunCable[],
): BoxFigures {
  const { name, surroundings, spareEntries = 0 } = box;
  const into = cablesInto(name, cables);
  const request: BoxRequest = {
    cables: into,
    otherEntries: (box.fittings ?? []).map(entryOf),
    contents: contentsOf(box),
    spareEntries,
    glands: { series: box.glands ?? "metric" },
    ...(box.holes === undefined ? {} : { holes: box.holes.map(holeOf) }),
    ...(box.entries === undefined ? {} : { places: box.entries.map(placeOf) }),
  };
  const byHand = box.holes === undefined && (box.entries ?? []).length > 0;
  const about = { box: name, kind, surroundings, cables: into, spareEntries, byHand } as const;
  const nothing = { templates: [], drilling: [], problems: [] } as const;
  if (box.insideM !== undefined) {
    const body = bodyOf(box.insideM, box);
    const answer = layOutBox(body, request);
    const drilled = box.holes !== undefined;
    const layout = answer.ok ? answer.layout : undefined;
    const passing = boxPassing(box, body, layout, plan.source.waypoints);
    return {
      ...about,
      from: drilled ? "drilled" : "own",
      body,
      ...(box.water === undefined ? {} : { water: box.water }),
      unmeasured: drilled ? [] : unmeasured(box),
      ...(layout === undefined ? {} : { layout }),
      problems: answer.ok ? [] : answer.problems,
      ...(drilled || layout === undefined
        ? { templates: [], drilling: [] }
        : {
            templates: faceTemplates(name, body, layout.faces, layout.entries),
            drilling: drillOrder(body, layout.entries),
          }),
      ...(passing === undefined ? {} : { passing }),
    };
  }
  const { catalogueBox } = box;
  const offered = plan.source.catalogue.filter(
    (one) => catalogueBox === undefined || one.name === catalogueBox,
  );
  if (offered.length === 0) return { ...about, ...nothing, from: "none", unmeasured: ["inside"] };
  const choice = chooseBox(
    offered.map((one): CatalogueBox => {
      const made = { id: one.name, body: bodyOf(one.insideM, one) };
      return one.price === undefined ? made : { ...made, priceMinor: one.price.minor };
    }),
    request,
  );
  const chosen = choice.cheapest ?? choice.smallest;
  const bought = offered.find((one) => one.name === chosen?.id);
  if (chosen === undefined || bought === undefined) {
    const problems = choice.refused.at(-1)?.problems ?? [];
    return { ...about, ...nothing, from: "catalogue", unmeasured: [], problems, choice };
  }
  const body = bodyOf(bought.insideM, bought);
  const passing = boxPassing(box, body, chosen.layout, plan.source.waypoints);
  return {
    ...about,
    from: "catalogue",
    body,
    bought: { name: bought.name, ...(bought.price === undefined ? {} : { price: bought.price }) },
    ...(bought.water === undefined ? {} : { water: bought.water }),
    unmeasured: unmeasured(bought),
    layout: chosen.layout,
    problems: [],
    choice,
    templates: faceTemplates(name, body, chosen.layout.faces, chosen.layout.entries),
    drilling: drillOrder(body, chosen.layout.entries),
    ...(passing === undefined ? {} : { passing }),
  };
}

/** Every cable with an end in the box; a run from the box to itself comes in twice. */
function cablesInto(box: string, cables: readonly RunCable[]): BoxCable[] {
  return cables.flatMap(({ run, pieces }) => {
    const ends = [run.from.place, run.to.place].filter((place) => place === box).length;
    return Array.from({ length: ends }).flatMap((_, end) =>
      pieces.map(
        ({ id, diameterMm, flatMm, conductorMm }): BoxCable => ({
          id: end === 0 ? id : `${id}, other end`,
          diameterMm,
          conductorMm,
          ...(flatMm === undefined ? {} : { flatMm }),
        }),
      ),
    );
  });
}

/** Sizes in millimetres, to a thousandth, so that 0.1 m is 100 mm. */
const mm = (lengthM: number): number => Math.round(lengthM * 1e6) / 1e3;

function bodyOf([across, up, deep]: readonly [number, number, number], form: BoxForm): BoxBody {
  return {
    widthMm: mm(across),
    heightMm: mm(up),
    depthMm: mm(deep),
    wallMm: mm(form.wallM ?? usualBox.wallM),
    material: form.material ?? usualBox.material,
    mounted: form.mounted ?? "wall",
    // Posts and lips that leave no room are the owner's slip of a unit: they fill the side, and nothing fits.
    bossMm: Math.min(mm(form.bossM ?? 0), (Math.min(mm(across), mm(up)) / 2) * 0.999),
    lidLipMm: Math.min(mm(form.lidLipM ?? 0), mm(deep) * 0.999),
    closedFaces: form.closedFaces ?? [],
  };
}

function unmeasured({ bossM, lidLipM }: BoxForm): BoxFigures["unmeasured"] {
  return [
    ...(bossM === undefined ? (["boss"] as const) : []),
    ...(lidLipM === undefined ? (["lid lip"] as const) : []),
  ];
}

const placeOf = ({ name, on, atM }: EntryPlace): EntryAt => ({ id: name, on, x: mm(atM[0]), y: mm(atM[1]) });

const holeOf = ({ holeM, ...at }: BoxHole): OwnHole => ({ ...placeOf(at), holeMm: mm(holeM) });

function entryOf({ name, holeM, acrossM, on, spanner }: NonNullable<Enclosure["fittings"]>[number]): Entry {
  const holeMm = mm(holeM);
  return {
    id: name,
    holeMm,
    acrossMm: acrossM === undefined ? holeMm * usualFitting.acrossPerHole : Math.max(mm(acrossM), holeMm),
    spanner,
    ...(on === undefined ? {} : { face: on }),
  };
}

function contentsOf({ contents = [] }: Enclosure): Content[] {
  return contents.flatMap(({ name, sizeM, roomM, upright, count }) =>
    Array.from(
      { length: count },
      (_, index): Content => ({
        id: count === 1 ? name : `${name} ${index + 1}`,
        widthMm: mm(sizeM[0]),
        heightMm: mm(sizeM[1]),
        tallMm: mm(sizeM[2]),
        upright,
        ...(roomM === undefined ? {} : { workingMm: mm(roomM) }),
      }),
    ),
  );
}
