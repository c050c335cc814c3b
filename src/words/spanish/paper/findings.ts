import type { PaperWords } from "../../paper/paper-words.js";
import { many } from "../many.js";

export const findings: PaperWords["findings"] = {
  title: "Hallazgos",
  count: (count) => many(count, "hallazgo", "hallazgos"),
  heading: (level, count, means) => `${level}: ${count}. ${means}`,
  none: "Ninguna regla de estas normas encontró nada. Lo que se supuso está en las páginas siguientes.",
  helps: (mend) => `Qué ayuda: ${mend}`,
  supplyIt: "Pon en el plan lo que falta, o compruébalo a mano antes de fiarte.",
  rule: (id, sources) => `Regla ${id}. Fuente: ${sources}.`,
  also: (names) => `También afecta a: ${names}.`,
  against: (figure, limit) => `${figure} frente a ${limit}`,
  moreSteps: (count) => ` y ${count} pasos más`,
  working: "Cálculo",
  anyMends: "Cualquiera de estos lo arregla",
  mends: "Esto lo arregla",
  assumptions: {
    title: "Lo supuesto",
    count: (count) => many(count, "valor que el plan no dice", "valores que el plan no dice"),
    heads: { field: "Qué no se dice", taken: "Se toma", at: "Para", why: "Por qué" },
    write: "Escribe cualquiera en el plan y se usará tu valor, y se comprobará, en su lugar.",
    always: ({ charged, riseK, ring, butt, blade, bolted, switched }) =>
      [
        "En cualquier plan, práctica corriente sin fuente:",
        `el caso usual tiene las baterías cargadas al ${charged}; el peor, en su reserva y con el cobre ${riseK} K por encima del aire más caliente;`,
        `un terminal de anillo engastado tiene ${ring} mΩ y un empalme a tope ${butt} mΩ sobre 1 mm², menos con más cobre;`,
        `un fusible de cuchilla con su portafusibles pierde ${blade} a su calibre, uno atornillado ${bolted}, un interruptor ${switched};`,
        "un conductor tiene la mayor resistencia que puede tener su sección.",
      ].join(" "),
  },
  cautions: {
    title: "Precauciones",
    subtitle: "Lee esta página antes de coger la primera herramienta",
    decides: "Quién decide",
    never: "Sin comprobar, en ningún plan",
    here: "Sin comprobar, en este plan",
    more: (count) => `y ${count} más, en Hallazgos`,
  },
};
