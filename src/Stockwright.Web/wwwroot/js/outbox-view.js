// Shows what waits on this device, in words, and what was refused, with the reasons beside what was typed.

import * as outbox from "./outbox.js";
import { summarize } from "./record.js";

const confirmFor = 5000;

function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === true) element.setAttribute(name, "");
    else if (value !== false && value !== undefined) element.setAttribute(name, value);
  }
  element.append(...children);
  return element;
}

export async function show() {
  const box = document.getElementById("outbox");
  if (!box) return;
  let records;
  try {
    records = await outbox.list();
  } catch {
    box.replaceChildren(make("p", { class: "notice" }, "This browser keeps nothing for later: entries go straight to the server, and need a connection."));
    return;
  }
  const batch = box.closest("[data-batch]")?.dataset.batch;
  const own = batch ? records.filter(record => record.batch === batch) : records;
  const elsewhere = records.length - own.length;
  const waiting = own.filter(record => record.state === "waiting");
  const refused = own.filter(record => record.state === "refused");
  const wanted = [];
  if (waiting.length > 0) {
    const why = waiting.find(record => record.why)?.why;
    wanted.push(
      ["waiting-title", () => make("h2", {}, "Not sent yet")],
      [`waiting-why-${why}`, () => make("p", { class: "hint" }, `Kept on this device and sent by itself, in order${why ? ` (${why})` : ""}.`)],
      [`waiting-${waiting.map(record => record.id).join()}`, () => make("ul", { class: "waiting" }, ...waiting.map(record =>
        make("li", { "data-waiting": record.id }, `Waiting to be sent: ${record.summary}${batch || !record.name ? "" : ` (${record.name})`}`)))]);
  }
  for (const record of refused) wanted.push([`refused-${record.id}`, () => refusal(record)]);
  if (elsewhere > 0) wanted.push([`elsewhere-${elsewhere}`, () => make("p", { class: "hint" }, elsewhere === 1 ? "One entry of another batch waits too." : `${elsewhere} entries of other batches wait too.`)]);
  arrange(box, wanted);
}

/** What is there already stays as it is: somebody may be typing in it. */
function arrange(box, wanted) {
  const standing = new Map([...box.children].map(child => [child.dataset.part, child]));
  const keep = new Set(wanted.map(([part]) => part));
  for (const [part, child] of standing) if (!keep.has(part)) child.remove();
  let before = null;
  for (const [part, build] of wanted) {
    let element = standing.get(part);
    if (!element) {
      element = build();
      element.dataset.part = part;
      if (before) before.after(element);
      else box.prepend(element);
    }
    before = element;
  }
}

function refusal(record) {
  const form = make("form", { class: "refused problems", "data-refused": record.id });
  form.append(make("h2", {}, `Not taken: ${record.summary}`));
  const shown = record.fields.filter(field => field.typed);
  const loose = record.reasons.filter(reason => !shown.some(field => field.name === reason.field));
  if (loose.length > 0) form.append(make("ul", {}, ...loose.map(reason => make("li", { class: "problem" }, reason.message))));
  const fields = make("div", { class: "fields" });
  for (const field of shown) fields.append(fieldOf(field, record));
  form.append(fields);
  const discard = make("button", { type: "button", class: "quiet" }, "Discard it");
  const actions = make("div", { class: "actions" }, make("button", {}, "Send again"), discard);
  if (record.reasons.some(reason => reason.field === "at" && reason.message.includes("mean yesterday")) && form.elements["at-day"]) {
    const yes = make("button", { type: "button" }, `Yes, yesterday ${record.fields.find(field => field.name === "at")?.value.trim()}`);
    yes.addEventListener("click", () => {
      form.elements["at-day"].value = "yesterday";
      form.requestSubmit();
    });
    actions.prepend(yes);
  }
  form.append(actions);

  form.addEventListener("submit", event => {
    event.preventDefault();
    const fixed = record.fields.map(field => field.typed ? { ...field, value: form.elements[field.name].value } : field);
    outbox.mend(record.order, fixed, summarize(record.title, fixed, record.clock));
  });
  discard.addEventListener("click", () => {
    if (discard.dataset.sure) {
      outbox.discard(record.order);
      return;
    }
    discard.dataset.sure = "yes";
    discard.textContent = "Tap again to discard it for good";
    setTimeout(() => {
      delete discard.dataset.sure;
      discard.textContent = "Discard it";
    }, confirmFor);
  });
  return form;
}

function fieldOf(field, record) {
  const id = `mend-${record.order}-${field.name}`;
  const reasons = record.reasons.filter(reason => reason.field === field.name);
  const about = reasons.length > 0 ? { "aria-invalid": "true", "aria-describedby": `${id}-problem` } : {};
  let input;
  if (field.options) {
    input = make("select", { id, name: field.name, ...about }, ...field.options.map(option => make("option", { value: option.value, selected: option.value === field.value }, option.text)));
  } else if (field.long) {
    input = make("textarea", { id, name: field.name, rows: "3", ...about }, field.value);
  } else {
    input = make("input", { id, name: field.name, type: "text", value: field.value, autocomplete: "off", ...about });
  }
  const row = make("div", { class: reasons.length > 0 ? "field wrong" : "field" }, make("label", { for: id }, field.label || field.name), input);
  if (field.unit) row.append(make("span", { class: "unit" }, field.unit));
  if (reasons.length > 0) row.append(make("span", { class: "problem", id: `${id}-problem` }, ...reasons.map(reason => make("span", {}, reason.message))));
  return row;
}

if (!window.stockwrightOutboxView) {
  window.stockwrightOutboxView = true;
  outbox.news.addEventListener("change", show);
}
