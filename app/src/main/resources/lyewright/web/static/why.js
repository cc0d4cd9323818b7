// Why, beside the figure: a link or button of class why opens in a panel. Without this script it is a page.
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
  let from = null;

  // a browser goes back to the figure that was asked about, unless an answer has put another in its place meanwhile
  panel.addEventListener("close", function () {
    if (!from || from.isConnected) {
      return;
    }
    const same = Array.from(document.querySelectorAll("a.why, button.why")).find(function (figure) {
      return figure.value === from.value && figure.href === from.href && figure.formAction === from.formAction;
    });
    if (same) {
      same.focus();
    }
  });

  panel.querySelector("button").addEventListener("click", function () {
    panel.close();
  });
  // beside the panel, outside it
  panel.addEventListener("click", function (event) {
    if (event.target === panel) {
      panel.close();
    }
  });

  function show(html, address) {
    whole.hidden = !address;
    whole.href = address || "/why";
    document.getElementById("why-reason").innerHTML = html;
    if (!panel.open) {
      panel.showModal();
    }
    inner.scrollTop = 0;
    inner.focus();
  }

  // what is not kept is asked about with all of its form; that it cannot be reckoned is said in the panel too
  function ask(asking, address, otherwise) {
    const mine = (asked += 1);
    asking
      .then(function (answer) {
        return answer.ok || (answer.status === 422 && !address) ? answer.text() : Promise.reject(answer.status);
      })
      .then(function (html) {
        if (mine === asked) {
          show(html, address);
        }
      })
      .catch(otherwise);
  }

  document.addEventListener("click", function (event) {
    const figure = event.target.closest("a.why, button.why");
    if (!figure || event.defaultPrevented || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey) {
      return;
    }
    event.preventDefault();
    from = figure;
    if (figure instanceof HTMLAnchorElement) {
      ask(fetch(figure.href, { headers: { "HX-Request": "true" } }), figure.href, function () {
        // the page says what is wrong
        window.location.assign(figure.href);
      });
      return;
    }
    const typed = new URLSearchParams(new FormData(figure.form));
    typed.set(figure.name, figure.value);
    ask(fetch(figure.formAction, { method: "POST", headers: { "HX-Request": "true" }, body: typed }), "", function () {
      figure.form.requestSubmit(figure);
    });
  });
})();
