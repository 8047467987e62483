using System.Text;
using System.Text.Json;
using Configurator.Cli.Tests.Support;
using Configurator.Core.Documents.Picking;
using Configurator.Core.Logic;

namespace Configurator.Cli.Tests.Browser.Picking;

/// <summary>The page's own scripts that know no page, run in a worker: where there is no document, whoever asks for one
/// fails.</summary>
internal sealed class Walker(Chromium chromium)
{
    /// <summary>Clicks each sequence through; where an order becomes impossible, it is explained and the first way out
    /// is taken.</summary>
    private const string Drive =
        """
        function drive(data, sequences) {
          var orders = picker.orders(data), rules = orders.rules;
          return sequences.map(function (clicks) {
            var order = orders.empty();
            return clicks.map(function (click) {
              order[click[0]] = click[1] < 0 ? undefined : click[1];
              var answer = orders.answer(order);
              var step = { picks: answer.picks, states: answer.states, left: String(answer.left) };
              if (answer.isPossible) {
                step.allowed = answer.isAllowed ? answer.taken : null;
                step.written = answer.isAllowed ? orders.written(answer.taken) : null;
              } else {
                step.why = picker.explain(rules, answer.picks);
                step.nearest = picker.nearest(rules, answer.picks);
                order = orders.changed(order, step.nearest.length ? step.nearest[0] : answer.picks.map(function (pick) { return [pick[0], 0]; }));
              }
              return step;
            });
          });
        }
        onmessage = function (message) {
          try { postMessage(JSON.stringify(drive(message.data[0], message.data[1]))); }
          catch (fault) { postMessage(JSON.stringify({ fault: String(fault.stack) })); }
        };
        """;

    private const string Ask =
        """
        ([script, data, sequences]) => new Promise((done, fail) => {
          const worker = new Worker(URL.createObjectURL(new Blob([script], { type: "text/javascript" })));
          worker.onmessage = message => { worker.terminate(); done(message.data); };
          worker.onerror = error => fail(new Error(error.message));
          worker.postMessage([JSON.parse(data), JSON.parse(sequences)]);
        })
        """;

    private static readonly string[] Names = ["diagram", "solver", "rules", "reasons", "order"];

    /// <summary>What the scripts answer after each click.</summary>
    /// <param name="clicks">Sequences of places of options and numbers; -1 takes back what was said.</param>
    public async Task<IReadOnlyList<IReadOnlyList<WalkerStep>>> RunAsync(OrderLogic logic, int[][][] clicks)
    {
        var watched = await chromium.OpenAsync();
        var text = await watched.Page.EvaluateAsync<string>(Ask, new[] { Script(), DataOf(logic), JsonSerializer.Serialize(clicks) });
        Assert.False(text.StartsWith("{\"fault\"", StringComparison.Ordinal), text);
        await watched.Page.Context.CloseAsync();
        return JsonSerializer.Deserialize<List<List<WalkerStep>>>(text, JsonSerializerOptions.Web)!;
    }

    private static string Script()
    {
        var script = new StringBuilder();
        foreach (var name in Names)
        {
            script.Append(File.ReadAllText(Path.Combine(Repository.Root, "site-templates", "assets", "picker", name + ".js")));
        }

        return script.Append(Drive).ToString();
    }

    private static string DataOf(OrderLogic logic)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            PickerOptions.Write(json, logic.Machine, "en");
            PickerRules.Write(json, logic, "en");
            json.WriteStartArray("published");
            json.WriteEndArray();
            json.WriteStartArray("checked");
            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }
}

/// <summary>What the scripts answer after a click. An option is known by its place.</summary>
/// <param name="Picks">What was said so far: option, from, to.</param>
/// <param name="States">Of each option the numbers that are left.</param>
/// <param name="Allowed">What is taken, where that is a whole order.</param>
/// <param name="Written">The same without what comes with the rest.</param>
internal sealed record WalkerStep(
    int[][] Picks,
    int[][] States,
    string Left,
    int[]? Allowed,
    int[]? Written,
    WalkerWhy? Why,
    int[][][]? Nearest
);

/// <param name="Picks">Places of options.</param>
internal sealed record WalkerWhy(int[] Picks, int[] Rules);
