using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Binding;
using Configurator.Core.Loading;
using Configurator.Core.Logic;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Engineering.Rigs;

/// <summary>A rig as definitions.</summary>
internal static class RigText
{
    private const int LineMetres = 12;

    private static readonly ImmutableArray<string> Stock =
    [
        Cordset("cord-4", "m12-a-4", "2 m, 5 m, 10 m"),
        Cordset("cord-5", "m12-a-5", "2 m, 5 m"),
        Cordset("cord-open", "terminals", "5 m, 20 m"),
        Cordset("trunk-power", "m12-l-5", "20 m"),
        Cordset("trunk-network", "m12-d-4", "20 m"),
        """
        device: splitter
        title: Splitter
        kind: splitter
        letters: XD
        connection: none
        plug: m12-a-4

        """,
        .. Enum.GetValues<Gadget>().Select(Device),
    ];

    /// <summary>The rules of the rig, compiled. Its definitions must be without errors.</summary>
    /// <param name="shuffle">Puts the files into another order.</param>
    public static OrderLogic Logic(Rig rig, Func<IEnumerable<string>, IEnumerable<string>>? shuffle = null)
    {
        var files = Definitions(rig);
        var set = SourceSet.Of(
            (shuffle is null ? files : shuffle(files)).Select(text => new SourceFile(
                PlaceOf(text),
                Encoding.UTF8.GetBytes(text)
            ))
        );
        var bound = Loader.Load(set).Then(Binder.Bind);
        Assert.False(
            bound.HasErrors,
            $"{bound.Diagnostics.FirstOrDefault()?.Span} {bound.Diagnostics.FirstOrDefault()?.Message}\n{rig}"
        );
        return OrderLogic.Of(bound.Value.Machines[new(Rig.Id)]);
    }

    public static ImmutableArray<string> Definitions(Rig rig) =>
        [
            .. Stock,
            .. rig.Masters.Select((master, i) => MasterDevice(i, master)),
            .. Enumerable.Range(0, rig.Options).Select(option => OptionOf(rig, option)),
            MachineOf(rig),
        ];

    private static string PlaceOf(string text)
    {
        var id = text[(text.IndexOf(": ", StringComparison.Ordinal) + 2)..text.IndexOf('\n', StringComparison.Ordinal)];
        return text[0] switch
        {
            'm' => $"machines/{id}/machine.yaml",
            'd' => $"options/devices/{id}.yaml",
            _ => $"options/all/{id}.yaml",
        };
    }

    private static string MachineOf(Rig rig)
    {
        var standard = rig.Fits.Where(fit => fit.Option is null).Select(fit => FitOf(fit)).ToList();
        standard.AddRange(
            Enumerable
                .Range(0, rig.Direct)
                .Select(i =>
                    $"  - {{fit: wired{i}, device: prox, stations: [at-0], purpose: Looks, wiring: direct}}\n"
                )
        );
        return $$"""
            machine: {{Rig.Id}}
            title: Rig
            summary: A machine for tests
            document: R1
            revision: A
            areas:
              - {area: dry, title: Line, class: non-food, wash: dry}
            route:
              nodes:
            {{Lines(LineMetres + 1, i => $"    - {{node: n-{i}, x: {i} m, y: 0 m, z: 0 m}}")}}
              edges:
            {{Lines(LineMetres, i => $"    - {{from: n-{i}, to: n-{i + 1}}}")}}
            stations:
            {{Lines(
                LineMetres + 1,
                i => $"  - {{station: at-{i}, title: Station, area: dry, node: n-{i}, drop: 0 m}}"
            )}}
            control:
              box: {station: at-0, entries: 40, direct-inputs: 40}
              spare-ports: {{rig.Spare}}
              slack: 0 m
              cordsets: {io-link: cord-4, class-b: cord-5, direct: cord-open}
              trunk: {power: trunk-power, network: trunk-network}
            {{(rig.HasSplitter ? "  splitter: splitter\n" : "")}}  masters:
            {{Lines(rig.Masters.Length, i => MasterOf(rig, i))}}
            {{ChoiceOf(rig)}}{{(standard.Count == 0 ? "" : "standard:\n" + string.Concat(standard))}}
            """;
    }

    private static string Lines(int count, Func<int, string> line) =>
        string.Join('\n', Enumerable.Range(0, count).Select(line));

    private static string MasterOf(Rig rig, int i) =>
        $"    - {{master: m{i}, device: master-{i}, station: at-{rig.Masters[i].At}"
        + $"{(rig.Masters[i].IsExtension ? ", extension: true" : "")}}}";

    private static string ChoiceOf(Rig rig) =>
        rig.OneOf == 0
            ? ""
            : $"""
            choices:
              - choice: first
                title: First
                take: exactly-one
                of: [{string.Join(", ", Enumerable.Range(0, rig.OneOf).Select(i => $"o{i}"))}]
                because: There is room for one

            """;

    private static string OptionOf(Rig rig, int option)
    {
        var text = new StringBuilder(
            $"option: o{option}\ntitle: Option\nsummary: An option\noffered-on: [{Rig.Id}]\n"
        );
        Append(text, "requires", rig.Rules.Where(rule => rule.IsNeed && rule.One == option));
        Append(text, "not-with", rig.Rules.Where(rule => !rule.IsNeed && rule.One == option));
        var fits = rig.Fits.Where(fit => fit.Option == option).Select(fit => FitOf(fit)).ToList();
        return text + (fits.Count == 0 ? "" : "fits:\n" + string.Concat(fits));
    }

    private static void Append(StringBuilder text, string key, IEnumerable<RigRule> rules)
    {
        var others = rules.Select(rule => $"o{rule.Other}").Distinct(StringComparer.Ordinal).ToList();
        text.Append(others.Count == 0 ? "" : $"{key}: [{string.Join(", ", others)}]\n");
    }

    private static string FitOf(RigFit fit) =>
        $"  - {{fit: {fit.Name}, device: {Name(fit.Gadget)}, stations: [at-{fit.At}], purpose: Looks"
        + $"{(fit.When is { } when ? $", when: o{when}" : "")}}}\n";

    private static string Name(Gadget gadget) => gadget.ToString().ToLowerInvariant();

    private static string MasterDevice(int i, RigMaster master) =>
        $$"""
        device: master-{{i}}
        title: Field master
        kind: io-link-master
        letters: KF
        connection: wired
        ports:
        {{PortsOf("class-a", 1, master.ClassA)}}{{PortsOf("class-b", master.ClassA + 1, master.ClassB)}}
          pin-2: {{(master.ReadsPinTwo ? "either" : "none")}}
          current-per-port: {{master.PerPort}} mA
          extra-per-port: 1 A
        {{(master.InAll is { } all ? $"  current-in-all: {all} mA\n" : "")}}{{(
            master.ExtraInAll is { } extra ? $"  extra-in-all: {extra} mA\n" : ""
        )}}
        """;

    private static string PortsOf(string key, int first, int count) =>
        count == 0 ? "" : $"  {key}: [{string.Join(", ", Enumerable.Range(first, count))}]\n";

    private static string Device(Gadget gadget)
    {
        var facts = GadgetFacts.Of(gadget);
        var ports =
            $"ports: {{switching: [1, 2], current-per-port: {GadgetFacts.HubPerPort} mA, "
            + $"current-in-all: {GadgetFacts.HubInAll} mA}}\n";
        return $$"""
            device: {{Name(gadget)}}
            title: Device
            kind: {{(gadget == Gadget.Hub ? "hub" : gadget == Gadget.Valves ? "valve-manifold" : "sensor")}}
            letters: BG
            connection: {{(facts.IsSwitching ? "switching" : "io-link")}}
            plug: {{(facts.NeedsClassB ? "m12-a-5" : "m12-a-4")}}
            current: {{facts.Current}} mA
            {{(facts.NeedsClassB ? $"port-class: B\npin-2: supply\nextra-current: {facts.Extra} mA\n" : "")}}{{(
                gadget == Gadget.Feeler ? "pin-2: signal\n" : ""
            )}}{{(facts.IsSwitching ? "" : "io-link: {rate: com2, input-octets: 1, output-octets: 0, cycle: 3 ms}\n")}}{{(
                gadget == Gadget.Hub ? ports : ""
            )}}
            """;
    }

    private static string Cordset(string id, string farPlug, string lengths) =>
        $$"""
        device: {{id}}
        title: Stock cable
        kind: cordset
        letters: WG
        connection: none
        plug: m12-a-4
        far-plug: {{farPlug}}
        cordset: {lengths: [{{lengths}}], cores: [BN, WH, BU, BK], conductor: 0.34 mm2, jacket: TPE}

        """;
}
