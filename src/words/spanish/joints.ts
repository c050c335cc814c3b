import type { JointKind, Surroundings } from "../../core/plan/model/common.js";

/** Kinds of joint as the Spanish page says them, each fit to stand after «un». */
const jointNames: Readonly<Record<string, string>> = {
  "crimped butt": "empalme engastado",
  "sealed butt": "empalme engastado y sellado",
  "solder sleeve": "manguito con estaño",
  "soldered and sleeved": "empalme soldado con funda",
  "crimped ring": "terminal de anillo engastado",
  "crimped fork": "terminal de horquilla engastado",
  "push-on tab": "terminal plano enchufable",
  "screw terminal": "borne de tornillo",
  "lever clamp": "borne de palanca",
  "pin plug": "conector de clavijas",
  tap: "conector de derivación",
  "twist-on cap": "capuchón de rosca",
  "twisted and taped": "empalme retorcido y encintado",
} satisfies Record<JointKind, string>;

/** Where a thing is, fit to stand after «en». */
const surroundingNames: Readonly<Record<string, string>> = {
  dry: "un lugar seco",
  splash: "un lugar con salpicaduras",
  wet: "un lugar mojado",
  bilge: "la sentina",
  "engine space": "el compartimento del motor",
} satisfies Record<Surroundings, string>;

/** A kind of joint by its word in the plan; a word that is not known stays. */
export const jointName = (word: string) => jointNames[word] ?? word;

/** A place's surroundings by their word in the plan; a word that is not known stays. */
export const surroundingsName = (word: string) => surroundingNames[word] ?? word;
