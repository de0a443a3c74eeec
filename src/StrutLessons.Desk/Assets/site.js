// Typesets the marked formulas and draws the charts. A page without this script stays readable: formulas as TeX, charts as
// still pictures. The program that writes the pages puts the table "inks" in front: colour in a chart -> style variable.
"use strict";
(() => {
  function typeset(root) {
    for (const place of root.querySelectorAll(".math")) {
      const tex = place.textContent.trim().replace(/^\\[([]|\\[)\]]$/g, "");
      katex.render(tex, place, { displayMode: place.matches("div, .display"), throwOnError: false });
    }
  }

  const variable = name => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

  // The colours of a chart are data: those of the lessons' palette are exchanged for the reader's light or dark ones.
  const channels = hex => [1, 3, 5].map(at => parseInt(hex.slice(at, at + 2), 16)).join(",");
  function repaint(value, shades) {
    if (typeof value === "string") return shades(value);
    if (Array.isArray(value)) return value.map(item => repaint(item, shades));
    if (value && typeof value === "object")
      return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, repaint(item, shades)]));
    return value;
  }
  function readersShades() {
    const exact = new Map(), clear = new Map();
    for (const [colour, name] of Object.entries(inks)) {
      exact.set(colour, variable(name));
      clear.set(channels(colour), channels(variable(name)));
    }
    return text => {
      if (exact.has(text)) return exact.get(text);
      const parts = /^rgba\((\d+,\d+,\d+),([\d.]+)\)$/.exec(text.replaceAll(" ", ""));
      return parts && clear.has(parts[1]) ? `rgba(${clear.get(parts[1])},${parts[2]})` : text;
    };
  }

  function draw(chart) {
    const figure = repaint(JSON.parse(chart.querySelector("script").textContent), readersShades());
    const live = chart.querySelector(".live");
    const layout = figure.layout ?? {};
    const modebar = { bgcolor: "transparent", color: variable("--soft"), activecolor: variable("--ink") };
    Object.assign(layout, { paper_bgcolor: "transparent", plot_bgcolor: "transparent", autosize: true, modebar });
    delete layout.width;
    layout.font = { ...layout.font, color: variable("--ink"), family: getComputedStyle(document.body).fontFamily };
    chart.classList.add("drawn");
    live.hidden = false;
    Plotly.react(live, figure.data, layout, {
      responsive: true, displayModeBar: false, showTips: false,
      modeBarButtonsToRemove: ["select2d", "lasso2d", "autoScale2d", "zoomIn2d", "zoomOut2d"],
    });
  }

  const drawAll = root => root.querySelectorAll("figure.chart").forEach(draw);
  typeset(document);
  drawAll(document);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => drawAll(document));

  // For scripts that add to the page later.
  window.lessonPage = { typeset, draw, drawAll };
})();
