import type { CautionWords } from "../cautions.js";
import { findings } from "../screen/es/findings.js";

/** What can hurt and who decides, in Spanish. */
export const cautionsInSpanish: CautionWords = {
  cautions: [
    {
      title: "Cortocircuitos de batería",
      text: "Una llave entre los bornes puede quedarse soldada y quemar. Quítate anillos y reloj. Desconecta primero el negativo y conéctalo el último. Tapa el borne en el que no trabajas. Monta vacío el portafusibles general y pon el fusible al final.",
    },
    {
      title: "Celdas de litio",
      text: "Nunca las aplastes, pinches, abras ni calientes, y nunca las cargues por debajo de la temperatura mínima del fabricante. Usa solo una batería con su propia protección dentro y un cargador hecho para ella. Si se hincha, huele o se calienta, aléjate y deja que arda al aire libre.",
    },
    {
      title: "Baterías de plomo",
      text: "Al cargar sueltan hidrógeno, y llevan ácido. Carga donde corra el aire, sin llama ni chispa cerca, con los ojos protegidos y agua a mano para enjuagar. Si pesa, levántala entre dos, con las rodillas dobladas y siempre derecha.",
    },
    {
      title: "Paneles solares",
      text: "Un panel tiene tensión en cuanto le da la luz, y ningún interruptor de la batería lo para. Tápalo antes de acercar las manos a su cable. Sepáralo de su regulador antes de quitar la batería, y únelo cuando la batería ya esté puesta, o en el orden que diga su fabricante.",
      of: "solar charger",
    },
    {
      title: "Taladrar, lijar y polvo",
      text: "Sujeta la pieza, ojos protegidos, mangas y pelo recogidos, sin guantes cerca de una broca que gira. Las herramientas de red, en un enchufe con diferencial y nunca a flote. El polvo de fibra, resina, madera y pintura vieja daña pulmones y piel: mascarilla de polvo fino, piel cubierta, mejor aspirar que barrer. Ni una viruta de metal se queda en la sentina.",
    },
    {
      title: "En el remolque, en caballetes, en una escalera",
      text: "Calza las ruedas y no te fíes solo del enganche ni del gato: apuntálalo bajo la popa antes de subir a bordo. La escalera, en suelo firme y atada. Nadie debajo de un barco colgado o solo sobre gatos.",
    },
    {
      title: "Aire caliente y soldadura",
      text: "Una pistola de calor y un soldador prenden vapores y queman piel y cascos. Trabaja lejos de combustible y disolventes, en un banco si puedes, con aire en movimiento y algo para apagar un fuego a mano.",
    },
    {
      title: "Disolventes, adhesivos y selladores",
      text: "Lee la etiqueta. Guantes, aire en movimiento, ninguna llama. Los trapos con aceite o disolvente pueden calentarse solos: tiéndelos planos al aire libre hasta que sequen.",
    },
    {
      title: "Vapores de gasolina",
      text: "Pesan más que el aire y se quedan en la sentina. Depósito, mangueras y sentina sin vapores antes de que ninguna herramienta o interruptor suelte una chispa. Donde haya gasolina a bordo, lo que vaya en espacios que puedan guardar vapores debe llevar marcada por su fabricante la protección contra la ignición.",
    },
    {
      title: "Agujeros bajo el agua",
      text: "Cualquier agujero bajo en el casco puede hundir el barco. Mira el otro lado antes de taladrar, asienta y aprieta cada pieza como dice su fabricante, y vigílalos todos la primera vez a flote.",
    },
    {
      title: "Luces de navegación",
      text: "Los demás gobiernan por ellas. Sectores, alcances y alturas los fija la ley: usa luces certificadas para tu eslora, móntalas como dicen las reglas y pruébalas antes de dejar la orilla.",
    },
    {
      title: "Corriente de tierra y cargadores",
      text: "Todo lo que toque la tensión de red queda fuera de este cuaderno y es trabajo de un electricista autorizado. Un cargador va en un enchufe con diferencial, seco y al aire. Un barco conectado a tierra puede hacer mortal el agua a su alrededor: que nadie se bañe allí.",
    },
  ],
  firstOfAll:
    "Antes de empezar: lee las precauciones del final. El negativo de la batería se quita primero y se pone el último. Ningún cable con corriente sin fusible. Ninguna chispa cerca de vapores de gasolina. Cada agujero bajo el agua, mirado dos veces. Las normas locales, las instrucciones de los fabricantes y los profesionales autorizados van antes que nada de lo impreso aquí. «Sin comprobar» nunca quiere decir que esté bien.",
  deference:
    "Estas cifras son ayudas para planear, sacadas de lo que dice el plan. No sustituyen a las normas del lugar donde se guarda y se usa el barco, a las instrucciones de los fabricantes de batería, aparatos, conductores y dispositivos, ni al juicio de quien está autorizado para el trabajo. Donde difieran de este cuaderno, tienen razón ellos.",
  neverChecked: findings.neverCheckedLines,
};
