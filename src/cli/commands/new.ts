import { type GearRole, gearRoles } from "../../core/plan/model/gear.js";
import { type Chemistry, chemistries } from "../../core/plan/model/supply.js";
import type { NewGear, NewPlanAnswers } from "../../core/plan/new/answers.js";
import { newPlanText } from "../../core/plan/new/new-plan.js";
import "../../core/plan/read.js";
import type { QuantityKind } from "../../core/quantity/fault.js";
import { faultOf } from "../../core/quantity/fault-of.js";
import { kindWords } from "../../words/read-expected.js";
import { readProblemLine } from "../../words/read-problems.js";
import { readArguments } from "../arguments.js";
import { Asker, type Check, oneOf } from "../ask.js";
import { writeWhole } from "../files.js";
import { print } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { harmless } from "../terminal.js";

export const help = `skiffloom new [--to FILE] [--force]

Asks a few questions about the boat, its battery and its gear, and writes a plan to go on from. What you
do not know yet is left open: it is worked out, or assumed and listed as such. Press Enter to take what
stands in brackets.

  --to FILE  where; boat.yaml if left out. --force writes over a file that is there`;

export async function run(words: readonly string[]): Promise<number> {
  const given = readArguments("new", words, { flags: { to: "value", force: "switch" } });
  const to = given.values.to ?? "boat.yaml";
  const asker = new Asker();
  let answers: NewPlanAnswers;
  try {
    answers = await askAll(asker);
  } finally {
    asker.close();
  }
  const made = newPlanText(answers);
  if (!made.ok)
    throw new InputProblem([
      "the answers make no sound plan:",
      ...made.problems.map((problem) => harmless(readProblemLine(problem))),
    ]);
  writeWhole(to, made.text, given.switches.has("force"));
  print([`${to} written. See it with: skiffloom check ${to}`]);
  return exit.fine;
}

/** A check that the answer reads as a quantity of a kind. */
function quantity(kind: QuantityKind): Check {
  return (answer) => (faultOf(answer, kind) === undefined ? undefined : `wanted: ${kindWords(kind)}`);
}

const something: Check = (answer) =>
  answer === ""
    ? "a few words, please"
    : answer.includes(" / ")
      ? "' / ' can't be part of a name"
      : undefined;

const yesNo = oneOf(["yes", "no"]);

async function askAll(asker: Asker): Promise<NewPlanAnswers> {
  const name = await asker.ask("What is the boat called", "my boat", something);
  const kind = await asker.ask("What kind of boat is it", "skiff", something);
  const length = await asker.ask("How long is it", "15 ft", quantity("length"));
  const petrol = await asker.ask("Is there petrol on board (yes or no)", "no", yesNo);
  const rules = await asker.ask("Which rules: us or iso", "us", oneOf(["us", "iso"]));
  const chemistry = await asker.ask(
    `What kind of battery (${chemistries.join(", ")})`,
    "agm",
    oneOf(chemistries),
  );
  const capacity = await asker.ask("Its capacity", "50 Ah", quantity("charge"));
  const voltage = await asker.ask("Its voltage", "12 V", quantity("voltage"));
  const cable = await asker.ask("Cable from battery to switch panel, how long", "6 ft", quantity("length"));
  const gear = await askGear(asker);
  return {
    name,
    kind,
    length,
    petrolOnBoard: petrol === "yes",
    rules: rules === "iso" ? "iso" : "us",
    battery: { chemistry: chemistry as Chemistry, capacity, voltage, cable },
    gear,
  };
}

/** Gear until an empty name. */
async function askGear(asker: Asker): Promise<NewGear[]> {
  const gear: NewGear[] = [];
  for (;;) {
    const taken = new Set(gear.map((piece) => piece.name));
    const name = await asker.ask(
      gear.length === 0
        ? "First piece of gear (empty when there is none)"
        : "Next piece of gear (empty when that was all)",
      "",
      (answer) => (answer === "" ? undefined : taken.has(answer) ? "that name is taken" : something(answer)),
    );
    if (name === "") return gear;
    const role = await asker.ask(`  What is it (${gearRoles.join(", ")})`, "lighting", oneOf(gearRoles));
    const draws = await asker.ask("  What does it draw, each", "3 W", quantity("draw"));
    const count = await asker.ask("  How many alike", "1", (answer) =>
      /^[1-9]\d{0,3}$/.test(answer) ? undefined : "a whole number from 1",
    );
    const cable = await asker.ask("  Cable from the panel to it, how long", "8 ft", quantity("length"));
    gear.push({ name, role: role as GearRole, draws, cable, ...(count !== "1" && { count: Number(count) }) });
  }
}
