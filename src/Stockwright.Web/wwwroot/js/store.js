// What this device keeps for itself, in IndexedDB: entries not delivered yet, the batches last looked at, and notes.

const patience = 5000;
let opening;

export function open() {
  opening ??= new Promise((resolve, reject) => {
    // Some browsers never answer after an update of theirs; then we do without.
    const timer = setTimeout(() => reject(new Error("The browser's store does not open.")), patience);
    const request = indexedDB.open("stockwright", 1);
    request.onupgradeneeded = () => {
      const entries = request.result.createObjectStore("entries", { keyPath: "order", autoIncrement: true });
      entries.createIndex("id", "id", { unique: true });
      request.result.createObjectStore("batches", { keyPath: "id" });
      request.result.createObjectStore("notes");
    };
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      clearTimeout(timer);
      request.result.onversionchange = () => request.result.close();
      request.result.onclose = () => { opening = undefined; };
      resolve(request.result);
    };
  });
  opening.catch(() => { opening = undefined; });
  return opening;
}

/** Does `work(store, give)` in one transaction; what is given comes back once it is on the disk. */
async function run(name, mode, work) {
  const database = await open();
  return new Promise((resolve, reject) => {
    // Strict: a phone that dies the moment after must still have it.
    const transaction = database.transaction(name, mode, mode === "readwrite" ? { durability: "strict" } : undefined);
    let result;
    transaction.oncomplete = () => resolve(result);
    transaction.onabort = () => reject(transaction.error ?? new Error("The browser's store stopped."));
    work(transaction.objectStore(name), value => { result = value; });
  });
}

const read = (name, ask) => run(name, "readonly", (store, give) => {
  const request = ask(store);
  request.onsuccess = () => give(request.result);
});

export const all = name => read(name, store => store.getAll());
export const get = (name, key) => read(name, store => store.get(key));
export const remove = (name, key) => run(name, "readwrite", store => store.delete(key));

/** Adds or replaces; gives the key. */
export const put = (name, value, key) => run(name, "readwrite", (store, give) => {
  const request = key === undefined ? store.put(value) : store.put(value, key);
  request.onsuccess = () => give(request.result);
});

/** Reads, changes and writes in one step no other tab comes between; `undefined` leaves it as it is. Gives what was written. */
export const change = (name, key, make) => run(name, "readwrite", (store, give) => {
  const request = store.get(key);
  request.onsuccess = () => {
    const value = make(request.result);
    if (value === undefined) return;
    if (store.keyPath === null) store.put(value, key);
    else store.put(value);
    give(value);
  };
});
