using System.Collections.Immutable;
using Configurator.Core.Tests.Support;

namespace Configurator.Core.Tests.Conventions;

/// <summary>The product's C# files as they lie in the repository.</summary>
internal static class CheckSources
{
    public static ImmutableArray<SourceOnDisk> Product { get; } = Below("src");

    public static ImmutableArray<SourceOnDisk> Below(string folder) =>
    [
        .. Directory.EnumerateFiles(Path.Combine(Repository.Folder, folder), "*.cs", SearchOption.AllDirectories)
            .Select(file => new SourceOnDisk(Path.GetRelativePath(Repository.Folder, file).Replace('\\', '/'), File.ReadAllLines(file)))
            .Where(file => !file.Path.Contains("/obj/", StringComparison.Ordinal) && !file.Path.Contains("/bin/", StringComparison.Ordinal))
            .OrderBy(file => file.Path, StringComparer.Ordinal),
    ];

    /// <summary>Every line that offends, with its place; the list must be empty.</summary>
    public static void NoLine(IEnumerable<SourceOnDisk> files, Func<string, bool> offends) => Assert.Empty(files.SelectMany(file => file.Lines
        .Select((line, i) => (Line: line, Place: FormattableString.Invariant($"{file.Path}({i + 1})")))
        .Where(line => offends(line.Line))
        .Select(line => $"{line.Place}: {line.Line}")));
}

internal sealed record SourceOnDisk(string Path, string[] Lines);
