// Sound, notifications and a screen that stays on, each switched on by a tap and each saying what is off here and why.
// A convenience, never the safety alarm.

import { now, span } from "./clock.js";
import * as outbox from "./outbox.js";
import * as store from "./store.js";

const repeatAfter = 120_000;
const mostRepeats = 5;
const tooOld = 3_600_000;
const anotherTime = 600_000;
const key = "stockwright-reminders";

let audio;
let lock;
const wanted = load();

function load() {
  try {
    return JSON.parse(localStorage.getItem(key) ?? "{}");
  } catch {
    return {};
  }
}

function keep() {
  try {
    localStorage.setItem(key, JSON.stringify(wanted));
  } catch {
    // Until the page is closed, then.
  }
}

const plain = "This page came over plain HTTP, where browsers keep it back; it works over HTTPS, or on the machine itself.";

/** Why something cannot be had here; empty when it can. */
const obstacles = {
  sound: () => "AudioContext" in window ? "" : "This browser plays no sounds from a page.",
  notice: () => !window.isSecureContext ? plain
    : !("Notification" in window) ? "This browser shows no notifications from a page; some do once the page is added to the home screen."
    : Notification.permission === "denied" ? "Notifications from this address were refused in this browser; its settings can allow them again." : "",
  screen: () => !window.isSecureContext ? plain : "wakeLock" in navigator ? "" : "This browser lets no page keep the screen on.",
};

const switches = {
  sound: { label: "Sound when something is due", on: soundOn, state: () => audio?.state === "running" ? "On: a sound at the time, and again every two minutes until it is entered." : "Asleep until you touch this page: browsers play nothing before." },
  notice: { label: "Notification when something is due", on: noticeOn, state: () => "On, while this page is open, also when another is in front of it." },
  screen: { label: "Keep the screen on", on: screenOn, state: () => lock ? "On, while this page is in view." : "Not held just now; a phone low on battery may refuse." },
};

export function setUp() {
  const box = document.getElementById("reminders");
  if (!box) return;
  if (!box.querySelector("fieldset")) box.replaceChildren(build());
  refresh();
  if (wanted.sound) soundOn().then(refresh, refresh);
  if (wanted.screen) screenOn().then(refresh, refresh);
}

function build() {
  const set = document.createElement("fieldset");
  set.className = "reminders";
  const legend = document.createElement("legend");
  legend.textContent = "Reminders on this device";
  const caution = document.createElement("p");
  caution.className = "hint";
  caution.textContent = "A convenience, never the safety alarm: keep a kitchen timer beside the pot.";
  set.append(legend, caution);
  for (const [name, { label, on }] of Object.entries(switches)) {
    const row = document.createElement("p");
    row.className = "switch";
    const tick = document.createElement("label");
    tick.className = "tick";
    const input = document.createElement("input");
    input.type = "checkbox";
    input.setAttribute("role", "switch");
    input.setAttribute("aria-describedby", `reminder-${name}`);
    input.dataset.reminder = name;
    input.autocomplete = "off";
    input.addEventListener("change", async () => {
      wanted[name] = input.checked;
      keep();
      if (input.checked) await on(true).catch(() => { });
      else if (name === "screen") await lock?.release().catch(() => { });
      refresh();
    });
    tick.append(input, label);
    const state = document.createElement("span");
    state.id = `reminder-${name}`;
    state.className = "hint";
    row.append(tick, " ", state);
    set.append(row);
  }
  return set;
}

function refresh() {
  for (const [name, { state }] of Object.entries(switches)) {
    const input = document.querySelector(`[data-reminder="${name}"]`);
    if (!input) return;
    const obstacle = obstacles[name]();
    const on = Boolean(wanted[name]) && obstacle === "" && (name !== "notice" || Notification.permission === "granted");
    input.disabled = obstacle !== "";
    input.checked = on;
    document.getElementById(`reminder-${name}`).textContent = obstacle ? `Off here. ${obstacle}` : on ? state() : "Off.";
  }
}

async function soundOn(tapped) {
  audio ??= new AudioContext();
  audio.onstatechange = refresh;
  // Before the first touch this never answers, so it is not waited for.
  if (audio.state !== "running") audio.resume().catch(() => { });
  if (tapped) {
    await audio.resume();
    ring(1);
  }
}

async function noticeOn(tapped) {
  if (tapped && Notification.permission === "default") await Notification.requestPermission();
}

async function screenOn() {
  if (obstacles.screen() || document.hidden || lock) return;
  lock = await navigator.wakeLock.request("screen");
  lock.addEventListener("release", () => {
    lock = undefined;
    refresh();
  });
}

/** Two tones a fan and a boiling pot do not cover. */
function ring(times) {
  if (audio?.state !== "running") return;
  for (let time = 0; time < times; time++) {
    for (const [pitch, from] of [[880, 0], [1320, 0.22]]) {
      const start = audio.currentTime + 0.9 * time + from;
      const tone = audio.createOscillator();
      const loudness = audio.createGain();
      tone.type = "square";
      tone.frequency.value = pitch;
      loudness.gain.setValueAtTime(0, start);
      loudness.gain.linearRampToValueAtTime(0.25, start + 0.02);
      loudness.gain.setValueAtTime(0.25, start + 0.17);
      loudness.gain.linearRampToValueAtTime(0, start + 0.2);
      tone.connect(loudness).connect(audio.destination);
      tone.start(start);
      tone.stop(start + 0.21);
    }
  }
}

async function notify(title, body, tag, url) {
  if (!wanted.notice || obstacles.notice() || Notification.permission !== "granted") return;
  const options = { body, tag, renotify: true, data: { url }, icon: document.querySelector('link[rel="icon"]')?.href };
  const worker = await navigator.serviceWorker?.getRegistration().catch(() => undefined);
  if (worker) await worker.showNotification(title, options);
  else new Notification(title, options).onclick = () => focus();
}

/** Whether it is time to ring for a step, noted in the same moment, so that two tabs do not both ring. */
async function isTime(name, at) {
  let due = false;
  await store.change("notes", name, old => {
    const present = now();
    const before = old && at > old.last + anotherTime ? undefined : old;
    due = !before || (before.times <= mostRepeats && present - before.last >= repeatAfter);
    return due ? { last: present, times: (before?.times ?? 0) + 1 } : undefined;
  });
  return due;
}

let looking = false;

/** Looks what has come due; called at every tick. */
export async function look() {
  if (looking || (!wanted.sound && !wanted.notice)) return;
  const due = [...document.querySelectorAll("[data-alarm][data-at]")].filter(step => {
    const late = now() - Date.parse(step.dataset.at);
    return late >= 0 && late < tooOld;
  });
  if (due.length === 0) return;
  looking = true;
  try {
    const kept = await outbox.list();
    for (const step of due) {
      // The today page names the batch before the step.
      const [key, named] = step.dataset.alarm.split(":").reverse();
      const batch = named ?? step.closest("[data-batch]")?.dataset.batch ?? "";
      const noted = kept.some(record => record.batch === batch && record.fields.some(field => field.name === "step" && field.value === key));
      const at = Date.parse(step.dataset.at);
      if (noted || !await isTime(`rung ${batch} ${key}`, at)) continue;
      const late = Math.floor((now() - at) / 60000);
      const name = step.closest("[data-name]")?.dataset.name ?? "";
      if (wanted.sound) ring(3);
      await notify(step.dataset.title ?? "Something is due", [late > 0 ? `${span(late)} late.` : "", step.dataset.detail, name].filter(Boolean).join(" "), `${batch} ${key}`, batch ? `/batches/${batch}` : "/");
    }
  } catch {
    // Without a store nothing says what has rung; better no ring than one each second.
  } finally {
    looking = false;
  }
}

if (!window.stockwrightReminders) {
  window.stockwrightReminders = true;
  setInterval(look, 1000);
  for (const name of ["pointerdown", "keydown"]) {
    addEventListener(name, () => {
      if (wanted.sound && audio && audio.state !== "running") audio.resume().catch(() => { });
    }, true);
  }
  document.addEventListener("visibilitychange", () => {
    if (document.hidden) return;
    if (wanted.screen) screenOn().then(refresh, refresh);
    look();
  });
}
