import type { ScreenWords } from "../en.js";

export const walk: ScreenWords["walk"] = {
  title: "Una vuelta por la página",
  start: "Enséñame la página",
  step: (no, of) => `${no} de ${of}`,
  next: "Siguiente",
  before: "Atrás",
  leave: "Dejarlo",
  done: "Listo",
  notes: {
    ledger:
      "Esta línea está siempre a la vista: cuánto dura la batería, dónde se pierde más tensión y qué se encontró. Toca una cifra para ver de dónde sale.",
    stages:
      "Son las etapas del trabajo, de la toma de medidas al diario. Ve a cualquiera cuando quieras; ninguna tiene que estar acabada antes.",
    boat: "El barco a escala. Toca una pieza para abrir su ficha, arrástrala a otro lugar: todas las cifras la siguen.",
    slip: "La ficha dice lo que está escrito de una cosa, lo que se supuso y lo que se calculó. Cambia aquí un valor y mira la línea de arriba.",
    findings:
      "Lo que está mal, con cifra, límite y fuente; lo que podría mejorar; y lo que no se pudo comprobar, que nunca es lo mismo que bien.",
    keeping:
      "Cada cambio se guarda en este navegador al momento y se puede deshacer, incluso mañana. En Herramientas guardas una copia en un archivo. Ahora cambia lo que quieras: este barco es tuyo para probar.",
  },
};
