"use strict";
// Times the walker on each rule set. The times of a browser are coarse, so that many runs are timed together.
(function () {
  var clicksMax = 300, whysMax = 5, frame = 16, repeats = 200;

  function median(times, share) {
    return times.slice().sort(function (a, b) { return a - b; })[Math.floor((times.length - 1) * share)];
  }

  function time(action, runs) {
    var start = performance.now();
    for (var run = 0; run < runs; run += 1) { action(); }
    return (performance.now() - start) / runs;
  }

  // The same numbers every time; source: Numerical Recipes, linear congruential generator.
  function random(seed) {
    return function (below) {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return Math.floor(seed / 4294967296 * below);
    };
  }

  function read(edges) {
    var sum = 0;
    for (var at = 0; at < edges.length; at += 1) { sum += edges[at]; }
    return sum;
  }

  function measure(set) {
    var data = Object.assign({ published: [], checked: [], conditions: [], choices: [] }, set.data);
    var orders = picker.orders(data), next = random(7), order = orders.empty(), clicks = [], whys = [];
    var edges = new Int32Array(orders.rules.diagram.edges + orders.rules.diagram.nodes);
    for (var click = 0; click < clicksMax; click += 1) {
      var place = next(orders.options.length);
      order[place] = next(5) === 0 ? 0 : 1;
      var answer = null;
      clicks.push(time(function () { answer = orders.answer(order); }, 1));
      if (!answer.isPossible || click % 25 === 24) {
        var picks = answer.picks;
        if (!answer.isPossible && whys.length < whysMax) { whys.push(time(function () { picker.explain(orders.rules, picks); }, 1)); }
        order = orders.empty();
      }
    }
    var states = time(function () { orders.rules.states([]); }, repeats);
    var once = time(function () { read(edges); }, repeats * 10);
    return [set.name, orders.options.length, set.bytes, orders.rules.diagram.edges, median(clicks, .5).toFixed(2),
      median(clicks, .99).toFixed(2), (median(clicks, .99) / frame).toFixed(3), (states / once).toFixed(1),
      (states * 1e6 / orders.rules.diagram.edges).toFixed(0), whys.length ? median(whys, .5).toFixed(1) : "–"];
  }

  // The first round warms the scripts up.
  measure(sets[0]);
  sets.forEach(function (set) {
    var row = document.createElement("tr");
    measure(set).forEach(function (cell, at) {
      var element = document.createElement(at === 0 ? "th" : "td");
      element.textContent = cell;
      row.append(element);
    });
    document.getElementById("rows").append(row);
  });
}());
