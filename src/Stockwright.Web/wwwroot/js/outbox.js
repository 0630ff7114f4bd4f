// Entries made on this device wait here until the server has them. They are delivered one at a time, those of a batch strictly
// in order, by one tab at a time. An answer that was lost leads to the same entry being sent again; the server keeps one for
// each key. What the server refuses stays here with its reasons until the cook puts it right or discards it.

import * as store from "./store.js";

const usual = 30_000;
const withPhoto = 120_000;
const longestPause = 20_000;
const oddAnswers = 3;

/** "change": something was added, sent, refused or discarded. "delivered": the server has an entry (detail: the record). */
export const news = new EventTarget();

const channel = "BroadcastChannel" in window ? new BroadcastChannel("stockwright-outbox") : null;
const pauses = new Map();
const here = newId();
let running;
let again = false;

export function newId() {
  // randomUUID is kept back on plain HTTP; random bytes are not.
  if (crypto.randomUUID) return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6] & 0x0f) | 0x40;
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map(each => each.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
}

/** Everything that is not delivered, oldest first. */
export const list = () => store.all("entries");

/** Keeps a record for good; when this returns it is on the disk. */
export async function keep(record) {
  const { order, ...rest } = record;
  await store.put("entries", { ...rest, state: "waiting", reasons: [] });
  changed();
}

export async function discard(order) {
  await store.remove("entries", order);
  changed();
}

/** Sends a refused one again, with what was put right: a new entry as far as the server goes. */
export async function mend(order, fields, summary) {
  await store.change("entries", order, record => record && ({ ...record, fields, summary, id: newId(), state: "waiting", reasons: [] }));
  changed();
  return deliver(true);
}

function changed() {
  news.dispatchEvent(new Event("change"));
  channel?.postMessage("change");
}

channel?.addEventListener("message", () => {
  news.dispatchEvent(new Event("change"));
  deliver();
});

/** Delivers what is waiting. `urgent` does not wait for the pause after a failure to end. */
export function deliver(urgent = false) {
  if (urgent) pauses.clear();
  if (running) {
    again = true;
    return running;
  }
  running = alone(deliverAll).catch(() => { }).finally(() => {
    running = undefined;
    if (again) {
      again = false;
      deliver();
    }
  });
  return running;
}

async function deliverAll(renew) {
  for (;;) {
    const heads = new Map();
    for (const record of await list()) {
      if (record.state === "waiting" && !heads.has(record.batch)) heads.set(record.batch, record);
    }
    const ready = [...heads.values()].filter(record => !(pauses.get(record.batch)?.until > Date.now()));
    if (ready.length === 0) return;
    for (const record of ready) {
      await renew(timeout(record) + 10_000);
      await settle(record, await send(record));
    }
  }
}

async function settle(record, outcome) {
  switch (outcome.kind) {
    case "stored":
      pauses.delete(record.batch);
      await store.remove("entries", record.order);
      news.dispatchEvent(new CustomEvent("delivered", { detail: record }));
      changed();
      return;
    case "refused":
      pauses.delete(record.batch);
      await store.change("entries", record.order, old => old && ({ ...old, state: "refused", reasons: outcome.reasons }));
      changed();
      return;
    default: {
      const failures = (pauses.get(record.batch)?.failures ?? 0) + 1;
      const pause = Math.min(1000 * 2 ** failures, longestPause);
      const wait = Math.max(pause, Math.min(outcome.after ?? 0, 300_000));
      pauses.set(record.batch, { failures, until: Date.now() + wait });
      setTimeout(() => deliver(), wait + 50);
      // Once for good: how often it failed is not worth a write each time, what the server said is.
      if (outcome.odd || outcome.why !== record.why) {
        await store.change("entries", record.order, old => old && ({ ...old, why: outcome.why, odd: (old.odd ?? 0) + (outcome.odd ? 1 : 0) }));
        changed();
      }
    }
  }
}

const timeout = record => record.fields.some(field => field.file) ? withPhoto : usual;

/** Sends one record and says what became of it. */
export async function send(record) {
  const body = new FormData();
  for (const field of record.fields) {
    if (field.file) body.append(field.name, new Blob([field.file.bytes], { type: field.file.type }), field.file.name);
    else body.append(field.name, field.value);
  }
  body.set("entry", record.id);
  body.set("device-time", record.made);
  body.set("device-zone", record.zone);
  const cut = new AbortController();
  const timer = setTimeout(() => cut.abort(), timeout(record));
  try {
    body.set("sent", new Date().toISOString());
    const answer = await fetch(record.log, {
      method: "POST", body, headers: { Accept: "application/json" }, cache: "no-store", redirect: "manual", signal: cut.signal,
    });
    return await understand(answer, record);
  } catch {
    return { kind: "later", why: "no connection" };
  } finally {
    clearTimeout(timer);
  }
}

async function understand(answer, record) {
  const type = answer.headers.get("Content-Type") ?? "";
  const said = type.includes("json") ? await answer.json().catch(() => null) : null;

  // A hotel's sign-in page answers 200 too: only our own words count.
  if (answer.ok && said?.entry?.toLowerCase() === record.id) return { kind: "stored" };
  if (answer.status === 413) return { kind: "refused", reasons: [{ field: "photo", message: "It is too large for the server." }] };
  if (answer.status >= 400 && answer.status < 500 && answer.status !== 408 && answer.status !== 429) {
    const reasons = reasonsOf(said);
    if (type.includes("problem+json") && reasons.length > 0) return { kind: "refused", reasons };
    if ((record.odd ?? 0) + 1 >= oddAnswers) {
      return { kind: "refused", reasons: [{ field: "", message: `The server answered ${answer.status} and did not say why.` }] };
    }
    return { kind: "later", odd: true, why: `the server answered ${answer.status}` };
  }
  const seconds = Number(answer.headers.get("Retry-After"));
  return {
    kind: "later",
    after: Number.isFinite(seconds) ? seconds * 1000 : 0,
    why: reasonsOf(said)[0]?.message ?? (answer.status > 0 ? `the server answered ${answer.status}` : "something else answered in place of the server"),
  };
}

function reasonsOf(said) {
  const reasons = Object.entries(said?.errors ?? {}).flatMap(([field, messages]) => [messages].flat().map(message => ({ field, message })));
  if (reasons.length === 0 && (said?.detail || said?.title)) reasons.push({ field: "", message: said.detail || said.title });
  return reasons;
}

/** Does the work in one tab at a time; another that is at it will hear of what is new. */
async function alone(work) {
  if (navigator.locks) {
    return navigator.locks.request("stockwright-outbox", { ifAvailable: true }, lock => lock ? work(async () => { }) : undefined);
  }
  // Locks are kept back on plain HTTP: a note with a time on it, which ends by itself when the tab dies.
  const claim = milliseconds => store.change("notes", "delivering", old =>
    !old || old.tab === here || old.until < Date.now() || old.until > Date.now() + 300_000 ? { tab: here, until: Date.now() + milliseconds } : undefined);
  if (!await claim(usual)) return undefined;
  try {
    return await work(async milliseconds => {
      if (!await claim(milliseconds)) throw new Error("Another tab delivers.");
    });
  } finally {
    await store.change("notes", "delivering", old => old?.tab === here ? { tab: here, until: 0 } : undefined);
  }
}

/** Runs for as long as the page is open; safe to call again. */
export function start() {
  if (window.stockwrightOutbox) return;
  window.stockwrightOutbox = true;
  addEventListener("online", () => deliver(true));
  addEventListener("pageshow", () => deliver(true));
  document.addEventListener("visibilitychange", () => { if (!document.hidden) deliver(true); });
  setInterval(() => deliver(), 20_000);
  deliver(true);
}
