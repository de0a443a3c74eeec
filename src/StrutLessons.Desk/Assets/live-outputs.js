// What a cell shows: pieces with keys. A new run leaves the old pieces standing until the first new one comes.
"use strict";
(() => {
  function open(place, on) {
    const pieces = new Map();
    let isStale = false;

    function clear() {
      place.replaceChildren();
      pieces.clear();
      isStale = false;
    }
    function freshen() {
      if (isStale) clear();
    }
    function put(piece) {
      freshen();
      const box = document.createElement("div");
      box.className = "piece";
      let live = null;
      if (piece.live) {
        live = lessonControls.open(piece.live, places => on.move(piece.live.live, places));
        box.append(live.root);
      } else {
        // Scripts inside never run this way; the page's own script draws and typesets.
        box.innerHTML = piece.html;
        for (const link of box.querySelectorAll("a[href]")) {
          if (link.origin !== location.origin) Object.assign(link, { target: "_blank", rel: "noopener noreferrer" });
        }
      }
      const old = pieces.get(piece.key);
      if (old) old.box.replaceWith(box);
      else place.append(box);
      pieces.set(piece.key, { box, live });
      live?.start();
      lessonPage.typeset(box);
      lessonPage.drawAll(box);
      if (piece.line) on.wrong(piece.line);
    }
    return {
      put,
      write(say) {
        freshen();
        const text = pieces.get(say.key)?.box.querySelector("pre");
        if (text) text.append(say.text);
      },
      // The cell runs again.
      begin() { isStale = true; },
      // It has ended: what is still old was not shown again.
      end() { freshen(); },
      all(list) {
        clear();
        list.forEach(put);
      },
      moved(say, isMine) {
        for (const { live } of pieces.values()) if (live?.name === say.live) live.moved(say, isMine);
      },
      reset() {
        for (const { live } of pieces.values()) live?.reset();
      },
    };
  }

  window.lessonOutputs = { open };
})();
