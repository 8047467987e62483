using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds the device library.</summary>
internal static class DeviceBinder
{
    public static Names<Device> Bind(
        IEnumerable<DefinitionFile> files,
        NoteLibrary notes,
        FaultyNames faulty,
        ICollection<Diagnostic> report
    )
    {
        var given = Unique.By("device", files, file => file.Id, report);
        var read = given.Select(file => (file.Id, Device: Read(file, notes, report))).ToList();
        var devices = Names<Device>.Of(
            "device",
            read.Select(entry => entry.Device).OfType<Device>(),
            device => device.Id.Value.Value,
            faulty.Of("device").Concat(read.Where(entry => entry.Device is null).Select(entry => entry.Id.Value))
        );
        Unique.By(
            "identity",
            devices.Known.Values.Select(device => device.IoLink?.Identity).OfType<Located<DeviceIdentity>>(),
            identity =>
                identity.Select(number =>
                    FormattableString.Invariant($"vendor {number.Vendor}, device {number.Device}")
                ),
            report
        );
        foreach (var alternate in given.SelectMany(file => file.Fields.Many<string>("alternates")))
        {
            devices.Find(alternate, report);
        }

        return devices;
    }

    private static Device? Read(DefinitionFile file, NoteLibrary notes, ICollection<Diagnostic> report)
    {
        var f = file.Fields;
        var before = report.Count;
        if (
            f.Value<Text>("title") is not { } title
            || f.One<DeviceKind>("kind") is not { } kind
            || f.Value<string>("letters") is not { } letters
            || f.One<ConnectionKind>("connection") is not { } connection
        )
        {
            return null;
        }

        CheckDemands(f, kind.Value, connection.Value, file, report);
        var pinTwo = f.Value("pin-2", PinTwoUse.Unused);
        var ports = f.Value<Fields>("ports") is { } offered ? ReadPorts(offered, report) : null;
        return new(file.Id.Select(id => new DeviceId(id)), title, kind.Value, letters)
        {
            Connection = connection.Value,
            PortClass = f.Value("port-class", PortClass.A),
            PinTwo = pinTwo,
            Plug = f.Value<string>("plug") ?? "none",
            FarPlug = f.Value<string>("far-plug"),
            Current = f.Value<Quantity>("current"),
            ExtraCurrent = f.Value<Quantity>("extra-current"),
            StartUpCurrent = f.Value<Quantity>("start-up-current"),
            Safety = f.Value<Fields>("safety") is { } safety
                ? new(
                    safety.Value("inputs", 0),
                    safety.Value("outputs", 0),
                    safety.Value("test-pulses", TestPulses.None)
                )
                : null,
            HasConstantPower = f.Value("constant-power", otherwise: false),
            OutputCurrent = f.Value<Quantity>("output-current"),
            BoostCurrent = f.Value<Quantity>("boost-current"),
            Response = f.Value<Quantity>("response"),
            ResponseJitter = f.Value<Quantity>("response-jitter"),
            IoLink = f.Value<Fields>("io-link") is { } ioLink ? IoLinkBinder.Bind(ioLink, ports, pinTwo, report) : null,
            Parameters = ParameterBinder.Bind(f.Records("parameters"), report),
            Ports = ports,
            Cordset = f.Value<Fields>("cordset") is { } cordset ? ReadCordset(cordset) : null,
            Leads = f.Value<Fields>("leads") is { } leads ? ReadLeads(leads) : null,
            Terminals =
            [
                .. f.Records("terminals")
                    .Select(terminal => new Terminal(
                        terminal.Value<string>("at") ?? "",
                        terminal.Value<string>("carries") ?? "",
                        terminal.Value("leads-to", CoreTarget.Unsaid)
                    )
                    {
                        LinkedTo = terminal.Value<string>("linked-to") ?? "",
                    }),
            ],
            Contacts =
                f.Value<Fields>("contacts") is { } contacts
                && contacts.Value<string>("in") is { } comesIn
                && contacts.Value<string>("out") is { } goesOut
                    ? (comesIn, goesOut)
                    : null,
            Heat = f.Value<Quantity>("heat"),
            Rail = f.Value<Quantity>("rail"),
            Air = f.Value<Quantity>("air"),
            Mass = f.Value<Quantity>("mass"),
            Price = f.Value<Quantity>("price"),
            LeadTime = f.Value<Quantity>("lead-time"),
            Lifecycle = f.Value("lifecycle", Lifecycle.Active),
            Ingress = [.. f.Many<string>("ingress").Select(marking => marking.Value)],
            Materials = [.. f.Many<string>("materials").Select(material => material.Value)],
            Finish = CareBinder.Finish(f.Value<Fields>("finish")),
            Care = CareBinder.Care(f.Value<Fields>("washing")),
            Alternates = [.. f.Many<string>("alternates").Select(id => new DeviceId(id.Value))],
            Notes = notes.Of($"options/devices/{file.Id.Value}"),
            IsSoundForWashing = f.AreSound("ingress", "materials", "finish", "washing", "alternates"),
            IsWhole =
                report.Count == before
                && f.AreSound(
                    "port-class",
                    "pin-2",
                    "plug",
                    "current",
                    "extra-current",
                    "output-current",
                    "boost-current",
                    "constant-power",
                    "safety",
                    "io-link",
                    "response",
                    "response-jitter",
                    "parameters",
                    "ports",
                    "cordset",
                    "leads",
                    "terminals",
                    "contacts"
                ),
        };
    }

    /// <summary>What a device must say because of what it is.</summary>
    private static void CheckDemands(
        Fields f,
        DeviceKind kind,
        ConnectionKind connection,
        DefinitionFile file,
        ICollection<Diagnostic> report
    )
    {
        Demand(connection == ConnectionKind.IoLink, "io-link", "an IO-Link device states its process data and cycle");
        Demand(
            connection is ConnectionKind.IoLink or ConnectionKind.Switching,
            "current",
            "what it draws from its port is added up"
        );
        Demand(kind is DeviceKind.IoLinkMaster or DeviceKind.Hub, "ports", "a master or hub states its ports");
        Demand(kind is DeviceKind.Cordset, "cordset", "a cordset states its lengths and cores");
        Demand(
            f.Value("port-class", PortClass.A) == PortClass.B,
            "extra-current",
            "what it draws from the extra supply is added up"
        );

        void Demand(bool applies, string key, string why)
        {
            if (applies && f.KeysAreKnown && !f.Has(key))
            {
                report.Add(BindingDiagnostics.KeyMissingHere(key, why, file.Id.Span));
            }
        }
    }

    private static readonly ImmutableArray<string> PortKeys = ["class-a", "class-b", "switching"];

    private static PortSet ReadPorts(Fields f, ICollection<Diagnostic> report)
    {
        var numbers = PortKeys.SelectMany(key => f.Many<int>(key));
        Unique.By(
            "port number",
            numbers,
            number => number.Select(value => value.ToString(CultureInfo.InvariantCulture)),
            report
        );
        return new(
            Numbers(f, "class-a"),
            Numbers(f, "class-b"),
            Numbers(f, "switching"),
            f.Value("pin-2", PinTwoOffer.None)
        )
        {
            CurrentPerPort = f.Value<Quantity>("current-per-port"),
            CurrentInAll = f.Value<Quantity>("current-in-all"),
            ExtraPerPort = f.Value<Quantity>("extra-per-port"),
            ExtraInAll = f.Value<Quantity>("extra-in-all"),
            InputOctetsMax = f.One<int>("input-octets")?.Value,
            OutputOctetsMax = f.One<int>("output-octets")?.Value,
        };
    }

    private static ImmutableArray<int> Numbers(Fields f, string key) =>
        [.. f.Many<int>(key).Select(number => number.Value).Order()];

    private static Cordset? ReadCordset(Fields f) =>
        f.Value<Quantity>("conductor") is { } conductor
        && f.Value<string>("jacket") is { } jacket
        && f.Many<Quantity>("lengths") is { IsEmpty: false } lengths
            ? new(
                [.. lengths.Select(length => length.Value).OrderBy(length => length.InBase)],
                [.. f.Many<string>("cores").Select(core => core.Value)],
                conductor,
                jacket
            )
            {
                DeviceEnd = f.Value("device-end", PlugForm.Straight),
                FarEnd = f.Value("far-end", PlugForm.Straight),
                Torque = f.Value<Quantity>("torque"),
                Diameter = f.Value<Quantity>("diameter"),
                BendRadius = f.Value<Quantity>("bend-radius"),
            }
            : null;

    private static Leads? ReadLeads(Fields f) =>
        f.Value<Quantity>("conductor") is { } conductor && f.Value<string>("jacket") is { } jacket
            ? new(
                conductor,
                jacket,
                f.Value("shielded", otherwise: false),
                [
                    .. f.Records("cores")
                        .Select(core => new LeadCore(
                            core.Value<string>("core") ?? "",
                            core.Value<string>("at") ?? "",
                            core.Value<string>("carries") ?? ""
                        )
                        {
                            Conductor = core.Value<Quantity>("conductor"),
                            FeederAt = core.Value<string>("feeder-at") ?? "",
                            LeadsTo = core.Value("leads-to", CoreTarget.Unsaid),
                        }),
                ]
            )
            {
                IsStraight = f.Value("straight-to-feeder", otherwise: false),
                Diameter = f.Value<Quantity>("diameter"),
                BendRadius = f.Value<Quantity>("bend-radius"),
            }
            : null;
}
