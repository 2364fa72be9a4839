// The workbook: one step after the other, a field before each, and what was reached is remembered.
// Without this script every step can be opened by its own summary.
(() => {
  const main = document.querySelector("main");
  const covers = [...document.querySelectorAll("details.cover")];
  const remarks = new Map([...document.querySelectorAll("#remarks li")]
    .map((item) => [item.dataset.key, item.textContent]));
  const kSigns = { right: "✓", nearly: "≈", not: "·" };
  const kNearly = ["short", "cut", "close"];

  // A browser may refuse to keep anything, above all for a file: then nothing is remembered.
  const store = {
    load() {
      try {
        const kept = JSON.parse(localStorage.getItem(main.dataset.key) || "{}");
        return { shown: kept.shown || [], typed: kept.typed || {} };
      } catch {
        return { shown: [], typed: {} };
      }
    },
    save(state) {
      try {
        localStorage.setItem(main.dataset.key, JSON.stringify(state));
      } catch {
        // Kept until the page is closed.
      }
    },
  };
  let state = store.load();

  const holderOf = (cover) => cover.closest("section, article");
  const idOf = (cover) => holderOf(cover).id;
  const isShown = (cover) => state.shown.includes(idOf(cover));
  const say = (key, values = {}) => Object.entries(values).reduce(
    (text, [name, value]) => text.replaceAll(`{${name}}`, value), remarks.get(key) || "");
  const figuresInWords = (count) => (remarks.has(`figures-${count}`)
    ? say(`figures-${count}`) : say("figures-n", { figures: count }));

  // Up to the first step that is still covered, problem by problem; a section waits where all that
  // is covered in it waits.
  const showUpToFrontier = () => {
    for (const problem of document.querySelectorAll("article")) {
      let waits = false;
      for (const cover of problem.querySelectorAll("details.cover")) {
        holderOf(cover).hidden = waits;
        if (!isShown(cover)) waits = true;
      }
      for (const section of [...problem.querySelectorAll("section")].reverse()) {
        const inside = [...section.querySelectorAll("details.cover")];
        if (inside.length === 0) continue;
        section.hidden = inside.every((cover) => holderOf(cover).hidden);
      }
    }
    for (const link of document.querySelectorAll("nav a")) {
      const target = document.getElementById(link.hash.slice(1));
      link.parentElement.hidden = target !== null && target.closest("[hidden]") !== null;
    }
    const shown = covers.filter(isShown).length;
    document.getElementById("shown").textContent = say("shown",
      { shown, all: covers.length });
  };

  const show = (cover) => {
    cover.open = true;
    if (!isShown(cover)) state.shown.push(idOf(cover));
    store.save(state);
    showUpToFrontier();
  };

  const write = (field, kind, words) => {
    const output = field.querySelector("output");
    output.className = `remark ${kind}`;
    const sign = document.createElement("span");
    sign.setAttribute("aria-hidden", "true");
    sign.textContent = kSigns[kind];
    output.replaceChildren(sign, ` ${words}`);
  };

  const judge = (field) => {
    const { value, unit, figures, sign } = field.dataset;
    const typed = field.querySelector("input").value;
    const found = judgeValue(typed, value, unit, Number(figures));
    const kind = found.right ? "right" : kNearly.includes(found.key) ? "nearly" : "not";
    write(field, kind, say(found.key,
      { figures: figuresInWords(found.figures), unit: sign }));
    field.dataset.right = String(found.right);
    return found.right;
  };

  const setUpField = (field) => {
    const input = field.querySelector("input");
    const cover = field.closest("section").querySelector("details.cover");
    field.addEventListener("submit", (event) => {
      event.preventDefault();
      state.typed[input.id] = input.value;
      store.save(state);
      judge(field);
      const fields = [...field.parentElement.querySelectorAll("form")];
      if (fields.every((one) => one.dataset.right === "true")) show(cover);
    });
    const kept = state.typed[input.id];
    if (typeof kept !== "string" || kept === "") return;
    input.value = kept;
    judge(field);
  };

  const startAgain = () => {
    if (!window.confirm(say("forget"))) return;
    state = { shown: [], typed: {} };
    store.save(state);
    for (const cover of covers) cover.open = false;
    for (const field of document.querySelectorAll("form.question")) {
      field.reset();
      field.dataset.right = "false";
      field.querySelector("output").replaceChildren();
    }
    showUpToFrontier();
  };

  for (const part of document.querySelectorAll(".ask, #progress")) part.hidden = false;
  for (const field of document.querySelectorAll("form.question")) setUpField(field);
  for (const cover of covers) {
    cover.open = isShown(cover);
    // Fires later than `open` is set: after "Start again" it must not count as asked for.
    cover.addEventListener("toggle", () => {
      if (cover.open && !isShown(cover)) show(cover);
    });
  }
  document.getElementById("show-all").addEventListener("click", () => {
    state.shown = covers.map(idOf);
    for (const cover of covers) cover.open = true;
    store.save(state);
    showUpToFrontier();
  });
  document.getElementById("start-again").addEventListener("click", startAgain);
  showUpToFrontier();
})();
