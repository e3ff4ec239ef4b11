// The set-up page: the zoom that makes the bar true, touches counted, the kiosk switch, and what this browser keeps, tried live. Its words stand on the page.
(function () {
  "use strict";
  var STEPS = [50, 67, 75, 80, 90, 100, 110, 125, 150, 175, 200], NARROW = 960, BOUNCE = 300;
  function one(which, inside) { return (inside || document).querySelector(which); }
  function said(sentence, facts) { return sentence.replace(/\{(\w+)\}/g, function (whole, name) { return name in facts ? facts[name] : whole; }); }
  function stored(name) { try { return localStorage.getItem(name); } catch (refused) { return null; } }
  function store(name, text) { try { localStorage.setItem(name, text); return localStorage.getItem(name) === text; } catch (refused) { return false; } }

  function ruler(part) {
    var shows = one("#ruler", part), zoom = one("#zoom", part), answer = one("[data-answer]", part), words = part.dataset;
    function number(input) { var read = Number(input.value.trim().replace(",", ".")); return read > 0 ? read : null; }
    function tell() {
      var mm = number(shows), now = number(zoom);
      if (!mm || !now || mm < 20 || mm > 500 || now < 25 || now > 500) { answer.textContent = ""; return; }
      var wanted = now * 100 / mm, round = Math.round(wanted), step = STEPS.reduce(function (best, each) { return Math.abs(each - wanted) < Math.abs(best - wanted) ? each : best; });
      var width = Math.round(window.innerWidth * now / wanted), lines = [said(Math.abs(mm - 100) < 0.5 ? words.true : words.set, { zoom: round })];
      if (step !== round) lines.push(said(words.near, { step: step, bar: Math.round(mm * step / now) }));
      if (width < NARROW) lines.push(said(words.narrow, { width: width }));
      answer.textContent = lines.join(" ");
    }
    part.addEventListener("click", function (event) {
      var key = event.target.closest("[data-step]"), input = key && one("input", key.parentNode);
      if (!input) return;
      input.value = Math.max(1, (number(input) || 100) + Number(key.dataset.step));
      tell();
    });
    part.addEventListener("input", tell);
    tell();
  }
  function touch(part) {
    var counts = {}, last = 0, area = one(".setup-touch", part), answer = one("[data-answer]", part);
    function again() { counts = { large: 0, small: 0, beside: 0, twice: 0 }; answer.textContent = said(part.dataset.count, counts); }
    area.addEventListener("click", function (event) {
      var field = event.target.closest("[data-field]"), now = Date.now();
      if (now - last >= 0 && now - last < BOUNCE) counts.twice++;
      last = now;
      counts[field ? field.dataset.field : "beside"]++;
      answer.textContent = said(part.dataset.count, counts);
    });
    one("[data-again]", part).addEventListener("click", again);
    again();
  }
  function kiosk(part) {
    var control = one("input", part), answer = one("[data-answer]", part);
    function tell(refused) { answer.textContent = refused ? part.dataset.refused : control.checked ? part.dataset.on : part.dataset.off; }
    control.checked = stored("seatbook-kiosk") === "yes";
    control.addEventListener("change", function () {
      var held = store("seatbook-kiosk", control.checked ? "yes" : "no");
      if (!held) control.checked = false;
      tell(!held);
    });
    tell(false);
  }
  function keeps(part) {
    var words = part.dataset, mark = stored("seatbook-setup"), now = new Date(), when = new Date(now - now.getTimezoneOffset() * 60000).toISOString().slice(0, 16).replace("T", " ");
    var works = store("seatbook-try", "1");
    try { localStorage.removeItem("seatbook-try"); } catch (refused) { /* no storage */ }
    one("[data-answer]", part).textContent = works ? words.kept : words.refused;
    if (!works) return;
    if (!mark) store("seatbook-setup", when);
    one("[data-lasting]", part).textContent = mark ? said(words.again, { when: mark }) : words.first;
    one("[data-shared]", part).textContent = mark && stored("seatbook-setup-seen") === mark ? words.seen : words.unseen;
  }
  var parts = [["[data-ruler]", ruler], ["[data-touch]", touch], ["[data-kiosk]", kiosk], ["[data-store]", keeps]];
  parts.forEach(function (each) { if (one(each[0])) each[1](one(each[0])); });
})();
