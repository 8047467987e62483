using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Documents.Cables;

/// <summary>Cores of a load, by what they carry: phases of a motor or heater may be tested with 500 V, what shares
/// their cable may not.</summary>
/// <param name="Phases">Terminals at the load, such as <c>U V W</c>.</param>
/// <param name="Others">What the other cores carry, once each, without protective earth.</param>
internal sealed record PowerCores(ImmutableArray<string> Phases, ImmutableArray<string> Others)
{
    private static readonly string[] OfPower = ["motor phase", "heating phase", "heating return"];

    private static readonly string[] Signs = [" +", " -"];

    public static PowerCores Of(Device load)
    {
        ImmutableArray<LeadCore> cores = [.. (load.Leads?.Cores ?? []).Where(core => !core.IsProtectiveEarth)];
        return new(
            [.. cores.Where(IsPower).Select(core => core.At)],
            [.. cores.Where(core => !IsPower(core)).Select(core => Bare(core.Carries)).Distinct(StringComparer.Ordinal)]
        );
    }

    private static bool IsPower(LeadCore core) =>
        OfPower.Any(start => core.Carries.StartsWith(start, StringComparison.Ordinal));

    private static string Bare(string carries) =>
        Signs.Any(sign => carries.EndsWith(sign, StringComparison.Ordinal)) ? carries[..^2] : carries;
}
