// The start page: what was begun on this screen and not ended, each a way back to where it goes on.
(function () {
  "use strict";
  var section = document.getElementById("unfinished"), kept = window.seatbookKept, say = window.seatbookSay, make = window.seatbookMake;
  if (!section) return;
  var list = section.querySelector("ul");

  function unfinished(one) { return /^[^\/]+\/[^\/]+$/.test(one.at) && (one.job === "readings" ? Object.keys(one.data.readings).length > 0 : one.data.next !== "" && one.data.ticks.length + Object.keys(one.data.readings).length > 0); }
  function line(one) {
    var row = make("li"), link = make("a"), drop = make("button", "button main", say("drop")), at = one.at.split("/"), typed = one.job === "readings";
    var facts = { at: at.join(" "), job: say("job " + one.job), done: typed ? Object.keys(one.data.readings).length : one.data.ticks.length, of: one.data.of || "?", day: one.data.started };
    link.href = "machines/" + encodeURIComponent(at[0]) + ".html#" + encodeURIComponent(typed ? at[1] + "-readings" : one.data.next || at[1]);
    link.append(make("span", "tag", facts.at), make("span", "name", facts.job), make("span", "", say(typed ? "unfinished readings" : "unfinished", facts)));
    drop.setAttribute("aria-label", say("drop") + ": " + facts.at + ", " + facts.job);
    drop.addEventListener("click", function () {
      window.seatbookAsk(say("ask drop", facts), say("drop"), function () { kept.drop(one.at, one.job); show(); });
    });
    row.append(link, drop);
    return row;
  }
  function show() {
    var found = kept.all().filter(unfinished);
    list.textContent = "";
    found.forEach(function (one) { list.append(line(one)); });
    section.hidden = !found.length;
  }
  show();
  window.addEventListener("pageshow", show);
})();
