// Make: beside each field what is wrong with it, and a sheet that waits while something is.
"use strict";

(function () {
  const form = document.getElementById("choice");
  const answer = document.getElementById("answer");
  const waits = document.getElementById("waits");

  function mark() {
    let wrong = false;
    for (const slot of form.querySelectorAll(".slot")) {
      const waiting = slot.textContent.trim() !== "";
      const troubled = slot.querySelector(".trouble") !== null;
      const field = document.getElementById(slot.dataset.for);
      field.setAttribute("aria-invalid", String(troubled));
      // what is folded away must not be what is wrong
      const fold = field.closest("details");
      if (troubled && fold) {
        fold.open = true;
      }
      wrong = wrong || (waiting && !slot.closest("[data-aside]"));
    }
    answer.classList.toggle("stale", wrong);
    waits.hidden = !wrong;
  }

  document.body.addEventListener("htmx:afterSettle", mark);
  document.body.addEventListener("htmx:oobAfterSwap", mark);

  // A mould that is chosen after none was is meant to be full, unless somebody has said how much.
  const mould = form.elements.namedItem("mould");
  const much = form.elements.namedItem("much");
  let before = mould.value;
  let said = false;
  form.addEventListener("input", function (event) {
    said = said || event.target === much;
    if (event.target === mould) {
      if (!before && mould.value && !said && much.value === "written") {
        much.value = "full";
      }
      before = mould.value;
    }
  }, true);

  // another version is another page: its oils and portions differ
  form.addEventListener("change", function (event) {
    if (event.target.matches("[data-reload]")) {
      form.submit();
    }
  });

  document.body.addEventListener("print-page", function () {
    window.print();
  });
})();
