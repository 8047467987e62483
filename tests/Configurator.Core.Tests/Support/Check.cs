using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Binding;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering;
using Configurator.Core.Loading;
using Configurator.Core.Logic;
using Configurator.Core.Model;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Support;

/// <summary>The small catalogue with marked text laid into it, and what the stages say about it. The one place that knows
/// how the stages are called.</summary>
internal sealed class Check
{
    private readonly ImmutableSortedDictionary<string, string> _files;

    private Check(IEnumerable<KeyValuePair<string, string>> files) => _files = files.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>The small catalogue as it is: nothing is wrong with it.</summary>
    public static Check Small { get; } = new(SmallCatalogue.Files);

    /// <summary>Adds a definition, or replaces it, where its kind and id belong.</summary>
    public Check With(string definition) => At(SmallCatalogue.PlaceOf(definition), definition);

    /// <summary>Adds a file, or replaces it.</summary>
    public Check At(string path, string text) => new(_files.SetItem(path, text));

    public Check Without(string path)
    {
        Assert.True(_files.ContainsKey(path), $"there is no {path}");
        return new(_files.Remove(path));
    }

    /// <summary>Writes something else where a file says something, which it must say exactly once.</summary>
    public Check Changing(string path, string was, string now)
    {
        var parts = _files[path].Split(was);
        Assert.True(parts.Length == 2, $"`{was}` stands {parts.Length - 1} times in {path}");
        return At(path, string.Join(now, parts));
    }

    public Check Machine(string was, string now) => Changing(SmallCatalogue.Machine, was, now);

    /// <summary>Exactly these diagnostics come out, at the marked places and in their order. What replaces something to put
    /// it right does put it right.</summary>
    public void Says(params string[] expected)
    {
        var marked = _files.Select(file => CheckMarks.Read(file.Key, file.Value)).ToList();
        var said = Run().ToList();
        CheckWords.Same(
            expected, [.. marked.SelectMany(file => file.Places)], [.. marked.SelectMany(file => file.NotePlaces)], said);
        foreach (var (diagnostic, fix) in said.Select(diagnostic => (diagnostic, diagnostic.Fix)).Where(pair => pair.Fix?.Replacement is not null))
        {
            Assert.True(
                StartingAt(Mended(fix!).Run(), diagnostic.Span) < StartingAt(said, diagnostic.Span), $"the fix of {diagnostic.Span} mends nothing");
        }
    }

    /// <summary>The model made of it, in which nothing is wrong.</summary>
    public Catalogue Catalogue
    {
        get
        {
            var bound = Loader.Load(Sources).Then(Binder.Bind);
            CheckWords.Same([], [], [], bound.Diagnostics);
            return bound.Value;
        }
    }

    public Machine TheMachine => Catalogue.Machines[SmallCatalogue.MachineId];

    /// <summary>As far as the catalogue can be made, faults and all.</summary>
    public EngineeredCatalogue Engineered => Staged.Value;

    public IEnumerable<Diagnostic> Run() => Staged.Diagnostics;

    private Outcome<EngineeredCatalogue> Staged =>
        Engineer.Compute(Loader.Load(Sources).Then(Binder.Bind).Then(Prover.Prove));

    private SourceSet Sources => SourceSet.Of(
        _files.Select(file => new SourceFile(file.Key, Encoding.UTF8.GetBytes(CheckMarks.Read(file.Key, file.Value).Text))));

    private static int StartingAt(IEnumerable<Diagnostic> said, SourceSpan place) =>
        said.Count(diagnostic => diagnostic.Span.CompareTo(place) == 0);

    private Check Mended(Fix fix)
    {
        var lines = CheckMarks.Read(fix.Span.Path, _files[fix.Span.Path]).Text.Split('\n');
        ref var line = ref lines[fix.Span.Line - 1];
        line = line[..(fix.Span.Column - 1)] + fix.Replacement + line[(fix.Span.Column - 1 + fix.Span.Length)..];
        return At(fix.Span.Path, string.Join('\n', lines));
    }
}
