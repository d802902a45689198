import type { Page } from "playwright";

/** One entry as it lies on the disk. */
export interface Written {
  readonly place: number;
  readonly entry: { readonly id: string; readonly entry: string; readonly seen?: string };
}

/** Every session on the disk, by its name, read with the browser's own means past the program. */
export const onTheDisk = (page: Page): Promise<Readonly<Record<string, readonly Written[]>>> =>
  page.evaluate(
    () =>
      new Promise<Record<string, Written[]>>((resolve, reject) => {
        const opening = indexedDB.open("leftwright");
        let isNew = false;
        opening.onerror = () => (isNew ? resolve({}) : reject(opening.error));
        opening.onupgradeneeded = () => {
          isNew = true; // nothing was written yet
          opening.transaction?.abort();
        };
        opening.onsuccess = () => {
          const database = opening.result;
          const sessions: Record<string, Written[]> = {};
          const reading = database.transaction("entries").objectStore("entries").openCursor();
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            const cursor = reading.result;
            if (cursor === null) {
              database.close();
              resolve(sessions);
              return;
            }
            const [session, place] = cursor.key as [string, number];
            sessions[session] = [...(sessions[session] ?? []), { place, entry: cursor.value }];
            cursor.continue();
          };
        };
      }),
  );
