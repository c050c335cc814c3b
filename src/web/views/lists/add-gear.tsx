import { type GearRole, gearRoles } from "../../../core/plan/model/gear.js";
import type { Plan } from "../../../core/plan/model/plan.js";
import { type Feed, gearEdits } from "../../../core/plan/new/gear-edits.js";
import { useMeasured, usePlan } from "../../app/context.js";
import { useSelection } from "../../app/place.js";
import { AddThing } from "../../parts/add-thing.js";
import { useWordsOfLists } from "../../words/lists.js";
import { namesOf } from "./names-of.js";

/** One more piece of gear with all that feeds it, in one step: what one does most often to a boat that has a plan. */
export function AddGear() {
  const words = useWordsOfLists();
  const { gearWhole: say } = words.lists;
  const lengths = useMeasured();
  const reading = usePlan((state) => state.reading);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [, select] = useSelection();
  if (readOnly || !reading.ok) return null;
  const { plan } = reading;
  const feeds = feedsOf(plan);
  if (feeds.length === 0) return null;
  const taken = namesOf(plan);
  const label = (feed: Feed) =>
    feed.from === "way"
      ? isFed(plan, feed.way)
        ? feed.way
        : say.spare(feed.way)
      : feed.from === "battery"
        ? say.battery(feed.battery)
        : say.newWay(feed.panel);
  return (
    <details className="add-gear">
      <summary>{say.title}</summary>
      <p className="hint">{say.hint}</p>
      <AddThing
        title={say.add}
        asks={[
          { key: "name", label: say.name, as: "name" },
          { key: "role", label: say.role, as: gearRoles.map((role) => [role, words.asking.roles[role]]) },
          { key: "draws", label: say.draws, as: "draw", start: "" },
          { key: "count", label: say.count, as: "whole", start: "1" },
          { key: "fed", label: say.fed, wide: true, as: feeds.map((feed, i) => [String(i), label(feed)]) },
          { key: "cable", label: say.cable, as: "length", start: lengths === "inches" ? "6 ft" : "2 m" },
        ]}
        edits={({ name = "", role, draws = "", count = "1", fed, cable = "" }) => {
          const feed = feeds[Number(fed)];
          const kind: GearRole = gearRoles.find((each) => each === role) ?? "other";
          const item = { name, role: kind, draws, cable, count: Number(count) };
          return feed === undefined ? [] : gearEdits(item, feed, (one) => taken.has(one), plan.outings[0]);
        }}
        onAdded={({ name }) => select(name)}
      />
    </details>
  );
}

/** A way of its own first, then those that are there, then straight from a battery. */
function feedsOf({ panels, batteries }: Plan): Feed[] {
  return [
    ...panels.map(({ name }): Feed => ({ from: "new way", panel: name })),
    ...panels.flatMap(({ name, ways }) =>
      ways.map((way): Feed => ({ from: "way", way: `${name} / ${way.name}` })),
    ),
    ...batteries.map(
      ({ name, main }): Feed => ({ from: "battery", battery: name, beforeMain: main !== "none" }),
    ),
  ];
}

const isFed = ({ runs }: Plan, way: string): boolean =>
  runs.some(({ from, carries }) =>
    [
      `${from.place} / ${from.port ?? ""}`,
      ...carries,
      ...carries.map((one) => `${from.place} / ${one}`),
    ].includes(way),
  );
