// What scripts say: the words the page brings along, `{names}` filled in; and which issue of which sheet this page is.
(function () {
  "use strict";
  var brought = document.getElementById("words"), words = brought ? JSON.parse(brought.textContent) : {}, issue = document.querySelector(".issue"), sheet = document.getElementById("sheet");

  window.seatbookSay = function (key, facts) {
    return (words[key] || key).replace(/\{(\w+)\}/g, function (whole, name) { return facts && name in facts ? facts[name] : whole; });
  };
  window.seatbookMake = function (tag, kind, text) {
    var made = document.createElement(tag);
    if (kind) made.className = kind;
    if (text !== undefined) made.textContent = text;
    if (tag === "button") made.type = "button";
    return made;
  };
  window.seatbookIssue = issue ? issue.textContent.trim() : "";
  window.seatbookSheet = { issue: sheet ? sheet.dataset.issue : "", code: sheet ? sheet.dataset.code : "" };
})();
