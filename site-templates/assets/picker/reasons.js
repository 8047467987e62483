"use strict";
// Why an order cannot be, and the nearest orders that can. Nothing here knows a page.
var picker = picker || {};
(function () {
  var roundsMax = 400,
    foundMax = 5,
    changesMax = 24;

  // A set of so many members that meets each of some sets and is accepted; null where there is none.
  function meeting(sets, size, accepts, chosen) {
    chosen = chosen || [];
    if (!accepts(chosen)) {
      return null;
    }
    var open = sets.filter(function (set) {
      return !chosen.some(function (one) {
        return set.indexOf(one) >= 0;
      });
    });
    if (open.length === 0) {
      return chosen;
    }
    if (chosen.length === size) {
      return null;
    }
    open.sort(function (a, b) {
      return a.length - b.length;
    });
    for (var at = 0; at < open[0].length; at += 1) {
      var found = meeting(sets, size, accepts, chosen.concat([open[0][at]]));
      if (found) {
        return found;
      }
    }
    return null;
  }

  function smallest(sets, fewerThan) {
    for (var size = 0; size < fewerThan; size += 1) {
      var found = meeting(sets, size, function () {
        return true;
      });
      if (found) {
        return found;
      }
    }
    return null;
  }

  // Leaves members out one by one for as long as the contradiction stays.
  function minimal(members, isContradiction) {
    members.slice().forEach(function (member) {
      var without = members.filter(function (other) {
        return other !== member;
      });
      if (isContradiction(without)) {
        members = without;
      }
    });
    return members;
  }

  // Switches on as many members as go together with the candidate; what stays off each contradiction must meet.
  function mend(it, candidate, members) {
    var on = candidate.slice(),
      open = members.filter(function (one) {
        return on.indexOf(one) < 0;
      }),
      off = [];
    var take = function () {
      open = open.filter(function (one) {
        if (one.holds()) {
          on.push(one);
          return false;
        }
        return true;
      });
    };
    take();
    while (open.length > 0) {
      var next = open.shift();
      if (it.solver.solve(switchesOf(on.concat([next])))) {
        on.push(next);
        take();
      } else {
        off.push(next);
      }
    }
    return off;
  }

  function switchesOf(members) {
    return members.map(function (member) {
      return member.on;
    });
  }

  // The smallest set of picks and rules that cannot hold together; null where the order is possible. Any contradiction
  // meets every set whose absence would mend things; so a smallest set that meets all those seen is one, or shows a
  // further one. Source: Ignatiev, Previti, Liffiton, Marques-Silva, Smallest MUS extraction, 2015.
  picker.explain = function (rules, picks) {
    var it = rules.search();
    var members = picks
      .map(function (pick) {
        return {
          pick: pick[0],
          on: it.pick(pick),
          holds: function () {
            return it.holdsPick(pick);
          }
        };
      })
      .concat(
        rules.sentences.map(function (_, rule) {
          return {
            rule: rule,
            on: it.switches[rule],
            holds: function () {
              return it.holds(rule);
            }
          };
        })
      );
    var contradicts = function (some) {
      return !it.solver.solve(switchesOf(some));
    };
    if (!contradicts(members)) {
      return null;
    }
    var core = it.solver.core;
    var least = minimal(
      members.filter(function (one) {
        return core.indexOf(one.on) >= 0;
      }),
      contradicts
    );
    for (var round = 0, mends = []; round < roundsMax; round += 1) {
      var candidate = smallest(mends, least.length);
      if (candidate === null) {
        break;
      }
      if (contradicts(candidate)) {
        least = minimal(candidate, contradicts);
        break;
      }
      mends.push(mend(it, candidate, members));
    }
    return {
      picks: least
        .filter(function (one) {
          return "pick" in one;
        })
        .map(function (one) {
          return one.pick;
        }),
      rules: least
        .filter(function (one) {
          return "rule" in one;
        })
        .map(function (one) {
          return one.rule;
        })
    };
  };

  // Of all numbers that a changed option can have, the one that comes nearest to what was ordered.
  function settle(rules, picks, changed) {
    var held = picks.filter(function (pick) {
      return changed.indexOf(pick[0]) < 0;
    });
    var open = picks.filter(function (pick) {
      return changed.indexOf(pick[0]) >= 0;
    });
    return open
      .sort(function (a, b) {
        return a[0] - b[0];
      })
      .map(function (pick) {
        var away = function (count) {
          return count < pick[1] ? pick[1] - count : count - Math.min(count, pick[2]);
        };
        var count = rules.numbers[pick[0]]
          .slice()
          .sort(function (a, b) {
            return away(a) - away(b) || a - b;
          })
          .find(function (number) {
            return rules.isPossible(held.concat([[pick[0], number, number]]));
          });
        held.push([pick[0], count, count]);
        return [pick[0], count];
      });
  }

  // Orders that work with the fewest changes of the picks, fewest first; none is another one with more changes. Each is
  // a list of [option, number]. Picks of the options kept are not changed. What must change meets every set of picks
  // that cannot be together; such sets are gathered until what meets them all works.
  picker.nearest = function (rules, picks, kept) {
    var cores = [],
      found = [];
    var mayChange = picks.filter(function (pick) {
      return (kept || []).indexOf(pick[0]) < 0;
    });
    var hard = picks.filter(function (pick) {
      return mayChange.indexOf(pick) < 0;
    });
    var impossible = function (some) {
      return !rules.isPossible(hard.concat(some));
    };
    var isNew = function (chosen) {
      return found.every(function (old) {
        return !old.every(function (one) {
          return chosen.indexOf(one) >= 0;
        });
      });
    };
    if (impossible([])) {
      return [];
    }
    for (var size = 0; size <= Math.min(changesMax, mayChange.length) && found.length < foundMax;) {
      var changed = meeting(cores, size, isNew);
      if (changed === null) {
        size += 1;
        continue;
      }
      var rest = mayChange.filter(function (pick) {
        return changed.indexOf(pick) < 0;
      });
      if (impossible(rest)) {
        cores.push(minimal(rest, impossible));
      } else {
        found.push(changed);
      }
      if (changed.length === 0 && found.length > 0) {
        break;
      }
    }
    return found.map(function (changes) {
      return settle(
        rules,
        picks,
        changes.map(function (pick) {
          return pick[0];
        })
      );
    });
  };
})();
