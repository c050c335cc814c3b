import type { Edit } from "../../../core/plan/edits/edit.js";
import { intoOuting, periodOf, plainly, recordOf } from "../../edits.js";
import { jointInSpanish } from "../../spanish/joint-kinds.js";
import { keysInSpanish } from "../../spanish/keys.js";
import { colourIn } from "../../spanish/trade.js";
import type { ScreenWords } from "../en.js";

function sentence(edit: Edit): string {
  switch (edit.edit) {
    case "set way fuse":
    case "set run fuse":
      return `Poner el fusible de ${edit.at} en ${edit.to}.`;
    case "set main fuse":
      return `Poner el fusible general de ${edit.at} en ${edit.to}.`;
    case "set run size":
      return `Hacer ${edit.at} de ${edit.to}.`;
    case "set return size":
      return `Hacer el retorno de ${edit.at} de ${edit.to}.`;
    case "set run return":
      return edit.to === "own"
        ? `Dar a ${edit.at} un retorno propio para cada salida.`
        : `Dar a ${edit.at} un solo retorno compartido.`;
    case "set run joint":
      return `Usar ${jointInSpanish(edit.to)} en ${ends[edit.end]} de ${edit.at}.`;
    case "set gear joint":
      return `Unir ${edit.at} con ${jointInSpanish(edit.to)}.`;
    case "set run colours":
      return `Usar en ${edit.at} ${colourIn(edit.out)} para la ida y ${colourIn(edit.return)} para el retorno.`;
    case "set way always live":
      return edit.to
        ? `Tomar ${edit.at} antes del interruptor general.`
        : `Tomar ${edit.at} después del interruptor general.`;
    case "set field":
      if (intoOuting(edit)) return `Poner en la salida al agua ${intoOuting(edit)}: ${periodOf(edit.to)}.`;
      return `Poner «${keysInSpanish.label(edit.field)}» de ${edit.at} en ${value(edit.to)}.`;
    case "remove field":
      return `Quitar «${keysInSpanish.label(edit.field)}» de ${edit.at}.`;
    case "add":
      if (edit.kind === "step done") return `Marcar hecho: ${recordOf(edit)}.`;
      if (edit.kind === "reading") return `Anotar la lectura en ${recordOf(edit)}.`;
      return edit.name === ""
        ? `Añadir ${kindOf(edit.kind)}: ${recordOf(edit)}.`
        : `Añadir ${kindOf(edit.kind)} ${edit.name}${edit.as.replace(/[{}\s]/g, "") === "" ? "" : `: ${plainly(edit.as)}`}.`;
    case "remove":
      return `Quitar ${edit.at}.`;
    case "rename":
      return `Llamar ${edit.to} a ${edit.at}.`;
    default:
      return edit satisfies never;
  }
}

const kinds: ReadonlyMap<string, string> = new Map([
  ["gear", "equipo"],
  ["way", "salida"],
  ["run", "tendido"],
  ["battery", "batería"],
  ["charger", "cargador"],
  ["converter", "convertidor"],
  ["panel", "cuadro"],
  ["box", "caja"],
  ["outing", "salida al agua"],
  ["corner", "caso"],
  ["face", "cara"],
  ["reference", "punto de referencia"],
  ["waypoint", "punto de paso"],
  ["leg", "tramo"],
  ["project", "proyecto"],
]);
const kindOf = (kind: string) => kinds.get(kind) ?? kind;

const ends = { start: "el principio", end: "el final", both: "los dos extremos" } as const;

const value = (given: string | number | boolean) =>
  typeof given === "boolean" ? (given ? "sí" : "no") : keysInSpanish.choice(plainly(String(given)));

export const edits: ScreenWords["edits"] = { sentence };
