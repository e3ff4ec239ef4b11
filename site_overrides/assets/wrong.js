// "This is wrong": beside each number and step a way to tell the engineer which one, by slip or code.
(function () {
  "use strict";
  var say = window.seatbookSay, tag = (document.querySelector(".top h1 b") || { textContent: "" }).textContent.trim();
  var KINDS = ["wrong number", "wrong machine", "wrong order", "wrong words"];
  function identity(place) { // INT-02/A/nut_turn, or INT-02/A/put on/hand tight
    var item = place.closest("li.step"), list = item && item.closest("ol.steps");
    if (item) return (list && list.dataset.at ? list.dataset.at + "/" + list.dataset.job : "") + "/" + item.dataset.act;
    var id = place.closest("details").id, cut = id.indexOf("-");
    return tag + "/" + id.slice(0, cut) + "/" + id.slice(cut + 1);
  }
  function words(place) {
    var item = place.closest("li.step");
    if (item) return item.querySelector(".do").textContent.trim();
    var summary = place.closest("details").querySelector("summary"), value = summary.querySelector(".value, .fact-value");
    return summary.querySelector(".name").textContent.trim() + ": " + (value ? value.textContent.replace(/\s+/g, " ").trim() : "");
  }
  function open(place) {
    var id = identity(place), what = words(place), box = document.createElement("dialog"), row = document.createElement("div"), head = document.createElement("h2"), said = document.createElement("p");
    box.className = "ask"; row.className = "choices";
    head.textContent = say("wrong with"); said.className = "lead"; said.textContent = what;
    KINDS.forEach(function (kind) {
      var choice = document.createElement("button");
      choice.type = "button"; choice.className = "button main"; choice.textContent = say(kind);
      choice.addEventListener("click", function () {
        box.close();
        window.seatbookSlip.show(say("wrong slip"), [[say("what"), what], [say("identity"), id], [say("wrong with"), say(kind)]], ["SB2", id, (window.seatbookIssue.match(/\d+/) || [""])[0], kind.split(" ")[1]].join(" "), null);
      });
      row.append(choice);
    });
    var leave = document.createElement("button");
    leave.type = "button"; leave.className = "button"; leave.textContent = say("leave it");
    leave.addEventListener("click", function () { box.close(); });
    box.append(head, said, row, leave);
    box.addEventListener("close", function () { box.remove(); });
    document.body.append(box);
    box.showModal();
  }
  document.addEventListener("click", function (event) {
    var place = event.target.closest("a.wrong");
    if (!place) return;
    event.preventDefault();
    open(place);
  });
})();
