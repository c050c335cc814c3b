import { alikes, revealedWhole } from "../../quantity/look-alike.js";
import { nearestOf } from "../../quantity/nearest.js";
import type { Endpoint } from "../model/common.js";
import type { Plan } from "../model/plan.js";
import type { Run } from "../model/runs.js";
import { limits } from "../source/limits.js";
import type { PlanDocument } from "../source/open.js";
import type { Path, ReadCode, ReadProblem } from "../source/problem.js";
import { type ProblemLog, shortened } from "../source/problem-log.js";
import { startOf } from "../source/written.js";
import { checkHullNames } from "./hull.js";
import { Registry } from "./registry.js";

/** Everything names must satisfy before any physics: each is known, used once, and of the kind that belongs there. */
export function checkReferences(plan: Plan, document: PlanDocument, log: ProblemLog): void {
  new References(plan, document, log).check();
}

type More = Partial<Omit<ReadProblem, "code" | "line" | "column" | "path">>;

const placeKinds = ["battery", "charger", "converter", "panel", "box", "gear"] as const;

class References {
  private readonly names: Registry;

  constructor(
    private readonly plan: Plan,
    private readonly document: PlanDocument,
    private readonly log: ProblemLog,
  ) {
    this.names = new Registry(document.root);
  }

  check(): void {
    this.checkNames();
    if (this.log.full) return;
    for (const { name, parallelWith } of this.plan.batteries)
      for (const other of parallelWith) {
        const path = ["batteries", name, "parallel with"];
        if (other === name) this.tell("itself", path, other);
        else this.checkBattery(other, path);
      }
    for (const { name, charges } of this.plan.chargers)
      this.checkBattery(charges, ["chargers", name, "charges"]);
    for (const run of this.plan.runs) this.checkRun(run);
    this.checkWays();
    for (const [index, group] of this.plan.oneAtATime.entries())
      for (const [step, gear] of group.entries()) this.checkGear(gear, ["one at a time", index, step]);
    for (const { name, on } of this.plan.corners)
      for (const gear of on ?? []) this.checkGear(gear, ["corners", name, "on"]);
    for (const { name, on } of this.plan.outings)
      for (const [index, { what }] of on.entries())
        this.checkWhat(what, ["outings", name, "on", index, "what"]);
    checkHullNames(this.plan, this.names, (...problem) => this.tell(...problem));
  }

  private checkNames(): void {
    for (const { name, section, at, first } of this.names.repeats)
      this.log.tell(at, [section, name], {
        code: "name used twice",
        found: name,
        firstLine: this.log.lineOf(first.keyStart),
      });
    for (const { thing, first } of alikes(this.names.places, ([name]) => name)) {
      const [name, { section, keyStart }] = thing;
      this.log.tell(keyStart, [section, name], {
        code: "names alike",
        found: shortened(revealedWhole(name)),
        firstLine: this.log.lineOf(first[1].keyStart),
      });
    }
    let gear = 0;
    for (const [name, place] of this.names.places) {
      gear += place.kind === "gear" ? place.count : 0;
      const piece = this.names.pieceOf(name);
      if (piece !== undefined)
        this.log.tell(place.keyStart, [place.section, name], {
          code: "name used twice",
          found: name,
          firstLine: this.log.lineOf(piece.place.keyStart),
        });
    }
    if (gear > limits.maxGear) this.tell("too much gear", ["gear"], String(gear));
  }

  private checkWays(): void {
    for (const { name, from, to } of this.plan.legs)
      for (const [key, end] of [
        ["from", from],
        ["to", to],
      ] as const)
        if (!this.names.is(end, "waypoint") && this.names.place(end) === undefined)
          this.tell("unknown place", ["legs", name, key], end, this.near(end, [...placeKinds, "waypoint"]));
    const through = (section: string, things: readonly { name: string; through?: string }[]): void => {
      for (const { name, through: opening } of things)
        if (opening !== undefined) this.checkWaypoint(opening, [section, name, "through"]);
    };
    through("boxes", this.plan.boxes);
    through("panels", this.plan.panels);
    this.checkCatalogue("boxes", this.plan.boxes);
    this.checkCatalogue("panels", this.plan.panels);
    through("batteries", this.plan.batteries);
  }

  private checkCatalogue(section: string, things: readonly { name: string; catalogueBox?: string }[]): void {
    const known = this.plan.catalogue.map(({ name }) => name);
    for (const { name, catalogueBox: box } of things)
      if (box !== undefined && !known.includes(box))
        this.tell("not one of", [section, name, "catalogue box"], box, {
          expected: { kind: "choice", of: known },
          ...nearest(box, known),
        });
  }

  private checkWaypoint(name: string, path: Path): void {
    if (!this.names.is(name, "waypoint"))
      this.tell("unknown waypoint", path, name, this.near(name, ["waypoint"]));
  }

  private checkRun(run: Run): void {
    const path = ["runs", run.name];
    this.checkEnd(run.from, [...path, "from"]);
    this.checkEnd(run.to, [...path, "to"]);
    if (sameEnd(run.from, run.to)) this.tell("itself", [...path, "to"], spelt(run.to));
    const beside = [run.from.place, run.to.place];
    for (const point of run.along ?? []) this.checkWaypoint(point, [...path, "along"]);
    for (const way of run.carries) this.checkWay(way, [...path, "carries"], beside);
    const pieces = this.names.places.get(run.to.place)?.count ?? 1;
    const given = run.lengthsM.length;
    if (given > 1 && given !== pieces)
      this.tell("wrong count", [...path, "lengths"], String(given), {
        expected: { kind: "count", of: [...new Set([1, pieces])] },
      });
  }

  private checkEnd({ place: name, port }: Endpoint, path: Path): void {
    const place = this.names.place(name);
    if (place === undefined) {
      this.tell("unknown place", path, name, this.near(name, placeKinds));
      return;
    }
    if (port === undefined) return;
    if (place.kind === "panel") {
      if (!place.ways.has(port))
        this.tell("unknown way", path, `${name} / ${port}`, nearest(port, place.ways, `${name} / `));
    } else if (place.kind === "converter") {
      if (port !== "in" && port !== "out")
        this.tell("unknown outlet", path, `${name} / ${port}`, {
          expected: { kind: "choice", of: ["in", "out"] },
        });
    } else if (place.kind === "box") {
      if (port !== "feed") this.checkWay(port, path, []);
    } else this.tell("no outlets", path, `${name} / ${port}`, { nearest: name });
  }

  /** A way by `panel / way`, or by its own name where one panel has it, or where a panel at an end of the run has it. */
  private checkWay(written: string, path: Path, beside: readonly string[]): void {
    const [panel = "", way] = written.split(" / ", 2);
    if (way === undefined) {
      const panels = this.names.panelsByWay.get(written) ?? [];
      if (panels.length === 0)
        this.tell("unknown way", path, written, nearest(written, this.names.panelsByWay.keys()));
      if (panels.length > 1 && !panels.some((name) => beside.includes(name)))
        this.tell("ambiguous way", path, written, {
          expected: { kind: "choice", of: panels.map((name) => `${name} / ${written}`) },
        });
      return;
    }
    const place = this.names.place(panel);
    if (
      place?.kind !== "panel" &&
      !(way === "feed" && (place?.kind === "battery" || place?.kind === "converter"))
    )
      this.tell("unknown way", path, written, this.near(panel, ["panel"]));
    else if (way !== "feed" && !place.ways.has(way))
      this.tell("unknown way", path, written, nearest(way, place.ways, `${panel} / `));
  }

  private checkBattery(name: string, path: Path): void {
    if (!this.names.is(name, "battery"))
      this.tell("unknown battery", path, name, this.near(name, ["battery"]));
  }

  private checkGear(name: string, path: Path): void {
    if (!this.names.is(name, "gear")) this.tell("unknown gear", path, name, this.near(name, ["gear"]));
  }

  private checkWhat(what: string, path: Path): void {
    if (what.includes(" / ")) {
      this.checkWay(what, path, []);
      return;
    }
    if (!this.names.is(what, "gear", "panel"))
      this.tell("unknown gear", path, what, this.near(what, ["gear", "panel"]));
  }

  private near(name: string, kinds: Parameters<Registry["namesOf"]>[0]): More {
    return this.log.full ? {} : nearest(name, this.names.namesOf(kinds));
  }

  private tell(code: ReadCode, path: Path, found: string, more: More = {}): void {
    if (!this.log.full) this.log.tell(startOf(this.document.root, path), path, { code, found, ...more });
  }
}

function nearest(name: string, known: Iterable<string>, before = ""): More {
  const found = nearestOf(name, known);
  return found === undefined ? {} : { nearest: before + found };
}

function sameEnd(a: Endpoint, b: Endpoint): boolean {
  return a.place === b.place && a.port === b.port;
}

function spelt({ place, port }: Endpoint): string {
  return port === undefined ? place : `${place} / ${port}`;
}
