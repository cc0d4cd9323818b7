// What every page shares. Pages work without it.
"use strict";

// A form that is answered while it is typed carries data-live. Each request has a serial number; an answer that comes after a
// newer one has been asked for is dropped, and figures that wait are greyed.
(function () {
  let serial = 0;

  document.addEventListener("htmx:configRequest", function (event) {
    const form = event.detail.elt.closest("form[data-live]");
    if (form) {
      serial += 1;
      event.detail.headers["X-Serial"] = String(serial);
      form.dataset.serial = String(serial);
    }
  });

  // An answer that comes while a button is pressed would take it from under the finger, and the click would be lost. It is
  // dropped, and asked for again once the press is over. What was asked for by a click itself is never held, nor
  // is what a form that keeps drafts sends: its buttons are not replaced.
  const PRESS = 50;
  const PRESSED = "button, a, summary, label, input[type=checkbox], input[type=radio]";
  let presses = 0;
  let pressed = 0;
  let held = new Set();

  function press(event) {
    if (event.target.closest && event.target.closest(PRESSED)) {
      presses += 1;
      pressed = presses;
    }
  }

  // a click comes after its press is over; another press may have begun by then
  function release() {
    const over = pressed;
    setTimeout(function () {
      if (!over || pressed !== over) {
        return;
      }
      const again = held;
      pressed = 0;
      held = new Set();
      for (const asking of again) {
        if (asking.isConnected) {
          asking.dispatchEvent(new Event(asking.type === "search" ? "search" : "input", { bubbles: true }));
        }
      }
    }, PRESS);
  }

  document.addEventListener("pointerdown", press, true);
  for (const over of ["pointerup", "pointercancel", "dragend"]) {
    document.addEventListener(over, release, true);
  }
  window.addEventListener("blur", release);
  document.addEventListener("keydown", function (event) {
    if (event.key === " ") {
      press(event);
    }
  }, true);
  document.addEventListener("keyup", function (event) {
    if (event.key === " ") {
      release();
    }
  }, true);

  document.addEventListener("htmx:beforeSwap", function (event) {
    const by = event.detail.requestConfig && event.detail.requestConfig.triggeringEvent;
    if (pressed && by && ["input", "change", "search"].includes(by.type) && !typing(event)) {
      event.detail.shouldSwap = false;
      held.add(event.detail.requestConfig.elt);
      return;
    }
    const form = event.detail.elt.closest("form[data-live]");
    const asked = event.detail.requestConfig && event.detail.requestConfig.headers["X-Serial"];
    if (form && asked && asked !== form.dataset.serial) {
      event.detail.shouldSwap = false;
    }
  });

  // A request that was not answered, or refused: said at the window's edge, in sight wherever one types, until one is answered.
  // A form that keeps what is typed (data-keeps) says that it is not kept, tries again by itself, and asks before it is left.
  const AGAIN = 3000;
  let again = 0;
  let waiting = null;

  function tell(sentences, way) {
    let slot = document.getElementById("trouble");
    if (!slot) {
      slot = document.createElement("div");
      slot.id = "trouble";
      slot.className = "caution edge";
      slot.dataset.level = "stop";
      slot.setAttribute("role", "alert");
      document.body.append(slot);
    }
    const text = document.createElement("p");
    text.textContent = sentences.filter(Boolean).join(" ");
    slot.replaceChildren(text);
    if (way) {
      slot.append(document.importNode(way, true));
    }
  }

  function settle() {
    clearTimeout(again);
    waiting = null;
    const slot = document.getElementById("trouble");
    if (slot) {
      slot.remove();
    }
  }

  function typing(event) {
    return event.detail.elt.closest("form[data-keeps]");
  }

  const UNKEPT = "What you type now is not kept. It is still on this page; do not close it.";

  document.addEventListener("htmx:sendError", function (event) {
    const form = typing(event);
    tell(["Lyewright does not answer. Is it still running?", form ? UNKEPT : "What you typed is still here; go on once it runs again."]);
    if (form) {
      waiting = form;
      clearTimeout(again);
      again = setTimeout(function () {
        form.dispatchEvent(new Event("input", { bubbles: true }));
      }, AGAIN);
    }
  });
  document.addEventListener("htmx:responseError", function (event) {
    const said = new DOMParser().parseFromString(event.detail.xhr.responseText, "text/html");
    const what = said.querySelector("[data-what]");
    const remedy = said.querySelector("[data-remedy]");
    const form = typing(event);
    waiting = form || waiting;
    tell(
      [what ? what.textContent : "That did not work.", remedy && remedy.textContent, form ? UNKEPT : ""],
      said.querySelector("form[data-way], a[data-door]")
    );
  });
  document.addEventListener("htmx:afterRequest", function (event) {
    if (event.detail.successful) {
      settle();
    }
  });
  window.addEventListener("beforeunload", function (event) {
    if (waiting) {
      event.preventDefault();
    }
  });
  // a button of that form sends all of it
  document.addEventListener("submit", function (event) {
    if (event.target === waiting) {
      waiting = null;
    }
  });

  // A form that a helper cannot send is not typed in either.
  if (document.documentElement.classList.contains("as-helper")) {
    for (const form of document.querySelectorAll("main form[method=post]:not(.helpers)")) {
      form.inert = true;
    }
  }

  // A button that prints the page.
  document.addEventListener("click", function (event) {
    if (event.target.closest("[data-print]")) {
      window.print();
    }
  });
  for (const button of document.querySelectorAll("[data-print]")) {
    button.hidden = false;
  }
})();
