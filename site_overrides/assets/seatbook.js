// The dark switch is remembered, and a link to a value opens its reason. Every page reads whole without this script.
(function () {
  "use strict";
  var page = document.documentElement, dark = document.getElementById("dark");

  function remember() {
    if (dark.checked) page.dataset.theme = "dark"; else delete page.dataset.theme;
    try { localStorage.setItem("seatbook-theme", dark.checked ? "dark" : "light"); } catch (refused) { /* no storage */ }
  }
  if (dark) {
    dark.checked = page.dataset.theme === "dark";
    dark.addEventListener("change", remember);
  }

  document.querySelectorAll("[data-print]").forEach(function (button) { button.addEventListener("click", function () { window.print(); }); });

  function openTarget() {
    var id = decodeURIComponent(location.hash.slice(1)), place = id && document.getElementById(id);
    if (!place || place.tagName !== "DETAILS") return;
    place.open = true;
    place.scrollIntoView({ block: "nearest" });
  }
  window.addEventListener("hashchange", openTarget);
  openTarget();
})();
