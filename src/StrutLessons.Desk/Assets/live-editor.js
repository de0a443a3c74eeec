// One editor per cell: CodeMirror with the page's colours. It knows nothing of sockets: it reports through callbacks.
"use strict";
(() => {
  // Words that the syntax mode does not know: C# goes on growing.
  const csharp = CodeMirror.resolveMode("text/x-csharp");
  const mode = { ...csharp, keywords: { ...csharp.keywords } };
  for (const word of ["record", "init", "required", "with", "not", "and", "or", "when", "scoped", "nameof"]) mode.keywords[word] = true;

  function complete(ask) {
    const hint = async editor => {
      const answer = await ask(editor.getValue(), editor.indexFromPos(editor.getCursor()));
      if (!answer || answer.items.length === 0) return null;
      return {
        from: editor.posFromIndex(answer.start),
        to: editor.posFromIndex(answer.end),
        list: answer.items.map(item => ({
          text: item.text,
          render: (place, _, it) => {
            const kind = document.createElement("span");
            kind.className = "kind";
            kind.textContent = item.kind;
            place.append(it.text, kind);
          },
        })),
      };
    };
    return editor => editor.showHint({ hint, completeSingle: true });
  }

  // place: the <pre> that the editor takes over; label: its name for a screen reader; on: what the page does.
  function open(place, text, label, on) {
    const host = document.createElement("div");
    host.className = "editor code";
    place.replaceWith(host);
    const editor = CodeMirror(host, {
      value: text, mode, indentUnit: 4, viewportMargin: Infinity, lineNumbers: false, lineWrapping: true,
      inputStyle: "contenteditable", matchBrackets: true, autoCloseBrackets: "()[]{}\"\"", screenReaderLabel: label, theme: "lesson",
      extraKeys: {
        "Shift-Enter": () => on.runAndGo(),
        "Ctrl-Enter": () => on.run(),
        "Cmd-Enter": () => on.run(),
        "Ctrl-Space": complete(on.complete),
        Esc: () => on.leave(),
        Tab: it => it.somethingSelected() ? it.indentSelection("add") : it.replaceSelection("    ", "end"),
        "Shift-Tab": it => it.indentSelection("subtract"),
      },
    });
    // A name with a capital before a dot, or behind "new", is a type in the lessons' style.
    editor.addOverlay({
      token(stream) {
        if (stream.match(/^new (?=[A-Z])/)) return null;
        if (stream.match(/^[A-Z]\w*(?=\s*\.)/) || (/\bnew $/.test(stream.string.slice(0, stream.pos)) && stream.match(/^[A-Z]\w*/))) return "owner";
        stream.match(/^\w+/) || stream.next();
        return null;
      },
    });
    const field = editor.getInputField();
    field.setAttribute("aria-describedby", "editor-help");
    field.setAttribute("aria-multiline", "true");
    let quiet = false, isMarked = false;
    editor.on("change", () => {
      unmark();
      if (!quiet) on.change();
    });
    function unmark() {
      // A change may have moved the mark to any line.
      if (isMarked) editor.eachLine(line => { editor.removeLineClass(line, "wrap", "wrong"); });
      isMarked = false;
    }
    return {
      host,
      text: () => editor.getValue("\n"),
      focus: () => editor.focus(),
      hasFocus: () => editor.hasFocus(),
      refresh: () => editor.refresh(),
      put(value) {
        if (editor.getValue("\n") === value) return;
        const cursor = editor.getCursor(), scroll = editor.getScrollInfo();
        quiet = true;
        editor.setValue(value);
        quiet = false;
        editor.setCursor(cursor);
        editor.scrollTo(scroll.left, scroll.top);
      },
      mark(line) {
        if (line > editor.lineCount()) return;
        editor.addLineClass(line - 1, "wrap", "wrong");
        isMarked = true;
      },
      unmark,
    };
  }

  window.lessonEditor = { open };
})();
