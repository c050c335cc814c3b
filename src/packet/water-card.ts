import type { CardBattery, WaterCard } from "../core/proving/water/card.js";
import { amps, decimals, hours, marked, percent, roughHours, shareSet } from "../words/numbers.js";
import { feedsWords, fuseWords, switchWords, usageWords } from "../words/water-card.js";
import { columnWidthMm, flow } from "./flow.js";
import type { Paper } from "./page.js";
import { heading, type Piece, paragraph, space } from "./piece.js";
import type { Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";

const columnCount = 2;

/** The card that stays on board: switches and fuses, hours left, what to turn off, spares. */
export function waterCardSection(card: WaterCard, paper: Paper): Section {
  const widthMm = columnWidthMm(paper, columnCount);
  const part = (title: string, columns: readonly Column[], rows: readonly Row[]): Piece[] =>
    rows.length === 0 ? [] : [heading(title, widthMm), ...table(columns, rows, widthMm), space(2)];
  const pieces = [
    ...part(
      "Which switch, which fuse",
      wayColumns,
      card.ways.map((way) => ({ cells: [way.circuit, feedsWords(way), fuseWords(way), switchWords(way)] })),
    ),
    ...card.batteries.flatMap((battery) => [
      ...part(`Hours left in ${battery.battery}`, hourColumns(battery), hourRows(battery)),
      paragraph({ text: hoursNote(battery), colour: "soft", sizePt: 9.5 }, widthMm, 2),
      ...part(
        `To get home on ${battery.battery}: turn off first`,
        offColumns,
        battery.turnOff.map(({ group, circuit, currentA, gainedH }) => ({
          cells: [group, circuit, amps(currentA), hours(gainedH)],
        })),
      ),
    ]),
    ...part(
      "Spares to carry",
      spareColumns,
      card.spareFuses.map(({ device, ratingA, inUse, carry }) => ({
        cells: [`${device} ${marked(ratingA, "A")}`, String(inUse), String(carry)],
      })),
    ),
    paragraph({ text: `And: ${card.spareThings.join(", ")}.`, sizePt: 9.5 }, widthMm),
  ];
  return {
    title: "Card for the water",
    subtitle: "keep it dry, by the panel",
    pages: card.ways.length === 0 ? [] : flow(pieces, paper, columnCount),
  };
}

const wayColumns: readonly Column[] = [
  { heading: "Way", share: 34 },
  { heading: "Feeds", share: 50 },
  { heading: "Fuse", share: 32 },
  { heading: "Switch", share: 32 },
];
const offColumns: readonly Column[] = [
  { heading: "Gear", share: 40 },
  { heading: "Way", share: 38 },
  { heading: "Draws", share: 22, align: "right" },
  { heading: "Gains", share: 28, align: "right" },
];
const spareColumns: readonly Column[] = [
  { heading: "Fuse", share: 60 },
  { heading: "In use", share: 20, align: "right" },
  { heading: "Carry", share: 20, align: "right" },
];

const hourColumns = ({ uses }: CardBattery): Column[] => [
  { heading: "At rest, V", share: 20, align: "right" },
  { heading: "Charge", share: 20, align: "right" },
  ...uses.map((use): Column => ({ heading: usageWords(use), share: 38, align: "right" })),
];

const hourRows = ({ rows }: CardBattery): Row[] =>
  rows.map(({ restingV, left }) => ({
    cells: [
      decimals(restingV, 2),
      percent(left[0]?.charge, 0),
      ...left.map(({ hoursToReserve }) => roughHours(hoursToReserve)),
    ],
  }));

const hoursNote = ({ reserveShare }: CardBattery): string =>
  `Until the reserve of ${shareSet(reserveShare)}; at less volts than the last line turn for home. Volts after an hour at rest tell the charge to within about a tenth, volts under load to within a fifth. Gains are for half of what is above the reserve, everything else left on.`;
