import type { RuleId } from "../../core/findings/rules.js";
import { noFigure } from "../numbers.js";
import type { RuleWords, Say } from "../rule-words.js";
import { jointInSpanish } from "./joint-kinds.js";
import { placeIn } from "./trade.js";

const at = (say: Say) => (say.others ? `${say.at} en ${say.others}` : say.at);
const joint = (say: Say) => jointInSpanish(say.term("joint"));
const surroundings = (say: Say) => placeIn(say.term("surroundings"));

export const jointRules = {
  "twisted-joint": {
    title: "Sin capuchones de giro ni hilos retorcidos y encintados",
    why: "Se aflojan con la vibración y chupan agua; la unión se calienta y luego arde o se apaga.",
    mend: "Un empalme engastado y sellado, o un terminal de anillo en un perno.",
    says: (say) => `${at(say)}: unión hecha con un ${joint(say)}, en ${surroundings(say)}.`,
  },
  "joint-unsealed-wet": {
    title: "Las uniones en lo mojado están selladas",
    why: "El agua entra en los hilos y avanza por dentro del aislante; en una temporada la unión está verde.",
    mend: "Un empalme sellado con funda adhesiva, o llevar la unión a una caja seca.",
    says: (say) =>
      `${at(say)}: unión hecha con un ${joint(say)}, que deja entrar el agua, en ${surroundings(say)}.`,
  },
  "joint-in-bilge": {
    title: "No hay uniones en la sentina",
    why: "Donde se queda el agua hasta el mejor sellado falla un día, y falla en la bomba que entonces hace falta.",
    mend: "Sube los hilos por encima del agua más alta y únelos allí.",
    says: (say) => `${at(say)}: la unión (${joint(say)}) está en la sentina.`,
  },
  "solder-only-joint": {
    title: "No es el estaño lo que sujeta una unión",
    why: "El estaño pone rígidos los hilos donde deberían doblarse, y se suelta cuando una sobrecarga lo calienta.",
    mend: "Engástala; el estaño puede añadirse, nunca sustituir al engaste.",
    says: (say) => `${at(say)}: a la unión la sujeta solo el estaño (${joint(say)}).`,
  },
  "tap-joint": {
    title: "Las derivaciones llevan poco y están en seco",
    why: "Un conector de derivación corta el aislante y toca unos pocos hilos; allí se afloja y se corroe.",
    mend: "Corta el conductor y usa un engaste de tres vías, un perno o una barra.",
    says: (say) =>
      say.figure === noFigure
        ? `${at(say)}: unión hecha con un conector de derivación, que toca solo unos pocos hilos.`
        : `${at(say)}: unión hecha con un conector de derivación que lleva ${say.figure}; lo más que admite es ${say.limit}.`,
  },
  "joint-overloaded": {
    title: "Ninguna unión lleva más de lo que admite su clase",
    why: "Clavijas, bornes y terminales planos se tocan en puntos pequeños; por encima de su límite se calientan y sus muelles se ablandan.",
    mend: "Un terminal de anillo engastado en un perno, o una unión hecha para esa corriente.",
    says: (say) => `${at(say)}: ${say.figure} pasan por un ${joint(say)}, que admite ${say.limit}.`,
  },
  "push-on-tab": {
    title: "Los terminales planos enchufables se vigilan",
    why: "Se sujetan por rozamiento. La vibración y la corrosión los van sacando, un invierno tras otro.",
    mend: "Un terminal de anillo bajo un tornillo si el aparato lo tiene; si no, un terminal apretado y aislado, y una mirada cada temporada.",
    says: (say) => `${at(say)}: acaba en un terminal plano enchufable, que puede soltarse con las sacudidas.`,
  },
  "battery-terminal-spring": {
    title: "Las conexiones de la batería van atornilladas",
    why: "Una pinza o un enchufe en un borne suelta chispas al moverse, junto a una batería que puede desprender gas.",
    mend: "Un terminal de anillo bajo una tuerca, con arandela de seguridad.",
    says: (say) =>
      `${at(say)}: lo sujeta solo la presión de un ${joint(say)}; en una batería la unión debería ir atornillada.`,
  },
  "terminals-per-stud": {
    title: "Un perno no lleva más de lo que puede apretar",
    why: "En un perno lleno al anillo de arriba le quedan dos vueltas de rosca; los de abajo se aflojan cuando todo se asienta.",
    mend: "Una barra con más pernos, alimentada por un solo conductor corto.",
    says: (say) =>
      `${say.at} tendría ${say.figure} terminales en un perno; lo más que admite es ${say.limit}.`,
  },
  "bare-live-posts": {
    title: "Los bornes con tensión están cubiertos",
    why: "Una llave caída entre dos bornes desnudos se suelda a ellos, se pone al rojo y salpica metal.",
    mend: "Capuchones en los bornes, o una tapa sobre todo.",
    says: (say) => `Las partes con tensión de ${say.at} no están cubiertas.`,
    unchecked: (say) => `El plan no dice si están cubiertas las partes con tensión de ${say.all}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
