"use strict";
// The page that picks: holds the order, keeps it in the address, and has everything else show it.
var picker = picker || {};
(function () {
  if (typeof configuratorOrder === "undefined") {
    return;
  }
  var orders = picker.orders(configuratorOrder),
    words = configuratorOrder.words;
  var say = picker.say.bind(null, words),
    make = picker.make;
  var state = { order: orders.empty(), beside: [], notices: [], was: "" };
  var answer = null,
    act = {};

  function address() {
    return location.href.split("#")[0] + "#" + fragment();
  }

  function fragment() {
    return picker.toFragment(orders, { order: state.order, beside: state.beside, was: picker.stateOf(answer) });
  }

  // What changed since the link was made, where it no longer holds.
  function notices() {
    var texts = state.notices.map(function (notice) {
      return say.apply(null, notice);
    });
    var hadWorked = ["allowed", "checked", "released"].indexOf(state.was) >= 0;
    if (hadWorked && !answer.isAllowed) {
      texts.unshift(say("noticeChanged", say("state_" + state.was), state.at, orders.data.machine.revision));
    }
    return texts;
  }

  function show() {
    answer = orders.answer(state.order);
    showRows(answer);
    showDesk(answer, notices());
    showBeside(answer, state.beside);
    bar.replaceChildren(
      make("b", {}, say("state_" + picker.stateOf(answer))),
      " " + (answer.left === null ? "" : say("left", picker.group(answer.left)))
    );
  }

  function count(kind, of) {
    return of.kinds.filter(function (one) {
      return one === kind;
    }).length;
  }

  // What the last change did, in a sentence or two for those who do not see it.
  function tell(before) {
    var parts = [say("state_" + picker.stateOf(answer)) + "."];
    var come = orders.options
      .filter(function (_, place) {
        return answer.taken[place] > 0 && before.taken[place] === 0 && answer.kinds[place] !== "chosen";
      })
      .map(function (option) {
        return option.title;
      });
    if (come.length) {
      parts.push(say("toldComes", come.join(", ")));
    }
    var out = count("ruled-out", answer) - count("ruled-out", before);
    if (out > 0 && before.isPossible) {
      parts.push(say("toldRuledOut", out));
    }
    if (answer.left !== null) {
      parts.push(say("left", picker.group(answer.left)) + ".");
    }
    live.textContent = parts.join(" ");
  }

  // Shows a new order; the way back in the browser leads to the one before.
  function update(order) {
    var before = answer,
      focused = document.activeElement;
    state.order = order;
    state.notices = [];
    state.was = "";
    show();
    history.pushState(null, "", "#" + fragment());
    tell(before);
    // A control that went with what it mended must not take the keyboard with it.
    if (focused && !document.contains(focused)) {
      document.getElementById("state").focus({ preventScroll: true });
    }
  }

  function load() {
    var text = location.hash.slice(1);
    if (picker.isFragment(text)) {
      state = picker.fromFragment(orders, text);
    }
    show();
  }

  act = {
    say: say,
    set: function (place, count) {
      var order = state.order.slice();
      order[place] = count;
      update(order);
    },
    choose: function (choice, place) {
      var order = state.order.slice();
      choice.of.forEach(function (other) {
        order[other] = undefined;
      });
      if (place !== null) {
        order[place] = 1;
      }
      update(order);
    },
    change: function (changes) {
      update(orders.changed(state.order, changes));
    },
    startFrom: function (published) {
      update(
        orders.written(published.taken).map(function (count) {
          return count === 0 ? undefined : count;
        })
      );
    },
    goTo: function (place) {
      var control = document.getElementById("take-" + orders.options[place].id);
      control.scrollIntoView({ block: "center" });
      control.focus();
    },
    // Why an option is as it is, and for one that is ruled out the orders that have it.
    reasonsOf: function (place, kind) {
      var isOut = kind === "ruled-out" || kind === "never";
      var wanted = isOut ? [place, 1, 1000] : [place, 0, 0];
      var picks = answer.picks
        .filter(function (pick) {
          return pick[0] !== place;
        })
        .concat([wanted]);
      var explanation = picker.explain(orders.rules, picks);
      explanation.picks = explanation.picks.filter(function (one) {
        return one !== place;
      });
      var repairs = !isOut
        ? []
        : picker.nearest(orders.rules, picks, [place]).map(function (changes) {
            var count = orders.rules.numbers[place].find(function (number) {
              return (
                number > 0 &&
                orders.rules.isPossible(orders.picksOf(orders.changed(state.order, changes.concat([[place, number]]))))
              );
            });
            var all = changes.concat([[place, count]]);
            return {
              text: picker.changeWords(orders, state.order, all),
              take: function () {
                act.change(all);
              }
            };
          });
      var parts = picker.reasons(orders, picks, explanation, repairs, act);
      return isOut ? parts : parts.slice(0, -2);
    },
    putBeside: function () {
      if (state.beside.length < 3) {
        state.beside = state.beside.concat({ order: state.order.slice(), taken: answer.taken });
      }
      act.refresh();
    },
    addPublished: function (published) {
      state.beside = state.beside.concat({ published: published, taken: published.taken });
      act.refresh();
    },
    takeAway: function (at) {
      state.beside = state.beside.filter(function (_, i) {
        return i !== at;
      });
      act.refresh();
      document.getElementById("beside").focus();
    },
    refresh: function () {
      showBeside(answer, state.beside);
      history.replaceState(null, "", "#" + fragment());
      live.textContent = say("besideNow", state.beside.length + 1);
    },
    startAgain: function () {
      update(orders.empty());
    },
    saveFile: function () {
      picker.showFile(orders, answer, say);
    },
    copySummary: function () {
      picker.showText(orders, answer, address(), false, say);
    },
    askEngineering: function () {
      picker.showText(orders, answer, address(), true, say);
    }
  };

  var live = make("p", { role: "status", class: "unseen", id: "told" });
  var bar = make("a", { href: "#order", class: "order-bar" });
  var showRows = picker.rows(orders, act);
  var showDesk = picker.desk(document.getElementById("desk"), orders, act);
  var showBeside = picker.beside(document.getElementById("table"), orders, act);
  document.getElementById("beside").tabIndex = -1;
  document.getElementById("content").append(live, bar);
  document.body.classList.add("picking");
  window.addEventListener("popstate", load);
  // A link within the page moves the reader, not the order.
  window.addEventListener("hashchange", function () {
    if (!picker.isFragment(location.hash.slice(1))) {
      history.replaceState(null, "", "#" + fragment());
    }
  });
  load();
})();
