using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds port plans: instances, masters and ports that they name exist.</summary>
internal static class PortPlanBinder
{
    public static Names<Machine> Bind(
        IEnumerable<DefinitionFile> files,
        Names<Machine> machines,
        FaultyNames faulty,
        ICollection<Diagnostic> report
    )
    {
        var unread = faulty.Of("port-plan").ToHashSet(StringComparer.Ordinal);
        var plans = files.ToDictionary(file => file.Id.Value, StringComparer.Ordinal);
        foreach (var file in files)
        {
            machines.Find(file.Id, report);
        }

        return machines with
        {
            Known = machines.Known.ToImmutableSortedDictionary(
                entry => entry.Key,
                entry => entry.Value with { Plan = PlanOf(entry.Value) },
                StringComparer.Ordinal
            ),
        };

        PortPlan PlanOf(Machine machine) =>
            plans.TryGetValue(machine.Id.Value.Value, out var file)
                ? Read(machine, file.Fields, file.Id.Span, report) with
                {
                    Points = BoxPinBinder.Read(machine, file.Fields, report),
                    ArePointsWhole = file.Fields.AreSound("box"),
                }
                : PortPlan.Empty with
                {
                    Span = machine.Id.Span,
                    IsWhole = !unread.Contains(machine.Id.Value.Value),
                };
    }

    /// <summary>The homes under the key <c>homes</c>; what names no instance or port of the machine is reported and
    /// left out.</summary>
    public static PortPlan Read(Machine machine, Fields fields, SourceSpan span, ICollection<Diagnostic> report)
    {
        var instances = Names<FitInstance>.Of("fit instance", machine.Instances, instance => instance.Key.ToString());
        var given = fields.Table<string>("homes").Select(line => line.Key.Value);
        var unplaced = instances.Known.Keys.Except(given, StringComparer.Ordinal).ToList();
        var homes = ImmutableSortedDictionary.CreateBuilder<InstanceKey, Located<Home>>();
        var isWhole = fields.AreSound("homes");
        foreach (
            var (key, written) in fields
                .Table<string>("homes")
                .Where(line => machine.IsWhole && !IsOfUnknownFit(machine, instances, line.Key))
        )
        {
            if (
                Find(instances, key, unplaced, report) is { } instance
                && ReadHome(machine, written, report) is { } home
            )
            {
                homes[instance.Key] = new(home, written.Span);
            }
            else
            {
                isWhole = false;
            }
        }

        return new(homes.ToImmutable(), span) { IsWhole = isWhole };
    }

    /// <summary>Where there is no such instance, one that has no line yet was probably meant.</summary>
    internal static FitInstance? Find(
        Names<FitInstance> instances,
        Located<string> key,
        IReadOnlyCollection<string> unplaced,
        ICollection<Diagnostic> report
    )
    {
        if (instances.Known.TryGetValue(key.Value, out var found))
        {
            return found;
        }

        report.Add(BindingDiagnostics.NotFound(instances.Noun, key, unplaced));
        return null;
    }

    /// <summary>A fit of a faulty option may have been left out.</summary>
    internal static bool IsOfUnknownFit(Machine machine, Names<FitInstance> instances, Located<string> key) =>
        machine.FaultyOptions.Contains(new(key.Value.Split('/')[0])) && !instances.Knows(key.Value);

    private static bool IsFaultyHub(Machine machine, MasterName name) =>
        machine.Instances.Any(instance => instance.Key.Fit.Value == name.Value && !instance.Device.IsWhole);

    /// <summary>The part of a home that names its master, without the quote before it.</summary>
    private static Located<string> MasterIn(Located<string> written, MasterName master)
    {
        var quote = (written.Span.Length - written.Value.Length) / 2;
        return new(
            master.Value,
            written.Span with
            {
                Column = written.Span.Column + quote,
                Length = master.Value.Length,
            }
        );
    }

    private static Home? ReadHome(Machine machine, Located<string> written, ICollection<Diagnostic> report)
    {
        var home = Home.Parse(written.Value)!.Value;
        if (home.Master is not { } master)
        {
            return home;
        }

        var carriers = machine.Carriers;
        if (!carriers.TryGetValue(master, out var ports))
        {
            if (machine.FaultyOptions.IsEmpty && !IsFaultyHub(machine, master))
            {
                report.Add(
                    BindingDiagnostics.NotFound(
                        "master or hub",
                        MasterIn(written, master),
                        carriers.Keys.Select(name => name.Value)
                    )
                );
            }

            return null;
        }

        if (ports.ClassOf(home.Port) is null)
        {
            if (!IsFaultyHub(machine, master))
            {
                report.Add(BindingDiagnostics.PortNotFound(written.Span, master.Value, home.Port, ports.Numbers));
            }

            return null;
        }

        return home;
    }
}
