// Make: beside each field what is wrong with it, and a sheet that waits while something is.
"use strict";

(function () {
  const form = document.getElementById("choice");
  const answer = document.getElementById("answer");
  const waits = document.getElementById("waits");

  function mark() {
    let wrong = false;
    for (const slot of form.querySelectorAll(".slot")) {
      const troubled = slot.textContent.trim() !== "";
      const field = document.getElementById(slot.dataset.for);
      field.setAttribute("aria-invalid", String(troubled));
      // what is folded away must not be what is wrong
      const fold = field.closest("details");
      if (troubled && fold) {
        fold.open = true;
      }
      wrong = wrong || (troubled && !slot.closest("[data-aside]"));
    }
    answer.classList.toggle("stale", wrong);
    waits.hidden = !wrong;
  }

  document.body.addEventListener("htmx:afterSettle", mark);
  document.body.addEventListener("htmx:oobAfterSwap", mark);

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
