import type { RuleId } from "../../core/findings/rules.js";
import type { RuleWords, Say } from "../rule-words.js";
import { chemistryIn } from "./trade.js";

/** A term that holds a chemistry, in words. */
const chemistry = (say: Say, term = "chemistry") => chemistryIn(say.term(term));

const unlike: Readonly<Record<string, string>> = { capacity: "capacidad", age: "edad" };

export const batteryRules = {
  "battery-current": {
    title: "El consumo no pasa de lo que la batería puede dar",
    why: "Si se supera, la electrónica de una batería de litio la desconecta y el barco queda a oscuras; en una de plomo la tensión se hunde y la batería envejece.",
    mend: "Una batería que admita más corriente, o aparatos en grupos que funcionan por turno (`one at a time`).",
    says: (say) => `La corriente que se pide a ${say.at} es de ${say.figure}; su máximo es de ${say.limit}.`,
    unchecked: (say) =>
      `El plan no dice la corriente máxima de ${say.at}; en algún punto su electrónica la cortará.`,
  },
  "motor-and-electronics": {
    title: "El motor y los instrumentos tienen cada uno su batería",
    why: "Cada tirón del motor baja la tensión y los instrumentos se reinician; si el motor agota la batería, uno se queda sin luces.",
    mend: "Una batería pequeña para instrumentos y luces, o un convertidor que les mantenga la tensión.",
    says: (say) => `El motor y los instrumentos cuelgan de una misma batería, ${say.at}: ${say.others}.`,
  },
  "parallel-chemistry": {
    title: "El litio y el plomo no se conectan en paralelo",
    why: "Sus tensiones nunca coinciden: una carga sin parar a la otra, con corrientes que nada limita.",
    mend: "Sepáralas, con un cargador o un convertidor en medio si una debe cargar a la otra.",
    says: (say) =>
      `${say.at} (${chemistry(say, "one")}) está en paralelo con ${say.others} (${chemistry(say, "other")}).`,
  },
  "parallel-voltage": {
    title: "Las baterías en paralelo tienen la misma tensión",
    why: "La de más tensión empuja cientos de amperios hacia la otra en cuanto se unen.",
    mend: "No las unas nunca.",
    says: (say) =>
      `${say.at} está en paralelo con ${say.others} y sus tensiones difieren en ${say.figure}: entre las dos pasarían unos ${say.step("I between them")}.`,
  },
  "parallel-unlike": {
    title: "Las baterías en paralelo son iguales",
    why: "La más débil es siempre la primera en vaciarse y la última en llenarse, y arrastra a la otra.",
    mend: "Dos de la misma clase, capacidad y edad, compradas juntas.",
    says: (say) => {
      const what = say.term("what");
      if (what === "kind")
        return `${say.at} está en paralelo con ${say.others} y no son de la misma clase (${chemistry(say, "one")}, ${chemistry(say, "other")}).`;
      return `${say.at} está en paralelo con ${say.others}; su diferencia de ${unlike[what] ?? what} es de ${say.figure} y lo máximo es ${say.limit}.`;
    },
  },
  "battery-loose": {
    title: "Las baterías van sujetas",
    why: "Si el barco vuelca, o en el remolque, una batería suelta es un martillo, y sus bornes dan con metal.",
    mend: "Una correa o un soporte, con un reborde alrededor de toda la base.",
    says: (say) =>
      `${say.at} está ${say.term("fixed") === "tray" ? "en una bandeja sin nada por encima" : "sin sujetar"}; al tirar con fuerza no debería moverse más de ${say.limit}.`,
    unchecked: (say) => `El plan no dice cómo se sujeta ${say.at}.`,
  },
  "battery-vent": {
    title: "El gas de una batería de plomo tiene salida",
    why: "Al cargar se forma hidrógeno. En una caja cerrada se acumula hasta que algo suelta una chispa. Las selladas también lo desprenden si se sobrecargan.",
    mend: "Aberturas abajo y arriba en la caja de la batería, que den al aire libre.",
    says: (say) => `${say.at} (${chemistry(say)}) está sin ventilación.`,
    unchecked: (say) => `El plan no dice si ${say.at} (${chemistry(say)}) tiene ventilación.`,
  },
  "battery-near-fuel": {
    title: "Las piezas metálicas del combustible están lejos de las baterías",
    why: "Una herramienta que toca a la vez un borne y un tubo de combustible hace la chispa y el agujero en el mismo sitio.",
    mend: "Mueve una de las dos cosas, o pon en medio una pantalla aislante.",
    says: (say) =>
      `Una pieza metálica del combustible está a ${say.figure} por encima de ${say.at}; a menos de ${say.limit} debe llevar una pantalla.`,
    unchecked: (say) =>
      `Hay gasolina a bordo, y el plan no dice a qué distancia de ${say.at} hay piezas metálicas del combustible.`,
  },
  "deep-discharge": {
    title: "La reserva cuida la batería",
    why: "Una de plomo que se vacía a menudo por debajo de la mitad dura unas decenas de salidas al agua; una de litio apurada hasta que se corta no deja nada para volver.",
    mend: "Deja más reserva, o pon una batería mayor.",
    says: (say) =>
      `${say.at} (${chemistry(say)}) guarda una reserva de ${say.figure}; con ${say.limit} se cuidaría.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;

export const chargingRules = {
  "charger-unprotected": {
    title: "El cable de un cargador está protegido",
    why: "El cargador no es el peligro; lo es la batería al otro extremo de su cable. Si el roce lo pela, pasa por él todo lo que ella puede dar.",
    mend: "Un fusible cerca de la batería, del calibre que conviene al cable.",
    says: (say) =>
      say.term("from") === "battery"
        ? `Falta un fusible en ${say.at}, y la batería de su extremo puede dar ${say.figure} en un cortocircuito.`
        : `Falta un fusible en ${say.at}, y el cargador (${say.others}) no limita su propia corriente.`,
  },
  "cold-charging": {
    title: "El litio hierro fosfato no se carga bajo cero",
    why: "Si se carga en frío, se deposita metal dentro de las celdas. La batería pierde capacidad para siempre y puede ponerse en cortocircuito por dentro.",
    mend: "Un cargador, o una electrónica de la batería, que pare a tiempo; o calentar antes la batería.",
    says: (say) =>
      `${say.at} sigue con la carga de ${say.others} hasta ${say.figure}; debería detenerla a ${say.limit}.`,
    unchecked: (say) =>
      `El aire puede estar a ${say.step("coldest air")}, y el plan no dice si ${say.at} detiene la carga de ${say.others} por debajo de ${say.limit}.`,
  },
  "absorption-voltage": {
    title: "La tensión de un cargador conviene a la batería",
    why: "Demasiado alta, el plomo desprende gas y se seca, y la electrónica del litio corta; demasiado baja, la batería no se llena nunca.",
    mend: "Ajusta el cargador a la clase de batería, con la cifra que da el fabricante de la batería.",
    says: (say) =>
      say.term("side") === "over"
        ? `${say.at} carga ${say.others} (${chemistry(say)}) a ${say.figure}; lo más que debería recibir es ${say.limit}.`
        : `${say.at} carga ${say.others} (${chemistry(say)}) a ${say.figure}; para llenarse necesita ${say.limit}.`,
  },
  "charger-too-big": {
    title: "Un cargador no da más de lo que la batería admite",
    why: "Una batería de plomo cargada demasiado deprisa hierve y sus placas se deforman; a una de litio la para su electrónica.",
    mend: "Un cargador menor, un ajuste de menos corriente o una batería mayor.",
    says: (say) =>
      `${say.at} puede meter ${say.figure} en ${say.others} (${chemistry(say)}); lo más que le conviene es ${say.limit}.`,
    unchecked: (say) =>
      `El plan no dice cuánto da ${say.at}; lo más que admite ${say.others} es ${say.limit}.`,
  },
  "slow-charging": {
    title: "La batería está llena otra vez antes de la siguiente salida al agua",
    why: "El plomo que pasa días a medio cargar cría cristales que ya no se disuelven.",
    mend: "Un cargador más potente, un panel solar mayor, o un día más entre una salida y otra.",
    says: (say) =>
      say.term("why") === "too cold"
        ? `Con el frío de la salida al agua, ${say.at} no carga ${say.others}.`
        : `${say.at} tarda ${say.figure} en llenar ${say.others} después de la salida al agua más larga.`,
    unchecked: (say) =>
      `No se pudo calcular cuánto tarda ${say.at} en llenar ${say.others}: el plan no dice cuánto da.`,
  },
  "charger-missing": {
    title: "Toda batería tiene con qué cargarse",
    why: "Una batería que se lleva a casa de vez en cuando se carga tarde, y una que no se carga nunca muere en una temporada.",
    mend: "Añade el cargador que usas, también si se queda en tierra: su tensión cuenta.",
    says: (say) => `Nada en el plan carga ${say.at}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
