// The live page: one socket to the program, cells that follow what it says. The program holds the truth; after a pause of any
// length the page connects again, takes the whole state and hands in what was typed meanwhile.
"use strict";
(() => {
  const lesson = document.querySelector("main[data-lesson]").dataset.lesson;
  const bar = document.querySelector(".bar"), status = bar.querySelector(".kernel"), notice = document.querySelector(".notice");
  const template = document.getElementById("new-cell"), title = document.title;
  const cells = new Map(), questions = new Map();
  let socket = null, tab = null, tries = 0, retry = 0, lastQuestion = 0, kernel = { state: "none" }, isFirst = true, focusNew = false;

  const page = {
    send(ask) {
      if (!tab || socket?.readyState !== WebSocket.OPEN) return false;
      if (ask.ask === "add") focusNew = true;
      socket.send(JSON.stringify(ask));
      return true;
    },
    // The program runs the text it has: what was just typed goes ahead of the request.
    async run(ids) {
      if (!tab) return page.say("Not connected: the cell cannot run now.");
      await Promise.all(ids.map(id => cells.get(id).kept()));
      page.send({ ask: "run", cells: ids });
    },
    runFrom(id) {
      const ids = order();
      return page.run(ids.slice(ids.indexOf(id)));
    },
    after(id) {
      const ids = order();
      return cells.get(ids[ids.indexOf(id) + 1]);
    },
    complete(text, position) {
      const id = ++lastQuestion;
      if (kernel.state === "busy") page.say("Names are offered when the running cell has ended.");
      if (!page.send({ ask: "complete", id, text, position })) return null;
      return new Promise(answer => questions.set(id, answer));
    },
    say(words) { status.textContent = words; },
  };

  const order = () => [...document.querySelectorAll(".live-cell")].map(section => section.dataset.cell);

  function warn(words, ...deeds) {
    notice.hidden = words == null;
    notice.replaceChildren(words ?? "");
    for (const [label, act] of deeds) {
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = label;
      button.addEventListener("click", act);
      notice.append(" ", button);
    }
  }

  function takeAll(say) {
    tab = say.tab;
    const ids = new Set(say.cells.map(cell => cell.text.cell));
    for (const section of document.querySelectorAll(".live-cell")) {
      if (ids.has(section.dataset.cell)) continue;
      cells.get(section.dataset.cell)?.close();
      cells.delete(section.dataset.cell);
      section.remove();
    }
    let before = null;
    say.cells.forEach((view, i) => {
      const id = view.text.cell;
      let section = document.querySelector(`.live-cell[data-cell="${CSS.escape(id)}"]`);
      let isNew = false;
      if (!section) {
        section = template.content.firstElementChild.cloneNode(true);
        section.dataset.cell = id;
        section.querySelector("pre.code").textContent = view.text.text;
        if (before) before.after(section);
        else document.querySelector("main").append(section);
        isNew = true;
      }
      if (!cells.has(id)) cells.set(id, lessonCell.open(section, page));
      cells.get(id).take(view, i + 1, tab);
      if (isNew && focusNew) {
        focusNew = false;
        cells.get(id).focus();
      }
      before = section;
    });
    takeKernel(say.kernel);
    if (!isFirst) page.say("Connected again.");
    isFirst = false;
    document.body.classList.add("ready");
  }

  function takeKernel(say) {
    const was = kernel.state;
    kernel = say;
    document.body.dataset.kernel = say.state;
    document.title = say.state === "busy" ? `Running · ${title}` : title;
    bar.querySelector("[data-do=stop]").disabled = !(say.state === "busy" || say.state === "starting");
    if (say.state === "ended") {
      warn(`${say.words ?? "The kernel has ended."} Your text is kept; what the cells had computed is gone.`,
        ["Start a fresh one", () => page.send({ ask: "restart" })],
        ["Start fresh and run all", () => page.run(order())]);
    } else if (was === "ended") {
      warn(null);
    }
    if (say.state !== "busy" && say.state !== "ready") cells.forEach(cell => cell.outputs.reset());
    if (say.state === "starting") page.say("The kernel is starting …");
    if (say.state === "ready" && was === "starting") page.say("Ready.");
    if (say.state === "none") page.say(was === "none" ? "Press Run, or Shift + Enter in a cell." : "Fresh start: run the cells from the top.");
  }

  function take(say) {
    const cell = cells.get(say.cell);
    switch (say.say) {
      case "all": takeAll(say); break;
      case "text": cell?.takeText(say, tab); break;
      case "state": cell?.takeState(say); break;
      case "piece": cell?.outputs.put(say); break;
      case "write": cell?.outputs.write(say); break;
      case "moved": cell?.outputs.moved(say, say.by === tab); break;
      case "kernel": takeKernel(say); break;
      case "notice": warn(say.words, ["Close", () => warn(null)]); break;
      case "completion":
        questions.get(say.id)?.(say);
        questions.delete(say.id);
        break;
    }
  }

  function connect() {
    clearTimeout(retry);
    socket = new WebSocket(`ws://${location.host}/${encodeURIComponent(lesson)}/socket`);
    socket.addEventListener("open", () => {
      if (tries > 3) warn(null);
      tries = 0;
    });
    socket.addEventListener("message", event => take(JSON.parse(event.data)));
    socket.addEventListener("close", lost);
  }
  function lost() {
    tab = null;
    questions.forEach(answer => answer(null));
    questions.clear();
    cells.forEach(cell => cell.outputs.reset());
    tries++;
    if (tries > 1) page.say("Not connected. Trying again …");
    if (tries === 4) warn("StrutLessons does not answer. If it has ended, start it again and open the new address. What you type here stays on this page; copy what is not kept yet.");
    retry = setTimeout(connect, Math.min(4000, 250 * tries));
  }

  bar.addEventListener("click", event => {
    switch (event.target.closest("[data-do]")?.dataset.do) {
      case "run-all": page.run(order()); break;
      case "stop": page.send({ ask: "stop" }); break;
      case "restart": page.send({ ask: "restart" }); break;
      case "original-all":
        if (confirm("Put every cell of this lesson back to its original text? Your changes and your own cells go."))
          Promise.all([...cells.values()].map(cell => cell.kept())).then(() => page.send({ ask: "original" }));
        break;
    }
  });
  addEventListener("beforeunload", event => {
    cells.forEach(cell => cell.keep());
    if ([...cells.values()].some(cell => cell.isDirty()) && !tab) event.preventDefault();
  });
  document.addEventListener("visibilitychange", () => {
    if (document.hidden) cells.forEach(cell => cell.keep());
    else if (!tab && socket.readyState === WebSocket.CLOSED) connect();
  });
  bar.hidden = false;
  connect();
})();
