"use strict";
// Questions about orders of one machine. An order is a list of picks [option, from, to]: how often an option is to be
// taken, at least and at most. Nothing here knows a page.
var picker = picker || {};
(function () {
  // A set of a variable's values, as two halves: those whose number is in the range.
  function values(counts, from, to) {
    var set = [0, 0];
    counts.forEach(function (count, value) {
      if (count >= from && count <= to) {
        set[value >> 5] |= 1 << (value & 31);
      }
    });
    return set;
  }

  // Options counted in clauses have a variable each; 0 is their first value.
  function plainCounts(option) {
    var counts = [0];
    for (var count = option.from || 1; count <= (option.to || 1); count += 1) {
      counts.push(count);
    }
    return counts;
  }

  function has(set, value) {
    return ((set[value >> 5] >>> (value & 31)) & 1) === 1;
  }

  // The clauses, each rule with a switch of its own, for what the diagram cannot say.
  function readSearch(logic, options) {
    var next = picker.numbers(logic.clauses),
      solver = picker.solver();
    var sizes = picker.sizes(next);
    var first = sizes.map(function (size) {
      var start = solver.variable(false);
      for (var value = 1; size > 2 && value < size; value += 1) {
        solver.variable(false);
      }
      return start;
    });
    var literals = function (variable, set) {
      var all = [];
      for (var value = 0; value < sizes[variable]; value += 1) {
        if (has(set, value)) {
          all.push(sizes[variable] === 2 ? first[variable] * 2 + 1 - value : (first[variable] + value) * 2);
        }
      }
      return all;
    };
    sizes.forEach(function (size, variable) {
      if (size > 2) {
        var each = literals(variable, picker.domain(size));
        solver.add(each);
        each.forEach(function (one, i) {
          each.slice(i + 1).forEach(function (other) {
            solver.add([one ^ 1, other ^ 1]);
          });
        });
      }
    });
    var switches = logic.rules.map(function () {
      return solver.variable(true) * 2;
    });
    var byRule = logic.rules.map(function () {
      return [];
    });
    for (var clauses = next(); clauses > 0; clauses -= 1) {
      var rule = next() - 1,
        clause = [];
      for (var count = next(); count > 0; count -= 1) {
        clause = clause.concat(literals(next(), [next(), next()]));
      }
      if (rule >= 0) {
        byRule[rule].push(clause);
      }
      solver.add(rule < 0 ? clause : clause.concat(switches[rule] ^ 1));
    }
    var known = {};
    return {
      solver: solver,
      switches: switches,

      // Does the rule hold in the model found last?
      holds: function (rule) {
        return byRule[rule].every(function (clause) {
          return clause.some(isTrue);
        });
      },

      // The rules that a whole order breaks: everything else in the clauses follows from its options.
      broken: function (picks) {
        solver.solve(picks.map(this.pick, this));
        return byRule
          .map(function (_, rule) {
            return rule;
          })
          .filter(function (rule) {
            return !this.holds(rule);
          }, this);
      },

      holdsPick: function (pick) {
        return literalsOf(pick).some(isTrue);
      },

      // A switch under which an option is taken so many times.
      pick: function (pick) {
        var key = pick.join();
        if (!(key in known)) {
          known[key] = solver.variable(true) * 2;
          solver.add(literalsOf(pick).concat(known[key] ^ 1));
        }
        return known[key];
      },

      // How often the model found last takes an option.
      countOf: function (option) {
        return plainCounts(options[option]).find(function (count) {
          return this.holdsPick([option, count, count]);
        }, this);
      }
    };

    function isTrue(literal) {
      return solver.model[literal >> 1] === (literal & 1 ? -1 : 1);
    }

    function literalsOf(pick) {
      return literals(logic.searched[pick[0]], values(plainCounts(options[pick[0]]), pick[1], pick[2]));
    }
  }

  picker.rules = function (logic, options) {
    var diagram = logic.diagram === null ? null : picker.diagram(logic.diagram);
    var search = null;

    function within(picks) {
      var low = new Int32Array(diagram.sizes.length),
        high = new Int32Array(diagram.sizes.length);
      diagram.sizes.forEach(function (size, variable) {
        low[variable] = picker.domain(size)[0];
        high[variable] = picker.domain(size)[1];
      });
      picks.forEach(function (pick) {
        var set = values(logic.counts[pick[0]], pick[1], pick[2]);
        low[logic.variables[pick[0]]] &= set[0];
        high[logic.variables[pick[0]]] &= set[1];
      });
      return [low, high];
    }

    function assumptions(picks) {
      var it = rules.search();
      return it.switches.concat(
        picks.map(function (pick) {
          return it.pick(pick);
        })
      );
    }

    // One search for each number not yet seen.
    function statesBySearch(picks) {
      var it = rules.search(),
        fixed = assumptions(picks);
      var seen = options.map(function () {
        return new Set();
      });
      var note = function () {
        options.forEach(function (_, option) {
          seen[option].add(it.countOf(option));
        });
      };
      if (it.solver.solve(fixed)) {
        note();
        options.forEach(function (option, place) {
          plainCounts(option).forEach(function (count) {
            if (!seen[place].has(count) && it.solver.solve(fixed.concat(it.pick([place, count, count])))) {
              note();
            }
          });
        });
      }
      return seen.map(sorted);
    }

    function sorted(counts) {
      return Array.from(counts).sort(function (a, b) {
        return a - b;
      });
    }

    var rules = {
      diagram: diagram,
      sentences: logic.rules,
      numbers: options.map(plainCounts),

      search: function () {
        return search || (search = readSearch(logic, options));
      },

      isPossible: function (picks) {
        if (diagram === null) {
          return rules.search().solver.solve(assumptions(picks));
        }
        var sets = within(picks);
        return diagram.isPossible(sets[0], sets[1]);
      },

      // For each option the numbers in which it can still be taken, 0 among them where it may be left out.
      states: function (picks) {
        if (diagram === null) {
          return statesBySearch(picks);
        }
        var sets = within(picks),
          left = diagram.possible(sets[0], sets[1]);
        return logic.counts.map(function (counts, option) {
          var set = [left.low[logic.variables[option]], left.high[logic.variables[option]]];
          return sorted(
            new Set(
              counts.filter(function (_, value) {
                return has(set, value);
              })
            )
          );
        });
      },

      // How many configurations fit; null where that is not computed.
      count: function (picks) {
        if (diagram === null) {
          return null;
        }
        var sets = within(picks);
        return diagram.count(sets[0], sets[1]);
      }
    };
    return rules;
  };
})();
