// Typesets the marked formulas and draws the charts. A page without this script stays readable: formulas as TeX, charts as still pictures.
"use strict";
(() => {
  for (const place of document.querySelectorAll(".math")) {
    const tex = place.textContent.trim().replace(/^\\[([]|\\[)\]]$/g, "");
    katex.render(tex, place, { displayMode: place.matches("div, .display"), throwOnError: false });
  }

  const charts = document.querySelectorAll("figure.chart");
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const colour = name => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

  function draw(chart) {
    const figure = JSON.parse(chart.querySelector("script").textContent);
    const live = chart.querySelector(".live");
    const layout = figure.layout || {};
    const ink = colour("--ink"), line = colour("--rule");
    Object.assign(layout, { paper_bgcolor: "transparent", plot_bgcolor: "transparent", autosize: true,
      modebar: { bgcolor: "transparent", color: colour("--soft"), activecolor: colour("--ink") } });
    delete layout.width;
    layout.font = Object.assign({}, layout.font, { color: ink, family: getComputedStyle(document.body).fontFamily });
    for (const key of Object.keys(layout).filter(key => /^[xy]axis\d*$/.test(key))) {
      Object.assign(layout[key], { gridcolor: line, linecolor: ink, zerolinecolor: line });
    }
    chart.classList.add("drawn");
    live.hidden = false;
    Plotly.react(live, figure.data, layout, { responsive: true, displaylogo: false, showTips: false });
  }

  const drawAll = () => charts.forEach(draw);
  drawAll();
  dark.addEventListener("change", drawAll);
})();
