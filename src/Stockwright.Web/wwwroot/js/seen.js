// Keeps a small summary of the batch last looked at, for the page that shows when there is no network.

import { aheadBy, now } from "./clock.js";
import { remembered } from "./entries.js";
import * as store from "./store.js";

const most = 8;

/** What is ahead, the soonest first, each once. */
function stepsOf(stove) {
  const steps = new Map([...stove.querySelectorAll("[data-alarm][data-at]")].map(({ dataset }) =>
    [dataset.alarm, { key: dataset.alarm, at: dataset.at, title: dataset.title ?? "", detail: dataset.detail ?? "" }]));
  return [...steps.values()].sort((one, other) => Date.parse(one.at) - Date.parse(other.at));
}

export async function remember() {
  const stove = document.getElementById("stove");
  if (!stove?.dataset.batch) return;
  const seen = {
    id: stove.dataset.batch,
    name: stove.dataset.name ?? "",
    log: stove.dataset.log,
    zone: stove.dataset.zone ?? "",
    units: stove.querySelector('form[data-entry] input[name="units"]')?.value ?? "metric",
    who: stove.querySelector('input[name="who"]')?.value.trim() || remembered(),
    seen: now(),
    ahead: aheadBy(),
    steps: stepsOf(stove),
  };
  try {
    await store.put("batches", seen);
    const all = (await store.all("batches")).sort((one, other) => other.seen - one.seen);
    for (const old of all.slice(most)) await store.remove("batches", old.id);
  } catch {
    // Then there is nothing to show without a network.
  }
}
