import type { RuleId } from "../../core/findings/rules.js";
import { precedenceReasons } from "../../core/work/step.js";
import type { RuleWords } from "../rule-words.js";
import { endWords } from "./difference-words.js";
import { jointInSpanish } from "./joint-kinds.js";
import { sideIn } from "./trade.js";
import { reasonWords } from "./work-reasons.js";

export const workRules = {
  "built-conductor": {
    title: "Lo tendido tiene la sección con la que cuenta el plan",
    why: "Cada caída, cada fusible y cada hora se calcularon con la sección del plan. Con una menor se pierde más tensión y el conductor se quema antes.",
    mend: "Di al plan lo que hay puesto y mira qué dice entonces, o tiende la sección que pide.",
    says: (say) =>
      `El tendido ${say.at} se hizo con ${say.term("built")}; el plan cuenta con ${say.term("wanted")}.`,
  },
  "built-fuse": {
    title: "Cada fusible puesto es el que pide el plan",
    why: "Uno mayor deja que se queme el conductor antes de abrirse; uno menor se abre al anochecer.",
    mend: "Pon el calibre del plan.",
    says: (say, { terms }) =>
      `El calibre puesto en ${say.at} es de ${say.figure}; el plan pide ${say.limit}${terms?.large === "yes" ? ", y nada mayor protege lo que hay detrás" : ""}.`,
  },
  "built-hole": {
    title: "Un agujero hecho está donde lo quiere el plan",
    why: "Un agujero no se puede mover. Lo que entra en él, lo tapa o pasa por él necesita saber dónde está de verdad.",
    mend: "Da al plan el sitio del agujero que hay, o tápalo y taladra otro.",
    says: (say, { terms }) => {
      switch (terms?.kind) {
        case "face":
          return `El agujero de ${say.at} está hecho en ${say.term("built")} (${sideIn(say.term("builtSide"))}); el plan lo quiere ahora en ${say.term("wanted")} (${sideIn(say.term("wantedSide"))}).`;
        case "size":
          return `Un agujero de ${say.at} mide ${say.figure}; el plan pide ahora ${say.limit}.`;
        case "entry":
          return `La entrada de ${say.others} en ${say.at} está hecha en otro sitio que el que quiere ahora el plan.`;
        default:
          return `El agujero de ${say.at} está hecho; el plan lo quiere ahora a ${say.figure} de ahí.`;
      }
    },
    unchecked: (say) =>
      say.many
        ? `No se pudo saber si los agujeros de ${say.all} están donde los quiere el plan: los sitios se cuentan desde puntos distintos.`
        : `No se pudo saber si el agujero de ${say.all} está donde lo quiere el plan: los sitios se cuentan desde puntos distintos.`,
  },
  "built-joint": {
    title: "Las uniones son de la clase con la que cuenta el plan",
    why: "Cada clase tiene su propia resistencia, su propio límite y su propio miedo al agua.",
    mend: "Di al plan qué clase se hizo y mira qué dice entonces.",
    says: (say) =>
      `La unión de ${say.at}, ${endWords(say.term("end"))}, se hizo con un ${jointInSpanish(say.term("built"))}; el plan cuenta con un ${jointInSpanish(say.term("wanted"))}.`,
  },
  "built-length": {
    title: "El plan cuenta con las longitudes que hay en el barco",
    why: "En un cable más largo se pierde más tensión. La siguiente lista de corte y lo que se espera en el medidor salen de la longitud del plan.",
    mend: "Da al plan la longitud medida.",
    says: (say) => `El tendido ${say.at} mide ${say.figure}; el plan dice ${say.limit}.`,
  },
  "record-of-nothing": {
    title: "Lo construido que ya no se quiere no se olvida",
    why: "Un agujero sin uso deja entrar agua; un cable muerto en el barco confunde a quien busca una avería.",
    mend: "Tapa el agujero o úsalo; saca el cable o márcalo en las dos puntas. Si solo cambió un nombre, cámbialo también en lo que consta.",
    says: (say, { terms }) => {
      switch (terms?.kind) {
        case "hole":
          return `En ${say.term("in")} hay un agujero para ${say.at}, y el plan no lo usa: hay que taparlo o usarlo.`;
        case "entry":
          return `En ${say.at} hay una entrada para ${say.term("in")}, que no llega ahí: hay que ponerle un tapón.`;
        case "run":
          return `El tendido ${say.at} está en el barco, y en el plan no hay ninguno que se llame así.`;
        case "joint":
          return `Consta una unión en ${say.at}, y en el plan no hay nada que se llame así.`;
        case "device":
          return `Consta que ${say.at} está en su sitio, y en el plan no hay nada que se llame así.`;
        default:
          return `Consta el paso «${say.at}», y en el plan no hay ningún paso así.`;
      }
    },
  },
  "step-out-of-order": {
    title: "Los pasos se marcan en un orden que no obliga a deshacer nada",
    why: "Una tapa cerrada antes de comprobar se vuelve a abrir; el sellador sobre una unión sin hacer se vuelve a cortar.",
    mend: "Haz lo que falta o marca lo que ya está hecho; deshaz la marca puesta por error.",
    says: (say, { terms }) => {
      if (terms?.kind === "twice") return `El paso «${say.at}» está marcado más de una vez.`;
      const reason = precedenceReasons.find((one) => one === terms?.reason);
      return `El paso «${say.at}» está marcado, pero no ${say.others}${reason === undefined ? "" : `: ${reasonWords[reason]}`}.`;
    },
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
