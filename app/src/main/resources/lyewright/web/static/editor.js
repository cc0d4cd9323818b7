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

  // A row that is asked for while another is on its way would be lost with the button that was pressed.
  let adding = false;
  let more = [];

  function added(target) {
    const button = target.closest && target.closest("#editor button[hx-post]");
    return button && button.value.endsWith(".add") ? button.value : "";
  }

  document.addEventListener("click", function (event) {
    const value = added(event.target);
    if (value && adding) {
      event.preventDefault();
      event.stopImmediatePropagation();
      more.push(value);
    } else if (value) {
      adding = true;
    }
  }, true);

  document.addEventListener("htmx:afterSettle", function (event) {
    if (event.detail.elt.id !== "editor") {
      return;
    }
    adding = false;
    const button = more.length ? editor().querySelector("button[value='" + more.shift() + "']") : null;
    if (button) {
      button.click();
    }
  });

  for (const failed of ["htmx:sendError", "htmx:responseError", "htmx:sendAbort"]) {
    document.addEventListener(failed, function () {
      adding = false;
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
