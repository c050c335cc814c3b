import type { SourceWords } from "../source-words.js";
import { physicsPlaces } from "./source-physics.js";
import { readPlaces } from "./source-places.js";

/** What a source is called where its title is a description; titles of standards and of books are not here and stay as they are. */
const titles: ReadonlyMap<string, string> = new Map([
  ["NFPA 70, chapter 9, table 8 against solid copper", "NFPA 70, capítulo 9, tabla 8, frente a cobre macizo"],
  [
    "NFPA 70, chapter 9, table 8, coated against uncoated columns",
    "NFPA 70, capítulo 9, tabla 8, columnas con y sin estaño",
  ],
  [
    "ITTC 7.5-02-01-03 (density and viscosity of water)",
    "ITTC 7.5-02-01-03 (densidad y viscosidad del agua)",
  ],
  ["from the figures", "de las propias cifras"],
  ["geometry of the regular hexagon", "geometría del hexágono regular"],
  ["law of Biot and Savart", "ley de Biot y Savart"],
  ["own model", "modelo propio"],
  ["plane geometry of equal circles", "geometría plana de círculos iguales"],
  ["heat balance of a loaded conductor", "balance térmico de un conductor cargado"],
  ["ISO 10133 and US small-craft practice", "ISO 10133 y práctica de EE. UU. en embarcaciones menores"],
  ["ISO 10133:2012 and ISO 13297", "ISO 10133:2012 e ISO 13297"],
  ["ISO 10133:2012 and US practice", "ISO 10133:2012 y práctica de EE. UU."],
  ["ISO 12217 (small craft, stability)", "ISO 12217 (embarcaciones de recreo, estabilidad)"],
  [
    "US voluntary small-craft d.c. standard E-11",
    "norma voluntaria de EE. UU. E-11 (ABYC), corriente continua",
  ],
  [
    "US small-craft 3 % rule, reprint by a parts distributor",
    "regla del 3 % de EE. UU., reimpresa por un distribuidor",
  ],
  ["battery council type table", "tabla de tipos de un consejo de fabricantes de baterías"],
  ["lead-acid capacity against temperature", "capacidad del plomo-ácido según la temperatura"],
  ["recalled handbook values", "valores de manual, citados de memoria"],
  [
    "sizes commonly sold; 2:1 after SAE AMS-DTL-23053/5",
    "medidas que suelen venderse; 2:1 según SAE AMS-DTL-23053/5",
  ],
  [
    "terminal makers' circular mil ranges of insulated terminals and splices",
    "campos de sección que dan los fabricantes de terminales y empalmes aislados",
  ],
  ["DIN 40430, steel conduit thread", "DIN 40430, rosca de tubo de acero"],
  ["EN 60423 (thread list also in EN 50262)", "EN 60423 (la lista de roscas está también en EN 50262)"],
  [
    "FAA AC 43.13-1B, chapter 4, rivet rules as quoted by teaching pages",
    "FAA AC 43.13-1B, capítulo 4, reglas de remachado citadas en páginas de enseñanza",
  ],
  [
    "International Regulations for Preventing Collisions at Sea",
    "Reglamento internacional para prevenir los abordajes (1972)",
  ],
  [
    "Inland Navigation Rules, 33 CFR Part 83",
    "Reglas de navegación en aguas interiores de EE. UU., 33 CFR parte 83",
  ],
  [
    "International Regulations for Preventing Collisions at Sea, Rule 21",
    "Reglamento internacional para prevenir los abordajes (1972), regla 21",
  ],
  [
    "NBS Handbook 100 (1966), Copper Wire Tables; the same definition in ASTM B258",
    "NBS Handbook 100 (1966), Copper Wire Tables; la misma definición en ASTM B258",
  ],
  [
    "Rules for the Marking of Free-Board (Load-line) for Ferry Boats, Maharashtra",
    "Maharashtra, reglas de marcado del francobordo de los transbordadores",
  ],
  ["UK Boat Safety Scheme, hire boats", "UK Boat Safety Scheme, barcos de alquiler"],
  [
    "UL and commercial pull-test minima; SAE AS7928 (formerly MIL-T-7928)",
    "mínimos de tracción UL y comerciales; SAE AS7928 (antes MIL-T-7928)",
  ],
  [
    "connector makers' crimp quality handbooks",
    "manuales de calidad de engaste de fabricantes de conectores",
  ],
  ["electrical teaching page on Peukert (1897)", "página de enseñanza sobre Peukert (1897)"],
  [
    "makers' data sheets of one-part silicone sealants (ISO 11600 class 20HM; ASTM C920 class 25)",
    "fichas técnicas de siliconas de un componente (ISO 11600 clase 20HM; ASTM C920 clase 25)",
  ],
  [
    "one magazine answer, one home-energy page, one supplier's page",
    "una respuesta de revista, una página de energía doméstica y una de un proveedor",
  ],
  ["panel-punch maker's note on EN 62444", "nota de un fabricante de punzones sobre EN 62444"],
  [
    "plastics fabricators' notes on acrylic and polycarbonate",
    "notas de transformadores de plásticos sobre acrílico y policarbonato",
  ],
  ["polycarbonate sheet maker's drilling note", "nota de taladrado de un fabricante de policarbonato"],
  [
    "polycarbonate sheet maker's note; plastics fabricators' notes on acrylic",
    "nota de un fabricante de policarbonato; notas de transformadores sobre acrílico",
  ],
  [
    "polymer surface-energy table (untreated polymers) and an adhesive maker's note",
    "tabla de energía superficial de polímeros (sin tratar) y nota de un fabricante de adhesivos",
  ],
  [
    "silicone maker's note on time to performance test",
    "nota de un fabricante de silicona sobre el tiempo hasta el ensayo",
  ],
  ["terminal makers' colour tables", "tablas de colores de fabricantes de terminales"],
  ["two battery suppliers' pages that agree", "páginas de dos proveedores de baterías que coinciden"],
]);
const places: ReadonlyMap<string, string> = new Map([...readPlaces, ...physicsPlaces]);

/** Where figures come from, in Spanish. */
export const sourcesInSpanish: SourceWords = {
  title: (title) => titles.get(title) ?? title,
  place: (place) => places.get(place) ?? place,
  practice: "práctica corriente, sin fuente",
  memory: "de memoria; confírmalo antes de fiarte",
  computed: "calculado",
};
