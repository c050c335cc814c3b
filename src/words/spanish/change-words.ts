import type { ChangeLanguage } from "../change-language.js";
import { findings } from "../screen/es/findings.js";
import { spanish } from "../steps/spanish.js";
import { differenceInSpanish } from "./difference-words.js";
import { findingsInSpanish } from "./findings.js";

/** A change of plan in Spanish. Keys of the plan stay as they are written there. */
export const changesInSpanish: ChangeLanguage = {
  figures: {
    "gear drop": "mayor caída",
    "gear voltage": "tensión",
    "gear current": "corriente",
    "branch drop": "caída",
    "branch current": "corriente",
    "run size": "sección",
    "run ampacity": "corriente admitida",
    rating: "fusible o disyuntor",
    condition: "condición",
    "battery voltage": "tensión",
    "battery current": "corriente",
    "hours to reserve": "horas hasta la reserva",
    "charge left": "carga restante",
    "charge used": "carga gastada",
    "usable capacity": "capacidad utilizable",
    "charging time": "tiempo de carga",
    "sizes total": "todos los conductores",
  },
  onOuting: (figure, outing) => `${figure} en la salida «${outing}»`,
  never: "nunca",
  sections: {
    batteries: "batería",
    chargers: "cargador",
    converters: "convertidor",
    panels: "cuadro",
    boxes: "caja",
    "box catalogue": "caja a la venta",
    gear: "equipo",
    runs: "tendido",
    waypoints: "punto de paso",
    legs: "tramo",
    references: "punto de referencia",
    faces: "cara",
    corners: "caso",
    outings: "salida al agua",
    projects: "proyecto",
  },
  things: { added: "se añade", removed: "se quita" },
  notWritten: "sin escribir",
  levels: findings.levels,
  ofFindings: { come: findings.appears, gone: findings.gone },
  ofSteps: { come: "paso nuevo", gone: "ya no hace falta" },
  moreSteps: {
    come: (count) => (count === 1 ? "y 1 paso nuevo más" : `y ${count} pasos nuevos más`),
    gone: (count) =>
      count === 1 ? "y 1 paso más que ya no hace falta" : `y ${count} pasos más que ya no hacen falta`,
  },
  cut: (run, before, after) => `${run}: cortar ${before} → ${after}`,
  moreCuts: (count) =>
    count === 1
      ? "y 1 cable más que se corta a otra medida"
      : `y ${count} cables más que se cortan a otra medida`,
  workLeft: (before, after) => `trabajo por hacer: ${before} → ${after}`,
  difference: differenceInSpanish,
  findings: findingsInSpanish,
  steps: spanish,
};
