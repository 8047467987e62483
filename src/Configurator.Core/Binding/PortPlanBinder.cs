using System.Collections.Immutable;
using System.Globalization;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Diagnostics;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Binding;

/// <summary>Binds port plans: instances, masters and ports that they name exist.</summary>
internal static class PortPlanBinder
{
    public static Names<Machine> Bind(IEnumerable<DefinitionFile> files, Names<Machine> machines, FaultyNames faulty, ICollection<Diagnostic> report)
    {
        var unread = faulty.Of("port-plan").ToHashSet(StringComparer.Ordinal);
        var plans = files.ToDictionary(file => file.Id.Value, StringComparer.Ordinal);
        foreach (var file in files)
        {
            machines.Find(file.Id, report);
        }

        return machines with
        {
            Known = machines.Known.ToImmutableSortedDictionary(entry => entry.Key, entry => entry.Value with { Plan = PlanOf(entry.Value) }, StringComparer.Ordinal),
        };

        PortPlan PlanOf(Machine machine) => plans.TryGetValue(machine.Id.Value.Value, out var file)
            ? Read(machine, file.Fields, file.Id.Span, report)
            : PortPlan.Empty with { Span = machine.Id.Span, IsWhole = !unread.Contains(machine.Id.Value.Value) };
    }

    /// <summary>The homes under the key <c>homes</c>; what names no instance or port of the machine is reported and left out.</summary>
    public static PortPlan Read(Machine machine, Fields fields, SourceSpan span, ICollection<Diagnostic> report)
    {
        var instances = Names<FitInstance>.Of("fit instance", machine.Instances, instance => instance.Key.ToString());
        var homes = ImmutableSortedDictionary.CreateBuilder<InstanceKey, Located<Home>>();
        var isWhole = fields.AreSound("homes");
        foreach (var (key, written) in fields.Table<string>("homes").Where(line => !IsOfFaulty(machine, line.Key)))
        {
            if (instances.Find(key, report) is { } instance && ReadHome(machine, written, report) is { } home)
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

    private static bool IsOfFaulty(Machine machine, Located<string> key) => machine.FaultyOptions.Contains(new(key.Value.Split('/')[0]));

    private static Home? ReadHome(Machine machine, Located<string> written, ICollection<Diagnostic> report)
    {
        var home = Home.Parse(written.Value)!.Value;
        if (home.Master is not { } master)
        {
            return home;
        }

        var carriers = machine.Carriers;
        var place = written with { Value = master.Value };
        if (!carriers.TryGetValue(master, out var ports))
        {
            if (machine.FaultyOptions.IsEmpty)
            {
                report.Add(BindingDiagnostics.NotFound("master or hub", place, carriers.Keys.Select(name => name.Value)));
            }

            return null;
        }

        if (ports.ClassOf(home.Port) is null)
        {
            var port = written with { Value = home.Port.ToString(CultureInfo.InvariantCulture) };
            report.Add(BindingDiagnostics.NotFound($"port at `{master}`", port, []));
            return null;
        }

        return home;
    }
}
