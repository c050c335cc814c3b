import { type DBSchema, openDB } from "idb";

interface PhotoShelf extends DBSchema {
  photos: { key: [plan: string, file: string]; value: { plan: string; file: string; picture: Blob } };
}

const opened = () =>
  openDB<PhotoShelf>("skiffloom-photos", 1, {
    upgrade(database) {
      database.createObjectStore("photos", { keyPath: ["plan", "file"] });
    },
  });

/** Keeps a photo in this browser; the plan holds its file name only. @throws where the browser keeps nothing or is full. */
export async function keepPhoto(plan: string, file: string, picture: Blob): Promise<void> {
  const database = await opened();
  await database.put("photos", { plan, file, picture });
  database.close();
}

/** A photo kept here, or undefined: it lies in another browser, or beside the plan on disk. */
export async function keptPhoto(plan: string, file: string): Promise<Blob | undefined> {
  const database = await opened();
  const found = await database.get("photos", [plan, file]);
  database.close();
  return found?.picture;
}
