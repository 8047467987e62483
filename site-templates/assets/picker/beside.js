"use strict";
// Two to four orders or published configurations side by side: options, loads, parts, price.
var picker = picker || {};
(function () {
  var make = picker.make,
    most = 4;

  function same(values) {
    return values.every(function (value) {
      return value === values[0];
    });
  }

  function row(title, values) {
    var isSame = same(values);
    return {
      isSame: isSame,
      element: make(
        "tr",
        { class: isSame ? "same" : "differs" },
        make("th", { scope: "row" }, title),
        values.map(function (value) {
          return make("td", {}, value);
        })
      )
    };
  }

  function optionRows(orders, columns, say) {
    return orders.options
      .map(function (option, place) {
        var counts = columns.map(function (one) {
          return one.taken[place];
        });
        return counts.every(function (count) {
          return count === 0;
        })
          ? null
          : row(
              option.title,
              counts.map(function (count) {
                return count === 0 ? "–" : "from" in option ? String(count) : say("yes");
              })
            );
      })
      .filter(Boolean);
  }

  function loadRows(orders, weights, say) {
    return orders.data.loads
      .map(function (load, i) {
        return row(
          load.title,
          weights.map(function (one) {
            return picker.print(one.loads[i].value, load.scale, load.unit);
          })
        );
      })
      .concat(
        row(
          say("leadTime"),
          weights.map(function (one) {
            return say("days", one.days);
          })
        ),
        row(
          say("lineRate"),
          weights.map(function (one) {
            return picker.print(one.rate, 1000, "/min");
          })
        )
      );
  }

  function partRows(weights) {
    var titles = [];
    weights.forEach(function (one) {
      one.parts.forEach(function (part) {
        titles.push(part.title);
      });
    });
    return Array.from(new Set(titles))
      .sort()
      .map(function (title) {
        return row(
          title,
          weights.map(function (one) {
            var part = one.parts.find(function (it) {
              return it.title === title;
            });
            return part ? String(part.number) : "–";
          })
        );
      });
  }

  function body(title, rows, span, isShort) {
    var shown = rows.filter(function (one) {
      return !isShort || !one.isSame;
    });
    return shown.length === 0
      ? null
      : make(
          "tbody",
          {},
          make("tr", {}, make("th", { colspan: span, scope: "rowgroup", class: "part" }, title)),
          shown.map(function (one) {
            return one.element;
          })
        );
  }

  function table(orders, columns, isShort, act) {
    var say = act.say,
      weights = columns.map(function (one) {
        return picker.weights(orders, one.taken);
      });
    var heads = columns.map(function (one, i) {
      return make(
        "th",
        { scope: "col" },
        one.title,
        " ",
        one.state ? make("span", { class: "standing" }, one.state) : null,
        i === 0
          ? null
          : make(
              "button",
              {
                type: "button",
                class: "drop",
                "aria-label": say("takeAway", one.title),
                click: function () {
                  act.takeAway(i - 1);
                }
              },
              "×"
            )
      );
    });
    var parts = [
      body(say("options"), optionRows(orders, columns, say), columns.length + 1, isShort),
      body(say("loads"), loadRows(orders, weights, say), columns.length + 1, isShort),
      body(say("parts"), partRows(weights), columns.length + 1, isShort)
    ].filter(Boolean);
    return make(
      "section",
      { class: "scroll", tabindex: "0", "aria-labelledby": "beside-caption" },
      make(
        "table",
        { class: "beside" },
        make("caption", { id: "beside-caption" }, say("compared")),
        make("thead", {}, make("tr", {}, make("td", {}), heads)),
        parts.length
          ? parts
          : make("tbody", {}, make("tr", {}, make("td", { colspan: columns.length + 1 }, say("noDifference"))))
      )
    );
  }

  picker.beside = function (place, orders, act) {
    var say = act.say,
      isShort = false;
    var select = make(
      "select",
      { id: "beside-published" },
      orders.published.map(function (one) {
        return make("option", { value: one.id }, one.title);
      })
    );
    var differences = make("input", {
      type: "checkbox",
      id: "beside-differences",
      change: function () {
        isShort = differences.checked;
        act.refresh();
      }
    });
    var shown = make("div", {});
    var add = make(
      "button",
      {
        type: "button",
        click: function () {
          act.addPublished(
            orders.published.find(function (one) {
              return one.id === select.value;
            })
          );
        }
      },
      say("putPublishedBeside")
    );
    var now = make(
      "button",
      {
        type: "button",
        click: function () {
          act.putBeside();
        }
      },
      say("putBeside")
    );
    place.replaceChildren(
      make(
        "p",
        { class: "tools" },
        now,
        orders.published.length ? [make("label", { for: select.id }, say("publishedOnes")), select, add] : null,
        make("span", {}, differences, make("label", { for: differences.id }, say("differencesOnly")))
      ),
      shown
    );
    place.className = "beside-place";
    return function (answer, beside) {
      var columns = [
        { title: say("yourOrder"), state: say("state_" + picker.stateOf(answer)), taken: answer.taken }
      ].concat(
        beside.map(function (one, i) {
          return one.published
            ? { title: one.published.title, taken: one.taken }
            : { title: say("putAside", i + 1), taken: one.taken };
        })
      );
      add.disabled = now.disabled = beside.length >= most - 1;
      shown.replaceChildren(
        beside.length === 0 ? make("p", { class: "none" }, say("nothingBeside")) : table(orders, columns, isShort, act)
      );
    };
  };
})();
