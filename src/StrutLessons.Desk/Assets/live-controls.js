// A live view: labelled inputs above what they move. Only the latest places go out while an answer is on its way.
"use strict";
(() => {
  let count = 0;

  const figures = (value, step) => {
    const digits = Math.min(6, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
    return value.toFixed(digits).replace(/\.0+$/, "");
  };

  function build(view, index, id) {
    const row = document.createElement("p");
    row.className = "control";
    const label = document.createElement("label");
    label.htmlFor = id;
    label.textContent = view.label;
    row.append(label);
    const words = value => view.kind === "Choice" ? view.options[value] : figures(value, view.step) + (view.unit ? " " + view.unit : "");
    let input;
    if (view.kind === "Choice") {
      input = document.createElement("select");
      view.options.forEach((name, i) => input.add(new Option(name, i)));
      row.append(input);
    } else {
      input = document.createElement("input");
      input.type = view.kind === "Number" ? "number" : "range";
      Object.assign(input, { min: view.from, max: view.to, step: view.step, autocomplete: "off" });
      row.append(input);
      const said = document.createElement("output");
      said.htmlFor = id;
      row.append(said);
    }
    input.id = id;
    function say() {
      const said = row.querySelector("output");
      if (view.kind === "Number") said.textContent = view.unit + (input.validity.valid ? "" : ` (${words(view.from)} to ${words(view.to)})`);
      else if (said) {
        said.textContent = words(Number(input.value));
        input.setAttribute("aria-valuetext", said.textContent);
      }
    }
    return {
      row, input, say,
      place: () => Number(input.value),
      isValid: () => input.value !== "" && input.validity.valid,
      put(value) {
        if (document.activeElement !== input || Number(input.value) !== value) input.value = value;
        say();
      },
    };
  }

  // Puts the chart's new data into the drawn chart; anything else is exchanged as a whole.
  function exchange(place, html) {
    const fresh = document.createElement("div");
    fresh.innerHTML = html;
    const now = place.querySelector(":scope > figure.chart.drawn"), next = fresh.querySelector(":scope > figure.chart");
    if (now && next) {
      now.querySelector(".still").replaceWith(next.querySelector(".still"));
      now.querySelector("script").replaceWith(next.querySelector("script"));
      now.setAttribute("aria-label", next.getAttribute("aria-label"));
      lessonPage.draw(now);
      return;
    }
    place.replaceChildren(...fresh.childNodes);
    lessonPage.typeset(place);
    lessonPage.drawAll(place);
  }

  // view: controls, places and HTML from the kernel; move: sends places, the answer comes back through moved().
  function open(view, move) {
    const root = document.createElement("div");
    root.className = "live-view";
    root.setAttribute("role", "group");
    root.setAttribute("aria-label", "Move and watch");
    const controls = view.controls.map((control, i) => build(control, i, `move-${++count}`));
    controls.forEach((control, i) => {
      control.put(view.places[i]);
      root.append(control.row);
      control.input.addEventListener("input", () => {
        control.say();
        if (controls.every(one => one.isValid())) ask();
      });
    });
    const shown = document.createElement("div");
    shown.className = "shown";
    root.append(shown);

    let inFlight = false, wanted = false;
    function ask() {
      if (inFlight) {
        wanted = true;
        return;
      }
      inFlight = move(controls.map(control => control.place()));
      wanted = false;
    }
    function show(html) {
      while (shown.children.length > html.length) shown.lastChild.remove();
      html.forEach((piece, i) => {
        if (!shown.children[i]) shown.append(document.createElement("div"));
        exchange(shown.children[i], piece);
      });
    }
    return {
      root,
      start: () => show(view.html),
      name: view.live,
      moved(answer, isMine) {
        show(answer.html);
        if (isMine) {
          inFlight = false;
          if (wanted) ask();
        } else if (!inFlight) {
          controls.forEach((control, i) => control.put(answer.places[i]));
        }
      },
      // The socket or the kernel went: nothing is on its way any more.
      reset() { inFlight = wanted = false; },
    };
  }

  window.lessonControls = { open };
})();
