"use strict";
// Clicks through the order page itself and says, in place of it, what a click cost until the page was laid out anew.
(function () {
  var clicksMax = 300, frame = 16, seed = 7, times = [];

  function next(below) {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return Math.floor(seed / 4294967296 * below);
  }

  var controls = document.querySelectorAll(".pick > input");
  for (var click = 0; click < clicksMax; click += 1) {
    var start = performance.now();
    controls[next(controls.length)].click();
    document.body.getBoundingClientRect();
    times.push(performance.now() - start);
    if (click % 20 === 19) { document.querySelector(".startAgain").click(); }
  }
  times = times.slice(clicksMax / 3).sort(function (a, b) { return a - b; });
  var p50 = times[Math.floor(times.length / 2)], p99 = times[Math.floor(times.length * .99)];
  document.body.textContent = document.title + ": click to layout p50 " + p50.toFixed(1) + " ms, p99 " + p99.toFixed(1)
    + " ms; of a frame of " + frame + " ms: " + (p50 / frame).toFixed(2) + ", " + (p99 / frame).toFixed(2);
}());
