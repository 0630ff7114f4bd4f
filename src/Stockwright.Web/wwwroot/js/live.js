// Keeps the parts of the page that show how things stand up to date: told by the server when something was entered elsewhere,
// asking by itself where that does not work. What is typed, the focus and the place on the page stay as they are.

import { documentReceived, setFrom, tick } from "./clock.js";

const askEvery = 10_000;
const lookEvery = 60_000;
const silence = 45_000;

let source;
let heard = 0;
let asked = 0;
let refreshing;
let pressed = false;
let worked = () => { };

const root = () => document.querySelector("[data-events]");

/** Called after the live parts changed. */
export function onRefresh(work) {
  worked = work;
}

export function setUp(enhanced) {
  asked = Date.now();
  setFrom(document.querySelector("[data-now]"), enhanced ? Date.now() : documentReceived());
  tick();
  if (source && source.stockwrightFor !== root()?.dataset.events) close();
  listen();
}

function listen() {
  const address = root()?.dataset.events;
  if (!address || source || document.hidden || !("EventSource" in window)) return;
  source = new EventSource(address);
  source.stockwrightFor = address;
  heard = Date.now();
  const hear = event => {
    heard = Date.now();
    const count = String(JSON.parse(event.data).count);
    if (root() && count !== root().dataset.count) refresh();
  };
  source.addEventListener("message", hear);
  source.addEventListener("beat", hear);
  source.addEventListener("error", () => {
    // The browser tries again by itself unless it was told off.
    if (source?.readyState === EventSource.CLOSED) close();
  });
}

function close() {
  source?.close();
  source = undefined;
}

/** Fetches the page and puts its live parts in place of those here. One at a time; asked for meanwhile, once more after. */
export function refresh() {
  if (refreshing) {
    refreshing.again = true;
    return refreshing.done;
  }
  const turn = { again: false };
  turn.done = swap().catch(() => { }).finally(() => {
    refreshing = undefined;
    if (turn.again) refresh();
  });
  refreshing = turn;
  return turn.done;
}

async function swap() {
  const here = root();
  if (!here) return;
  asked = Date.now();
  const address = location.href;
  const answer = await fetch(address, { headers: { Accept: "text/html" }, cache: "no-store" });
  const received = Date.now();
  const text = await answer.text();
  if (!answer.ok || answer.redirected || address !== location.href || here !== root()) return;
  const page = new DOMParser().parseFromString(text, "text/html");
  const there = page.querySelector("[data-events]");
  if (!there) return;
  await released();
  if (!here.isConnected) return;
  setFrom(page.querySelector("[data-now]"), received);
  for (const [name, value] of Object.entries(there.dataset)) here.dataset[name] = value;
  standStill(() => {
    for (const old of document.querySelectorAll("[data-live][id]")) {
      const fresh = page.getElementById(old.id);
      if (fresh && essence(old) !== essence(fresh)) replace(old, document.importNode(fresh, true));
    }
    tick();
  });
  offerRest(page);
  worked();
}

/** What a part says, without what differs from one answer to the next though nothing has changed. */
function essence(element) {
  const copy = element.cloneNode(true);
  for (const time of copy.querySelectorAll("time[data-countdown]")) {
    time.textContent = "";
    time.removeAttribute("class");
  }
  for (const input of copy.querySelectorAll('input[name="entry"], input[name="__RequestVerificationToken"]')) input.removeAttribute("value");
  for (const details of copy.querySelectorAll("details")) details.removeAttribute("open");
  for (const output of copy.querySelectorAll("output.said")) output.remove();
  for (const button of copy.querySelectorAll("[aria-disabled]")) button.removeAttribute("aria-disabled");
  for (const form of copy.querySelectorAll("[data-noted]")) form.removeAttribute("data-noted");
  return copy.innerHTML.trim();
}

function replace(old, fresh) {
  const focused = old.contains(document.activeElement) ? sign(old, document.activeElement) : null;
  for (const details of old.querySelectorAll("details[id]")) {
    const same = fresh.querySelector(`details#${CSS.escape(details.id)}`);
    if (same) same.open = details.open;
  }
  old.replaceWith(fresh);
  if (focused) find(fresh, focused)?.focus({ preventScroll: true });
}

const sign = (part, element) => ({
  id: element.id,
  step: element.form?.querySelector('input[name="step"]')?.value,
  text: element.textContent,
  place: [...part.querySelectorAll("a, button, summary, input, select")].indexOf(element),
});

function find(part, { id, step, text, place }) {
  if (id) return part.querySelector(`#${CSS.escape(id)}`);
  const all = [...part.querySelectorAll("a, button, summary, input, select")];
  return all.find(each => each.textContent === text && each.form?.querySelector('input[name="step"]')?.value === step) ?? all[place];
}

/** The line that is being read stays where it is, though what stands above grows. */
function standStill(work) {
  const anchor = document.activeElement?.closest("form[data-entry], #outbox")
    ?? [...document.querySelectorAll("[data-live][id], form[data-entry], h2")].find(each => each.getBoundingClientRect().bottom > 0);
  const id = anchor?.id;
  const before = anchor?.getBoundingClientRect().top ?? 0;
  work();
  const after = anchor?.isConnected ? anchor : id ? document.getElementById(id) : null;
  const moved = after ? after.getBoundingClientRect().top - before : 0;
  if (scrollY > 0 && Math.abs(moved) > 1) scrollBy({ top: moved, behavior: "instant" });
}

/** A finger on a button must find it there when it is lifted. */
function released() {
  if (!pressed) return Promise.resolve();
  return new Promise(resolve => {
    const done = () => setTimeout(resolve, 60);
    addEventListener("pointerup", done, { once: true });
    addEventListener("pointercancel", done, { once: true });
    setTimeout(resolve, 3000);
  });
}

const forms = page => [...page.querySelectorAll("form[data-entry]")].filter(form => !form.closest("[data-live]"))
  .map(form => form.id || form.querySelector('input[name="kind"]')?.value || form.dataset.summary).join();

const untouched = () => !document.activeElement?.closest("form")
  && [...document.querySelectorAll("form[data-entry], form.refused")].every(form => [...form.elements].every(asServed));

function asServed(field) {
  if (field.type === "hidden" || field.name === "who") return true;
  if (field instanceof HTMLSelectElement) return [...field.options].every(option => option.selected === option.defaultSelected || !field.querySelector("[selected]"));
  if (field.type === "radio" || field.type === "checkbox") return field.checked === field.defaultChecked;
  return field.defaultValue === undefined || field.value === field.defaultValue;
}

/** Other forms belong to the page by now (the stock is strained, say). Never under the cook's hands. */
function offerRest(page) {
  if (forms(page) === forms(document)) {
    document.getElementById("more-now")?.remove();
    return;
  }
  if (untouched()) {
    location.reload();
    return;
  }
  if (document.getElementById("more-now")) return;
  const line = document.createElement("p");
  line.id = "more-now";
  line.className = "notice";
  const button = document.createElement("button");
  button.type = "button";
  button.className = "quiet";
  button.textContent = "Show it";
  button.addEventListener("click", () => location.reload());
  line.append("There is something else to enter now. ", button);
  (document.getElementById("outbox") ?? root()).before(line);
}

if (!window.stockwrightLive) {
  window.stockwrightLive = true;
  addEventListener("pointerdown", () => { pressed = true; }, true);
  for (const name of ["pointerup", "pointercancel"]) addEventListener(name, () => { pressed = false; }, true);

  setInterval(() => {
    if (!root()) {
      close();
      return;
    }
    // Something has come due: what to do now is not what it was.
    if (tick()) refresh();
  }, 1000);

  setInterval(() => {
    if (!root()) return;
    if (source && Date.now() - heard > silence) close();
    listen();
    const open = source?.readyState === 1;
    const pause = open || document.hidden ? lookEvery : askEvery;
    if (Date.now() - asked >= pause) refresh();
  }, 5000);

  document.addEventListener("visibilitychange", () => {
    // Each open line is one of the six a browser keeps to a server; pages nobody looks at give theirs up.
    if (document.hidden) {
      close();
      return;
    }
    tick();
    listen();
    refresh();
  });
  addEventListener("online", () => {
    close();
    listen();
    refresh();
  });
  addEventListener("pageshow", event => {
    if (event.persisted) {
      tick();
      listen();
      refresh();
    }
  });
  addEventListener("pagehide", close);
}
