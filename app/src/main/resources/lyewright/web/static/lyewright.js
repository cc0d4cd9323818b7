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

  document.addEventListener("htmx:beforeSwap", function (event) {
    const form = event.detail.elt.closest("form[data-live]");
    const asked = event.detail.requestConfig && event.detail.requestConfig.headers["X-Serial"];
    if (form && asked && asked !== form.dataset.serial) {
      event.detail.shouldSwap = false;
    }
  });

  // A request that got no answer, or our own fault: say so where it is seen, and keep what was typed.
  function tell(sentence) {
    let slot = document.getElementById("trouble");
    if (!slot) {
      slot = document.createElement("div");
      slot.id = "trouble";
      slot.className = "caution";
      slot.dataset.level = "stop";
      slot.setAttribute("role", "alert");
      document.getElementById("content").prepend(slot);
    }
    slot.textContent = sentence;
  }

  document.addEventListener("htmx:sendError", function () {
    tell("Lyewright does not answer. Is it still running? What you typed is still here; go on once it runs again.");
  });
  document.addEventListener("htmx:responseError", function (event) {
    if (event.detail.xhr.status >= 500) {
      tell("Something went wrong in Lyewright itself. What you typed is still here.");
    }
  });
  document.addEventListener("htmx:afterOnLoad", function () {
    const slot = document.getElementById("trouble");
    if (slot) {
      slot.remove();
    }
  });

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
