import type { RuleId } from "../../core/findings/rules.js";
import { engineSpaceAir as blower } from "../../core/reference/engine-space-air.js";
import type { RuleWords } from "../rule-words.js";
import { deviceKinds } from "./devices.js";

const metals: Readonly<Record<string, string>> = { aluminium: "aluminio", steel: "acero" };

const lackedLights: Readonly<Record<string, string>> = {
  sidelights: "las luces de costado",
  "stern light": "las luces de alcance",
};

export const layoutRules = {
  "ignition-protection": {
    title: "Nada que haga chispas está donde se junta vapor de gasolina",
    why: "El vapor se queda abajo y quieto. Basta un interruptor o un fusible que se abra dentro de él.",
    mend: "Sácalo de ese espacio, o usa uno que su fabricante marque como protegido contra la ignición.",
    says: (say) =>
      `El ${deviceKinds[say.term("kind")] ?? "dispositivo"} de ${say.at} está en el compartimento del motor y no tiene protección contra la ignición.`,
    unchecked: (say) =>
      `${say.all} ${say.many ? "están" : "está"} en un compartimento del motor, y el plan no dice que ${say.many ? "tengan" : "tenga"} protección contra la ignición, ni que no haya gasolina a bordo.`,
  },
  "live-pump-behind-master": {
    title: "Una bomba con flotador nunca se queda sin corriente",
    why: "Uno corta el interruptor general y se va a casa. Llueve. El flotador sube y no pasa nada.",
    mend: "Toma su salida antes del interruptor general del cuadro, y su alimentación antes del de la batería, con un fusible propio.",
    says: (say) =>
      `${say.at} arranca por su flotador, pero se queda sin corriente con el interruptor general de ${say.others}.`,
  },
  "float-pump-switched": {
    title: "Ningún interruptor corriente va delante de una bomba con flotador",
    why: "Estará apagado el día que haga falta.",
    mend: "Quita el interruptor, o usa uno que solo elija entre flotador y a mano.",
    says: (say) =>
      `${say.at} arranca por su flotador, pero el interruptor de ${say.others} puede cortarle la corriente.`,
  },
  "float-pump-way": {
    title: "Una bomba con flotador tiene una salida para ella sola",
    why: "Una toma mojada o una lámpara en cortocircuito funde el fusible que comparten, y el barco se llena de agua en su amarre.",
    mend: "Da a la bomba una salida propia, o pasa lo demás a otra.",
    says: (say) => `La bomba con flotador de ${say.at} comparte esa salida con ${say.others}.`,
  },
  "bilge-pump-by-hand": {
    title: "Una bomba de achique arranca sola",
    why: "Nadie vigila la sentina mientras gobierna, y en el amarre no hay nadie.",
    mend: "Un interruptor de flotador, en una salida siempre viva.",
    says: (say) => `${say.at} solo funciona si se enciende a mano.`,
  },
  "blower-missing": {
    title: "El hueco del motor se limpia de vapores de gasolina",
    why: "El vapor de gasolina pesa más que el aire y se queda en un hueco cerrado hasta que lo encuentra una chispa.",
    mend: `Un extractor que funcione ${blower.minutes} minutos antes de arrancar o encender nada ahí, con el conducto abajo, y un letrero que lo diga junto al arranque. La norma de EE. UU. lo pide donde un motor de gasolina fijo con arranque eléctrico está en un hueco que no es abierto: abierto son ${blower.openIn2PerFt3} pulgadas cuadradas de abertura por cada pie cúbico (${blower.openM2PerM3} m² por cada m³). Ninguna chispa antes de oler la sentina, con extractor o sin él.`,
    says: (say) =>
      `Hay gasolina a bordo y un hueco de motor (${say.all}), y el plan no tiene extractor: si ahí va fijo un motor de gasolina con arranque eléctrico, el hueco tiene que estar abierto al aire o llevar uno.`,
  },
  "navigation-lights-way": {
    title: "Las luces de navegación tienen una salida para ellas solas",
    why: "Una toma mojada o una lámpara en cortocircuito no debe apagar las luces por las que otros gobiernan.",
    mend: "Dales una salida propia.",
    says: (say) => `Las luces de navegación comparten ${say.at} con ${say.others}.`,
  },
  "navigation-lights-set": {
    title: "Las luces de navegación son las de un barco así",
    why: "De noche los demás saben por tus luces qué eres, hacia dónde vas y quién cede el paso. Una luz de menos, o de otra clase, les engaña.",
    mend: "A motor: luz de tope, de costado y de alcance; con menos de 12 m bastan una blanca todo horizonte y las de costado; con menos de 7 m y no más de 7 nudos, la todo horizonte sola, con las de costado si es posible. A vela: de costado y de alcance, sin la de tope; con menos de 7 m si es posible, y si no una linterna a mano y a tiempo. A remo: esas, o una linterna. Las normas locales pueden pedir más.",
    says: (say) =>
      say.term("moved") === "sail"
        ? `De las luces de un velero no están ${lackedLights[say.term("lacks")] ?? ""}: de navegación el plan tiene ${say.all}.`
        : say.term("lacks") === "white light"
          ? `A motor le falta una luz de tope, o la blanca todo horizonte que puede hacer sus veces: de navegación el plan tiene ${say.all}.`
          : `Para ir a motor no están ${lackedLights[say.term("lacks")] ?? ""}: de navegación el plan tiene ${say.all}${say.term("lacks") === "sidelights" ? ". Solo con menos de 7 m, no más de 7 nudos y donde no quepan las de costado puede ir sola la todo horizonte" : ""}.`,
    unchecked: (say) =>
      say.term("untold") === "light"
        ? `El nombre de ${say.at} no dice qué luz es: de costado, de alcance, de tope o todo horizonte. No se sabe si están todas.`
        : say.term("untold") === "length"
          ? "No se dice la eslora: no se sabe qué luces debe llevar navegando."
          : "Ni los aparatos, ni la gasolina, ni la clase de barco dicen si lo mueven remos, velas o un motor: no se sabe qué luces debe llevar navegando.",
  },
  "navigation-lights-height": {
    title: "La luz blanca va por encima de las de costado",
    why: "De frente se distinguen por su altura; demasiado juntas se confunden en una.",
    mend: "Súbela, en un palo si hace falta, hasta que quede al menos 1 m por encima de las de costado y despejada todo alrededor.",
    says: (say) =>
      `${say.at} queda ${say.figure} por encima de ${say.others}; a motor, con menos de 12 m de eslora, lo mínimo es ${say.limit}.`,
    unchecked: (say) =>
      `No se dice a qué altura ${say.many ? "van" : "va"} ${say.all}: no se sabe si la luz blanca queda al menos 1 m por encima de las de costado.`,
  },
  "way-empty": {
    title: "Toda salida alimenta algo, o se llama «spare»",
    why: "Una salida con nombre y sin consumo suele ser un tendido que se olvidó dibujar.",
    mend: "Dibuja el tendido, o pon `spare` (libre) en el nombre de la salida.",
    says: (say) => `${say.at} no alimenta nada.`,
  },
  "metal-hull": {
    title: "Un barco de metal se mantiene fuera del circuito",
    why: "La corriente que se escapa de un cable rozado o de una unión mojada se come el casco, o el del vecino, bajo el agua.",
    mend: "Ida y vuelta aisladas en todas partes, ningún negativo atornillado al casco, grapas que no retengan agua, y un repaso con el polímetro cada temporada.",
    says: (say) =>
      `El casco es de ${metals[say.term("hull")] ?? say.term("hull")}: ningún conductor puede tocarlo y ningún negativo va atornillado a él${say.others ? `; a través de ${say.others}, con la toma de puerto conectada, puede circular corriente por el agua: pregunta a un profesional con licencia cómo aislarlo` : ""}.`,
  },
  "master-missing": {
    title: "La batería se puede cortar a mano",
    why: "Cuando echa humo, uno quiere un solo interruptor, y encontrarlo a oscuras.",
    mend: "Un interruptor general cerca de la batería o en el cuadro, con la bomba de flotador tomada antes de él.",
    says: (say) => `Ningún interruptor separa ${say.others} de ${say.at}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
