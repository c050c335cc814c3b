import type { PaperWords } from "../../paper/paper-words.js";
import { many } from "../many.js";

export const frame: PaperWords["frame"] = {
  drawn: (what, words, more) =>
    words === ""
      ? `Dibujo: ${what}.`
      : `Dibujo: ${what}. Escrito en él: ${words}${more > 0 ? `; y ${more} más` : ""}.`,
  packet: (plan) => `${plan}: cuaderno eléctrico`,
  scopes: { tonight: "esta noche", project: "proyecto" },
  sheetOf: (title, sheet, of) => `${title}, hoja ${sheet} de ${of}`,
  pageOf: (page, of) => `página ${page} de ${of}`,
  continued: " (sigue)",
  planningAid: "Ayuda para planear. Antes van las normas locales, los fabricantes y los profesionales.",
  more: (count) => ` y ${count} más`,
  planMark: (mark) => `plan ${mark}`,
  boat: "El barco",
  inTheWay: "Lo que estorba",
  inThisPacket: "En este cuaderno",
  nothingFound: "Ninguna regla encontró nada. Lee lo que se supuso y lo que nadie comprobó.",
  nothingInTheWay: (unchecked) =>
    unchecked === 0
      ? "Ninguna regla detiene el trabajo ni pide corregir antes. Conviene saber:"
      : `Ninguna regla detiene el trabajo, pero ${many(unchecked, "cosa", "cosas")} no se pudieron comprobar. Mira ahí primero:`,
  moreFindings: (count, page) => `y ${count} más en Hallazgos${page === undefined ? "" : `, página ${page}`}`,
  doFirst: "Haz primero",
  mendFirst: "Corrige en el plan lo que detiene el trabajo, e imprime de nuevo.",
  noStepLeft: "No queda ningún paso del trabajo.",
  allSteps: (steps, hours, page) =>
    `${many(steps, "paso", "pasos")}, ${hours} de tus manos en total${page === undefined ? "" : `: página ${page}`}`,
  signed: ["Revisado por", "Licencia o empresa", "Fecha", "Firma"],
  made: (material, kind) =>
    kind === undefined ? (material ?? "") : material === undefined ? kind : `${kind} de ${material}`,
  key: {
    hours: "Horas hasta la reserva",
    noOuting: "el plan no tiene salidas al agua",
    notReached: "ninguna salida llega a ella",
    before: "antes de que acabe la salida",
    longer: "más que la salida",
    on: (battery, outing, end) => `${battery} en «${outing}», ${end}`,
    drop: "Mayor caída",
    noDrop: "no se calculó ninguna caída",
    at: (voltage, gear, limit) => `${voltage} en ${gear}, límite ${limit}`,
    findings: "Hallazgos",
  },
  facts: {
    battery: (count) => (count === 1 ? "Batería" : "Baterías"),
    charger: (count) => (count === 1 ? "Cargador" : "Cargadores"),
    converter: (count) => (count === 1 ? "Convertidor" : "Convertidores"),
    panel: (count) => (count === 1 ? "Cuadro" : "Cuadros"),
    box: (count) => (count === 1 ? "Caja" : "Cajas"),
    outing: (count) => (count === 1 ? "Salida al agua" : "Salidas al agua"),
    gear: "Equipo",
    runs: "Tendidos",
    air: "Aire",
    more: (count) => `y ${count} más`,
    reserve: (share) => `reserva ${share}`,
    charges: (kind, battery) => `${kind}, para ${battery}`,
    kinds: { mains: "de red", solar: "solar", engine: "del motor", converter: "convertidor" },
    converts: (voltage, current) => `a ${voltage}, ${current} como mucho`,
    ways: (count) => many(count, "salida", "salidas"),
    withWays: (panel, ways) => `${panel} con ${ways}`,
    pieces: (count, ways, devices) =>
      `${many(count, "aparato", "aparatos")} en ${ways}; ${many(devices, "fusible o disyuntor", "fusibles y disyuntores")}`,
    cable: (count, length) => `${many(count, "tendido", "tendidos")}, ${length} de cable en total`,
    temperatures: (cold, hot, engine) => `de ${cold} a ${hot} °C, junto al motor ${engine} °C`,
  },
};
