// One question over the page, two large answers. "No" has the focus and Escape means it; an answer within a third of a second is a bounce, not an answer.
(function () {
  "use strict";
  var say = window.seatbookSay, make = window.seatbookMake, BOUNCE = 300;

  window.seatbookAsk = function (question, yes, then) {
    var box = make("dialog", "ask"), text = make("p", "lead", question), row = make("div", "row-of-buttons"), leave = make("button", "button main", say("leave it")), agree = make("button", "button main", yes);
    var opened, before = document.activeElement;
    function answer(agreed) {
      return function () {
        var apart = Date.now() - opened;
        if (apart >= 0 && apart < BOUNCE) return;
        box.close();
        if (agreed) then();
      };
    }
    text.id = "ask-question";
    box.setAttribute("aria-labelledby", "ask-question");
    leave.addEventListener("click", answer(false));
    agree.addEventListener("click", answer(true));
    row.append(leave, agree);
    box.append(text, row);
    box.addEventListener("close", function () {
      box.remove();
      if (before && before.isConnected) before.focus({ preventScroll: true });
    });
    document.body.append(box);
    box.showModal();
    opened = Date.now();
    leave.focus();
  };
})();
