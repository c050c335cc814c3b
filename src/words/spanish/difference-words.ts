import type { FaceName } from "../../core/plan/model/layout.js";
import type { Place } from "../../core/plan/model/placing.js";
import type { Shows } from "../../core/plan/model/plan.js";
import type { Difference } from "../../core/work/differences.js";
import type { TickProblem } from "../../core/work/ticks.js";
import type { RecordWords } from "../difference-words.js";
import { boreWords } from "../hull-words.js";
import { lengthWords, marked } from "../numbers.js";
import { boxes } from "../screen/es/boxes.js";
import { jointInSpanish } from "./joint-kinds.js";
import { sideIn } from "./trade.js";
import { reasonWords } from "./work-reasons.js";

/** One difference between what was built and what the plan wants, as a sentence in Spanish. */
export function differenceInSpanish(difference: Difference, shows: Shows): string {
  const length = (m: number) => lengthWords(Math.abs(m), shows);
  switch (difference.kind) {
    case "hole moved":
      return `El agujero de ${difference.built.hole} está hecho; el plan lo quiere ahora ${moved(difference, length)}.`;
    case "hole not compared":
      return `El agujero de ${difference.built.hole} está hecho a ${placeWords(difference.built.at, shows)}; no se comprobó si es donde lo quiere el plan, porque los dos sitios se cuentan desde puntos distintos.`;
    case "hole on another face":
      return `El agujero de ${difference.built.hole} está hecho en ${difference.built.on} (${sideIn(difference.built.side)}); el plan lo quiere ahora en ${difference.wanted.on} (${sideIn(difference.wanted.side)}).`;
    case "hole size":
      return `El agujero de ${difference.built.hole} mide ${boreWords(difference.built.sizeM * 1000)}; el plan pide ahora ${boreWords(difference.wantedM * 1000)}${difference.byM < 0 ? ", menos que el que hay" : ""}.`;
    case "hole not wanted":
      return `En ${difference.built.on} hay un agujero de ${boreWords(difference.built.sizeM * 1000)} para ${difference.built.hole}, y el plan ya no lo tiene. Hay que taparlo o usarlo.`;
    case "entry moved":
      return `La entrada de ${difference.built.run} en ${difference.built.box} está ${boxPlace(difference.built.on, difference.built.atM)}; el plan la quiere ahora ${difference.wanted.on === undefined || difference.wanted.atM === undefined ? "en otro sitio" : boxPlace(difference.wanted.on, difference.wanted.atM)}.`;
    case "entry size":
      return `La entrada de ${difference.built.run} en ${difference.built.box} mide ${boreWords(difference.built.holeM * 1000)}; el plan pide ahora ${boreWords(difference.wantedM * 1000)}.`;
    case "entry not wanted":
      return `En ${difference.built.box} hay una entrada de ${boreWords(difference.built.holeM * 1000)} para ${difference.built.run}, que ya no llega ahí: ahora es una entrada libre, y hay que ponerle un tapón.`;
    case "length":
      return `El tendido ${difference.built.run} mide ${length(difference.built.lengthM)}; el plan dice ${length(difference.wantedM)}, ${length(difference.byM)} ${difference.byM > 0 ? "más" : "menos"}.`;
    case "conductor size":
      return `El tendido ${difference.built.run} se hizo con ${difference.built.size?.key ?? "otra sección"}; el plan pide ahora ${difference.wanted}.`;
    case "run not wanted":
      return `En el barco hay ${length(difference.built.lengthM)} del tendido ${difference.built.run}, y en el plan ya no hay ninguno que se llame así.`;
    case "joint kind":
      return `La unión de ${difference.built.at}, ${endWords(difference.built.end)}, se hizo con un ${jointInSpanish(difference.built.kind)}; el plan pide ahora un ${jointInSpanish(difference.wanted)}.`;
    case "joint not wanted":
      return `Se hizo una unión con un ${jointInSpanish(difference.built.kind)} en ${difference.built.at}, ${endWords(difference.built.end)}, y en el plan ya no hay nada que se llame así.`;
    case "rating":
      return `El calibre puesto en ${difference.built.device} es de ${marked(difference.built.ratingA, "A")}; el plan pide ahora ${marked(difference.wantedA, "A")}.`;
    case "device not wanted":
      return `Consta un dispositivo de ${marked(difference.built.ratingA, "A")} en ${difference.built.device}, y en el plan ya no hay nada que se llame así.`;
    default:
      return difference satisfies never;
  }
}

/** An end of a run in the order it is written. */
export const endWords = (end: string): string => (end === "start" ? "en su comienzo" : "en su final");

/** `20 mm más allá por el borde y 5 mm más cerca de él`. */
function moved(
  { alongM, offM, byM }: { readonly alongM: number; readonly offM: number; readonly byM: number },
  length: (m: number) => string,
): string {
  const parts = [
    ...(Math.abs(alongM) > 0.0005
      ? [`${length(alongM)} ${alongM > 0 ? "más allá" : "más atrás"} por el borde`]
      : []),
    ...(Math.abs(offM) > 0.0005 ? [`${length(offM)} más ${offM > 0 ? "lejos" : "cerca"} de él`] : []),
  ];
  return parts.length === 0 ? `a ${length(byM)} de ahí` : parts.join(" y ");
}

const edgeSides = { above: "sobre", below: "bajo" } as const;

function placeWords({ alongM, from, edge, offM }: Place, shows: Shows): string {
  const along = `${lengthWords(alongM, shows)} a lo largo${from === undefined ? "" : ` desde ${from}`}`;
  return `${along} y ${lengthWords(offM, shows)} ${edge === undefined ? "hacia dentro" : `${edgeSides[edge.off]} ${edge.line}`}`;
}

const boxPlace = (on: FaceName, [along, base]: readonly [number, number]): string =>
  `en su ${boxes.faces[on]}, a ${boreWords(along * 1000)} de la esquina y ${boreWords(base * 1000)} del fondo`;

/** What is odd about a tick, in Spanish. `title` gives a step's own line, or its id where the plan has none. */
export function tickProblemInSpanish(problem: TickProblem, title: (step: string) => string): string {
  switch (problem.problem) {
    case "out of order": {
      const [first, ...rest] = problem.missing;
      const more =
        rest.length === 0
          ? ""
          : rest.length === 1
            ? ", ni 1 más que va antes"
            : `, ni ${rest.length} más que van antes`;
      return first === undefined
        ? `«${title(problem.step)}» se marcó fuera de orden.`
        : `«${title(problem.step)}» está marcado, pero no «${title(first.step)}» (${reasonWords[first.reason]})${more}.`;
    }
    case "ticked twice":
      return `«${title(problem.step)}» está marcado ${problem.times} veces.`;
    case "not in the plan":
      return `Consta el paso «${problem.step}», y en el plan ya no hay ninguno así. Lo que consta se queda.`;
    default:
      return problem satisfies never;
  }
}

export const recordInSpanish: RecordWords = {
  difference: differenceInSpanish,
  tick: tickProblemInSpanish,
  place: placeWords,
};
