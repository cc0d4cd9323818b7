// The notebook: which line is being typed, its numbers, boxes that grow, and what was typed before the window was closed.
"use strict";

(function () {
  const form = document.getElementById("notebook");
  if (!form) {
    return;
  }
  document.documentElement.classList.add("with-scripts");
  const text = form.elements.namedItem("text");
  // What is typed while looking round the demo workshop does not turn up in one's own.
  const DEMO = document.querySelector(".demo") ? "-demo" : "";
  const KEPT = "lyewright-notebook" + DEMO;
  const SENT = "lyewright-notebook-sent" + DEMO;

  function lineOf(place) {
    return text.value.slice(0, place).split("\n").length;
  }

  // The text that the answer on the page is of, and the one that was asked about last.
  let answered = null;
  let asked = null;

  // Whether all lines but the one being typed are as they were when they were answered.
  function isOnlyThere(caret) {
    const now = text.value.split("\n");
    const then = answered.split("\n");
    const after = now.length - caret;
    const before = now.slice(0, caret - 1).join("\n") === then.slice(0, caret - 1).join("\n");
    const behind = after === 0 || now.slice(-after).join("\n") === then.slice(-after).join("\n");
    return before && behind && Math.abs(now.length - then.length) <= 1;
  }

  // The server says of the line or the box being typed what is wrong with it, but calmly.
  document.addEventListener("htmx:configRequest", function (event) {
    if (event.detail.elt !== form) {
      return;
    }
    const active = document.activeElement;
    const box = active && active.closest(".boxes") && (active.getAttribute("aria-describedby") || "");
    if (text && active === text) {
      const caret = lineOf(text.selectionStart);
      event.detail.parameters.caret = String(caret);
      event.detail.parameters.only = answered === null ? "first" : isOnlyThere(caret) ? "there" : "";
    } else if (box) {
      event.detail.parameters.at = box.replace(/(-box)?-trouble$/, "");
      event.detail.parameters.only = "there";
    }
    asked = text ? text.value : null;
  });

  document.addEventListener("htmx:afterSettle", function () {
    if (text && text.value.trim() !== "" && !form.querySelector("[data-unread]")) {
      answered = asked;
    }
  });

  function selectLine(number) {
    const lines = text.value.split("\n");
    const start = lines.slice(0, number - 1).join("\n").length + (number > 1 ? 1 : 0);
    text.focus();
    text.setSelectionRange(start, start + (lines[number - 1] || "").length);
  }

  if (text) {
    const numbers = document.getElementById("lines");
    const follow = function () {
      numbers.scrollTop = text.scrollTop;
    };
    text.addEventListener("scroll", follow);
    document.addEventListener("htmx:afterSettle", follow);

    // Numbers at once; which of them are wrong comes with the answer.
    text.addEventListener("input", function () {
      const lines = Math.min(400, text.value.split("\n").length);
      while (numbers.children.length > lines) {
        numbers.lastElementChild.remove();
      }
      while (numbers.children.length < lines) {
        const number = document.createElement("span");
        number.textContent = String(numbers.children.length + 1);
        numbers.append(number);
      }
      follow();
    });

    // Away from a line its trouble is no longer one that the next key may settle.
    text.addEventListener("blur", function () {
      if (document.querySelector("[data-typing]")) {
        text.dispatchEvent(new Event("change", { bubbles: true }));
      }
    });

    // From a trouble to its line.
    document.addEventListener("click", function (event) {
      const link = event.target.closest("[data-line]");
      if (!link) {
        return;
      }
      event.preventDefault();
      selectLine(Number(link.dataset.line));
    });

    // What a line may have meant, taken with one click, and with the browser's own undo. The choice is of the text that was answered;
    // what was typed since stays: only the words that the choice changes are changed.
    function wordsOf(line) {
      return line.split(/\s+/).filter(Boolean);
    }

    function chosen(now, then, meant) {
      if (now === then) {
        return meant;
      }
      const old = wordsOf(then);
      const fresh = wordsOf(meant);
      let start = 0;
      while (start < old.length && start < fresh.length && old[start] === fresh[start]) {
        start++;
      }
      let end = 0;
      while (end < old.length - start && end < fresh.length - start && old[old.length - 1 - end] === fresh[fresh.length - 1 - end]) {
        end++;
      }
      const gone = old.slice(start, old.length - end);
      const come = fresh.slice(start, fresh.length - end);
      const words = wordsOf(now);
      if (gone.length === 0) {
        const begins = old.slice(0, start).every((word, i) => words[i] === word);
        const at = begins ? start : end === 0 && words[0] === old[0] ? words.length : -1;
        return at < 0 ? null : words.slice(0, at).concat(come, words.slice(at)).join(" ");
      }
      const places = [];
      for (let i = 0; i + gone.length <= words.length; i++) {
        if (gone.every((word, j) => words[i + j] === word)) {
          places.push(i);
        }
      }
      return places.length === 1
        ? words.slice(0, places[0]).concat(come, words.slice(places[0] + gone.length)).join(" ")
        : null;
    }

    // The line that a choice is of: it may have moved, and it may have been typed on.
    function placeOf(number, then) {
      const lines = text.value.split("\n");
      if (lines[number - 1] === then) {
        return number;
      }
      const same = lines.flatMap((line, i) => (line === then ? [i + 1] : []));
      return same.length === 1 ? same[0] : number;
    }

    document.addEventListener("click", function (event) {
      const choice = event.target.closest("[data-choose]");
      if (!choice) {
        return;
      }
      event.preventDefault();
      const colon = choice.value.indexOf(":");
      const then = choice.dataset.of;
      const number = placeOf(Number(choice.value.slice(0, colon)), then);
      const line = chosen(text.value.split("\n")[number - 1] || "", then, choice.value.slice(colon + 1));
      selectLine(number);
      if (line !== null && !document.execCommand("insertText", false, line)) {
        text.setRangeText(line);
        text.dispatchEvent(new Event("input", { bubbles: true }));
      }
    });

    // Closing the window loses nothing.
    text.addEventListener("input", function () {
      try {
        localStorage.setItem(KEPT, text.value);
        localStorage.removeItem(SENT);
      } catch (full) {
        // then it is only on the page
      }
    });
    const bringBack = function (kept) {
      text.value = kept;
      text.dispatchEvent(new Event("input", { bubbles: true }));
    };
    try {
      const kept = localStorage.getItem(KEPT);
      if (kept && text.value === "" && form.elements.namedItem("before").value === "") {
        if (localStorage.getItem(SENT)) {
          const button = form.querySelector("[data-bring-back]");
          button.hidden = false;
          button.addEventListener("click", function () {
            button.hidden = true;
            bringBack(kept);
          });
        } else {
          // once htmx listens
          window.addEventListener("load", function () {
            bringBack(kept);
          });
        }
      }
    } catch (refused) {
      // a browser that keeps nothing
    }
  }

  // What was kept as a recipe is only offered; whether it was kept is not known here.
  form.addEventListener("submit", function (event) {
    if (event.submitter && event.submitter.getAttribute("formaction") === "/notebook/keep") {
      try {
        localStorage.setItem(SENT, "yes");
      } catch (refused) {
        // nothing was kept
      }
    }
  });

  // There is always another empty box.
  const boxes = document.getElementById("boxes");
  if (boxes) {
    boxes.addEventListener("input", function () {
      const last = boxes.lastElementChild;
      if (boxes.children.length < 100 && [...last.querySelectorAll("input")].some((box) => box.value !== "")) {
        const number = boxes.children.length;
        const row = last.cloneNode(true);
        const [what, much] = row.querySelectorAll("input");
        const trouble = row.querySelector(".trouble");
        for (const box of [what, much]) {
          box.value = "";
          box.setAttribute("aria-describedby", "row-" + number + "-trouble");
        }
        what.setAttribute("aria-label", "What, row " + (number + 1));
        much.setAttribute("aria-label", "How much, row " + (number + 1));
        trouble.id = "row-" + number + "-trouble";
        trouble.textContent = "";
        boxes.append(row);
      }
    });
  }
})();
