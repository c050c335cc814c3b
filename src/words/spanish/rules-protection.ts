import type { RuleId } from "../../core/findings/rules.js";
import { noFigure } from "../numbers.js";
import type { RuleWords, Say } from "../rule-words.js";
import { conditionWords, deviceKinds, protectionKinds } from "./devices.js";
import { placeIn } from "./trade.js";

/** Without its article: `el`, `El` or `del` stands before it. */
const device = (say: Say) =>
  `${protectionKinds[say.term("device")] ?? say.term("device")} de ${say.term("rating")} de ${say.at}`;
const behind = (say: Say) => (say.term("binds") === noFigure ? "" : ` (${say.term("binds")})`);
const condition = (name: string) => Object.entries(conditionWords).find(([key]) => key === name)?.[1] ?? name;

const unknown = (say: Say) =>
  say.term("binds") === noFigure ? "" : `: no se conoce la sección o el aislamiento de ${say.term("binds")}`;
const opens = (say: Say) =>
  say.figure === noFigure ? "puede no abrirse nunca" : `puede tardar ${say.figure} en abrirse`;

const before: Readonly<Record<string, string>> = {
  "before the main": "antes de su fusible general",
  "straight to gear": "directo a un aparato",
};

export const protectionRules = {
  "protection-carries-load": {
    title: "Un fusible o disyuntor lleva su carga con margen",
    why: "El que trabaja cerca de su calibre envejece, y se abre una tarde de calor sin que haya ningún fallo.",
    mend: "El calibre siguiente mayor, si lo permiten los conductores que hay detrás; si no, conductores más gruesos.",
    says: (say) => `El ${device(say)} lleva ${say.figure}; lo que aguanta durante horas es ${say.limit}.`,
    unchecked: (say) => `No se pudo calcular si el ${device(say)} lleva su carga.`,
  },
  "main-overloaded": {
    title: "El fusible general lleva todo lo que puede estar encendido a la vez",
    why: "Cuando se abre el general, todo el barco queda a oscuras, luces de navegación y bomba de achique incluidas.",
    mend: "Un fusible general mayor, si la alimentación lo permite; o pon aparatos en grupos de `one at a time`.",
    says: (say) =>
      `Todo lo que puede estar encendido a la vez toma ${say.figure} por el ${device(say)}; lo que aguanta durante horas es ${say.limit}.`,
    unchecked: (say) =>
      `No se pudo calcular si el fusible general de ${say.at} lleva todo lo que puede estar encendido a la vez.`,
  },
  "protection-rides-start": {
    title: "Un fusible o disyuntor aguanta el arranque",
    why: "Un motor toma por un momento varias veces su corriente de marcha; un fusible demasiado rápido se funde siempre.",
    mend: "El calibre siguiente mayor, si lo permiten los conductores, o un dispositivo más lento.",
    says: (say) =>
      `El ${device(say)} puede abrirse en ${say.limit} con la corriente de arranque; el arranque dura ${say.figure}.`,
    unchecked: (say) =>
      `No se pudo juzgar si el ${device(say)} aguanta el arranque: no se conoce la corriente de arranque.`,
  },
  "protection-protects-weakest": {
    title: "Un fusible o disyuntor protege el conductor más débil que tiene detrás",
    why: "Un cortocircuito en el cable más fino que hay detrás de un fusible debe fundir el fusible antes de que el cable se ponga al rojo. Los hilos finos de las lámparas también cuentan.",
    mend: "Un calibre menor, un conductor más grueso, o un fusible propio donde empieza el fino.",
    says: (say) =>
      `El ${device(say)} es demasiado grande para el conductor más débil que tiene detrás${behind(say)}: como mucho, ${say.limit}.`,
    unchecked: (say) =>
      `No se pudo juzgar si el ${device(say)} protege todos los conductores que tiene detrás${unknown(say)}.`,
  },
  "protection-gear-limit": {
    title: "Ningún fusible es mayor de lo que permite el fabricante del aparato",
    why: "El límite del fabricante protege los devanados y cables de dentro: una bomba atascada se quema detrás de un fusible demasiado grande.",
    mend: "El calibre que dice el fabricante, o un fusible propio para ese aparato.",
    says: (say) =>
      `El ${device(say)} es mayor de lo que permite el fabricante de ${say.term("binds")}: como mucho, ${say.limit}.`,
    unchecked: (say) =>
      `El plan no dice cuál es el fusible máximo que permite el fabricante de ${say.term("binds")} (${say.at}).`,
  },
  "protection-clears-far-short": {
    title: "Un cortocircuito en el extremo abre el fusible",
    why: "Un tendido largo y fino deja pasar poca corriente a un cortocircuito: el fusible puede quedarse pensándolo mientras el conductor se cuece.",
    mend: "Un calibre menor o un conductor más grueso.",
    says: (say) =>
      `En un cortocircuito en el extremo, el ${device(say)} ${opens(say)}; el conductor${behind(say)} lo aguanta ${say.limit}.`,
    unchecked: (say) =>
      `No se pudo calcular si el ${device(say)} abre un cortocircuito en el extremo${unknown(say)}.`,
  },
  "protection-withstands-short": {
    title: "El conductor resiste lo que deja pasar el fusible",
    why: "Un cortocircuito cerca de la batería es tan fuerte que un conductor fino se funde antes de que se abra el fusible.",
    mend: "Un conductor más grueso justo detrás del dispositivo, un dispositivo más rápido, o un calibre menor.",
    says: (say) =>
      `En un cortocircuito, el ${device(say)} deja pasar ${say.figure}; el conductor que tiene detrás${behind(say)} aguanta ${say.limit}.`,
    unchecked: (say) =>
      `No se pudo calcular si el conductor que hay detrás del ${device(say)} resiste un cortocircuito${unknown(say)}.`,
  },
  "protection-interrupts": {
    title: "Un fusible o disyuntor puede cortar la corriente de cortocircuito de la batería",
    why: "El que no puede sigue ardiendo como un arco, o revienta. Las baterías de litio dan miles de amperios.",
    mend: "Un fusible de una clase con mayor poder de corte, junto a la batería.",
    says: (say) =>
      `La fuente puede dar ${say.figure} en un cortocircuito junto al ${device(say)}, que no corta más de ${say.limit}.`,
    unchecked: (say) =>
      say.limit === noFigure
        ? `No se conoce el poder de corte del ${device(say)}; un cortocircuito ahí puede llegar a ${say.figure}.`
        : `No se pudo juzgar si el ${device(say)} corta un cortocircuito: la resistencia interna de la batería es solo supuesta (calculado: ${say.figure}; corta ${say.limit}).`,
  },
  "protection-near-source": {
    title: "Un fusible o disyuntor está cerca de la fuente",
    why: "El conductor que hay entre la batería y su fusible no tiene ninguna protección.",
    mend: "Acércalo, o lleva el conductor que tiene delante en una funda o un tubo donde las normas permitan más.",
    says: (say) => `El ${device(say)} está a ${say.figure} de la fuente; como mucho, ${say.limit}.`,
    unchecked: (say) =>
      `El plan no dice a qué distancia de la fuente está el ${device(say)}; como mucho, ${say.limit}.`,
  },
  "protection-before-main": {
    title: "El fusible de una salida se abre antes que el general",
    why: "Un fallo en una lámpara debe costar una lámpara, no todo el barco.",
    mend: "Un calibre menor en la salida, o un fusible general mayor si sus conductores lo permiten.",
    says: (say) =>
      `En un fallo detrás del ${device(say)}, este ${opens(say)}, y ${say.term("binds")} puede haberse abierto a los ${say.limit}.`,
    unchecked: (say) => `No se pudo juzgar si el ${device(say)} se abre antes que el fusible general.`,
  },
  "protection-conflict": {
    title: "Algún calibre normalizado cumple todas las condiciones",
    why: "Donde la carga pide más de lo que permite el cable más fino, ningún fusible puede ser el bueno.",
    mend: "Conductores más gruesos, un fusible propio para la parte fina, o la carga repartida entre dos salidas.",
    says: (say) =>
      `Ningún calibre normalizado vale para ${say.at}: «${condition(say.term("first"))}» choca con «${condition(say.term("second"))}».`,
  },
  "protection-missing-at-battery": {
    title: "Lo que sale de una batería está protegido",
    why: "Sin eso, a cualquier cable rozado le llega todo lo que la batería puede dar. Así se queman los barcos en el amarre.",
    mend: "Un fusible o disyuntor general en el borne positivo, antes que cualquier otra cosa.",
    says: (say) =>
      `${say.at} no tiene fusible general, y nada más protege ${say.others}: un cortocircuito puede llegar a ${say.figure}.`,
  },
  "protection-missing-on-run": {
    title: "Un tendido que no pasa por el fusible general tiene su propio fusible",
    why: "Tomado antes del general, no lo protege nada; llevado directo a un aparato, solo tiene un general pensado para todo el barco.",
    mend: "Un fusible en línea cerca de la batería.",
    says: (say) =>
      `${say.at} sale de ${say.others} ${before[say.term("where")] ?? say.term("where")} sin fusible propio; un cortocircuito puede llegar a ${say.figure}.`,
  },
  "protection-missing-on-way": {
    title: "Toda salida tiene un fusible o disyuntor",
    why: "Sin él, un fallo en esta salida tiene que fundir el general y dejar el barco a oscuras.",
    mend: "Un fusible del calibre calculado para la salida.",
    says: (say) => `${say.at} no tiene fusible ni disyuntor; alimenta ${say.others}.`,
  },
  "switch-overloaded": {
    title: "Un interruptor está hecho para la corriente que pasa por él",
    why: "Los contactos demasiado pequeños se pican, se calientan y se sueldan: entonces el interruptor ya no corta.",
    mend: "Un interruptor de mayor calibre en corriente continua, o un relé.",
    says: (say) =>
      `Por el interruptor de ${say.at} pasa una corriente de ${say.figure}; está hecho para ${say.limit}.`,
    unchecked: (say) =>
      `El plan no dice para qué corriente ${say.many ? "están hechos los interruptores" : "está hecho el interruptor"} de ${say.all}.`,
  },
  "device-in-wet": {
    title: "Los fusibles e interruptores van en un lugar seco",
    why: "La sal hace puente entre sus contactos, y la corrosión afloja el fusible hasta que se calienta y derrite su portafusible.",
    mend: "Llévalo a un lugar seco, o usa uno hecho para lo mojado, con su propia junta.",
    says: (say) =>
      `El ${deviceKinds[say.term("kind")] ?? "dispositivo"} de ${say.at} está en ${placeIn(say.term("surroundings"))}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
