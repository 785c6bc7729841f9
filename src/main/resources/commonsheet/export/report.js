(function () {
  "use strict";
  var table = document.querySelector("table.cells");
  if (table === null) { return; }
  var body = table.tBodies[0];
  var told = document.getElementById("sorted");
  var heads = Array.from(table.querySelectorAll("th[data-column]"));

  function order(column, numbers, direction) {
    return function (one, other) {
      var a = one.cells[column].getAttribute("data-sort");
      var b = other.cells[column].getAttribute("data-sort");
      if (a === b) { return one.getAttribute("data-rank") - other.getAttribute("data-rank"); }
      if (a === "") { return 1; }
      if (b === "") { return -1; }
      return direction * (numbers ? a - b : a.localeCompare(b));
    };
  }

  function sort(head) {
    var numbers = head.getAttribute("data-kind") === "number";
    var first = head.getAttribute("data-first");
    var now = head.getAttribute("aria-sort");
    var next = now === "none" ? first : now === "ascending" ? "descending" : "ascending";
    var direction = next === "ascending" ? 1 : -1;
    var rows = Array.from(body.rows);
    rows.sort(order(Number(head.getAttribute("data-column")), numbers, direction));
    rows.forEach(function (row) { body.appendChild(row); });
    heads.forEach(function (each) { each.setAttribute("aria-sort", each === head ? next : "none"); });
    told.textContent = "Sorted by " + head.getAttribute("data-title") + ", " + next + ".";
  }

  heads.forEach(function (head) {
    head.querySelector("button").addEventListener("click", function () { sort(head); });
  });
})();
