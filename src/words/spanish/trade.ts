import type { Surroundings } from "../../core/plan/model/common.js";
import type { Side } from "../../core/plan/model/placing.js";
import type { WallMaterial } from "../../core/reference/boxes.js";
import type { Material } from "../../core/reference/drilling.js";
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

/** What a box, a hull or a sheet is made of, within a sentence. */
export const materialIn = heldBy({
  aluminium: "aluminio",
  steel: "acero",
  glass: "fibra de vidrio",
  wood: "madera",
  polyethylene: "polietileno",
  ABS: "ABS",
  abs: "ABS",
  fabric: "tela",
  polycarbonate: "policarbonato",
  acrylic: "metacrilato",
  "rigid PVC": "PVC rígido",
  "glass-filled polyester": "poliéster con fibra de vidrio",
  "cast aluminium": "aluminio fundido",
  "sheet aluminium": "chapa de aluminio",
  "stainless steel": "acero inoxidable",
  plywood: "contrachapado",
} satisfies Record<WallMaterial | Material | "fabric", string>);

const chemistryNamed = heldBy(asking.chemistries);

/** A chemistry within a sentence. */
export function chemistryIn(key: string): string {
  const name = chemistryNamed(key);
  return name.charAt(0).toLowerCase() + name.slice(1);
}
