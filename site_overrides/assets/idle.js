// A kiosk that nobody has touched for five minutes asks, counts a minute, forgets who signed, and goes back to the start. Only a screen that was set
// up as a kiosk does it; never while printing.
(function () {
  "use strict";
  var root = document.currentScript.dataset.root, say = window.seatbookSay, make = window.seatbookMake, IDLE = 300, COUNT = 60, AGAIN = [60, 30, 10];
  var touched = Date.now(), box = null, counter = null, heard = null, asked = 0, told = 0, printing = false;

  function stored(name) { try { return localStorage.getItem(name); } catch (refused) { return null; } }
  // the set-up page's mark was seen by another page: storage is shared between the pages of this folder
  if (stored("seatbook-setup") && !document.querySelector("[data-setup]")) try { localStorage.setItem("seatbook-setup-seen", stored("seatbook-setup")); } catch (refused) { /* no storage */ }

  function touch() { if (!box) touched = Date.now(); }
  function forget() {
    document.querySelectorAll("li.sign input.tick").forEach(function (tick) { tick.checked = false; });
    document.querySelectorAll("input[data-by], [data-finder-input]").forEach(function (input) {
      if (!input.value) return;
      input.value = "";
      input.dispatchEvent(new Event("input", { bubbles: true }));
    });
    try {
      Object.keys(sessionStorage).forEach(function (name) { if (name.indexOf("seatbook-") === 0) sessionStorage.removeItem(name); });
    } catch (refused) { /* nothing was kept */ }
    window.dispatchEvent(new CustomEvent("seatbook-forget"));
  }
  function leave() {
    clearInterval(watch);
    forget();
    box.close();
    location.href = root + "/index.html";
  }
  function ask() {
    var keep = make("button", "button main", say("keep open"));
    box = make("dialog", "ask idle");
    box.setAttribute("aria-label", say("idle"));
    counter = make("p", "idle-count");
    counter.setAttribute("aria-hidden", "true");
    heard = make("p", "skip");
    heard.setAttribute("role", "status");
    box.append(make("p", "lead", say("idle")), counter, heard, keep);
    asked = Date.now();
    told = COUNT + 1;
    keep.addEventListener("click", function () { box.close(); });
    box.addEventListener("close", function () { box.remove(); box = null; touch(); });
    document.body.append(box);
    box.showModal();
    keep.focus();
    count();
  }
  // the figure goes down by the second; it is read out three times
  function count() {
    var left = Math.max(0, COUNT - Math.floor((Date.now() - asked) / 1000)), due = AGAIN.filter(function (second) { return second < told && left <= second; });
    counter.textContent = say("idle count", { seconds: left });
    if (due.length) {
      told = due[due.length - 1];
      heard.textContent = counter.textContent;
    }
    if (left <= 0) leave();
  }
  function look() {
    if (Date.now() < touched) touched = Date.now();
    if (printing || stored("seatbook-kiosk") !== "yes") return touch();
    if (box) return count();
    if (Date.now() - touched < IDLE * 1000) return;
    // on the start page there is nothing to go back from
    if (document.body.classList.contains("home")) { forget(); window.scrollTo(0, 0); return touch(); }
    ask();
  }
  ["pointerdown", "touchstart", "keydown", "input", "wheel", "scroll"].forEach(function (kind) { document.addEventListener(kind, touch, { capture: true, passive: true }); });
  window.addEventListener("beforeprint", function () { printing = true; });
  window.addEventListener("afterprint", function () { printing = false; touch(); });
  window.addEventListener("pageshow", touch);
  var watch = setInterval(look, 1000);
})();
