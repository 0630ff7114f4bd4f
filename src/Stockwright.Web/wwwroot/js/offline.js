// The page that shows without a network: the batch last looked at, as this device remembers it, and the entries most often made.

import { setAhead, tick, timeOfDay } from "./clock.js";
import { fillWho, markNoted, remembered } from "./entries.js";
import { show } from "./outbox-view.js";
import * as store from "./store.js";

const askEvery = 10_000;
const soon = 3;
let chosen;

export async function setUp() {
  const state = document.getElementById("offline-state");
  if (!state || state.dataset.ready) return;
  state.dataset.ready = "yes";
  state.textContent = "Stockwright does not answer. What you enter here is kept on this device and sent by itself when it answers again.";
  let batches = [];
  try {
    batches = (await store.all("batches")).sort((one, other) => other.seen - one.seen);
  } catch {
    state.textContent = "Stockwright does not answer, and this browser keeps nothing for later. Write down what you do, with the time, and enter it when the connection is back.";
  }
  chosen = batches.find(batch => location.pathname.includes(batch.id)) ?? batches[0];
  draw(batches);
  look(state);
  setInterval(() => look(state), askEvery);
  addEventListener("online", () => look(state));
  setInterval(tick, 1000);
}

/** The way back is offered, not taken: something may be half typed. */
async function look(state) {
  if (document.hidden || state.dataset.back) return;
  try {
    // Some Wi-Fi answers everything with a page of its own; only the server has this.
    const answer = await fetch("/sw.js", { method: "HEAD", cache: "no-store", signal: AbortSignal.timeout?.(5000) });
    if (!answer.ok || !answer.headers.get("Content-Type")?.startsWith("text/javascript")) return;
  } catch {
    return;
  }
  state.dataset.back = "yes";
  const link = document.createElement("a");
  link.className = "action";
  link.href = chosen ? `/batches/${chosen.id}` : location.pathname === "/offline" ? "/" : location.href;
  link.dataset.enhanceNav = "false";
  link.textContent = chosen ? `Back to ${chosen.name}` : "Back";
  state.replaceChildren("The connection is back. ", link);
  document.querySelector("main h1").textContent = "Connected again";
}

function draw(batches) {
  const box = document.getElementById("offline-batches");
  box.replaceChildren();
  if (!chosen) {
    const none = document.createElement("p");
    none.textContent = "This device has not looked at a batch yet, so there is nothing to show.";
    box.append(none);
    return;
  }
  if (Number.isFinite(chosen.ahead)) setAhead(chosen.ahead);
  box.append(section(chosen), ...batches.filter(batch => batch !== chosen).map(batch => {
    const other = document.createElement("button");
    other.type = "button";
    other.className = "quiet";
    other.textContent = `Show ${batch.name}`;
    other.addEventListener("click", () => {
      chosen = batch;
      draw(batches);
    });
    return other;
  }));
  tick();
  show();
  markNoted();
  fillWho();
}

const slot = (part, name) => part.querySelector(`[data-slot="${name}"]`);

function section(batch) {
  const part = document.getElementById("offline-batch").content.cloneNode(true).firstElementChild;
  Object.assign(part.dataset, { batch: batch.id, name: batch.name, log: batch.log, zone: batch.zone });
  slot(part, "name").textContent = batch.name;
  const day = new Intl.DateTimeFormat("en-GB", { weekday: "short", day: "numeric", month: "short", timeZone: batch.zone || undefined });
  slot(part, "seen").textContent = `As it stood at ${timeOfDay(batch.seen, batch)} on ${day.format(batch.seen)}; other cooks' entries since then are not in it.`;
  part.querySelector('input[name="who"]').value = batch.who || remembered();
  for (const unit of part.querySelectorAll(".unit")) unit.textContent = batch.units === "us" ? unit.dataset.us : unit.dataset.metric;
  for (const units of part.querySelectorAll('input[name="units"]')) units.value = batch.units;
  slot(part, "none").hidden = batch.steps.length > 0;
  slot(part, "steps").append(...batch.steps.slice(0, soon).map(step => line(step, batch, day)));
  slot(part, "later").append(...batch.steps.slice(soon).map(step => line(step, batch, day)));
  slot(part, "rest").hidden = batch.steps.length <= soon;
  return part;
}

function line(step, batch, day) {
  const item = document.getElementById("offline-step").content.cloneNode(true).firstElementChild;
  const at = Date.parse(step.at);
  Object.assign(item.dataset, { alarm: step.key, at: step.at, title: step.title, detail: step.detail });
  slot(item, "when").textContent = timeOfDay(at, batch);
  if (day.format(at) !== day.format(Date.now())) slot(item, "when").append(document.createElement("br"), Object.assign(document.createElement("small"), { textContent: day.format(at) }));
  slot(item, "title").textContent = step.title;
  slot(item, "detail").textContent = step.detail;
  item.querySelector("time").dateTime = step.at;
  const form = item.querySelector("form");
  form.dataset.summary = `Done: ${step.title}`;
  form.elements.step.value = step.key;
  return item;
}
