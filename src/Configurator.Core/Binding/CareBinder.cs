using System.Collections.Immutable;
using Configurator.Core.Binding.Shapes;
using Configurator.Core.Model;
using Configurator.Core.Model.Units;

namespace Configurator.Core.Binding;

/// <summary>Binds what options and devices say of washing.</summary>
internal static class CareBinder
{
    public static WashCare Care(Fields? f) =>
        f is null
            ? WashCare.None
            : new()
            {
                Hazards = [.. f.Many<Hazard>("hazards").Select(hazard => hazard.Value)],
                Energies = [.. f.Records("energies").Select(Energy).OfType<EnergyCare>()],
                Cover = Texts(f, "cover"),
                NeverCover = Texts(f, "never-cover"),
                Remove = Texts(f, "remove"),
                Inspect = Texts(f, "inspect"),
                Bars = Texts(f, "bars"),
                PowerOn = Texts(f, "power-on"),
                Restart = Texts(f, "restart"),
                FirstRun = Texts(f, "first-run"),
                Media = Texts(f, "media"),
            };

    public static Finish? Finish(Fields? f) =>
        f is not null
        && f.Value<Quantity>("roughness") is { } roughness
        && f.Value<Quantity>("radius") is { } radius
        && f.One<Fasteners>("fasteners") is { } fasteners
            ? new(roughness, radius, fasteners.Value)
            : null;

    private static EnergyCare? Energy(Fields f) =>
        f.One<Energy>("energy") is { } energy && f.One<EnergyState>("state") is { } state
            ? new(energy.Value, state.Value, f.Value<Text>("why") ?? Text.Empty)
            : null;

    private static ImmutableArray<Text> Texts(Fields f, string key) =>
        [.. f.Many<Text>(key).Select(text => text.Value)];
}
