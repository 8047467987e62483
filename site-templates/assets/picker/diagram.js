"use strict";
// All orders that keep the rules, as a diagram in flat arrays: leaves first, children before their parents. Children of
// an "all" node share no variable, those of a "one" node exclude each other, so that every question is one pass.
// Nothing here knows a page.
var picker = picker || {};
(function () {
  var letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

  // Reads whole numbers, five bits a letter, lowest first; the sixth bit says that more follow.
  picker.numbers = function (text) {
    var at = 0;
    return function () {
      for (var number = 0, shift = 0; ; shift += 5) {
        var part = letters.indexOf(text[at]);
        at += 1;
        number |= (part & 31) << shift;
        if (part < 32) {
          return number;
        }
      }
    };
  };

  function bits(set) {
    set -= (set >>> 1) & 0x55555555;
    set = (set & 0x33333333) + ((set >>> 2) & 0x33333333);
    return Math.imul((set + (set >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
  }

  // Plain numbers for as long as they are exact.
  function times(a, b) {
    var product = typeof a === "number" && typeof b === "number" ? a * b : Infinity;
    return product <= Number.MAX_SAFE_INTEGER ? product : BigInt(a) * BigInt(b);
  }

  function plus(a, b) {
    var sum = typeof a === "number" && typeof b === "number" ? a + b : Infinity;
    return sum <= Number.MAX_SAFE_INTEGER ? sum : BigInt(a) + BigInt(b);
  }

  picker.sizes = function (next) {
    return Array.from({ length: next() }, function () {
      return next();
    });
  };

  // Every value of a variable with so many, as two halves of 32 bits.
  picker.domain = function (size) {
    return [size >= 32 ? -1 : (1 << size) - 1, size <= 32 ? 0 : size >= 64 ? -1 : (1 << (size - 32)) - 1];
  };

  function read(text) {
    var next = picker.numbers(text);
    var sizes = picker.sizes(next);
    var leaves = next();
    var variable = [],
      low = [],
      high = [],
      children = [],
      all = [];
    var first = Array.from({ length: leaves + 1 }, function () {
      return 0;
    });
    for (var leaf = 0; leaf < leaves; leaf += 1) {
      variable.push(next());
      low.push(next());
      high.push(next());
    }
    for (var node = leaves, nodes = leaves + next(); node < nodes; node += 1) {
      var head = next();
      all.push(head & 1);
      for (var child = head >>> 1; child > 0; child -= 1) {
        children.push(node - next());
      }
      first.push(children.length);
    }
    return {
      sizes: sizes,
      leaves: leaves,
      variable: Int32Array.from(variable),
      low: Int32Array.from(low),
      high: Int32Array.from(high),
      first: Int32Array.from(first),
      children: Int32Array.from(children),
      all: all
    };
  }

  // 1 where something satisfies a node, by children before parents.
  function upward(it, low, high) {
    var state = new Uint8Array(it.first.length - 1);
    for (var leaf = 0; leaf < it.leaves; leaf += 1) {
      var variable = it.variable[leaf];
      state[leaf] = (it.low[leaf] & low[variable]) | (it.high[leaf] & high[variable]) ? 1 : 0;
    }
    for (var node = it.leaves; node < state.length; node += 1) {
      var edge = it.first[node],
        end = it.first[node + 1];
      if (it.all[node - it.leaves]) {
        while (edge < end && state[it.children[edge]]) {
          edge += 1;
        }
        state[node] = edge === end ? 1 : 0;
      } else {
        while (edge < end && !state[it.children[edge]]) {
          edge += 1;
        }
        state[node] = edge < end ? 1 : 0;
      }
    }
    return state;
  }

  // 2 where something that satisfies the root satisfies a node.
  function downward(it, state) {
    state[state.length - 1] = 2;
    for (var node = state.length - 1; node >= it.leaves; node -= 1) {
      if (state[node] === 2) {
        for (var edge = it.first[node]; edge < it.first[node + 1]; edge += 1) {
          if (state[it.children[edge]]) {
            state[it.children[edge]] = 2;
          }
        }
      }
    }
  }

  // Sets of values come as low and high halves, one of each a variable.
  picker.diagram = function (text) {
    var it = read(text);
    var nodes = it.first.length - 1;
    return {
      sizes: it.sizes,
      nodes: nodes,
      edges: it.children.length,

      isPossible: function (low, high) {
        return nodes > 0 && upward(it, low, high)[nodes - 1] === 1;
      },

      // The values that each variable can still take.
      possible: function (low, high) {
        var left = { low: new Int32Array(it.sizes.length), high: new Int32Array(it.sizes.length) };
        var state = upward(it, low, high);
        if (nodes === 0 || state[nodes - 1] === 0) {
          return left;
        }
        downward(it, state);
        for (var leaf = 0; leaf < it.leaves; leaf += 1) {
          if (state[leaf] === 2) {
            var variable = it.variable[leaf];
            left.low[variable] |= it.low[leaf] & low[variable];
            left.high[variable] |= it.high[leaf] & high[variable];
          }
        }
        return left;
      },

      // How many assignments satisfy it, exactly.
      count: function (low, high) {
        var counts = new Array(nodes);
        for (var leaf = 0; leaf < it.leaves; leaf += 1) {
          var variable = it.variable[leaf];
          counts[leaf] = bits(it.low[leaf] & low[variable]) + bits(it.high[leaf] & high[variable]);
        }
        for (var node = it.leaves; node < nodes; node += 1) {
          var all = it.all[node - it.leaves];
          var count = all ? 1 : 0;
          for (var edge = it.first[node]; edge < it.first[node + 1]; edge += 1) {
            count = all ? times(count, counts[it.children[edge]]) : plus(count, counts[it.children[edge]]);
          }
          counts[node] = count;
        }
        return BigInt(nodes === 0 ? 0 : counts[nodes - 1]);
      }
    };
  };
})();
