import type { RuleId } from "../../core/findings/rules.js";
import { noFigure } from "../numbers.js";
import type { RuleWords } from "../rule-words.js";

const alike = (others: string) => (others ? ` (también ${others})` : "");

export const voltageRules = {
  "voltage-drop": {
    title: "En el camino se pierde poca tensión",
    why: "Por lo que se pierde en conductores y uniones las lámparas lucen menos, las bombas van más lentas y la electrónica se reinicia; además, calienta el cable.",
    mend: "Un conductor de más sección, un camino más corto, menos uniones o menos cosas en el mismo tendido.",
    says: (say) =>
      `En ${say.at} se pierde el ${say.figure} de la tensión, entre ida y vuelta, ${say.when}; no debería pasar del ${say.limit}${alike(say.others)}.`,
    unchecked: (say) =>
      `La caída en ${say.all} no se conoce en ningún caso (sin encenderse en ninguno, o sin solución); no debería pasar del ${say.limit}.`,
  },
  "under-voltage": {
    title: "Los aparatos reciben la tensión que necesitan",
    why: "Por debajo de su tensión mínima un aparato luce menos, se cala o se apaga, justo cuando la batería está baja y más falta hace.",
    mend: "Un conductor de más sección o un camino más corto, o un aparato que funcione con menos tensión.",
    says: (say) =>
      `En ${say.at} hay ${say.figure} ${say.when}; para funcionar hacen falta ${say.limit}${alike(say.others)}.`,
  },
  "over-voltage": {
    title: "Los aparatos soportan la tensión de carga",
    why: "Un cargador sube todo el barco hasta su propia tensión; un aparato hecho para menos envejece pronto o se quema.",
    mend: "Un aparato con más margen, un convertidor delante, o apagarlo mientras se carga.",
    says: (say) =>
      `En ${say.at} hay ${say.figure} ${say.when}; lo más que puede haber ahí son ${say.limit}${alike(say.others)}.`,
  },
  collapse: {
    title: "La instalación puede llevar todo lo que se le pide",
    why: "Los aparatos que regulan su potencia toman más corriente cuanto más baja la tensión. Pasado un punto, ninguna tensión les basta a todos y el suministro se hunde.",
    mend: "Conductores de más sección o una batería más fuerte para el aparato nombrado, o menos cosas encendidas a la vez.",
    says: (say, { at }) => {
      const where = at === "plan" ? "" : `; lo primero que cede es ${at}`;
      return say.figure === noFigure
        ? `No hay ninguna tensión estable con la que todos los aparatos reciban su potencia ${say.when}${where}.`
        : `Solo se puede llevar el ${say.figure} de la potencia pedida ${say.when}${where}.`;
    },
  },
  "nominal-voltage": {
    title: "Los aparatos y su fuente tienen la misma tensión",
    why: "Un aparato de 12 V con 24 V se quema al momento; uno de 24 V con 12 V no arranca.",
    mend: "Pon un convertidor entre los dos, o cuelga el aparato de la otra batería.",
    says: (say, { figure, limit }) =>
      `La fuente de ${say.at} es de ${say.figure} (${say.others}); ${(figure ?? 0) > (limit ?? 0) ? "lo más que soporta el aparato" : "lo menos que necesita el aparato"} son ${say.limit}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
