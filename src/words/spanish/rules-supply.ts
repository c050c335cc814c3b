import type { RuleId } from "../../core/findings/rules.js";
import type { RuleWords } from "../rule-words.js";

const looseKinds: Readonly<Record<string, string>> = {
  "gear not fed": "aparato",
  "panel not fed": "cuadro",
  "box not fed": "caja de conexiones",
  "converter not fed": "convertidor",
};

export const supplyRules = {
  "not-fed": {
    title: "A todo llega un circuito",
    why: "Adonde no llega ningún tendido no hay corriente, y no se puede calcular ninguna de sus cifras.",
    mend: "Dibuja un tendido hasta ahí desde una salida, una caja o la batería, o quítalo del plan.",
    says: (say) => `Ningún tendido lleva corriente a ${say.at} (${looseKinds[say.term("kind")] ?? "cosa"}).`,
  },
  "run-carries-nothing": {
    title: "Todo tendido lleva un circuito",
    why: "Un cable por el que no viene ningún circuito está dibujado desde otro lugar, o no hace falta.",
    mend: "Revisa los dos lugares que une el tendido, y las salidas que pone en `carries`.",
    says: (say) => `Por ${say.at} no viene ningún circuito: donde empieza no llega nada que pueda llevar.`,
  },
  "way-unclear": {
    title: "Está claro qué salida alimenta qué",
    why: "Donde a una caja llegan varias salidas, un tendido que sale de ella debe decir cuál toma.",
    mend: "Nombra la salida donde empieza el tendido (`fore box / lamps`) o en `carries`.",
    says: (say) => `${say.at} podría tomar cualquiera de estas: ${say.others}; el plan no dice cuál.`,
  },
  "two-circuits": {
    title: "Un aparato cuelga de un solo circuito",
    why: "Con dos alimentaciones, quitar un fusible deja el aparato con corriente, y un fallo en un circuito se alimenta por el otro.",
    mend: "Quita uno de los dos tendidos.",
    says: (say) => `${say.at} se alimenta de ${say.others} a la vez.`,
  },
  "converter-loop": {
    title: "Ningún convertidor se alimenta a sí mismo",
    why: "Un convertidor cuya entrada cuelga de su propia salida, directamente o a través de otros, no arranca nunca.",
    mend: "Alimenta el primer convertidor desde una batería.",
    says: (say) => `La entrada de ${say.at} lleva de vuelta a su propia salida (${say.all}).`,
  },
  "converter-overloaded": {
    title: "Un convertidor da lo que se le pide",
    why: "Por encima de su límite, un convertidor baja su tensión o se apaga, y con él todos sus aparatos.",
    mend: "Un convertidor mayor, o algún aparato en otra alimentación, o pon los aparatos en un grupo de `one at a time`.",
    says: (say) => `A ${say.at} se le piden ${say.figure} ${say.when}; puede dar ${say.limit}.`,
  },
  "converter-input": {
    title: "La entrada de un convertidor se mantiene en su margen",
    why: "Por debajo de su tensión mínima un convertidor se apaga; por encima de la máxima se destruye.",
    mend: "Conductores más gruesos delante de él si la tensión es demasiado baja; un convertidor de margen más amplio si es demasiado alta.",
    says: (say) =>
      say.term("side") === "over"
        ? `A la entrada de ${say.at} llegan ${say.figure} ${say.when}; no aguanta más de ${say.limit}.`
        : `A la entrada de ${say.at} solo llegan ${say.figure} ${say.when}; necesita ${say.limit} y se apaga.`,
  },
  "outing-reserve": {
    title: "Una salida al agua acaba por encima de la reserva",
    why: "La reserva es para el día que sale mal: una bomba que tiene que funcionar, una luz que hay que llevar, un remolque que llega tarde.",
    mend: "Una batería mayor, menos cosas encendidas, una salida más corta, o cargar por el camino.",
    says: (say) =>
      `En la salida al agua «${say.at}», ${say.others} baja de su reserva del ${say.step("reserve kept")} al cabo de ${say.figure}; la salida dura ${say.limit} y acaba con el ${say.step("charge left")}.`,
  },
  "outing-cut-off": {
    title: "Ninguna batería se agota durante una salida al agua",
    why: "Al llegar a su corte, la batería o su electrónica se para: todo lo que cuelga de ella se queda sin corriente de golpe.",
    mend: "Una batería mayor, menos cosas encendidas, una salida más corta, o cargar por el camino.",
    says: (say) =>
      `En la salida al agua «${say.at}», ${say.others} se para al cabo de ${say.figure}, de ${say.limit} en total: a esta temperatura y edad puede dar ${say.step("usable")}.`,
  },
  "outing-brown-out": {
    title: "A nada le falta tensión durante una salida al agua",
    why: "Al vaciarse la batería baja su tensión; el aparato que está al final de un tendido largo es el primero en pararse.",
    mend: "Conductores más gruesos hasta ese aparato, una batería mayor, o un aparato que funcione en un margen más amplio.",
    says: (say) =>
      `En la salida al agua «${say.term("outing")}», ${say.at} baja a ${say.figure} al cabo de ${say.step("after")}; necesita ${say.limit}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
