// Why, beside the figure: a link of class why opens in a panel. Without this script it is a page.
"use strict";

(function () {
  const panel = document.createElement("dialog");
  panel.className = "why-panel";
  panel.setAttribute("aria-labelledby", "why-title");
  panel.innerHTML =
    '<div class="why-panel-inner" tabindex="-1">' +
    '<div class="why-panel-head"><a class="why-whole" href="/why">On a page of its own</a>' +
    '<button type="button" class="quiet">Close</button></div><div id="why-reason" aria-live="polite"></div></div>';
  document.body.append(panel);
  const inner = panel.querySelector(".why-panel-inner");
  const whole = panel.querySelector(".why-whole");
  let asked = 0;

  panel.querySelector("button").addEventListener("click", function () {
    panel.close();
  });
  // beside the panel, outside it
  panel.addEventListener("click", function (event) {
    if (event.target === panel) {
      panel.close();
    }
  });

  document.addEventListener("click", function (event) {
    const link = event.target.closest("a.why");
    if (!link || event.defaultPrevented || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey) {
      return;
    }
    event.preventDefault();
    const mine = (asked += 1);
    fetch(link.href, { headers: { "HX-Request": "true" } })
      .then(function (answer) {
        return answer.ok ? answer.text() : Promise.reject(answer.status);
      })
      .then(function (html) {
        if (mine !== asked) {
          return;
        }
        whole.href = link.href;
        document.getElementById("why-reason").innerHTML = html;
        if (!panel.open) {
          panel.showModal();
        }
        inner.scrollTop = 0;
        inner.focus();
      })
      .catch(function () {
        // the page says what is wrong
        window.location.assign(link.href);
      });
  });
})();
