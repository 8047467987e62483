"use strict";
// Adds a filter to long tables. Every page is complete without it.
(function () {
  var rowsMin = 16;
  var words = {
    en: { filter: "Show rows with", shown: "rows shown", of: "of" },
    es: { filter: "Mostrar filas con", shown: "filas mostradas", of: "de" }
  };
  var say = words[document.documentElement.lang] || words.en;

  function filterFor(table, index) {
    var rows = Array.prototype.slice.call(table.tBodies[0].rows);
    var box = document.createElement("p");
    var label = document.createElement("label");
    var input = document.createElement("input");
    var status = document.createElement("span");
    input.type = "search";
    input.id = "filter-" + index;
    label.htmlFor = input.id;
    label.textContent = say.filter;
    status.setAttribute("role", "status");
    box.className = "filter";
    box.append(label, input, status);
    input.addEventListener("input", function () {
      var wanted = input.value.trim().toLowerCase();
      var shown = 0;
      rows.forEach(function (row) {
        row.hidden = wanted !== "" && row.textContent.toLowerCase().indexOf(wanted) < 0;
        if (!row.hidden) { shown += 1; }
      });
      status.textContent = wanted === "" ? "" : shown + " " + say.of + " " + rows.length + " " + say.shown;
    });
    return box;
  }

  Array.prototype.forEach.call(document.querySelectorAll("table"), function (table, index) {
    if (table.tBodies.length === 1 && table.tBodies[0].rows.length >= rowsMin) {
      var frame = table.closest(".scroll");
      frame.parentNode.insertBefore(filterFor(table, index), frame);
    }
  });
}());
