import type { Finding } from "../../core/findings/finding.js";
import type { RuleId } from "../../core/findings/rules.js";
import { listed } from "../listed.js";
import type { RuleWords } from "../rule-words.js";
import { joinedInSpanish } from "./joining.js";
import { anyPartInSpanish, wireInSpanish } from "./part-names.js";

/** What a finding of the shopping list is about: parts, wire, and things of the owner's. */
const partsOf = ({ at, with: others = [] }: Finding) =>
  listed([at, ...others].map(anyPartInSpanish), joinedInSpanish);

export const partRules = {
  "spool-length": {
    title: "Ningún tendido es más largo que el cable que se puede conseguir",
    why: "Una unión en mitad de un tendido es una más que puede fallar, donde no se llega.",
    mend: "Un rollo más largo, cable cortado por metros o por pies, o una caja a medio camino.",
    says: (say) =>
      `${say.at} necesita ${say.figure} de ${wireInSpanish(say.term("wire"))} en una sola pieza; lo más largo que se consigue es ${say.limit}.`,
  },
  "negative-stock": {
    title: "Las existencias están contadas",
    why: "Tener menos que nada hace que la lista compre de más, o esconde una línea apuntada dos veces.",
    mend: "Cuenta lo que hay.",
    says: (say) => `Según las existencias hay ${say.figure} de ${anyPartInSpanish(say.term("item"))}.`,
  },
  "two-currencies": {
    title: "Los precios están en una sola moneda",
    why: "Dos monedas no se pueden sumar, y aquí nadie sabe el cambio del día.",
    mend: "Escribe todos los precios en una, o quita los demás.",
    says: (say) => {
      const currencies = say.term("currencies").split(" ");
      const named = currencies.map((one) => (one === "XXX" ? "una moneda sin nombre" : one));
      return `Los precios están en ${listed(named, joinedInSpanish)}: no hay total.`;
    },
  },
  "price-missing": {
    title: "Lo que se compra tiene precio",
    why: "Un total que deja cosas fuera no es lo que va a pedir la tienda.",
    mend: "Añade el precio, o toma la línea como una por la que hay que preguntar.",
    says: (say, finding) => `${partsOf(finding)} no ${say.many ? "tienen" : "tiene"} precio.`,
    unchecked: (say, finding) =>
      `${partsOf(finding)} no ${say.many ? "tienen precio y quedan" : "tiene precio y queda"} fuera del total.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
