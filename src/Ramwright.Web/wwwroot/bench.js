// Keys, jumps to fields, and presses on the drawing. Everything else happens on the server.
"use strict";

function goTo(path, byKey) {
  let at = null;
  if (path.startsWith("#")) {
    at = document.querySelector(path);
  } else {
    for (let p = path; p && !at; p = p.includes(".") ? p.slice(0, p.lastIndexOf(".")) : "") at = document.getElementById("at-" + p);
  }
  at = at || document.getElementById("values");
  if (!at) return;
  for (let d = at.closest("details"); d; d = d.parentElement && d.parentElement.closest("details")) d.open = true;
  const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
  at.scrollIntoView({ block: path.startsWith("#") ? "start" : "center", behavior: calm ? "auto" : "smooth" });
  const input = path.startsWith("#") && !byKey ? null : at.matches("button, input") ? at : at.querySelector("input, select, summary, button.rung");
  if (input) input.focus({ preventScroll: true });
}

// on a wide screen the values stand beside the drawing: they follow the chosen part, the page itself stays where it is
function goToQuietly(path) {
  const pane = document.getElementById("values");
  if (!pane || getComputedStyle(pane).position !== "sticky") return;
  let at = null;
  for (let p = path; p && !at; p = p.includes(".") ? p.slice(0, p.lastIndexOf(".")) : "") at = document.getElementById("at-" + p);
  if (!at) return;
  for (let d = at.closest("details"); d; d = d.parentElement && d.parentElement.closest("details")) d.open = true;
  pane.scrollTop += at.getBoundingClientRect().top - pane.getBoundingClientRect().top - 12;
  at.classList.remove("flash");
  void at.offsetWidth;
  at.classList.add("flash");
}

document.addEventListener("click", e => {
  const quiet = e.target.closest("[data-goto-quietly]");
  if (quiet) goToQuietly(quiet.dataset.gotoQuietly);
  const jump = e.target.closest("[data-goto]");
  if (jump) goTo(jump.dataset.goto, e.detail === 0);
  const part = e.target.closest(".sheet [data-part]");
  if (part) {
    const button = document.querySelector(`[data-pick="${CSS.escape(part.dataset.part)}"]`);
    if (button) button.click();
  }
});

document.addEventListener("keydown", e => {
  if (!(e.ctrlKey || e.metaKey) || e.altKey) return;
  const key = e.key.toLowerCase();
  const id = key === "s" ? "save" : key === "y" || (key === "z" && e.shiftKey) ? "redo" : key === "z" ? "undo" : null;
  const button = id && document.getElementById(id);
  if (!button) return;
  e.preventDefault();
  // what is still being typed goes in first
  if (document.activeElement instanceof HTMLInputElement) {
    const field = document.activeElement;
    field.blur();
    field.focus();
  }
  // a slow machine may not have taken in the last letters yet: then there seems to be nothing to save
  let tries = id === "save" ? 40 : 1;
  const press = () => {
    tries--;
    const now = document.getElementById(id);
    if (now && !now.disabled) now.click();
    else if (tries > 0) setTimeout(press, 60);
  };
  setTimeout(press, 60);
});
