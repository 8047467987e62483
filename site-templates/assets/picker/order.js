"use strict";
// What an order comes to: what is taken, what is left, what it weighs, what it is called. An order is a list of numbers
// by the places of options: undefined where nothing was said, 0 where the option is to be left out. Knows no page.
var picker = picker || {};
(function () {
  function holds(condition, taken) {
    if (typeof condition === "number") {
      return taken[condition] > 0;
    }
    var parts = condition.slice(1),
      isMet = function (part) {
        return holds(part, taken);
      };
    switch (condition[0]) {
      case "all":
        return parts.every(isMet);
      case "any":
        return parts.some(isMet);
      case "none":
        return !parts.some(isMet);
      default:
        return taken[parts[0]] >= parts[1] && taken[parts[0]] <= parts[2];
    }
  }

  picker.orders = function (data) {
    var options = data.options;
    var rules = picker.rules(data.logic, options);
    var atFirst = rules.states([]);

    function picksOf(order) {
      return options
        .map(function (_, place) {
          return [place, order[place], order[place]];
        })
        .filter(function (pick) {
          return pick[1] !== undefined;
        });
    }

    function exactly(taken) {
      return taken.map(function (count, place) {
        return [place, count, count];
      });
    }

    // Adds what comes with what is taken, in its smallest number, as the definitions of a configuration are read.
    function complete(taken) {
      var all = taken.slice(),
        open = all.map(function (_, place) {
          return place;
        });
      while (open.length > 0) {
        var place = open.shift();
        ((all[place] > 0 && options[place].brings) || []).forEach(function (other) {
          if (all[other] === 0) {
            all[other] = options[other].from || 1;
            open.push(other);
          }
        });
      }
      return all;
    }

    // What the order comes to as it stands: what was picked, what comes with it, and what the rules leave no choice of.
    function takenBy(order, states) {
      var taken = complete(
        options.map(function (_, place) {
          return order[place] || 0;
        })
      );
      states.forEach(function (left, place) {
        if (left.length > 0 && left[0] > 0 && left.indexOf(taken[place]) < 0) {
          taken[place] = left[0];
        }
      });
      return complete(taken);
    }

    function bringers(place, taken) {
      return options
        .map(function (_, other) {
          return other;
        })
        .filter(function (other) {
          return taken[other] > 0 && (options[other].brings || []).indexOf(place) >= 0;
        });
    }

    function kindOf(place, order, left, taken) {
      if (order[place] > 0) {
        return "chosen";
      }
      if (order[place] === 0) {
        return "left-out";
      }
      if (
        atFirst[place].every(function (count) {
          return count === 0;
        })
      ) {
        return "never";
      }
      if (left.length === 0) {
        return "unknown";
      }
      if (left[0] > 0) {
        return bringers(place, taken).length > 0 ? "comes" : "needed";
      }
      return left.length === 1 ? "ruled-out" : "free";
    }

    // Choices in which something must still be taken, and options of which a number must still be said.
    function openOf(order, states, taken, isWhole) {
      var choices = isWhole
        ? []
        : data.choices.filter(function (choice) {
            return (
              choice.take !== "AtMostOne" &&
              choice.always &&
              choice.of.every(function (place) {
                return states[place][0] === 0;
              })
            );
          });
      var numbers = options
        .map(function (_, place) {
          return place;
        })
        .filter(function (place) {
          return (
            order[place] === undefined &&
            states[place].length > 1 &&
            states[place][0] > 0 &&
            bringers(place, taken).length === 0
          );
        });
      return { choices: choices, numbers: numbers, rules: [] };
    }

    // Exactly one or at most one of plain options: one out of several buttons.
    function isRadio(choice) {
      return (
        choice.always &&
        choice.take !== "OneOrMore" &&
        choice.of.every(function (place) {
          return !("from" in options[place]);
        })
      );
    }

    // Members of a choice that are ruled out by the member chosen alone: taking one takes it in place of that.
    function markInstead(order, kinds) {
      data.choices.filter(isRadio).forEach(function (choice) {
        if (
          choice.of.some(function (place) {
            return order[place] > 0;
          })
        ) {
          var left = rules.states(
            picksOf(order).filter(function (pick) {
              return choice.of.indexOf(pick[0]) < 0;
            })
          );
          choice.of.forEach(function (place) {
            if (kinds[place] === "ruled-out" && left[place].indexOf(1) >= 0) {
              kinds[place] = "instead";
            }
          });
        }
      });
      return kinds;
    }

    function isSame(one, other) {
      return one.every(function (count, place) {
        return count === other[place];
      });
    }

    function fromPairs(pairs) {
      var taken = options.map(function () {
        return 0;
      });
      for (var at = 0; at < pairs.length; at += 2) {
        taken[pairs[at]] = pairs[at + 1];
      }
      return taken;
    }

    var published = data.published.map(function (one) {
      return Object.assign({}, one, { taken: fromPairs(one.taken) });
    });
    var checkedSet = data.checked.map(fromPairs);

    // Allowed, checked, released: each with what makes it so.
    function standing(taken, isAllowed) {
      var same = isAllowed
        ? published.filter(function (one) {
            return isSame(one.taken, taken);
          })
        : [];
      var ofSet = isAllowed
        ? checkedSet.findIndex(function (one) {
            return isSame(one, taken);
          })
        : -1;
      return {
        published: same[0] || null,
        ofSet: ofSet,
        isChecked:
          ofSet >= 0 ||
          same.some(function (one) {
            return one.checked;
          }),
        isReleased: same.some(function (one) {
          return one.released && one.checked;
        })
      };
    }

    function answer(order) {
      var picks = picksOf(order),
        states = rules.states(picks);
      var isPossible = states.every(function (left) {
        return left.length > 0;
      });
      var taken = takenBy(order, states);
      var isWhole = isPossible && rules.isPossible(exactly(taken));
      var open = isPossible ? openOf(order, states, taken, isWhole) : { choices: [], numbers: [], rules: [] };
      var isAllowed = isWhole && open.numbers.length === 0;
      if (isPossible && !isWhole && open.choices.length + open.numbers.length === 0) {
        open.rules = rules.search().broken(exactly(taken));
      }
      return {
        order: order,
        picks: picks,
        states: states,
        taken: taken,
        isPossible: isPossible,
        isAllowed: isAllowed,
        open: open,
        left: rules.count(picks),
        kinds: markInstead(
          order,
          options.map(function (_, place) {
            return kindOf(place, order, states[place], taken);
          })
        ),
        standing: standing(taken, isAllowed)
      };
    }

    return {
      data: data,
      rules: rules,
      options: options,
      published: published,
      picksOf: picksOf,
      answer: answer,
      bringers: bringers,
      isRadio: isRadio,
      empty: function () {
        return options.map(function () {
          return undefined;
        });
      },
      holds: function (number, taken) {
        return holds(data.conditions[number], taken);
      },

      // The order that takes exactly this, written without what comes with the rest.
      written: function (taken) {
        var order = taken.slice();
        order.forEach(function (count, place) {
          if (count > 0 && bringers(place, taken).length > 0) {
            order[place] = 0;
            if (!isSame(complete(order), taken)) {
              order[place] = count;
            }
          }
        });
        return order;
      },

      // The order with some changes [place, number] made; what is then left out is as if it had never been named.
      changed: function (order, changes) {
        var after = order.slice();
        changes.forEach(function (change) {
          after[change[0]] = change[1] === 0 ? undefined : change[1];
        });
        return after;
      },

      // The published configuration that differs in the fewest options, and in which: [place, here, there].
      nearestPublished: function (taken) {
        return (
          published
            .map(function (one) {
              var differences = taken
                .map(function (count, place) {
                  return [place, count, one.taken[place]];
                })
                .filter(function (difference) {
                  return difference[1] !== difference[2];
                });
              return { published: one, differences: differences };
            })
            .sort(function (a, b) {
              return a.differences.length - b.differences.length;
            })[0] || null
        );
      }
    };
  };
})();
