using System.Collections.Immutable;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Engineering.Timing;

/// <summary>Times in ms as stated; what is not stated counts as nothing and is remembered.</summary>
internal sealed class StatedTimes(Machine machine)
{
    private readonly List<string> _missing = [];

    public ImmutableArray<string> Missing => [.. _missing.Distinct(StringComparer.Ordinal)];

    public Rational Of(Quantity? time, string what)
    {
        if (time is null)
        {
            _missing.Add(what);
        }

        return time?.InBase ?? 0;
    }

    public Rational Control(Func<ControlTiming, Quantity?> time, string key) =>
        Of(time(machine.Control.Timing), $"`{key}` under `timing` of the control");
}
