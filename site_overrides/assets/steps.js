// The ticks of a job's steps come back when the page does. Who has signed is kept for this visit alone, and forgotten when the kiosk goes back to the start.
(function () {
  "use strict";
  var kept = window.seatbookKept, say = window.seatbookSay, make = window.seatbookMake, sheet = window.seatbookSheet, SIGNED = "seatbook-signed:", BOUNCE = 300;

  function Job(at, name) {
    this.at = at; this.name = name; this.lists = []; this.state = "current";
  }
  Job.prototype.called = function () { return say("job " + this.name); };
  Job.prototype.items = function () { return this.all("li.step, li.sign"); };
  Job.prototype.steps = function () { return this.all("li.step"); };
  Job.prototype.all = function (which) {
    return this.lists.reduce(function (found, list) { return found.concat(Array.from(list.querySelectorAll(which))); }, []);
  };
  function ticks(item) { return Array.from(item.querySelectorAll("input.tick")); }
  function done(item) { return ticks(item).length > 0 && ticks(item).every(function (tick) { return tick.checked; }); }
  Job.prototype.next = function () { return this.steps().filter(function (item) { return !done(item); })[0] || null; };
  // of the steps as they read now: another wording under the same number is another step
  Job.prototype.print = function () {
    var hash = 5381;
    this.steps().forEach(function (item) {
      var parts = [item.id, item.dataset.act].concat(Array.from(item.querySelectorAll(".message, .do, .check, .trouble"), function (part) { return part.textContent; }));
      parts.join("|").split("").forEach(function (letter) { hash = ((hash * 33) ^ letter.charCodeAt(0)) >>> 0; });
    });
    return hash.toString(36);
  };

  // ---- keeping
  Job.prototype.save = function () {
    if (this.state !== "current") return;
    var steps = this.steps(), next = this.next(), own = {
      ticks: steps.filter(done).map(function (item) { return item.id; }),
      unsigned: this.all("li.sign[data-unsigned]").map(function (item) { return item.id; }),
      of: steps.length, next: next ? next.id : "", print: this.print()
    };
    if (own.ticks.length || own.unsigned.length || Object.keys(kept.get(this.at, this.name).readings).length) kept.set(this.at, this.name, own);
    else kept.drop(this.at, this.name);
  };
  Job.prototype.saveSigned = function () {
    var signed = [];
    this.all("li.sign").forEach(function (item) { ticks(item).forEach(function (tick, n) { if (tick.checked) signed.push(item.id + "/" + n); }); });
    try { sessionStorage.setItem(SIGNED + this.at + ":" + this.name, JSON.stringify(signed)); } catch (refused) { /* then they last as long as the page */ }
  };
  Job.prototype.signed = function () {
    try { return JSON.parse(sessionStorage.getItem(SIGNED + this.at + ":" + this.name)) || []; } catch (refused) { return []; }
  };

  // ---- coming back
  Job.prototype.restore = function () {
    if (!kept.has(this.at, this.name)) return;
    var data = kept.get(this.at, this.name), ticked = data.ticks, signed;
    if (data.code !== sheet.code || (data.print && data.print !== this.print())) this.state = "changed";
    else if (ticked.length && ticked.length === this.steps().length && data.started !== kept.today()) this.state = "over";
    if (this.state !== "current") return;
    this.steps().forEach(function (item) { if (ticked.indexOf(item.id) >= 0) ticks(item).forEach(function (tick) { tick.checked = true; }); });
    (Array.isArray(data.unsigned) ? data.unsigned : []).forEach(function (id) { passed(document.getElementById(id)); });
    signed = this.signed();
    this.all("li.sign").forEach(function (item) { ticks(item).forEach(function (tick, n) { if (signed.indexOf(item.id + "/" + n) >= 0) tick.checked = true; }); });
  };
  // a stop that was gone past without its signatures stays marked
  function passed(item) {
    if (!item || item.hasAttribute("data-unsigned")) return;
    item.setAttribute("data-unsigned", "");
    item.append(make("p", "gone-unsigned", say("gone unsigned")));
  }
  Job.prototype.goUnsigned = function (item) { passed(item); this.save(); this.tell(); };

  // ---- saying so, at the head of the job
  Job.prototype.tell = function () {
    var data = kept.has(this.at, this.name) ? kept.get(this.at, this.name) : null, steps = this.steps(), stale = this.state !== "current";
    var facts = { done: steps.filter(done).length, of: steps.length, day: data ? data.started : "" };
    this.anewButton.hidden = !data;
    this.line.classList.toggle("changed", stale);
    this.lists.forEach(function (list) { list.toggleAttribute("data-stale", stale); });
    if (this.state === "changed") this.line.textContent = changed(data);
    else if (this.state === "over") this.line.textContent = say("ended before", facts);
    else this.line.textContent = !kept.lasts ? say("not kept") : data ? say("counted", facts) : say("kept here");
  };
  function changed(data) {
    var sameIssue = !data.issue || data.issue === sheet.issue, numbers = data.ticks.map(function (id) { return id.match(/\d*$/)[0]; }).filter(Boolean);
    var facts = { was: sameIssue ? data.code : data.issue, now: sameIssue ? sheet.code : sheet.issue, steps: numbers.join(", ") || "0" };
    return say(data.code === sheet.code ? "changed words" : sameIssue ? "changed code" : "changed issue", facts);
  }
  Job.prototype.anew = function () {
    this.all("input").forEach(function (input) { if (input.type === "checkbox" || input.type === "radio") input.checked = false; else input.value = ""; });
    this.all("li.sign[data-unsigned]").forEach(function (item) { item.removeAttribute("data-unsigned"); item.querySelector(".gone-unsigned").remove(); });
    kept.drop(this.at, this.name);
    try { sessionStorage.removeItem(SIGNED + this.at + ":" + this.name); } catch (refused) { /* nothing was kept */ }
    this.state = "current";
    document.dispatchEvent(new CustomEvent("seatbook-anew", { detail: { at: this.at, job: this.name } }));
    this.tell();
  };
  Job.prototype.head = function () {
    var job = this, bar = make("div", "job-head no-print");
    this.oneButton = make("button", "button main", say("one at a time"));
    this.anewButton = make("button", "button main", say("begin anew"));
    this.line = make("p", "job-count");
    this.line.setAttribute("role", "status");
    this.oneButton.hidden = true;
    this.anewButton.addEventListener("click", function () {
      window.seatbookAsk(say("ask anew", { at: job.at.replace("/", " "), job: job.called() }), say("begin anew"), function () { job.anew(); });
    });
    bar.append(this.oneButton, this.anewButton, this.line);
    this.lists[0].before(bar);
  };

  // ---- all jobs of the page that may be done
  var jobs = [];
  function jobOf(list) {
    return jobs.filter(function (job) { return list && job.lists.indexOf(list) >= 0; })[0];
  }
  document.querySelectorAll("ol.steps[data-at][data-job]").forEach(function (list) {
    if (list.hasAttribute("data-held")) return;
    var job = jobs.filter(function (one) { return one.at === list.dataset.at && one.name === list.dataset.job; })[0];
    if (!job) jobs.push(job = new Job(list.dataset.at, list.dataset.job));
    job.lists.push(list);
  });
  jobs.forEach(function (job) { job.head(); job.restore(); job.tell(); });
  document.addEventListener("change", function (event) {
    var job = event.target.matches("ol.steps input.tick") && jobOf(event.target.closest("ol.steps"));
    if (!job) return;
    if (event.target.closest("li.sign")) job.saveSigned();
    job.save();
    job.tell();
  });
  // a wet or stiff glove touches twice: the second touch of the same field within a third of a second is not one
  var last = { place: null, at: 0 };
  document.addEventListener("click", function (event) {
    var place = event.target.closest("ol.steps .tick, ol.steps label"), now = Date.now(), apart = now - last.at;
    if (!place) return;
    place = place.closest("label") || place;
    // the field answers its own label's touch at once; no hand is that fast
    if (place === last.place && apart > 30 && apart < BOUNCE) { event.preventDefault(); event.stopImmediatePropagation(); return; }
    if (place !== last.place || apart > 30 || apart < 0) last = { place: place, at: now };
  }, true);
  window.addEventListener("seatbook-forget", function () { jobs.forEach(function (job) { job.tell(); }); });

  window.seatbookJobs = jobs;
  window.seatbookDone = done;
})();
