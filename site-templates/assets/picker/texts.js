"use strict";
// An order as text: in the address of the page, as a file, as a mail. Nothing here knows a page.
var picker = picker || {};
(function () {
  var form = 1,
    besideMax = 4;

  picker.say = function (words, name) {
    var values = Array.prototype.slice.call(arguments, 2);
    return words[name].replace(/\{(\d)\}/g, function (_, at) {
      return String(values[at]);
    });
  };

  function list(orders, order, wanted) {
    return orders.options
      .map(function (option, place) {
        var count = order[place];
        return count === undefined || count > 0 !== wanted ? null : option.id + (count > 1 ? ":" + count : "");
      })
      .filter(Boolean)
      .join(",");
  }

  // "v=1&at=D&was=allowed&with=film-unit,doser-heads:2&without=laser-coding&beside=@classic-yoghurt"
  picker.toFragment = function (orders, state) {
    var parts = ["v=" + form, "at=" + encodeURIComponent(orders.data.machine.revision), "was=" + state.was];
    var taken = list(orders, state.order, true),
      left = list(orders, state.order, false);
    if (taken) {
      parts.push("with=" + taken);
    }
    if (left) {
      parts.push("without=" + left);
    }
    state.beside.forEach(function (one) {
      parts.push("beside=" + (one.published ? "@" + one.published.id : list(orders, one.order, true)));
    });
    return parts.join("&");
  };

  picker.isFragment = function (text) {
    return /^v=\d+(&|$)/.test(text);
  };

  function decode(text) {
    try {
      return decodeURIComponent(text.replace(/\+/g, " "));
    } catch (_) {
      return text;
    }
  }

  // Reads picks into an order, and says what of them is not as it was.
  function read(orders, text, wanted, order, notices) {
    text
      .split(",")
      .filter(Boolean)
      .forEach(function (item) {
        var id = item.split(":")[0],
          count = wanted ? Number(item.split(":")[1] || 1) : 0;
        var place = orders.options.findIndex(function (option) {
          return option.id === id;
        });
        if (place < 0) {
          place = orders.options.findIndex(function (option) {
            return (option.formerly || []).indexOf(id) >= 0;
          });
          notices.push(place < 0 ? ["noticeUnknown", id] : ["noticeFormer", id, orders.options[place].title]);
        }
        if (place < 0) {
          return;
        }
        var numbers = orders.rules.numbers[place];
        if (numbers.indexOf(count) < 0) {
          var most = numbers[numbers.length - 1];
          notices.push(["noticeNumber", orders.options[place].title, item.split(":")[1], numbers[1], most]);
          count = count > most ? most : numbers[1];
        }
        order[place] = count;
      });
  }

  function besideOf(orders, text, notices) {
    if (text[0] === "@") {
      var published = orders.published.find(function (one) {
        return one.id === text.slice(1);
      });
      if (!published) {
        notices.push(["noticeUnknown", text.slice(1)]);
      }
      return published ? { published: published, taken: published.taken } : null;
    }
    var order = orders.empty();
    read(orders, text, true, order, notices);
    return { order: order, taken: orders.answer(order).taken };
  }

  picker.fromFragment = function (orders, text) {
    var state = { order: orders.empty(), beside: [], notices: [], was: "", at: "" };
    var fields = text.split("&").map(function (field) {
      return [field.split("=")[0], decode(field.slice(field.indexOf("=") + 1))];
    });
    if (fields[0][1] !== String(form)) {
      state.notices.push(["noticeVersion", fields[0][1]]);
      return state;
    }
    fields.forEach(function (field) {
      if (field[0] === "with") {
        read(orders, field[1], true, state.order, state.notices);
      }
      if (field[0] === "without") {
        read(orders, field[1], false, state.order, state.notices);
      }
      if (field[0] === "was" || field[0] === "at") {
        state[field[0]] = field[1];
      }
      if (field[0] === "beside" && state.beside.length < besideMax) {
        var one = besideOf(orders, field[1], state.notices);
        if (one) {
          state.beside.push(one);
        }
      }
    });
    return state;
  };

  // In double quotes a JSON text is a YAML text; what a reader cannot see is written as its number.
  function quoted(text) {
    return JSON.stringify(text).replace(
      /[\u007f-\u009f\u00ad\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff]/g,
      function (hidden) {
        return "\\u" + ("000" + hidden.charCodeAt(0).toString(16)).slice(-4);
      }
    );
  }

  picker.toYaml = function (orders, taken, head) {
    var written = orders.written(taken);
    var places = orders.options.map(function (_, place) {
      return place;
    });
    var counted = places.filter(function (place) {
      return written[place] > 0 && "from" in orders.options[place];
    });
    var plain = places.filter(function (place) {
      return written[place] > 0 && !("from" in orders.options[place]);
    });
    return [
      "# yaml-language-server: $schema=../../../site-templates/schemas/configuration.v1.schema.json",
      "configuration: " + head.id,
      "machine: " + orders.data.machine.id,
      "title: " + quoted(head.title),
      "document: " + head.document,
      plain.length ? "options:" : "options: []"
    ]
      .concat(
        plain.map(function (place) {
          return "  - " + orders.options[place].id;
        })
      )
      .concat(counted.length ? ["quantities:"] : [])
      .concat(
        counted.map(function (place) {
          return "  " + orders.options[place].id + ": " + written[place];
        })
      )
      .concat("revision: A", "")
      .join("\n");
  };

  // What the state of an order is called; the most that is true of it.
  picker.stateOf = function (answer) {
    return !answer.isPossible
      ? "impossible"
      : !answer.isAllowed
        ? "open"
        : answer.standing.isReleased
          ? "released"
          : answer.standing.isChecked
            ? "checked"
            : "allowed";
  };

  // A text for a mail.
  picker.toSummary = function (orders, answer, address, question) {
    var words = orders.data.words,
      say = picker.say.bind(null, words);
    var weights = picker.weights(orders, answer.taken);
    var lines = [say("summaryHead", orders.data.machine.title, orders.data.machine.revision), ""];
    lines.push(
      say("summaryState", say("state_" + picker.stateOf(answer))),
      say("explain_" + picker.stateOf(answer)),
      ""
    );
    orders.options.forEach(function (option, place) {
      if (answer.taken[place] > 0) {
        lines.push(
          "- " +
            (answer.taken[place] > 1 ? answer.taken[place] + " x " : "") +
            option.title +
            picker.releaseWords(orders, place, answer.taken)
        );
      }
    });
    picker.openWords(orders, answer).forEach(function (text) {
      lines.push("! " + text);
    });
    lines.push("");
    weights.loads
      .filter(function (load) {
        return load.id.indexOf("price-") === 0;
      })
      .forEach(function (load) {
        lines.push(load.title + ": " + picker.print(load.value, load.scale, load.unit));
      });
    if (weights.days > 0) {
      lines.push(say("leadTime") + ": " + say("days", weights.days));
    }
    if (question) {
      lines.push("", say("question") + ": " + question);
    }
    return lines.concat("", address, "").join("\n");
  };

  // What of an option is not released, for the market of the order where that is known.
  picker.releaseWords = function (orders, place, taken) {
    var option = orders.options[place],
      say = picker.say.bind(null, orders.data.words);
    if (!option.released) {
      return " (" + say("notReleased") + ")";
    }
    var markets = option.markets || [];
    return markets.length === 0 ||
      markets.some(function (market) {
        return taken[market] > 0;
      })
      ? ""
      : " (" +
          say(
            "notReleasedHere",
            markets
              .map(function (market) {
                return orders.options[market].title;
              })
              .join(", ")
          ) +
          ")";
  };

  picker.openWords = function (orders, answer) {
    var say = picker.say.bind(null, orders.data.words);
    return answer.open.choices
      .map(function (choice) {
        return say("openChoice", choice.title);
      })
      .concat(
        answer.open.numbers.map(function (place) {
          return say("openNumber", orders.options[place].title);
        })
      )
      .concat(
        answer.open.rules.map(function (rule) {
          return picker.because(orders, rule);
        })
      );
  };

  // Why a rule is there; where nobody says, what it says.
  picker.because = function (orders, rule) {
    var sentence = orders.rules.sentences[rule];
    return sentence[1] || sentence[0];
  };

  picker.changeWords = function (orders, order, changes) {
    var say = picker.say.bind(null, orders.data.words);
    return changes
      .slice()
      .sort(function (a, b) {
        return (a[1] > 0) - (b[1] > 0);
      })
      .map(function (change) {
        var title = orders.options[change[0]].title;
        return change[1] === 0
          ? say("leaveOut", title)
          : order[change[0]] > 0 || change[1] > 1
            ? say("takeTimes", title, change[1])
            : say("add", title);
      })
      .join(", ");
  };
})();
