// Takes over the entry forms: what is entered is kept on this device first and delivered after. Without this module the same forms
// are posted as forms always were.

import { say } from "./clock.js";
import * as outbox from "./outbox.js";
import { describe } from "./record.js";
import * as store from "./store.js";

const doubleTap = 1000;
const busy = new WeakSet();
const notes = new Map();

export const whoKey = "cook";

async function take(form, submitter) {
  if (busy.has(form) || form.dataset.noted) return;
  busy.add(form);
  try {
    const record = await describe(form, submitter);
    addWho(record);
    try {
      await outbox.keep(record);
    } catch {
      await sendAtOnce(form, record);
      return;
    }
    clear(form);
    tell(form, record, `Kept: ${record.summary}. Waiting to be sent.`);
    outbox.deliver(true);
  } finally {
    // A wet finger taps twice; that is one entry.
    setTimeout(() => busy.delete(form), doubleTap);
  }
}

/** The browser keeps nothing (private window, full store): straight to the server, and what was typed stays until it has it. */
async function sendAtOnce(form, record) {
  tell(form, record, "This browser keeps nothing, so the entry is sent straight away…");
  const outcome = await outbox.send(record);
  if (outcome.kind === "stored") {
    clear(form);
    tell(form, record, `Sent: ${record.summary}.`);
    outbox.news.dispatchEvent(new CustomEvent("delivered", { detail: record }));
  } else if (outcome.kind === "refused") {
    tell(form, record, `Not taken: ${outcome.reasons.map(reason => reason.message).join(" ")}`);
  } else {
    tell(form, record, "Not sent, and this browser cannot keep it. It stands here as you typed it: send it again when there is a connection.");
  }
}

function addWho(record) {
  const field = record.fields.find(each => each.name === "who");
  const known = document.querySelector('input[name="who"]')?.value.trim() || remembered();
  if (!field && known) record.fields.push({ name: "who", value: known, typed: false });
  else if (field && field.value.trim() === "" && known) field.value = known;
  const who = record.fields.find(each => each.name === "who")?.value.trim();
  if (who) remember(who);
}

export function remembered() {
  try {
    return localStorage.getItem(whoKey) ?? "";
  } catch {
    return "";
  }
}

function remember(who) {
  for (const input of document.querySelectorAll('form[data-entry] input[name="who"]')) input.value = who;
  try {
    localStorage.setItem(whoKey, who);
  } catch {
    // Asked again next time.
  }
}

function clear(form) {
  form.reset();
  fillWho();
}

/** Beside the button that was pressed: the box of what waits may be out of sight. */
function tell(form, record, text) {
  let output = form.querySelector("output.said");
  if (!output) {
    output = document.createElement("output");
    output.className = "said";
    form.append(output);
  }
  output.textContent = text;
  notes.set(record.id, output);
  say(text);
}

outbox.news.addEventListener("delivered", event => {
  const output = notes.get(event.detail.id);
  if (output?.isConnected) {
    output.textContent = `Sent: ${event.detail.summary}.`;
    setTimeout(() => output.remove(), 6000);
  }
  notes.delete(event.detail.id);
});

/** Steps that are noted but not sent yet are not to be noted again. */
export async function markNoted() {
  const waiting = await outbox.list().catch(() => []);
  const value = (record, name) => record.fields.find(field => field.name === name)?.value;
  const noted = new Set(waiting.filter(record => record.state === "waiting" && value(record, "kind") === "step-done")
    .map(record => `${record.batch} ${value(record, "step")}`));
  for (const record of waiting) {
    if (record.state === "refused" && notes.get(record.id)?.isConnected) notes.get(record.id).textContent = "Not taken. The reason stands under “Not sent yet”.";
  }
  for (const form of document.querySelectorAll("form[data-entry]")) {
    const step = form.querySelector('input[name="step"]')?.value;
    if (step === undefined) continue;
    const isNoted = noted.has(`${form.dataset.batch ?? form.closest("[data-batch]")?.dataset.batch} ${step}`);
    if (isNoted) form.dataset.noted = "yes";
    else delete form.dataset.noted;
    for (const button of form.querySelectorAll("button")) {
      if (isNoted) button.setAttribute("aria-disabled", "true");
      else button.removeAttribute("aria-disabled");
    }
    if (isNoted && !form.querySelector("output.said")) {
      const output = document.createElement("output");
      output.className = "said";
      output.textContent = "Kept, waiting to be sent.";
      form.append(output);
    }
    if (!isNoted && form.querySelector("output.said")?.textContent.startsWith("Kept, waiting")) form.querySelector("output.said").remove();
  }
}

/** Fills in the cook's name where the server does not know it yet. */
export function fillWho() {
  const known = remembered();
  if (!known) return;
  for (const input of document.querySelectorAll('input[name="who"]')) {
    if (input.value === "" || input.value === input.defaultValue) input.value = known;
  }
}

if (!window.stockwrightEntries) {
  window.stockwrightEntries = true;
  document.addEventListener("submit", event => {
    if (!event.target.matches?.("form[data-entry]")) return;
    event.preventDefault();
    take(event.target, event.submitter);
  });
  outbox.news.addEventListener("change", markNoted);
}
