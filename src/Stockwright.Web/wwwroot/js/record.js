// Turns an entry form into a record for the outbox: what was typed, with the labels and units it was typed under, so that it can be
// read, and put right, without the page it came from.

import { now, timeOfDay } from "./clock.js";
import { newId } from "./outbox.js";

const ours = new Set(["entry", "device-time", "device-zone", "sent", "_handler", "__RequestVerificationToken"]);
const largePhoto = 1_500_000;
const longestSide = 2000;

export const zoneHere = () => Intl.DateTimeFormat().resolvedOptions().timeZone ?? "";

export async function describe(form, submitter) {
  const made = new Date();
  const frame = form.closest("[data-batch]");
  const fields = [];
  for (const [name, value] of data(form, submitter)) {
    if (ours.has(name)) continue;
    if (!(value instanceof File)) fields.push({ name, value, ...meaning(form, name) });
    else if (value.size > 0) fields.push({ name, file: await picture(value), label: label(form.elements[name]) });
  }
  const units = fields.find(field => field.name === "units")?.value;
  const record = {
    id: newId(),
    batch: form.dataset.batch ?? frame?.dataset.batch,
    name: frame?.dataset.name ?? "",
    log: form.dataset.log ?? frame?.dataset.log ?? form.closest("[data-log]")?.dataset.log,
    title: form.dataset.summary ?? "Entry",
    made: made.toISOString(),
    zone: zoneHere(),
    clock: timeOfDay(now(), { zone: form.closest("[data-zone]")?.dataset.zone, units }),
    fields,
  };
  return { ...record, summary: summarize(record.title, fields, record.clock) };
}

/** "Level read 6 cm, 14:20". */
export function summarize(title, fields, clock) {
  const shown = fields.filter(field => field.typed && field.value.trim() !== "" && field.name !== "who" && field.name !== "at" && field.name !== "at-day");
  const words = shown.map(field => {
    const text = field.options?.find(option => option.value === field.value)?.text ?? field.value.trim();
    const short = text.length > 60 ? `${text.slice(0, 57)}…` : text;
    return field.unit ? `${short} ${field.unit}` : short;
  });
  const typed = fields.find(field => field.name === "at")?.value.trim();
  const day = typed && fields.find(field => field.name === "at-day")?.value === "yesterday" ? "yesterday " : "";
  const at = day + (typed || clock);
  return `${[title, words.join(", ")].filter(Boolean).join(" ")}, ${at}`;
}

function data(form, submitter) {
  try {
    return new FormData(form, submitter);
  } catch {
    const plain = new FormData(form);
    if (submitter?.name) plain.append(submitter.name, submitter.value);
    return plain;
  }
}

function meaning(form, name) {
  const found = form.elements[name];
  const element = found instanceof RadioNodeList ? found[0] : found;
  if (!element || element.type === "hidden" || element instanceof HTMLButtonElement) return { typed: false };
  const unit = element.closest(".field")?.querySelector(".unit")?.textContent.trim() ?? "";
  if (element instanceof HTMLSelectElement) {
    return { typed: true, label: label(element), unit, options: [...element.options].map(option => ({ value: option.value, text: option.textContent.trim() })) };
  }
  if (element.type === "radio") {
    const choices = found instanceof RadioNodeList ? [...found] : [element];
    const legend = element.closest("fieldset")?.querySelector("legend")?.textContent.trim() ?? "";
    return { typed: true, label: legend, unit: "", options: choices.map(choice => ({ value: choice.value, text: label(choice) })) };
  }
  return element.type === "checkbox" ? { typed: false } : { typed: true, label: label(element), unit, long: element instanceof HTMLTextAreaElement };
}

function label(element) {
  const text = element?.labels?.[0]?.textContent ?? element?.getAttribute?.("aria-label") ?? "";
  return text.replace(/\s+/g, " ").trim();
}

/** Kept as bytes, for some browsers lose files they were given to keep. A large picture is made smaller first, which also takes the place it was taken at out of it. */
async function picture(file) {
  if (file.type.startsWith("image/") && file.size > largePhoto && "createImageBitmap" in window) {
    try {
      const image = await createImageBitmap(file, { imageOrientation: "from-image" });
      const scale = Math.min(1, longestSide / Math.max(image.width, image.height));
      const canvas = document.createElement("canvas");
      canvas.width = Math.round(image.width * scale);
      canvas.height = Math.round(image.height * scale);
      canvas.getContext("2d").drawImage(image, 0, 0, canvas.width, canvas.height);
      image.close();
      const smaller = await new Promise(resolve => canvas.toBlob(resolve, "image/jpeg", 0.85));
      if (smaller && smaller.size < file.size) return { name: "photo.jpg", type: smaller.type, bytes: await smaller.arrayBuffer() };
    } catch {
      // As it is, then.
    }
  }
  return { name: file.name, type: file.type, bytes: await file.arrayBuffer() };
}
