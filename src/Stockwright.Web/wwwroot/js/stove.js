// Brings the pages of a batch to life. Each of them does its whole job without; so do all of these on browsers that lack something.

import { markNoted, fillWho } from "./entries.js";
import * as live from "./live.js";
import * as outbox from "./outbox.js";
import { show } from "./outbox-view.js";
import * as reminders from "./reminders.js";
import { remember } from "./seen.js";

function mark() {
  show();
  markNoted();
  fillWho();
  remember();
}

function setUp(enhanced) {
  live.setUp(enhanced);
  reminders.setUp();
  mark();
  if (document.getElementById("offline")) import("./offline.js").then(offline => offline.setUp());
}

if (!window.stockwrightStove) {
  window.stockwrightStove = true;
  live.onRefresh(mark);
  outbox.news.addEventListener("delivered", () => live.refresh());
  outbox.start();
  window.Blazor?.addEventListener?.("enhancedload", () => setUp(true));
  navigator.serviceWorker?.register("/sw.js", { updateViaCache: "none" }).catch(() => { });
  setUp(false);
}
