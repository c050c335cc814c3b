import type { RuleId } from "../../core/findings/rules.js";
import type { RuleWords } from "../rule-words.js";
import { jointInSpanish } from "./joint-kinds.js";
import { colourIn } from "./trade.js";

export const endRules = {
  "tap-limits": {
    title: "Un conector de derivación vale para sus dos conductores",
    why: "En un conductor demasiado grueso su cuchilla no llega al cobre; en uno demasiado fino corta los hilos.",
    mend: "Un empalme sellado para todos, o una barra.",
    says: (say) =>
      `${say.at} en ${say.others}: el conector de derivación está sobre un conductor de ${say.figure} con otro de ${say.term("size")}; ninguno de los usuales admite los dos.`,
  },
  "barrel-fit": {
    title: "Los conductores llenan el casquillo en que se engastan",
    why: "Un engaste flojo se suelta y se calienta; los hilos que se cortan para que quepan no llevan nada.",
    mend: "Menos conductores en una unión, una barra, o un terminal hecho para esa sección.",
    says: (say) => {
      const where = `${say.at} en ${say.others} (${jointInSpanish(say.term("joint"))})`;
      switch (say.term("problem")) {
        case "too-thin-for-barrel":
          return `${where}: ${say.figure} de cobre es muy poco para cualquier casquillo usual, que necesita ${say.limit}.`;
        case "too-thick-for-barrel":
          return `${where}: ${say.figure} de cobre en un casquillo es demasiado; el mayor admite ${say.limit}.`;
        default:
          return `${where}: la funda tendría que retraerse de ${say.figure} a 1; la mejor lo hace de ${say.limit} a 1.`;
      }
    },
  },
  "step-down": {
    title: "Un empalme entre conductores desiguales está hecho para los dos",
    why: "En un empalme corriente, una de las dos puntas queda floja.",
    mend: "Un empalme reductor de los dos colores, o doblar sobre sí mismo el conductor fino dentro de su lado.",
    says: (say) =>
      `${say.at} en ${say.others}: el empalme une dos secciones; hace falta uno reductor, de ${colourIn(say.term("one"))} a ${colourIn(say.term("other"))}.`,
  },
  "stud-fit": {
    title: "Los terminales de anillo están hechos para su perno",
    why: "Un anillo demasiado grande para su perno queda descentrado y se afloja; uno demasiado pequeño se acaba taladrando y queda débil.",
    mend: "Terminales de anillo de la medida del perno; escribe el perno en el plan.",
    says: (say) =>
      `Ningún terminal de anillo usual está hecho para el perno de ${say.figure} de ${say.others} (${say.at}).`,
    unchecked: (say) =>
      `Falta en el plan el perno de ${say.all} (\`stud\`): no se pueden elegir sus terminales de anillo.`,
  },
  "tab-fit": {
    title: "Los terminales enchufables están hechos para su lengüeta",
    why: "Un terminal enchufable flojo se calienta y se cae.",
    mend: "Terminales del ancho de la lengüeta; uno de anillo bajo un tornillo para cualquier conductor más grueso.",
    says: (say) =>
      say.term("problem") === "tab-not-made"
        ? `Ningún terminal enchufable usual está hecho para la lengüeta de ${say.figure} de ${say.others} (${say.at}).`
        : `La lengüeta de ${say.term("tab")} de ${say.others} admite ${say.limit}; el conductor de ${say.at} tiene ${say.figure}.`,
    unchecked: (say) =>
      `Falta en el plan la lengüeta de ${say.all} (\`tab\`): no se pueden elegir sus terminales enchufables.`,
  },
  "strain-relief": {
    title: "Una descarga de tracción sujeta su cable",
    why: "Un cable al que no agarra se sostiene solo por sus uniones; uno demasiado grueso queda aplastado.",
    mend: "Una funda sobre el cable para engrosarlo, otro cable, u otra pieza.",
    says: (say) =>
      say.term("side") === "thin"
        ? `${say.others}: el cable mide ${say.figure} de grueso; la descarga de tracción de ${say.at} sujeta desde ${say.limit}.`
        : `${say.others}: el cable mide ${say.figure} de grueso; la descarga de tracción de ${say.at} admite hasta ${say.limit}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
