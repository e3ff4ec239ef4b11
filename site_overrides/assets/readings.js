// Shaft readings typed at the kiosk, judged at once: each against the band, all against one another. By the same rule as the sheet; nothing typed is changed.
(function () {
  "use strict";
  var kept = window.seatbookKept, say = window.seatbookSay, TINY = 1e-7;
  function number(text) { return /^\d+([.,]\d+)?$/.test(text.trim()) ? Number(text.trim().replace(",", ".")) : null; }

  function judge(values, low, high, allowed) { // values: number or null, three a section
    var there = values.filter(function (one) { return one !== null; });
    if (!there.length) return "";
    var least = Math.min.apply(null, there), most = Math.max.apply(null, there);
    if (least < low - TINY) return "below";
    if (most > high + TINY) return "above";
    if (allowed !== null && (most - least) * 1000 > allowed + 1e-4) return "form";
    return there.length < values.length ? "not all" : "inside";
  }
  window.seatbookJudge = judge;

  function attach(form) {
    var at = form.dataset.at, unit = form.dataset.unit, inches = unit === "in" ? 25.4 : 1;
    var low = form.dataset.low === "" ? null : Number(form.dataset.low), high = Number(form.dataset.high), allowed = form.dataset.allowed === "" ? null : Number(form.dataset.allowed) / inches;
    var fields = Array.from(form.querySelectorAll("[data-quantity]")), seats = fields.filter(function (one) { return one.dataset.quantity.indexOf("seat diameter") === 0; });
    var verdict = form.querySelector("[data-verdict]"), active = fields[0];

    function one(field) {
      var value = number(field.value), note = field.parentNode.querySelector(".note"), text = "", wrong = false;
      if (field.value.trim() && value === null) { text = say("no number"); wrong = true; }
      else if (value !== null && seats.indexOf(field) >= 0 && low !== null) {
        var other = unit === "in" ? value / 25.4 : value * 25.4;
        if (value < low - TINY) { text = say("under", { by: (low - value).toFixed(unit === "in" ? 4 : 3), unit: unit }); wrong = true; }
        else if (value > high + TINY) { text = say("over", { by: (value - high).toFixed(unit === "in" ? 4 : 3), unit: unit }); wrong = true; }
        else text = say("inside");
        if (wrong && other > low * 0.9 && other < high * 1.1) text = say("other unit", { unit: unit });
      }
      note.textContent = text;
      field.classList.toggle("outside", wrong);
    }
    function all() {
      fields.forEach(one);
      var key = low === null ? "no limits" : judge(seats.map(function (field) { return number(field.value); }), low, high, allowed);
      var warm = form.querySelector('[data-quantity="shaft temperature"]'), degrees = warm && number(warm.value);
      verdict.textContent = (key ? say("verdict " + key) : "") + (degrees !== null && warm && Math.abs(degrees - 20) > Number(form.dataset.warm) ? " " + say("warm") : "");
      verdict.dataset.is = key;
      var typed = {};
      fields.forEach(function (field) { if (field.value.trim()) typed[field.dataset.quantity] = field.value.trim(); });
      kept.set(at, "readings", { readings: typed });
    }
    var before = kept.get(at, "readings").readings || {};
    fields.forEach(function (field) {
      if (before[field.dataset.quantity]) field.value = before[field.dataset.quantity];
      field.addEventListener("focus", function () { active = field; });
      field.addEventListener("input", all);
    });
    form.querySelector(".keys").addEventListener("click", function (event) {
      var key = event.target.closest("button");
      if (!key) return;
      var what = key.dataset.key;
      if (what === "next") { active = fields[(fields.indexOf(active) + 1) % fields.length]; active.focus(); return; }
      active.value = what === "back" ? active.value.slice(0, -1) : active.value + what;
      active.dispatchEvent(new Event("input", { bubbles: true }));
    });
    form.addEventListener("submit", function (event) { event.preventDefault(); slip(form, fields, verdict.textContent); });
    form.querySelector("[data-wipe]").addEventListener("click", function () {
      window.seatbookAsk(say("ask wipe"), say("wipe"), function () { fields.forEach(function (field) { field.value = ""; }); kept.drop(at, "readings"); all(); kept.drop(at, "readings"); });
    });
    if (Object.keys(before).length) all();
  }
  function slip(form, fields, verdict) {
    var now = new Date(), when = new Date(now - now.getTimezoneOffset() * 60000).toISOString().slice(0, 16), at = form.dataset.at.replace("/", " "), record = "K-" + when.replace(/\D/g, "").slice(2);
    var by = form.querySelector("[data-by]").value.trim(), instrument = form.querySelector("[data-instrument]").value.trim(), phase = form.querySelector("[data-phase]:checked").value;
    var read = fields.filter(function (field) { return number(field.value) !== null; }), issue = (window.seatbookIssue.match(/\d+/) || [""])[0];
    var rows = [["record", "issue", "position", "when", "by", "phase", "quantity", "value", "unit", "instrument", "note"]].concat(read.map(function (field) {
      return [record, issue, at, when, by, phase, field.dataset.quantity, field.value.trim().replace(",", "."), field.dataset.unit, instrument, ""];
    }));
    var short = read.map(function (field) { return field.dataset.short + "=" + field.value.trim().replace(",", "."); }).join(" ");
    var lines = [[say("position"), at], [say("record"), record + ", " + when], [say("verdict"), verdict]].concat(read.map(function (field) { return [field.dataset.name, field.value + " " + field.dataset.shown]; }));
    window.seatbookSlip.show(say("readings slip"), lines, ["SB1", at.replace(" ", "/"), issue, record, phase, short].join(" "), [record + ".csv", rows]);
  }
  document.querySelectorAll("form[data-readings]").forEach(attach);
})();
