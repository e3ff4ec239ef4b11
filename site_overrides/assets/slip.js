// A slip for the engineer: what is typed or reported, to be printed, or read by a phone from this screen as text. Nothing leaves by itself.
(function () {
  "use strict";
  var say = window.seatbookSay, make = window.seatbookMake, sheet = window.seatbookSheet;

  // two digits at the end of a code: the characters as one number of base ten, its rest by 97 (the weights of ISO/IEC 7064, MOD 97-10).
  // Any one character changed, and any two neighbours swapped, change them
  function checked(text) {
    var rest = 0;
    for (var i = 0; i < text.length; i++) rest = (rest * 10 + text.charCodeAt(i)) % 97;
    return text + " " + (rest < 10 ? "0" : "") + rest;
  }
  function csvCell(text) { return /[",\n]/.test(text) ? '"' + text.replace(/"/g, '""') + '"' : text; }
  function csv(rows) { return rows.map(function (cells) { return cells.map(csvCell).join(","); }).join("\r\n") + "\r\n"; }
  function table(lines) {
    var made = make("table", "sheet-table stack"), body = make("tbody");
    lines.forEach(function (line) {
      var row = make("tr"), head = make("th", "", line[0]);
      head.scope = "row";
      row.append(head, make("td", "", line[1]));
      body.append(row);
    });
    made.append(body);
    return made;
  }
  // title: said whole; lines: [name, text]; code: the words of the text for a phone; file: [name, rows] or null
  function show(title, lines, code, file) {
    var box = make("dialog", "slip"), head = make("h2", "", title), text = checked(code.join(" ")), picture = window.seatbookCode.svg(text, say("code")), side = make("div", "slip-code"), row = make("p", "row-of-buttons no-print"), link = null;
    var print = make("button", "button main", say("print")), close = make("button", "button main", say("close"));
    head.id = "slip-head"; head.tabIndex = -1;
    box.setAttribute("aria-labelledby", "slip-head");
    print.addEventListener("click", function () { window.print(); });
    close.addEventListener("click", function () { box.close(); });
    row.append(print);
    if (file) {
      link = make("a", "button main", say("download"));
      link.download = file[0];
      link.href = URL.createObjectURL(new Blob([csv(file[1])], { type: "text/csv" }));
      row.append(link);
    }
    row.append(close);
    if (picture) side.append(picture, make("p", "", say("code")));
    else side.append(make("p", "", say("too long")));
    box.append(head, make("p", "issue", window.seatbookIssue), table(lines), side, make("p", "slip-text", text), make("p", "lead", say(file ? "not yet" : "not yet told")), make("p", "slip-sign", say("initials")), row);
    box.addEventListener("close", function () {
      document.body.classList.remove("with-slip");
      if (link) URL.revokeObjectURL(link.href);
      box.remove();
    });
    document.body.append(box);
    document.body.classList.add("with-slip");
    box.showModal();
    head.focus();
  }

  // ---- readings: one row a quantity for the file, one group a place for the code
  function two(count) { return (count < 10 ? "0" : "") + count; }
  function minute(time) { return time.getFullYear() + "-" + two(time.getMonth() + 1) + "-" + two(time.getDate()) + "T" + two(time.getHours()) + ":" + two(time.getMinutes()); }
  function after(start, minutes) { return minute(new Date(start.getTime() + Number(minutes) * 60000)); }
  function groups(form) {
    var found = [], clock = form.started ? minute(form.started).slice(11) : "";
    form.read.forEach(function (one) {
      var name = one.code + (one.unit === "in" ? ".in" : ""), last = found[found.length - 1];
      if (!last || last[0] !== name) found.push(last = [name, []]);
      last[1].push(one.value);
    });
    return found.filter(function (group) { return group[1].some(Boolean); }).map(function (group) { return group[0] + "=" + (group[0] === "h" ? clock + "," : "") + group[1].join(","); });
  }
  function rows(form, record) {
    var there = form.read.filter(function (one) { return one.value; });
    return [["record", "issue", "position", "when", "by", "phase", "quantity", "value", "unit", "instrument", "note"]].concat(there.map(function (one) {
      var run = one.after !== undefined;
      return [record, sheet.issue, form.at.replace("/", " "), run ? after(form.started, one.after) : minute(form.now), form.by, run ? "run-in" : form.phase, one.quantity, one.value, one.unit, form.instrument, ""];
    }));
  }
  function lines(form, record) {
    var places = {}, shown = [[say("record"), record + ", " + minute(form.now).replace("T", " ")]];
    if (form.limits) shown.push([say("shaft limits"), form.limits]);
    form.read.forEach(function (one) { if (one.seat) (places[one.code] = places[one.code] || []).push(one); });
    Object.keys(places).forEach(function (code) {
      if (places[code].some(function (one) { return one.value; })) shown.push([say("place", { number: code.slice(1), unit: places[code][0].shown }), places[code].map(function (one) { return one.value || "____"; }).join(", ")]);
    });
    if (form.verdict) shown.push([say("verdict"), form.verdict]);
    form.read.forEach(function (one) {
      if (one.value && (!one.seat || one.note)) shown.push([one.name, one.value + "\u00a0" + one.shown + (one.note ? ": " + one.note : "")]);
    });
    [["when read", form.phaseName], ["instrument", form.instrument], ["by", form.by]].forEach(function (line) { if (line[1]) shown.push([say(line[0]), line[1]]); });
    return shown;
  }
  window.seatbookReadingsSlip = function (form) {
    var record = "K-" + minute(form.now).replace(/\D/g, "").slice(2), by = form.by.replace(/\s+/g, "-");
    var code = ["SB1", form.at, sheet.issue || "-", sheet.code || "-", record, form.phase || "-"].concat(groups(form), by ? ["by=" + by] : []);
    show(say("readings slip", { of: form.at.replace("/", " ") }), lines(form, record), code, [record + ".csv", rows(form, record)]);
  };
  window.seatbookSlip = { show: show, checked: checked };
})();
