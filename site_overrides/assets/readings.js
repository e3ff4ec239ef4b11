// Readings typed at the kiosk, judged at once: each against its limits, those of the seat against one another. By the same rule as the sheet
// (calc/fits.py, shaft_readings); nothing typed is changed, and what lies outside can be written all the same.
(function () {
  "use strict";
  var kept = window.seatbookKept, say = window.seatbookSay, sheet = window.seatbookSheet, TINY = 1e-7, INCH = 25.4, BOUNCE = 150;

  function plain(text) { return text.trim().replace(",", ".").replace("\u2212", "-"); }
  function number(text) { return /^-?\d+(\.\d+)?$/.test(plain(text)) ? Number(plain(text)) : null; }
  function digits(text) { return (plain(text).split(".")[1] || "").length; }
  function limit(text) { return text === "" ? null : Number(text); }
  function scale(unit) { return unit === "in" ? INCH : 1; }

  // the words of a text are changed, never the text itself put in or taken out: that would style a page of thousands of values anew at every key
  function write(node, text) {
    if (!node.firstChild) node.append(document.createTextNode(""));
    if (node.firstChild.data !== text) node.firstChild.data = text;
  }

  // what leaving a field says may move the page: not before the finger that touched the next one has lifted
  var down = false, waiting = [];
  function lifted(then) { if (down) waiting.push(then); else setTimeout(then, 0); }
  document.addEventListener("pointerdown", function () { down = true; }, true);
  ["pointerup", "pointercancel"].forEach(function (kind) {
    document.addEventListener(kind, function () { down = false; waiting.splice(0).forEach(function (then) { setTimeout(then, 0); }); }, true);
  });

  // ---- one reading
  function facts(field, value) {
    var of = field.dataset, most = Math.max(Number(of.digits), digits(field.value)), low = limit(of.low), high = limit(of.high);
    var under = low !== null && (value - low) * scale(of.unit) < -TINY, over = high !== null && (value - high) * scale(of.unit) > TINY, end = under ? low : high;
    return { is: under ? "under" : over ? "over" : low !== null || high !== null ? "inside" : "", unit: of.shown, limit: end === null ? "" : end.toFixed(of.digits), by: end === null ? "" : Math.abs(value - end).toFixed(most) };
  }
  function otherUnit(field, value) {
    var of = field.dataset, low = limit(of.low), high = limit(of.high);
    if (of.unit !== "mm" && of.unit !== "in" || low === null || high === null) return false;
    return [value * INCH, value / INCH].some(function (other) { return other > low * 0.9 && other < high * 1.1; });
  }
  function judged(field, value, warm) {
    var found = facts(field, value), text = found.is && warm ? say("not judged") : found.is ? say(found.is, found) : "", of = field.dataset;
    if (found.is !== "inside" && otherUnit(field, value)) text += " " + say("other unit", { unit: of.shown });
    else if (value < Number(of.least) || value > Number(of.most)) text += " " + say("not believed", { least: of.least, most: of.most, unit: of.shown });
    return { text: text.trim(), outside: found.is === "under" || found.is === "over" };
  }
  // ---- all of the seat: numbers, null where there is none yet
  function verdict(values, low, high, allowed, unit, warm) {
    var there = values.filter(function (one) { return one !== null; }), least = Math.min.apply(null, there), most = Math.max.apply(null, there);
    if (!there.length) return "";
    if (low === null) return "no limits";
    if (warm) return "warm";
    if ((least - low) * scale(unit) < -TINY) return "below";
    if ((most - high) * scale(unit) > TINY) return "above";
    if (allowed !== null && (most - least) * scale(unit) * 1000 > allowed + 1e-4) return "form";
    return there.length < values.length ? "not all" : allowed === null ? "size only" : "inside";
  }

  function Form(form) {
    var own = this;
    this.form = form; this.at = form.dataset.at;
    this.fields = Array.from(form.querySelectorAll("[data-quantity]"));
    this.seats = this.fields.filter(function (field) { return field.dataset.quantity.indexOf("seat diameter") === 0; });
    this.order = Array.from(form.querySelectorAll("[data-quantity], [data-start]"));
    this.start = this.one("[data-start]");
    this.target = this.order[0]; this.typing = null;
    this.order.forEach(function (field, count) {
      var note = field.parentNode.querySelector(".note");
      note.id = own.at.replace("/", "-") + "-note-" + count;
      field.setAttribute("aria-describedby", note.id);
    });
    this.restore(); this.listen(); this.keys(); this.all();
  }
  Form.prototype.one = function (which) { return this.form.querySelector(which); };
  Form.prototype.phase = function () { return this.one("[data-phase]:checked"); };
  // a figure still being typed is not judged: it has fewer digits than are read, and its field is not left
  Form.prototype.value = function (field) {
    return field === this.typing && digits(field.value) < Number(field.dataset.digits) ? null : number(field.value);
  };
  Form.prototype.all = function () {
    var own = this, seats = this.seats, of = seats[0].dataset, degrees = number(this.one('[data-quantity="shaft temperature"]').value);
    var warm = degrees !== null && Math.abs(degrees - 20) > Number(this.form.dataset.warm), box = this.one("[data-verdict]");
    this.fields.forEach(function (field) {
      var value = own.value(field), found = { text: "", outside: false };
      if (value !== null) found = judged(field, value, warm && seats.indexOf(field) >= 0);
      else if (field.value.trim() && field !== own.typing) found = { text: say("no number"), outside: true };
      write(field.parentNode.querySelector(".note"), found.text);
      field.classList.toggle("outside", found.outside && !(warm && seats.indexOf(field) >= 0));
    });
    write(this.start.parentNode.querySelector(".note"), this.start.value.trim() && !this.started(new Date()) && this.start !== this.typing ? say("no time") : "");
    var key = verdict(seats.map(function (field) { return own.value(field); }), limit(of.low), limit(of.high), limit(this.form.dataset.allowed), of.unit, warm);
    if (box.dataset.is !== key) box.dataset.is = key;
    write(box, (key ? say("verdict " + key, { most: this.form.dataset.warm }) : "") + (key && key !== "no limits" && degrees === null ? " " + say("assumed 20") : ""));
    this.marks();
  };
  Form.prototype.marks = function () {
    var own = this, data = kept.has(this.at, "readings") ? kept.get(this.at, "readings") : null, changed = this.one("[data-changed]"), same;
    this.order.forEach(function (field) { field.toggleAttribute("data-target", field === own.target); });
    write(this.one("[data-keys-for]"), this.target.dataset.name || this.target.parentNode.querySelector("span").textContent);
    write(this.one("[data-kept]"), say(kept.lasts ? "readings kept" : "readings not kept"));
    if (changed.hidden !== (!data || data.code === sheet.code)) changed.hidden = !changed.hidden;
    if (changed.hidden) return;
    same = data.issue === sheet.issue;
    write(changed, say("readings changed", { was: same ? data.code : data.issue, now: same ? sheet.code : sheet.issue }));
  };

  // ---- keeping: the crew number is not kept
  Form.prototype.save = function () {
    var typed = {}, phase = this.phase();
    this.order.forEach(function (field) { if (field.value.trim()) typed[field.dataset.key || "start"] = field.value.trim(); });
    if (Object.keys(typed).length) kept.set(this.at, "readings", { readings: typed, phase: phase ? phase.value : "", instrument: this.one("[data-instrument]").value.trim() });
    else kept.drop(this.at, "readings");
  };
  Form.prototype.restore = function () {
    var data = kept.get(this.at, "readings");
    this.order.forEach(function (field) {
      var text = data.readings[field.dataset.key || "start"];
      if (typeof text === "string") field.value = text;
    });
    this.form.querySelectorAll("[data-phase]").forEach(function (one) { one.checked = one.value === data.phase; });
    if (typeof data.instrument === "string") this.one("[data-instrument]").value = data.instrument;
  };
  Form.prototype.wipe = function () {
    this.form.querySelectorAll("input").forEach(function (input) { if (input.type === "radio") input.checked = false; else input.value = ""; });
    this.one("[data-missing]").textContent = "";
    this.target = this.order[0];
    kept.drop(this.at, "readings");
    this.all();
  };

  // ---- hands
  Form.prototype.listen = function () {
    var own = this, form = this.form;
    this.order.forEach(function (field) {
      field.addEventListener("focus", function () { own.target = field; own.marks(); });
      field.addEventListener("keydown", function (event) { if (event.key === "Enter") { event.preventDefault(); own.next(true); } });
    });
    form.addEventListener("input", function (event) {
      own.typing = own.order.indexOf(event.target) >= 0 ? event.target : null;
      own.save(); own.all();
    });
    form.addEventListener("focusout", function (event) {
      if (event.relatedTarget && own.one(".keys").contains(event.relatedTarget)) return;
      own.typing = null;
      lifted(function () { own.all(); });
    });
    form.addEventListener("submit", function (event) { event.preventDefault(); });
    this.one("[data-slip]").addEventListener("click", function () { own.typing = null; own.all(); own.slip(); });
    this.one("[data-wipe]").addEventListener("click", function () { window.seatbookAsk(say("ask wipe", { at: own.at.replace("/", " ") }), say("wipe"), function () { own.wipe(); }); });
  };
  Form.prototype.next = function (focus) {
    this.target = this.order[Math.min(this.order.indexOf(this.target) + 1, this.order.length - 1)];
    this.typing = null;
    if (focus) this.target.focus();
    this.all();
  };
  Form.prototype.keys = function () {
    var own = this, keys = this.one(".keys"), last = { key: "", at: 0 };
    // the finger stays with the field: it is not left by touching a key
    keys.addEventListener("mousedown", function (event) { event.preventDefault(); });
    keys.addEventListener("click", function (event) {
      var button = event.target.closest("button"), key = button && button.dataset.key, apart = event.timeStamp - last.at;
      if (!key || (key === last.key && apart < BOUNCE)) return;
      last = { key: key, at: event.timeStamp };
      if (key === "next") return own.next(event.detail > 0);
      var text = own.target.value, most = own.target.maxLength;
      own.target.value = key === "back" ? text.slice(0, -1) : text.length < most ? text + key : text;
      own.target.dispatchEvent(new Event("input", { bubbles: true }));
    });
  };

  // when the machine was started: the last time the clock showed it, null where none is typed
  Form.prototype.started = function (now) {
    var found = /^(\d{1,2})[.:,]?(\d{2})$/.exec(this.start.value.trim()), start = new Date(now);
    if (!found || Number(found[1]) > 23 || Number(found[2]) > 59) return null;
    start.setHours(Number(found[1]), Number(found[2]), 0, 0);
    if (start > now) start.setDate(start.getDate() - 1);
    return start;
  };
  Form.prototype.missing = function () {
    var typed = this.fields.filter(function (field) { return field.value.trim(); }), broken = typed.filter(function (field) { return number(field.value) === null; })[0];
    if (!typed.length) return [say("nothing typed"), this.order[0]];
    if (broken) return [say("mend first", { what: broken.dataset.name }), broken];
    if (!this.phase() && typed.some(function (field) { return !field.dataset.after; })) return [say("say when"), this.one("[data-phase]")];
    if (!this.started(new Date()) && typed.some(function (field) { return field.dataset.after; })) return [say("say start"), this.start];
    return null;
  };
  Form.prototype.slip = function () {
    var lacks = this.missing(), phase = this.phase(), now = new Date();
    this.one("[data-missing]").textContent = lacks ? lacks[0] : "";
    if (lacks) return lacks[1].focus();
    window.seatbookReadingsSlip({
      at: this.at, now: now, started: this.started(now), limits: this.form.dataset.limits, verdict: this.one("[data-verdict]").textContent,
      phase: phase ? phase.value : "", phaseName: phase ? phase.dataset.phase : "", instrument: this.one("[data-instrument]").value.trim(), by: this.one("[data-by]").value.trim(),
      read: this.fields.map(function (field) {
        return Object.assign({ value: plain(field.value), note: field.classList.contains("outside") ? field.parentNode.querySelector(".note").textContent : "", seat: field.dataset.quantity.indexOf("seat diameter") === 0 }, field.dataset);
      })
    });
  };
  document.querySelectorAll("form[data-readings]").forEach(function (form) { new Form(form); });
})();
