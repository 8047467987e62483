using Configurator.Cli.Tests.Support;
using Configurator.Core.Logic;
using Configurator.Core.Logic.Compiling;
using Configurator.Core.Model;
using Configurator.Cli.Disk;

namespace Configurator.Cli.Tests.Browser.Picking;

/// <summary>The page's scripts answer random clicks as the engine does: second algorithm for every figure here.</summary>
[Collection(OneBrowser.Name)]
public sealed class AgreementTests(Chromium chromium)
{
    private const int ClicksMax = 12;
    private const int Few = 40;
    private static readonly CompileLimits NoDiagram = CompileLimits.Usual with { Edges = 1 };
    private const int Usual = 200;
    private const int Many = 2000;

    public static TheoryData<string> OfDemo { get; } = ["pantry-four", "pantry-eight", "spout-two"];

    public static TheoryData<string> Generated { get; } = ["generated-counted", "generated-middling", "generated-large"];

    [Theory]
    [MemberData(nameof(OfDemo))]
    public Task Random_clicks_on_a_machine_get_the_answers_of_the_engine(string rules) => CheckAsync(rules, Usual, seed: 1);

    [Theory]
    [MemberData(nameof(Generated))]
    public Task Random_clicks_on_generated_rules_get_the_answers_of_the_engine(string rules) => CheckAsync(rules, Few, seed: 1);

    // Where the rules are too entangled for a diagram, both search: nothing is counted, all else is answered.
    [Theory]
    [MemberData(nameof(OfDemo))]
    public Task Random_clicks_without_a_diagram_get_the_answers_of_the_engine(string rules) =>
        CheckAsync(rules, Few / 2, seed: 3, NoDiagram);

    [Theory(Explicit = true)]
    [Trait("Length", "nightly")]
    [MemberData(nameof(OfDemo))]
    [MemberData(nameof(Generated))]
    public Task Many_random_clicks_get_the_answers_of_the_engine(string rules) => CheckAsync(rules, Many, seed: 2);

    private async Task CheckAsync(string rules, int sequences, int seed, CompileLimits? limits = null)
    {
        var machine = MachineOf(rules);
        var random = new Random(seed);
        foreach (var batch in Enumerable.Range(0, sequences).Chunk(100))
        {
            // What the engine's search learns stays with it; a new one now and then keeps it quick.
            var logic = OrderLogic.Of(machine, limits ?? CompileLimits.Usual);
            Assert.Equal(limits is null, logic.IsCounted);
            int[][][] clicks = [.. batch.Select(_ => Clicks(machine, random))];
            var steps = await new Walker(chromium).RunAsync(logic, clicks);
            var engine = new Engine(logic);
            foreach (var (sequence, answers) in clicks.Zip(steps))
            {
                foreach (var step in answers)
                {
                    var differences = engine.Differences(step).ToList();
                    Assert.True(differences.Count == 0, $"{rules}: {Words(sequence)}\n{string.Join('\n', differences)}");
                }
            }
        }
    }

    /// <summary>Mostly something is taken, sometimes left out, sometimes taken back.</summary>
    private static int[][] Clicks(Machine machine, Random random)
    {
        var options = machine.Options.Values.ToList();
        return
        [
            .. Enumerable.Range(0, random.Next(3, ClicksMax + 1)).Select(_ =>
            {
                var place = random.Next(options.Count);
                var range = options[place].Quantity ?? new(1, 1, Text.Empty);
                var kind = random.Next(20);
                return new[] { place, kind < 2 ? -1 : kind < 5 ? 0 : random.Next(range.From, range.To + 1) };
            }),
        ];
    }

    private static string Words(int[][] clicks) => string.Join(' ', clicks.Select(click => FormattableString.Invariant($"{click[0]}:{click[1]}")));

    private static Machine MachineOf(string rules) => rules switch
    {
        "generated-counted" => GeneratedMachines.Of(options: 16, counted: 5, reach: 6, seed: 3),
        "generated-middling" => GeneratedMachines.Of(options: 60, counted: 5, reach: 6, seed: 4),
        "generated-large" => GeneratedMachines.Of(options: 300, counted: 0, reach: 5, seed: 5),
        _ => Demo.Value.Machines[new(rules)],
    };

    private static readonly Lazy<Catalogue> Demo = new(() =>
        Core.Binding.Binder.Bind(Core.Loading.Loader.Load(CatalogueReader.Read(Repository.Root).Sources).Value).Value);
}
