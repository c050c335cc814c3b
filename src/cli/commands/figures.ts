import { type PriceBasis, priceBasis } from "../../core/circuit/sizing/prices.js";
import { figuresJson } from "../../core/figures-json.js";
import type { Figures } from "../../core/figures-types.js";
import { ruleSet } from "../../core/reference/rule-sets.js";
import { assumptionWords } from "../../words/assumptions.js";
import { amps, hours, lengthWords, percent, shareSet, sizeWords, volts, watts } from "../../words/numbers.js";
import { paperInEnglish } from "../../words/paper/english.js";
import { sizeReason } from "../../words/size-reasons.js";
import { readArguments } from "../arguments.js";
import { ledgerLines } from "../ledger.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit } from "../problem.js";
import { type Column, textTable } from "../table.js";
import { harmless, paint, type Terminal, terminal, wrap } from "../terminal.js";
import { notThere } from "../unknown.js";

export const help = `skiffloom figures PLAN [--corner NAME] [--assumed] [--json]

Prints every electrical figure of a plan: gear with voltage and drop, conductors with size and reason,
fuses and breakers, batteries, outings.

  --corner NAME  corner to show the gear at: 'worst drop' (the default), 'nominal', 'highest voltage' or one of the plan's own
  --assumed      also list every value that was assumed, and why
  --json         everything at every corner, as data (docs/json.md)`;

export function run(words: readonly string[]): number {
  const given = readArguments("figures", words, {
    plan: true,
    flags: { json: "switch", assumed: "switch", corner: "value" },
  });
  const { figures } = loadWhole(given.plan);
  if (given.switches.has("json")) {
    printJson(figuresJson(figures));
    return exit.fine;
  }
  const screen = terminal();
  const corner = given.values.corner ?? "worst drop";
  print([
    ...ledgerLines(figures, screen),
    ...gearLines(figures, corner, screen),
    ...sizeLines(figures, screen),
    ...protectionLines(figures, screen),
    ...energyLines(figures, screen),
    ...(given.switches.has("assumed")
      ? assumedLines(figures, screen)
      : [`\n${figures.assumptions.length} values were assumed; --assumed lists them.`]),
  ]);
  return exit.fine;
}

const left = (heading: string): Column => ({ heading, align: "left" });
const right = (heading: string): Column => ({ heading, align: "right" });

function heading(text: string, screen: Terminal): string[] {
  return ["", paint(text, "strong", screen)];
}

function gearLines({ corners, plan }: Figures, name: string, screen: Terminal): string[] {
  const corner = corners.find((each) => each.name === name);
  if (!corner)
    throw notThere(
      "corner",
      name,
      corners.map((each) => each.name),
    );
  const limits = new Map(plan.gear.map((piece) => [piece.name, piece.maxDropShare]));
  const rows = corner.gear.map((gear) => [
    gear.id,
    plan.circuitOf.get(gear.id) ?? "",
    gear.on ? amps(gear.currentA) : "off",
    volts(gear.voltageV),
    gear.on ? volts(gear.dropV) : "",
    gear.on ? percent(gear.dropShare) : "",
    shareSet(limits.get(gear.id)),
  ]);
  const columns = [
    left("gear"),
    left("way"),
    right("current"),
    right("voltage"),
    right("drop"),
    right("share"),
    right("limit"),
  ];
  const collapsed =
    corner.status === "collapsed"
      ? wrap(
          `The network can't carry this: no more than ${percent(corner.carriedShare)} of the power reaches its gear.`,
          screen.width,
        )
      : [];
  return [
    ...heading(`Gear, ${corner.name} (copper at ${corner.copperC} °C)`, screen),
    ...collapsed,
    ...textTable(columns, rows, screen),
  ];
}

function sizeLines({ sizes, plan }: Figures, screen: Terminal): string[] {
  const { shows } = plan.source;
  const rows = sizes.choices.map((choice) => [
    choice.id,
    sizeWords(choice.size, shows),
    lengthWords(choice.lengthM, shows),
    amps(choice.currentA),
    amps(choice.ampacityA),
    choice.fixedByOwner ? "yours" : sizeReason(choice.reason, paperInEnglish),
  ]);
  const columns = [
    left("run"),
    right("size"),
    right("length"),
    right("carries"),
    right("allowed"),
    left("why"),
  ];
  const proof = {
    proven: `The ${sizes.aim} set that keeps every limit; proven.`,
    bounded:
      sizes.lowerBound > 0
        ? `The ${sizes.aim} set found; no set can be better than ${((sizes.lowerBound / sizes.total) * 100).toFixed(1)} % of it.`
        : `The ${sizes.aim} set found; that none is better was not proven.`,
    none: `No set of these sizes keeps every limit: ${sizes.unmet.join(", ")}.`,
  }[sizes.proof];
  return [
    ...heading("Conductors", screen),
    ...textTable(columns, rows, screen),
    ...wrap(`${proof}${basisWords(priceBasis(plan, ruleSet(plan.source.rules), sizes))}`, screen.width),
  ];
}

/** What 'cheapest' rests on, where that is not the plan's own prices. */
function basisWords(basis: PriceBasis | undefined): string {
  return basis === undefined || basis === "prices" ? "" : paperInEnglish.electrics.conductors.basis[basis];
}

function protectionLines({ protection }: Figures, screen: Terminal): string[] {
  const rows = protection.map((device) => [
    device.id,
    device.spare ? "none yet" : amps(device.ratingA),
    device.spare ? "spare" : device.fixedByOwner ? "yours" : "worked out",
    amps(device.loadA),
    device.weakest ? `${device.weakest.sizeKey}, ${amps(device.weakest.allowedA)}` : "",
    (device.spare ? [] : device.conditions)
      .flatMap(({ condition, state }) =>
        state === "holds" ? [] : [state === "fails" ? condition : `${condition}?`],
      )
      .join(", "),
  ]);
  const columns = [
    left("fuse or breaker"),
    right("rating"),
    left("from"),
    right("load"),
    left("weakest behind it"),
    left("fails, unchecked?"),
  ];
  return [...heading("Protection", screen), ...textTable(columns, rows, screen)];
}

function energyLines({ corners, outings, charging }: Figures, screen: Terminal): string[] {
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
      trace.reserveAtH === undefined ? "not in the outing" : `after ${hours(trace.reserveAtH)}`,
      outing.brownOuts.map(({ gear, atH }) => `${gear} after ${hours(atH)}`).join(", ") || "none",
    ]),
  );
  const charges = charging.map((each) => [
    each.charger,
    each.battery,
    percent(each.fromCharge, 0),
    each.state === "works"
      ? each.days === undefined
        ? hours(each.hours)
        : `${each.days.toFixed(1)} days`
      : each.state === "too cold"
        ? "too cold"
        : "not checked",
  ]);
  return [
    ...heading("Batteries, everything on at nominal", screen),
    ...textTable([left("battery"), right("gives"), right("at its posts")], batteries, screen),
    ...(converters.length > 0
      ? [
          "",
          ...textTable(
            [left("converter"), right("gives"), right("input"), right("heat")],
            converters,
            screen,
          ),
        ]
      : []),
    ...(trips.length > 0
      ? [
          ...heading("Outings", screen),
          ...textTable(
            [
              left("outing"),
              left("battery"),
              right("used"),
              right("left"),
              left("reserve reached"),
              left("under voltage"),
            ],
            trips,
            screen,
          ),
        ]
      : []),
    ...(charges.length > 0
      ? [
          ...heading("Charging", screen),
          ...textTable([left("charger"), left("battery"), right("from"), right("to full")], charges, screen),
        ]
      : []),
  ];
}

function assumedLines({ assumptions }: Figures, screen: Terminal): string[] {
  const rows = assumptions.map(({ at, field, value, reason }) =>
    [at, field, value, assumptionWords[reason]].map(harmless),
  );
  return [
    ...heading("Assumed, because the plan leaves it out", screen),
    ...textTable([left("at"), left("field"), left("taken"), left("why")], rows, screen),
  ];
}
