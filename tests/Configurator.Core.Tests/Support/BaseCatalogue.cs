using System.Collections.Immutable;
using System.Text;
using Configurator.Core.Binding;
using Configurator.Core.Diagnostics;
using Configurator.Core.Engineering;
using Configurator.Core.Loading;
using Configurator.Core.Logic;
using Configurator.Core.Sources;

namespace Configurator.Core.Tests.Support;

/// <summary>The small catalogue of <c>tests/Cases/base</c>, as it is or with files laid over it.</summary>
internal sealed class BaseCatalogue
{
    private readonly ImmutableDictionary<string, byte[]> _files;
    private readonly ImmutableArray<RefusedFile> _refused;

    private readonly DateOnly? _day;

    private BaseCatalogue(ImmutableDictionary<string, byte[]> files, ImmutableArray<RefusedFile> refused, DateOnly? day = null) =>
        (_files, _refused, _day) = (files, refused, day);

    /// <summary>Checked on that day.</summary>
    public BaseCatalogue On(int year, int month, int day) => new(_files, _refused, new(year, month, day));

    /// <summary>All its files as they are.</summary>
    public static BaseCatalogue Whole { get; } =
        new(Read(Path.Combine(Repository.Folder, "tests", "Cases", "base", "input")), []);

    public static BaseCatalogue With(string path, string text) => Whole.And(path, text);

    public IEnumerable<string> Paths => _files.Keys.Order(StringComparer.Ordinal);

    public string TextOf(string path) => Encoding.UTF8.GetString(_files[path]);

    /// <summary>Adds a file, or replaces the one that is there.</summary>
    public BaseCatalogue And(string path, string text) => And(path, Encoding.UTF8.GetBytes(text));

    public BaseCatalogue And(string path, byte[] bytes) => new(_files.SetItem(path, bytes), _refused);

    public BaseCatalogue Without(string path) => new(_files.Remove(path), _refused);

    /// <summary>As if the walk through the folders had not taken that file.</summary>
    public BaseCatalogue Refusing(RefusedFile file) => new(_files.Remove(file.Path), _refused.Add(file));

    /// <summary>Replaces one piece of a file's text, which must be there exactly once.</summary>
    public BaseCatalogue Replacing(string path, string piece, string by)
    {
        var parts = TextOf(path).Split(piece);
        Assert.True(parts.Length == 2, $"`{piece}` stands {parts.Length - 1} times in {path}");
        return And(path, string.Join(by, parts));
    }

    /// <summary>The span lies within a line of a file of this catalogue.</summary>
    public bool Has(SourceSpan span)
    {
        if (span == SourceSpan.FileStart(span.Path))
        {
            return _files.ContainsKey(span.Path) || _refused.Any(file => file.Path == span.Path);
        }

        var line = new SourceText(span.Path, TextOf(span.Path)).Line(span.Line);
        return span.Column >= 1 && span.Length >= 0 && span.Column - 1 + span.Length <= line.Length;
    }

    public SourceSet Sources => SourceSet.Of(_files.Select(file => new SourceFile(file.Key, file.Value)), _refused);

    /// <summary>Runs the stages that say something about definitions.</summary>
    public Outcome<EngineeredCatalogue> Check() =>
        Engineer.Compute(Loader.Load(Sources).Then(Binder.Bind).Then(Prover.Prove), _day);

    private static ImmutableDictionary<string, byte[]> Read(string folder) => Directory
        .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .ToImmutableDictionary(
            file => Path.GetRelativePath(folder, file).Replace('\\', '/'), File.ReadAllBytes, StringComparer.Ordinal);
}
