"use strict";
// Satisfiability under assumptions, with clause learning. A literal is twice its variable, and one more where it is
// negative. Source: Een and Soerensson, An extensible SAT-solver, 2003. Nothing here knows a page.
var picker = picker || {};
picker.solver = function () {
  var watches = [],
    value = [],
    level = [],
    reason = [],
    activity = [],
    wish = [];
  var trail = [],
    starts = [],
    head = 0,
    step = 1,
    isSound = true;
  var solver = { core: [], model: [] };

  function valueOf(literal) {
    return literal & 1 ? -value[literal >> 1] : value[literal >> 1];
  }

  function assign(literal, clause) {
    value[literal >> 1] = literal & 1 ? -1 : 1;
    level[literal >> 1] = starts.length;
    reason[literal >> 1] = clause;
    trail.push(literal);
  }

  function backTo(wanted) {
    if (starts.length > wanted) {
      for (var at = trail.length - 1; at >= starts[wanted]; at -= 1) {
        wish[trail[at] >> 1] = value[trail[at] >> 1];
        value[trail[at] >> 1] = 0;
      }
      trail.length = starts[wanted];
      starts.length = wanted;
      head = trail.length;
    }
  }

  // A clause is watched by its first two literals; one of them is true, or none is false.
  function visit(clause, falsified, kept) {
    if (clause[0] === falsified) {
      clause[0] = clause[1];
      clause[1] = falsified;
    }
    if (valueOf(clause[0]) !== 1) {
      for (var at = 2; at < clause.length; at += 1) {
        if (valueOf(clause[at]) !== -1) {
          clause[1] = clause[at];
          clause[at] = falsified;
          watches[clause[1]].push(clause);
          return true;
        }
      }
    }
    kept.push(clause);
    if (valueOf(clause[0]) === -1) {
      return false;
    }
    if (valueOf(clause[0]) === 0) {
      assign(clause[0], clause);
    }
    return true;
  }

  // The clause that cannot be met, or null.
  function propagate() {
    while (head < trail.length) {
      var falsified = trail[head] ^ 1;
      head += 1;
      var open = watches[falsified];
      var kept = [];
      for (var at = 0; at < open.length; at += 1) {
        if (!visit(open[at], falsified, kept)) {
          watches[falsified] = kept.concat(open.slice(at + 1));
          return open[at];
        }
      }
      watches[falsified] = kept;
    }
    return null;
  }

  // Learns the clause of the first unique implication point, and goes back to where it bites.
  function learn(conflict) {
    var seen = new Set(),
      learnt = [-1],
      open = 0,
      at = trail.length - 1,
      literal = -1;
    do {
      conflict.forEach(function (other) {
        var variable = other >> 1;
        if (other !== literal && !seen.has(variable) && level[variable] > 0) {
          seen.add(variable);
          activity[variable] += step;
          if (level[variable] === starts.length) {
            open += 1;
          } else {
            learnt.push(other);
          }
        }
      });
      while (!seen.has(trail[at] >> 1)) {
        at -= 1;
      }
      literal = trail[at];
      at -= 1;
      conflict = reason[literal >> 1];
      open -= 1;
    } while (open > 0);
    learnt[0] = literal ^ 1;
    grow();
    for (var i = 2; i < learnt.length; i += 1) {
      if (level[learnt[i] >> 1] > level[learnt[1] >> 1]) {
        var other = learnt[1];
        learnt[1] = learnt[i];
        learnt[i] = other;
      }
    }
    backTo(learnt.length === 1 ? 0 : level[learnt[1] >> 1]);
    if (learnt.length > 1) {
      watch(learnt);
    }
    assign(learnt[0], learnt.length > 1 ? learnt : null);
  }

  // What came up lately counts more; numbers are kept within what a number holds.
  function grow() {
    step *= 1.05;
    if (step > 1e100) {
      step *= 1e-100;
      activity = activity.map(function (one) {
        return one * 1e-100;
      });
    }
  }

  function watch(clause) {
    watches[clause[0]].push(clause);
    watches[clause[1]].push(clause);
  }

  // Assumptions that together make this one false, and itself.
  function failed(literal) {
    var seen = new Set([literal >> 1]),
      core = [literal];
    for (var at = trail.length - 1; starts.length > 0 && at >= starts[0]; at -= 1) {
      var variable = trail[at] >> 1;
      if (seen.has(variable)) {
        if (reason[variable]) {
          reason[variable].forEach(function (other) {
            if (level[other >> 1] > 0) {
              seen.add(other >> 1);
            }
          });
        } else {
          core.push(trail[at]);
        }
      }
    }
    return core;
  }

  function busiest() {
    var best = -1;
    for (var variable = 0; variable < value.length; variable += 1) {
      if (value[variable] === 0 && (best < 0 || activity[variable] > activity[best])) {
        best = variable;
      }
    }
    return best;
  }

  // The next assumption to make, or else a guess; -1 where all are made, null where one cannot be.
  function decide(assumptions) {
    while (starts.length < assumptions.length) {
      var wanted = assumptions[starts.length];
      if (valueOf(wanted) === -1) {
        solver.core = failed(wanted);
        return null;
      }
      if (valueOf(wanted) === 0) {
        return wanted;
      }
      starts.push(trail.length);
    }
    var variable = busiest();
    return variable < 0 ? -1 : variable * 2 + (wish[variable] > 0 ? 0 : 1);
  }

  // The number of a new variable, first tried as true or as false.
  solver.variable = function (isWished) {
    watches.push([], []);
    value.push(0);
    level.push(0);
    reason.push(null);
    activity.push(0);
    return wish.push(isWished ? 1 : -1) - 1;
  };

  solver.add = function (literals) {
    backTo(0);
    var all = new Set(literals);
    if (
      !isSound ||
      literals.some(function (one) {
        return all.has(one ^ 1) || valueOf(one) === 1;
      })
    ) {
      return;
    }
    var clause = Array.from(all).filter(function (one) {
      return valueOf(one) === 0;
    });
    if (clause.length > 1) {
      watch(clause);
    } else if (clause.length === 0) {
      isSound = false;
    } else {
      assign(clause[0], null);
      isSound = propagate() === null;
    }
  };

  // True with a model, or false with a core: assumptions that cannot hold together.
  solver.solve = function (assumptions) {
    backTo(0);
    solver.core = [];
    while (isSound) {
      var conflict = propagate();
      if (conflict) {
        if (starts.length === 0) {
          isSound = false;
        } else {
          learn(conflict);
        }
        continue;
      }
      var next = decide(assumptions);
      if (next === null) {
        return false;
      }
      if (next === -1) {
        solver.model = value.slice();
        return true;
      }
      starts.push(trail.length);
      assign(next, null);
    }
    return false;
  };

  return solver;
};
