// Sends the planner's form as it changes, so that the answer follows the hand. Without this module the
// button "Work it out" does the same. Safe to run any number of times: everything hangs on the document.

const pause = 250;
let timer = 0;
const unfolded = new Map();

const planner = () => document.querySelector("form[data-planner]");

function send(form) {
  clearTimeout(timer);
  timer = setTimeout(() => {
    if (form.isConnected) form.requestSubmit();
  }, pause);
}

document.addEventListener("change", event => {
  const form = event.target.form;
  if (form && form === planner()) send(form);
});

// A pressed key must not leave a second sending behind the first.
document.addEventListener("submit", event => {
  if (event.target === planner()) clearTimeout(timer);
}, true);

// Blank fields and usual values are not sent: the link stays short enough to read.
document.addEventListener("formdata", event => {
  const form = event.target;
  if (form !== planner()) return;
  for (const [name, value] of [...event.formData.entries()]) {
    // Some fields stand beside their answers, outside the form element.
    const field = [...form.elements].find(each => each.name === name);
    if (value === "" || field?.dataset.usual === value) event.formData.delete(name);
  }
});

// The server renders folds shut; what the cook unfolded stays unfolded when the answer comes.
document.addEventListener("click", event => {
  const summary = event.target.closest?.("details.fold > summary");
  if (summary) unfolded.set(summary.parentElement.id, !summary.parentElement.open);
});

function setUp() {
  for (const [id, open] of unfolded) {
    const fold = document.getElementById(id);
    if (fold && (open || !fold.querySelector(".problem"))) fold.open = open;
  }
}

if (!window.stockwrightPlanner) {
  window.stockwrightPlanner = true;
  window.Blazor?.addEventListener?.("enhancedload", setUp);
}

setUp();
