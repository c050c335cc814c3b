import type { AssumedField } from "../../core/plan/complete/assumed-fields.js";
import type { AssumedWords } from "../assumptions.js";
import { assumptionWords } from "./assumptions.js";
import { protectionKinds } from "./devices.js";
import { jointInSpanish } from "./joint-kinds.js";
import { materialIn } from "./trade.js";

const fields: Readonly<Record<AssumedField, string>> = {
  absorption: "absorción",
  age: "edad",
  air: "aire",
  "behaves as": "se comporta como",
  cold: "aire más frío",
  "cut-off": "se para a",
  drop: "caída admitida",
  efficiency: "rendimiento",
  "engine space": "junto al motor",
  fuse: "fusible",
  graduation: "división de la cinta",
  hot: "aire más caliente",
  insulation: "aislamiento",
  "internal resistance": "resistencia interna",
  isolated: "aislado",
  joins: "cómo une",
  joint: "unión",
  "joint at end": "unión al final",
  "joint at start": "unión al principio",
  length: "longitud",
  "longest tape": "cinta más larga",
  main: "fusible general",
  "marks from": "se marca desde",
  of: "material",
  peukert: "Peukert",
  "rated over": "medida en",
  reaches: "llega",
  reserve: "reserva",
  returns: "retornos",
  role: "función",
  "self limiting": "se limita solo",
  sheathed: "con funda",
  "short circuit": "cortocircuito",
  "spread of a reading": "error de una lectura",
  "spread of the survey": "error del levantamiento",
  standby: "consumo en reposo",
  "studs per bus": "pernos por barra",
  "studs per post": "pernos por borne",
  surroundings: "entorno",
  switch: "interruptor",
  tape: "cinta",
  tinned: "estañado",
  "tolerance of a mark": "tolerancia de una marca",
  voltage: "tensión",
  wall: "pared",
  "works from": "funciona desde",
  "works to": "funciona hasta",
};

/** Values that are words of the plan's format. */
const values: ReadonlyMap<string, string> = new Map([
  ["true", "sí"],
  ["false", "no"],
  ["none", "ninguno"],
  ["power", "potencia"],
  ["current", "corriente"],
  ["resistance", "resistencia"],
  ["motor", "motor"],
  ["other", "otra"],
  ["each", "cada uno"],
  ["in turn", "por turno"],
  ["dry", "seco"],
  ["splash", "salpicaduras"],
  ["wet", "mojado"],
  ["bilge", "sentina"],
  ["engine space", "junto al motor"],
  ["on the surface", "pegada a la superficie"],
  ["inside", "dentro"],
  ["outside", "fuera"],
  ["tee", "derivaciones"],
  ["joined", "unidos"],
  ["apart", "separados"],
  ["one, rated for the load", "uno, para la carga"],
]);
const worked = /^(.+), rating worked out$/;

function value(written: string): string {
  const [, device] = worked.exec(written) ?? [];
  if (device !== undefined) return `${protectionKinds[device] ?? device}, calibre calculado`;
  const years = written.replace(/ years$/, " años");
  return values.get(written) ?? jointInSpanish(materialIn(years));
}

/** What was assumed, in Spanish. */
export const assumedInSpanish: AssumedWords = {
  reasons: assumptionWords,
  field: (field) => fields[field],
  value,
};
