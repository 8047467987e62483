using Configurator.Core.Engineering.Hygiene;

namespace Configurator.Benchmarks.Examples;

/// <summary>Whether a marking shows what is asked.</summary>
internal static class IngressExamples
{
    public static void Run(Given given, Answer answer)
    {
        if ((given.Element("pairs") ?? given.Element("cases") ?? given.Element("checks")) is { ValueKind: System.Text.Json.JsonValueKind.Array } pairs)
        {
            var all = pairs.EnumerateArray().Select(pair => Shown(pair[0].GetString()!, pair[1].GetString()!)).OfType<Shown>().ToList();
            answer.Say(all.ConvertAll(object (one) => Word(one)), "result", "results", "satisfied", "verdicts");
            answer.Say(all.ConvertAll(object (one) => one == Core.Engineering.Hygiene.Shown.Yes), "ok", "pass");
        }

        var marked = given.Text("marking", "codes", "markings", "marked", "have", "ip", "code", "device");
        var asked = given.Text("requirement", "required", "need", "needs", "asked", "area");
        if (marked is not null && asked is not null && Shown(marked, asked) is { } shown)
        {
            Say(answer, shown);
        }
        else if (given.Text("marked_first", "first_marked") is { } first && given.Text("required_first", "first_required") is { } dust)
        {
            Say(answer, IngressCode.OfSolids(first, dust));
        }
        else if (given.Text("marked_second", "second_marked") is { } second && given.Text("required_second", "second_required") is { } water)
        {
            Say(answer, IngressCode.OfWater(second, water));
        }
    }

    public static Shown? Shown(string marked, string asked) =>
        IngressCode.Parse(marked) is { } codes && IngressCode.Parse(asked) is [var one] ? IngressCode.Shows(codes, one) : null;

    public static string Word(Shown shown) => shown.ToString().ToLowerInvariant();

    private static void Say(Answer answer, Shown shown)
    {
        answer.Say(Word(shown), "result", "satisfied", "verdict", "shown");
        answer.Say(shown == Core.Engineering.Hygiene.Shown.Yes, "ok", "pass");
    }
}
