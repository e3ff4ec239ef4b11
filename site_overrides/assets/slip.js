// A slip for the engineer: what is typed or reported, to be printed, or read by a phone from this screen as text. Nothing leaves by itself.
(function () {
  "use strict";
  var say = window.seatbookSay, issue = window.seatbookIssue;
  function element(tag, kind, text) {
    var made = document.createElement(tag);
    if (kind) made.className = kind;
    if (text !== undefined) made.textContent = text;
    return made;
  }
  // two digits that a slip of the hand or eye would change: the sum of place times character, over 97
  function checked(text) {
    var sum = 0;
    for (var i = 0; i < text.length; i++) sum = (sum + (i + 1) * text.charCodeAt(i)) % 97;
    return text + " " + (sum < 10 ? "0" : "") + sum;
  }
  function csvCell(text) { return /[",\n]/.test(text) ? '"' + text.replace(/"/g, '""') + '"' : text; }
  // lines: [name, text]; code: the text for the phone; file: [name, rows] or null
  function show(title, lines, code, file) {
    var box = element("dialog", "slip"), table = element("table", "sheet-table"), body = element("tbody"), picture = window.seatbookCode.svg(checked(code), say("code")), row = element("p", "row-of-buttons no-print");
    lines.forEach(function (line) { var tr = element("tr"), th = element("th", "", line[0]); th.scope = "row"; tr.append(th, element("td", "", line[1])); body.append(tr); });
    table.append(body);
    var printing = element("button", "button main", say("print")), close = element("button", "button main", say("close"));
    printing.type = close.type = "button";
    printing.addEventListener("click", function () { window.print(); });
    close.addEventListener("click", function () { box.close(); });
    row.append(printing);
    if (file) {
      var link = element("a", "button main", say("download"));
      link.download = file[0];
      link.href = URL.createObjectURL(new Blob([file[1].map(function (cells) { return cells.map(csvCell).join(","); }).join("\r\n") + "\r\n"], { type: "text/csv" }));
      row.append(link);
    }
    row.append(close);
    box.append(element("h2", "", title), element("p", "issue", issue), table, element("p", "lead", say("not yet")));
    if (picture) box.append(picture, element("p", "slip-text", checked(code)));
    else box.append(element("p", "", say("too long")));
    box.append(element("p", "slip-sign", say("initials")), row);
    box.addEventListener("close", function () { document.body.classList.remove("with-slip"); box.remove(); });
    document.body.append(box);
    document.body.classList.add("with-slip");
    box.showModal();
  }
  window.seatbookSlip = { show: show, checked: checked };
})();
