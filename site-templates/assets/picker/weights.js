"use strict";
// What an order weighs: additive loads, the trunk, parts, lead time and line rate. Nothing here knows a page.
var picker = picker || {};
(function () {
  function sum(orders, part, taken) {
    var total = part.fixed;
    for (var at = 0; at < part.terms.length; at += 2) {
      if (orders.holds(part.terms[at], taken)) {
        total += part.terms[at + 1];
      }
    }
    return total;
  }

  // A whole number of small units, printed with at most two decimals.
  picker.print = function (small, scale, unit) {
    var text = scale === 1 ? String(small) : (small / scale).toFixed(2).replace(/\.?0+$/, "");
    return unit === "" ? text : text + " " + unit;
  };

  picker.group = function (number) {
    return String(number).replace(/\B(?=(\d{3})+$)/g, " ");
  };

  picker.weights = function (orders, taken) {
    var data = orders.data;
    var parts = data.parts
      .map(function (part) {
        return {
          title: part[0],
          days: part[1],
          number: part.slice(2).filter(function (condition) {
            return orders.holds(condition, taken);
          }).length
        };
      })
      .filter(function (part) {
        return part.number > 0;
      });
    var mounted = data.options.filter(function (_, place) {
      return taken[place] > 0;
    });
    var raise = mounted.reduce(function (all, option) {
      return all + (option.raise || 0);
    }, 0);
    var slowest = mounted
      .filter(function (option) {
        return option.rate;
      })
      .sort(function (a, b) {
        return a.rate - b.rate;
      })[0];
    var rate = Math.floor((data.machine.rate * (1000 + raise)) / 1000);
    return {
      loads: data.loads.map(function (load) {
        return Object.assign({ value: sum(orders, load, taken) }, load);
      }),
      trunk: data.trunk.map(function (circuit) {
        var drops = circuit.drops.map(function (drop) {
          return sum(orders, drop, taken);
        });
        return {
          title: circuit.title,
          volts: circuit.start - Math.max.apply(null, drops),
          least: circuit.start - circuit.most
        };
      }),
      parts: parts,
      days: Math.max.apply(
        null,
        [0].concat(
          mounted.map(function (option) {
            return option.days || 0;
          }),
          parts.map(function (part) {
            return part.days;
          })
        )
      ),
      rate: slowest && slowest.rate < rate ? slowest.rate : rate,
      slowest: slowest && slowest.rate < rate ? slowest.title : null
    };
  };
})();
