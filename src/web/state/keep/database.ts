import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { faultReason } from "../../fault.js";
import type { MomentRecord, PlanRecord, StepRecord } from "./records.js";

interface Shelf extends DBSchema {
  plans: { key: string; value: PlanRecord };
  /** `children`: by the step they were made on. */
  steps: { key: [string, number]; value: StepRecord; indexes: { children: [string, number] } };
  moments: { key: [string, number]; value: MomentRecord };
  /** Handles of files on disk, by plan, with the text as it was when last read or written. */
  files: { key: string; value: { plan: string; handle: FileSystemFileHandle; text: string } };
}

export type ShelfDatabase = IDBPDatabase<Shelf>;
const databaseName = "skiffloom";
const version = 2;

/** Why nothing can be kept: the browser does not allow it, or a newer version of the page wrote what is there. */
export class NoDatabase extends Error {
  constructor(
    readonly reason: "refused" | "newer",
    detail: string,
  ) {
    super(detail);
    this.name = "NoDatabase";
  }
}

/** How a database that was open is lost: another tab needs a newer form of it, or the browser has closed it by itself. */
export type Lost = "taken over" | "closed";

/**
 * Opens the browser's database.
 * @param lost Called when it is open no more.
 * @throws NoDatabase
 */
export async function openShelf(lost: (how: Lost) => void): Promise<ShelfDatabase> {
  try {
    const database = await openDB<Shelf>(databaseName, version, {
      upgrade(opened, from, _to, transaction) {
        if (from < 1) {
          opened.createObjectStore("plans", { keyPath: "id" });
          opened.createObjectStore("steps", { keyPath: ["plan", "no"] });
          opened.createObjectStore("moments", { keyPath: ["plan", "step"] });
          opened.createObjectStore("files", { keyPath: "plan" });
        }
        if (from < 2) transaction.objectStore("steps").createIndex("children", ["plan", "parent"]);
      },
      blocking() {
        database.close();
        lost("taken over");
      },
      terminated: () => lost("closed"),
    });
    return database;
  } catch (error) {
    const detail = faultReason(error);
    const newer = error instanceof DOMException && error.name === "VersionError";
    throw new NoDatabase(newer ? "newer" : "refused", detail);
  }
}
