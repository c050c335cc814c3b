import type { ScreenWords } from "../en.js";

export const start: ScreenWords["start"] = {
  title: "Planifica la instalación de 12 V o 24 V de tu barco",
  lead: "Todo se calcula y se guarda en este navegador. No se envía nada a ninguna parte.",
  kept: "Planes guardados aquí",
  noneKept: "Todavía ninguno. Empieza un plan, abre un archivo o mira un ejemplo.",
  newPlan: "Plan nuevo",
  newPlanHint: "Unas preguntas y ya tienes un plan con el que empezar.",
  openFile: "Abrir un archivo",
  openFileHint: "Un plan (.yaml) de este dispositivo.",
  examples: "Ejemplos",
  examplesHint: "Barcos inventados; cambia lo que quieras, tu copia queda aparte.",
  exampleKinds: {
    tender: "Bote de remos, 3 m: cuatro lámparas y una batería",
    utility: "Barca de aluminio, 4.6 m: lámparas, sonda, bombas, tomas",
    launch: "Lancha abierta, 7 m: motor de 24 V, dos baterías, 40 aparatos",
    "second-season":
      "La barca de aluminio un año después: un proyecto terminado, el siguiente en marcha y medidas con un fallo por encontrar",
  },
  changed: (when) => `cambiado ${when}`,
  remove: "Quitar de este navegador",
  removeAsk: (name) => `¿Quitar «${name}» y todo su historial de este navegador?`,
  removeWarn: "No hay vuelta atrás. Guarda antes una copia por si la quieres de nuevo.",
  removeOnlyCopy: "Es la única copia que Skiffloom conoce.",
  dropHere: "O suelta aquí un archivo",
  safety: "Antes de empezar",
  loadingPlans: "Buscando planes …",
  noDatabase:
    "Este navegador no deja guardar nada a la página (ventana privada o almacenamiento apagado). Puedes trabajar, pero guarda en un archivo antes de cerrar.",
  nextProject: "Terminar un proyecto o empezar el siguiente en este barco",
};
