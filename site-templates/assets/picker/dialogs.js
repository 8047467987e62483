"use strict";
// What leaves the page: a file to commit, a text for a mail, a question to engineering.
var picker = picker || {};
(function () {
  var make = picker.make,
    serial = 0;

  function field(label, attributes, value) {
    serial += 1;
    var input = make(
      attributes.tag || "input",
      Object.assign({ id: "field-" + serial, autocomplete: "off" }, attributes, { tag: null })
    );
    input.value = value;
    return { input: input, element: make("p", { class: "field" }, make("label", { for: input.id }, label), input) };
  }

  function show(title, children, say) {
    serial += 1;
    var dialog = make(
      "dialog",
      { "aria-labelledby": "dialog-" + serial },
      make("h2", { id: "dialog-" + serial }, title),
      children,
      make(
        "p",
        { class: "actions" },
        make(
          "button",
          {
            type: "button",
            click: function () {
              dialog.close();
            }
          },
          say("close")
        )
      )
    );
    dialog.addEventListener("close", function () {
      dialog.remove();
    });
    document.body.append(dialog);
    dialog.showModal();
    return dialog;
  }

  function copy(input, done, say) {
    var chosen = function () {
      input.select();
      done.textContent = say(document.execCommand("copy") ? "copied" : "copyYourself");
    };
    if (!navigator.clipboard) {
      chosen();
      return;
    }
    navigator.clipboard.writeText(input.value).then(function () {
      done.textContent = say("copied");
    }, chosen);
  }

  // A text to copy or to mail; asks first where a question belongs to it.
  picker.showText = function (orders, answer, address, isQuestion, say) {
    var question = isQuestion ? field(say("question"), { tag: "textarea", rows: 3 }, "") : null;
    var text = field(say("text"), { tag: "textarea", rows: 14, readonly: true }, "");
    var done = make("span", { role: "status" });
    var mail = make("a", { href: "mailto:" }, say("openMail"));
    var write = function () {
      text.input.value = picker.toSummary(orders, answer, address, question ? question.input.value : "");
      mail.href =
        "mailto:?subject=" +
        encodeURIComponent(say("summaryHead", orders.data.machine.title, orders.data.machine.revision)) +
        "&body=" +
        encodeURIComponent(text.input.value);
    };
    if (question) {
      question.input.addEventListener("input", write);
    }
    write();
    show(
      say(isQuestion ? "askEngineering" : "copySummary"),
      [
        question ? question.element : null,
        text.element,
        make(
          "p",
          { class: "actions" },
          make(
            "button",
            {
              type: "button",
              click: function () {
                copy(text.input, done, say);
              }
            },
            say("copy")
          ),
          mail,
          done
        )
      ],
      say
    );
  };

  function faultOf(orders, head, say) {
    return !/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(head.id)
      ? say("idForm")
      : orders.published.some(function (one) {
            return one.id === head.id;
          })
        ? say("idUsed", head.id)
        : !/^[A-Z][A-Z0-9]*(-[A-Z0-9]+)*$/.test(head.document)
          ? say("documentForm")
          : orders.published.some(function (one) {
                return one.document === head.document;
              })
            ? say("documentUsed", head.document)
            : head.title.trim() === ""
              ? say("titleMissing")
              : "";
  }

  function freeDocument(orders) {
    for (var number = 201; ; number += 1) {
      var wanted = orders.data.machine.document + "-" + number;
      if (
        !orders.published.some(function (one) {
          return one.document === wanted;
        })
      ) {
        return wanted;
      }
    }
  }

  function download(name, text) {
    var link = make("a", { href: URL.createObjectURL(new Blob([text], { type: "application/yaml" })), download: name });
    link.click();
    setTimeout(function () {
      URL.revokeObjectURL(link.href);
    }, 10000);
  }

  // The file of a configuration, for its folder in the definitions.
  picker.showFile = function (orders, answer, say) {
    var id = field(say("fileId"), { spellcheck: "false" }, "new-order");
    var title = field(say("fileTitle"), {}, "");
    var number = field(say("fileDocument"), { spellcheck: "false" }, freeDocument(orders));
    var text = field(say("text"), { tag: "textarea", rows: 12, readonly: true }, "");
    var fault = make("p", { class: "fault", role: "alert" });
    var head = function () {
      return { id: id.input.value.trim(), title: title.input.value, document: number.input.value.trim() };
    };
    var write = function () {
      text.input.value = picker.toYaml(orders, answer.taken, head());
    };
    [id, title, number].forEach(function (one) {
      one.input.addEventListener("input", write);
    });
    write();
    show(
      say("saveFile"),
      [
        make("p", {}, say("saveLead", "machines/" + orders.data.machine.id + "/configurations/")),
        id.element,
        title.element,
        number.element,
        text.element,
        fault,
        make(
          "p",
          { class: "actions" },
          make(
            "button",
            {
              type: "button",
              click: function () {
                fault.textContent = faultOf(orders, head(), say);
                if (fault.textContent === "") {
                  download(head().id + ".yaml", text.input.value);
                }
              }
            },
            say("download")
          )
        )
      ],
      say
    );
  };
})();
