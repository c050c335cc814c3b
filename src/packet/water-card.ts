import type { CardBattery, WaterCard } from "../core/proving/water/card.js";
import { amps, decimals, hours, marked, percent, roughHours, shareSet } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { ProofWords } from "../words/proof/proof-words.js";
import { feedsWords, fuseWords, switchWords, usageWords } from "../words/water-card.js";
import { columnWidthMm, flow } from "./flow.js";
import type { Paper } from "./page.js";
import { heading, type Piece, paragraph, space } from "./piece.js";
import type { Section } from "./section.js";
import { type Column, type FullCell, type Row, table } from "./table.js";

const columnCount = 2;

/** The card that stays on board: switches and fuses, hours left, what to turn off, spares. */
type WaterWords = PaperWords["work"]["water"];

export function waterCardSection(
  card: WaterCard,
  paper: Paper,
  { work: { water: words }, of: { proof } }: PaperWords,
): Section {
  const widthMm = columnWidthMm(paper, columnCount);
  const part = (title: string, columns: readonly Column[], rows: readonly Row[]): Piece[] =>
    rows.length === 0 ? [] : [heading(title, widthMm), ...table(columns, rows, widthMm), space(2)];
  const pieces = [
    ...part(
      words.ways,
      wayColumns(words),
      card.ways.map((way) => ({
        cells: [way.circuit, feedsWords(way), small(fuseWords(way, proof)), small(switchWords(way, proof))],
      })),
    ),
    ...card.batteries.flatMap((battery) => [
      ...part(words.hours(battery.battery), hourColumns(battery, words, proof), hourRows(battery)),
      paragraph(
        { text: words.note(shareSet(battery.reserveShare)), colour: "soft", sizePt: 9.5 },
        widthMm,
        2,
      ),
      ...part(
        words.off(battery.battery),
        offColumns(words),
        battery.turnOff.map(({ group, circuit, currentA, gainedH }) => ({
          cells: [group, circuit, amps(currentA), hours(gainedH)],
        })),
      ),
    ]),
    ...part(
      words.spares,
      spareColumns(words),
      card.spareFuses.map(({ device, ratingA, inUse, carry }) => ({
        cells: [
          proof.water.device(proof.water.devices[device], marked(ratingA, "A")),
          String(inUse),
          String(carry),
        ],
      })),
    ),
    paragraph(
      { text: words.and(card.spareThings.map((thing) => proof.water.things[thing]).join(", ")), sizePt: 9.5 },
      widthMm,
    ),
  ];
  return {
    title: words.title,
    subtitle: words.subtitle,
    pages: card.ways.length === 0 ? [] : flow(pieces, paper, columnCount),
  };
}

const small = (text: string): FullCell => ({ words: [{ text, sizePt: 9.5, maxLines: 4 }] });

const wayColumns = ({ heads }: WaterWords): readonly Column[] => [
  { heading: heads.way, share: 32 },
  { heading: heads.feeds, share: 42 },
  { heading: heads.fuse, share: 35 },
  { heading: heads.switch, share: 39 },
];
const offColumns = ({ heads }: WaterWords): readonly Column[] => [
  { heading: heads.gear, share: 40 },
  { heading: heads.way, share: 38 },
  { heading: heads.draws, share: 22, align: "right" },
  { heading: heads.gains, share: 28, align: "right" },
];
const spareColumns = ({ heads }: WaterWords): readonly Column[] => [
  { heading: heads.fuse, share: 60 },
  { heading: heads.inUse, share: 20, align: "right" },
  { heading: heads.carry, share: 20, align: "right" },
];

const hourColumns = ({ uses }: CardBattery, { heads }: WaterWords, proof: ProofWords): Column[] => [
  { heading: heads.resting, share: 20, align: "right" },
  { heading: heads.charge, share: 20, align: "right" },
  ...uses.map((use): Column => ({ heading: usageWords(use, proof), share: 38, align: "right" })),
];

const hourRows = ({ rows }: CardBattery): Row[] =>
  rows.map(({ restingV, left }) => ({
    cells: [
      decimals(restingV, 2),
      percent(left[0]?.charge, 0),
      ...left.map(({ hoursToReserve }) => roughHours(hoursToReserve)),
    ],
  }));
