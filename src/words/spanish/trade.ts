import type { Surroundings } from "../../core/plan/model/common.js";
import type { Side } from "../../core/plan/model/placing.js";
import { asking } from "../screen/es/asking.js";

const heldBy = (words: Readonly<Record<string, string>>) => (key: string) =>
  Object.entries(words).find(([one]) => one === key)?.[1] ?? key;

/** A place by its surroundings, with its article: `en …`, `su sitio es …`. */
export const placeIn = heldBy({
  dry: "un lugar seco",
  splash: "un lugar con salpicaduras",
  wet: "un lugar mojado",
  bilge: "la sentina",
  "engine space": "el compartimento del motor",
} satisfies Record<Surroundings, string>);

export const sideIn = heldBy({ port: "babor", starboard: "estribor" } satisfies Record<Side, string>);

/** A colour as the plan writes it; one that is not of the usual ones stays as it is written. */
export const colourIn = heldBy({
  red: "rojo",
  black: "negro",
  yellow: "amarillo",
  green: "verde",
  blue: "azul",
  white: "blanco",
  brown: "marrón",
  grey: "gris",
  gray: "gris",
  orange: "naranja",
  violet: "violeta",
  purple: "morado",
  pink: "rosa",
  "green and yellow": "verde y amarillo",
  "green/yellow": "verde y amarillo",
  "green-yellow": "verde y amarillo",
});

const chemistryNamed = heldBy(asking.chemistries);

/** A chemistry within a sentence. */
export function chemistryIn(key: string): string {
  const name = chemistryNamed(key);
  return name.charAt(0).toLowerCase() + name.slice(1);
}
