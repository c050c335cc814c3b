import type { RuleId } from "../../core/findings/rules.js";
import type { RuleWords } from "../rule-words.js";
import { deviceKinds } from "./devices.js";

const metals: Readonly<Record<string, string>> = { aluminium: "aluminio", steel: "acero" };

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
    mend: "Un extractor que funcione unos minutos antes de arrancar o encender nada ahí, con el conducto abajo; ninguno si el hueco está abierto al aire.",
    says: (say) =>
      `Hay gasolina a bordo y un hueco de motor (${say.all}), y el plan no tiene extractor: si ese hueco no está abierto al aire, primero hay que limpiarlo de vapores.`,
  },
  "navigation-lights-way": {
    title: "Las luces de navegación tienen una salida para ellas solas",
    why: "Una toma mojada o una lámpara en cortocircuito no debe apagar las luces por las que otros gobiernan.",
    mend: "Dales una salida propia.",
    says: (say) => `Las luces de navegación comparten ${say.at} con ${say.others}.`,
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
