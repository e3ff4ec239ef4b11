// Before anything is drawn: the reader's choice of dark or light, and the word that scripts run here. Storage may be refused from file://; then it is light.
(function () {
  "use strict";
  var page = document.documentElement;
  page.dataset.script = "runs";
  try { if (localStorage.getItem("seatbook-theme") === "dark") page.dataset.theme = "dark"; } catch (refused) { /* no storage */ }
})();
