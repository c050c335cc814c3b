import { type GearRole, gearRoles } from "../../core/plan/model/gear.js";
import { type Chemistry, chemistries } from "../../core/plan/model/supply.js";
import type { NewGear, NewPlanAnswers } from "../../core/plan/new/answers.js";
import { newPlanText } from "../../core/plan/new/new-plan.js";
import "../../core/plan/read.js";
import type { QuantityKind } from "../../core/quantity/fault.js";
import { faultOf } from "../../core/quantity/fault-of.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { Asker, type Check, type Choice, chosen, oneOf } from "../ask.js";
import { writeWhole } from "../files.js";
import { print } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { harmless } from "../terminal.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("new", words, { flags: { to: "value", force: "switch" } });
  const to = given.values.to ?? "boat.yaml";
  const asker = new Asker();
  let answers: NewPlanAnswers;
  try {
    answers = await askAll(asker, told);
  } finally {
    asker.close();
  }
  const made = newPlanText(answers);
  if (!made.ok)
    throw new InputProblem(({ work, problems }) => [
      work.fresh.unsound,
      ...made.problems.map((problem) => harmless(problems.line(problem))),
    ]);
  writeWhole(to, made.text, given.switches.has("force"));
  print([told.work.fresh.written(to)]);
  return exit.fine;
}

/** A check that the answer reads as a quantity of a kind. */
const quantity =
  ({ work, kinds }: TerminalWords) =>
  (kind: QuantityKind): Check =>
  (answer) =>
    faultOf(answer, kind) === undefined ? undefined : work.fresh.wanted(kinds[kind]);

const something =
  ({ work: { fresh } }: TerminalWords): Check =>
  (answer) =>
    answer === "" ? fresh.fewWords : answer.includes(" / ") ? fresh.slash : undefined;

/** Words of the plan's format, each with what it is called in the reader's language. */
const choicesOf = <Key extends string>(
  keys: readonly Key[],
  said: Readonly<Record<Key, string>>,
): Choice<Key>[] => keys.map((key) => ({ key, said: said[key] }));

async function askAll(asker: Asker, told: TerminalWords): Promise<NewPlanAnswers> {
  const { fresh: say } = told.work;
  const measured = quantity(told);
  const yesNo: Choice<"yes" | "no">[] = [
    { key: "yes", said: say.yes },
    { key: "no", said: say.no },
  ];
  const kinds = choicesOf<Chemistry>(chemistries, say.chemistries);
  const name = await asker.ask(say.name, say.usualName, something(told));
  const kind = await asker.ask(say.kind, say.usualKind, something(told));
  const length = await asker.ask(say.length, "15 ft", measured("length"));
  const petrol = await asker.ask(say.petrol, say.no, oneOf(yesNo, told));
  const rules = await asker.ask(
    say.rules,
    "us",
    oneOf(choicesOf(["us", "iso"], { us: "us", iso: "iso" }), told),
  );
  const chemistry = await asker.ask(
    say.chemistry(kinds.map(({ said }) => said).join(", ")),
    say.chemistries.agm,
    oneOf(kinds, told),
  );
  const capacity = await asker.ask(say.capacity, "50 Ah", measured("charge"));
  const voltage = await asker.ask(say.voltage, "12 V", measured("voltage"));
  const cable = await asker.ask(say.feed, "6 ft", measured("length"));
  const gear = await askGear(asker, told);
  return {
    name,
    kind,
    length,
    petrolOnBoard: chosen(yesNo, petrol) === "yes",
    rules: rules === "iso" ? "iso" : "us",
    battery: { chemistry: chosen(kinds, chemistry) ?? "agm", capacity, voltage, cable },
    gear,
  };
}

/** Gear until an empty name. */
async function askGear(asker: Asker, told: TerminalWords): Promise<NewGear[]> {
  const { fresh: say } = told.work;
  const measured = quantity(told);
  const named = something(told);
  const roles = choicesOf<GearRole>(gearRoles, say.roles);
  const gear: NewGear[] = [];
  for (;;) {
    const taken = new Set(gear.map((piece) => piece.name));
    const name = await asker.ask(gear.length === 0 ? say.firstGear : say.nextGear, "", (answer) =>
      answer === "" ? undefined : taken.has(answer) ? say.taken : named(answer),
    );
    if (name === "") return gear;
    const role = await asker.ask(
      `  ${say.role(roles.map(({ said }) => said).join(", "))}`,
      say.roles.lighting,
      oneOf(roles, told),
    );
    const draws = await asker.ask(`  ${say.draws}`, "3 W", measured("draw"));
    const count = await asker.ask(`  ${say.count}`, "1", (answer) =>
      /^[1-9]\d{0,3}$/.test(answer) ? undefined : say.whole,
    );
    const cable = await asker.ask(`  ${say.cable}`, "8 ft", measured("length"));
    gear.push({
      name,
      role: chosen(roles, role) ?? "other",
      draws,
      cable,
      ...(count !== "1" && { count: Number(count) }),
    });
  }
}
