import type { RuleId } from "../../core/findings/rules.js";
import type { Material } from "../../core/reference/drilling.js";
import { percent } from "../numbers.js";
import type { RuleWords, Say } from "../rule-words.js";

export const holeRules = {
  "fixture-size": {
    title: "Los agujeros se cortan para la pieza que se tiene en la mano",
    why: "Los catálogos redondean. Un agujero demasiado grande ya no se hace pequeño.",
    mend: "Mide el cuerpo con un calibre en varias direcciones y corta para lo que salga.",
    says: (say) =>
      `${say.all}: según la medida, ${say.figure}; según el catálogo, ${say.limit}. Corta a ${say.step("right")}.`,
  },
  "hole-backing": {
    title: "En plancha delgada el apriete se reparte",
    why: "Una tuerca sobre plancha delgada la abolla, se afloja y deja pasar el agua.",
    mend: "Una placa o arandelas grandes por detrás; luego dilo en el plan: «backed».",
    says: (say) =>
      `${say.all}: el apriete caería sobre una plancha de ${say.figure}; con menos de ${say.limit}, una placa por detrás lo reparte.`,
  },
  "hole-depth": {
    title: "Hay sitio detrás",
    why: "La rosca y la tuerca piden fondo, un cable se dobla con holgura y una mano debe sujetar la tuerca.",
    mend: "Ponlo donde haya sitio, o elige uno más corto por detrás.",
    says: (say, { terms }) =>
      terms?.for === "hand"
        ? `Detrás de ${say.all} hay ${say.figure}; una mano en la tuerca necesita ${say.limit}.`
        : `Detrás de ${say.all} hay ${say.figure}; hacen falta ${say.limit}.`,
  },
  "hole-edge": {
    title: "Los agujeros guardan distancia al borde",
    why: "La tira que queda entre el agujero y el borde se raja o se desgarra.",
    mend: "Muévelo hacia dentro.",
    says: (say, { terms }) =>
      `${say.at} está a ${say.figure} ${edges[terms?.by ?? ""] ?? "del borde de su cara"}; ${terms?.kind === "flange over the edge" ? "su pestaña" : "su agujero"} pide ${say.limit} al menos${also(say)}.`,
  },
  "hole-off-face": {
    title: "Lo que está en una cara queda dentro de sus bordes",
    why: "Fuera no hay nada que taladrar.",
    mend: "Cuenta desde el extremo correcto, o haz que la cara llegue más lejos.",
    says: (say, { terms }) =>
      terms?.what === "counted from"
        ? `${say.at} se cuenta desde ${terms.by ?? "un punto"}, que no está en su cara.`
        : `${say.all}: fuera de la cara.`,
  },
  "hole-reach": {
    title: "Se llega por detrás a todos los agujeros",
    why: "Alguien tiene que poner la tuerca, y quitarla dentro de diez años.",
    mend: "Otra abertura, u otro lugar. Apunta hasta dónde llega por ella tu propio brazo.",
    says: (say, { terms, figure }) =>
      figure === undefined
        ? `Ninguna abertura lleva hasta detrás de ${say.all}.`
        : `La parte de atrás de ${say.at} está a ${say.figure} de ${terms?.by ?? "la abertura más cercana"}; un brazo llega a ${say.limit}${also(say)}.`,
  },
  "hole-spacing": {
    title: "Los agujeros guardan distancia entre sí",
    why: "Lo que queda entre dos agujeros no aguanta nada, y una pestaña no asienta sobre otra.",
    mend: "Sepáralos.",
    says: (say, { terms }) =>
      `${say.at} está a ${say.figure} de ${terms?.by ?? "lo que tiene al lado"}, de centro a centro; ${terms?.kind === "flanges overlap" ? "sus pestañas" : "sus agujeros"} piden ${say.limit} al menos.`,
  },
  "hole-unknown": {
    title: "Se sabe lo que hace falta para juzgar un agujero",
    why: "Sin tamaño, plancha o regla no se puede decir nada de sus distancias ni de su herramienta. No es lo mismo que estar bien.",
    mend: "Añádelo al plan.",
    says: (say, { terms }) => `Para ${say.all} no se conoce ${missing(terms?.what)}.`,
    unchecked: (say, { terms }) =>
      `No se ${say.many ? "pudieron juzgar los agujeros" : "pudo juzgar el agujero"} de ${say.all}: no se conoce ${missing(terms?.what)}.`,
  },
  "hole-zone": {
    title: "No se taladra donde hay algo",
    why: "Una costura taladrada hace agua para siempre, una cuaderna pierde fuerza, y una broca en el depósito de combustible es el fin del día.",
    mend: "Apártalo de la zona, con pestaña y todo.",
    says: (say, { terms }) =>
      terms?.kind === "flange over a zone"
        ? `La pestaña de ${say.at} pisa ${terms.by ?? "una zona"}: hay ${say.figure} desde su centro, y ${say.limit} la dejarían libre${also(say)}.`
        : `${say.at} se taladraría en ${terms?.by ?? "una zona"}${also(say)}.`,
  },
  "pull-passes": {
    title: "Lo que se pasa por un agujero cabe por él",
    why: "Si no, se descubre con el cable dentro y el enchufe fuera.",
    mend: "Pasa primero lo más grueso, sin su enchufe, o corta el agujero más grande.",
    says: (say, { terms, figure, limit }) =>
      terms?.what === "fill"
        ? `Los cables llenarían un ${share(figure)} de ${say.at}; un ${share(limit)} es lo más con que aún se puede tirar de ellos.`
        : `La punta de ${say.at} mide ${say.figure} de ancho, con cinta y nudo; en ${terms?.by ?? "el agujero"} quedan libres ${say.limit}.`,
    unchecked: (say) =>
      `No se juzgó lo que debe pasar por ${say.many ? "los agujeros" : "el agujero"} de ${say.all}: di en «passes» cuánto mide.`,
  },
  "row-fit": {
    title: "En una fila caben todas sus piezas",
    why: "Apretadas quedan desiguales, y se ve mientras dure el barco.",
    mend: "Menos piezas, márgenes más cortos o una fila más larga.",
    says: (say) => `La fila de ${say.at} tiene ${say.figure}; necesita ${say.limit}.`,
  },
  "sealant-bond": {
    title: "El sellador se usa donde agarra",
    why: "El sellador corriente, sobre todo la silicona, se posa sobre plásticos como el polietileno sin agarrar. En la primera temporada deja pasar el agua.",
    mend: "Una junta bajo la pestaña, o una pieza que apriete por los dos lados.",
    says: (say, { terms }) =>
      `${say.all}: el sellador iría sobre ${materialName(terms?.material) ?? "un plástico"}, con una energía superficial de ${say.figure}; los selladores piden ${say.limit}.`,
  },
  "step-drill-sheet": {
    title: "Las brocas escalonadas cortan solo plancha delgada",
    why: "En plancha más gruesa que un escalón, el siguiente empieza antes de atravesarla: el agujero sale cónico y desgarrado.",
    mend: "Una corona.",
    says: (say) =>
      `Para ${say.all} se pide una broca escalonada en una plancha de ${say.figure}; sus escalones miden ${say.limit}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;

export const floatRules = {
  "float-unknown": {
    title: "Se sabe cuánto pesa el barco",
    why: "Las alturas sobre el agua no sirven de nada si son de un barco distinto del que flota.",
    mend: "Di en «float» cuánto pesan y dónde van el barco vacío, las personas y los pertrechos; de baterías y aparatos, su peso y dónde están.",
    says: (say) => `No se sabe cómo flota el barco para ${say.all}.`,
    unchecked: (say, { at, terms }) =>
      terms?.what === "weights"
        ? `Pesos sin contar, por falta de una cifra o de un lugar: ${at === "hull" ? say.all.replace(/^hull/, "el casco") : say.all}. El barco flota de otro modo que el dicho.`
        : `No se sabe a qué altura sobre el agua ${say.many ? "están" : "está"} ${say.all}: el plan no da ${terms?.what === "form" ? "una forma que se pueda usar" : "pesos en «float»"}.`,
  },
  floats: {
    title: "El barco lleva lo que se pone a bordo",
    why: "Para esto no hay remedio una vez a flote.",
    mend: "Deja cosas en tierra.",
    says: (say) => `Con ${say.figure} a bordo se hunde: lleno hasta la borda lleva ${say.limit}.`,
  },
  "freeboard-low": {
    title: "Un barco abierto tiene la borda bien por encima del agua",
    why: "La primera ola más alta entra, y con ella dentro la siguiente ya no necesita serlo.",
    mend: "Menos peso, o mejor repartido. La placa del barco y su constructor van primero.",
    says: (say, { terms }) =>
      `En reposo la borda está a ${say.figure} sobre el agua en calma, en la estación a ${say.step("station")}; para su eslora hacen falta ${say.limit} al menos${recalled(terms?.known)}.`,
    unchecked: (say) =>
      `En reposo la borda está a ${say.figure} sobre el agua en calma, en la estación a ${say.step("station")}; ninguna regla que se encontró vale para barcos de menos de ${say.limit} de manga.`,
  },
  "hole-low": {
    title: "Los agujeros abiertos están bien por encima del agua",
    why: "Por los desagües entra agua cuando el barco escora o hunde la popa, y la bomba la hace entonces dar vueltas.",
    mend: "Ponlo más alto, o hazle un bucle por encima del agua y una válvula.",
    says: (say, { terms }) =>
      terms?.kind === "heel"
        ? `${say.all}: bajo el agua a ${say.figure} de escora; un agujero abierto debería seguir en seco hasta ${say.limit}${recalled(terms?.known)}.`
        : `${say.all}: a ${say.figure} sobre el agua en calma; un agujero abierto pide ${say.limit} al menos.`,
  },
  "hole-under-water": {
    title: "Lo que está bajo el agua está sellado",
    why: "El barco se llena mientras no hay nadie.",
    mend: "Súbelo, o ciérralo de modo que aguante por sí solo. Nunca taladres por debajo del agua fiándote solo de un plan.",
    says: (say, { level, terms }) =>
      level === "stop"
        ? `${say.all}: a ${say.figure} bajo el agua en calma, ${terms?.water === "not said to be sealed" ? "sin que el plan lo dé por sellado" : "con el agujero abierto"}.`
        : `${say.all}: a ${say.figure} bajo el agua en calma; solo el sellado le cierra el paso.`,
  },
  "stands-upright": {
    title: "El barco se tiene derecho por sí solo",
    why: "Si no, se tumba hacia una banda o da la vuelta del todo.",
    mend: "Los pesos más abajo; las personas, sentadas.",
    says: (say, { unit }) =>
      unit === "°"
        ? `No encuentra reposo antes de ${say.limit} de escora.`
        : `Derecho, su altura metacéntrica es ${say.figure}: así no se tiene.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;

const edges: Readonly<Record<string, string>> = {
  lower: "del borde inferior",
  upper: "del borde superior",
  aft: "del borde de popa",
  fore: "del borde de proa",
};

const materials: Readonly<Record<string, string>> = {
  aluminium: "aluminio",
  steel: "acero",
  polycarbonate: "policarbonato",
  acrylic: "acrílico",
  polyethylene: "polietileno",
  glass: "fibra de vidrio",
  wood: "madera",
  "rigid PVC": "PVC rígido",
  ABS: "ABS",
} satisfies Record<Material, string>;

const materialName = (word: string | undefined) =>
  word === undefined ? undefined : (materials[word] ?? word);

/** What a hole lacks to be judged; the core names it in English, some with the name of a face. */
const missing = (what = "lo necesario") =>
  what
    .replace(/^the size of the hole$/, "el tamaño del agujero")
    .replace(/^the material of /, "el material de ")
    .replace(/^the thickness of /, "el grosor de ")
    .replace(
      /^a rule for the distances of holes in (.+)$/,
      (_, material: string) => `una regla para las distancias de los agujeros en ${materialName(material)}`,
    );
/** Said beside a limit that was not read in its source. */
const recalled = (known: string | undefined) =>
  known === "memory" ? ", un límite citado de memoria: confírmalo antes de fiarte de él" : "";
const share = (of = Number.NaN) => percent(of, 0);
const also = ({ others }: Say) => (others === "" ? "" : `; lo mismo vale para ${others}`);
