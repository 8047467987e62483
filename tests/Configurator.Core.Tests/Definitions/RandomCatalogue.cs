using System.Collections.Immutable;
using Configurator.Core.Binding.Kinds;
using Configurator.Core.Diagnostics;
using Configurator.Core.Loading;
using Configurator.Core.Sources;

using Files = System.Collections.Immutable.ImmutableSortedDictionary<string, string>;

namespace Configurator.Core.Tests.Definitions;

/// <summary>A catalogue with faults, made after a number.</summary>
/// <param name="Changed">Paths of what differs from the good catalogue it started as.</param>
internal sealed record RandomCatalogue(int Number, Files Good, Files Files, ImmutableSortedSet<string> Changed)
{
    /// <summary>Of a thousand cases so many change the large demonstration catalogue.</summary>
    private const int DemoPermille = 1;

    public static RandomCatalogue Make(int number)
    {
        var dice = new Dice(number);
        var good = dice.Below(1000) < DemoPermille ? Corpus.Demo : dice.Chance(75) ? Corpus.Small : Corpus.Base;
        var catalogue = new RandomCatalogue(number, good, good, []);
        for (var steps = 1 + dice.Below(dice.Chance(70) ? 2 : 6); steps > 0; steps--)
        {
            catalogue = catalogue.Step(dice);
        }

        return catalogue;
    }

    public SourceSet Sources => Corpus.Sources(Files);

    /// <summary>What the first stage makes of it.</summary>
    public Outcome<SyntaxSet> Load()
    {
        var good = Corpus.Loaded(Good);
        var changed = Loader.Load(Corpus.Sources(Files.RemoveRange(Files.Keys.Except(Changed))));
        return new(
            new(
                [.. good.Definitions.Where(file => !Changed.Contains(file.Path)).Concat(changed.Value.Definitions).OrderBy(file => file.Path, StringComparer.Ordinal)],
                [.. good.Notes.Where(file => !Changed.Contains(file.Path)).Concat(changed.Value.Notes).OrderBy(file => file.Path, StringComparer.Ordinal)],
                [],
                [],
                changed.Value.Unread),
            changed.Diagnostics);
    }

    /// <summary>All that is needed to see what was tried.</summary>
    public string Words =>
        $"case {Number}, to be replayed with CONFIGURATOR_CASE={Number}"
        + string.Concat(Changed.Select(path => $"\n=== {path}\n{Files.GetValueOrDefault(path, "(removed)")}"));

    public void LayOut(string folder)
    {
        foreach (var file in Sources.Files)
        {
            var path = Path.Combine(folder, file.Path);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllBytes(path, file.Bytes.ToArray());
        }
    }

    private RandomCatalogue Step(Dice dice)
    {
        var path = dice.Pick([.. Files.Keys]);
        return dice.Below(20) switch
        {
            0 when Files.Count > 2 => With(path, null),
            1 => With(dice.Pick([.. Files.Keys]), Files[path]),
            2 => With(Beside(dice, path), Files[path]),
            3 or 4 or 5 or 6 when Kind.At(path) is { } kind => With(path, RandomShapes.Definition(dice, kind, IdOf(kind, path))),
            _ => With(path, Mutations.Change(dice, Files[path], Files[dice.Pick([.. Files.Keys])])),
        };
    }

    private RandomCatalogue With(string path, string? text) =>
        this with { Files = text is null ? Files.Remove(path) : Files.SetItem(path, text), Changed = Changed.Add(path) };

    /// <summary>Another name in the same folder.</summary>
    private static string Beside(Dice dice, string path) =>
        $"{path[..(path.LastIndexOf('/') + 1)]}{dice.Pick(["other", "con", "Upper", "two words", "x.es", "\u202e"])}{path[path.LastIndexOf('.')..]}";

    private static string IdOf(Kind kind, string path) => kind.Match(path) is { IsEmpty: false } place ? place[^1] : "demo";
}
