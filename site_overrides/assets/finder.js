// The finder: one box over everything. The list of entries is fetched as a script when the box is first touched, so that it works from a folder too.
// int2, INT 02 and INT-02 are the same; one slip (a letter more, less, other, or two changed about) is forgiven where nothing fits better.
(function () {
  "use strict";
  var root = document.currentScript.dataset.root, MOST_IN_GROUP = 8, MOST = 40;
  var EXACT = 0, STARTS = 1, NAMED = 2, INSIDE = 3, SAID = 4, SLIP_NAMED = 5, SLIP_SAID = 6, NOT = 9;

  // ---- text to what is compared
  function plain(text) {
    text = text.toLowerCase();
    return /^[\x00-\x7f]*$/.test(text) ? text : text.normalize("NFKD").replace(/[\u0300-\u036f]/g, "");
  }
  function key(text) { return plain(text).replace(/[^a-z0-9]+/g, "").replace(/([a-z])0+(?=[0-9])/g, "$1").replace(/^0+(?=[0-9])/, ""); }
  var splits = new Map(); // the same names stand beside many positions
  function words(text) {
    if (!splits.has(text)) splits.set(text, split(text));
    return splits.get(text);
  }
  function split(text) {
    var found = plain(text).match(/[a-z0-9]+/g) || [];
    return found.map(function (word) { return /^0+[0-9]/.test(word) ? word.replace(/^0+(?=[0-9])/, "") : word; });
  }

  // ---- the list, and which rows have which word (twice the row, plus one where the word is not in its name)
  var list = null, waiting = [];
  function load(then) {
    if (list) return then();
    waiting.push(then);
    if (waiting.length > 1) return;
    var tag = document.createElement("script");
    tag.src = root + "/assets/finder-index.js";
    tag.onload = function () {
      list = prepare(window.seatbookIndex);
      waiting.splice(0).forEach(function (one) { one(); });
    };
    document.head.appendChild(tag);
  }
  function prepare(index) {
    var places = new Map(), keys = [];
    function note(word, place) {
      var known = places.get(word);
      if (!known) places.set(word, [place]);
      else if (known[known.length - 1] >> 1 !== place >> 1) known.push(place);
    }
    index.rows.forEach(function (row, number) {
      keys.push(key(row[1]));
      note(keys[number], number * 2);
      split(row[1]).forEach(function (word) { note(word, number * 2); });
      words(row[2]).forEach(function (word) { note(word, number * 2 + 1); });
      words(row[4]).forEach(function (word) { note(word, number * 2 + 1); });
    });
    return { index: index, keys: keys, words: Array.from(places.keys()), places: Array.from(places.values()) };
  }

  // ---- searching
  function oneSlip(a, b) {
    var la = a.length, lb = b.length, i = 0, j = 0;
    if (la - lb > 1 || lb - la > 1) return false;
    while (i < la && i < lb && a.charCodeAt(i) === b.charCodeAt(i)) i++;
    while (j < la - i && j < lb - i && a.charCodeAt(la - 1 - j) === b.charCodeAt(lb - 1 - j)) j++;
    if (la - i - j <= 1 && lb - i - j <= 1) return true;
    return la === lb && la - i - j === 2 && a[i] === b[i + 1] && a[i + 1] === b[i];
  }
  // a word still being typed may have its slip already
  function slipped(word, asked) { return oneSlip(word, asked) || (asked.length > 4 && word.length > asked.length && oneSlip(word.slice(0, asked.length), asked)); }

  function marked(parts, fits, marks, named, bit) {
    for (var w = 0; w < list.words.length; w++) {
      if (!fits(list.words[w], parts)) continue;
      list.places[w].forEach(function (place) {
        marks[place >> 1] |= bit;
        if (!(place & 1)) named[place >> 1] |= bit;
      });
    }
  }
  function starts(word, part) { return word.startsWith(part); }
  function search(query) {
    var asked = key(query), parts = split(query).slice(0, 8), rows = list.keys.length, best = new Uint8Array(rows).fill(NOT);
    if (!asked) return [];
    var marks = new Uint16Array(rows), named = new Uint16Array(rows), all = (1 << parts.length) - 1;
    parts.forEach(function (part, number) { marked(part, starts, marks, named, 1 << number); });
    for (var row = 0; row < rows; row++) best[row] = score(list.keys[row], asked, marks[row] === all, named[row] === all);
    if (count(best) < 5) forgive(asked, parts, marks, named, all, best);
    return ordered(best);
  }
  function score(own, asked, said, named) {
    if (own === asked) return EXACT;
    if (asked.length > 1 && own.startsWith(asked)) return STARTS;
    if (named) return NAMED;
    if (asked.length > 2 && own.includes(asked)) return INSIDE;
    return said ? SAID : NOT;
  }
  // one slip in all: in the whole, or in one word while the others stand
  function forgive(asked, parts, marks, named, all, best) {
    var wholly = asked.length > 2 && asked.length < 32, row;
    parts.forEach(function (part, number) {
      if (part.length < 4 || part.length > 31) return;
      var near = new Uint16Array(marks.length), nearNamed = new Uint16Array(marks.length), rest = all & ~(1 << number);
      marked(part, slipped, near, nearNamed, 1);
      for (var r = 0; r < near.length; r++) {
        if (near[r] && (marks[r] & rest) === rest) best[r] = Math.min(best[r], nearNamed[r] ? SLIP_NAMED : SLIP_SAID);
      }
    });
    for (row = 0; wholly && row < best.length; row++) if (best[row] > SLIP_NAMED && slipped(list.keys[row], asked)) best[row] = SLIP_NAMED;
  }
  function count(best) { var n = 0; for (var i = 0; i < best.length; i++) if (best[i] < NOT) n++; return n; }
  function ordered(best) {
    var ranks = [];
    for (var row = 0; row < best.length; row++) if (best[row] < NOT) ranks.push((best[row] * 16 + list.index.rows[row][0]) * 1048576 + row);
    return Float64Array.from(ranks).sort().map(function (rank) { return rank % 1048576; });
  }

  // ---- showing: groups in the order of their best; in a group the best first
  function grouped(found) {
    var groups = new Map();
    found.forEach(function (row) {
      var kind = list.index.rows[row][0];
      if (!groups.has(kind)) groups.set(kind, []);
      groups.get(kind).push(list.index.rows[row]);
    });
    return groups;
  }
  function element(name, kind, text) {
    var made = document.createElement(name);
    if (kind) made.className = kind;
    if (text !== undefined) made.textContent = text;
    return made;
  }
  function item(row) {
    var link = element("a"), line = element("li");
    link.href = root + "/" + row[3];
    link.append(element("span", "tag", row[1]), element("span", "name", row[2]));
    line.append(link);
    return line;
  }
  function show(input, results) {
    var found = input.value.trim() ? search(input.value) : [], left = MOST;
    results.textContent = "";
    if (!input.value.trim()) return;
    if (!found.length) return results.append(element("p", "found-count", list.index.none));
    results.append(element("p", "found-count", list.index.found.replace("{count}", found.length)));
    grouped(found).forEach(function (rows, kind) {
      if (left <= 0) return;
      var rowsShown = rows.slice(0, Math.min(MOST_IN_GROUP, left)), shown = element("ul", "rows short found");
      left -= rowsShown.length;
      rowsShown.forEach(function (row) { shown.append(item(row)); });
      results.append(element("h3", "", list.index.kinds[kind]), shown);
      if (rows.length > rowsShown.length) results.append(element("p", "found-more", list.index.more.replace("{count}", rows.length - rowsShown.length)));
    });
  }

  // ---- the box and its keypad; a key never moves the focus, so that no keyboard of the system comes up
  function keypad(keys, input, typed) {
    var said = keys.dataset, codes = (said.codes || "").split(" ").filter(Boolean), few = codes.concat("1234567890".split("")), many = "ABCDEFGHIJKLMNOPQRSTUVWXYZ".split("");
    function key(name, does, called) {
      var button = element("button", "key", name);
      button.type = "button";
      if (called) button.setAttribute("aria-label", called);
      button.addEventListener("click", does);
      keys.append(button);
      return button;
    }
    function put(text) { input.value = text; typed(); }
    function add(name) {
      var before = input.value;
      put(name.length > 1 && before && !/\s$/.test(before) ? before + " " + name : before + name);
    }
    function lay(letters) {
      keys.textContent = "";
      (letters ? many : few).forEach(function (name) { key(name, function () { add(name); }); });
      if (letters && said.space) key(said.space, function () { add(" "); });
      key("\u232b", function () { put(input.value.slice(0, -1)); }, said.back).dataset.back = "";
      if (!said.letters) return;
      key(letters ? said.digits : said.letters, function () { lay(!letters); keys.querySelector("[data-turn]").focus({ preventScroll: true }); }).dataset.turn = "";
    }
    lay(false);
  }
  function attach(box) {
    var input = box.querySelector("[data-finder-input]"), results = box.querySelector("[data-finder-results]"), keys = box.querySelector("[data-finder-keys]");
    if (!input || !results) return;
    function typed() { load(function () { show(input, results); }); }
    input.addEventListener("input", typed);
    input.addEventListener("focus", function () { load(function () {}); });
    input.addEventListener("keydown", function (event) {
      if (event.key === "Escape") { input.value = ""; typed(); }
      var first = event.key === "Enter" && results.querySelector("a");
      if (first) first.click();
    });
    if (keys) keypad(keys, input, typed);
    if (input.value) typed();
    // whoever came by the Find button is about to type; later than the browser's own jump to the place, which takes the focus away
    function asked() { if (box.id && location.hash === "#" + box.id) setTimeout(function () { input.focus({ preventScroll: true }); }); }
    window.addEventListener("hashchange", asked);
    window.addEventListener("load", asked);
  }
  window.seatbookFind = function (query, then) { load(function () { then(Array.from(search(query), function (row) { return list.index.rows[row]; })); }); };
  document.querySelectorAll("[data-finder]").forEach(attach);
})();
