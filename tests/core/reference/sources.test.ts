import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";

const folder = new URL("../../../src/core/reference/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".ts"));
const statuses: readonly unknown[] = ["published", "memory", "practice", "computed"];

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

/** A source proper: words for title and place, and how surely it is known. */
function isSource(value: unknown): boolean {
  if (!isRecord(value)) return false;
  const { title, place, status } = value;
  return [title, place].every((text) => typeof text === "string" && text !== "") && statuses.includes(status);
}

/** It has a source of its own; of a list each row has one, of a set of tables or cited figures some do. */
function isSourced(value: unknown): boolean {
  if (!isRecord(value)) return false;
  if (Array.isArray(value)) return value.length > 0 && value.every(isSourced);
  if ("source" in value) return isSource(value.source);
  return isSource(value) || Object.values(value).some(isSourced);
}

/** Names without figures, and look-ups. */
const holdsNoFigure = (value: unknown) =>
  typeof value === "function" || (Array.isArray(value) && value.every((each) => typeof each === "string"));

describe.each(files)("%s", async (file) => {
  const module: Readonly<Record<string, unknown>> = await import(new URL(file, folder).href);
  test("each table says where its figures are from", () => {
    const without = Object.entries(module).filter(
      ([name, value]) => !holdsNoFigure(value) && !isSourced(value) && !isSource(module[`${name}Source`]),
    );
    expect(without.map(([name]) => name)).toEqual([]);
  });
});

test("a table without a source is told from one with", () => {
  const source = { title: "a book", place: "p. 7", status: "published" };
  expect([{ source, rows: [1] }, [{ source, a: 1 }], { us: { source, a: 1 } }].map(isSourced)).toEqual([
    true,
    true,
    true,
  ]);
  expect(
    [{ rows: [1] }, [{ source }, { a: 1 }], { source: { ...source, place: "" } }, [{ a: 1 }], 0.2, {}].map(
      isSourced,
    ),
  ).toEqual(Array(6).fill(false));
});
