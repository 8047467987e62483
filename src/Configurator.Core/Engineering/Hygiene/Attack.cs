using Configurator.Core.Model;

namespace Configurator.Core.Engineering.Hygiene;

/// <summary>What an agent does to a part: the worst of its materials, and which that is.</summary>
internal sealed record Attack(Agent Agent, string Material, Resistance Resistance)
{
    public string Text =>
        $"`{Agent.Id.Value}` on {Material}: {HygieneWords.Of(Resistance.Rating)}"
        + $"{(Resistance.Note.Length > 0 ? $", {Resistance.Note}" : "")} ({HygieneWords.Of(Resistance.Basis)})";
}
