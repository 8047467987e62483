"use strict";
// Puts a control before each option of the page, and says beside it what the order leaves of it.
var picker = picker || {};
(function () {
  // An element with attributes and children; texts stay texts.
  picker.make = function (tag, attributes) {
    var element = document.createElement(tag);
    Object.keys(attributes || {}).forEach(function (name) {
      var value = attributes[name];
      if (typeof value === "function") {
        element.addEventListener(name, value);
      } else if (value === true) {
        element.setAttribute(name, "");
      } else if (value !== false && value !== null && value !== undefined) {
        element.setAttribute(name, value);
      }
    });
    element.append.apply(
      element,
      Array.prototype.slice
        .call(arguments, 2)
        .flat()
        .filter(function (child) {
          return child !== null && child !== undefined && child !== "";
        })
    );
    return element;
  };

  var make = picker.make;

  function checkbox(row, act) {
    var box = make("input", {
      type: "checkbox",
      id: "take-" + row.id,
      "aria-describedby": "state-" + row.id,
      change: function () {
        act.set(row.place, box.checked ? 1 : row.kind === "chosen" ? undefined : 0);
      }
    });
    var without = make(
      "button",
      {
        type: "button",
        class: "without",
        "aria-pressed": "false",
        click: function () {
          act.set(row.place, row.kind === "left-out" ? undefined : 0);
        }
      },
      act.say("without"),
      make("span", { class: "unseen" }, " " + row.title)
    );
    row.element.append(without);
    row.show = function (answer) {
      box.checked = answer.taken[row.place] > 0 && row.kind !== "left-out";
      without.setAttribute("aria-pressed", String(row.kind === "left-out"));
      without.hidden = row.kind !== "free" && row.kind !== "left-out" && row.kind !== "unknown";
    };
    return box;
  }

  function radio(row, act, choice) {
    var button = make("input", {
      type: "radio",
      id: "take-" + row.id,
      name: "choice-" + choice.id,
      "aria-describedby": "state-" + row.id,
      change: function () {
        act.choose(choice, row.place);
      }
    });
    row.show = function (answer) {
      button.checked = answer.taken[row.place] > 0;
    };
    return button;
  }

  function number(row, act, counts) {
    var select = make(
      "select",
      {
        id: "take-" + row.id,
        "aria-describedby": "state-" + row.id,
        change: function () {
          act.set(row.place, select.value === "" ? undefined : Number(select.value));
        }
      },
      make("option", { value: "" }),
      counts.map(function (count) {
        return make("option", { value: count });
      })
    );
    row.show = function (answer) {
      var order = answer.order[row.place],
        taken = answer.taken[row.place];
      select.options[0].textContent = order === undefined && taken > 0 ? "(" + taken + ")" : act.say("undecided");
      counts.forEach(function (count, at) {
        var isOpen = !answer.isPossible || order !== undefined || answer.states[row.place].indexOf(count) >= 0;
        select.options[at + 1].textContent =
          (count === 0 ? act.say("without") : count) + (isOpen ? "" : " (" + act.say("kind_ruled-out") + ")");
      });
      select.value = order === undefined ? "" : String(order);
    };
    return select;
  }

  function kindWords(orders, row, answer, say) {
    if (row.kind === "comes") {
      return say(
        "kind_comes",
        orders
          .bringers(row.place, answer.taken)
          .map(function (place) {
            return orders.options[place].title;
          })
          .join(", ")
      );
    }
    return row.kind === "unknown" || row.kind === "chosen" ? "" : say("kind_" + row.kind);
  }

  function addRow(orders, element, act, choice) {
    var id = element.dataset.option;
    var place = orders.options.findIndex(function (option) {
      return option.id === id;
    });
    var row = { id: id, place: place, element: element, title: orders.options[place].title, kind: "free" };
    var control =
      choice && orders.isRadio(choice)
        ? radio(row, act, choice)
        : "from" in orders.options[place]
          ? number(row, act, orders.rules.numbers[place])
          : checkbox(row, act);
    var name = element.querySelector(".name");
    var label = make("label", { class: "name", for: control.id, id: name.id }, row.title);
    name.replaceWith(label);
    row.state = make("span", { class: "standing", id: "state-" + id });
    row.why = make("button", {
      type: "button",
      class: "why",
      "aria-expanded": "false",
      "aria-controls": "why-" + id,
      click: function () {
        toggle(row, act);
      }
    });
    row.reasons = make("div", { class: "reasons", id: "why-" + id, hidden: true });
    element.prepend(control);
    label.after(row.state, row.why);
    element.append(row.reasons);
    return row;
  }

  // Most clicks change few rows; what stays as it is is not written again.
  function showWords(row, words, say) {
    if (!row.reasons.hidden) {
      row.why.setAttribute("aria-expanded", "false");
      row.reasons.hidden = true;
      row.reasons.replaceChildren();
    }
    if (row.shown === row.kind + words) {
      return;
    }
    row.shown = row.kind + words;
    row.element.className = "pick is-" + row.kind;
    row.state.textContent = words;
    var asks = { "ruled-out": "whyNot", never: "whyNot", comes: "why", needed: "why" }[row.kind];
    row.why.hidden = !asks;
    row.why.replaceChildren(asks ? say(asks) : "", make("span", { class: "unseen" }, " " + row.title));
  }

  function toggle(row, act) {
    var isOpen = row.why.getAttribute("aria-expanded") === "true";
    row.why.setAttribute("aria-expanded", String(!isOpen));
    row.reasons.hidden = isOpen;
    row.reasons.replaceChildren.apply(row.reasons, isOpen ? [] : act.reasonsOf(row.place, row.kind));
  }

  function undecided(group, act, choice) {
    var button = make("input", {
      type: "radio",
      id: "take-none-" + choice.id,
      name: "choice-" + choice.id,
      change: function () {
        act.choose(choice, null);
      }
    });
    group
      .querySelector("ul")
      .prepend(
        make(
          "li",
          { class: "pick undecided" },
          button,
          make(
            "label",
            { for: button.id, class: "name" },
            act.say(choice.take === "AtMostOne" ? "noneOfThem" : "undecided")
          )
        )
      );
    return function (answer) {
      button.checked = choice.of.every(function (place) {
        return answer.taken[place] === 0;
      });
    };
  }

  // Returns what shows an answer on all rows.
  picker.rows = function (orders, act) {
    var rows = [],
      others = [];
    document.querySelectorAll(".picks").forEach(function (group) {
      var choice = orders.data.choices.find(function (one) {
        return one.id === group.dataset.choice;
      });
      group.querySelectorAll(".pick").forEach(function (element) {
        rows.push(addRow(orders, element, act, choice));
      });
      if (choice && orders.isRadio(choice)) {
        group.setAttribute("role", "radiogroup");
        others.push(undecided(group, act, choice));
      }
    });
    return function (answer) {
      rows.forEach(function (row) {
        row.kind = answer.kinds[row.place];
        showWords(row, kindWords(orders, row, answer, act.say), act.say);
        row.show(answer);
      });
      others.forEach(function (show) {
        show(answer);
      });
    };
  };
})();
