import type { ScreenWords } from "../en.js";

export const print: ScreenWords["print"] = {
  packet: "El cuaderno",
  packetHint:
    "Todo para el garaje en un solo PDF, a tamaño real. Mide la barra de una plantilla antes de taladrar con ella.",
  getPacket: "Cuaderno en PDF",
  making: "Preparándolo …",
  made: (file) => `${file} está en tus descargas.`,
  failed: "No se pudo preparar. Tu plan está guardado; no se ha perdido nada.",
  short: "Solo lo que viene ahora",
  shortHint:
    "Los pasos de una tarde, o lo que queda del proyecto en marcha, con las hojas que hacen falta y ninguna más.",
  shortFor: { tonight: "Para la próxima tarde, en PDF", project: "Para el proyecto en marcha, en PDF" },
  paper: "Papel",
  sheets: "Hojas sueltas",
  sheetHint: "Una parte del cuaderno por separado.",
  sheetPdf: (title) => `${title} en PDF`,
  pageSvg: (title, page, pages) =>
    pages === 1 ? `${title} en SVG` : `${title}, página ${page} de ${pages}, en SVG`,
  pages: (count) => (count === 1 ? "1 página" : `${count} páginas`),
  pageOf: (title) => `Página de ${title}`,
  pageNumber: (page) => `página ${page}`,
  listing: "Viendo qué hay para imprimir …",
  templates: "Plantillas",
  templateHint: "Cada cara que se taladra, a tamaño real: DXF para una máquina, SVG para papel.",
  templateOf: (what, form) => `${what} en ${form}`,
  tables: "Tablas para una hoja de cálculo",
  tableNames: {
    loads: "Consumos",
    stock: "Existencias",
    prices: "Precios",
    list: "Lista de compra",
    cuts: "Lista de cortes",
    flags: "Etiquetas de los cables",
    holes: "Agujeros de las cajas",
    runs: "Tendidos",
  },
  tableOf: (name) => `${name} en CSV`,
  circuit: "El circuito para un simulador",
  circuitHint:
    "Texto SPICE con cada elemento llamado como su tendido, conductor o equipo, para que cualquiera pueda comprobar las cifras.",
  corner: "Caso",
  getCircuit: "Circuito en SPICE",
  planFile: "El plan",
  planHint: "El archivo del que sale todo, con tus propios comentarios.",
  getPlan: "Plan en YAML",
  english:
    "Las páginas y las tablas salen en español; las tablas se vuelven a leer en cualquiera de los dos idiomas.",
};
