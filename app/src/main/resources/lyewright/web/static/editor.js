// The editor: puts what came back beside the fields it is of. No input is ever written to but those nobody sees.
"use strict";

(function () {
  const PAUSE = 800;
  let waiting = 0;
  let telling = 0;

  function editor() {
    return document.getElementById("editor");
  }

  function field(name) {
    return editor().elements.namedItem(name);
  }

  function say(slot, text) {
    if (slot.textContent !== text) {
      slot.textContent = text;
    }
    const input = field(slot.dataset.trouble);
    if (input instanceof HTMLElement) {
      if (text) {
        input.setAttribute("aria-invalid", "true");
      } else {
        input.removeAttribute("aria-invalid");
      }
    }
  }

  // What is wrong in the field that is being typed in is said once the typing pauses, elsewhere at once.
  function troubles(answers) {
    const wrong = new Map();
    for (const trouble of answers.querySelectorAll("[data-trouble-of]")) {
      wrong.set(trouble.dataset.troubleOf, trouble.textContent);
    }
    const typing = document.activeElement && document.activeElement.name;
    clearTimeout(waiting);
    for (const slot of editor().querySelectorAll("[data-trouble]")) {
      const text = wrong.get(slot.dataset.trouble) || "";
      if (text && slot.dataset.trouble === typing && !slot.textContent) {
        waiting = setTimeout(say, PAUSE, slot, text);
      } else {
        say(slot, text);
      }
    }
  }

  // Figures come with the buttons that say why; they are copied over, not written as text; more than one event may tell of one answer.
  function rows(answers) {
    const says = new Map();
    for (const row of answers.querySelectorAll("[data-says-of]")) {
      says.set(row.dataset.saysOf, row);
    }
    for (const slot of editor().querySelectorAll("[data-says]")) {
      const row = says.get(slot.dataset.says);
      if (!row) {
        slot.replaceChildren();
      } else if (slot.innerHTML !== row.innerHTML) {
        slot.replaceChildren(...Array.from(row.childNodes, function (node) { return node.cloneNode(true); }));
      }
    }
  }

  function stale(yes) {
    for (const part of editor().querySelectorAll("#strip .figure-part, #figures, [data-says]")) {
      part.classList.toggle("stale", yes);
    }
  }

  function tell(answers) {
    const said = answers.querySelector("[data-said]");
    clearTimeout(telling);
    if (said) {
      telling = setTimeout(function (text) {
        document.getElementById("said").textContent = text;
      }, 2 * PAUSE, said.textContent);
    }
  }

  function answered(answers) {
    const kept = answers.querySelector("#kept");
    if (!kept) {
      return;
    }
    if (Number(kept.dataset.revision) >= Number(field("revision").value)) {
      field("draft").value = kept.dataset.draft;
      field("revision").value = kept.dataset.revision;
    }
    troubles(answers);
    const reckoned = kept.dataset.reckoned === "yes";
    if (reckoned) {
      rows(answers);
    }
    stale(!reckoned);
    const missing = answers.querySelector("[data-missing]");
    if (missing) {
      document.getElementById("missing").textContent = missing.textContent;
    }
    tell(answers);
  }

  document.addEventListener("htmx:configRequest", function (event) {
    const serial = field("serial");
    if (serial && event.detail.headers["X-Serial"]) {
      serial.value = event.detail.headers["X-Serial"];
    }
  });

  document.addEventListener("htmx:afterSwap", function (event) {
    if (event.detail.target.id === "answers") {
      answered(event.detail.target);
    }
  });

  // no answer: what stands there is of what was typed before
  document.addEventListener("htmx:sendError", function () {
    stale(true);
  });

  // One more row is there at once, so that what is typed next is typed into it. While rows move, which puts another form
  // in this one's place, it waits until that is done.
  let moving = false;
  let more = [];

  function pressed(target) {
    const button = target.closest && target.closest("#editor button[hx-post]");
    return button ? button.value : "";
  }

  function add(press) {
    const group = press.slice(0, -".add".length);
    const ready = editor().querySelector("template[data-row='" + group + "']");
    const list = ready.previousElementSibling;
    const number = list.children.length;
    if (number >= Number(ready.dataset.most)) {
      return false;
    }
    const next = ready.dataset.number;
    const made = document.createElement("template");
    made.innerHTML = ready.innerHTML.replaceAll(next, number).replaceAll(Number(next) + 1, number + 1);
    const row = made.content.firstElementChild;
    for (const down of list.querySelectorAll("button[value$='.down']")) {
      down.disabled = false;
    }
    list.append(row);
    window.htmx.process(row);
    const first = row.querySelector("input");
    first.focus();
    first.dispatchEvent(new Event("input", { bubbles: true }));
    return true;
  }

  document.addEventListener("click", function (event) {
    const press = pressed(event.target);
    if (press.endsWith(".add")) {
      if (moving) {
        more.push(press);
      }
      if (moving || add(press)) {
        event.preventDefault();
        event.stopImmediatePropagation();
      }
    } else if (press) {
      moving = true;
    }
  }, true);

  document.addEventListener("htmx:afterSettle", function (event) {
    if (event.detail.elt.id === "editor") {
      moving = false;
      more.splice(0).forEach(add);
    }
  });

  for (const failed of ["htmx:sendError", "htmx:responseError", "htmx:sendAbort"]) {
    document.addEventListener(failed, function () {
      moving = false;
      more = [];
    });
  }

  // What was folded open stays open when the figures change.
  let open = [];
  document.addEventListener("htmx:oobBeforeSwap", function (event) {
    if (event.detail.target.id === "figures") {
      open = Array.from(event.detail.target.querySelectorAll("details"), function (fold) {
        return fold.open ? fold.querySelector("summary").textContent : "";
      });
    }
  });
  document.addEventListener("htmx:oobAfterSwap", function (event) {
    if (event.detail.target.id === "figures") {
      for (const fold of document.querySelectorAll("#figures details")) {
        fold.open = open.includes(fold.querySelector("summary").textContent);
      }
    }
  });

  // Enter goes on to the next field; after the last amount it begins a new oil.
  document.addEventListener("keydown", function (event) {
    const input = event.target;
    if (event.key !== "Enter" || !(input instanceof HTMLInputElement) || !input.closest("#editor") || input.type === "checkbox") {
      return;
    }
    event.preventDefault();
    const inputs = Array.from(editor().querySelectorAll("input:not([type=hidden]), select, textarea")).filter(function (other) {
      return other.offsetParent !== null;
    });
    const next = inputs[inputs.indexOf(input) + 1];
    const rows = input.closest("ol.rows");
    if (rows && !(next && rows.contains(next)) && input.value) {
      rows.parentElement.querySelector("button[value$='.add']").click();
    } else if (next) {
      next.focus();
    }
  });
})();
