// What is ticked and typed at a job, kept on this screen only, under one key a job. Where storage is refused it lives as long as the page.
// { issue, code, started, ticks: [ids], readings: {quantity: text} }: each writer hands over its own part, the rest stays as it is.
(function () {
  "use strict";
  var PREFIX = "seatbook-job:", TRY = "seatbook-try", memory = {}, lasts = works();

  function works() {
    try {
      localStorage.setItem(TRY, "1");
      localStorage.removeItem(TRY);
      return true;
    } catch (refused) { return false; }
  }
  function key(at, job) { return PREFIX + at + ":" + job; }
  function today() {
    var now = new Date();
    function two(number) { return (number < 10 ? "0" : "") + number; }
    return now.getFullYear() + "-" + two(now.getMonth() + 1) + "-" + two(now.getDate());
  }
  // other files may share the storage of a folder, and an earlier issue may have written it: whatever is not as it should be is left out
  function whole(text) {
    var found = null;
    try { found = JSON.parse(text); } catch (broken) { /* as if nothing were there */ }
    if (!found || typeof found !== "object" || Array.isArray(found)) return null;
    found.ticks = Array.isArray(found.ticks) ? found.ticks.filter(function (id) { return typeof id === "string"; }) : [];
    if (!found.readings || typeof found.readings !== "object" || Array.isArray(found.readings)) found.readings = {};
    ["issue", "code", "started"].forEach(function (name) { found[name] = typeof found[name] === "string" || typeof found[name] === "number" ? String(found[name]) : ""; });
    return found;
  }
  function stored(name) {
    if (memory[name] !== undefined) return memory[name];
    try { return localStorage.getItem(name); } catch (refused) { return null; }
  }
  function found(at, job) {
    var text = stored(key(at, job));
    return text ? whole(text) : null;
  }
  function has(at, job) { return found(at, job) !== null; }
  // what is kept of a job; where nothing is, how it would begin under the sheet of this page
  function get(at, job) {
    return found(at, job) || { issue: window.seatbookSheet.issue, code: window.seatbookSheet.code, started: today(), ticks: [], readings: {} };
  }
  function set(at, job, part) {
    var name = key(at, job), text = JSON.stringify(Object.assign(get(at, job), part));
    if (lasts) {
      try {
        localStorage.setItem(name, text);
        delete memory[name];
        return;
      } catch (full) { lasts = false; }
    }
    memory[name] = text;
  }
  function drop(at, job) {
    delete memory[key(at, job)];
    try { localStorage.removeItem(key(at, job)); } catch (refused) { /* no storage */ }
  }
  function names() {
    var known = Object.keys(memory);
    try {
      for (var n = 0; n < localStorage.length; n++) if (known.indexOf(localStorage.key(n)) < 0) known.push(localStorage.key(n));
    } catch (refused) { /* no storage */ }
    return known.filter(function (name) { return name.indexOf(PREFIX) === 0; }).sort();
  }
  // every job kept: { at, job, data }
  function all() {
    return names().map(function (name) {
      var cut = name.lastIndexOf(":");
      return { at: name.slice(PREFIX.length, cut), job: name.slice(cut + 1), data: whole(stored(name)) };
    }).filter(function (one) { return one.data && one.at; });
  }

  window.seatbookKept = { has: has, get: get, set: set, all: all, drop: drop, today: today, get lasts() { return lasts; } };
})();
