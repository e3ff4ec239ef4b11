// One step at a time: the same step of the same list, alone and large, with its drawing; everything else of the page stands aside meanwhile.
(function () {
  "use strict";
  var jobs = window.seatbookJobs, done = window.seatbookDone, say = window.seatbookSay, make = window.seatbookMake, BOUNCE = 300;
  if (!jobs || !jobs.length) return;
  var page = document.querySelector("main"), head = make("header", "step-head here"), bar = make("nav", "step-bar here"), job = null, now = null, beside = [], touched = 0;
  var part = {
    where: make("p", "step-where"), title: make("h1"), stop: make("p", "step-stop"), missing: make("p", "step-missing"),
    unsaid: make("p", "step-unsigned"), unsigned: make("button", "button main", say("go on unsigned")),
    back: make("button", "button main", say("back")), all: make("button", "button main", say("all steps")), next: make("button", "button main", say("next"))
  };
  part.title.tabIndex = -1;
  part.unsaid.setAttribute("role", "alert");
  head.append(part.title, part.where, part.stop, part.missing);
  bar.append(part.unsaid, part.unsigned, part.back, part.all, part.next);
  bar.setAttribute("aria-label", say("one at a time"));

  // ---- which of the page is shown: the step, its drawing and a value looked up; the boxes around them are flattened by the style sheet
  function clear() {
    page.querySelectorAll(".on-way, .here").forEach(function (one) { if (one !== head && one !== bar) one.classList.remove("on-way", "here"); });
  }
  function put(one) {
    one.classList.add("here");
    for (var up = one.parentElement; up && up !== page; up = up.parentElement) up.classList.add("on-way");
  }
  // the drawing of that name at the same position
  function drawing(item) {
    var place = item.closest(".position"), name = item.dataset.picture;
    return name && place ? place.querySelector('figure[data-picture="' + name + '"]') : null;
  }
  function draw() {
    clear();
    put(now);
    if (drawing(now)) put(drawing(now));
    beside.forEach(put);
  }
  function forgetValues() {
    beside.forEach(function (one) { if (one.tagName === "DETAILS") one.open = false; });
    beside = [];
  }

  // ---- where one is
  function number(item) {
    var steps = job.steps(), items = job.items(), at = items.indexOf(item), count = 0;
    for (var n = 0; n <= at; n++) if (steps.indexOf(items[n]) >= 0) count++;
    return count;
  }
  function stops() { return job.items().filter(function (item) { return item.classList.contains("sign"); }); }
  function title() {
    return say(now.dataset.sign ? "stop n" : "step n", { n: number(now), of: job.steps().length, stop: now.dataset.sign });
  }
  function coming() {
    var items = job.items(), later = stops().filter(function (item) { return items.indexOf(item) > items.indexOf(now); })[0];
    if (items.indexOf(now) === items.length - 1) return say("last step");
    return later ? say("next stop", { stop: later.dataset.sign, n: number(later) }) : say("no stop");
  }
  // what is left open before this: stops without their signatures anywhere, steps without a tick at a stop
  function missing() {
    var items = job.items(), before = items.slice(0, items.indexOf(now)), open = before.filter(function (item) { return !done(item); });
    var unsigned = open.filter(function (item) { return item.dataset.sign; }).map(function (item) { return item.dataset.sign; });
    var unticked = now.dataset.sign ? open.filter(function (item) { return !item.dataset.sign; }).map(function (item) { return number(item); }) : [];
    return [unsigned.length ? say("unsigned before", { stops: unsigned.join(", ") }) : "", unticked.length ? say("unticked before", { steps: unticked.join(", ") }) : ""].filter(Boolean).join(" ");
  }
  function tell() {
    var items = job.items(), at = items.indexOf(now);
    part.title.textContent = title();
    part.where.textContent = say("where", { at: job.at.replace("/", " "), job: job.called() });
    part.where.append(" ", make("small", "", window.seatbookIssue));
    part.stop.textContent = coming();
    part.missing.textContent = missing();
    part.back.disabled = at === 0;
    part.next.disabled = at === items.length - 1;
    warn(false);
  }
  function warn(on) {
    bar.classList.toggle("warned", on);
    part.unsaid.textContent = on ? say("unsigned", { stop: now.dataset.sign }) : "";
    part.unsigned.hidden = !on;
  }

  // ---- going
  function show(item) {
    forgetValues();
    now = item;
    draw();
    tell();
    window.scrollTo(0, 0);
    part.title.focus({ preventScroll: true });
  }
  function go(by) {
    var items = job.items(), to = items[items.indexOf(now) + by];
    if (!to) return;
    if (by > 0 && now.dataset.sign && !done(now) && !now.hasAttribute("data-unsigned")) return warn(true);
    show(to);
  }
  // where to begin: at the first step without a tick, or at the stop before it that nobody signed
  function first() {
    var items = job.items(), next = job.next(), at = next ? items.indexOf(next) : items.length - 1, before = items[at - 1];
    return next && before && before.dataset.sign && !done(before) && !before.hasAttribute("data-unsigned") ? before : items[at];
  }
  function enter(which) {
    job = which;
    page.prepend(head);
    page.append(bar);
    document.body.classList.add("one-step");
    touched = Date.now();
    show(first());
  }
  function leave() {
    var item = now, button = job.oneButton;
    forgetValues();
    clear();
    document.body.classList.remove("one-step");
    head.remove();
    bar.remove();
    job = now = null;
    item.scrollIntoView({ block: "center" });
    (item.querySelector("input.tick") || button).focus({ preventScroll: true });
  }

  // ---- touches; whatever follows the last one within a third of a second is a bounce
  function once(event) {
    var apart = Date.now() - touched;
    if (event.target.closest("ol.steps label, ol.steps .tick")) return;
    if (apart >= 0 && apart < BOUNCE) { event.preventDefault(); event.stopImmediatePropagation(); return; }
    touched = Date.now();
  }
  // a figure in a step leads to its value: it is unfolded under the step, which stays where it is
  function look(event) {
    var link = event.target.closest('a[href^="#"]'), place = link && document.getElementById(decodeURIComponent(link.hash.slice(1)));
    if (!place || !page.contains(link)) return;
    event.preventDefault();
    if (beside.indexOf(place) < 0) beside.push(place);
    if (place.tagName === "DETAILS") place.open = true;
    draw();
    place.scrollIntoView({ block: "nearest" });
    (place.querySelector("summary") || place).focus({ preventScroll: true });
  }
  document.addEventListener("click", function (event) {
    if (!job || event.target.closest("dialog")) return;
    once(event);
    if (!event.defaultPrevented) look(event);
  }, true);
  document.addEventListener("keydown", function (event) { if (event.key === "Escape" && job && !document.querySelector("dialog[open]")) leave(); });
  document.addEventListener("change", function () { if (job) tell(); });
  part.back.addEventListener("click", function () { go(-1); });
  part.next.addEventListener("click", function () { go(1); });
  part.all.addEventListener("click", leave);
  part.unsigned.addEventListener("click", function () { job.goUnsigned(now); go(1); });
  jobs.forEach(function (one) {
    one.oneButton.hidden = false;
    one.oneButton.addEventListener("click", function () { enter(one); });
  });
  // on paper the page is whole, and it is whole again where another place of it is asked for
  window.addEventListener("hashchange", function () { if (job) leave(); });
})();
