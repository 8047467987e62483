using Configurator.Core.Tests.Engineering.Rigs;

namespace Configurator.Planning.Tests.Rigs;

/// <summary>Where each fit of a rig lives: by position, a group, the number of a port, and whether at its pin 2. No
/// group where it has no port.</summary>
internal sealed class Placement(int fits)
{
    public const int Nowhere = -1;

    public int[] Group { get; } = [.. Enumerable.Repeat(Nowhere, fits)];

    public int[] Port { get; } = new int[fits];

    public bool[] IsPinTwo { get; } = new bool[fits];

    public void Put(int fit, int group, int port, bool isPinTwo) =>
        (Group[fit], Port[fit], IsPinTwo[fit]) = (group, port, isPinTwo);

    public Placement Copy()
    {
        var copy = new Placement(Group.Length);
        Group.CopyTo(copy.Group, 0);
        Port.CopyTo(copy.Port, 0);
        IsPinTwo.CopyTo(copy.IsPinTwo, 0);
        return copy;
    }

    public static Placement Of(RigFacts facts, PlanResult plan)
    {
        var placement = new Placement(facts.Rig.Fits.Length);
        for (var fit = 0; fit < facts.Rig.Fits.Length; fit++)
        {
            var key = Core.Model.InstanceKey.Parse(facts.Rig.Fits[fit].Key)!.Value;
            if (plan.Homes.TryGetValue(key, out var home))
            {
                var group = facts.Groups.Single(group =>
                    group.Name == home.Master!.Value.Value
                    && home.Port >= group.First
                    && home.Port < group.First + group.Ports
                );
                placement.Put(fit, facts.Groups.IndexOf(group), home.Port, home.IsPinTwo);
            }
        }

        return placement;
    }
}
