import { type PriceBasis, priceBasis } from "../../core/circuit/sizing/prices.js";
import { figuresJson } from "../../core/figures-json.js";
import type { Figures } from "../../core/figures-types.js";
import { ruleSet } from "../../core/reference/rule-sets.js";
import { amps, hours, lengthWords, percent, shareSet, sizeWords, volts, watts } from "../../words/numbers.js";
import { pathWords } from "../../words/path-words.js";
import { sizeReason } from "../../words/size-reasons.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { type Screen, screenIn } from "../language.js";
import { ledgerLines } from "../ledger.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit } from "../problem.js";
import { left, right, textTable } from "../table.js";
import { harmless, paint, wrap } from "../terminal.js";
import { notThere } from "../unknown.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("figures", words, {
    plan: true,
    flags: { json: "switch", assumed: "switch", corner: "name" },
  });
  const { figures } = loadWhole(given.plan);
  if (given.switches.has("json")) {
    printJson(figuresJson(figures));
    return exit.fine;
  }
  const screen = await screenIn(told);
  const corner = given.values.corner ?? "worst drop";
  print([
    ...ledgerLines(figures, screen),
    ...gearLines(figures, corner, screen),
    ...sizeLines(figures, screen),
    ...protectionLines(figures, screen),
    ...energyLines(figures, screen),
    ...(given.switches.has("assumed")
      ? assumedLines(figures, screen)
      : ["", told.electrics.figures.assumed(figures.assumptions.length)]),
  ]);
  return exit.fine;
}

/** Corners of ours by what they are called; one of the plan's own by its name. */
function cornerWords(name: string, corners: Readonly<Record<string, string>>): string {
  return Object.hasOwn(corners, name) ? (corners[name] ?? name) : name;
}

/** Ids as they are read: what the figures added to names is in the reader's language. */
const idsIn =
  ({ paper }: Screen) =>
  (id: string): string =>
    pathWords(id, paper.of.findings.path);

function heading(text: string, screen: Screen): string[] {
  return ["", paint(text, "strong", screen)];
}

function gearLines({ corners, plan }: Figures, name: string, screen: Screen): string[] {
  const corner = corners.find((each) => each.name === name);
  if (!corner)
    throw notThere(
      "corner",
      name,
      corners.map((each) => each.name),
    );
  const say = screen.told.electrics.figures;
  const { gearHeads: heads } = say;
  const shown = cornerWords(corner.name, say.corners);
  const limits = new Map(plan.gear.map((piece) => [piece.name, piece.maxDropShare]));
  const rows = corner.gear.map((gear) => [
    gear.id,
    plan.circuitOf.get(gear.id) ?? "",
    gear.on ? amps(gear.currentA) : say.off,
    volts(gear.voltageV),
    gear.on ? volts(gear.dropV) : "",
    gear.on ? percent(gear.dropShare) : "",
    shareSet(limits.get(gear.id)),
  ]);
  const columns = [
    left(heads.gear),
    left(heads.way),
    right(heads.current),
    right(heads.voltage),
    right(heads.drop),
    right(heads.share),
    right(heads.limit),
  ];
  const collapsed =
    corner.status === "collapsed" ? wrap(say.collapsed(percent(corner.carriedShare)), screen.width) : [];
  return [
    ...heading(say.gear(shown, `${corner.copperC}`), screen),
    ...collapsed,
    ...textTable(columns, rows, screen),
  ];
}

function sizeLines({ sizes, plan }: Figures, screen: Screen): string[] {
  const { shows } = plan.source;
  const say = screen.told.electrics.figures;
  const { sizeHeads: heads } = say;
  const named = idsIn(screen);
  const rows = sizes.choices.map((choice) => [
    named(choice.id),
    sizeWords(choice.size, shows),
    lengthWords(choice.lengthM, shows),
    amps(choice.currentA),
    amps(choice.ampacityA),
    choice.fixedByOwner ? say.yours : sizeReason(choice.reason, screen.paper),
  ]);
  const columns = [
    left(heads.run),
    right(heads.size),
    right(heads.length),
    right(heads.carries),
    right(heads.allowed),
    left(heads.why),
  ];
  const proof = {
    proven: say.proven(say.aims[sizes.aim]),
    bounded:
      sizes.lowerBound > 0
        ? say.bounded(say.aims[sizes.aim], ((sizes.lowerBound / sizes.total) * 100).toFixed(1))
        : say.unproven(say.aims[sizes.aim]),
    none: say.unmet(sizes.unmet.map(named).join(", ")),
  }[sizes.proof];
  return [
    ...heading(say.conductors, screen),
    ...textTable(columns, rows, screen),
    ...wrap(
      `${proof}${basisWords(priceBasis(plan, ruleSet(plan.source.rules), sizes), screen)}`,
      screen.width,
    ),
  ];
}

/** What 'cheapest' rests on, where that is not the plan's own prices. */
function basisWords(basis: PriceBasis | undefined, { paper }: Screen): string {
  return basis === undefined || basis === "prices" ? "" : paper.electrics.conductors.basis[basis];
}

function protectionLines({ protection }: Figures, screen: Screen): string[] {
  const say = screen.told.electrics.figures;
  const { protectionHeads: heads } = say;
  const { conditions } = screen.paper.of.labels;
  const named = idsIn(screen);
  const rows = protection.map((device) => [
    named(device.id),
    device.spare ? say.noneYet : amps(device.ratingA),
    device.spare ? say.spare : device.fixedByOwner ? say.yourRating : say.workedOut,
    amps(device.loadA),
    device.weakest ? `${device.weakest.sizeKey}, ${amps(device.weakest.allowedA)}` : "",
    (device.spare ? [] : device.conditions)
      .flatMap(({ condition, state }) =>
        state === "holds" ? [] : [state === "fails" ? conditions[condition] : `${conditions[condition]}?`],
      )
      .join(", "),
  ]);
  const columns = [
    left(heads.device),
    right(heads.rating),
    left(heads.from),
    right(heads.load),
    left(heads.weakest),
    left(heads.fails),
  ];
  return [...heading(say.protection, screen), ...textTable(columns, rows, screen)];
}

function energyLines({ corners, outings, charging }: Figures, screen: Screen): string[] {
  const say = screen.told.electrics.figures;
  const { batteryHeads, converterHeads, outingHeads, chargingHeads } = say;
  const nominal = corners.find(({ name }) => name === "nominal");
  const batteries = (nominal?.batteries ?? []).map(({ id, currentA, terminalV }) => [
    id,
    amps(currentA),
    volts(terminalV),
  ]);
  const converters = (nominal?.converters ?? []).map((each) => [
    each.id,
    amps(each.outputA),
    volts(each.inputV),
    watts(each.lossW),
  ]);
  const trips = outings.flatMap((outing) =>
    outing.batteries.map((trace) => [
      outing.name,
      trace.battery,
      `${trace.usedAh.toFixed(1)} Ah`,
      percent(trace.chargeLeft, 0),
      trace.reserveAtH === undefined ? say.notInOuting : say.after(hours(trace.reserveAtH)),
      outing.brownOuts.map(({ gear, atH }) => say.gearAfter(gear, hours(atH))).join(", ") || say.none,
    ]),
  );
  const charges = charging.map((each) => [
    each.charger,
    each.battery,
    percent(each.fromCharge, 0),
    each.state === "works"
      ? each.days === undefined
        ? hours(each.hours)
        : say.days(each.days.toFixed(1))
      : each.state === "too cold"
        ? say.tooCold
        : say.notChecked,
  ]);
  return [
    ...heading(say.batteries, screen),
    ...textTable(
      [left(batteryHeads.battery), right(batteryHeads.gives), right(batteryHeads.posts)],
      batteries,
      screen,
    ),
    ...(converters.length > 0
      ? [
          "",
          ...textTable(
            [
              left(converterHeads.converter),
              right(converterHeads.gives),
              right(converterHeads.input),
              right(converterHeads.heat),
            ],
            converters,
            screen,
          ),
        ]
      : []),
    ...(trips.length > 0
      ? [
          ...heading(say.outings, screen),
          ...textTable(
            [
              left(outingHeads.outing),
              left(outingHeads.battery),
              right(outingHeads.used),
              right(outingHeads.left),
              left(outingHeads.reserve),
              left(outingHeads.under),
            ],
            trips,
            screen,
          ),
        ]
      : []),
    ...(charges.length > 0
      ? [
          ...heading(say.charging, screen),
          ...textTable(
            [
              left(chargingHeads.charger),
              left(chargingHeads.battery),
              right(chargingHeads.from),
              right(chargingHeads.full),
            ],
            charges,
            screen,
          ),
        ]
      : []),
  ];
}

function assumedLines({ assumptions }: Figures, screen: Screen): string[] {
  const { assumedTitle, assumedHeads: heads } = screen.told.electrics.figures;
  const { assumed } = screen.paper.of;
  const named = idsIn(screen);
  const rows = assumptions.map(({ at, field, value, reason }) =>
    [named(at), assumed.field(field), assumed.value(value), assumed.reasons[reason]].map(harmless),
  );
  return [
    ...heading(assumedTitle, screen),
    ...textTable([left(heads.at), left(heads.field), left(heads.taken), left(heads.why)], rows, screen),
  ];
}
