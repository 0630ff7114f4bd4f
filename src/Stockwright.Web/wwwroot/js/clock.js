// Counts down by the server's clock: the phone's may be minutes off. Everything is worked out from absolute times at each
// tick, so that a phone that slept is right when it wakes.

let ahead = 0;
const wasDue = new WeakMap();

/** The present by the server's clock, milliseconds. */
export const now = () => Date.now() - ahead;

/** How far this device is ahead of the server, milliseconds. */
export const aheadBy = () => ahead;

export function setAhead(milliseconds) {
  if (Number.isFinite(milliseconds)) ahead = milliseconds;
}

/** Takes the server's time off a page that came at `received` by this device's clock. */
export function setFrom(root, received) {
  const at = Date.parse(root?.dataset.now ?? "");
  if (!Number.isNaN(at)) setAhead(received - at);
}

/** When the first byte of this document came, by this device's clock. */
export function documentReceived() {
  const navigation = performance.getEntriesByType?.("navigation")[0];
  return navigation?.responseStart > 0 ? Date.now() - (performance.now() - navigation.responseStart) : Date.now();
}

export function span(minutes) {
  const hours = Math.floor(minutes / 60);
  if (hours === 0) return `${minutes} min`;
  return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
}

/** "in 12 min", "now", "8 min late". */
export function words(at, present = now()) {
  const left = at - present;
  if (left > 0) return `in ${span(Math.ceil(left / 60000))}`;
  return left > -60000 ? "now" : `${span(Math.floor(-left / 60000))} late`;
}

/** Time of day where the kitchen is, as far as the page says. */
export function timeOfDay(at, { zone, units } = {}) {
  const form = { hour: units === "us" ? "numeric" : "2-digit", minute: "2-digit", hour12: units === "us" };
  try {
    return new Intl.DateTimeFormat("en-GB", { ...form, timeZone: zone || undefined }).format(at);
  } catch {
    return new Intl.DateTimeFormat("en-GB", form).format(at);
  }
}

/** Reads aloud to those who do not see, without moving anything. */
export function say(text) {
  let spoken = document.getElementById("spoken");
  if (!spoken) {
    spoken = document.createElement("p");
    spoken.id = "spoken";
    spoken.className = "visually-hidden";
    spoken.setAttribute("role", "status");
    document.body.append(spoken);
  }
  spoken.textContent = text;
}

/** Puts every count-down right; true when one has come due since the last time. */
export function tick() {
  const present = now();
  let turned = false;
  for (const time of document.querySelectorAll("time[data-countdown]")) {
    const at = Date.parse(time.dateTime);
    if (Number.isNaN(at)) continue;
    const text = words(at, present);
    if (time.textContent !== text) time.textContent = text;
    const due = at <= present;
    time.classList.toggle("late", due);
    if (due && wasDue.get(time) === false) {
      turned = true;
      const title = time.closest("[data-title]")?.dataset.title;
      if (title) say(`Now: ${title}`);
    }
    wasDue.set(time, due);
  }
  return turned;
}
