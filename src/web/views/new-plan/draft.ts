import type { GearRole } from "../../../core/plan/model/gear.js";
import type { Plan, Shows } from "../../../core/plan/model/plan.js";
import type { Chemistry } from "../../../core/plan/model/supply.js";
import type { NewGear, NewPlanAnswers } from "../../../core/plan/new/answers.js";
import type { StartingKind } from "../../../core/reference/starting-forms.js";
import type { ScreenWords } from "../../../words/screen/en.js";

/** What a battery is, as asked of each. */
export interface DraftBattery {
  readonly chemistry: Chemistry;
  readonly capacity: string;
  readonly voltage: string;
}

export interface DraftGear {
  readonly id: number;
  readonly taken: boolean;
  readonly name: string;
  readonly role: GearRole;
  readonly draws: string;
  readonly count: string;
  readonly cable: string;
  /** By a way of the panel, straight from the battery, or from one of its own. */
  readonly fed: "panel" | "battery" | "own";
  readonly own: DraftBattery;
}

/** What has been answered so far, as typed; empty where it was not. */
export interface Draft {
  readonly lengths: Shows["lengths"];
  readonly name: string;
  readonly shape: StartingKind;
  readonly length: string;
  readonly beam: string;
  readonly depth: string;
  readonly hull: keyof ScreenWords["asking"]["hulls"] | "";
  readonly petrol: boolean;
  /** Undefined: as goes with the lengths. */
  readonly rules: Plan["rules"] | undefined;
  readonly battery: DraftBattery;
  readonly batteryCable: string;
  readonly gear: readonly DraftGear[];
}

const first: DraftBattery = { chemistry: "agm", capacity: "50 Ah", voltage: "12 V" };
const motors: DraftBattery = { chemistry: "agm", capacity: "100 Ah", voltage: "12 V" };

/** Figures to begin with, invented and of the usual size; the owner's label counts. */
const presets = [
  { of: "lamps", role: "lighting", draws: "1 W", count: "4", ft: "9 ft", m: "2.7 m", taken: true },
  {
    of: "navigation",
    role: "navigation light",
    draws: "2 W",
    count: "1",
    ft: "10 ft",
    m: "3 m",
    taken: true,
  },
  {
    of: "bilge",
    role: "bilge pump",
    draws: "2.8 A at 12 V",
    count: "1",
    ft: "7 ft",
    m: "2.1 m",
    taken: true,
  },
  { of: "sounder", role: "electronics", draws: "9 W", count: "1", ft: "4 ft", m: "1.2 m", taken: false },
  { of: "sockets", role: "socket", draws: "11 W", count: "2", ft: "3 ft", m: "1 m", taken: false },
  { of: "outlet", role: "socket", draws: "5 A at 12 V", count: "1", ft: "3 ft", m: "1 m", taken: false },
  { of: "voltmeter", role: "gauge", draws: "20 mA", count: "1", ft: "2 ft", m: "0.6 m", taken: false },
  { of: "well", role: "pump", draws: "3 A at 12 V", count: "1", ft: "9 ft", m: "2.7 m", taken: false },
  {
    of: "horn",
    role: "sound signal",
    draws: "4 A at 12 V",
    count: "1",
    ft: "8 ft",
    m: "2.4 m",
    taken: false,
  },
  {
    of: "motor",
    role: "propulsion",
    draws: "30 A at 12 V",
    count: "1",
    ft: "8 ft",
    m: "2.4 m",
    taken: false,
    fed: "own",
  },
] as const;

export function firstDraft({ asking }: Pick<ScreenWords, "asking">, lengths: Shows["lengths"]): Draft {
  return {
    lengths,
    name: asking.usualName,
    shape: "vee-bottomed utility",
    length: usualLengths.length[lengths],
    beam: "",
    depth: "",
    hull: "",
    petrol: false,
    rules: undefined,
    battery: first,
    batteryCable: usualLengths.batteryCable[lengths],
    gear: presets.map((preset, id) => ({
      id,
      taken: preset.taken,
      name: asking.presets[preset.of],
      role: preset.role,
      draws: preset.draws,
      count: preset.count,
      cable: lengths === "inches" ? preset.ft : preset.m,
      fed: "fed" in preset ? preset.fed : "panel",
      own: motors,
    })),
  };
}

const usualLengths = {
  length: { inches: "15 ft", millimetres: "4.6 m" },
  batteryCable: { inches: "6 ft", millimetres: "1.8 m" },
} as const;

/** One more piece of gear, of which nothing is known yet. */
export function blankGear({ gear, lengths }: Draft): DraftGear {
  return {
    id: gear.length,
    taken: true,
    name: "",
    role: "lighting",
    draws: "1 W",
    count: "1",
    cable: lengths === "inches" ? "6 ft" : "2 m",
    fed: "panel",
    own: motors,
  };
}

/** The other manner of measuring: usual figures that still stand are told in it, what was typed stays. */
export function measuredIn(draft: Draft, lengths: Shows["lengths"]): Draft {
  const other = (of: "length" | "batteryCable") =>
    draft[of] === usualLengths[of][draft.lengths] ? usualLengths[of][lengths] : draft[of];
  return {
    ...draft,
    lengths,
    length: other("length"),
    batteryCable: other("batteryCable"),
    gear: draft.gear.map((piece) => {
      const usual = presets[piece.id];
      const stands = usual && piece.cable === (draft.lengths === "inches" ? usual.ft : usual.m);
      return stands ? { ...piece, cable: lengths === "inches" ? usual.ft : usual.m } : piece;
    }),
  };
}

/** Whose rules hold: those chosen, or those that go with how one measures. */
export const rulesOf = ({ rules, lengths }: Draft): Plan["rules"] =>
  rules ?? (lengths === "inches" ? "us" : "iso");

export function answersOf(draft: Draft): NewPlanAnswers {
  const { name, shape, length, beam, depth, hull, petrol, battery, batteryCable } = draft;
  const rules = rulesOf(draft);
  const usual = rules === "us" ? "inches" : "millimetres";
  return {
    name: name.trim(),
    kind: shape,
    length,
    ...(beam === "" ? {} : { beam }),
    // without a beam the shape can't be scaled: it stays an outline until one is measured
    ...(beam === "" || depth === "" ? {} : { form: { shape, depth } }),
    ...(draft.lengths === usual ? {} : { lengths: draft.lengths }),
    ...(hull === "" ? {} : { hull }),
    petrolOnBoard: petrol,
    rules,
    battery: { ...battery, cable: batteryCable },
    gear: draft.gear.filter(({ taken }) => taken).map(gearOf),
  };
}

function gearOf({ name, role, draws, cable, count, fed, own }: DraftGear): NewGear {
  const straightFrom = { panel: undefined, battery: "the battery", own } as const;
  const from = straightFrom[fed];
  return {
    name: name.trim(),
    role,
    draws,
    cable,
    ...(count === "1" ? {} : { count: Number(count) }),
    ...(from === undefined ? {} : { straightFrom: from }),
  };
}
