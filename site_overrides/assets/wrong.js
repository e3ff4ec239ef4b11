// "This is wrong": in each unfolded reason and at each step of a machine's page, a way to tell the engineer which one is meant, by slip or code.
// It needs a script to do anything, so a script puts it there: the page does not carry it a thousand times.
(function () {
  "use strict";
  var say = window.seatbookSay, make = window.seatbookMake, sheet = window.seatbookSheet, KINDS = ["number", "machine", "order", "words"], BOUNCE = 300;
  var main = document.querySelector("main"), tag = (document.querySelector(".top h1 b") || { textContent: "" }).textContent.trim();
  if (!main || !sheet.code) return;

  function text(node) { return node ? node.textContent.replace(/\s+/g, " ").trim() : ""; }
  // INT-02/A/nut_turn; INT-02/A/put on/hand tight
  function identity(place) {
    var list = place.closest("ol.steps"), id, cut;
    if (list) return list.dataset.at + "/" + list.dataset.job + "/" + place.dataset.act;
    id = place.id; cut = id.indexOf("-");
    return tag + "/" + id.slice(0, cut) + "/" + id.slice(cut + 1);
  }
  function lines(place) {
    if (place.matches("li")) return [[say("step"), text(place.querySelector(".do"))]];
    return [[say("what"), text(place.querySelector("summary .name"))], [say("shown value"), text(place.querySelector(".value, .fact-value"))]];
  }
  function ask(place) {
    var id = identity(place), about = lines(place), box = make("dialog", "ask wrong-box"), head = make("h2", "", say("wrong with")), said = make("div"), row = make("div", "choices"), leave = make("button", "button main", say("leave it")), opened;
    head.id = "wrong-head"; head.tabIndex = -1;
    box.setAttribute("aria-labelledby", "wrong-head");
    about.forEach(function (line) { said.append(make("p", "lead", line[0] + ": " + line[1])); });
    said.append(make("p", "", id + ", " + window.seatbookIssue));
    KINDS.forEach(function (kind) {
      var choice = make("button", "button main", say("wrong " + kind));
      choice.addEventListener("click", function () {
        if (Date.now() - opened < BOUNCE) return;
        box.close();
        window.seatbookSlip.show(say("wrong slip", { of: id.split("/").slice(0, 2).join(" ") }), about.concat([[say("identity"), id], [say("wrong with"), say("wrong " + kind)], [say("words of hand"), ""]]), ["SB2", id, sheet.issue || "-", sheet.code, kind], null);
      });
      row.append(choice);
    });
    leave.addEventListener("click", function () { box.close(); });
    box.append(head, said, row, leave);
    box.addEventListener("close", function () { box.remove(); });
    document.body.append(box);
    box.showModal();
    opened = Date.now(); // a page of many steps takes its time to show the box: the bounce counts from when it stands
    head.focus();
  }
  function put(place, into, before) {
    var button = make("button", "button wrong", say("this is wrong")), around = make("p", "report no-print");
    button.addEventListener("click", function () { ask(place); });
    around.append(button);
    into.insertBefore(around, before);
  }
  main.querySelectorAll("li.step").forEach(function (step) { put(step, step, step.querySelector(":scope > .tick")); });
  function unfolded(box) {
    var reason = box.open && box.id && box.querySelector(":scope > .reason");
    if (reason && !reason.querySelector(".report")) put(box, reason, null);
  }
  main.addEventListener("toggle", function (event) { if (event.target.matches("details")) unfolded(event.target); }, true);
  main.querySelectorAll("details[open]").forEach(unfolded);
})();
