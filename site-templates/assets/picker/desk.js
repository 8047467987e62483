"use strict";
// The order as it stands: its state, what is open or impossible and how to mend it, what is taken, what it weighs.
var picker = picker || {};
(function () {
  var make = picker.make;

  function button(text, click, name) {
    return make("button", { type: "button", click: click, class: name }, text);
  }

  // What rules and picks are in the way, and the ways out, each one click.
  picker.reasons = function (orders, picks, explanation, repairs, act) {
    var say = act.say;
    var concerned = explanation.picks.map(function (place) {
      return orders.options[place].title;
    });
    return [
      make("p", {}, say(explanation.rules.length === 1 ? "ruleSays" : "rulesSay")),
      make(
        "ul",
        { class: "rules" },
        explanation.rules.map(function (rule) {
          var sentence = orders.rules.sentences[rule];
          return make(
            "li",
            {},
            picker.because(orders, rule),
            sentence[1] ? make("span", { class: "statement" }, " (" + sentence[0] + ")") : null
          );
        })
      ),
      concerned.length ? make("p", {}, say("asChosen", concerned.join(", "))) : null,
      make("p", {}, say(repairs.length ? "waysOut" : "noWayOut")),
      make(
        "ul",
        { class: "repairs" },
        repairs.map(function (repair) {
          return make("li", {}, button(repair.text, repair.take));
        })
      )
    ].filter(Boolean);
  };

  function impossible(orders, answer, act) {
    var repairs = picker.nearest(orders.rules, answer.picks).map(function (changes) {
      return {
        text: picker.changeWords(orders, answer.order, changes),
        take: function () {
          act.change(changes);
        }
      };
    });
    return make(
      "div",
      { class: "problem" },
      make("h3", {}, act.say("cannotBe")),
      picker.reasons(orders, answer.picks, picker.explain(orders.rules, answer.picks), repairs, act)
    );
  }

  // The three honest words, and what makes each of them true or not.
  function standing(orders, answer, act) {
    var say = act.say,
      it = answer.standing;
    var row = function (isSo, word, text) {
      return make(
        "li",
        { class: isSo ? "is-so" : "is-not" },
        make("b", {}, say("state_" + word) + ": " + say(isSo ? "yes" : "notYet") + "."),
        " ",
        text
      );
    };
    var page = it.published ? make("a", { href: it.published.page }, it.published.title) : null;
    return make(
      "ol",
      { class: "standing-words" },
      row(
        answer.isAllowed,
        "allowed",
        say(!answer.isPossible ? "explain_impossible" : answer.isAllowed ? "explain_allowed" : "explain_open")
      ),
      row(
        it.isChecked,
        "checked",
        say(
          it.ofSet >= 0
            ? "isOfCheckedSet"
            : it.published
              ? it.isChecked
                ? "isPublished"
                : "hasFailed"
              : "explainUnchecked"
        )
      ),
      row(
        it.isReleased,
        "released",
        say(it.isReleased ? "explain_released" : it.published ? "isDraft" : "explainUnreleased")
      ),
      page ? make("li", { class: "where" }, page) : null
    );
  }

  function open(orders, answer, act) {
    var items = answer.open.choices
      .map(function (choice) {
        return make(
          "li",
          {},
          button(act.say("openChoice", choice.title), function () {
            act.goTo(choice.of[0]);
          })
        );
      })
      .concat(
        answer.open.numbers.map(function (place) {
          return make(
            "li",
            {},
            button(act.say("openNumber", orders.options[place].title), function () {
              act.goTo(place);
            })
          );
        })
      )
      .concat(
        answer.open.rules.map(function (rule) {
          return make("li", {}, picker.because(orders, rule));
        })
      );
    return items.length
      ? make("div", { class: "open" }, make("h3", {}, act.say("stillOpen")), make("ul", {}, items))
      : null;
  }

  function taken(orders, answer, act) {
    var items = orders.options
      .map(function (option, place) {
        var count = answer.taken[place];
        if (count === 0) {
          return null;
        }
        var isChosen = answer.order[place] > 0;
        return make(
          "li",
          {},
          count > 1 ? count + " × " : null,
          option.title,
          make(
            "span",
            { class: "standing" },
            isChosen
              ? picker.releaseWords(orders, place, answer.taken)
              : " (" + act.say("included") + ")" + picker.releaseWords(orders, place, answer.taken)
          ),
          isChosen
            ? make(
                "button",
                {
                  type: "button",
                  class: "drop",
                  "aria-label": act.say("takeAway", option.title),
                  click: function () {
                    act.set(place, undefined);
                  }
                },
                "×"
              )
            : null
        );
      })
      .filter(Boolean);
    return [
      make("h3", {}, act.say("taken")),
      items.length ? make("ul", { class: "taken" }, items) : make("p", { class: "none" }, act.say("nothingYet"))
    ];
  }

  function bar(share) {
    var full = make("span", {});
    full.style.width = Math.round(100 * Math.max(0, Math.min(1, share))) + "%";
    return make("span", { class: "share", "aria-hidden": "true" }, full);
  }

  function loadRow(load) {
    var print = function (small) {
      return picker.print(small, load.scale, load.unit);
    };
    var end = load.limit === undefined ? load.most : load.limit;
    return make(
      "tr",
      {},
      make("th", { scope: "row" }, load.title),
      make("td", { class: "number" }, print(load.value), bar(end > 0 ? load.value / end : 0)),
      make("td", { class: "number" }, print(load.most)),
      make("td", { class: "number" }, load.limit === undefined ? "–" : print(load.limit))
    );
  }

  function otherRow(title, value, most) {
    return make(
      "tr",
      {},
      make("th", { scope: "row" }, title),
      make("td", { class: "number" }, value),
      make("td", { class: "number" }, most || "–"),
      make("td", { class: "number" }, "–")
    );
  }

  function loads(orders, answer, act) {
    var say = act.say,
      weights = picker.weights(orders, answer.taken);
    var volts = function (small) {
      return picker.print(small, 1000000, "V");
    };
    var rows = weights.loads.map(loadRow).concat(
      weights.trunk.map(function (circuit) {
        return otherRow(say("trunk", circuit.title), volts(circuit.volts), say("atLeast", volts(circuit.least)));
      })
    );
    if (weights.days > 0) {
      rows.push(otherRow(say("leadTime"), say("days", weights.days)));
    }
    if (weights.rate > 0) {
      rows.push(
        otherRow(
          say("lineRate") + (weights.slowest ? " (" + say("slowest", weights.slowest) + ")" : ""),
          picker.print(weights.rate, 1000, "/min")
        )
      );
    }
    return make(
      "section",
      { class: "scroll", tabindex: "0", "aria-labelledby": "loads-of-order" },
      make(
        "table",
        {},
        make("caption", { id: "loads-of-order", class: "unseen" }, say("loadsOfOrder")),
        make(
          "thead",
          {},
          make(
            "tr",
            {},
            ["load", "now", "mostOfAll", "machineHas"].map(function (word) {
              return make("th", { scope: "col", class: word === "load" ? "words" : "number" }, say(word));
            })
          )
        ),
        make("tbody", {}, rows)
      )
    );
  }

  function nearest(orders, answer, act) {
    var found = orders.nearestPublished(answer.taken);
    if (!found || found.differences.length === 0) {
      return null;
    }
    return make(
      "div",
      {},
      make("h3", {}, act.say("nearestPublished")),
      make(
        "p",
        {},
        make("a", { href: found.published.page }, found.published.title),
        " (" + act.say("differs", found.differences.length) + ") ",
        button(act.say("startFrom"), function () {
          act.startFrom(found.published);
        })
      ),
      make(
        "details",
        {},
        make("summary", {}, act.say("whatDiffers")),
        make(
          "ul",
          {},
          found.differences.map(function (one) {
            return make("li", {}, orders.options[one[0]].title + ": " + act.say("hereThere", one[1], one[2]));
          })
        )
      )
    );
  }

  picker.desk = function (place, orders, act) {
    var notices = make("div", { class: "notices" });
    var body = make("div", {});
    var more = make("details", { class: "all-loads" }, make("summary", {}, act.say("loadsOfOrder")));
    var actions = make(
      "div",
      { class: "actions" },
      ["saveFile", "copySummary", "askEngineering", "putBeside", "startAgain"].map(function (name) {
        return button(act.say(name), act[name], name);
      })
    );
    more.open = true;
    place.replaceChildren(notices, body, actions, more);
    place.className = "desk";
    return function (answer, texts) {
      notices.replaceChildren.apply(
        notices,
        texts.map(function (text) {
          return make("p", { class: "notice" }, text);
        })
      );
      var state = picker.stateOf(answer);
      body.replaceChildren.apply(
        body,
        [
          make(
            "p",
            { class: "state is-" + state, id: "state", tabindex: "-1" },
            make("b", {}, act.say("state_" + state)),
            make("span", {}, answer.left === null ? act.say("notCounted") : act.say("left", picker.group(answer.left)))
          ),
          answer.isPossible ? null : impossible(orders, answer, act),
          open(orders, answer, act),
          standing(orders, answer, act)
        ]
          .concat(taken(orders, answer, act), nearest(orders, answer, act))
          .filter(Boolean)
      );
      more.replaceChildren(more.firstChild, loads(orders, answer, act));
      actions.querySelector(".saveFile").disabled = !answer.isAllowed;
    };
  };
})();
