// A code cell of the live page: its editor, its buttons, what it is doing, what it has shown.
"use strict";
(() => {
  const KEEP_AFTER = 250; // ms without a key until the text goes to disk

  const seconds = ms => ms < 995 ? `${(ms / 1000).toFixed(2)} s` : `${(ms / 1000).toFixed(1)} s`;

  function button(label, act) {
    const one = document.createElement("button");
    one.type = "button";
    one.textContent = label;
    one.addEventListener("click", act);
    return one;
  }

  // section: the cell's frame from the server; page: how to send things and what else is on the page.
  function open(section, page) {
    const id = section.dataset.cell;
    const runButton = section.querySelector("[data-do=run]"), stateWords = section.querySelector(".state");
    const offer = section.querySelector(".offer"), more = section.querySelector(".more");
    let number = 0, revision = 0, known = null, inFlight = null, timer = 0, clock = 0;
    let state = { state: "idle" }, isChanged = false, waitingForAck = [];

    const editor = lessonEditor.open(section.querySelector("pre.code"), section.querySelector("pre.code").textContent, "Code", {
      change() {
        clearTimeout(timer);
        timer = setTimeout(keep, KEEP_AFTER);
      },
      run: () => page.run([id]),
      runAndGo: () => {
        page.run([id]);
        page.after(id)?.focus();
      },
      leave: () => runButton.focus(),
      complete: (text, position) => page.complete(text, position),
    });
    const outputs = lessonOutputs.open(section.querySelector(".outputs"), {
      wrong: line => editor.mark(line),
      move: (live, places) => page.send({ ask: "move", cell: id, live, places }),
    });
    section.querySelector(".deeds").hidden = false;

    const isDirty = () => known !== null && (inFlight !== null || editor.text() !== known);

    // Sends the text if it is not kept yet. One edit at a time, so that each begins from a known revision.
    function keep() {
      clearTimeout(timer);
      if (inFlight !== null || !isDirty()) return;
      const text = editor.text();
      if (page.send({ ask: "edit", cell: id, text, base: revision })) inFlight = text;
    }
    // Done when what stands in the editor has been taken by the program.
    function kept() {
      keep();
      return isDirty() ? new Promise(done => waitingForAck.push(done)) : Promise.resolve();
    }
    function takeText(say, tab) {
      const isMine = say.by === tab;
      if (isMine) inFlight = null;
      if (isMine || !isDirty()) {
        const hadOwn = isMine && editor.text() !== say.text;
        [revision, known] = [say.revision, say.text];
        if (!hadOwn) editor.put(say.text);
      }
      isChanged = say.isChanged;
      showOffer(say);
      showState();
      if (isDirty()) keep();
      else waitingForAck.splice(0).forEach(done => done());
    }

    function showOffer(say) {
      const other = say.other ?? say.newOriginal;
      offer.hidden = other == null;
      offer.replaceChildren();
      if (other == null) return;
      const words = document.createElement("p");
      words.textContent = say.other != null
        ? "This cell was changed in two places at the same time. The later text stands above, the other one is this:"
        : "The lesson has changed here since you changed the cell. Your text stands above, the new original is this:";
      const text = document.createElement("pre");
      text.className = "code";
      text.tabIndex = 0;
      text.textContent = other;
      const settle = take => () => kept().then(() => page.send({ ask: "other", cell: id, take }));
      offer.append(words, text, button(say.other != null ? "Take the other text" : "Take the new original", settle(true)), button("Keep the text above", settle(false)));
    }

    function showState() {
      const isRunning = state.state === "running", isBusy = isRunning || state.state === "waiting";
      section.dataset.state = state.state;
      section.classList.toggle("old", !!state.isOld);
      section.setAttribute("aria-busy", String(isBusy));
      runButton.textContent = isBusy ? "Stop" : "Run";
      runButton.setAttribute("aria-label", `${isBusy ? "Stop" : "Run"} cell ${number}`);
      more.querySelector("summary").setAttribute("aria-label", `More about cell ${number}`);
      const time = state.milliseconds == null ? "" : ` after ${seconds(state.milliseconds)}`;
      const words = { idle: "", waiting: "waiting", running: "running …", done: `done${time}`, failed: `stopped by an error${time}` }[state.state];
      const remarks = [words, state.isOld ? "before the restart" : "", isChanged ? "your text" : section.dataset.own ? "your cell" : ""];
      stateWords.textContent = remarks.filter(Boolean).join(" · ");
      section.querySelector("[data-do=original]").hidden = !isChanged;
      section.querySelector("[data-do=delete]").hidden = !section.dataset.own;
    }
    function takeState(say) {
      const was = state.state;
      state = say;
      clearInterval(clock);
      if (say.state === "running") {
        outputs.begin();
        editor.unmark();
        const begun = Date.now();
        clock = setInterval(() => {
          const time = Math.floor((Date.now() - begun) / 1000);
          if (time > 0) stateWords.textContent = `running … ${time} s`;
        }, 500);
      }
      if (say.state === "done" || say.state === "failed") outputs.end();
      showState();
      if (say.state === was) return;
      if (say.state === "running") page.say(`Cell ${number} is running.`);
      if (say.state === "done") page.say(`Cell ${number} is done.`);
      if (say.state === "failed") page.say(`Cell ${number} was stopped by an error.`);
    }

    section.addEventListener("click", event => {
      const deed = event.target.closest("[data-do]")?.dataset.do;
      if (!deed) return;
      if (deed === "run") state.state === "running" || state.state === "waiting" ? page.send({ ask: "stop" }) : page.run([id]);
      if (deed === "run-on") page.runFrom(id);
      if (deed === "original") kept().then(() => page.send({ ask: "original", cell: id }));
      if (deed === "add") page.send({ ask: "add", after: id });
      if (deed === "delete") page.send({ ask: "delete", cell: id });
      if (more.open) {
        more.open = false;
        runButton.focus();
      }
    });
    more.addEventListener("keydown", event => {
      if (event.key !== "Escape") return;
      more.open = false;
      more.querySelector("summary").focus();
    });
    more.addEventListener("focusout", event => {
      if (!more.contains(event.relatedTarget)) more.open = false;
    });

    return {
      id, section, kept, isDirty, takeText, takeState, outputs, keep,
      // Everything from the program, at the start and after the connection was gone.
      take(view, position, tab) {
        number = position;
        section.setAttribute("aria-label", `Cell ${number}`);
        if (view.after != null) section.dataset.own = "yes";
        editor.host.querySelector("[contenteditable]")?.setAttribute("aria-label", `Code of cell ${number}`);
        inFlight = null;
        // Text typed while nobody listened goes out now, from the revision it began with.
        if (known === null || !isDirty()) [revision, known] = [view.text.revision, view.text.text];
        if (editor.text() !== known) keep();
        else editor.put(view.text.text);
        takeText({ ...view.text, by: null }, tab);
        state = view.state;
        outputs.all(view.pieces);
        if (state.state === "running") takeState(state);
        else clearInterval(clock);
        showState();
      },
      focus() {
        editor.focus();
        section.scrollIntoView({ block: "nearest" });
      },
      close() {
        clearTimeout(timer);
        clearInterval(clock);
        section.remove();
      },
    };
  }

  window.lessonCell = { open };
})();
