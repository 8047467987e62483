using System.Collections.Immutable;
using Configurator.Core.Model;

namespace Configurator.Core.Review;

/// <summary>Where what concerns a thing may have been written, likeliest first.</summary>
internal static class PlacesOf
{
    /// <summary>Its home, its fit, its device, its option.</summary>
    public static ImmutableArray<ReviewPlace> Instance(Machine machine, FitInstance instance, bool isBefore)
    {
        var home = machine.Plan.Homes.TryGetValue(instance.Key, out var located) ? located.Span : default;
        return
        [
            .. new[]
            {
                home,
                instance.Fit.Name.Span,
                instance.Fit.DeviceOn(machine.Id.Value).Span,
                instance.Device.Id.Span,
                instance.Option?.Id.Span ?? machine.Id.Span,
            }
                .Select(span => new ReviewPlace(span, isBefore))
                .Where(place => place.IsKnown),
        ];
    }

    /// <summary>What a finding's id names, if it names an instance or a master; then the machine.</summary>
    public static ImmutableArray<ReviewPlace> Named(Machine machine, string about, bool isBefore)
    {
        var parts = about.Split('/');
        var key = parts.Length >= 3 ? InstanceKey.Parse(string.Join('/', parts[..3])) : null;
        var instance = machine.Instances.FirstOrDefault(instance => instance.Key == key);
        var master = machine.Control.Find(new(parts[0]));
        return
        [
            .. instance is null ? [] : Instance(machine, instance, isBefore),
            .. master is null
                ? []
                : ImmutableArray.Create(
                    new ReviewPlace(master.Name.Span, isBefore),
                    new ReviewPlace(master.Device.Id.Span, isBefore)
                ),
            new(machine.Plan.Span, isBefore),
            new(machine.Id.Span, isBefore),
        ];
    }
}
